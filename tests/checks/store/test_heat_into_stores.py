"""Heat nothing can stop, immersion heaters without a cut-out, coils in sealed circuits."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import vented
from tests.checks.store.fed import SOUND, fed, store
from tests.made import Part

UNCONTROLLED = "uncontrolled-heat-into-store"
IMMERSION = "immersion-without-cut-out"
COIL = "coil-not-fit-for-sealed"


def hs(**data: Any) -> Part:
    return ("heat_source", data)


SECOND = {"heat": "hs.flow t3.a:b pu.in:out zv.in:out us.coil_flow:coil_return t4.a:b hs.return"}
THROUGH_A_PLATE = fed(
    "hx.secondary_out t7.a:b us.coil_flow:coil_return hx.secondary_in",
    heat="hs.flow t3.a:b pu.in:out hx.primary_in:primary_out t4.a:b hs.return",
    hs=hs(heat="uncontrolled"),
    hx="heat_exchanger",
    us=store(energy_cut_out=None),
)


@pytest.mark.parametrize(
    ("drawing", "components"),
    [
        (fed(hs=hs(heat="uncontrolled")), ("us", "hs")),
        (fed("t7.branch h2.flow:return t8.branch", h2=hs(heat="uncontrolled"),
             heat="hs.flow t7.a:b t3.a:b pu.in:out zv.in:out us.coil_flow:coil_return t8.a:b t4.a:b hs.return"), ("us", "h2")),
        (THROUGH_A_PLATE, ("us", "hs")),
        (fed(hs=hs(heat="uncontrolled"), us=store(volume_l=10)), ("us", "hs")),
    ],
)  # fmt: skip
def test_uncontrolled(drawing: Drawing, components: tuple[str, ...]) -> None:
    finding = only(UNCONTROLLED, drawing)
    assert (finding.grade.value, finding.components) == ("danger", components)


def test_uncontrolled_not_known_and_elsewhere() -> None:
    finding = only(UNCONTROLLED, fed(hs=hs(heat=None)))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("hs.heat",))
    elsewhere = fed("h2.flow rad.flow:return h2.return", h2=hs(heat="uncontrolled"), rad="radiator")
    assert asked(UNCONTROLLED, elsewhere).status == "judged"
    assert found(UNCONTROLLED, elsewhere) == ()
    assert asked(UNCONTROLLED, SOUND["heated by the immersion alone"]).status == "not applicable"


@pytest.mark.parametrize("kind", ["unvented_store", "vented_store"])
@pytest.mark.parametrize(
    ("data", "grade", "missing"),
    [
        ({"immersion_kw": 3, "immersion_cut_out": False, "volume_l": 100}, "danger", ()),
        ({"immersion_kw": 3, "immersion_cut_out": False, "volume_l": 15}, None, ()),
        ({"immersion_kw": 3, "immersion_cut_out": False}, "unanswered", ("volume_l",)),
        ({"immersion_kw": 3, "volume_l": 100}, "unanswered", ("immersion_cut_out",)),
        ({"immersion_cut_out": False, "volume_l": 100}, "unanswered", ("immersion_kw",)),
        ({"volume_l": 100}, "unanswered", ("immersion_kw", "immersion_cut_out")),
        ({}, "unanswered", ("immersion_kw", "immersion_cut_out", "volume_l")),
        ({"immersion_kw": 0}, None, ()),
        ({"immersion_kw": 3, "immersion_cut_out": True}, None, ()),
        ({"immersion_cut_out": True}, None, ()),
    ],
)
def test_immersion(kind: str, data: dict[str, Any], grade: str | None, missing: tuple[str, ...]) -> None:
    findings = found(IMMERSION, fed(temperature="", us=(kind, data)))
    assert [each.grade.value for each in findings] == ([grade] if grade else [])
    if findings:
        assert findings[0].components == ("us",)
        assert findings[0].missing == tuple(f"us.{name}" for name in missing)


def sv(bar: float | None) -> Part:
    return ("safety_valve", {"set_pressure_bar": bar})


@pytest.mark.parametrize("kind", ["unvented_store", "vented_store"])
@pytest.mark.parametrize(
    ("bears", "valve", "fires"),
    [
        (3.35, 3, False),
        (3.34, 3, True),
        (2.85, 2.5, False),
        (2.8, 2.5, True),
        (10, 3, False),
        (3.35, 3.5, True),
    ],
)
def test_coil(kind: str, bears: float, valve: float, fires: bool) -> None:
    drawing = fed(temperature="", us=(kind, {"coil_maximum_pressure_bar": bears}), sv=sv(valve))
    findings = found(COIL, drawing)
    assert [(each.grade.value, each.components) for each in findings] == (
        [("fault", ("us", "sv"))] if fires else []
    )


@pytest.mark.parametrize(
    ("bears", "valve", "missing"),
    [
        (None, 3, ("us.coil_maximum_pressure_bar",)),
        (3.5, None, ("sv.set_pressure_bar",)),
        (None, None, ("sv.set_pressure_bar", "us.coil_maximum_pressure_bar")),
    ],
)
def test_coil_not_known(bears: float | None, valve: float | None, missing: tuple[str, ...]) -> None:
    finding = only(COIL, fed(us=store(coil_maximum_pressure_bar=bears), sv=sv(valve)))
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)


@pytest.mark.parametrize(
    ("data", "fires"),
    [
        ({"built_in_safety_valve_bar": 2.5, "maximum_pressure_bar": 4}, False),
        ({"built_in_safety_valve_bar": 3, "maximum_pressure_bar": 2}, True),
        ({"maximum_pressure_bar": 2.5}, False),
        ({}, True),
    ],
)
def test_coil_and_a_built_in_safety_valve(data: dict[str, Any], fires: bool) -> None:
    built_in = hs(built_in=["safety_valve"], **data)
    drawing = fed(safety="", hs=built_in, us=store(coil_maximum_pressure_bar=3))
    assert [each.components for each in found(COIL, drawing)] == ([("us", "hs")] if fires else [])


def test_the_lowest_of_two_safety_valves_counts() -> None:
    two = fed(
        "t7.branch s2.inlet",
        safety="t3.branch t7.a:b sv.inlet",
        s2=sv(2.5),
        us=store(coil_maximum_pressure_bar=3),
    )
    assert found(COIL, two) == ()


@pytest.mark.parametrize(
    "drawing",
    [
        vented(ring="hs.flow t1.a:b us.coil_flow:coil_return t2.a:b hs.return", us="vented_store"),
        fed(safety="", us=store(coil_maximum_pressure_bar=1)),
        SOUND["heated by the immersion alone"],
    ],
    ids=["open-vented", "no safety valve, which another check speaks of", "no heat"],
)
def test_coil_not_applicable(drawing: Drawing) -> None:
    assert asked(COIL, drawing).status == "not applicable"

"""The charge of a store's vessel against the reducing valve before it."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed
from tests.checks.store.fed import COLD, GROUP, SOUND, fed, store
from tests.made import Part

NAME = "store-vessel-precharge-wrong"


def ev(charge: float | None) -> Part:
    """A vessel large enough at any of these charges."""
    return ("expansion_vessel", {"volume_l": 80, "precharge_bar": charge})


@pytest.mark.parametrize(
    ("charge", "fires"), [(3, False), (2.8, False), (2.799, True), (3.001, True), (0, True), (2.9, False)]
)
def test_the_charge(charge: float, fires: bool) -> None:
    drawing = fed(ev=ev(charge))
    assert [(each.grade.value, each.components) for each in found(NAME, drawing)] == (
        [("fault", ("ev", "us", "rv"))] if fires else []
    )
    assert asked(NAME, drawing).status == "judged"


def test_the_numbers_and_what_it_does() -> None:
    high, low = only(NAME, fed(ev=ev(4))), only(NAME, fed(ev=ev(1.5)))
    assert high.numbers == {"precharge_bar": 4, "set_pressure_bar": 3}
    assert "takes up nothing" in high.message and "partly full" in low.message


@pytest.mark.parametrize(
    ("drawing", "fires"),
    [
        (fed(cold="cm.outlet ig.in:out t1.a:b us.cold", expansion="", ig=GROUP, ev=ev(3)), False),
        (fed(cold="cm.outlet ig.in:out t1.a:b us.cold", expansion="", ig=GROUP, ev=ev(3.5)), True),
        # The heating's own vessel has another charge.
        (fed(ev=ev(3), hv=("expansion_vessel", {"volume_l": 12, "precharge_bar": 0.8})), False),
    ],
)
def test_where_the_pressure_is_reduced(drawing: Drawing, fires: bool) -> None:
    assert bool(found(NAME, drawing)) is fires


def test_each_of_two_vessels_is_judged() -> None:
    cold = COLD.replace("t1.a:b", "t1.a:b t5.a:b")
    drawing = fed("t5.branch e2.connection", cold=cold, ev=ev(3), e2=ev(2))
    assert only(NAME, drawing).components == ("e2", "us", "rv")


@pytest.mark.parametrize(
    ("parts", "missing"),
    [
        ({"ev": ev(None)}, ("ev.precharge_bar",)),
        ({"rv": "pressure_reducing_valve"}, ("rv.set_pressure_bar",)),
        (
            {"ev": "expansion_vessel", "rv": "pressure_reducing_valve"},
            ("ev.precharge_bar", "rv.set_pressure_bar"),
        ),
    ],
)
def test_unanswered(parts: dict[str, Any], missing: tuple[str, ...]) -> None:
    finding = only(NAME, fed(**parts))
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "fault"


@pytest.mark.parametrize(
    "drawing",
    [
        fed(vessel="", cold=COLD.replace(" t1.a:b", "")),
        fed(us=store(internal_expansion=True), ev=ev(1)),
        fed(cold=COLD.replace(" rv.in:out", ""), ev=ev(1)),
        fed(cold="t1.b t2.a:b us.cold"),
        sealed(),
    ],
    ids=["no vessel", "internal expansion", "no reducing valve", "no feed", "no store"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize("name", [name for name in SOUND if name.startswith(("two", "heated", "beside"))])
def test_sound(name: str) -> None:
    assert asked(NAME, SOUND[name]).status == "judged"


@pytest.mark.parametrize("charge", [1, 4])
def test_the_cure_charges_it_as_the_reducing_valve_is_set(charge: float) -> None:
    analysis = analyse(fed(ev=ev(charge)))
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    (cure,) = cures(analysis, finding)
    assert cure.drawing.components["ev"].data["precharge_bar"] == 3


def test_a_store_heated_directly_has_one_right_charge() -> None:
    """Its water is no heating water that is filled to a pressure of the design."""
    ring = "hs.flow t3.a:b pu.in:out us.secondary_return"
    drawing = fed(
        "us.hot t9.a:b t4.a:b hs.return", "t9.branch o2.hot", heat=ring, hot="", heating_vessel="",
        ev=ev(3), o2="outlet", controls={},
        design={"fill_temperature_c": 10, "fill_pressure_bar": 1, "static_height_m": 3},
    )  # fmt: skip
    charge = {"vessel-precharge-wrong", "fill-pressure-below-reserve", NAME}
    assert {each.check for each in analyse(drawing).findings if each.check in charge} == set()

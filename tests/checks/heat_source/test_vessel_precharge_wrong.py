"""The charge of a vessel: from the static height and margin, less a tenth, up to the fill pressure."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, advice, asked, fault, only, told
from tests.checks.houses import vented
from tests.checks.sized import house, source, valve, vessel

NAME = "vessel-precharge-wrong"
LEAST = 0.0981 * 5 + 0.3


@pytest.mark.parametrize(
    ("charge", "expected"),
    [
        (LEAST, []),
        (LEAST - 0.1, []),
        (LEAST - 0.101, [fault("ev")]),
        (0.0, [fault("ev")]),
        (0.99, []),
        (1.0, [advice("ev")]),
        (1.001, [fault("ev")]),
    ],
)
def test_the_charge(charge: float, expected: list[Told]) -> None:
    assert told(NAME, house(ev=vessel(precharge_bar=charge))) == expected


OTHERS: dict[str, tuple[Drawing, list[Told]]] = {
    "no margin asked for": (house(ev=vessel(precharge_bar=0.45), design={"safety_margin_bar": 0}), []),
    "hotter than boiling: vapour counts": (
        house(ev=vessel(precharge_bar=0.9), design={"flow_temperature_c": 110, "fill_pressure_bar": 1.5}),
        [fault("ev")],
    ),
    "built in": (
        house(
            vessel_by="",
            hs=source(built_in=["vessel"], built_in_vessel_l=12, built_in_vessel_precharge_bar=0.3),
        ),
        [fault("hs")],
    ),
    "the top by the heights of the parts": (
        house(
            design={"static_height_m": None}, ev=vessel(precharge_bar=0.5), rad=("radiator", {"height_m": 4}),
            t1=("tee", {"height_m": 0}), t2=("tee", {"height_m": 0}),
        ),
        [fault("ev")],
    ),
    "a part higher than the known heights could only make it worse": (
        house(design={"static_height_m": None}, ev=vessel(precharge_bar=0.1)), [fault("ev")]
    ),
    "a second vessel higher up needs less": (
        house(
            "t1.branch t3.a:b sv.inlet", "t3.branch e2.connection", safety_by="", sv=valve(), t3="tee",
            e2=vessel(precharge_bar=0.5, height_m=3),
        ),
        [],
    ),
    "charged too high whatever the height": (
        house(design={"static_height_m": None}, ev=vessel(precharge_bar=1.4)), [fault("ev")]
    ),
    "too low whatever the fill": (
        house(design={"fill_pressure_bar": None}, ev=vessel(precharge_bar=0.4)), [fault("ev")]
    ),
    "two heat sources, one vessel, one finding": (
        house(
            "t1.branch t3.a:b sv.inlet", "h2.flow t3.branch", "t4.branch h2.return", safety_by="", sv=valve(),
            h2=source(), t3="tee", t4="tee", ev=vessel(precharge_bar=2),
            ring="hs.flow t1.a:b rad.flow:return t2.a:b t4.a:b hs.return",
        ),
        [fault("ev")],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "expected"), OTHERS.values(), ids=OTHERS)
def test_others(drawing: Drawing, expected: list[Told]) -> None:
    assert told(NAME, drawing) == expected
    assert asked(NAME, drawing).status == "judged"


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (house(ev=vessel(precharge_bar=None)), {"ev.precharge_bar"}),
        (house(design={"fill_pressure_bar": None}), {"design.fill_pressure_bar"}),
        (house(design={"static_height_m": None}), {"design.static_height_m"}),
        (house(design={"safety_margin_bar": None}), {"design.safety_margin_bar"}),
        (
            house(ev=vessel(precharge_bar=None), design={"static_height_m": None, "fill_pressure_bar": None}),
            {"ev.precharge_bar", "design.static_height_m", "design.fill_pressure_bar"},
        ),
    ],
)
def test_unanswered(drawing: Drawing, missing: set[str]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, set(finding.missing)) == ("unanswered", missing)


@pytest.mark.parametrize("drawing", [vented(), house(vessel_by="")], ids=["open-vented", "no vessel"])
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def offered(charge: float, fill: float) -> list[Drawing]:
    analysis = analyse(house(ev=vessel(precharge_bar=charge), design={"fill_pressure_bar": fill}))
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    return [cure.drawing for cure in cures(analysis, finding)]


@pytest.mark.parametrize(("charge", "fill"), [(0.2, 1.3), (1.3, 1.3), (1.6, 1.3)])
def test_the_cure_is_the_least_right_charge(charge: float, fill: float) -> None:
    first = offered(charge, fill)[0]
    assert first.components["ev"].data["precharge_bar"] == 0.8
    assert first.design["fill_pressure_bar"] == fill


@pytest.mark.parametrize("charge", [0.2, 1.0, 1.6])
def test_where_the_fill_leaves_no_reserve_the_best_cure_raises_it_too(charge: float) -> None:
    best = offered(charge, 1.0)[0]
    assert best.components["ev"].data["precharge_bar"] == 0.8
    assert best.design["fill_pressure_bar"] == 1.25

"""Settings of safety valves against what the parts on their water can bear."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, asked, danger, only, told
from tests.checks.houses import vented
from tests.checks.sized import house, source, valve, vessel

NAME = "safety-valve-set-too-high"
COIL_RING = "hs.flow t1.a:b vs.coil_flow:coil_return rad.flow:return t2.a:b hs.return"

CASES: dict[str, tuple[Drawing, list[Told]]] = {
    "exactly what all are made for": (house(), []),
    "above the heat source": (house(sv=valve(set_pressure_bar=3.01), ev=vessel(maximum_pressure_bar=6)), [danger("sv")]),
    "above the vessel": (house(ev=vessel(maximum_pressure_bar=2.5)), [danger("sv")]),
    "above the coil": (
        house(ring=COIL_RING, vs=("vented_store", {"coil_maximum_pressure_bar": 2.9})), [danger("sv")]
    ),
    "coil made for more": (house(ring=COIL_RING, vs=("vented_store", {"coil_maximum_pressure_bar": 3})), []),
    "left out: 3 bar": (house(sv=("safety_valve", {}), hs=source(maximum_pressure_bar=2)), [danger("sv")]),
    "built in, no setting: taken as the heat source's": (
        house(safety_by="", hs=source(built_in=["safety_valve"], maximum_pressure_bar=2.5)), []
    ),
    "built in, set too high": (
        house(safety_by="", hs=source(built_in=["safety_valve"], built_in_safety_valve_bar=4)), [danger("hs")]
    ),
    "built in, no setting, too high for the vessel": (
        house(safety_by="", hs=source(built_in=["safety_valve"], maximum_pressure_bar=4)), [danger("hs")]
    ),
    "too high already, whatever is not known": (
        house(sv=valve(set_pressure_bar=4), ev=vessel(maximum_pressure_bar=None)), [danger("sv")]
    ),
    "two valves, one wrong": (
        house("t3.branch s2.inlet", ring="hs.flow t1.a:b t3.a:b rad.flow:return t2.a:b hs.return", t3="tee",
              s2=valve(set_pressure_bar=6)),
        [danger("s2")],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "expected"), CASES.values(), ids=CASES)
def test_setting(drawing: Drawing, expected: list[Told]) -> None:
    assert told(NAME, drawing) == expected
    assert asked(NAME, drawing).status == "judged"


def test_the_weakest_is_named() -> None:
    finding = only(NAME, house(sv=valve(set_pressure_bar=3.5), ev=vessel(maximum_pressure_bar=2.5)))
    assert finding.components == ("sv", "ev", "hs")
    assert finding.numbers == {"set_pressure_bar": 3.5, "lowest_maximum_bar": 2.5}


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (house(sv=valve(set_pressure_bar=None)), {"sv.set_pressure_bar"}),
        (
            house(ev=vessel(maximum_pressure_bar=None), hs=source(maximum_pressure_bar=None)),
            {"hs.maximum_pressure_bar", "ev.maximum_pressure_bar"},
        ),
        (house(ring=COIL_RING, vs="vented_store"), {"vs.coil_maximum_pressure_bar"}),
    ],
)
def test_unanswered(drawing: Drawing, missing: set[str]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, set(finding.missing)) == ("unanswered", missing)


@pytest.mark.parametrize("drawing", [vented(), house(safety_by="")], ids=["open-vented", "no valve"])
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_the_cure_is_the_limit() -> None:
    analysis = analyse(house(sv=valve(set_pressure_bar=4)))
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    (cure,) = cures(analysis, finding)
    assert cure.drawing.components["sv"].data["set_pressure_bar"] == 3

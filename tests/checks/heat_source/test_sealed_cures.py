"""Cures of vessels and safety valves that are absent or can be cut off: tried by a fresh analysis."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import Cure, cures
from circuitcheck.drawing.value import Drawing
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.checks.houses import SECURED, TIGHT_PUMP
from tests.checks.sized import house, source

HAND = "isolating_valve"
OPEN_RADIATOR = ("radiator", {"water_content_l": 10, "thermostatic": False, "valves": False})


def cured(check: str, drawing: Drawing) -> tuple[Cure, ...]:
    """The cures of the one finding of that check; each leaves no finding of that check."""
    analysis = analyse(drawing)
    (finding,) = [each for each in analysis.findings if each.check == check]
    found = cures(analysis, finding)
    for cure in found:
        assert not [each for each in analyse(cure.drawing).findings if each.check == check]
    return found


CASES: dict[str, tuple[str, Drawing]] = {
    "valve before the vessel": (
        "vessel-can-be-cut-off", house(vessel_by="t2.branch iv.a:b ev.connection", iv=HAND)
    ),
    "secured valve before the vessel": (
        "vessel-can-be-cut-off", house(vessel_by="t2.branch iv.a:b ev.connection", iv=SECURED)
    ),
    "two valves before the vessel": (
        "vessel-can-be-cut-off", house(vessel_by="t2.branch v1.a:b v2.a:b ev.connection", v1=HAND, v2=HAND)
    ),
    "valve in the main pipe": (
        "vessel-can-be-cut-off", house(ring="hs.flow t1.a:b rad.flow:return t2.a:b iv.a:b hs.return", iv=HAND)
    ),
    "valve before the safety valve": (
        "safety-valve-can-be-cut-off", house(safety_by="t1.branch iv.a:b sv.inlet", iv=HAND)
    ),
    "valve in the flow": (
        "safety-valve-can-be-cut-off",
        house(ring="hs.flow iv.a:b t1.a:b rad.flow:return t2.a:b hs.return", iv=HAND),
    ),
    "vessel beyond a check valve": (
        "vessel-absent", house(vessel_by="t2.branch cv.in:out ev.connection", cv="check_valve")
    ),
    "no vessel": ("vessel-absent", house(vessel_by="", ring="hs.flow t1.a:b rad.flow:return hs.return", t2="cap")),
    "safety valve beyond a check valve": (
        "safety-valve-absent", house(safety_by="t1.branch cv.in:out sv.inlet", cv="check_valve")
    ),
    "no safety valve": (
        "safety-valve-absent", house(safety_by="", ring="hs.flow rad.flow:return t2.a:b hs.return", t1="cap")
    ),
}  # fmt: skip


@pytest.mark.parametrize(("check", "drawing"), CASES.values(), ids=CASES)
def test_there_is_a_cure(check: str, drawing: Drawing) -> None:
    assert cured(check, drawing)


def test_what_stood_between_is_taken_out() -> None:
    first = cured(*CASES["two valves before the vessel"])[0]
    assert not {"v1", "v2"} & set(first.drawing.components)
    assert "take out" in first.message


def test_the_vessel_goes_to_the_inlet_of_a_pump_that_nothing_cuts_off() -> None:
    ring = "hs.flow t1.a:b rad.flow:return t2.a:b iv.a:b pu.in:out hs.return"
    first = cured("vessel-can-be-cut-off", house(ring=ring, iv=HAND, pu=TIGHT_PUMP))[0]
    assert "inlet" in first.message


def test_a_new_vessel_is_sized_and_charged() -> None:
    first = cured(*CASES["no vessel"])[0]
    (vessel,) = [part for part in first.drawing.components.values() if part.kind.name == "expansion_vessel"]
    assert (vessel.data["volume_l"], vessel.data["precharge_bar"]) == (12, 0.8)


def test_a_new_safety_valve_is_set_for_the_weakest_and_passes_all_the_heat() -> None:
    drawing = house(
        safety_by="", ring="hs.flow rad.flow:return t2.a:b hs.return", t1="cap",
        hs=source(maximum_pressure_bar=2.5),
    )  # fmt: skip
    first = cured("safety-valve-absent", drawing)[0]
    (valve,) = [part for part in first.drawing.components.values() if part.kind.name == "safety_valve"]
    assert (valve.data["set_pressure_bar"], valve.data["capacity_kw"]) == (2.5, 18)


def test_a_heat_source_that_is_shut_in_gets_a_vessel_of_its_own_or_loses_a_valve() -> None:
    analysis = analyse(read(data_path("samples") / "guest-house-second-source-cut-off.wetcircuit"))
    (finding,) = [each for each in analysis.findings if each.check == "vessel-can-be-cut-off"]
    assert {cure.message for cure in cures(analysis, finding)} == {
        "Take Return valve 2 out of the pipe.",
        "Take Flow valve 2 out of the pipe.",
        "Fit an expansion vessel of 2 l, charged to 0.8 bar, on a tee right at the return of Heat source 2.",
    }


def test_a_pump_with_valves_is_no_valve_to_take_out() -> None:
    ring = "hs.flow t1.a:b rad.flow:return t2.a:b pu.in:out hs.return"
    drawing = house(ring=ring, pu=("pump", {"isolating_valves": True}))
    messages = [cure.message for cure in cured("vessel-can-be-cut-off", drawing)]
    assert messages and not any("Take pump" in each or "Take Pump" in each for each in messages)

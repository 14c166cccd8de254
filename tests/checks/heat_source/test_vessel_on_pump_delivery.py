"""On which side of the pump a vessel joins."""

from __future__ import annotations

from random import Random

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from circuitcheck.lessons.catalogue import planted
from circuitcheck.lessons.site import Site
from tests.checks.asking import Told, advice, asked, only, told
from tests.checks.houses import TIGHT_PUMP, vented
from tests.checks.sized import house, source, vessel

NAME = "vessel-on-pump-delivery"
FLOW_PUMP = "hs.flow t1.a:b pu.in:out rad.flow:return t2.a:b hs.return"
RETURN_PUMP = "hs.flow t1.a:b rad.flow:return t2.a:b pu.in:out hs.return"
ZONES = "hs.flow t1.a:b t3.a:b rad.flow:return t4.a:b t2.a:b pu.in:out hs.return"

CASES: dict[str, tuple[Drawing, list[Told]]] = {
    "pump on the flow, vessel on the return": (house(ring=FLOW_PUMP, pu="pump"), []),
    "pump on the return, vessel before it": (house(ring=RETURN_PUMP, pu="pump"), []),
    "vessel between pump and heat source": (
        house(ring="hs.flow t1.a:b rad.flow:return pu.in:out t2.a:b hs.return", pu="pump"), [advice("ev")]
    ),
    "vessel on the flow beyond the pump": (
        house(ring="hs.flow t1.a:b pu.in:out t2.a:b rad.flow:return hs.return", pu="pump"), [advice("ev")]
    ),
    "pump on the return, vessel on the flow": (
        house("t1.branch t5.a:b sv.inlet", "t5.branch ev.connection", ring=RETURN_PUMP, vessel_by="", safety_by="",
              pu="pump", t5="tee", t2="tee"),
        [advice("ev")],
    ),
    "a shut bypass valve leads nowhere": (
        house("t3.branch by.in:out t4.branch", ring=ZONES, pu="pump", t3="tee", t4="tee", by="bypass_valve"), []
    ),
    "beyond a separator": (
        house("se.load_flow rad.flow:return se.load_return",
              ring="hs.flow t1.a:b pu.in:out se.source_flow:source_return t2.a:b hs.return", pu="pump", se="separator"),
        [],
    ),
    "beyond a coil": (
        house(ring="hs.flow t1.a:b pu.in:out vs.coil_flow:coil_return t2.a:b rad.flow:return hs.return", pu="pump",
              vs="vented_store"),
        [],
    ),
    "through a zone valve": (
        house(ring="hs.flow t1.a:b pu.in:out zv.in:out t2.a:b rad.flow:return hs.return", pu="pump", zv="zone_valve"),
        [advice("ev")],
    ),
    "pump built in, vessel on the return": (house(hs=source(built_in=["pump"])), []),
    "pump built in, vessel on the flow": (
        house("t1.branch t5.a:b sv.inlet", "t5.branch ev.connection", vessel_by="", safety_by="", t5="tee",
              hs=source(built_in=["pump"])),
        [advice("ev")],
    ),
    "two heat sources, one vessel, one finding": (
        house("h2.flow t5.branch", "t6.branch h2.return", t5="tee", t6="tee", pu="pump", h2=source(),
              ring="hs.flow t1.a:b t5.a:b rad.flow:return pu.in:out t2.a:b t6.a:b hs.return"),
        [advice("ev")],
    ),
    "two pumps side by side on the flow": (
        house("t3.branch p2.in:out r2.flow:return t4.branch",
              ring="hs.flow t1.a:b t3.a:b pu.in:out rad.flow:return t4.a:b t2.a:b hs.return",
              pu="pump", p2="pump", r2="radiator", t3="tee", t4="tee"),
        [],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "expected"), CASES.values(), ids=CASES)
def test_side(drawing: Drawing, expected: list[Told]) -> None:
    assert told(NAME, drawing) == expected
    assert asked(NAME, drawing).status == "judged"


def test_the_pump_is_named() -> None:
    assert only(NAME, CASES["vessel on the flow beyond the pump"][0]).components == ("ev", "pu")


@pytest.mark.parametrize(
    "drawing",
    [
        vented(),
        house(),
        house(ring=FLOW_PUMP, pu="pump", vessel_by=""),
        house(vessel_by="", hs=source(built_in=["pump", "vessel"])),
    ],
    ids=["open-vented", "no pump", "no vessel", "both built in by the maker"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_the_cure_moves_the_vessel_to_the_inlet() -> None:
    ring = "hs.flow t1.a:b rad.flow:return pu.in:out t2.a:b hs.return"
    analysis = analyse(house(ring=ring, pu=TIGHT_PUMP))
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    cure = cures(analysis, finding)[0]
    assert told(NAME, cure.drawing) == []


@pytest.mark.parametrize("built_in", [["pump"], ["pump", "check_valve"]])
def test_the_cure_moves_the_vessel_to_the_return_of_a_pump_built_in(built_in: list[str]) -> None:
    drawing = house(
        "t1.branch t5.a:b sv.inlet", "t5.branch ev.connection", vessel_by="", safety_by="", t5="tee",
        hs=source(built_in=built_in),
    )  # fmt: skip
    first, *_ = checks()[NAME].propose(Case(drawing), only(NAME, drawing))
    assert told(NAME, first.drawing) == []


def test_no_cure_that_could_cut_the_vessel_off() -> None:
    analysis = analyse(CASES["vessel between pump and heat source"][0])
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    assert cures(analysis, finding) == ()


def test_a_second_vessel_is_judged_by_itself() -> None:
    drawing = house(
        "t5.branch e2.connection",
        ring="hs.flow t1.a:b pu.in:out t5.a:b rad.flow:return t2.a:b hs.return",
        pu="pump", t5="tee", e2=vessel(),
    )  # fmt: skip
    assert told(NAME, drawing) == [advice("e2")]


def high(fill_bar: float, top_m: float = 6, flow_c: float = 80) -> Drawing:
    """A vessel and a pump's outlet at the bottom, a radiator at the top, everything known to solve it.

    Against a nearly blocked radiator the pump raises its whole head, and takes it off the return.
    """
    long = {"size_mm": 10, "length_m": 60.0, "bends": 0, "rise_m": None}
    drawing = house(
        ring="hs.flow t1.a:b rad.flow:return pu.in:out t2.a:b hs.return",
        design={"return_temperature_c": 60, "fill_pressure_bar": fill_bar, "heat_called_by": "programmer_only",
                "flow_temperature_c": flow_c},
        hs=source(water_content_l=3, minimum_flow_lpm=0),
        rad=("radiator", {"water_content_l": 10, "output_w": 1500, "thermostatic": False, "height_m": top_m}),
        pu=("pump", {"isolating_valves": False, "shut_off_head_m": 6, "maximum_flow_lpm": 30, "height_m": 0}),
        pipe_data={"p2": long, "p1": {"bends": 0}, "p3": {"bends": 0, "length_m": 6.5}, "p4": {"bends": 0},
                   "p5": {"bends": 0}, "p6": {"bends": 0}, "p7": {"bends": 0}},
    )  # fmt: skip
    return drawing


def test_a_fault_where_the_top_falls_below_atmospheric() -> None:
    finding = only(NAME, high(0.9))
    assert finding.grade.value == "fault", finding.message
    assert finding.components[:2] == ("ev", "pu")
    assert finding.numbers["lowest_bar"] < 0
    assert "it falls to -0.263 bar at radiator rad, where there must be 0 bar at least." in finding.message


def test_advice_where_the_fill_carries_it() -> None:
    finding = only(NAME, high(2.0))
    assert finding.grade.value == "advice"
    # The pump's head, 0.59 bar at most, and 6 m of height are taken off the fill.
    assert 2.0 - 0.0981 * 12 <= finding.numbers["lowest_bar"] < 2.0 - 0.0981 * 6


@pytest.mark.parametrize(("flow_c", "grade"), [(95, "advice"), (110, "fault")])
def test_a_fault_where_water_hotter_than_boiling_would_boil(flow_c: float, grade: str) -> None:
    finding = only(NAME, high(1.4, flow_c=flow_c))
    assert 0 < finding.numbers["lowest_bar"] < 0.4  # water of 110 °C boils at 0.42 bar
    assert finding.grade.value == grade


def test_what_is_not_known_is_named() -> None:
    finding = only(NAME, CASES["vessel on the flow beyond the pump"][0])
    assert finding.grade.value == "advice"
    assert "pu.shut_off_head_m" in finding.message


def test_the_pump_is_moved_to_where_water_comes_away_from_the_vessel() -> None:
    """Right after the vessel's tee its own valves could part vessel and heat source; beyond the safety valve
    they cannot."""
    (put,) = planted(NAME, Site(arrangements()["two-stores"].drawing, Random("cure")))
    analysis = analyse(put.drawing)
    (finding,) = analysis.findings
    assert finding.grade.value == "fault"
    said = [cure.message for cure in cures(analysis, finding)]
    ending = "so that water comes from the tee of Heating vessel to its inlet."
    assert said == [f"Move Pump into pipe p2, {ending}", f"Move Pump into pipe p3, {ending}"]
    for cure in cures(analysis, finding):
        assert analyse(cure.drawing).findings == ()
        (pump,) = [part for part in cure.drawing.components.values() if part.kind.name == "pump"]
        assert pump.data["shut_off_head_m"] == 8 and pump.data["isolating_valves"]

"""How far the excuse reaches: end switches stop the plant only once every motor valve is shut."""

from __future__ import annotations

from typing import Any

from tests.checks.asking import only, told
from tests.checks.houses import OPEN_RADIATOR, pumped
from tests.made import Part, made

NAME = "no-way-round-when-zones-shut"
PUMP = "pump-against-shut-valves"
NO_RUN_ON: Part = ("heat_source", {"pump_overrun_min": 0, "minimum_flow_lpm": 0})


def test_two_motor_valves_in_series_are_not_excused() -> None:
    """One of them open calls for heat while the other stands in the way."""
    drawing = pumped(
        "hs.flow pu.in:out z1.in:out z2.in:out rad.flow:return hs.return",
        hs=NO_RUN_ON,
        z1="zone_valve",
        z2="zone_valve",
        rad=OPEN_RADIATOR,
    )
    assert only(NAME, drawing).grade.value == "fault"
    assert only(PUMP, drawing).grade.value == "fault"
    assert only(NAME, drawing).witness is not None


def test_no_loop_whatever_the_valves_do_is_not_excused() -> None:
    """The pump stands beside the heat source's ring: its own valves call, and heat goes nowhere."""
    drawing = made(
        {
            "hs": NO_RUN_ON,
            "pu": "pump",
            "z1": "zone_valve",
            "z2": "zone_valve",
            "r1": OPEN_RADIATOR,
            "r2": OPEN_RADIATOR,
            "t1": "tee",
            "t2": "tee",
            "t3": "tee",
            "t4": "tee",
            "c1": "check_valve",
        },
        """hs.flow - t1.a
        t1.b - z1.in
        z1.out - r1.flow
        r1.return - t2.a
        t2.b - c1.out
        c1.in - hs.return
        t1.branch - t3.a
        t3.b - pu.in
        pu.out - z2.in
        z2.out - r2.flow
        r2.return - t4.a
        t4.b - t3.branch
        t4.branch - t2.branch""",
    )
    assert only(NAME, drawing).grade.value == "fault"


def test_a_head_in_one_zone_does_not_hide_valves_in_series_in_another() -> None:
    drawing = pumped(
        "hs.flow pu.in:out t1.a:b z1.in:out z2.in:out r1.flow:return t2.a:b hs.return",
        "t1.branch z3.in:out r3.flow:return t2.branch",
        hs=NO_RUN_ON,
        z1="zone_valve",
        z2="zone_valve",
        z3="zone_valve",
        r1=OPEN_RADIATOR,
        r3="radiator",
    )
    assert only(NAME, drawing).grade.value == "fault"


def test_what_motor_valves_alone_do_is_a_fault_whatever_is_not_known() -> None:
    unknown: dict[str, Any] = {"pump_overrun_min": None}
    drawing = pumped(
        "hs.flow pu.in:out z1.in:out z2.in:out rad.flow:return hs.return",
        hs=("heat_source", unknown),
        z1="zone_valve",
        z2="zone_valve",
        rad=OPEN_RADIATOR,
    )
    assert [each.grade for each in told(NAME, drawing)] == ["fault"]


def test_a_zone_valve_beside_a_three_port_valve_keeps_the_excuse() -> None:
    """With the one zone valve shut nothing calls, wherever the three-port valve stands."""
    drawing = pumped(
        "hs.flow pu.in:out tp.ab:a z1.in:out r1.flow:return t1.a:b hs.return",
        "tp.b us.coil_flow:coil_return t1.branch",
        hs=NO_RUN_ON,
        tp="three_port_valve",
        z1="zone_valve",
        r1=OPEN_RADIATOR,
        us="unvented_store",
    )
    assert told(NAME, drawing) == []

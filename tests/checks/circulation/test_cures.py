"""What the checks of circulation and control propose puts their findings right."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.check import Proposal
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.checks.asking import asked, only
from tests.checks.circulation import (
    test_emitter_not_in_a_loop,
    test_floor_heating_unlimited,
    test_heat_called_without_interlock,
    test_no_way_round_when_zones_shut,
    test_pump_against_shut_valves,
    test_zone_without_control,
    test_zones_share_a_valve,
)
from tests.checks.circulation.controlled import PROGRAMMER, ROOM, STORE

INTERLOCK = test_heat_called_without_interlock.FIRES
CONTROL = test_zone_without_control.FIRES
SHARED = test_zones_share_a_valve.FIRES
EMITTER = test_emitter_not_in_a_loop.FIRES
PUMP = test_pump_against_shut_valves.FIRES
ROUND = test_no_way_round_when_zones_shut.FIRES

INLETS = ("hz", "flow"), ("us", "coil_flow")
NO_PUMP_THERE = "pump outside the loop"

CURED: dict[str, list[Drawing]] = {
    "emitter-not-in-a-loop": [
        EMITTER["no pump"][0],
        EMITTER["check valve in its return the wrong way round"][0],
        EMITTER["a sealed store's coil without a pump"][0],
    ],
    "floor-heating-unlimited": [
        test_floor_heating_unlimited.FIRES[case] for case in ("no valve", "set too high", "behind an exchanger")
    ],
    "heat-called-without-interlock": [
        INTERLOCK[case][0]
        for case in ("heads only", "the programmer alone calls", "no store thermostat", "no controls at all",
                     "one pump without", "a rail with a head, which nothing holds")
    ],
    "zone-without-control": [
        CONTROL[case][0]
        for case in ("heads only", "a zone of heads only", "a way round its valve", "a rail with a head beside a controlled zone",
                     "the pump of the other zone obeys it")
    ],
    "zones-share-a-valve": [
        SHARED[case][0] for case in ("two zones", "in the return they share", "heating and hot water")
    ],
    "pump-against-shut-valves": [
        PUMP[case][0]
        for case in ("no bypass", "bypass backwards", "bypass beyond the zone valve", "built-in pump", "no loop",
                     "drinking water, check valve backwards", "drinking water, a motor valve")
    ],
    "no-way-round-when-zones-shut": [drawing for case, (drawing, _) in ROUND.items() if case != NO_PUMP_THERE],
}  # fmt: skip

CASES = [
    pytest.param(name, drawing, id=f"{name} {number}")
    for name, drawings in CURED.items()
    for number, drawing in enumerate(drawings)
]


@pytest.mark.parametrize(("name", "drawing"), CASES)
def test_one_proposal_at_least_puts_it_right(name: str, drawing: Drawing) -> None:
    finding = only(name, drawing)
    proposals = list(checks()[name].propose(Case(drawing), finding))
    left = [asked(name, each.drawing).findings for each in proposals]
    assert any(not findings for findings in left), [str(each.says) for each in proposals]
    assert all(str(each.says).endswith(".") for each in proposals)


def proposed(name: str, drawing: Drawing) -> list[Proposal]:
    return list(checks()[name].propose(Case(drawing), only(name, drawing)))


def test_the_controls_of_a_shared_valve_go_to_the_zones_they_are_for() -> None:
    drawing = test_zones_share_a_valve.behind_one_valve(
        "t1.branch us.coil_flow:coil_return t2.branch",
        us="unvented_store",
        controls={
            "pr": (PROGRAMMER, ("zv",)),
            "st": (STORE, ("zv",)),
            "rt": (ROOM, ("zv",)),
            "r2": (ROOM, ("zv",)),
        },
    )
    (proposal,) = proposed("zones-share-a-valve", drawing)
    after = proposal.drawing
    acts_on = {id: control.acts_on for id, control in after.controls.items()}
    of_zone, of_store = (after.pipes[after.joined[Joint(part, port)]] for part, port in INLETS)
    assert acts_on == {
        "pr": (*acts_on["rt"], *acts_on["st"]),
        "st": tuple(joint.part for joint in of_store.joints if joint.port == "out"),
        "rt": tuple(joint.part for joint in of_zone.joints if joint.port == "out"),
        "r2": (),
    }


def test_a_valve_that_holds_hot_water_too_gets_no_room_thermostat() -> None:
    drawing = test_zones_share_a_valve.behind_one_valve(
        "t1.branch us.coil_flow:coil_return t2.branch", us="unvented_store"
    )
    says = [str(each.says) for each in proposed("zone-without-control", drawing)]
    assert says == [
        "Fit a motor valve in the flow to heating zone hz, and a room thermostat that acts on it."
    ]


def test_radiators_get_no_valve_before_one_of_them() -> None:
    (proposal,) = proposed("zone-without-control", CONTROL["heads only"][0])
    assert str(proposal.says) == "Fit a room thermostat that acts on pump pu."


def test_a_blending_valve_set_too_high_is_set_lower_first() -> None:
    first, *_ = proposed("floor-heating-unlimited", test_floor_heating_unlimited.FIRES["set too high"])
    assert str(first.says).startswith("Set blending valve ")


@pytest.mark.parametrize(
    ("sample", "check", "says"),
    [
        ("terrace-bypass-backwards", "no-way-round-when-zones-shut", "Turn Bypass round."),
        ("terrace-bypass-backwards", "pump-against-shut-valves", "Turn Bypass round."),
        (
            "flat-over-workshop-pump-no-way-round",
            "no-way-round-when-zones-shut",
            "Fit an automatic bypass valve from the flow of Heat source to the return of Heat source, and set it.",
        ),
    ],
)
def test_samples(sample: str, check: str, says: str) -> None:
    analysis = analyse(read(data_path("samples") / f"{sample}.wetcircuit"))
    finding = next(each for each in analysis.findings if each.check == check)
    found = cures(analysis, finding)
    assert says in [cure.message for cure in found]

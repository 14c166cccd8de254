"""Situations by name, and what a press makes of them."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.circuit.situations import BOTH, HEATING_ONLY, RUN_ON
from circuitcheck.operating.positions import (
    AS_DRAWN,
    named,
    pressed,
    proving,
    shut_by_hand,
    turnables,
    turned,
)
from circuitcheck.operating.standing import Operated
from tests.made import made
from tests.operating.asking import SAMPLES, operated, ring, sample, situation


@pytest.mark.parametrize("name", SAMPLES)
def test_every_situation_has_a_name_of_its_own_and_is_nobodys_own(name: str) -> None:
    offered = operated(name).situations
    assert offered
    assert len({each.name for each in offered}) == len(offered)
    assert not any(each.is_own for each in offered)
    first = offered[0]
    assert named(offered, first.name) is first


def test_a_drawing_without_heat_stands_as_drawn() -> None:
    at_work = Operated(made({"iv": "isolating_valve", "main": "cold_main"}, "main.outlet - iv.a"))
    (only,) = at_work.situations
    assert only.name == AS_DRAWN and not only.firing and not only.shut
    assert pressed(at_work.plant, only, "main") is None


def test_a_press_turns_what_a_part_has_to_turn() -> None:
    plant = (at_work := Operated(ring())).plant
    at = situation(at_work, HEATING_ONLY)
    assert at.firing == {"hs"} and at.running == {"pump"} and not at.shut
    shut = pressed(plant, at, "iv_flow")
    assert shut is not None and shut.shut == {"iv_flow"} and shut.is_own
    again = pressed(plant, shut, "iv_flow")
    assert again is not None and again.shut == at.shut
    off = pressed(plant, at, "hs")
    assert off is not None and off.firing == frozenset() and off.running == at.running
    stands = pressed(plant, at, "pump")
    assert stands is not None and stands.running == frozenset()
    flooded = pressed(plant, at, "vessel")
    assert flooded is not None and flooded.flooded == {"vessel"}
    assert pressed(plant, at, "t_sv") is None and pressed(plant, at, "nothing") is None


@pytest.mark.parametrize(("action", "stands"), [("divert", 2), ("share", 3)])
def test_a_three_port_valve_is_never_shut_both_ways(action: str, stands: int) -> None:
    drawing = made(
        {
            "hs": "heat_source",
            "tv": ("three_port_valve", {"action": action}),
            "r1": "radiator",
            "r2": "radiator",
        },
        "hs.flow - tv.ab\n tv.a - r1.flow\n tv.b - r2.flow\n r1.return - hs.return",
    )
    plant = (at_work := Operated(drawing)).plant
    at = at_work.situations[0]
    seen = set()
    for _ in range(6):
        found = pressed(plant, at, "tv")
        assert found is not None
        at = found
        legs = at.shut & {"tv:a", "tv:b"}
        assert len(legs) < 2
        seen.add(legs)
    assert len(seen) == stands
    other = turned(plant, shut_by_hand(plant.circuit, at, ("tv:a",)), "tv:b")
    assert other.shut & {"tv:a", "tv:b"} == {"tv:b"}
    assert turned(plant, other, "tv:b").shut & {"tv:a", "tv:b"} == frozenset()


@pytest.mark.parametrize("name", SAMPLES)
def test_every_witness_opens_with_its_valves_set_and_no_others(name: str) -> None:
    at_work = operated(name)
    labels = {each.label for each in turnables(at_work.plant.circuit)}
    for finding in analyse(sample(name)).findings:
        if finding.witness is None or not finding.witness.shut:
            continue
        assert labels.issuperset(finding.witness.shut)
        found = proving(at_work.situations, at_work.plant.circuit, finding.witness.shut)
        assert found.shut == frozenset(finding.witness.shut) and found.is_own


def test_what_controls_shut_is_seen_as_the_pump_runs_on_what_hands_shut_with_heat_called() -> None:
    flat = operated("flat-over-workshop-pump-no-way-round")
    run_on = proving(flat.situations, flat.plant.circuit, ("zv_bed", "zv_living"))
    assert run_on.name == RUN_ON and run_on.running and not run_on.firing
    house = operated("terrace-valve-before-vessel")
    by_hand = proving(house.situations, house.plant.circuit, ("return_valve", "pump"))
    assert by_hand.name == BOTH and by_hand.firing == {"source"}

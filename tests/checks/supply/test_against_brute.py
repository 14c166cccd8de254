"""The supply checks that walk the water are proved equal to trying every way."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import found
from tests.checks.supply.brute_supply import (
    STORE_PORTS,
    cold_taps,
    fed_supplies,
    fewest_checks,
    parted_waters,
    parts_of,
    random_supplies,
    unblended,
)

few = settings(max_examples=100, deadline=None)


@few
@given(st.one_of(random_supplies(), fed_supplies()))
def test_baths(drawing: Drawing) -> None:
    expected = set()
    hot = [
        part
        for part in parts_of(drawing, *STORE_PORTS, "combination_heat_source")
        if part.data.get("thermostat_c", 100) > 48
    ]
    for bath in parts_of(drawing, "outlet"):
        if bath.data["fitting"] == "bath" and unblended(drawing, hot, (bath.id, "hot"), 48):
            expected.add(bath.id)
    assert {each.components[0] for each in found("bath-not-blended", drawing)} == expected


@few
@given(st.one_of(random_supplies(), fed_supplies()))
def test_far_too_hot(drawing: Drawing) -> None:
    drawn = [(part.id, port) for part in parts_of(drawing, "outlet") for port in ("hot", "cold")]
    told = {each.components[0]: each for each in found("hot-supply-too-hot", drawing)}
    for store in parts_of(drawing, *STORE_PORTS):
        if store.data["thermostat_c"] > 80:
            outlets = {goal[0] for goal in drawn if unblended(drawing, [store], goal, 60)}
            finding = told.pop(store.id, None)
            assert (finding is None) == (not outlets)
            assert finding is None or (finding.grade.value, set(finding.components[1:])) == (
                "danger",
                outlets,
            )
        else:  # heat that no thermostat stops: random circuits have no controls, and no limit is known
            finding = told.pop(store.id, None)
            assert finding is None or finding.grade.value == "unanswered"
    assert told == {}


@few
@given(st.one_of(random_supplies(), fed_supplies()))
def test_cold_taps(drawing: Drawing) -> None:
    told = {each.components[0]: set(each.components[1:]) for each in found("cold-drawn-after-check", drawing)}
    expected = {
        store.id: taps
        for store in parts_of(drawing, "unvented_store")
        if (taps := cold_taps(drawing, store.id))
    }
    assert told == expected


@few
@given(st.one_of(random_supplies(), fed_supplies()))
def test_meeting_waters(drawing: Drawing) -> None:
    meets_as_every_way_says(drawing)


@few
@given(parted_waters())
def test_waters_held_apart_by_check_valves(drawing: Drawing) -> None:
    meets_as_every_way_says(drawing)


def meets_as_every_way_says(drawing: Drawing) -> None:
    """Assert that of each heat source what is found is what the fewest check valves on any way allow."""
    goals = {(part.id, "outlet") for part in parts_of(drawing, "cold_main")}
    goals |= {(part.id, port) for part in parts_of(drawing, "outlet") for port in ("hot", "cold")}
    goals |= {(part.id, port) for part in parts_of(drawing, *STORE_PORTS) for port in ("hot", "cold")}
    told = {each.components[0]: each.grade.value for each in found("cross-connection", drawing)}
    for heat in parts_of(drawing, "heat_source", "combination_heat_source"):
        fewest = fewest_checks(drawing, (heat.id, "flow"), goals)
        if fewest is None:
            assert heat.id not in told
        elif heat.id in told:
            assert told[heat.id] == ("danger" if fewest < 2 else "fault")
        else:
            # Left out only where it heats stored drinking water and nothing else.
            store_ports = {(part.id, "hot") for part in parts_of(drawing, *STORE_PORTS)}
            assert fewest_checks(drawing, (heat.id, "flow"), store_ports) is not None
            emitters = {
                (part.id, port) for part in parts_of(drawing, "radiator") for port in ("flow", "return")
            }
            assert fewest_checks(drawing, (heat.id, "flow"), emitters) is None

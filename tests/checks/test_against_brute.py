"""Whole answers are proved equal to trying every position: verdict, grade and size of the witness."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding
from tests.circuit import brute
from tests.circuit.random_circuits import circuits, plants

NO_POSITION: frozenset[str] = frozenset()
COMPARED = {
    "vessel-absent",
    "vessel-can-be-cut-off",
    "safety-valve-absent",
    "safety-valve-can-be-cut-off",
    "no-way-round-when-zones-shut",
    "pump-against-shut-valves",
}


def by_subject(drawing: Drawing) -> dict[tuple[str, str], Finding]:
    """The findings by check and thing judged; there is one for each."""
    found: dict[tuple[str, str], Finding] = {}
    for finding in analyse(drawing).findings:
        if finding.check not in COMPARED:
            continue
        key = (finding.check, finding.components[0])
        assert key not in found
        found[key] = finding
    return found


@given(st.one_of(circuits(), plants()))
def test_vessel_and_safety_valve(drawing: Drawing) -> None:
    plant = brute.plant(drawing)
    told = by_subject(drawing)
    for heat, start in plant.heats.items():
        for device, goals in (("vessel", plant.vessels), ("safety-valve", plant.safety_valves)):
            absent = told.get((f"{device}-absent", heat))
            cut = told.get((f"{device}-can-be-cut-off", heat))
            reached = bool(goals) and brute.joined(plant, start, goals, NO_POSITION)
            assert (absent is None) == reached
            expected = brute.cut_answer(plant, start, goals) if reached else None
            assert (cut is None) == (expected is None)
            if cut is None or expected is None or cut.witness is None:
                continue
            only_secured = expected.unsecured_size is None
            assert cut.grade.value == ("advice" if device == "vessel" and only_secured else "danger")
            assert len(cut.witness.shut) == (expected.size if only_secured else expected.unsecured_size)
            assert frozenset(cut.witness.alone) == expected.alone
            assert cut.components[1 : 1 + len(cut.witness.parts)] == cut.witness.parts


@given(st.one_of(circuits(), plants()))
def test_way_round_and_pumps(drawing: Drawing) -> None:
    plant = brute.plant(drawing)
    told = by_subject(drawing)
    loops = brute.loops(plant)
    entries = brute.controlled_entries(plant)
    pumps = {way.pump for way in plant.ways if way.pump}
    for pump in pumps:
        ways = [loop.controlled for loop in loops if pump in loop.pumps]
        expected = brute.smallest_without(ways, entries)
        finding = told.get(("pump-against-shut-valves", pump))
        assert (finding is None) == (expected is None)
        if finding is not None and finding.witness is not None:
            assert finding.grade.value == "fault"  # the run-on of 5 minutes is no excuse
            assert len(finding.witness.shut) == expected
    for heat in plant.heats:
        ways = [way for pump in pumps for way in brute.counted(loops, pump, heat)]
        expected = brute.smallest_without(ways, entries)
        finding = told.get(("no-way-round-when-zones-shut", heat))
        if expected is None:
            assert finding is None
        elif ways:
            assert finding is not None and finding.witness is not None
            assert len(finding.witness.shut) == expected
            if expected == 1:
                alone = {each for each in entries if all(each in way for way in ways)}
                assert set(finding.witness.alone) == alone


@given(st.one_of(circuits(), plants()))
def test_the_excuse(drawing: Drawing) -> None:
    """No run-on, no least flow, end switches: by trying every position in which a valve calls."""
    parts = dict(drawing.components)
    for id, part in parts.items():
        if part.kind.name == "heat_source":
            data = {**part.data, "pump_overrun_min": 0, "minimum_flow_lpm": 0}
            parts[id] = replace(part, data=data)
    drawing = replace(drawing, components=parts)
    plant = brute.plant(drawing)
    told = by_subject(drawing)
    loops = brute.loops(plant)
    entries = brute.controlled_entries(plant)
    pumps = {way.pump for way in plant.ways if way.pump}
    for heat in plant.heats:
        ways = [way for pump in pumps for way in brute.counted(loops, pump, heat)]
        motors = brute.motors_on_the_water_of(plant, heat)
        if not motors or not ways:
            continue
        calling = {each for each in motors if each in drawing.components} or motors
        unsafe = [
            position
            for position in brute.positions(entries)
            if calling - position and all(way & position for way in ways)
        ]
        finding = told.get(("no-way-round-when-zones-shut", heat))
        if any(position <= motors for position in unsafe):
            assert finding is not None and finding.grade.value == "fault"
        elif unsafe:
            assert finding is not None and finding.grade.value == "advice"
        else:
            assert finding is None

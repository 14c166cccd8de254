"""Ways round are proved equal to listing every loop and trying every position."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.circulation import HeatRound, PumpRound
from circuitcheck.circuit.flowways import FlowWays
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.labels import shown
from circuitcheck.drawing.value import Drawing
from tests.circuit import brute
from tests.circuit.random_circuits import circuits, plants


def agree(answer: frozenset[str] | None, ways: list[frozenset[str]], entries: list[str]) -> None:
    """The same verdict, a set of the same size, and a set that does prove it."""
    expected = brute.smallest_without(ways, entries)
    if expected is None:
        assert answer is None
        return
    assert answer is not None
    position = frozenset(map(shown, answer))
    assert len(position) == expected
    assert all(way & position for way in ways)
    assert not any(f"{entry[:-2]}:b" in position for entry in position if entry.endswith(":a"))


@given(st.one_of(circuits(), plants()))
def test_heat_sources(drawing: Drawing) -> None:
    found = brute.plant(drawing)
    all_loops = brute.loops(found)
    entries = brute.controlled_entries(found)
    flow = FlowWays(Circuit(drawing))
    for heat in found.heats:
        turn = HeatRound(flow, heat)
        ways = [way for pump in turn.pumps for way in brute.counted(all_loops, pump, heat)]
        agree(turn.shut_in(), ways, entries)


@given(st.one_of(circuits(), plants()))
def test_pumps(drawing: Drawing) -> None:
    found = brute.plant(drawing)
    all_loops = brute.loops(found)
    entries = brute.controlled_entries(found)
    flow = FlowWays(Circuit(drawing))
    for pump in {way.pump for way in found.ways if way.pump}:
        ways = [loop.controlled for loop in all_loops if pump in loop.pumps]
        agree(PumpRound(flow, pump).shut_in(), ways, entries)

"""Loops found by hand-made ways: through the pump, the heat source and an emitter."""

from __future__ import annotations

import pytest

from circuitcheck.circuit import loops
from circuitcheck.circuit.flowways import WayEdge, Ways
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.loops import find_loop

PUMP = WayEdge(0, 1, back=False, pumps=frozenset({"pu"}))
HEAT = WayEdge(2, 3, back=False, heats=frozenset({"hs"}))


def plain(a: int, b: int, label: str = "", *, emits: bool = False, back: bool = True) -> WayEdge:
    return WayEdge(a, b, back=back, labels=frozenset({label} if label else ()), emits=emits)


def test_a_ring() -> None:
    loop = find_loop(Ways([PUMP, plain(1, 2, "zv"), HEAT, plain(3, 0)]), "pu", "hs")
    assert loop is not None and loop.labels == {"zv"}
    assert loop.edges[0].pumps == {"pu"}


def test_what_nothing_can_shut_is_preferred() -> None:
    ways = Ways([PUMP, plain(1, 2, "zv"), plain(1, 2), HEAT, plain(3, 0)])
    loop = find_loop(ways, "pu", "hs")
    assert loop is not None and loop.labels == frozenset()


def test_none_against_the_arrow() -> None:
    assert find_loop(Ways([PUMP, plain(1, 0)]), "pu") is not None
    assert find_loop(Ways([PUMP, plain(0, 1, back=False)]), "pu") is None


def test_none_through_a_heat_source_the_wrong_way() -> None:
    ways = Ways([PUMP, plain(1, 3), HEAT, plain(2, 0)])
    assert find_loop(ways, "pu", "hs") is None
    assert find_loop(Ways([PUMP, plain(1, 0)]), "pu", "hs") is None


def test_a_loop_visits_no_vertex_twice() -> None:
    """Both reach each other, but only through vertex 4 twice: a closed walk, and no loop."""
    ways = Ways([PUMP, plain(1, 4), plain(4, 2), HEAT, plain(3, 4), plain(4, 0)])
    assert find_loop(ways, "pu", "hs") is None
    assert find_loop(ways, "pu") is not None


def test_an_emitter_where_one_is_asked_for() -> None:
    ways = Ways([PUMP, plain(1, 0), plain(1, 5, "rad", emits=True), plain(5, 0)])
    loop = find_loop(ways, "pu", must_emit=True)
    assert loop is not None and any(edge.emits for edge in loop.edges)
    assert find_loop(Ways([PUMP, plain(1, 0)]), "pu", must_emit=True) is None


def test_without_what_is_shut() -> None:
    ways = Ways([PUMP, plain(1, 0, "a"), plain(1, 0, "b")])
    assert find_loop(ways.without(frozenset({"a"})), "pu") is not None
    assert find_loop(ways.without(frozenset({"a", "b"})), "pu") is None


def test_beyond_the_bound_there_is_no_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    """The shortest way has no emitter on it, so that the others are searched."""
    ways = Ways([PUMP, plain(1, 0), plain(1, 5, "rad", emits=True), plain(5, 0)])
    monkeypatch.setattr(loops, "AT_HOUSE_SIZE", 0)
    assert find_loop(ways, "pu", must_emit=True) is not None
    monkeypatch.setattr(loops, "STEP_BOUND", 0)
    with pytest.raises(TooLargeError):
        find_loop(ways, "pu", must_emit=True)

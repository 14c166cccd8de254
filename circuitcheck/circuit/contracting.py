"""Contracts spans between numbered vertices: dead ends are dropped, and spans in series become one strand.

Plain loops over ints, since this is asked of every span of a plant at once. No loop is lost or won.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import NamedTuple

FORWARD, BACK = 1, 2
BOTH = FORWARD | BACK
_TURNED = (0, BACK, FORWARD, BOTH)


class Strand(NamedTuple):
    """Spans in series from vertex `a` to vertex `b`. `ways`: FORWARD and BACK, as water can take all of
    them. `spans`: their numbers in order; `~number` for one that is taken from its end to its start."""

    a: int
    b: int
    ways: int
    spans: tuple[int, ...]


def contract(
    starts: Sequence[int], ends: Sequence[int], ways: Sequence[int], vertices: int, spans: Iterable[int]
) -> list[Strand]:
    """The strands of those spans that may lie on a loop; `vertices` is how many there may be.

    A strand that water can take neither way is on none, nor is what then hangs by one end.
    """
    found: list[Strand] = []
    left = [span for span in spans if ways[span]]
    strands = _once(starts, ends, vertices, left)
    while True:
        rest: list[Strand] = []
        for a, b, members in strands:
            both = BOTH
            for span in members:
                both &= ways[span] if span >= 0 else _TURNED[ways[~span]]
            if both:
                (rest if a != b else found).append(Strand(a, b, both, tuple(members)))
        if len(rest) == len(strands):
            return found + rest
        again = _once(
            [strand.a for strand in rest], [strand.b for strand in rest], vertices, range(len(rest))
        )
        strands = [(a, b, _unfolded(rest, members)) for a, b, members in again]


_Run = tuple[int, int, Sequence[int]]


def _unfolded(strands: Sequence[Strand], members: Iterable[int]) -> list[int]:
    spans: list[int] = []
    for member in members:
        if member >= 0:
            spans += strands[member].spans
        else:
            spans += [~span for span in reversed(strands[~member].spans)]
    return spans


def _once(starts: Sequence[int], ends: Sequence[int], vertices: int, spans: Iterable[int]) -> list[_Run]:
    """Runs of spans between vertices at which three or more meet, and rings of such runs."""
    count = [0] * vertices
    # Two spans at a vertex are told by their numbers added up bit by bit: take one out, the other is left.
    mixed = [0] * vertices
    left: list[int] = []
    found: list[_Run] = []
    for span in spans:
        a, b = starts[span], ends[span]
        if a == b:
            found.append((a, a, (span,)))
            continue
        left.append(span)
        count[a] += 1
        count[b] += 1
        mixed[a] ^= span
        mixed[b] ^= span
    done = _dead_ends(starts, ends, count, mixed)
    rings = []
    for span in left:
        if span in done:
            continue
        a, b = starts[span], ends[span]
        if count[a] != 2:
            if count[b] != 2:  # as most are: it is a run by itself
                found.append((a, b, (span,)))
            else:
                found.append(_run(starts, ends, count, mixed, done, span, a))
        elif count[b] != 2:
            found.append(_run(starts, ends, count, mixed, done, span, b))
        else:
            rings.append(span)
    for span in rings:
        if span not in done:
            count[starts[span]] = 0  # where the ring is told to begin and end
            found.append(_run(starts, ends, count, mixed, done, span, starts[span]))
    return found


def _dead_ends(starts: Sequence[int], ends: Sequence[int], count: list[int], mixed: list[int]) -> set[int]:
    """The spans that lead nowhere, taken out of what meets at each vertex."""
    done = set[int]()
    todo = [vertex for vertex, met in enumerate(count) if met == 1]
    for vertex in todo:
        if count[vertex] != 1:
            continue
        span = mixed[vertex]
        done.add(span)
        count[vertex] = 0
        other = ends[span] if starts[span] == vertex else starts[span]
        count[other] -= 1
        mixed[other] ^= span
        if count[other] == 1:
            todo.append(other)
    return done


def _run(
    starts: Sequence[int],
    ends: Sequence[int],
    count: Sequence[int],
    mixed: Sequence[int],
    done: set[int],
    span: int,
    begin: int,
) -> _Run:
    """On from a vertex by a span, as long as one other span leads on."""
    members = []
    here = begin
    while True:
        done.add(span)
        if starts[span] == here:
            members.append(span)
            here = ends[span]
        else:
            members.append(~span)
            here = starts[span]
        if count[here] != 2:
            return begin, here, members
        span ^= mixed[here]

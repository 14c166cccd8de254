"""Contracts spans between numbered vertices: dead ends are dropped, and spans in series become one strand.

Plain loops over ints, since this is asked of every span of a plant at once. No loop is lost or won.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from circuitcheck.wanted import go_on

FORWARD, BACK = 1, 2
BOTH = FORWARD | BACK
_TURNED = (0, BACK, FORWARD, BOTH)

Strand = tuple[int, int, int, Sequence[int]]
"""Spans in series: the vertices where they begin and end, the ways (FORWARD and BACK) by which water can take
all of them, and their numbers in order; `~number` for one that is taken from its end to its start. A plain
tuple, as thousands are made."""


def contract(
    starts: Sequence[int], ends: Sequence[int], ways: Sequence[int], vertices: int, spans: Iterable[int]
) -> list[Strand]:
    """The strands of those spans that may lie on a loop; `vertices` is how many there may be. Those that
    begin and end at one vertex come first.

    A strand that water can take neither way is on none, nor is what then hangs by one end.
    """
    go_on()
    closed, strands = _once(starts, ends, ways, vertices, [span for span in spans if ways[span]])
    found: list[Strand] = []
    while closed or not all(each[2] for each in strands):
        # Without these there may be less that leads anywhere, and more in series.
        found += _open_ones(closed)
        rest = _open_ones(strands)
        begins, finishes = [strand[0] for strand in rest], [strand[1] for strand in rest]
        rings, again = _once(begins, finishes, [strand[2] for strand in rest], vertices, range(len(rest)))
        closed = [_unfolded(rest, each) for each in rings]
        strands = [_unfolded(rest, each) for each in again]
    return found + strands


def _open_ones(strands: Iterable[Strand]) -> list[Strand]:
    return [strand for strand in strands if strand[2]]


def _unfolded(strands: Sequence[Strand], longer: Strand) -> Strand:
    """A strand of strands as one of the spans they are made of."""
    a, b, ways, members = longer
    spans: list[int] = []
    for member in members:
        if member >= 0:
            spans += strands[member][3]
        else:
            spans += [~span for span in reversed(strands[~member][3])]
    return a, b, ways, spans


def _once(
    starts: Sequence[int], ends: Sequence[int], ways: Sequence[int], vertices: int, spans: Iterable[int]
) -> tuple[list[Strand], list[Strand]]:
    """Runs of spans between vertices at which three or more meet: those that come back to where they begin,
    and the others."""
    count = [0] * vertices
    # Two spans at a vertex are told by their numbers added up bit by bit: take one out, the other is left.
    mixed = [0] * vertices
    left: list[int] = []
    closed: list[Strand] = []
    for span in spans:
        a, b = starts[span], ends[span]
        if a == b:
            closed.append((a, a, ways[span], (span,)))
            continue
        left.append(span)
        count[a] += 1
        count[b] += 1
        mixed[a] ^= span
        mixed[b] ^= span
    done = _dead_ends(starts, ends, count, mixed)
    found: list[Strand] = []
    rings: list[int] = []
    for span in left:
        if span in done:
            continue
        a, b = starts[span], ends[span]
        if count[a] != 2:
            if count[b] != 2:  # as most are: it is a run by itself
                found.append((a, b, ways[span], (span,)))
                continue
            begin = a
        elif count[b] != 2:
            begin = b
        else:
            rings.append(span)
            continue
        run = _run(starts, ends, ways, count, mixed, done, span, begin)
        (found if run[0] != run[1] else closed).append(run)
    for span in rings:
        if span not in done:
            count[starts[span]] = 0  # where the ring is told to begin and end
            closed.append(_run(starts, ends, ways, count, mixed, done, span, starts[span]))
    return closed, found


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
    ways: Sequence[int],
    count: Sequence[int],
    mixed: Sequence[int],
    done: set[int],
    span: int,
    begin: int,
) -> Strand:
    """On from a vertex by a span, as long as one other span leads on."""
    members = []
    here, both = begin, BOTH
    while True:
        done.add(span)
        if starts[span] == here:
            members.append(span)
            both &= ways[span]
            here = ends[span]
        else:
            members.append(~span)
            both &= _TURNED[ways[span]]
            here = starts[span]
        if count[here] != 2:
            return begin, here, both, members
        span ^= mixed[here]

"""Parts lie on one another.

Flags: Two parts whose symbols overlap on the sheet, or tees on one spot. Symbols that touch at their
    edges do not overlap; nor does a cap on the port that it closes.
Why: One symbol hides the other, so that a valve may go unseen, and nobody can tell which pipe goes to
    which.
Remedy: Move one of them clear of the other.
Source: Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.layout import lying
from circuitcheck.checks.wording import upper
from circuitcheck.drawing.edits import move
from circuitcheck.drawing.lying import PARTS, Lying
from circuitcheck.drawing.value import Component, Joint
from circuitcheck.finding import Finding, Grade, Says

NAME = "overlapping-parts"
EXACT = 1e-9
REACH = 12
"""How far a cure moves a part, in squares."""

_Box = tuple[float, float, float, float]


def judge(case: Case) -> Verdict:
    """One piece of advice for each pair of parts that lie on one another."""
    layout = lying(case)
    told = layout.told(_of_part, PARTS)
    drawing = case.drawing
    findings = [
        Finding(
            NAME,
            Grade.ADVICE,
            Says(
                "{one} and {other} lie on one another.",
                {"one": upper(drawing.name(id)), "other": drawing.name(other)},
            ),
            components=(id, other),
        )
        for id in sorted(told)
        for other in told[id]
    ]
    concerned = {part for finding in findings for part in finding.components}
    return Verdict(tuple(findings), layout.parts_placed - len(concerned))


def _of_part(layout: Lying, id: str) -> tuple[str, ...]:
    """The parts this one lies on, of those that come after it by their ids."""
    part = layout.drawing.components[id]
    box = part.box()
    if box is None:
        return ()
    found = []
    for other in layout.parts_beside(id):
        if other > id:
            beside = layout.drawing.components[other]
            other_box = beside.box()
            if other_box is not None and _overlap(box, other_box) and not _closes(layout, part, beside):
                found.append(other)
    return tuple(sorted(found))


def _overlap(one: _Box, other: _Box) -> bool:
    """Whether two boxes share more than an edge; one without extent must lie inside, or on another such."""
    return _share(one[0], one[2], other[0], other[2]) and _share(one[1], one[3], other[1], other[3])


def _share(a: float, b: float, c: float, d: float) -> bool:
    """Whether the spans a-b and c-d share more than an end; a point must lie inside, or on a point."""
    if a == b and c == d:
        return abs(a - c) <= EXACT
    if a == b or c == d:
        return max(a, c) > min(a, c) + EXACT and max(b, d) > min(b, d) + EXACT and max(a, c) <= min(b, d)
    return max(a, c) < min(b, d) - EXACT


def _closes(layout: Lying, one: Component, other: Component) -> bool:
    """Whether the two are joined by ports that lie on one place, as a cap on the port it closes."""
    drawing = layout.drawing
    for part, beside in ((one, other), (other, one)):
        for port in part.kind.ports:
            if port.faces is not None:
                continue
            pipe = drawing.joined.get(Joint(part.id, port.name))
            if pipe is None:
                continue
            ends = drawing.pipes[pipe].ends
            on_other = any(isinstance(end, Joint) and end.part == beside.id for end in ends)
            if on_other and drawing.end_at(ends[0]) == drawing.end_at(ends[1]):
                return True
    return False


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To move the one or the other to the nearest place where it covers no part."""
    for id in reversed(finding.components):
        step = _nearest_free(case, id)
        if step is not None:
            yield Proposal(
                Says("Move {part} clear of the other.", {"part": case.drawing.name(id)}),
                move(case.drawing, [id], *step),
            )


def _nearest_free(case: Case, id: str) -> tuple[int, int] | None:
    """The shortest move, in whole squares, that leaves a square clear all round; None within no reach."""
    drawing = case.drawing
    box = drawing.components[id].box()
    if box is None:
        return None
    others = [each.box() for each in drawing.components.values() if each.id != id]
    taken = [(b[0] - 1, b[1] - 1, b[2] + 1, b[3] + 1) for b in others if b is not None]
    reach = range(-REACH, REACH + 1)
    steps = sorted(
        ((x, y) for x in reach for y in reach), key=lambda step: (abs(step[0]) + abs(step[1]), step)
    )
    for x, y in steps:
        there = (box[0] + x, box[1] + y, box[2] + x, box[3] + y)
        if not any(_overlap(there, other) for other in taken):
            return x, y
    return None

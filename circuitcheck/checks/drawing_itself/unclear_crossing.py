"""Pipes meet on the sheet so that they could be taken as joined.

Flags: Two pipes that are not joined where they meet, and that cross within half a square of a bend, a
    port or a tee, or under 30 degrees, or that lie on one another. A square crossing away from those
    is clear: the sheet draws one pipe hopping over the other.
Why: Whoever builds from the drawing, or checks it by eye, takes such a place for a tee. Then flow and
    return are joined, or a vessel seems to be on water that it is not on.
Remedy: Move a part or set a pipe's corners, so that the two cross squarely and well clear of bends and
    joints, or not at all. If they are meant to be joined, end one on the other.
Source: Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.layout import lying
from circuitcheck.drawing.cells import BESIDE
from circuitcheck.drawing.lying import PIPES, Lying
from circuitcheck.drawing.measuring import count_bends
from circuitcheck.drawing.meeting import EXACT, Meeting, meetings
from circuitcheck.drawing.pipes import set_corners
from circuitcheck.drawing.value import Joint, Pipe
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.geometry import Point, distance
from circuitcheck.told import a_word

NAME = "unclear-crossing"
LEAST_DEGREES = 30.0
WITHIN = BESIDE + EXACT


@dataclass(frozen=True, slots=True)
class _Unclear:
    """What is unclear between two pipes, and where."""

    other: str
    meeting: Meeting
    why: str


def judge(case: Case) -> Verdict:
    """One piece of advice for each pair of pipes that meet so that they look joined."""
    layout = lying(case)
    told = layout.told(_of_pipe, PIPES)
    findings = [finding for id in sorted(told) for finding in told[id]]
    concerned = {pipe for finding in findings for pipe in finding.pipes}
    return Verdict(tuple(findings), layout.lines_laid - len(concerned))


def _of_pipe(layout: Lying, id: str) -> tuple[Finding, ...]:
    """Advice for each pipe that this one meets unclearly, of those that come after it by their ids."""
    line = layout.line(id)
    if not line:
        return ()
    return tuple(
        _finding(id, unclear)
        for other in layout.pipes_across(id)
        if (unclear := _between(layout, id, other, line)) is not None
    )


def _between(layout: Lying, id: str, other: str, line: Sequence[Point]) -> _Unclear | None:
    """The place at which two pipes are least clear; None where they are clear."""
    other_line = layout.line(other)
    found = list(meetings(line, other_line))
    if not found:
        return None
    pipes = layout.drawing.pipes[id], layout.drawing.pipes[other]
    shared = _shared(pipes[0], line, pipes[1], other_line)
    if shared:
        found = [each for each in found if each.along or all(distance(each.at, at) > EXACT for at in shared)]
    if not found:
        return None  # most often: two pipes on one tee
    free = [end for pipe in pipes for end in pipe.ends if not isinstance(end, Joint)]
    corners = [*_bends(line), *_bends(other_line)]
    reasons = []
    for meeting in found:
        at = meeting.at
        if meeting.along:
            reasons.append((0, a_word("lie on one another"), meeting))
        elif any(distance(at, end) <= WITHIN for end in free):
            continue  # an end that is not joined beside a pipe is a near miss, which weighs more
        elif any(distance(at, corner) <= WITHIN for corner in corners):
            reasons.append((1, a_word("meet within half a square of a bend"), meeting))
        elif _is_by_a_port(layout, at):
            reasons.append((2, a_word("meet within half a square of a port or tee"), meeting))
        elif meeting.angle < LEAST_DEGREES - 1e-6:
            reasons.append((3, a_word("cross at a slant"), meeting))
    if not reasons:
        return None
    _, why, meeting = min(reasons, key=lambda each: (each[0], each[2].at))
    return _Unclear(other, meeting, why)


def _shared(one: Pipe, line: Sequence[Point], other: Pipe, other_line: Sequence[Point]) -> list[Point]:
    """Where the two are joined: the ports of a common part that lie on one place, as a tee's do."""
    places = {
        end: at for end, at in zip(one.ends, (line[0], line[-1]), strict=True) if isinstance(end, Joint)
    }
    return [
        at
        for end, at in places.items()
        for other_end, other_at in zip(other.ends, (other_line[0], other_line[-1]), strict=True)
        if at == other_at and isinstance(other_end, Joint) and end.part == other_end.part
    ]


def _bends(line: Sequence[Point]) -> Iterator[Point]:
    for before, corner, after in zip(line, line[1:], line[2:], strict=False):
        if count_bends((before, corner, after)):
            yield corner


def _is_by_a_port(layout: Lying, at: Point) -> bool:
    for id in layout.parts_at(at):
        part = layout.drawing.components[id]
        for port in part.kind.ports:
            place = part.port_at(port.name)
            if place is not None and distance(at, place) <= WITHIN:
                return True
    return False


def _finding(id: str, unclear: _Unclear) -> Finding:
    at = unclear.meeting.at
    return Finding(
        NAME,
        Grade.ADVICE,
        Says(
            "Pipe {one} and pipe {other} " + unclear.why + ": they could be taken as joined.",
            {"one": id, "other": unclear.other},
        ),
        pipes=(id, unclear.other),
        numbers={"x_squares": at.x, "y_squares": at.y, "angle_degrees": unclear.meeting.angle},
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To let the program route the one or the other anew, where a person set its corners."""
    for pipe in finding.pipes:
        if case.drawing.pipes[pipe].via is not None:
            yield Proposal(
                Says("Route pipe {pipe} anew, around what is in its way.", {"pipe": pipe}),
                set_corners(case.drawing, pipe, None),
            )

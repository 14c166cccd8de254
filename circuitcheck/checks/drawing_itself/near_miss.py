"""Something looks joined and is not.

Flags: A free end of a pipe, or a port that must be joined, within half a square of another free end,
    of a free port or of a pipe's line: on the sheet they look joined, in the circuit they are not.
Why: Whoever reads the drawing sees a joint; the circuit that is judged, and the list of what to
    fit, have none.
Remedy: Join the two, or move them clearly apart.
Source: Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.layout import lying
from circuitcheck.checks.open_ports import unjoined_ports
from circuitcheck.checks.wording import upper
from circuitcheck.drawing.cells import BESIDE
from circuitcheck.drawing.edits import place, remove
from circuitcheck.drawing.lying import PARTS, PIPES, Lying
from circuitcheck.drawing.pipes import draw_pipe, draw_pipe_onto, join, join_onto
from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.geometry import Point, distance, nearest_on_segment
from circuitcheck.parts.tee import KIND as TEE
from circuitcheck.told import spoken, worded

NAME = "near-miss"


@dataclass(frozen=True, slots=True)
class _Loose:
    """Something that is not joined: a pipe's free end, or a part's free port."""

    owner: str
    port: str  # empty for a pipe's end
    at: Point
    must_join: bool


@dataclass(frozen=True, slots=True)
class _Near:
    """What a loose thing looks joined to."""

    owner: str
    port: str
    away: float


@dataclass(frozen=True, slots=True)
class _Miss:
    """A loose thing and what it looks joined to."""

    one: _Loose
    near: _Near

    @property
    def pair(self) -> frozenset[tuple[str, str]]:
        return frozenset({(self.one.owner, self.one.port), (self.near.owner, self.near.port)})


def judge(case: Case) -> Verdict:
    """One fault for each pair that looks joined and is not."""
    layout = lying(case)
    if layout.is_bare:
        return Verdict()
    drawing = case.drawing
    by_pipe, by_part = layout.told(_of_pipe, PIPES), layout.told(_of_part, PARTS)
    misses = [miss for told in (by_pipe, by_part) for id in sorted(told) for miss in told[id]]
    findings: dict[frozenset[tuple[str, str]], Finding] = {}
    for miss in misses:
        findings.setdefault(miss.pair, _finding(drawing, miss.one, miss.near))
    sound = len(drawing.components) + len(drawing.pipes)
    return Verdict(tuple(findings.values()), max(0, sound - len(findings)))


def _of_pipe(layout: Lying, id: str) -> tuple[_Miss, ...]:
    """What the free ends of a pipe look joined to."""
    return _misses(layout, _free_ends(layout.drawing.pipes[id]))


def _of_part(layout: Lying, id: str) -> tuple[_Miss, ...]:
    """What the ports of a part that must be joined look joined to."""
    return _misses(layout, _free_ports(layout.drawing, layout.drawing.components[id]))


def _misses(layout: Lying, loose: Iterator[_Loose]) -> tuple[_Miss, ...]:
    seeking = [each for each in loose if each.must_join]
    return tuple(_Miss(one, near) for one in seeking if (near := _nearest(layout, one)) is not None)


def _free_ends(pipe: Pipe) -> Iterator[_Loose]:
    for end in pipe.ends:
        if not isinstance(end, Joint):
            yield _Loose(pipe.id, "", end, must_join=True)


def _free_ports(drawing: Drawing, part: Component) -> Iterator[_Loose]:
    """Every port without a pipe. One that serves only where it is wanted does not look joined by
    itself; a free end beside it does."""
    if part.at is None:
        return
    joined = drawing.joined
    free = [port.name for port in part.kind.ports if Joint(part.id, port.name) not in joined]
    must_join = unjoined_ports(drawing, part) if free else ()
    for name in free:
        at = part.port_at(name)
        if at is not None:
            yield _Loose(part.id, name, at, name in must_join)


def _nearest(layout: Lying, one: _Loose) -> _Near | None:
    found = [near for near in _candidates(layout, one) if near.away <= BESIDE + 1e-9]
    return min(found, key=lambda near: (near.away, near.owner, near.port), default=None)


def _candidates(layout: Lying, one: _Loose) -> Iterator[_Near]:
    drawing = layout.drawing
    for id in layout.parts_beside(one.owner):
        for other in _free_ports(drawing, drawing.components[id]):
            if other.must_join or not one.port:
                yield _Near(id, other.port, distance(one.at, other.at))
    for id in layout.pipes_beside(one.owner):
        pipe = drawing.pipes[id]
        for end in _free_ends(pipe):
            yield _Near(id, "", distance(one.at, end.at))
        line = layout.line(id)
        if line and all(joint.part != one.owner for joint in pipe.joints):
            away = min(nearest_on_segment(one.at, a, b)[1] for a, b in pairwise(line))
            yield _Near(id, "", away)


def _finding(drawing: Drawing, one: _Loose, near: _Near) -> Finding:
    ids = sorted({one.owner, near.owner})
    return Finding(
        NAME,
        Grade.FAULT,
        Says(
            "{one} looks joined to {other}, and is not.",
            {
                "one": upper(_told(drawing, one.owner, one.port)),
                "other": _told(drawing, near.owner, near.port),
            },
        ),
        components=tuple(id for id in ids if id in drawing.components),
        pipes=tuple(id for id in ids if id in drawing.pipes),
        numbers={"away_squares": near.away},
    )


def _told(drawing: Drawing, owner: str, port: str) -> str:
    if owner in drawing.pipes:
        return worded("pipe {owner}", owner=owner)
    return worded("the {port} port of {owner}", port=spoken(port), owner=drawing.name(owner))


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To join the two: the free end to the port, to the other pipe's end or onto its line, or a pipe
    between two ports."""
    layout = lying(case)
    ids = {*finding.components, *finding.pipes}
    for told in (layout.told(_of_pipe, PIPES), layout.told(_of_part, PARTS)):
        for id in sorted(ids & set(told)):
            for miss in told[id]:
                if {miss.one.owner, miss.near.owner} == ids:
                    says = Says(
                        "Join {one} to {other}.",
                        {
                            "one": _told(case.drawing, miss.one.owner, miss.one.port),
                            "other": _told(case.drawing, miss.near.owner, miss.near.port),
                        },
                    )
                    yield Proposal(says, _joined(layout, miss))
                    return


def _joined(layout: Lying, miss: _Miss) -> Drawing:
    drawing, one, near = layout.drawing, miss.one, miss.near
    if near.port:
        end = Joint(near.owner, near.port)
        return _put(drawing, one, end)
    other = drawing.pipes[near.owner]
    for number, end_at in enumerate(other.ends):
        if not isinstance(end_at, Joint) and distance(one.at, end_at) <= BESIDE + 1e-9:
            if one.port:
                return join(drawing, other.id, number, Joint(one.owner, one.port))
            return _made_one(drawing, one, other, number)
    line = layout.line(other.id)
    feet = (nearest_on_segment(one.at, a, b) for a, b in pairwise(line))
    foot = min(feet, key=lambda each: each[1])[0]
    if one.port:
        return draw_pipe_onto(drawing, Joint(one.owner, one.port), other.id, foot)[0]
    return join_onto(drawing, one.owner, _end_number(drawing, one), other.id, foot)


def _put(drawing: Drawing, one: _Loose, end: Joint) -> Drawing:
    if one.port:
        return draw_pipe(drawing, Joint(one.owner, one.port), end)[0]
    return join(drawing, one.owner, _end_number(drawing, one), end)


def _end_number(drawing: Drawing, one: _Loose) -> int:
    return drawing.pipes[one.owner].ends.index(one.at)


def _made_one(drawing: Drawing, one: _Loose, other: Pipe, number: int) -> Drawing:
    """Two pipes that end beside one another, made one pipe: they meet in a tee, which is taken out again."""
    after, tee = place(drawing, TEE, one.at)
    after = join(after, one.owner, _end_number(drawing, one), Joint(tee, "a"))
    after = join(after, other.id, number, Joint(tee, "b"))
    return remove(after, [tee])

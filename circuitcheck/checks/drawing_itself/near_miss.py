"""Something looks joined and is not.

Flags: A free end of a pipe, or a port that must be joined, within half a square of another free end,
    of a free port or of a pipe's line: on the sheet they look joined, in the circuit they are not.
Why: Whoever reads the drawing sees a joint; the circuit that is judged, and the list of what to
    fit, have none.
Remedy: Join the two, or move them clearly apart.
Source: Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import pairwise

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.open_ports import unjoined_ports
from circuitcheck.checks.wording import upper
from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.geometry import Point, SegmentGrid, distance

NAME = "near-miss"
WITHIN_SQUARES = 0.5


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


def judge(case: Case) -> Verdict:
    """One fault for each pair that looks joined and is not."""
    drawing = case.drawing
    loose = [*_free_ends(drawing), *_free_ports(drawing)]
    seeking = [each for each in loose if each.must_join]
    if not loose and not any(part.at for part in drawing.components.values()):
        return Verdict()
    lines = routes(drawing) if seeking else {}
    grid = _grid(lines)
    findings: dict[frozenset[tuple[str, str]], Finding] = {}
    sound = len(drawing.components) + len(drawing.pipes)
    for one in seeking:
        near = _nearest(drawing, one, loose, lines, grid)
        if near is not None:
            pair = frozenset({(one.owner, one.port), (near.owner, near.port)})
            findings.setdefault(pair, _finding(drawing, one, near))
    return Verdict(tuple(findings.values()), max(0, sound - len(findings)))


def _free_ends(drawing: Drawing) -> Iterator[_Loose]:
    for pipe in drawing.pipes.values():
        for end in pipe.ends:
            if not isinstance(end, Joint):
                yield _Loose(pipe.id, "", end, must_join=True)


def _free_ports(drawing: Drawing) -> Iterator[_Loose]:
    """Every port without a pipe. One that serves only where it is wanted does not look joined by
    itself; a free end beside it does."""
    for part in drawing.components.values():
        if part.at is None:
            continue
        must_join = unjoined_ports(drawing, part)
        for port in part.kind.ports:
            at = part.port_at(port.name)
            if at is not None and Joint(part.id, port.name) not in drawing.joined:
                yield _Loose(part.id, port.name, at, port.name in must_join)


def _grid(lines: Mapping[str, tuple[Point, ...]]) -> SegmentGrid:
    return SegmentGrid((id, start, finish) for id, line in lines.items() for start, finish in pairwise(line))


def _nearest(
    drawing: Drawing,
    one: _Loose,
    loose: list[_Loose],
    lines: Mapping[str, tuple[Point, ...]],
    grid: SegmentGrid,
) -> _Near | None:
    found = [
        _Near(other.owner, other.port, distance(one.at, other.at))
        for other in loose
        if other is not one and other.owner != one.owner and (other.must_join or not one.port)
    ]
    for id, away in grid.near(one.at, WITHIN_SQUARES):
        own = id == one.owner or any(end.part == one.owner for end in drawing.pipes[id].joints)
        if not own:
            found.append(_Near(id, "", away))
    close = [near for near in found if near.away <= WITHIN_SQUARES + 1e-9]
    return min(close, key=lambda near: (near.away, near.owner, near.port), default=None)


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
        return f"pipe {owner}"
    return f"the {port.replace('_', ' ')} port of {drawing.name(owner)}"

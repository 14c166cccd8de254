"""Parts that no heat source, store or main reaches.

Flags: Parts joined to one another, or to a pipe that leads nowhere, but by no way to a heat source, a
    store or a main. A part that stands alone without any pipe is an open end instead.
Why: Such a piece does nothing as drawn, and is judged for nothing: nearly always a pipe is missing, and
    the circuit it was meant for lacks what hangs on it.
Remedy: Draw the pipe that joins it, or take the piece off the sheet.
Source: Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.wording import named
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "unreached-part"
MOST_NAMED = 4
_STARTS = (Role.HEATS, Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN, Role.MAIN)


def judge(case: Case) -> Verdict:
    """One piece of advice for each piece of the drawing without a heat source, store or main."""
    starts = case.circuit.parts_with(*_STARTS)
    if _is_one(case, starts):
        return Verdict((), 1)
    root = _roots(case)
    if not root:
        return Verdict()
    reached = {root[part] for part in starts if part in root}
    pieces: dict[str, list[str]] = {}
    for part, here in root.items():
        if here not in reached:
            pieces.setdefault(here, []).append(part)
    return Verdict(tuple(_findings(case, pieces, root)), len(reached))


def _is_one(case: Case, starts: Iterable[str]) -> bool:
    """Whether all pipes hold one body of water, with a heat source, store or main on it: seen at once."""
    pipes = len(case.drawing.pipes)
    bodies = set(case.bodies.by_node[:pipes])
    if len(bodies) != 1:
        return False
    ports = case.circuit.ports
    return any(0 <= node < pipes for part in starts for node in ports.nodes(ports.place[part]))


def _roots(case: Case) -> dict[str, str]:
    """Every part with a pipe, and a part that stands for all that are joined to it."""
    parent: dict[str, str] = {}
    for pipe in case.drawing.pipes.values():
        first = ""
        for end in pipe.ends:
            if not isinstance(end, Joint):
                continue
            part = end.part
            above = parent.setdefault(part, part)
            while above != part:
                parent[part] = part = parent[above]
                above = parent[part]
            if first:
                parent[part] = first
            first = part
    for part in parent:
        here = part
        while parent[here] != here:
            here = parent[here]
        parent[part] = here
    return parent


def _findings(case: Case, pieces: Mapping[str, list[str]], root: Mapping[str, str]) -> Iterator[Finding]:
    """One finding for each piece, its parts and pipes in the order of the drawing."""
    if not pieces:
        return
    drawing = case.drawing
    place = {id: number for number, id in enumerate(drawing.components)}
    pipes: dict[str, list[str]] = {}
    for pipe in drawing.pipes.values():
        joints = pipe.joints
        if joints and root[joints[0].part] in pieces:
            pipes.setdefault(root[joints[0].part], []).append(pipe.id)
    for here, piece in pieces.items():
        parts = tuple(sorted(piece, key=place.__getitem__))
        template = "No heat source, store or main is joined to {parts}."
        if len(parts) > MOST_NAMED:
            template = "No heat source, store or main is joined to {parts} and {more} more parts."
        yield Finding(
            NAME,
            Grade.ADVICE,
            Says(
                template,
                {"parts": named(drawing, parts[:MOST_NAMED]), "more": str(len(parts) - MOST_NAMED)},
            ),
            components=parts,
            pipes=tuple(pipes[here]),
        )

"""A store's secondary circuit: the pipes that hot water goes round by."""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.supplying import supplies
from circuitcheck.circuit.secondary import kept_hot


def secondary_pipes(case: Case, store: str) -> tuple[str, ...]:
    """The pipes between a store's hot port and its secondary return, without dead legs; none where
    nothing comes back to it. In the order of the drawing."""
    ways = supplies(case)
    giver = next(giver for giver in ways.givers if giver.part == store)
    joints = kept_hot(ways, giver)
    if not joints:
        return ()
    pipes = case.drawing.pipes.items()
    return tuple(id for id, pipe in pipes if len(pipe.joints) == 2 and joints.issuperset(pipe.joints))

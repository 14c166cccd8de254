"""A drawing with the pipes on two ports of a part changed over, made without the program's own edit."""

from __future__ import annotations

from dataclasses import replace

from circuitcheck.drawing.value import Drawing, End, Joint


def changed_over(drawing: Drawing, part: str, one: str, other: str) -> Drawing:
    """The drawing after the slip; the pipes have no corners of their own then."""
    swap = {Joint(part, one): Joint(part, other), Joint(part, other): Joint(part, one)}

    def end(known: End) -> End:
        return swap.get(known, known) if isinstance(known, Joint) else known

    pipes = {
        id: replace(pipe, ends=(end(pipe.ends[0]), end(pipe.ends[1])), via=None)
        if any(joint in swap for joint in pipe.joints)
        else pipe
        for id, pipe in drawing.pipes.items()
    }
    return replace(drawing, pipes=pipes)

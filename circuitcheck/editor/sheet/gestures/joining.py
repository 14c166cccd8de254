"""What a part that comes to stand somewhere joins there: free ends of pipes on its ports."""

from __future__ import annotations

from circuitcheck.drawing.pipes import join
from circuitcheck.drawing.value import Component, Drawing, Joint
from circuitcheck.editor.sheet.hits import free_ends
from circuitcheck.editor.sheet.stage import Stage
from circuitcheck.geometry import Point


def taking_up(stage: Stage, drawing: Drawing, id: str) -> Drawing:
    """The drawing with the free ends that a part's ports lie on joined to them."""
    part = drawing.components[id]
    _, pipes = stage.content.near(stage.content.symbol_reach(part))
    ends = {
        end.at: end
        for item in pipes
        if item.id in stage.drawing.pipes
        for end in free_ends(stage.drawing, item.id)
    }
    for port in part.kind.ports:
        at = part.port_at(port.name)
        if at is None or at not in ends or Joint(id, port.name) in drawing.joined:
            continue
        end = ends.pop(at)
        drawing = join(drawing, end.pipe, end.which, Joint(id, port.name))
    return drawing


def joints_of(drawing: Drawing, part: Component) -> list[Point]:
    """Where a part's pipes join it."""
    ports = (
        part.port_at(port.name) for port in part.kind.ports if Joint(part.id, port.name) in drawing.joined
    )
    return [at for at in ports if at is not None]

"""Which part lies next in a direction, and where things are for the caret. No Qt."""

from __future__ import annotations

from circuitcheck.drawing.value import Component, Control, Drawing
from circuitcheck.geometry import Point

ASIDE = 2.0
"""A part that lies aside counts as so many times further off."""


def place_of(drawing: Drawing, id: str) -> Point | None:
    """Where a part or a control stands; None for a pipe, or where it is not placed."""
    thing = drawing.components.get(id) or drawing.controls.get(id)
    return None if thing is None else thing.at


def nearest(drawing: Drawing, start: Point, dx: int, dy: int, leaving: str | None) -> str | None:
    """The part or control nearest to `start` in the direction (dx, dy), within 45 degrees of it."""
    best: tuple[float, str] | None = None
    things: dict[str, Component | Control] = {**drawing.components, **drawing.controls}
    for id, thing in things.items():
        if thing.at is None or id == leaving:
            continue
        x, y = thing.at.x - start.x, thing.at.y - start.y
        ahead, aside = x * dx + y * dy, abs(x * dy) + abs(y * dx)
        if ahead <= 0 or aside > ahead:
            continue
        far = ahead + ASIDE * aside
        if best is None or (far, id) < best:
            best = (far, id)
    return None if best is None else best[1]

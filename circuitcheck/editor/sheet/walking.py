"""Which part lies next in a direction, and where things are for the caret. No Qt."""

from __future__ import annotations

from collections.abc import Iterable

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
    things: dict[str, Component | Control] = {**drawing.components, **drawing.controls}
    places = ((id, thing.at) for id, thing in things.items() if thing.at is not None)
    return ahead(places, start, dx, dy, leaving)


def ahead(
    places: Iterable[tuple[str, Point]], start: Point, dx: int, dy: int, leaving: str | None
) -> str | None:
    """Of these places, each by its id, the nearest in the direction (dx, dy), within 45 degrees of it."""
    best: tuple[float, str] | None = None
    for id, at in places:
        if id == leaving:
            continue
        x, y = at.x - start.x, at.y - start.y
        along, aside = x * dx + y * dy, abs(x * dy) + abs(y * dx)
        if along <= 0 or aside > along:
            continue
        far = along + ASIDE * aside
        if best is None or (far, id) < best:
            best = (far, id)
    return None if best is None else best[1]

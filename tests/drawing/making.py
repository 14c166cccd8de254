"""Drawings for the tests, written short: parts by id, pipes from `part.port` to `part.port`."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from types import MappingProxyType
from typing import Any

from circuitcheck.drawing.value import Component, Control, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds

Where = tuple[float, float] | tuple[float, float, int] | None
Ends = tuple[str | tuple[float, float], str | tuple[float, float]]


def part(id: str, kind: str, where: Where = None, **data: Any) -> Component:
    """A part at (x, y) or (x, y, turn)."""
    at = None if where is None else Point(*where[:2])
    turn = where[2] if where is not None and len(where) == 3 else 0
    return Component(id, kinds()[kind], at=at, turn=turn, data=MappingProxyType(data))


def end(text: str | tuple[float, float]) -> End:
    """`part.port`, or a free place."""
    return Joint(*text.split(".")) if isinstance(text, str) else Point(*text)


def pipe(id: str, ends: Ends, via: Iterable[tuple[float, float]] | None = None, **data: Any) -> Pipe:
    """A pipe; `via` None: routed."""
    corners = None if via is None else tuple(Point(*corner) for corner in via)
    return Pipe(id, (end(ends[0]), end(ends[1])), corners, MappingProxyType(data))


def control(id: str, kind: str, *acts_on: str) -> Control:
    """A control that acts on these parts."""
    return Control(id, kinds()[kind], acts_on=acts_on)


def drawing(
    parts: Iterable[Component], pipes: Iterable[Pipe] = (), controls: Iterable[Control] = ()
) -> Drawing:
    """A drawing of these."""
    return Drawing(
        components=_by_id(parts), pipes=_by_id(pipes), controls=MappingProxyType({c.id: c for c in controls})
    )


def _by_id(items: Iterable[Any]) -> Mapping[str, Any]:
    return MappingProxyType({item.id: item for item in items})


def chained(text: str, first: int = 1) -> list[Pipe]:
    """Pipes from a text with one `a.x b.y` a line, numbered p1, p2, ..."""
    lines = [line.split() for line in text.strip().splitlines() if line.strip()]
    return [pipe(f"p{number}", (a, b)) for number, (a, b) in enumerate(lines, first)]

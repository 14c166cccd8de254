"""Makes drawings for tests from a few words: parts by id, pipes by their two ends."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from circuitcheck.drawing.value import Component, Control, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds, control_kinds

Part = str | tuple[str, Mapping[str, Any]]


def made(
    parts: Mapping[str, Part],
    pipes: str,
    *,
    design: Mapping[str, Any] | None = None,
    pipe_data: Mapping[str, Mapping[str, Any]] | None = None,
    controls: Mapping[str, tuple[str, tuple[str, ...]]] | None = None,
    at: Mapping[str, tuple[float, float]] | None = None,
) -> Drawing:
    """A drawing. `pipes` holds one pipe a line, `hs.flow - t1.a`, or `p9: hs.flow - t1.a` to name it;
    an end of `x,y` is free. Parts stand nowhere unless `at` places them."""
    components = {}
    for id, part in parts.items():
        kind, data = (part, {}) if isinstance(part, str) else part
        place = Point(*at[id]) if at and id in at else None
        components[id] = Component(id, component_kinds()[kind], at=place, data=data)
    made_pipes: dict[str, Pipe] = {}
    for line in filter(None, (line.strip() for line in pipes.splitlines())):
        name, colon, ends = line.partition(":")
        id = name.strip() if colon else f"p{len(made_pipes) + 1}"
        start, finish = (ends if colon else line).split(" - ")
        data = (pipe_data or {}).get(id, {})
        made_pipes[id] = Pipe(id, (_end(start), _end(finish)), data=data)
    made_controls = {
        id: Control(id, control_kinds()[kind], acts_on=acts_on)
        for id, (kind, acts_on) in (controls or {}).items()
    }
    return Drawing(design=dict(design or {}), components=components, pipes=made_pipes, controls=made_controls)


def _end(text: str) -> End:
    text = text.strip()
    if "," in text:
        x, y = text.split(",")
        return Point(float(x), float(y))
    part, port = text.split(".")
    return Joint(part, port)

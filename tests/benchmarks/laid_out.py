"""A laid-out plant of any size: so many of the same house side by side, each with ids of its own."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from math import ceil, sqrt

from circuitcheck.drawing.value import Component, Control, Drawing, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import FieldType
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

WIDE, HIGH = 72, 56


@cache
def houses(parts: int) -> Drawing:
    """So many parts or a few more, in whole houses of 48, placed and piped."""
    house = read(data_path("samples") / "terrace-as-proposed.wetcircuit")
    copies = ceil(parts / len(house.components))
    in_row = ceil(sqrt(copies))
    components: dict[str, Component] = {}
    pipes: dict[str, Pipe] = {}
    controls: dict[str, Control] = {}
    for copy in range(copies):
        dx, dy = WIDE * (copy % in_row), HIGH * (copy // in_row)
        for id, part in house.components.items():
            at = None if part.at is None else Point(part.at.x + dx, part.at.y + dy)
            references = {field.name for field in part.kind.fields if field.type is FieldType.REFERENCE}
            data = {
                name: f"{value}-{copy}" if name in references else value for name, value in part.data.items()
            }
            components[f"{id}-{copy}"] = replace(part, id=f"{id}-{copy}", at=at, data=data)
        for id, pipe in house.pipes.items():
            one, other = (
                Joint(f"{end.part}-{copy}", end.port)
                if isinstance(end, Joint)
                else Point(end.x + dx, end.y + dy)
                for end in pipe.ends
            )
            via = None if pipe.via is None else tuple(Point(each.x + dx, each.y + dy) for each in pipe.via)
            pipes[f"{id}-{copy}"] = replace(pipe, id=f"{id}-{copy}", ends=(one, other), via=via)
        for id, control in house.controls.items():
            at = None if control.at is None else Point(control.at.x + dx, control.at.y + dy)
            acts_on = tuple(f"{each}-{copy}" for each in control.acts_on)
            room = tuple(f"{each}-{copy}" for each in control.in_same_room_as)
            name = f"{id}-{copy}"
            controls[name] = replace(control, id=name, at=at, acts_on=acts_on, in_same_room_as=room)
    return replace(house, components=components, pipes=pipes, controls=controls)

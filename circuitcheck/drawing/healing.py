"""One pipe out of two where the part between them goes, and two out of one where a part comes in."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType
from typing import Any

from circuitcheck.drawing.corners import straightened
from circuitcheck.drawing.fields import PIPE_FIELDS
from circuitcheck.drawing.value import Component, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import Role

ADDED_UP = frozenset({"length_m", "rise_m", "bends"})
NOT_DIVISIBLE = ("length_m", "rise_m")
DEFAULTS = {field.name: field.default for field in PIPE_FIELDS}


def leaves_tundish(components: Mapping[str, Component], end: End) -> bool:
    """Whether a pipe with this end runs away from a tundish."""
    if not isinstance(end, Joint):
        return False
    part = components[end.part]
    return any(
        device.role is Role.SHOWS_DISCHARGE and device.other == end.port
        for device in part.kind.devices(part.data)
    )


def healed(
    drawing: Drawing, components: Mapping[str, Component], first: Pipe, second: Pipe, part: Component
) -> Pipe:
    """One pipe instead of two on an inline part that goes; the first's id and direction stay.

    Lengths, rises and bends add up where both are known; a tee that was entered by its branch
    leaves a bend behind. What the two agree on stays, what they differ in is not known.
    """
    meets = 1 if _is_on(first.ends[1], part) else 0
    other_meets = 1 if _is_on(second.ends[1], part) else 0
    far = second.ends[1 - other_meets]
    ends = (first.ends[0], far) if meets == 1 else (far, first.ends[1])
    same_direction = meets != other_meets
    met = (first.ends[meets], second.ends[other_meets])
    extra_bends = int(any(isinstance(end, Joint) and end.port == "branch" for end in met))
    data = _merged(components, first, second, 1 if same_direction else -1, extra_bends)
    via = _joined_corners(drawing, first, second, meets, other_meets)
    extra = first.extra if not second.extra else MappingProxyType({**second.extra, **first.extra})
    return replace(first, ends=ends, via=via, data=data, extra=extra)


def _is_on(end: End, part: Component) -> bool:
    return isinstance(end, Joint) and end.part == part.id


def _merged(
    components: Mapping[str, Component], first: Pipe, second: Pipe, sign: int, extra_bends: int
) -> Mapping[str, Any]:
    one, two = first.data, second.data
    merged: dict[str, Any] = {}
    for name in dict.fromkeys((*one, *two)):
        if name in ADDED_UP:
            a, b = one.get(name), two.get(name)
            by = sign if name == "rise_m" else 1
            more = extra_bends if name == "bends" else 0
            merged[name] = None if a is None or b is None else round(a + by * b + more, 9)
        elif name == "straight_drop_m":
            # Of the pipe that leaves the tundish: what comes below can only make its drop longer.
            source = next(
                (
                    pipe
                    for pipe in (first, second)
                    if any(leaves_tundish(components, end) for end in pipe.ends)
                ),
                None,
            )
            if source is not None and name in source.data:
                merged[name] = source.data[name]
        elif one.get(name, DEFAULTS.get(name)) == two.get(name, DEFAULTS.get(name)):
            merged[name] = one[name] if name in one else two[name]
        else:
            merged[name] = None
    return MappingProxyType(merged)


def _joined_corners(
    drawing: Drawing, first: Pipe, second: Pipe, meets: int, other_meets: int
) -> tuple[Point, ...] | None:
    """The corners of both with the joints between them; None where the program routed either."""
    if first.via is None or second.via is None:
        return None
    towards = first.via if meets == 1 else first.via[::-1]
    onwards = second.via if other_meets == 0 else second.via[::-1]
    joints = (drawing.end_at(first.ends[meets]), drawing.end_at(second.ends[other_meets]))
    inner = (*towards, *(joint for joint in joints if joint is not None), *onwards)
    start, finish = drawing.end_at(first.ends[1 - meets]), drawing.end_at(second.ends[1 - other_meets])
    line = straightened([point for point in (start, *inner, finish) if point is not None])
    corners = line[0 if start is None else 1 : len(line) if finish is None else -1]
    return corners if meets == 1 else corners[::-1]


def halves_of_data(drawing: Drawing, pipe: Pipe) -> tuple[Mapping[str, Any], Mapping[str, Any]]:
    """The data of the two halves of a pipe that is parted.

    Nobody knows how its length, rise and bends divide, so these are not known yet on either
    half (no bends at all divide into none). A straight drop below a tundish may have been cut
    short, and belongs to the half that leaves it.
    """
    data = dict(pipe.data)
    for name in NOT_DIVISIBLE:
        if name in data:
            data[name] = None
    if data.get("bends"):
        data["bends"] = None
    if "straight_drop_m" not in data:
        return MappingProxyType(data), MappingProxyType(data)
    del data["straight_drop_m"]
    first, second = (
        MappingProxyType({**data, "straight_drop_m": None})
        if leaves_tundish(drawing.components, end)
        else MappingProxyType(data)
        for end in pipe.ends
    )
    return first, second

"""A drawing into which faults are put: what stands where, chance, and the usual slips of hand."""

from __future__ import annotations

import random
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager, suppress
from dataclasses import replace
from functools import cached_property
from itertools import chain, count
from types import MappingProxyType
from typing import Any, TypeVar

from circuitcheck.checks.case import Case
from circuitcheck.circuit.joining import Placed
from circuitcheck.drawing.changing import EditError, changed, with_items, without_items
from circuitcheck.drawing.edits import change_control
from circuitcheck.drawing.filling_in import set_design, set_field
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.value import EMPTY, Component, Drawing, End, Joint, Pipe
from circuitcheck.finding import Says
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.parts.kind import Role

Thing = TypeVar("Thing")


class Site:
    """A drawing and the chance by which faults come to it. What is worked out of it is worked out once."""

    def __init__(self, drawing: Drawing, chance: random.Random) -> None:
        self.drawing = drawing
        self.chance = chance

    def _unused(self, label: str) -> str:
        """A label, with a number where it is there already: two of a name are a finding of their own."""
        taken = {part.label for part in self.drawing.components.values()}
        numbered = (f"{label} {number}" for number in count(2))
        return next(each for each in chain((label,), numbered) if each not in taken)

    @cached_property
    def case(self) -> Case:
        """The drawing as checks see it: its circuit, its data, its rule book."""
        return Case(self.drawing)

    def mixed(self, things: Iterable[Thing]) -> list[Thing]:
        """Things in random order, the same on every machine for the same seed."""
        keyed = [(self.chance.random(), place, thing) for place, thing in enumerate(things)]
        return [thing for _, _, thing in sorted(keyed, key=lambda each: each[:2])]

    def one(self, *things: Thing) -> Thing:
        """One of several things."""
        return self.mixed(things)[0]

    def devices(self, role: Role, *, built_in: bool = False) -> list[Placed]:
        """What plays a role, in random order; what is built into another part only if asked for."""
        found = self.case.circuit.devices(role)
        return self.mixed(each for each in found if built_in or not each.device.built_in)

    def parts(self, *kinds: str) -> list[Component]:
        """The parts of these kinds, in random order."""
        return self.mixed(part for part in self.drawing.components.values() if part.kind.name in kinds)

    def name(self, id: str) -> str:
        """What to call a part, a pipe or a control."""
        return self.drawing.name(id)

    def says(self, template: str, drawing: Drawing | None = None, /, **what: str | float) -> Says:
        """A sentence about the drawing, or about the one made from it: ids become names."""
        values: dict[str, str | float] = {}
        for key, value in what.items():
            values[key] = value
            for each in (self.drawing, drawing):
                if isinstance(value, str) and each is not None and _is_in(each, value):
                    values[key] = each.name(value)
        return Says(template, values)

    def fitting(self) -> Fitting:
        """Means to fit parts into the drawing, from the drawing as it is."""
        return Fitting(self.drawing, self.case.lines)

    def beyond(self, part: str, port: str) -> Joint | None:
        """The port at the other end of the pipe on a port."""
        here = Joint(part, port)
        pipe = self.drawing.joined.get(here)
        if pipe is None:
            return None
        ends = self.drawing.pipes[pipe].ends
        other = ends[1] if ends[0] == here else ends[0]
        return other if isinstance(other, Joint) else None

    def pipe_on(self, part: str, port: str) -> str | None:
        """The pipe on a port."""
        return self.drawing.joined.get(Joint(part, port))

    def with_value(self, id: str, field: str, value: Any) -> Drawing:
        """The drawing with another value in a data field of a part, pipe or control."""
        return set_field(self.drawing, id, field, value)

    def with_values(self, values: Mapping[tuple[str, str], Any]) -> Drawing:
        """The drawing with other values, by id and field."""
        drawing = self.drawing
        for (id, field), value in values.items():
            drawing = set_field(drawing, id, field, value)
        return drawing

    def with_design(self, field: str, value: Any) -> Drawing:
        """The drawing with another value in a field of the design."""
        return set_design(self.drawing, field, value)

    def without(self, *parts: str) -> Drawing:
        """The drawing without parts and all pipes on them; tees heal."""
        pipes = [pipe for part in parts for pipe in self.drawing.pipes_of(part)]
        return remove(self.drawing, (*parts, *pipes))

    def without_controls(self, *controls: str) -> Drawing:
        """The drawing without controls."""
        return remove(self.drawing, controls)

    def without_acting_on(self, controls: Iterable[str], part: str) -> Drawing:
        """The drawing with controls that no longer act on a part."""
        drawing = self.drawing
        for control in controls:
            left = [each for each in drawing.controls[control].acts_on if each != part]
            drawing = change_control(drawing, control, acts_on=left)
        return drawing

    def with_part_instead(
        self, part: str, kind: str, data: Mapping[str, Any] = EMPTY, label: str = ""
    ) -> Drawing:
        """The drawing with a part of another kind in a part's place, port for port in their order: its
        label is the new kind's if none is told, its height stays."""
        old, new = self.drawing.components[part], component_kinds()[kind]
        ports = {a.name: b.name for a, b in zip(old.kind.ports, new.ports, strict=False)}
        height = {"height_m": old.data["height_m"]} if "height_m" in old.data else {}
        stands = replace(old, kind=new, label=self._unused(label or new.title), data={**height, **data})
        pipes = {}
        for id in self.drawing.pipes_of(part):
            pipe = self.drawing.pipes[id]
            first, second = (
                Joint(part, ports[end.port]) if isinstance(end, Joint) and end.part == part else end
                for end in pipe.ends
            )
            pipes[id] = replace(pipe, ends=(first, second))
        return changed(
            self.drawing,
            components=with_items(self.drawing.components, {part: stands}),
            pipes=with_items(self.drawing.pipes, pipes),
        )

    def with_water_through(self, part: str, entered: str, left: str) -> Drawing:
        """The drawing without a part that stands between two pipes, which become one: what is known of
        their courses is added up. Raises EditError where a pipe is missing."""
        first, second = Joint(part, entered), Joint(part, left)
        work = self.fitting()
        going, staying = (self.drawing.pipes[work.pipe_at(joint)] for joint in (first, second))
        start, finish = (_other(pipe, joint) for pipe, joint in ((going, first), (staying, second)))
        corners = None
        if going.via is not None or staying.via is not None:
            before = going.via or () if going.ends[1] == first else (going.via or ())[::-1]
            after = staying.via or () if staying.ends[0] == second else (staying.via or ())[::-1]
            corners = (*before, *after)
        data = MappingProxyType({**going.data, **_added(going, first, staying, second)})
        one = replace(going, ends=(start, finish), via=corners, data=data)
        return changed(
            self.drawing,
            components=without_items(self.drawing.components, (part,)),
            pipes=with_items(without_items(self.drawing.pipes, (staying.id,)), {going.id: one}),
        )

    def rejoined(self, pipe: str, part: str, by: Joint) -> tuple[Drawing, str]:
        """The drawing with a pipe's end, now on a part, in the pipe on another port, right at that port,
        as if it had always been run there: as long, and up or down to there. Also the new tee."""
        known = self.drawing.pipes[pipe]
        work = self.fitting()
        tee = work.move_end(pipe, part, by)
        far = next(end for end in known.joints if end.part != part)
        here, there = self.case.heights.of(far.part), self.case.heights.of(by.part)
        if here is not None and there is not None:
            up = there - here if known.ends[0] == far else here - there
            long = max(known.data.get("length_m") or 0.0, abs(up) + 0.1)
            for field, value in (("rise_m", round(up, 3)), ("length_m", round(long, 3))):
                work.set(pipe, field, value)
        work.set(pipe, "bends", known.data.get("bends", 2))
        return work.drawing, tee

    def turned_round(self, part: str) -> Drawing:
        """The drawing with an inline part the wrong way round."""
        work = self.fitting()
        work.turn_round(part)
        return work.drawing

    def valve_cut_in(
        self, by: Joint, label: str = "Service valve", kind: str = "isolating_valve", port: str = ""
    ) -> tuple[Drawing, str]:
        """The drawing with a valve in the pipe on a port, right at it, and the valve's id."""
        work = self.fitting()
        height = self.case.heights.of(by.part)
        data = {} if height is None else {"height_m": height}
        part = work.cut_in(kind, by, port=port, data=data, label=self._unused(label))
        return work.drawing, part


def _other(pipe: Pipe, joint: Joint) -> End:
    return pipe.ends[1] if pipe.ends[0] == joint else pipe.ends[0]


def _added(first: Pipe, first_end: Joint, second: Pipe, second_start: Joint) -> dict[str, float]:
    """What is known of two pipes' courses, as one pipe's."""
    found = {}
    for field in ("length_m", "bends", "rise_m"):
        one, two = first.data.get(field), second.data.get(field)
        if one is None or two is None:
            continue
        if field == "rise_m":
            one = one if first.ends[1] == first_end else -one
            two = two if second.ends[0] == second_start else -two
        found[field] = round(one + two, 4)
    return found


def _is_in(drawing: Drawing, id: str) -> bool:
    return id in drawing.components or id in drawing.pipes or id in drawing.controls


@contextmanager
def tried() -> Iterator[None]:
    """Leave out what cannot be made: the next place may do."""
    with suppress(EditError):
        yield

"""Taking parts, pipes and controls out: ends are freed, pipes heal, nothing is left naming what is gone."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from functools import cached_property
from types import MappingProxyType
from typing import TypeVar

from circuitcheck.drawing.changing import EditError, changed, copied, without_items
from circuitcheck.drawing.healing import healed
from circuitcheck.drawing.value import Component, Control, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import FieldType, Group, Way
from circuitcheck.parts.tee import KIND as TEE
from circuitcheck.told import worded

HEALING_GROUPS = frozenset({Group.MOVING, Group.SHUTTING})

Item = TypeVar("Item")


def remove(drawing: Drawing, ids: Iterable[str]) -> Drawing:
    """Take out parts, pipes and controls.

    A part's pipes end free where its ports were; an inline part with two joined ports heals them
    into one pipe, and so does a tee that keeps two of its three. A control no longer acts on what
    is gone, and a field that named it is not known yet; notes stay. Raises EditError for an id
    that is not there.
    """
    gone = tuple(dict.fromkeys(ids))
    for id in gone:
        if id not in drawing.components and id not in drawing.pipes and id not in drawing.controls:
            raise EditError(worded("There is nothing called {id!r} in the drawing.", id=id))
    work = _Work(drawing)
    for id in gone:
        if id in drawing.pipes:
            work.drop_pipe(id)
    for id in gone:
        if id in drawing.components:
            work.take_out(id)
    work.tidy_tees()
    after = work.drawing_after()
    return changed(after, controls=without_items(after.controls, gone))


def with_end_moved(drawing: Drawing, pipe: Pipe, which_end: int) -> Drawing:
    """The drawing with a pipe whose one end went elsewhere; the tee it left is tidied as by `remove`."""
    work = _Work(drawing)
    work.put_end(pipe, which_end)
    work.tidy_tees()
    return work.drawing_after()


class _Work:
    """Parts and pipes while they are taken out one after the other; the drawing itself stays."""

    def __init__(self, drawing: Drawing) -> None:
        self.drawing = drawing
        self.components = copied(drawing.components)
        self.pipes = copied(drawing.pipes)
        self.joined = copied(drawing.joined)
        self.loose_tees: dict[str, None] = {}

    @cached_property
    def _places(self) -> Mapping[str, int]:
        return {id: place for place, id in enumerate(self.drawing.pipes)}

    def drawing_after(self) -> Drawing:
        """The drawing as it is now, with nothing left that names a lost part."""
        before = self.drawing
        after = changed(
            before,
            components=_same_or_new(before.components, self.components),
            pipes=_same_or_new(before.pipes, self.pipes),
        )
        if len(self.components) == len(before.components):
            return after
        return _without_mention(after, set(before.components) - set(self.components))

    def joined_ports(self, part: Component) -> list[str]:
        return [port.name for port in part.kind.ports if Joint(part.id, port.name) in self.joined]

    def drop_pipe(self, id: str) -> None:
        """Take a pipe out, and remember the tees that were full with it."""
        for end in self.pipes[id].ends:
            self._leave(end)
        del self.pipes[id]

    def put_end(self, pipe: Pipe, which_end: int) -> None:
        """Put a pipe in the place of itself, with one of its ends elsewhere than before."""
        self._leave(self.pipes[pipe.id].ends[which_end])
        self.pipes[pipe.id] = pipe
        end = pipe.ends[which_end]
        if isinstance(end, Joint):
            self.joined[end] = pipe.id

    def _leave(self, end: End) -> None:
        if not isinstance(end, Joint):
            return
        part = self.components[end.part]
        if part.kind is TEE and len(self.joined_ports(part)) == len(TEE.ports):
            self.loose_tees[part.id] = None
        del self.joined[end]

    def tidy_tees(self) -> None:
        """Take out tees that lost one of their three pipes and keep two or none."""
        while self.loose_tees:
            id = self.loose_tees.popitem()[0]
            part = self.components.get(id)
            if part is None:
                continue
            ports = self.joined_ports(part)
            pipes = {self.joined[Joint(id, port)] for port in ports}
            if not ports or len(pipes) == len(ports) == 2:
                self.take_out(id)

    def take_out(self, id: str) -> None:
        """Take a part out, healing its two pipes or freeing their ends."""
        part = self.components[id]
        ports = self.joined_ports(part)
        if not (len(ports) == 2 and _goes_through(part, ports) and self._heal(part, ports)):
            for port in ports:
                self._free(part, port)
        del self.components[id]

    def _heal(self, part: Component, ports: list[str]) -> bool:
        joints = [Joint(part.id, port) for port in ports]
        ids = sorted((self.joined[joint] for joint in joints), key=self._places.__getitem__)
        if ids[0] == ids[1]:
            return False
        first, second = self.pipes[ids[0]], self.pipes[ids[1]]
        pipe = healed(self.drawing, self.components, first, second, part)
        if pipe.ends[0] == pipe.ends[1]:
            return False
        for joint in joints:
            del self.joined[joint]
        del self.pipes[second.id]
        self.pipes[first.id] = pipe
        self.joined.update((joint, first.id) for joint in pipe.joints)
        return True

    def _free(self, part: Component, port: str) -> None:
        """Free the end of the pipe on a port; a pipe left without a place or a length goes too."""
        joint = Joint(part.id, port)
        id = self.joined.get(joint)
        if id is None:
            return  # it went with another port of the part
        pipe = self.pipes[id]
        which_end = pipe.ends.index(joint)
        other = pipe.ends[1 - which_end]
        at = part.port_at(port) or self._somewhere(pipe, which_end)
        if at is None or at == other:
            self.drop_pipe(id)
            return
        del self.joined[joint]
        ends = (at, other) if which_end == 0 else (other, at)
        self.pipes[id] = replace(pipe, ends=ends)

    def _somewhere(self, pipe: Pipe, which_end: int) -> Point | None:
        """A place for an end whose part had none: the next corner, else the other end."""
        if pipe.via:
            return pipe.via[0] if which_end == 0 else pipe.via[-1]
        other = pipe.ends[1 - which_end]
        if isinstance(other, Joint):
            return self.components[other.part].port_at(other.port)
        return None


def _same_or_new(before: Mapping[str, Item], after: dict[str, Item]) -> Mapping[str, Item]:
    if len(before) == len(after) and all(before[id] is item for id, item in after.items()):
        return before
    return MappingProxyType(after)


def _goes_through(part: Component, ports: list[str]) -> bool:
    """Whether two ports of a part that steers or guards are joined by a passage, or openly by several."""
    if part.kind.group not in HEALING_GROUPS:
        return False
    passages = part.kind.passages(part.data)
    if any({passage.a, passage.b} == set(ports) for passage in passages):
        return True
    reached = {ports[0]}
    for _ in passages:
        for passage in passages:
            if passage.way is Way.OPEN and reached & {passage.a, passage.b}:
                reached |= {passage.a, passage.b}
    return ports[1] in reached


def _without_mention(drawing: Drawing, lost: set[str]) -> Drawing:
    """No control and no field names a lost part any more."""
    controls = {
        id: control
        if lost.isdisjoint((*control.acts_on, *control.in_same_room_as))
        else _acting_on_less(control, lost)
        for id, control in drawing.controls.items()
    }
    components = {id: _referring_to_less(part, lost) for id, part in drawing.components.items()}
    return changed(
        drawing,
        components=_same_or_new(drawing.components, components),
        controls=_same_or_new(drawing.controls, controls),
    )


def _acting_on_less(control: Control, lost: set[str]) -> Control:
    return replace(
        control,
        acts_on=tuple(id for id in control.acts_on if id not in lost),
        in_same_room_as=tuple(id for id in control.in_same_room_as if id not in lost),
    )


def _referring_to_less(part: Component, lost: set[str]) -> Component:
    # Most parts refer to nothing: asking the data first spares the walk over the fields.
    if not any(isinstance(value, str) and value in lost for value in part.data.values()):
        return part
    stale = {
        field.name: None
        for field in part.kind.fields
        if field.type is FieldType.REFERENCE and part.data.get(field.name) in lost
    }
    return replace(part, data=MappingProxyType({**part.data, **stale})) if stale else part

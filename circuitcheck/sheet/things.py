"""All that has a symbol on the sheet, parts and placed controls alike, and which of it changed. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import compress
from operator import is_not

from circuitcheck.drawing.difference import changes
from circuitcheck.drawing.value import Component, Control, Drawing

Thing = Component | Control


class Things(Mapping[str, Thing]):
    """The parts, and after them the controls that are placed; nothing is copied of thousands of parts."""

    def __init__(self, parts: Mapping[str, Component], controls: Mapping[str, Control]) -> None:
        self._parts = parts
        self._controls = controls

    def __getitem__(self, id: str) -> Thing:
        part = self._parts.get(id)
        if part is not None:
            return part
        control = self._controls[id]
        if control.at is None:
            raise KeyError(id)
        return control

    def __contains__(self, id: object) -> bool:
        return id in self._parts or (id in self._controls and self._controls[str(id)].at is not None)

    def __iter__(self) -> Iterator[str]:
        yield from self._parts
        yield from self._placed()

    def __len__(self) -> int:
        return len(self._parts) + sum(1 for _ in self._placed())

    def _placed(self) -> Iterator[str]:
        return (id for id, control in self._controls.items() if control.at is not None)

    def changed(self, before: Things) -> tuple[set[str], set[str]]:
        """The ids that are new or not what they were before, and those that are gone: as `changed` tells it of
        maps, but of thousands of parts in the maps that hold them."""
        parts, gone_parts = changed(before._parts, self._parts)
        controls, gone_controls = changed(before._placed_controls(), self._placed_controls())
        return parts | controls, {id for id in gone_parts | gone_controls if id not in self}

    def _placed_controls(self) -> dict[str, Control]:
        return {id: self._controls[id] for id in self._placed()}


def things(drawing: Drawing) -> Mapping[str, Thing]:
    """All that has a symbol: the parts, and the controls that are placed."""
    if not drawing.controls:
        return drawing.components
    known: Things | None = drawing.kept("things")
    return known or drawing.keep("things", Things(drawing.components, drawing.controls))


class Looked:
    """What changed from one drawing shown to the next: ids that are new or not what they were, and those that
    are gone. While a gesture lasts the drawings come all from the one there was when it began, and so few parts
    differ from one to the next; `settled` is that one."""

    def __init__(self) -> None:
        self._settled = Drawing()
        self._passing: frozenset[str] | None = None

    def changed(
        self, before: Drawing, after: Drawing, *, passing: bool
    ) -> tuple[set[str], set[str], set[str], set[str]]:
        """Of the things those changed and those gone, and the same of the pipes."""
        near = self._near(after)
        may = None if near is None or self._passing is None else near | self._passing
        self._passing = near if passing else frozenset()
        if not passing:
            self._settled = after
        if may is None or before.controls is not after.controls:
            return *changed(things(before), things(after)), *changed(before.pipes, after.pipes)
        parts = {
            id
            for id in may
            if id in after.components and after.components[id] is not before.components.get(id)
        }
        pipes = {id for id in may if id in after.pipes and after.pipes[id] is not before.pipes.get(id)}
        return parts, set(), pipes, set()

    def _near(self, drawing: Drawing) -> frozenset[str] | None:
        """The ids of what differs from the settled drawing; None where something came or went."""
        parts, pipes = changes(self._settled, drawing)
        if parts is None or pipes is None:
            return None
        return frozenset([*(now.id for _, now in parts), *(now.id for _, now in pipes)])


def changed(old: Mapping[str, object], new: Mapping[str, object]) -> tuple[set[str], set[str]]:
    """The ids that are new or not what they were, and those that are gone."""
    if old is new:
        return set(), set()
    if isinstance(old, Things) and isinstance(new, Things):
        return new.changed(old)
    if len(old) == len(new):
        # As a rule few are others and each stands where it stood: told without a look at any that is the same.
        apart = list(compress(zip(old, new, strict=True), map(is_not, old.values(), new.values())))
        if all(was == now for was, now in apart):
            return {now for _, now in apart}, set()
    return {id for id, value in new.items() if old.get(id) is not value}, set(old) - set(new)

"""What changed between two drawings, as far as it bears on a judgement."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import compress
from operator import is_not
from typing import Any, TypeVar
from weakref import ref

from circuitcheck.drawing.value import Component, Drawing, Pipe

Item = TypeVar("Item")
Placed = TypeVar("Placed", Component, Pipe)
PLACE = ("at", "turn", "mirrored")
Changes = tuple[list[tuple[Component, Component]] | None, list[tuple[Pipe, Pipe]] | None]
_last: deque[tuple[ref[Drawing], ref[Drawing], Changes]] = deque(maxlen=1)
"""The pair of drawings asked about last; it keeps neither of them."""


@dataclass(frozen=True, slots=True)
class Difference:
    """What an edit changed. `joins_anew`: parts, pipes, joints, controls or ways through a part, so that
    nothing known of the circuit holds. Otherwise `fields` are the data fields that changed anywhere, and
    `named_fields` the same as `id.field`; `of_pipes` says that a pipe's are among them. `moved` says
    that something lies elsewhere, `renamed` are the parts with another label."""

    joins_anew: bool = False
    fields: frozenset[str] = frozenset()
    moved: bool = False
    renamed: frozenset[str] = frozenset()
    named_fields: frozenset[str] = frozenset()
    of_pipes: bool = False

    @property
    def is_nothing(self) -> bool:
        """Whether no judgement can differ."""
        return not (self.joins_anew or self.fields or self.moved or self.renamed)


ANEW = Difference(joins_anew=True)


def difference(before: Drawing, after: Drawing) -> Difference:
    """What changed. Items are compared by identity first, as edits share what they do not touch."""
    parts, pipes = changes(before, after)
    if parts is None or pipes is None or _controls_differ(before, after):
        return ANEW
    fields = _fields(before.design, after.design)
    moved = before.sheet.get("metres_per_square") != after.sheet.get("metres_per_square")
    named = {f"design.{field}" for field in fields}
    renamed: set[str] = set()
    of_pipes = False
    for old, new in parts:
        if old.kind is not new.kind:
            return ANEW
        changed = _fields(old.data, new.data)
        if not changed.isdisjoint(new.kind.rests_on):
            return ANEW
        fields |= changed
        named.update(f"{new.id}.{field}" for field in changed)
        moved = moved or lies_elsewhere(old, new)
        if old.label != new.label:
            renamed.add(new.id)
    for was, now in pipes:
        if was.joints != now.joints:
            return ANEW
        changed = _fields(was.data, now.data)
        fields |= changed
        named.update(f"{now.id}.{field}" for field in changed)
        of_pipes = of_pipes or bool(changed)
        moved = moved or was.ends != now.ends or was.via != now.via
    return Difference(
        False, frozenset(fields), moved, frozenset(renamed), frozenset(named), of_pipes=of_pipes
    )


def lies_elsewhere(old: Component, new: Component) -> bool:
    """Whether a part has another place on the sheet than it had."""
    return old is not new and any(getattr(old, name) != getattr(new, name) for name in PLACE)


def changes(before: Drawing, after: Drawing) -> Changes:
    """The parts and the pipes that are not the same, old and new, as `changed_items` tells them. One edit
    is asked about by all that follow it, one after another: the answer is kept until the next one."""
    if _last:
        old, new, known = _last[0]
        if old() is before and new() is after:
            return known
    found = (
        changed_items(before.components, after.components),
        changed_items(before.pipes, after.pipes),
    )
    _last.append((ref(before), ref(after), found))
    return found


def made_of(before: Drawing, after: Drawing, parts: Iterable[str], pipes: Iterable[str]) -> Drawing:
    """`after`, of which an edit says that it made it of `before` and put nothing in but these parts and pipes,
    each in place of the one of that name. So nobody has to look at all others: at a step of a drag that takes
    longer than the edit. What the pipes join goes along where none of these joins anything else."""
    if after is not before:
        changed_pipes = _replaced(before.pipes, after.pipes, pipes)
        found = _replaced(before.components, after.components, parts), changed_pipes
        _last.append((ref(before), ref(after), found))
        if "joined" in before.__dict__ and all(old.joints == new.joints for old, new in changed_pipes):
            after.__dict__["joined"] = before.joined
    return after


def _replaced(
    before: Mapping[str, Item], after: Mapping[str, Item], ids: Iterable[str]
) -> list[tuple[Item, Item]]:
    pairs = ((before[id], after[id]) for id in sorted(ids))
    return [(old, new) for old, new in pairs if old is not new]


def changed_items(before: Mapping[str, Item], after: Mapping[str, Item]) -> list[tuple[Item, Item]] | None:
    """The items that are not the same, old and new; None where ids came, went or changed places."""
    if before is after:
        return []
    if len(before) != len(after):
        return None
    old, new = before.values(), after.values()
    pairs = list(compress(zip(old, new, strict=True), map(is_not, old, new)))
    for was, now in pairs:
        if _id(was) != _id(now):
            return None
    return pairs


def changed_or_gone(
    pairs: list[tuple[Placed, Placed]] | None, old: Mapping[str, Placed], new: Mapping[str, Placed]
) -> list[str]:
    """The ids of what is new, gone or not the same object; `pairs` is what `changes` told of them."""
    if pairs is not None:
        return [was.id for was, _ in pairs]
    found = [id for id, item in new.items() if old.get(id) is not item]
    return found + [id for id in old if id not in new]


def _id(item: object) -> str:
    assert isinstance(item, (Component, Pipe))
    return item.id


def _controls_differ(before: Drawing, after: Drawing) -> bool:
    return before.controls is not after.controls and dict(before.controls) != dict(after.controls)


def _fields(before: Mapping[str, Any], after: Mapping[str, Any]) -> set[str]:
    if before is after:
        return set()
    names: Iterable[str] = {*before, *after}
    return {name for name in names if before.get(name, _fields) != after.get(name, _fields)}

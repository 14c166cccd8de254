"""Which part of one drawing is which of another: by id, and where ids differ by what it is and joins.

Two files of one drawing share their ids, so an id that both give to the same kind is the same thing. What
is left, in a file drawn anew elsewhere, is the same thing where the kind and a label that is the only one
of its kind on both sides agree; or the kind, all data, and the port of something already matched that it
is piped to; or the kind and all data, where no other like it is on either side. A part with other data and
no label or id in common has been taken out and another fitted: that is what the fitter must do.

A program numbers what is drawn, so that two drawings begun apart share ids by chance. Where most pipes of
one id share no end, ids are asked last and not first.

A pipe is the same where it joins the same ports, whichever end is named first; then, with the same id,
where it still shares an end. One that shares neither end is another pipe, whatever its id.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Hashable, Iterable, Mapping
from typing import Any, TypeVar

from circuitcheck.drawing.value import Component, Control, Drawing, End, Joint, Pipe
from circuitcheck.parts.kind import FieldType, Kind

Item = TypeVar("Item")
Matches = Mapping[str, str]
"""The new id by the old one, in the order of the old drawing."""

FEW = 3
"""Pipes of one id in both below which nothing can be said of the ids."""


def ids_agree(old: Drawing, new: Drawing) -> bool:
    """Whether the two give their ids to the same things, as two files of one drawing do."""
    common = [
        (pipe, new.pipes[id])
        for id, pipe in old.pipes.items()
        if id in new.pipes and len(pipe.joints) == len(new.pipes[id].joints) == 2
    ]
    agreeing = sum(not set(mine.ends).isdisjoint(theirs.ends) for mine, theirs in common)
    return len(common) < FEW or 2 * agreeing >= len(common)


def matched_parts(old: Drawing, new: Drawing) -> dict[str, str]:
    """The parts that are the same in both."""
    trusted = ids_agree(old, new)
    found = _same_ids(old.components, new.components) if trusted else {}
    _pair(found, old.components, new.components, lambda part: (part.kind, part.label) if part.label else None)
    _by_joints(found, old, new)
    _pair(found, old.components, new.components, _all_of, alone=True)
    if _by_joints(found, old, new):
        _pair(found, old.components, new.components, _all_of, alone=True)
    if not trusted:
        _add_same_ids(found, old, new)
    return {id: found[id] for id in old.components if id in found}


def matched_controls(old: Drawing, new: Drawing) -> dict[str, str]:
    """The controls that are the same in both."""
    found = _same_ids(old.controls, new.controls)
    _pair(found, old.controls, new.controls, lambda one: (one.kind, one.label) if one.label else None)
    return {id: found[id] for id in old.controls if id in found}


def matched_pipes(old: Drawing, new: Drawing, parts: Matches) -> dict[str, str]:
    """The pipes that are the same in both, given the parts that are."""
    found: dict[str, str] = {}
    by_ends: dict[frozenset[End | None], str] = {
        frozenset(pipe.ends): pipe.id for pipe in new.pipes.values() if len(pipe.joints) == 2
    }
    for pipe in old.pipes.values():
        ends = frozenset(carried(end, parts) for end in pipe.ends)
        if ends in by_ends and len(pipe.joints) == 2:
            found[pipe.id] = by_ends.pop(ends)
    taken = set(found.values())
    for id, pipe in old.pipes.items():
        other = new.pipes.get(id)
        if id not in found and other is not None and id not in taken and _share_an_end(pipe, other, parts):
            found[id] = id
    return {id: found[id] for id in old.pipes if id in found}


def carried(end: End, parts: Matches) -> End | None:
    """An end of the old drawing as the new one would name it; None on a part that is gone."""
    if not isinstance(end, Joint):
        return end
    return Joint(parts[end.part], end.port) if end.part in parts else None


def _share_an_end(old: Pipe, new: Pipe, parts: Matches) -> bool:
    if not old.joints and not new.joints:
        return True
    return any(carried(end, parts) in new.ends for end in old.ends)


def _same_ids(old: Mapping[str, Item], new: Mapping[str, Item]) -> dict[str, str]:
    return {id: id for id, item in old.items() if id in new and _kind(new[id]) is _kind(item)}


def _add_same_ids(found: dict[str, str], old: Drawing, new: Drawing) -> None:
    """What nothing else tells, and whose id and data agree."""
    taken = set(found.values())
    for id in _same_ids(old.components, new.components):
        if id not in found and id not in taken and _all_of(old.components[id]) == _all_of(new.components[id]):
            found[id] = id


def _kind(item: object) -> Kind:
    assert isinstance(item, (Component, Control))
    return item.kind


def _pair(
    found: dict[str, str],
    old: Mapping[str, Item],
    new: Mapping[str, Item],
    key: Callable[[Item], Hashable | None],
    *,
    alone: bool = False,
) -> None:
    """Match what is left where a key stands once on either side; `alone`: once in the whole drawing."""
    taken = set() if alone else set(found.values())
    known = set() if alone else set(found)
    mine = _once(old, key, known)
    theirs = _once(new, key, taken)
    others = set(found.values())
    for each, id in mine.items():
        if id not in found and each in theirs and theirs[each] not in others:
            found[id] = theirs[each]


def _once(
    items: Mapping[str, Item], key: Callable[[Item], Hashable | None], leaving: Iterable[str]
) -> dict[Hashable, str]:
    without = set(leaving)
    places: dict[Hashable, list[str]] = defaultdict(list)
    for id, item in items.items():
        if id not in without and (each := key(item)) is not None:
            places[each].append(id)
    return {each: ids[0] for each, ids in places.items() if len(ids) == 1}


def _by_joints(found: dict[str, str], old: Drawing, new: Drawing) -> bool:
    """Go from what is matched along the pipes to parts of one kind and data at the same ports."""
    taken = set(found.values())
    waiting = list(found)
    begun = len(found)
    while waiting:
        part = old.components[waiting.pop()]
        for port in part.kind.ports:
            mine = _beyond(old, Joint(part.id, port.name))
            theirs = _beyond(new, Joint(found[part.id], port.name))
            if mine is None or theirs is None or mine.port != theirs.port:
                continue
            if mine.part in found or theirs.part in taken:
                continue
            if _all_of(old.components[mine.part]) == _all_of(new.components[theirs.part]):
                found[mine.part] = theirs.part
                taken.add(theirs.part)
                waiting.append(mine.part)
    return len(found) > begun


def _beyond(drawing: Drawing, joint: Joint) -> Joint | None:
    """What is joined to a port by the pipe on it."""
    id = drawing.joined.get(joint)
    if id is None:
        return None
    first, second = drawing.pipes[id].ends
    other = second if first == joint else first
    return other if isinstance(other, Joint) else None


def _all_of(part: Component) -> Hashable:
    """The kind and the data but what names other parts: their ids may differ."""
    names = {field.name for field in part.kind.fields if field.type is FieldType.REFERENCE}
    data = {
        name: _frozen(value) for name, value in part.data.items() if name not in names and value is not None
    }
    return (part.kind, frozenset(data.items()))


def _frozen(value: Any) -> Hashable:
    if isinstance(value, Mapping):
        return frozenset((name, _frozen(each)) for name, each in value.items())
    if isinstance(value, (list, tuple)):
        return tuple(_frozen(each) for each in value)
    return value if isinstance(value, Hashable) else repr(value)

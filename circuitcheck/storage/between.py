"""What must hold between the items of a file: ids, pipe ends, and references to other items."""

from __future__ import annotations

from collections.abc import Mapping, Set
from functools import cache
from typing import Any

from circuitcheck.drawing.value import Component, Control, Joint, Pipe
from circuitcheck.parts.kind import FieldType, Kind
from circuitcheck.storage.faults import Faults, shown, visible
from circuitcheck.told import a_word, worded

LISTS = ("components", "pipes", "controls", "notes")
"""The lists of a file whose items have an id."""


@cache
def port_names(kind: Kind) -> frozenset[str]:
    """The names of a kind's ports."""
    return frozenset(port.name for port in kind.ports)


@cache
def references(kind: Kind) -> tuple[str, ...]:
    """The data fields of a kind that name another item."""
    return tuple(field.name for field in kind.fields if field.type is FieldType.REFERENCE)


def check_ids(places: Mapping[str, list[str]], faults: Faults) -> None:
    """Each id stands for one item of the file. `places` says where each id is given."""
    for id, where in places.items():
        if len(where) > 1:
            found = worded("given to {where}", where=" and ".join(where))
            faults.add(
                id,
                "id",
                found,
                a_word("given once"),
                worded("The id {id} is {found}; each item needs its own.", id=shown(id), found=found),
            )


def check_ends(
    pipes: Mapping[str, Pipe], components: Mapping[str, Component], unsure: Set[str], faults: Faults
) -> None:
    """Each pipe end on a part is on a port that exists, with no other pipe on it.

    `unsure` names parts of no known kind, whose ports cannot be told.
    """
    ports = {id: port_names(component.kind) for id, component in components.items()}
    taken: dict[Joint, str] = {}
    for pipe in pipes.values():
        for end in pipe.ends:
            if type(end) is not Joint:
                continue
            part, port = end
            if part not in ports:
                if part not in unsure:
                    _bad_end(pipe.id, end, worded("on {part}, which is no part", part=shown(part)), faults)
            elif port not in ports[part]:
                _bad_end(
                    pipe.id,
                    end,
                    worded("on {part}, which has no port {port}", part=visible(part), port=shown(port)),
                    faults,
                )
            elif end not in taken:
                taken[end] = pipe.id
            elif taken[end] == pipe.id:
                _bad_end(pipe.id, end, worded("twice on the same port, {end}", end=_spoken(end)), faults)
            else:
                _bad_end(
                    pipe.id,
                    end,
                    worded("on {end}, where {taken} already is", end=_spoken(end), taken=visible(taken[end])),
                    faults,
                )


def check_references(
    components: Mapping[str, Component], controls: Mapping[str, Control], ids: Set[str], faults: Faults
) -> None:
    """Each reference names an item that exists; what it should be is not the file's business."""
    for component in components.values():
        for field in references(component.kind):
            value = component.data.get(field)
            if value is not None:
                _check_reference(component.id, field, value, ids, faults)
    for control in controls.values():
        for id in control.acts_on:
            _check_reference(control.id, "acts_on", id, ids, faults)
        for id in control.in_same_room_as:
            _check_reference(control.id, "in_same_room_as", id, ids, faults)


def _check_reference(item: str, field: str, value: Any, ids: Set[str], faults: Faults) -> None:
    if value not in ids:
        message = worded(
            "{item}.{field} names {value}, but nothing in the file has that id.",
            item=visible(item),
            field=field,
            value=shown(value),
        )
        faults.add(item, field, shown(value), a_word("the id of an item of the file"), message)


def _bad_end(pipe: str, end: Joint, found: str, faults: Faults) -> None:
    message = worded("Pipe {pipe} has an end {found}.", pipe=visible(pipe), found=found)
    faults.add(pipe, "ends", shown(list(end)), a_word("a port of a part with no other pipe on it"), message)


def _spoken(end: Joint) -> str:
    return f"{visible(end.part)}.{end.port}"

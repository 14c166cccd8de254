"""The quick way into a large sound file: None for any that must be looked at field by field.

It accepts only what `reading.parse_patiently` accepts and builds an equal Drawing; where in doubt
it leaves the file to that. msgspec checks types and limits while it decodes (`quick_types.py`).
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from types import MappingProxyType
from typing import Any, Final

from msgspec import UNSET, MsgspecError
from msgspec.json import Encoder
from msgspec.structs import astuple

from circuitcheck.drawing.value import EMPTY, Component, Control, Drawing, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import control_kinds
from circuitcheck.storage import items
from circuitcheck.storage.faults import Faults, TooManyFaultsError
from circuitcheck.storage.limits import MOST_BYTES
from circuitcheck.storage.quick_types import Expected, FreePorts, file_types, free_ports
from circuitcheck.storage.strict_json import BYTE_ORDER_MARK

# A number too long to be allowed, seen through a sieve that takes every 430th byte: it fills ten
# holes in a row. What else does so is looked at field by field.
_SIEVE: Final = 430
_LONG_NUMBER: Final = re.compile(rb"[-+.eE0-9]{10}")


def quick(data: bytes) -> Drawing | None:
    """The Drawing of a file, or None where it must be looked at field by field."""
    # An escape of the colon's row would upset the count of colons below. Most files hold no backslash at all,
    # and to look for one byte takes a tenth of the time.
    escaped = b"\\" in data and rb"\u003" in data
    if escaped or len(data) > MOST_BYTES or _LONG_NUMBER.search(data[::_SIEVE]):
        return None
    content = data.removeprefix(BYTE_ORDER_MARK)
    colons = content.count(b":")
    try:
        return _decoded(content, colons)
    except (_DoubtError, MsgspecError, TooManyFaultsError, UnicodeDecodeError, RecursionError):
        return None


class _DoubtError(Exception):
    """Something that the quick way does not judge."""


def _decoded(content: bytes, colons: int) -> Drawing:
    types = file_types()
    file = types.decoder.decode(content)
    drawing, counted = _drawing(file, types.expected)
    # A key that msgspec dropped on the way, as repeated or as unknown, shows as a colon too many. So does a colon in
    # a text, most likely in a label; the slower count over all that was decoded finds those anywhere.
    too_many = colons - counted
    if too_many and too_many != _in_labels(drawing) and colons != Encoder().encode(file).count(b":"):
        raise _DoubtError
    return drawing


def _drawing(file: Any, expected: Mapping[type, Expected]) -> tuple[Drawing, int]:
    """The Drawing, and how many colons its file has without those in texts of parts, pipes and controls: one for
    each key of all its objects."""
    free: dict[str, FreePorts] = {}
    referred: list[str] = []
    listed = [_given(each, []) for each in (file.components, file.pipes, file.controls, file.notes)]
    components, keys_of_components = _components(listed[0], expected, free, referred)
    pipes, keys_of_pipes = _pipes(listed[1], free)
    controls, keys_of_controls = _controls(listed[2], free, referred)
    others = [listed[3], *(_given(records, []) for records in (file.acceptances, file.reviews))]
    faults = Faults()
    notes = items.each(others[0], "", items.note, faults)
    drawing = Drawing(
        title=_given(file.title, ""),
        sheet=_given(file.sheet, EMPTY) or EMPTY,
        design=_given(file.design, EMPTY) or EMPTY,
        components=MappingProxyType(components),
        pipes=MappingProxyType(pipes),
        controls=MappingProxyType(controls),
        notes=notes,
        acceptances=items.each(others[1], "", items.acceptance, faults),
        reviews=items.each(others[2], "", items.review, faults),
    )
    free.update((note.id, _NO_PORTS) for note in notes)
    # Fewer ids than items: one stands twice.
    if faults or len(free) != sum(map(len, listed)) or not free.keys() >= set(referred):
        raise _DoubtError
    top = sum(getattr(file, name) is not UNSET for name in file.__struct_fields__)
    colons = top + _colons([drawing.title, drawing.sheet, drawing.design, others])
    return drawing, colons + keys_of_components + keys_of_pipes + keys_of_controls


def _given(value: Any, default: Any) -> Any:
    return default if value is UNSET else value


def _colons(value: Any) -> int:
    """How many colons a value has in a file: one for each key, and those in texts."""
    if isinstance(value, str):
        return value.count(":")
    if isinstance(value, dict):
        return len(value) + sum(_colons(key) + _colons(each) for key, each in value.items())
    return sum(map(_colons, value)) if isinstance(value, list) else 0


def _in_labels(drawing: Drawing) -> int:
    """How many colons there are in the labels of parts and controls."""
    labels = [part.label for part in drawing.components.values()]
    labels += [control.label for control in drawing.controls.values()]
    return "".join(labels).count(":")


def _open(frozen: type) -> Any:
    """A class with the slots of a frozen one. What is made of it can be filled; made one of the frozen class, it is
    as if it had been so from the start. A large file is opened in half the time: the frozen class's own
    `__init__` takes seven times as long."""
    slots: Any = frozen.__dict__["__slots__"]
    return type(f"Open{frozen.__name__}", (), {"__slots__": slots})


# In the loops below every field is written out: this is done for tens of thousands of things, and one call more for
# each of them is what opening a file is measured by. `free` gets every id of the file, with the ports that are left.
_OpenComponent: Final = _open(Component)
_OpenPipe: Final = _open(Pipe)
_OpenControl: Final = _open(Control)
_NO_PORTS: Final = free_ports(frozenset())


def _components(
    raws: Sequence[Any], expected: Mapping[type, Expected], free: dict[str, FreePorts], referred: list[str]
) -> tuple[dict[str, Component], int]:
    """The parts, and how many keys their objects have together. The ids that their data names are put into
    `referred`."""
    made: dict[str, Component] = {}
    keys = 7 * len(raws)
    for raw in raws:
        kind, ports, lists, references = expected[type(raw)]
        id, label, at, turn, mirrored, data = astuple(raw)
        if label is UNSET:
            label = ""
            keys -= 1
        if at is UNSET:
            at = None
            keys -= 1
        if turn is UNSET:
            turn = 0
            keys -= 1
        if mirrored is UNSET:
            mirrored = False
            keys -= 1
        if data is UNSET:
            data = EMPTY
            keys -= 1
        else:
            keys += len(data)
            if lists:
                _check_lists(data, lists)
            for name in references:
                if data.get(name) is not None:
                    referred.append(data[name])
        part = _OpenComponent()
        part.id = id
        part.kind = kind
        part.label = label
        part.at = at
        part.turn = turn
        part.mirrored = mirrored
        part.data = data or EMPTY
        part.extra = EMPTY
        part.__class__ = Component
        made[id] = part
        free[id] = ports
    return made, keys


def _pipes(raws: Sequence[Any], free: dict[str, FreePorts]) -> tuple[dict[str, Pipe], int]:
    """The pipes, and how many keys their objects have together."""
    made: dict[str, Pipe] = {}
    keys = 4 * len(raws)
    for raw in raws:
        id = raw.id
        ends = raw.ends
        via = raw.via
        data = raw.data
        one, two = ends
        # A KeyError: no such part, no such port, a pipe is on it already, or the end is free.
        try:
            part = one[0]
            free[part] = free[part][one[1]]
        except KeyError:
            ends = _place(one), two
        try:
            part = two[0]
            free[part] = free[part][two[1]]
        except KeyError:
            ends = ends[0], _place(two)
        if via is UNSET:
            via = None
            keys -= 1
        if data is UNSET:
            data = EMPTY
            keys -= 1
        else:
            keys += len(data)
        pipe = _OpenPipe()
        pipe.id = id
        pipe.ends = ends
        pipe.via = via
        pipe.data = data or EMPTY
        pipe.extra = EMPTY
        pipe.__class__ = Pipe
        made[id] = pipe
        free[id] = _NO_PORTS
    return made, keys


def _place(end: tuple[Any, Any]) -> Point:
    """An end that the decoder took for a joint and that is on no free port."""
    x, y = end
    if type(x) is not float or type(y) is not float:
        raise _DoubtError
    return Point(x, y)


def _controls(
    raws: Sequence[Any], free: dict[str, FreePorts], referred: list[str]
) -> tuple[dict[str, Control], int]:
    """The controls, and how many keys their objects have together. The ids they name are put into `referred`."""
    kinds = control_kinds()
    made: dict[str, Control] = {}
    keys = 7 * len(raws)
    for raw in raws:
        id, kind, label, at, acts_on, in_same_room_as, set_c = astuple(raw)
        if label is UNSET:
            label = ""
            keys -= 1
        if at is UNSET:
            at = None
            keys -= 1
        if acts_on is UNSET:
            acts_on = ()
            keys -= 1
        if in_same_room_as is UNSET:
            in_same_room_as = ()
            keys -= 1
        if set_c is UNSET:
            set_c = None
            keys -= 1
        referred += acts_on
        referred += in_same_room_as
        control = _OpenControl()
        control.id = id
        control.kind = kinds[kind]
        control.label = label
        control.at = at
        control.acts_on = acts_on
        control.in_same_room_as = in_same_room_as
        control.set_c = set_c
        control.extra = EMPTY
        control.__class__ = Control
        made[id] = control
        free[id] = _NO_PORTS
    return made, keys


def _check_lists(data: Mapping[str, Any], names: Iterable[str]) -> None:
    for name in names:
        chosen = data.get(name) or ()
        if len(set(chosen)) != len(chosen):
            raise _DoubtError

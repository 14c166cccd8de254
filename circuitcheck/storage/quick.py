"""The quick way into a large sound file: None for any that must be looked at field by field.

It accepts only what `reading.parse_patiently` accepts and builds an equal Drawing; where in doubt
it leaves the file to that. msgspec checks types and limits while it decodes (`quick_types.py`).
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from itertools import chain, combinations
from types import MappingProxyType
from typing import Any, Final

from msgspec import UNSET, MsgspecError
from msgspec.json import Decoder, Encoder
from msgspec.structs import asdict, astuple

from circuitcheck.drawing.value import EMPTY, Component, Control, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import control_kinds
from circuitcheck.storage import items, rules
from circuitcheck.storage.faults import Faults, TooManyFaultsError
from circuitcheck.storage.limits import FARTHEST, MOST_BYTES
from circuitcheck.storage.quick_types import any_decoder, component_types, joined_decoder
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
    for decoder in (joined_decoder, any_decoder):
        try:
            return _decoded(content, colons, decoder())
        except MsgspecError:
            continue  # perhaps a pipe with a free end
        except (_DoubtError, TooManyFaultsError, UnicodeDecodeError, RecursionError):
            return None
    return None


class _DoubtError(Exception):
    """Something that the quick way does not judge."""


def _decoded(content: bytes, colons: int, decoder: Decoder[Any]) -> Drawing:
    file = decoder.decode(content)
    drawing, keys = _drawing(file)
    # A key that msgspec dropped on the way, as repeated or as unknown, shows as a colon too many.
    # So does a colon in a text, which the slower count over what was decoded allows for.
    if colons != keys and colons != Encoder().encode(file).count(b":"):
        raise _DoubtError
    return drawing


def _drawing(file: Any) -> tuple[Drawing, int]:
    """The Drawing, and how many keys all its objects have together."""
    free: dict[str, set[str]] = {}
    referred: list[str] = []
    components, keys_of_components = _components(_given(file.components, ()), free, referred)
    pipes, keys_of_pipes = _pipes(_given(file.pipes, ()), free)
    controls, keys_of_controls = _controls(_given(file.controls, ()), referred)
    others = [_given(part, []) for part in (file.notes, file.acceptances, file.reviews)]
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
    by_id: tuple[Mapping[str, object], ...] = (components, pipes, controls, {note.id: note for note in notes})
    if faults or len(by_id[3]) != len(notes) or not _differ(by_id) or not _name_some(referred, by_id):
        raise _DoubtError
    top = sum(getattr(file, name) is not UNSET for name in file.__struct_fields__)
    keys = top + len(drawing.sheet) + len(drawing.design) + _keys(others)
    return drawing, keys + keys_of_components + keys_of_pipes + keys_of_controls


def _differ(by_id: Sequence[Mapping[str, object]]) -> bool:
    """Whether no id stands in two of these."""
    return all(one.keys().isdisjoint(other) for one, other in combinations(by_id, 2))


def _name_some(ids: Iterable[str], by_id: Sequence[Mapping[str, object]]) -> bool:
    """Whether each of the ids is one of an item."""
    return all(any(id in known for known in by_id) for id in ids)


def _given(value: Any, default: Any) -> Any:
    return default if value is UNSET else value


def _keys(value: Any) -> int:
    if isinstance(value, dict):
        return len(value) + sum(_keys(each) for each in value.values())
    return sum(_keys(each) for each in value) if isinstance(value, list) else 0


def _open(frozen: type) -> Any:
    """A class with the slots of a frozen one. What is made of it can be filled; made one of the frozen class, it is
    as if it had been so from the start. A large file is opened in half the time: the frozen class's own
    `__init__` takes seven times as long."""
    slots: Any = frozen.__dict__["__slots__"]
    return type(f"Open{frozen.__name__}", (), {"__slots__": slots})


# In both loops below every field is written out: this is done for tens of thousands of things, and one
# call more for each of them is what opening a file is measured by.
_OpenComponent: Final = _open(Component)
_OpenPipe: Final = _open(Pipe)


def _components(
    raws: Sequence[Any], free: dict[str, set[str]], referred: list[str]
) -> tuple[dict[str, Component], int]:
    """The parts, and how many keys their objects have together. Their ports are put into `free`, by part, and the
    ids that their data names into `referred`."""
    types = component_types()
    made: dict[str, Component] = {}
    places: list[Point] = []
    keys = 7 * len(raws)
    for raw in raws:
        kind, ports, lists, references = types[type(raw)]
        id, label, at, turn, mirrored, data = astuple(raw)
        if label is UNSET:
            label = ""
            keys -= 1
        if at is UNSET:
            at = None
            keys -= 1
        elif at is not None:
            places.append(at)
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
        free[id] = set(ports)
    _check_places(places)
    if len(made) != len(raws):
        raise _DoubtError
    return made, keys


def _pipes(raws: Sequence[Any], free: dict[str, set[str]]) -> tuple[dict[str, Pipe], int]:
    """The pipes, and how many keys their objects have together. The ports they are on are taken out of `free`:
    one that is not there is on no part, or has a pipe already."""
    made: dict[str, Pipe] = {}
    places: list[Point] = []
    keys = 4 * len(raws)
    for raw in raws:
        id, ends, via, data = astuple(raw)
        if type(ends) is not tuple:
            ends = _ends(ends)
        one, two = ends
        try:
            if type(one) is Joint:
                free[one[0]].remove(one[1])
            if type(two) is Joint:
                free[two[0]].remove(two[1])
        except KeyError:
            raise _DoubtError from None
        if via is UNSET:
            via = None
            keys -= 1
        elif via:
            places += via
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
    _check_places(places)
    if len(made) != len(raws):
        raise _DoubtError
    return made, keys


def _ends(raw: Any) -> tuple[End, End]:
    """Two ends of which one may be free, as the file says them."""
    ends = rules.ENDS.read(raw)
    if ends is rules.WRONG:
        raise _DoubtError
    found: tuple[End, End] = ends
    return found


def _controls(raws: Sequence[Any], referred: list[str]) -> tuple[dict[str, Control], int]:
    """The controls, and how many keys their objects have together. The ids they name are put into `referred`."""
    kinds = control_kinds()
    made: dict[str, Control] = {}
    places: list[Point] = []
    keys = 0
    for raw in raws:
        given = {name: value for name, value in asdict(raw).items() if value is not UNSET}
        keys += len(given)
        given["kind"] = kinds[given["kind"]]
        control = made[raw.id] = Control(**given)
        if control.at is not None:
            places.append(control.at)
        referred += control.acts_on
        referred += control.in_same_room_as
    _check_places(places)
    if len(made) != len(raws):
        raise _DoubtError
    return made, keys


def _check_places(points: list[Point]) -> None:
    numbers = list(chain.from_iterable(points))
    if numbers and not -FARTHEST <= min(numbers) <= max(numbers) <= FARTHEST:
        raise _DoubtError


def _check_lists(data: Mapping[str, Any], names: Iterable[str]) -> None:
    for name in names:
        chosen = data.get(name) or ()
        if len(set(chosen)) != len(chosen):
            raise _DoubtError

"""Parts, pipes, controls, notes and records of a file, each read from its JSON object."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any, Final, TypeVar

from circuitcheck.drawing.fields import CONTROL_FIELDS, PIPE_FIELDS
from circuitcheck.drawing.value import (
    EMPTY,
    Acceptance,
    Component,
    Control,
    Note,
    Pipe,
    Reply,
    Review,
)
from circuitcheck.parts.catalogue import component_kinds, control_kinds
from circuitcheck.storage import rules
from circuitcheck.storage.faults import Faults
from circuitcheck.storage.rules import WRONG, Rules
from circuitcheck.storage.strict_json import ONCE, Repeated, troubles
from circuitcheck.told import a_word

# How deep an item's object lies in the file: the file, its list, the item; a reply lies two deeper.
ITEM_DEPTH: Final = 3
REPLY_DEPTH: Final = 5
DATA_DEPTH: Final = 4

COMPONENT: Final[Rules] = MappingProxyType(
    {
        "id": rules.ID,
        "kind": rules.kind_of(component_kinds(), "part"),
        "label": rules.LABEL,
        "at": rules.nothing_or(rules.POINT),
        "turn": rules.TURN,
        "mirrored": rules.SWITCH,
        "data": rules.OBJECT,
    }
)
PIPE: Final[Rules] = MappingProxyType(
    {
        "id": rules.ID,
        "ends": rules.ENDS,
        "via": rules.nothing_or(rules.CORNERS),
        "data": rules.OBJECT,
    }
)
PIPE_DATA: Final = rules.field_rules(PIPE_FIELDS)
CONTROL: Final[Rules] = MappingProxyType(
    {
        "id": rules.ID,
        "kind": rules.kind_of(control_kinds(), "control"),
        "label": rules.LABEL,
        "at": rules.nothing_or(rules.POINT),
        "acts_on": rules.IDS,
        "in_same_room_as": rules.IDS,
        **rules.field_rules(CONTROL_FIELDS),
    }
)
REPLY: Final[Rules] = MappingProxyType({"author": rules.LABEL, "date": rules.LABEL, "text": rules.TEXT})
NOTE: Final[Rules] = MappingProxyType(
    {
        "id": rules.ID,
        "on": rules.IDS,
        **REPLY,
        "state": rules.one_of(rules.NOTE_STATES),
        "replies": rules.LIST,
    }
)
ACCEPTANCE: Final[Rules] = MappingProxyType(
    {
        "check": rules.LABEL,
        "on": rules.IDS,
        "reason": rules.TEXT,
        "author": rules.LABEL,
        "date": rules.LABEL,
        "until": rules.nothing_or(rules.DAY),
    }
)
REVIEW: Final[Rules] = MappingProxyType(
    {
        "author": rules.LABEL,
        "role": rules.LABEL,
        "date": rules.LABEL,
        "decision": rules.LABEL,
        "remarks": rules.TEXT,
        "program": rules.LABEL,
        "rule_book": rules.LABEL,
        "meaning": rules.DIGEST,
        "layout": rules.DIGEST,
        "findings": rules.DIGEST,
        "previous": rules.DIGEST,
    }
)

Item = TypeVar("Item")


def fields(raw: dict[str, Any], known: Rules, item: str, depth: int, faults: Faults) -> dict[str, Any]:
    """The sound known fields of an object by name, and the unknown ones under `extra`."""
    extra: dict[str, Any] = {}
    found: dict[str, Any] = {}
    check_repeats(raw, item, faults)
    for name, value in raw.items():
        rule = known.get(name)
        if rule is None:
            _check_kept(name, value, item, depth, faults)
            extra[name] = value
        else:
            read = rule.read(value)
            if read is WRONG:
                faults.wrong(item, name, value, rule.expected)
            else:
                found[name] = read
    found["extra"] = extra or EMPTY
    return found


def data(raw: dict[str, Any], known: Rules, item: str, depth: int, faults: Faults) -> Mapping[str, Any]:
    """A map of data: known fields as the Drawing holds them, unknown ones as they are, in order."""
    found = fields(raw, known, item, depth, faults)
    extra = found.pop("extra")
    if extra:
        found |= extra
        return {name: found[name] for name in raw if name in found}
    return found or EMPTY


def component(raw: dict[str, Any], item: str, faults: Faults) -> Component | None:
    """A part; with faults what is sound of it, so that its pipes can be judged, or None."""
    found = fields(raw, COMPONENT, item, ITEM_DEPTH, faults)
    _require(raw, ("id", "kind"), COMPONENT, item, faults)
    if "kind" in found and "data" in found:
        found["data"] = data(found["data"], rules.kind_rules(found["kind"]), item, DATA_DEPTH, faults)
    return Component(**found) if "id" in found and "kind" in found else None


def pipe(raw: dict[str, Any], item: str, faults: Faults) -> Pipe | None:
    """A pipe; with faults what is sound of it, so that its ends can be judged, or None."""
    found = fields(raw, PIPE, item, ITEM_DEPTH, faults)
    _require(raw, ("id", "ends"), PIPE, item, faults)
    if "data" in found:
        found["data"] = data(found["data"], PIPE_DATA, item, DATA_DEPTH, faults)
    return Pipe(**found) if "id" in found and "ends" in found else None


def control(raw: dict[str, Any], item: str, faults: Faults) -> Control | None:
    """A control; with faults what is sound of it, so that its references can be judged, or None."""
    found = fields(raw, CONTROL, item, ITEM_DEPTH, faults)
    _require(raw, ("id", "kind"), CONTROL, item, faults)
    return Control(**found) if "id" in found and "kind" in found else None


def note(raw: dict[str, Any], item: str, faults: Faults) -> Note | None:
    """A note with its replies; None where its id is no id."""
    found = fields(raw, NOTE, item, ITEM_DEPTH, faults)
    _require(raw, ("id",), NOTE, item, faults)
    if "replies" in found:
        found["replies"] = each(found["replies"], f"{item}.replies", _reply, faults)
    return Note(**found) if "id" in found else None


def acceptance(raw: dict[str, Any], item: str, faults: Faults) -> Acceptance:
    """An acceptance; with faults what is sound of it."""
    return Acceptance(**{"check": "", **fields(raw, ACCEPTANCE, item, ITEM_DEPTH, faults)})


def review(raw: dict[str, Any], item: str, faults: Faults) -> Review:
    """A review record; with faults what is sound of it."""
    return Review(**fields(raw, REVIEW, item, ITEM_DEPTH, faults))


def _reply(raw: dict[str, Any], item: str, faults: Faults) -> Reply:
    return Reply(**fields(raw, REPLY, item, REPLY_DEPTH, faults))


def each(
    raws: list[Any],
    where: str,
    read: Callable[[dict[str, Any], str, Faults], Item | None],
    faults: Faults,
) -> tuple[Item, ...]:
    """The sound items of a list; `where` names the list, for those that have no id."""
    found = []
    for position, raw in enumerate(raws):
        item = f"{where}[{position}]"
        if not isinstance(raw, dict):
            faults.wrong(item, "", raw, a_word("an object"))
            continue
        made = read(raw, name_of(raw) or item, faults)
        if made is not None:
            found.append(made)
    return tuple(found)


def name_of(raw: Any) -> str:
    """The id of an item, sound or not; empty where it has none."""
    id = raw.get("id") if isinstance(raw, dict) else None
    return "" if rules.ID.read(id) is WRONG else str(id)


def _require(raw: dict[str, Any], names: tuple[str, ...], known: Rules, item: str, faults: Faults) -> None:
    for name in names:
        if name not in raw:
            faults.absent(item, name, known[name].expected)


def check_repeats(raw: dict[str, Any], item: str, faults: Faults) -> None:
    """No key stands twice in an object."""
    if isinstance(raw, Repeated):
        for key in raw.twice:
            faults.add(item, key, a_word("given more than once"), ONCE)


def _check_kept(name: str, value: Any, item: str, depth: int, faults: Faults) -> None:
    if not isinstance(value, (str, int, type(None))):
        for key, found, expected in troubles(value, depth):
            if key:
                faults.add(item, f"{name} … {key}", a_word("given more than once"), expected)
            else:
                faults.wrong(item, name, found, expected)

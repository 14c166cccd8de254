"""Reads a drawing file: a Drawing, or one error with everything that is wrong with the file."""

from __future__ import annotations

import os
from collections.abc import Mapping
from contextlib import suppress
from types import MappingProxyType
from typing import Any, Final

from circuitcheck.drawing.fields import DESIGN_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import Drawing
from circuitcheck.garbage import building_to_stay
from circuitcheck.storage import items, rules, strict_json
from circuitcheck.storage.between import LISTS, check_ends, check_ids, check_references
from circuitcheck.storage.faults import DrawingError, Fault, Faults, TooManyFaultsError
from circuitcheck.storage.limits import MOST_BYTES, MOST_OTHERS, MOST_PARTS, MOST_PIPES
from circuitcheck.storage.rules import Rules
from circuitcheck.storage.versions import VersionError, upgraded
from circuitcheck.told import a_word, worded

__all__ = ["DrawingError", "Fault", "content", "parse", "read"]

LARGE: Final = 280 * 1024
"""Bytes from which the quick way pays for what importing it costs: in one file, or in many one after the other."""


class _ReadSoFar:
    """What this process has read of drawings."""

    in_bytes = 0


_so_far: Final = _ReadSoFar()

FILE: Final[Rules] = MappingProxyType(
    {
        "wetcircuit": rules.Rule(a_word("the version of the format"), lambda value: value),
        "title": rules.LABEL,
        "sheet": rules.OBJECT,
        "design": rules.OBJECT,
        "components": rules.LIST,
        "pipes": rules.LIST,
        "controls": rules.LIST,
        "notes": rules.LIST,
        "acceptances": rules.LIST,
        "reviews": rules.LIST,
    }
)
SHEET: Final = rules.field_rules(SHEET_FIELDS)
DESIGN: Final = rules.field_rules(DESIGN_FIELDS)

_MOST = {"components": MOST_PARTS, "pipes": MOST_PIPES}
_PREFIXES = {"controls": "c", "notes": "n"}


def read(path: str | os.PathLike[str]) -> Drawing:
    """Read a drawing file. Raises DrawingError with every fault of it, and OSError as `open` does."""
    return parse(content(path), os.fspath(path))


def content(path: str | os.PathLike[str]) -> bytes:
    """What `parse` takes of a file. Raises OSError as `open` does."""
    # One byte more than allowed tells that it is too large without reading all of it.
    most = MOST_BYTES + 1
    with open(path, "rb") as file:
        # Room for `most` bytes would be asked for and given back; what the file is said to have is enough, but for
        # one that grows meanwhile and for what has no size of its own, as a pipe between programs.
        said = os.fstat(file.fileno()).st_size
        found = file.read(min(said + 1, most))
        return found if len(found) <= said else found + file.read(most - len(found))


def parse(data: bytes, name: str) -> Drawing:
    """Read a drawing from the bytes of a file called `name`. Raises DrawingError."""
    with building_to_stay():
        # Threads that add at the same time may lose one's share: then the quick way begins a file later.
        _so_far.in_bytes += len(data)
        if _so_far.in_bytes >= LARGE:
            from circuitcheck.storage.quick import quick

            drawing = quick(data)
            if drawing is not None:
                return drawing
        return parse_patiently(data, name)


def parse_patiently(data: bytes, name: str) -> Drawing:
    """`parse`, field by field: the way that finds every fault."""
    faults = Faults()
    drawing = None
    with suppress(TooManyFaultsError):
        try:
            content = strict_json.decode(data)
            for line, escape in strict_json.lone_surrogates(data):
                _file_fault(
                    faults, worded("Line {line} holds half a character, {escape}.", line=line, escape=escape)
                )
            if isinstance(content, dict):
                drawing = _drawing(content, faults)
            else:
                _file_fault(faults, a_word("The file is no drawing: a drawing is one JSON object."))
        except (strict_json.NotJsonError, VersionError) as error:
            # Not str(error): what it says can be told again.
            _file_fault(faults, error.args[0])
    if drawing is None or faults:
        raise DrawingError(name, faults.found)
    return drawing


def _file_fault(faults: Faults, message: str) -> None:
    faults.add("", "", "", a_word("a drawing"), message)


def _drawing(content: dict[str, Any], faults: Faults) -> Drawing:
    items.check_repeats(content, "", faults)
    content = upgraded(dict(content))
    found = items.fields(content, FILE, "", 1, faults)
    sheet = items.data(found.get("sheet") or {}, SHEET, "sheet", 2, faults)
    design = items.data(found.get("design") or {}, DESIGN, "design", 2, faults)
    lists = {name: _capped(name, found.get(name, []), faults) for name in (*LISTS, "acceptances", "reviews")}
    for name, prefix in _PREFIXES.items():
        lists[name] = named(lists[name], prefix, lists)
    places = _places(lists)
    check_ids(places, faults)

    components = {
        each.id: each for each in items.each(lists["components"], "components", items.component, faults)
    }
    pipes = {each.id: each for each in items.each(lists["pipes"], "pipes", items.pipe, faults)}
    controls = {each.id: each for each in items.each(lists["controls"], "controls", items.control, faults)}
    notes = items.each(lists["notes"], "notes", items.note, faults)
    acceptances = items.each(lists["acceptances"], "acceptances", items.acceptance, faults)
    reviews = items.each(lists["reviews"], "reviews", items.review, faults)

    if "components" in found or "components" not in content:
        # A part of no known kind is there all the same: its pipes are not at fault for it.
        unsure = {items.name_of(raw) for raw in lists["components"]} - components.keys()
        check_ends(pipes, components, unsure, faults)
        check_references(components, controls, places.keys(), faults)
    return Drawing(
        title=found.get("title", ""),
        sheet=sheet,
        design=design,
        components=MappingProxyType(components),
        pipes=MappingProxyType(pipes),
        controls=MappingProxyType(controls),
        notes=notes,
        acceptances=acceptances,
        reviews=reviews,
        extra=found["extra"],
    )


def _capped(name: str, raws: list[Any], faults: Faults) -> list[Any]:
    most = _MOST.get(name, MOST_OTHERS)
    if len(raws) <= most:
        return raws
    _file_fault(
        faults,
        worded(
            "The file has {raws:,} {name}; this program reads at most {most:,}.",
            raws=len(raws),
            name=name,
            most=most,
        ),
    )
    raise TooManyFaultsError


def _places(lists: Mapping[str, list[Any]]) -> dict[str, list[str]]:
    places: dict[str, list[str]] = {}
    for name in LISTS:
        for position, raw in enumerate(lists[name]):
            id = items.name_of(raw)
            if id:
                places.setdefault(id, []).append(f"{name}[{position}]")
    return places


def named(raws: list[Any], prefix: str, lists: Mapping[str, list[Any]]) -> list[Any]:
    """The items, those that may go without an id and do with one that is free in the whole file."""
    if all(not isinstance(raw, dict) or "id" in raw for raw in raws):
        return raws
    taken = _places(lists).keys()
    free = (id for number in range(1, len(taken) + len(raws) + 1) if (id := f"{prefix}{number}") not in taken)
    return [raw if not isinstance(raw, dict) or "id" in raw else {"id": next(free), **raw} for raw in raws]

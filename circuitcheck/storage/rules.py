"""What a field of a drawing file may hold: one rule a field, made from the catalogue's fields.

A rule reads a value as JSON gave it and returns it as the Drawing holds it, or WRONG.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Callable, Iterable, Mapping
from functools import cache
from math import inf, nextafter
from types import MappingProxyType
from typing import Any, Final, NamedTuple

from circuitcheck.drawing.value import End, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import Field, FieldType, Kind
from circuitcheck.storage.limits import FARTHEST, LONGEST_LABEL, LONGEST_TEXT
from circuitcheck.told import a_word, worded

WRONG: Final = object()
"""What a rule returns for a value that the field may not hold."""
TURNS: Final = (0, 90, 180, 270)
NOTE_STATES: Final = ("open", "settled")

_DAY = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_HEX = re.compile(r"[0-9a-fA-F]*")


class Rule(NamedTuple):
    """What a field may hold, in words for a sentence, and how it is read."""

    expected: str
    read: Callable[[Any], Any]


Rules = Mapping[str, Rule]


def text(longest: int = LONGEST_LABEL) -> Rule:
    """A text of at most so many characters."""

    def read(value: Any) -> Any:
        return value if type(value) is str and len(value) <= longest else WRONG

    return Rule(worded("a text of at most {longest:,} characters", longest=longest), read)


def _read_id(value: Any) -> Any:
    return value if type(value) is str and 0 < len(value) <= LONGEST_LABEL else WRONG


def _read_ids(value: Any) -> Any:
    if type(value) is not list or any(_read_id(each) is WRONG for each in value):
        return WRONG
    return tuple(value)


def _read_turn(value: Any) -> Any:
    return int(value) if _is_number(value) and value in TURNS else WRONG


def _read_switch(value: Any) -> Any:
    return value if type(value) is bool else WRONG


def _read_object(value: Any) -> Any:
    return value if isinstance(value, dict) else WRONG


def _read_list(value: Any) -> Any:
    return value if type(value) is list else WRONG


def _read_point(value: Any) -> Any:
    if type(value) is not list or len(value) != 2:
        return WRONG
    if not all(_is_number(each) and -FARTHEST <= each <= FARTHEST for each in value):
        return WRONG
    return Point(float(value[0]), float(value[1]))


def _read_corners(value: Any) -> Any:
    if type(value) is not list:
        return WRONG
    points = tuple(_read_point(each) for each in value)
    return WRONG if WRONG in points else points


def _read_ends(value: Any) -> Any:
    if type(value) is not list or len(value) != 2:
        return WRONG
    ends = tuple(_read_end(each) for each in value)
    return WRONG if WRONG in ends else ends


def _read_end(value: Any) -> End | Any:
    if type(value) is list and len(value) == 2 and all(type(each) is str for each in value):
        return Joint(*value)
    return _read_point(value)


def _read_day(value: Any) -> Any:
    if type(value) is not str or _DAY.fullmatch(value) is None:
        return WRONG
    from datetime import date

    try:
        date.fromisoformat(value)
    except ValueError:
        return WRONG
    return value


def _read_digest(value: Any) -> Any:
    known = type(value) is str and len(value) <= LONGEST_LABEL and _HEX.fullmatch(value)
    return value if known else WRONG


def _is_number(value: Any) -> bool:
    return type(value) is int or type(value) is float


def nothing_or(rule: Rule) -> Rule:
    """The rule, or null."""
    inner = rule.read

    def read(value: Any) -> Any:
        return None if value is None else inner(value)

    return Rule(worded("{expected}, or null", expected=rule.expected), read)


LABEL: Final = text()
TEXT: Final = text(LONGEST_TEXT)
ID: Final = Rule(worded("a text of 1 to {longest_label:,} characters", longest_label=LONGEST_LABEL), _read_id)
IDS: Final = Rule(a_word("a list of ids"), _read_ids)
TURN: Final = Rule(a_word("0, 90, 180 or 270"), _read_turn)
SWITCH: Final = Rule(a_word("true or false"), _read_switch)
OBJECT: Final = Rule(a_word("an object"), _read_object)
LIST: Final = Rule(a_word("a list"), _read_list)
POINT: Final = Rule(
    worded("[x, y], two numbers from {what:,.0f} to {farthest:,.0f}", what=-FARTHEST, farthest=FARTHEST),
    _read_point,
)
CORNERS: Final = Rule(a_word("a list of corners, each [x, y]"), _read_corners)
ENDS: Final = Rule(a_word('two ends, each ["id", "port"] or [x, y]'), _read_ends)
DAY: Final = Rule(a_word('a day such as "2030-01-31"'), _read_day)
DIGEST: Final = Rule(a_word("a text of hexadecimal digits"), _read_digest)


def one_of(choices: tuple[str, ...]) -> Rule:
    """One of the named values."""
    known = frozenset(choices)

    def read(value: Any) -> Any:
        return value if type(value) is str and value in known else WRONG

    return Rule(_listed(choices), read)


def any_of(choices: tuple[str, ...]) -> Rule:
    """A list of any of the named values, each once."""
    known = frozenset(choices)

    def read(value: Any) -> Any:
        if type(value) is not list or not all(type(each) is str and each in known for each in value):
            return WRONG
        return tuple(value) if len(set(value)) == len(value) else WRONG

    return Rule(worded("a list, without repeats, of any of {choices}", choices=_listed(choices)), read)


def kind_of(kinds: Mapping[str, Kind], what: str) -> Rule:
    """The name of a kind, read as the kind."""

    def read(value: Any) -> Any:
        return kinds.get(value, WRONG) if type(value) is str else WRONG

    return Rule(worded("a kind of {what} that this program knows", what=what), read)


def field_rule(field: Field) -> Rule:
    """The rule of a data field; every one may be null."""
    if field.type is FieldType.NUMBER:
        return _number(field)
    made = {
        FieldType.SWITCH: lambda: SWITCH,
        FieldType.CHOICE: lambda: one_of(field.choices),
        FieldType.CHOICES: lambda: any_of(field.choices),
        FieldType.REFERENCE: lambda: ID,
        FieldType.TEXT: lambda: TEXT,
    }
    return nothing_or(made[field.type]())


def field_rules(fields: Iterable[Field]) -> Rules:
    """The rules of data fields, by name."""
    return MappingProxyType({field.name: field_rule(field) for field in fields})


@cache
def kind_rules(kind: Kind) -> Rules:
    """The rules of a kind's data."""
    return field_rules(kind.fields)


def _number(field: Field) -> Rule:
    # One closed interval for every field: the least number above an open limit is the closed one's.
    # Infinity and whole numbers too large for any unit lie outside it.
    low = -sys.float_info.max if field.least is None else field.least
    if field.above is not None:
        low = nextafter(field.above, inf)
    high = sys.float_info.max if field.most is None else field.most

    def read(value: Any) -> Any:
        if (type(value) is float or type(value) is int) and low <= value <= high:
            return value
        return None if value is None else WRONG

    return Rule(worded("a number{field}, or null", field=_limits(field)), read)


def _limits(field: Field) -> str:
    unit = f" ({field.unit})" if field.unit else ""
    if field.above is not None:
        most = "" if field.most is None else worded(" and at most {most:g}", most=field.most)
        return worded(" above {above:g}{most}{unit}", above=field.above, most=most, unit=unit)
    if field.least is not None and field.most is not None:
        return worded(" from {least:g} to {most:g}{unit}", least=field.least, most=field.most, unit=unit)
    if field.least is not None:
        return worded(" of at least {least:g}{unit}", least=field.least, unit=unit)
    return unit if field.most is None else worded(" of at most {most:g}{unit}", most=field.most, unit=unit)


def _listed(choices: tuple[str, ...]) -> str:
    names = [f'"{choice}"' for choice in choices]
    return (
        names[0]
        if len(names) == 1
        else worded("{names} or {names_2}", names=", ".join(names[:-1]), names_2=names[-1])
    )

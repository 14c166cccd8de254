"""JSON as the standard has it: what Python's own parser lets through besides is marked.

Text that is no JSON at all raises NotJsonError. Values that no JSON file may hold (NaN, a number
out of range or of thousands of digits, a key twice in one object) come back marked, so that
whoever knows the place can say whose they are.
"""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from math import isfinite
from typing import Any

from circuitcheck.storage.limits import MOST_BYTES, MOST_DEPTH, MOST_DIGITS
from circuitcheck.told import a_word, worded

BYTE_ORDER_MARK = b"\xef\xbb\xbf"
TOO_DEEP = worded("nested at most {most_depth} deep", most_depth=MOST_DEPTH)
ONCE = a_word("given once")
_WHY = {
    str(each): each
    for each in (
        a_word("Expecting value"),
        a_word("Expecting ',' delimiter"),
        a_word("Expecting ':' delimiter"),
        a_word("Expecting property name enclosed in double quotes"),
        a_word("Unterminated string starting at"),
        a_word("Invalid \\escape"),
        a_word("Invalid \\uXXXX escape"),  # The parser's own words: its X stand for digits.
        a_word("Invalid control character at"),
        a_word("Illegal trailing comma before end of object"),
        a_word("Illegal trailing comma before end of array"),
        a_word("Extra data"),
    )
}
"""What Python's parser says of broken JSON, so that it can be told."""

_OTHER_MARKS = (b"\xff\xfe", b"\xfe\xff")
_ESCAPE = re.compile(r"\\(?:u([0-9a-fA-F]{4})|.)", re.DOTALL)


class NotJsonError(ValueError):
    """Not JSON at all; the text is one sentence for the user."""


@dataclass(frozen=True, slots=True)
class Unsound:
    """A number that stands in the file and that JSON, or this program, does not know."""

    literal: str


class Repeated(dict[str, Any]):
    """An object in which the keys `twice` stand more than once; the last value counts."""

    twice: tuple[str, ...]


def decode(data: bytes) -> Any:
    """What the bytes say: dict, list, str, int, float, bool, None, Unsound and Repeated.

    A byte-order mark is accepted. Raises NotJsonError for more than 64 MiB, another coding than
    UTF-8, broken JSON, and nesting so deep that it cannot be taken apart.
    """
    text = _text(data)
    decoder = json.JSONDecoder(
        object_pairs_hook=_object, parse_int=_whole, parse_float=_decimal, parse_constant=Unsound
    )
    try:
        return decoder.decode(text)
    except json.JSONDecodeError as error:
        where = worded("line {lineno}, column {colno}", lineno=error.lineno, colno=error.colno)
        why = _WHY.get(error.msg, error.msg)
        raise NotJsonError(worded("The file is not JSON: {where}: {why}.", where=where, why=why)) from error
    except RecursionError as error:
        raise NotJsonError(worded("The file must be {nested}.", nested=TOO_DEEP)) from error


def lone_surrogates(data: bytes) -> Iterator[tuple[int, str]]:
    """Each escape of half a character, as its line and the escape. `data` is well-formed JSON."""
    if b"\\u" not in data:
        return
    text = data.decode("utf-8", "replace")
    first: re.Match[str] | None = None
    for match in _ESCAPE.finditer(text):
        code = int(match[1], 16) if match[1] else 0
        is_second = 0xDC00 <= code <= 0xDFFF
        paired = is_second and first is not None and first.end() == match.start()
        if first is not None and not paired:
            yield _line(text, first.start()), first[0]
        if is_second and not paired:
            yield _line(text, match.start()), match[0]
        first = match if 0xD800 <= code <= 0xDBFF else None
    if first is not None:
        yield _line(text, first.start()), first[0]


def troubles(value: Any, depth: int) -> Iterator[tuple[str, Any, str]]:
    """What no file may hold, in a value that is kept as it is; `depth` is that of its holder.

    Yields the key where there is one, the value found and what was expected.
    """
    if isinstance(value, Unsound) or (isinstance(value, float) and not isfinite(value)):
        yield "", value, worded("a finite number of at most {most_digits:,} digits", most_digits=MOST_DIGITS)
    elif isinstance(value, (dict, list)):
        if depth >= MOST_DEPTH:
            yield "", value, TOO_DEEP
            return
        if isinstance(value, Repeated):
            for key in value.twice:
                yield key, value[key], ONCE
        for each in value.values() if isinstance(value, dict) else value:
            yield from troubles(each, depth + 1)


def _text(data: bytes) -> str:
    if len(data) > MOST_BYTES:
        raise NotJsonError(worded("The file is larger than {size} MiB.", size=MOST_BYTES // 1024**2))
    if data.startswith(_OTHER_MARKS) or b"\0" in data[:4]:
        raise NotJsonError(a_word("The file is coded as UTF-16 or UTF-32; a drawing is coded as UTF-8."))
    data = data.removeprefix(BYTE_ORDER_MARK)
    if not data.strip():
        raise NotJsonError(a_word("The file is empty."))
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        said = worded("The file is not coded as UTF-8: line {line} holds other bytes.", line=line)
        raise NotJsonError(said) from error


def _line(text: str, position: int) -> int:
    return text.count("\n", 0, position) + 1


def _object(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) == len(pairs):
        return found
    repeated = Repeated(found)
    repeated.twice = tuple(key for key, times in Counter(key for key, _ in pairs).items() if times > 1)
    return repeated


def _whole(literal: str) -> int | Unsound:
    return int(literal) if len(literal) <= MOST_DIGITS else Unsound(literal)


def _decimal(literal: str) -> float | Unsound:
    number = float(literal)
    return number if len(literal) <= MOST_DIGITS and isfinite(number) else Unsound(literal)

"""The answers as one JSON object, always in English."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator, Sequence

from circuitcheck.report.as_text import Parts
from circuitcheck.report.checked import Checked
from circuitcheck.report.plain import is_unseen
from circuitcheck.shipped import version


def as_json(files: Sequence[Checked]) -> str:
    """One object for all files; the same answers give the same text.

    Letters stand as they are; what could steer a terminal or is no character at all (a file's name
    may hold such) stands as JSON's own escape.
    """
    books = {each.rule_book for each in files if each.rule_book}
    return "".join(whole(lambda: (one(each) for each in files), books))


def one(checked: Checked) -> str:
    """The object of one file, as it stands alone."""
    return dumped(checked.as_object())


def whole(parts: Parts, books: Iterable[str]) -> Iterator[str]:
    """The object of all files, by parts; `books` are the rule books they were judged by."""
    yield f'{{\n "program": {dumped(f"circuitcheck {version()}")},\n'
    yield f' "rule_book": {dumped(", ".join(sorted(books)) or None)},\n "files": '
    yield from listed(parts(), 1)
    yield "\n}\n"


def dumped(value: object) -> str:
    """A value as JSON, on lines where it has several."""
    return escaped(json.dumps(value, ensure_ascii=False, indent=1))


def listed(items: Iterable[str], depth: int) -> Iterator[str]:
    """A list of items that are JSON already, set so deep inside another text."""
    between = "["
    for item in items:
        yield between + indented("\n" + item, depth + 1)
        between = ","
    yield "[]" if between == "[" else indented("\n]", depth)


def indented(text: str, depth: int) -> str:
    """JSON set so deep inside another text; no text inside it holds a line break, so each starts a line."""
    return text.replace("\n", "\n" + " " * depth)


def escaped(text: str) -> str:
    """JSON text whose letters stand as they are, and what nobody can see as JSON's own escape."""
    return _NOT_ASCII.sub(_escaped, text)


_NOT_ASCII = re.compile(r"[^\n -~]")


def _escaped(match: re.Match[str]) -> str:
    return json.dumps(match[0])[1:-1] if is_unseen(match[0]) else match[0]

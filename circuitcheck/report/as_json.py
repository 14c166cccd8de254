"""The answers as one JSON object, always in English."""

from __future__ import annotations

import json
import re
from collections.abc import Sequence

from circuitcheck.report.checked import Checked
from circuitcheck.report.plain import is_unseen
from circuitcheck.shipped import version


def as_json(files: Sequence[Checked]) -> str:
    """One object for all files; the same answers give the same text.

    Letters stand as they are; what could steer a terminal or is no character at all (a file's name
    may hold such) stands as JSON's own escape.
    """
    books = sorted({each.rule_book for each in files if each.rule_book})
    found = {
        "program": f"circuitcheck {version()}",
        "rule_book": ", ".join(books) or None,
        "files": [each.as_object() for each in files],
    }
    return escaped(json.dumps(found, ensure_ascii=False, indent=1) + "\n")


def escaped(text: str) -> str:
    """JSON text whose letters stand as they are, and what nobody can see as JSON's own escape."""
    return _NOT_ASCII.sub(_escaped, text)


_NOT_ASCII = re.compile(r"[^\n -~]")


def _escaped(match: re.Match[str]) -> str:
    return json.dumps(match[0])[1:-1] if is_unseen(match[0]) else match[0]

"""The answers as one JSON object, always in English."""

from __future__ import annotations

import json
from collections.abc import Sequence

from circuitcheck.report.checked import Checked
from circuitcheck.shipped import version


def as_json(files: Sequence[Checked]) -> str:
    """One object for all files; the same answers give the same text."""
    books = sorted({each.rule_book for each in files if each.rule_book})
    found = {
        "program": f"circuitcheck {version()}",
        "rule_book": ", ".join(books) or None,
        "files": [each.as_object() for each in files],
    }
    return json.dumps(found, ensure_ascii=False, indent=1) + "\n"

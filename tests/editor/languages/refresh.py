"""Brings the files of the languages up to what the program can show: `python -m tests.editor.languages.refresh`.

New texts get an entry without a translation, what is shown no longer goes, and the compiled files are made anew.
"""

from __future__ import annotations

import tempfile
from pathlib import Path

from circuitcheck.editor.language import FOLDER
from tests.editor.languages.linguist import Entry, compiled, read, source_of, write
from tests.editor.languages.showing import all_texts

CODES = ("de",)


def refresh(code: str) -> int:
    """Bring one language up to date. Returns how many texts have no translation."""
    known = read(code) if source_of(code).exists() else {}
    none = Entry("", "")
    entries = {text: Entry(section, known.get(text, none).told) for text, section in all_texts().items()}
    write(code, entries)
    with tempfile.TemporaryDirectory() as folder:
        (FOLDER / f"{code}.qm").write_bytes(compiled(code, Path(folder)))
    return sum(not entry.told for entry in entries.values())


if __name__ == "__main__":
    for each in CODES:
        print(f"{each}: {refresh(each)} texts without a translation")

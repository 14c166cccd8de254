"""How large a drawing file may be: caps that hold before anything is built from it."""

from __future__ import annotations

from typing import Final

MOST_BYTES: Final = 64 * 1024 * 1024
MOST_DEPTH: Final = 32
"""How deep objects and lists may lie in one another; the file's own object is the first."""
MOST_PARTS: Final = 100_000
MOST_PIPES: Final = 200_000
MOST_OTHERS: Final = 100_000
"""Controls, notes, acceptances, reviews: of each."""
MOST_DIGITS: Final = 4_300
"""Characters of one number. Python itself refuses to read a longer whole number."""
LONGEST_LABEL: Final = 1_000
"""Characters of an id, a label, a title, a name, a date."""
LONGEST_TEXT: Final = 100_000
"""Characters of a note, a reply, a reason, remarks."""
FARTHEST: Final = 1_000_000.0
"""How far from the sheet's origin anything may lie, in squares, along x or y."""
MOST_FAULTS: Final = 10_000
"""Faults listed of one file before reading gives up: a file of rubbish must not fill the memory."""

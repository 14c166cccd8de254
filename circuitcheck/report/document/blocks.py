"""What a document is laid out from: a few kinds of block, which every painter knows how to paint."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from circuitcheck.finding import Grade
from circuitcheck.sheet.pictures import Picture


class Style(Enum):
    """How a paragraph is set."""

    BODY = "body"
    LEAD = "lead"
    SECOND = "second"
    STRONG = "strong"


@dataclass(frozen=True, slots=True)
class Text:
    """One paragraph of plain text; line breaks in it part lines."""

    text: str
    style: Style = Style.BODY


@dataclass(frozen=True, slots=True)
class Labelled:
    """A paragraph that begins with a word in bold: `Why it matters  The valve ...`."""

    label: str
    text: str


@dataclass(frozen=True, slots=True)
class Heading:
    """A heading inside a section; one that is `listed` stands among the bookmarks as well."""

    text: str
    listed: bool = False


@dataclass(frozen=True, slots=True)
class GradedHeading:
    """The heading of a finding: its grade's mark, the grade as a word, its title."""

    grade: Grade
    grade_words: str
    text: str
    number: int


@dataclass(frozen=True, slots=True)
class Bullets:
    """A list of short paragraphs."""

    items: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Columns:
    """A long list of short texts in small type, in two columns, to be read down the first and then the second."""

    items: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Contents:
    """The list of sections, each leading to its own."""


@dataclass(frozen=True, slots=True)
class Counts:
    """How many findings there are of each grade, each with its mark and the grade as a word."""

    counts: tuple[tuple[Grade, int, str], ...]


@dataclass(frozen=True, slots=True)
class Blank:
    """A box to be filled in by hand: a tick where there is no unit, else a value in that unit, or a line of text."""

    unit: str = ""


LINE = Blank("line")
"""Room for words instead of a value."""


@dataclass(frozen=True, slots=True)
class Link:
    """A text that leads to a file: its path as seen from this document, parted by slashes."""

    text: str
    path: str


Cell = str | Blank | Link


@dataclass(frozen=True, slots=True)
class Table:
    """Rows under a head. `shares`: how wide each column is against the others; `numeric`: columns set to the
    right; `bold`: columns that stand out. Without a head it is a list of pairs."""

    head: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]
    shares: tuple[float, ...]
    numeric: frozenset[int] = frozenset()
    bold: frozenset[int] = frozenset()


@dataclass(frozen=True, slots=True)
class Shown:
    """A picture. `whole_page`: as large as a page allows, on a page of its own; else `most_px` px high."""

    picture: Picture
    whole_page: bool = False
    most_px: float = 560.0


@dataclass(frozen=True, slots=True)
class Together:
    """Blocks that should stand on one page."""

    blocks: tuple[Block, ...]


Block = (
    Text
    | Labelled
    | Heading
    | GradedHeading
    | Bullets
    | Columns
    | Contents
    | Counts
    | Table
    | Shown
    | Together
)


@dataclass(frozen=True, slots=True)
class Section:
    """One part of the document. `key` is its anchor; `on_new_page`: where there are pages."""

    key: str
    title: str
    blocks: tuple[Block, ...]
    on_new_page: bool = False

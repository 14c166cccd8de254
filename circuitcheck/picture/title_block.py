"""The title block and the key of the services, as they lie on the sheet."""

from __future__ import annotations

from circuitcheck.picture.lettering import fitted, width
from circuitcheck.picture.marks import Mark, TextMark
from circuitcheck.picture.pipes import LINES, pipe_marks
from circuitcheck.told import ENGLISH, Tongue, a_word, tell

TITLE_SIZE, TITLE_WEIGHT = 22.0, 600
COLUMN_PX, COLUMN_GAP = 144.0, 14.0
NAME_SIZE, NAME_AT = 13, 70.0
ROW_PX = 24.0
SAMPLE_PX = 48.0
MOST_WIDE = 560.0

KEY = (("flow", "return", "cold"), ("hot", "discharge", "vent"))
NAMES = {
    "flow": a_word("flow"),
    "return": a_word("return"),
    "cold": a_word("cold"),
    "hot": a_word("hot"),
    "discharge": a_word("discharge"),
    "vent": a_word("vent and feed"),
}
"""What the key calls each service."""


def title_block(title: str, subtitle: str, tongue: Tongue = ENGLISH) -> tuple[Mark, ...]:
    """The drawing's name, what kind of plant it is, and the key below, from the top left corner 0,0."""
    lefts = _columns(tongue)
    marks: list[Mark] = [
        TextMark(fitted(title, TITLE_SIZE, TITLE_WEIGHT, MOST_WIDE), 0, 20, "ink", 22, 600, "start"),
        TextMark(fitted(subtitle, 13, 400, MOST_WIDE), 0, 41, "ink_2", 13, 400, "start"),
    ]
    for row, names in enumerate(KEY):
        for column, service in enumerate(names):
            marks += _entry(service, tell(NAMES[service], tongue), lefts[column], 66 + row * ROW_PX)
    return tuple(marks)


def size(title: str, tongue: Tongue = ENGLISH) -> tuple[float, float]:
    """How wide and high the block is, in px."""
    return max(_columns(tongue)[-1], min(width(title, TITLE_SIZE, TITLE_WEIGHT), MOST_WIDE)), 100.0


def _columns(tongue: Tongue) -> list[float]:
    """Where each column of the key begins, and where the last ends; as wide as their names in that language."""
    lefts = [0.0]
    for services in zip(*KEY, strict=True):
        names = (width(tell(NAMES[each], tongue), NAME_SIZE) for each in services)
        lefts.append(lefts[-1] + max(COLUMN_PX, NAME_AT + max(names) + COLUMN_GAP))
    return lefts


def _entry(service: str, name: str, x: float, y: float) -> list[Mark]:
    """A sample of the line, its letter and its name."""
    style = LINES[service]
    sample = ((x, y), (x + SAMPLE_PX, y))
    return [
        *pipe_marks(sample, service),
        TextMark(style.letter, x + SAMPLE_PX + 8, y + 4.5, style.role, 13, 700, "start"),
        TextMark(name, x + NAME_AT, y + 4.5, "ink", NAME_SIZE, 400, "start"),
    ]

"""What the rows of figures say and how high they are: found once, for a list asks for all of them whenever it
lays out."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import NamedTuple

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFont, QFontMetrics

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.figures import words
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.icons import GRADE_PX
from circuitcheck.editor.translating import tr
from circuitcheck.figures.figure import Figure
from circuitcheck.wanted import go_on

INSET_PX, PAD_PX, BETWEEN_PX = 16, 9, 10
LEAST_PX = 44
LEAST_ROOM_PX = 60
MANY_ROWS = 500
"""To say and to measure so many rows takes longer than a frame or two."""
WRAP = int(Qt.TextFlag.TextWordWrap) | int(Qt.AlignmentFlag.AlignLeft) | int(Qt.AlignmentFlag.AlignTop)


class Said(NamedTuple):
    """What a row says: title, subject and why it is not worked, those there are; name and value of the first
    results."""

    texts: tuple[str, ...]
    results: tuple[tuple[str, str], ...]


def said_of(drawing: Drawing, figure: Figure, decimal: str) -> Said:
    """What the row of a figure says."""
    texts = (tr(figure.title), words.subject(drawing, figure), words.why_not(figure))
    return Said(tuple(filter(None, texts)), words.head(figure, decimal))


class Faces:
    """The faces of a row, made from the font of its list: for titles, for what stands below, and for values."""

    def __init__(self, font: QFont) -> None:
        self.title, self.text = scaled(font, 1.0, strong=True), scaled(font, 0.93)
        self.value = scaled(font, 0.93, strong=True)
        self._metrics = {id(each): QFontMetrics(each) for each in (self.title, self.text, self.value)}
        self._wide: dict[tuple[int, str], int] = {}

    def wide(self, face: QFont, text: str) -> int:
        """How wide a text is in one line, in px."""
        key = id(face), text
        if key not in self._wide:
            self._wide[key] = self._metrics[id(face)].horizontalAdvance(text)
        return self._wide[key]

    def high(self, face: QFont, text: str, room: int) -> int:
        """How high a text is in a room so wide, in px."""
        metrics = self._metrics[id(face)]
        # What keeps well to its line need not be broken into lines.
        if self.wide(face, text) < room - metrics.averageCharWidth() and "\n" not in text:
            return metrics.height()
        return metrics.boundingRect(QRect(0, 0, room, 10_000), WRAP, text).height()


class Setting(NamedTuple):
    """What heights rest on: the width of the list in px, and its font by its key."""

    width: int
    font: str


class Measures:
    """How a row lies in a list so wide."""

    def __init__(self, faces: Faces, width: int) -> None:
        self.faces = faces
        self.inner = max(LEAST_ROOM_PX, width - 2 * INSET_PX)

    def room(self, figure: Figure) -> int:
        """What the texts have, beside the mark where there is one, in px."""
        return self.inner - (GRADE_PX + BETWEEN_PX if figure.lacks_numbers else 0)

    def texts(self, figure: Figure, said: Said) -> list[tuple[str, QFont, int]]:
        """Title, subject and why it is not worked, those there are, each with its face and height."""
        faces, room = self.faces, self.room(figure)
        in_faces = ((text, faces.text if row else faces.title) for row, text in enumerate(said.texts))
        return [(text, face, faces.high(face, text, room) + 2) for text, face in in_faces]

    def results(self, said: Said) -> list[tuple[str, str, int, int]]:
        """The first results: name, value, how wide the name may be, and how high both are."""
        found, faces = [], self.faces
        for name, value in said.results:
            taken = faces.wide(faces.value, value) + BETWEEN_PX if value else 0
            wide = max(LEAST_ROOM_PX, self.inner - taken)
            high = max(faces.high(faces.text, name, wide), faces.high(faces.value, "", wide))
            found.append((name, value, wide, high + 1))
        return found

    def high(self, figure: Figure, said: Said) -> int:
        """How high the row is."""
        high = sum(high for *_, high in self.texts(figure, said))
        high += sum(high for *_, high in self.results(said))
        return max(LEAST_PX, high + 2 * PAD_PX)


class FoundRows(NamedTuple):
    """What rows say and how high they are in a setting, by figure."""

    setting: Setting | None
    said: Mapping[words.Key, tuple[Figure, Said]]
    heights: Mapping[words.Key, int]


class Asked(NamedTuple):
    """What has to be known to find rows elsewhere than in the window's thread: how the list lies, and the rows of the
    drawing before."""

    font: QFont
    width: int
    decimal: str
    before: Drawing
    known: FoundRows


def rows_of(drawing: Drawing, figures: Sequence[Figure], asked: Asked) -> FoundRows:
    """Find all rows, in whatever thread."""
    # Faces of its own: a font's metrics are no two threads'.
    measures, setting = Measures(Faces(asked.font), asked.width), Setting(asked.width, asked.font.key())
    is_renamed = names(asked.before) != names(drawing)
    known = {} if is_renamed else asked.known.said
    known_heights = asked.known.heights if setting == asked.known.setting else {}
    said: dict[words.Key, tuple[Figure, Said]] = {}
    heights: dict[words.Key, int] = {}
    for figure in figures:
        go_on()
        key = words.key(figure)
        earlier, text = known.get(key, (None, None))
        high = known_heights.get(key)
        if text is None or earlier != figure:
            text, high = said_of(drawing, figure, asked.decimal), None
        said[key] = figure, text
        heights[key] = measures.high(figure, text) if high is None else high
    return FoundRows(setting, said, heights)


def names(drawing: Drawing) -> list[tuple[str, str]]:
    """What things are called, by a label or by what they are: a name can be another where no number is."""
    both = (drawing.components, drawing.controls)
    return [(each.label, each.kind.name) for things in both for each in things.values()]


class Rows:
    """What the rows of figures say, in words and px.

    `say` and `measure` find it, where it was not found elsewhere. Where the setting is another one than before, all are
    measured anew.
    """

    def __init__(self, say: Callable[[Figure], Said], measure: Callable[[Figure, Said], int]) -> None:
        self._say, self._measure = say, measure
        self._setting: Setting | None = None
        self._said: dict[words.Key, tuple[Figure, Said]] = {}
        self._heights: dict[words.Key, int] = {}

    def said(self, figure: Figure) -> Said:
        """What the row of a figure says."""
        key = words.key(figure)
        known = self._said.get(key)
        if known is None or known[0] is not figure:
            # Worked out anew a figure is another object, and mostly says the same.
            if known is None or known[0] != figure:
                known = figure, self._say(figure)
                self._heights.pop(key, None)
            known = self._said[key] = figure, known[1]
        return known[1]

    def high(self, figure: Figure, setting: Setting) -> int:
        """How high the row of a figure is, in px."""
        if setting != self._setting:
            self._setting = setting
            self._heights.clear()
        said, key = self.said(figure), words.key(figure)
        found = self._heights.get(key)
        if found is None:
            found = self._heights[key] = self._measure(figure, said)
        return found

    @property
    def found(self) -> FoundRows:
        """What was found by now, for who goes on while this does."""
        return FoundRows(self._setting, dict(self._said), dict(self._heights))

    def take(self, found: FoundRows) -> None:
        """Take over rows that were found elsewhere."""
        self._setting = found.setting
        self._said, self._heights = dict(found.said), dict(found.heights)

    def keep(self, figures: Iterable[Figure]) -> None:
        """No other figures are there any more."""
        kept = {words.key(each) for each in figures}
        self._said = {key: said for key, said in self._said.items() if key in kept}
        self._heights = {key: high for key, high in self._heights.items() if key in kept}

    def forget(self) -> None:
        """Things are called otherwise: what is said of any figure may be."""
        self._said.clear()
        self._heights.clear()

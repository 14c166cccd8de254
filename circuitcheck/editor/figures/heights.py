"""What the rows of figures say and how high they are: found once, for a list asks for all of them whenever it
lays out."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import NamedTuple

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFont, QFontMetrics

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.figures import words
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.translating import tr
from circuitcheck.figures.figure import Figure

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


class Rows:
    """What the rows of figures say, in words and px.

    `say` and `measure` find it. What `setting` says heights rest on: where it is another one than before, all are
    measured anew.
    """

    def __init__(self, say: Callable[[Figure], Said], measure: Callable[[Figure, Said], int]) -> None:
        self._say, self._measure = say, measure
        self._setting: object = None
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

    def high(self, figure: Figure, setting: object) -> int:
        """How high the row of a figure is, in px."""
        if setting != self._setting:
            self._setting = setting
            self._heights.clear()
        said, key = self.said(figure), words.key(figure)
        found = self._heights.get(key)
        if found is None:
            found = self._heights[key] = self._measure(figure, said)
        return found

    def keep(self, figures: Iterable[Figure]) -> None:
        """No other figures are there any more."""
        kept = {words.key(each) for each in figures}
        self._said = {key: said for key, said in self._said.items() if key in kept}
        self._heights = {key: high for key, high in self._heights.items() if key in kept}

    def forget(self) -> None:
        """Things are called otherwise: what is said of any figure may be."""
        self._said.clear()
        self._heights.clear()

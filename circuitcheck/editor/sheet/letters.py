"""Letters on the sheet: three of them are commands where they mean something, all else begins a part's name."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from time import monotonic

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QKeyEvent

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.finder import Finder
from circuitcheck.editor.sheet.gestures.draw_pipe import DrawPipe
from circuitcheck.editor.sheet.gestures.place import Place
from circuitcheck.editor.sheet.hands import Hands
from circuitcheck.editor.sheet.stage import Stage
from circuitcheck.editor.translating import tr
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds

FOLLOWS_S = 0.7
"""A letter that comes so soon after a command's goes on with a name, if a part's name begins so."""
TURNING = (Qt.Key.Key_R, Qt.Key.Key_M)

Where = Callable[[], tuple[QPointF, QPoint]]


@dataclass(frozen=True)
class _Letter:
    """A letter that was a command, and how things were before it."""

    when: float
    text: str
    drawing: Drawing
    selection: frozenset[str]
    caret: Point | None


class Letters:
    """Who types `radiator` quickly gets a radiator: the turn that its first letter made is taken back."""

    def __init__(
        self, stage: Stage, hands: Hands, finder: Finder, *, where: Where, undo: Callable[[], None]
    ) -> None:
        self._stage, self._hands, self._finder = stage, hands, finder
        self._where, self._undo = where, undo
        self._last: _Letter | None = None

    def forget(self) -> None:
        """Something else was done: no letter follows the last one."""
        self._last = None

    def mean_something(self, event: QKeyEvent) -> bool:
        """Whether a key is the sheet's own, so that no shortcut may take it."""
        gesture = self._hands.gesture
        drawn_by_keys = isinstance(gesture, DrawPipe) and self._hands.keyboard.caret is not None
        return _is_letter(event) and (gesture is None or isinstance(gesture, Place) or drawn_by_keys)

    def press(self, event: QKeyEvent) -> bool:
        """A key. Returns whether it began a name; if not, it is a command's or means nothing here."""
        if not self.mean_something(event):
            self.forget()
            return False
        text = event.text()
        if self._goes_on_with(text):
            self._take_back(text)
            return True
        if self._is_command(event.key()):
            self._last = _Letter(
                monotonic(), text, self._stage.drawing, self._stage.selection, self._hands.keyboard.caret
            )
            return False
        if isinstance(self._hands.gesture, DrawPipe):
            return False
        self._begin(text)
        return True

    def begin(self) -> None:
        """Look for a part with nothing typed yet."""
        self._begin("")

    def _begin(self, text: str) -> None:
        self.forget()
        place, screen = self._where()
        self._finder.begin(text, place, screen)

    def _goes_on_with(self, text: str) -> bool:
        last = self._last
        if last is None or monotonic() - last.when > FOLLOWS_S:
            return False
        return (last.text + text).casefold() in _beginnings()

    def _take_back(self, text: str) -> None:
        """Undo what the first letter did, and begin the name with both."""
        last = self._last
        if last is None:
            return
        self._hands.cancel()
        if self._stage.drawing is not last.drawing:
            self._undo()
        self._stage.select(last.selection)
        self._hands.keyboard.show_caret(last.caret)
        self._begin(last.text + text)

    def _is_command(self, key: int) -> bool:
        gesture = self._hands.gesture
        if key in TURNING:
            return isinstance(gesture, Place) or (gesture is None and bool(self._stage.selection))
        if key == Qt.Key.Key_P:
            return isinstance(gesture, DrawPipe) or (gesture is None and self._hands.keyboard.can_begin_pipe)
        return False


@cache
def _beginnings() -> frozenset[str]:
    """The first two letters of each word of a part's name."""
    return frozenset(word[:2] for kind in kinds().values() for word in tr(kind.title).casefold().split())


def _is_letter(event: QKeyEvent) -> bool:
    plain = not event.modifiers() & ~Qt.KeyboardModifier.ShiftModifier
    return plain and len(event.text()) == 1 and event.text().isalpha()

"""Placing by typing: what is typed on the sheet finds a part, which is in hand while it is looked for."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QPoint, QPointF, Qt
from PySide6.QtWidgets import QWidget

from circuitcheck.editor.part_search import found_by
from circuitcheck.editor.sheet.gestures.place import Place
from circuitcheck.editor.sheet.hands import Hands
from circuitcheck.editor.sheet.stage import Stage
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import later, tr
from circuitcheck.parts.catalogue import kinds

if TYPE_CHECKING:
    from circuitcheck.editor.find_box import FindBox

AWAY_PX = QPoint(28, 28)
"""How far the box keeps from where the part would stand, so that both are seen."""
HINT = later(
    "Enter places it here, Shift Enter one more after it; Tab takes it in hand to turn or move it.  "
    "Up and down choose another, Escape leaves."
)


class Finder(QObject):
    """The box on the sheet. `over` is called when it is closed and the keyboard may go back."""

    def __init__(
        self,
        view: QWidget,
        viewport: QWidget,
        stage: Stage,
        hands: Hands,
        *,
        theme: Callable[[], Theme],
        over: Callable[[], None],
    ) -> None:
        super().__init__(view)
        self._view, self._viewport, self._stage, self._hands = view, viewport, stage, hands
        self._theme, self._over = theme, over
        self._place = QPointF()
        self._made: FindBox | None = None

    @property
    def is_open(self) -> bool:
        """Whether a part is being looked for."""
        return self._made is not None and not self._made.isHidden()

    @property
    def box(self) -> FindBox:
        """What is typed into; made when somebody looks for a part for the first time."""
        if self._made is None:
            from circuitcheck.editor.find_box import FindBox

            nothing = tr("No part is called that or does that.")
            self._made = box = FindBox(self._viewport, tr("Find a part to place"), nothing)
            box.typed.connect(self._find)
            box.moved.connect(self._show)
            box.chosen.connect(self._put)
            box.taken.connect(self._take)
            box.left.connect(self._leave)
        return self._made

    def begin(self, text: str, place: QPointF, screen: QPoint) -> None:
        """Look for a part that is to stand at a place in px of the sheet, which is at `screen` in the view."""
        self._hands.cancel()
        self._place = place
        self.box.begin(text, screen + AWAY_PX)

    def _find(self, text: str) -> None:
        if not self.is_open:
            return
        from circuitcheck.editor.find_box import Match

        # The icons are painted by this folder, and would come in a circle.
        from circuitcheck.editor.icons import kind_icon

        theme = self._theme()
        found = (kinds()[name] for name in found_by(text, self._stage.placed))
        self.box.show_matches(
            [Match(kind.title, kind.name, icon=kind_icon(kind.name, theme)) for kind in found]
        )

    def _show(self, name: object) -> None:
        """Have the part that the keys are on in hand, where the pointer is by now."""
        kind = kinds().get(str(name))
        gesture = self._hands.gesture
        if kind is None:
            if isinstance(gesture, Place):
                self._hands.cancel()
            return
        if isinstance(gesture, Place):
            gesture.become(kind)
        else:
            self._hands.take_at(kind, self._place)
        self._stage.hint(tr(HINT))

    def _put(self, name: object, keys: Qt.KeyboardModifier) -> None:
        gesture = self._hands.gesture
        if not isinstance(gesture, Place):
            return
        if gesture.kind.name != name:
            self._show(name)
        if gesture.put(again=bool(keys & Qt.KeyboardModifier.ShiftModifier)):
            self._close()
            self._hands.settle()

    def _take(self, name: object) -> None:
        """Close, with the part still in hand: the keys of placing turn and move it."""
        gesture = self._hands.gesture
        self._close()
        if isinstance(gesture, Place):
            gesture.tell()
            if gesture.square is not None:
                self._hands.keyboard.show_caret(gesture.square)

    def _leave(self) -> None:
        """Close. A press on the sheet takes the keyboard there, and places what is in hand."""
        if not self.is_open:
            return
        if self._view.hasFocus():
            self.box.end()
            return
        self._hands.cancel()
        self._close()

    def _close(self) -> None:
        was_here = self.box.edit.hasFocus()
        self.box.end()
        if was_here:
            self._view.setFocus(Qt.FocusReason.OtherFocusReason)
        self._over()

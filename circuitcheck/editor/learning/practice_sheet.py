"""The sheet of practice: read only; a press or the keys choose a part, a pipe or a control."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from math import dist

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.learning.practice_marks import PracticeMarks, Ringed
from circuitcheck.editor.sheet import walking
from circuitcheck.editor.sheet.finding_marks import FindingMarks
from circuitcheck.editor.sheet.hits import OnPart, OnPipe
from circuitcheck.editor.sheet.keyboard import ENTER
from circuitcheck.editor.sheet.read_only import Layer, ReadOnlySheet
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.finding import Finding
from circuitcheck.geometry import Point


class PracticeSheet(ReadOnlySheet):
    """Signals `chosen` with an id (empty: nothing), and `meant` where Enter or a second press says that
    this is the one.

    It lays out at once: only arrangements with faults in them are practised on, and none of them is large.
    """

    chosen = Signal(str)
    meant = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._findings = FindingMarks(self._content)
        self.marks = PracticeMarks(self._content)
        self._id = ""
        self.setAccessibleName(tr("Practice sheet"))
        self._describe()

    @property
    def chosen_id(self) -> str:
        """The part, pipe or control that is chosen; empty for none."""
        return self._id

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self._theme = theme
        self._content.set_theme(theme)
        self._overlay.refresh()
        self._findings.refresh()
        self.marks.refresh()
        self.viewport().update()

    def set_drawing(self, drawing: Drawing) -> None:
        """Show a drawing as a whole, with nothing chosen and nothing marked; what is open shows no mark."""
        self._content.marks_open = False
        self.choose("")
        self._findings.choose(None)
        self.marks.show(())
        self._content.show(drawing)
        self.fit()

    def show_open(self) -> None:
        """Mark what is open too: the answer is out."""
        self._content.marks_open = True
        self._content.refresh_all()

    def ring(self, ringed: Iterable[Ringed]) -> None:
        """Show rings with words."""
        self.marks.show(ringed)

    def show_finding(self, finding: Finding | None) -> None:
        """Show one finding with its proof; the rest of the drawing turns quiet."""
        self._findings.choose(finding)
        self.marks.refresh()
        if finding is not None:
            for id in (*finding.components[:1], *finding.pipes[:1]):
                self.bring(id)

    def choose(self, id: str) -> None:
        """Choose a thing and bring it into view; empty: nothing."""
        if id:
            self.bring(id)
        self._set(id)

    @property
    def here(self) -> str | None:
        """The thing that is chosen: the keyboard is there too."""
        return self._id or None

    def _layers(self) -> tuple[Layer, ...]:
        return self._findings, self.marks

    def _set(self, id: str) -> None:
        if id == self._id:
            return
        self._id = id
        self._overlay.show_selection(frozenset({id}) if id else frozenset())
        self._overlay.show_focus(id if id and self.hasFocus() else None)
        self._describe()
        self.chosen.emit(id)

    def _describe(self) -> None:
        keys = tr(
            "The drawing to be judged. Tab and arrow keys go from thing to thing, Enter says that the one at "
            "hand is wrong."
        )
        drawing = self._content.drawing
        known = self._id in drawing.components or self._id in drawing.pipes or self._id in drawing.controls
        here = tr("At {name}.", name=drawing.name(self._id)) if known else ""
        self.setAccessibleDescription(f"{here} {keys}".strip())

    # Pointer and keyboard.

    def _clicked(self, hit: OnPart | OnPipe | None) -> None:
        self._set("" if hit is None else hit.id)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A second press says that this is the one."""
        self._clicked(self._hit(event.position()))
        if self._id:
            self.meant.emit(self._id)
        event.accept()

    def _key(self, event: QKeyEvent) -> bool:
        """Enter and Space mean what is chosen, Escape lets go of it."""
        if not self._id:
            return False
        if event.key() in (*ENTER, Qt.Key.Key_Space):
            self.meant.emit(self._id)
        elif event.key() == Qt.Key.Key_Escape:
            self._set("")
        else:
            return False
        return True

    def _order(self) -> Sequence[str]:
        return [id for id in self._everything() if not self._content.box(id).isNull()]

    def _stand(self, id: str) -> None:
        self.choose(id)

    def _everything(self) -> tuple[str, ...]:
        drawing = self._content.drawing
        return (*drawing.components, *drawing.pipes, *drawing.controls)

    def _go(self, dx: int, dy: int) -> None:
        """To the nearest thing that way: of a pipe, to the middle of its line."""
        start = self._middle(self._id) or self._seen_middle()
        places = ((id, middle) for id in self._everything() if (middle := self._middle(id)) is not None)
        found = walking.ahead(places, start, dx, dy, self._id)
        if found is not None:
            self.choose(found)

    def _seen_middle(self) -> Point:
        seen = self._scroller.seen().center()
        return Point(seen.x(), seen.y())

    def _middle(self, id: str) -> Point | None:
        line = self._content.layout.lines.get(id)
        if line:
            a, b = max(pairwise(line), key=lambda run: dist(*run))
            return Point((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
        box = self._content.box(id)
        return None if box.isNull() else Point(box.center().x(), box.center().y())

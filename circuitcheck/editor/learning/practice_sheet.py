"""The sheet of practice: read only; a press or the keys choose a part, a pipe or a control."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise
from math import dist

from PySide6.QtCore import QEvent, QLocale, QPoint, QPointF, Qt, QTimer, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.learning.practice_marks import PracticeMarks, Ringed
from circuitcheck.editor.sheet import hits, zooming
from circuitcheck.editor.sheet.canvas import Canvas
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.finding_marks import FindingMarks
from circuitcheck.editor.sheet.keyboard import ARROWS, ENTER
from circuitcheck.editor.sheet.overlay import Overlay
from circuitcheck.editor.sheet.services import service_names
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr
from circuitcheck.finding import Finding

SETTLE_MS = 100
DRAG_PX = 5
ASIDE = 2.0
"""What lies aside counts as so many times further off."""


class PracticeSheet(Canvas):
    """Signals `chosen` with an id (empty: nothing), and `meant` where Enter or a second press says that
    this is the one."""

    chosen = Signal(str)
    meant = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._content = Content(service_names, light(), QLocale().decimalPoint())
        self._overlay = Overlay(self._content)
        self._findings = FindingMarks(self._content)
        self.marks = PracticeMarks(self._content)
        self._id = ""
        self._pressed_at: QPoint | None = None
        self._last = QPoint()
        self._dragged = False
        self._settling = QTimer(self, interval=SETTLE_MS, singleShot=True)
        self._settling.timeout.connect(self._settle)
        self.setScene(self._content.scene)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.viewport().setMouseTracking(True)
        self.setAccessibleName(tr("Practice sheet"))
        self._describe()

    @property
    def content(self) -> Content:
        """What lies on the sheet."""
        return self._content

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
            self.bring((*finding.components[:1], *finding.pipes[:1]))

    def choose(self, id: str) -> None:
        """Choose a thing and bring it into view; empty: nothing."""
        if id:
            self.bring((id,))
        self._set(id)

    def bring(self, ids: Iterable[str]) -> None:
        """Scroll until these are in view."""
        for id in ids:
            box = self._content.box(id)
            if not box.isNull():
                self._scroller.bring(box)

    def fit(self) -> None:
        """Show the whole drawing."""
        box = self._content.bounds()
        if box.isNull():
            return
        self.zoom_to(zooming.fitting(box, self.contentsRect().size()))
        self._scroller.widen(box)
        self._scroller.look_at(box.center())

    def zoomed(self, zoom: float) -> None:
        """From far off show the overview; paint crisp some time after the last step."""
        self._content.lens.settled = False
        self._settling.start()
        scene = self._content.seen_from(zoom)
        if self.scene() is not scene:
            for layer in (self._overlay, self._findings, self.marks):
                layer.adopt(scene)
            self.setScene(scene)

    def _settle(self) -> None:
        self._content.lens.settled = True
        self.viewport().update()

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

    # The pointer.

    def _hit(self, at: QPointF) -> str:
        place = self.viewportTransform().inverted()[0].map(at)
        hit = hits.part_at(self._content, place)
        pipe = hits.pipe_at(self._content, self._content.layout.routes, place, self.zoom)
        if hit is not None:
            return hit.id
        return "" if pipe is None else pipe.id

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of what is there, or of the paper."""
        if event.button() in (Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton):
            self._pressed_at = self._last = event.position().toPoint()
            self._dragged = event.button() == Qt.MouseButton.MiddleButton
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Move the paper, else show what is under the pointer."""
        at = event.position().toPoint()
        if self._pressed_at is None:
            self._overlay.show_hover(self._hit(event.position()) or None)
        elif self._dragged or (at - self._pressed_at).manhattanLength() > DRAG_PX:
            self._dragged = True
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
            self._scroller.by(self._last - at)
            self._last = at
        event.accept()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """A press that moved nothing chooses."""
        begun, dragged = self._pressed_at, self._dragged
        self._pressed_at, self._dragged = None, False
        self.viewport().setCursor(Qt.CursorShape.ArrowCursor)
        event.accept()
        if begun is not None and not dragged:
            self._set(self._hit(event.position()))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A second press says that this is the one."""
        id = self._hit(event.position())
        self._set(id)
        if id:
            self.meant.emit(id)
        event.accept()

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is under the pointer any more."""
        self._overlay.show_hover(None)
        super().leaveEvent(event)

    # The keyboard.

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows go to the next thing that way, Enter means it, Escape lets go of it."""
        key = event.key()
        if key in ARROWS:
            self._go(*ARROWS[Qt.Key(key)])
        elif key in (*ENTER, Qt.Key.Key_Space) and self._id:
            self.meant.emit(self._id)
        elif key == Qt.Key.Key_Escape and self._id:
            self._set("")
        elif event.text() == "+":
            self.zoom_in()
        elif event.text() == "-":
            self.zoom_out()
        elif event.text() == "0":
            self.fit()
        else:
            super().keyPressEvent(event)

    def focusNextPrevChild(self, next: bool) -> bool:
        """Tab walks through all that is drawn; past the last it leaves the sheet."""
        order = [id for id in self._everything() if not self._content.box(id).isNull()]
        if not self.hasFocus() or not order:
            return super().focusNextPrevChild(next)
        if self._id in order:
            place = order.index(self._id) + (1 if next else -1)
        else:
            place = 0 if next else len(order) - 1
        if not 0 <= place < len(order):
            return super().focusNextPrevChild(next)
        self.choose(order[place])
        return True

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Without the keyboard there is no ring."""
        self._overlay.show_focus(None)
        super().focusOutEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """The ring comes back where it was."""
        self._overlay.show_focus(self._id or None)
        super().focusInEvent(event)

    def _everything(self) -> tuple[str, ...]:
        drawing = self._content.drawing
        return (*drawing.components, *drawing.pipes, *drawing.controls)

    def _go(self, dx: int, dy: int) -> None:
        """To the nearest thing that way: of a pipe, to the middle of its line."""
        at = self._middle(self._id) if self._id else None
        start = at or self._scroller.seen().center()
        best: tuple[float, str] | None = None
        for id in self._everything():
            middle = self._middle(id)
            if middle is None or id == self._id:
                continue
            x, y = middle.x() - start.x(), middle.y() - start.y()
            ahead, aside = x * dx + y * dy, abs(x * dy) + abs(y * dx)
            far = ahead + ASIDE * aside
            if ahead > 0 and aside <= ahead and (best is None or (far, id) < best):
                best = (far, id)
        if best is not None:
            self.choose(best[1])

    def _middle(self, id: str) -> QPointF | None:
        line = self._content.layout.lines.get(id)
        if line:
            a, b = max(pairwise(line), key=lambda run: dist(*run))
            return QPointF((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
        box = self._content.box(id)
        return None if box.isNull() else box.center()

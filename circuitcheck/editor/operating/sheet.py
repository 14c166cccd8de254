"""The sheet in operation: read only; a press turns what lies under the pointer, arrowheads move along the pipes."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from time import perf_counter

from PySide6.QtCore import QEvent, QLocale, QPoint, QPointF, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPixmap,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QStyle, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.operating.arrows import Arrows
from circuitcheck.editor.operating.marks import OperatingMarks
from circuitcheck.editor.sheet import hits, walking, zooming
from circuitcheck.editor.sheet.canvas import Canvas
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.hits import OnPart, OnPipe
from circuitcheck.editor.sheet.keyboard import ARROWS, ENTER
from circuitcheck.editor.sheet.overlay import Overlay
from circuitcheck.editor.sheet.painting import Prepared
from circuitcheck.editor.sheet.part_item import rect_of
from circuitcheck.editor.sheet.services import service_names
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr
from circuitcheck.operating.standing import Standing
from circuitcheck.report.flows import By

FRAME_MS = 33
SETTLE_MS = 100
DRAG_PX = 5


class OperatedSheet(Canvas):
    """Signals `pressed` with a part to turn, `chosen` with a pipe or a part (None: nothing) and `left`
    when Escape found nothing else to leave."""

    pressed = Signal(str)
    chosen = Signal(object)
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._content = Content(service_names, light(), QLocale().decimalPoint())
        self._marks = OperatingMarks(self._content)
        self._overlay = Overlay(self._content)
        self._arrows = Arrows(self._content.palette)
        self._words = Prepared((), self._content.palette)
        self._turns: Callable[[str], bool] = lambda part: False
        self._chosen: str | None = None
        self._at: str | None = None
        self._pressed_at: QPoint | None = None
        self._last = QPoint()
        self._dragged = False
        self._picture: QPixmap | None = None
        self._travelled_s = 0.0
        self._painted_at = perf_counter()
        self._moves = True
        self.fits_title = True
        """Whether the title block is kept in view too, or only what is drawn."""
        self._wants_fit = True
        self._is_fitted = False
        self.frames: list[float] = []
        """How long the last frames took to paint, in seconds."""
        self._frame = QTimer(self, interval=FRAME_MS, timerType=Qt.TimerType.PreciseTimer)
        self._frame.timeout.connect(self._next_frame)
        self._settling = QTimer(self, interval=SETTLE_MS, singleShot=True)
        self._settling.timeout.connect(self._settle)
        for scene in (self._content.scene, self._content.far_scene):
            scene.changed.connect(self._changed)
        self.setScene(self._content.scene)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.viewport().setMouseTracking(True)
        self.setAccessibleName(tr("Sheet in operation"))
        self._describe()

    # What is shown.

    @property
    def marks(self) -> OperatingMarks:
        """What stands on the drawing."""
        return self._marks

    @property
    def content(self) -> Content:
        """What lies on the sheet."""
        return self._content

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours; the marks follow with the next `show_standing`."""
        self._theme = theme
        self._content.set_theme(theme)
        self._overlay.refresh()
        self._changed()

    def set_drawing(self, drawing: Drawing) -> None:
        """Show a drawing."""
        if drawing is not self._content.drawing:
            self._choose(None)
            self._stand_on(None)
            self._content.show(drawing)
            self._wants_fit = self._wants_fit or not self.isVisible()
        self._scroller.widen(self._content.bounds())
        if self._wants_fit and self.isVisible():
            self.fit()
        self._changed()

    def set_turns(self, turns: Callable[[str], bool]) -> None:
        """What can be turned: asked with a part's id."""
        self._turns = turns

    def show_standing(
        self,
        standing: Standing | None,
        by: By,
        texts: Mapping[str, str] | None = None,
        words: Mapping[str, str] | None = None,
    ) -> None:
        """Show how everything stands and what flows; see `OperatingMarks.show`."""
        self._marks.show(standing, by, texts, words or {})
        self._arrows.show(self._marks.runs, self._content.palette)
        self._words = Prepared(self._marks.floating, self._content.palette)
        self._overlay.refresh()
        self._changed()

    def show_words(self, words: Mapping[str, str]) -> None:
        """Show what is read at parts by now; everything else stands as it is."""
        self._marks.show_words(words)
        self._words = Prepared(self._marks.floating, self._content.palette)
        self.viewport().update()

    def set_moving(self, moves: bool) -> None:
        """Let the arrowheads move, or stand still where they are."""
        self._moves = moves
        self._start_or_stop()

    @property
    def is_moving(self) -> bool:
        """Whether anything moves."""
        return self._frame.isActive()

    def fit(self) -> None:
        """Show the whole drawing."""
        self._wants_fit = False
        drawn = self._content.layout.bounds()
        box = rect_of(drawn) if drawn is not None and not self.fits_title else self._content.bounds()
        if box.isNull():
            return
        self.zoom_to(zooming.fitting(box, self.contentsRect().size()))
        self._scroller.widen(box)
        self._scroller.look_at(box.center())
        self._is_fitted = True

    def choose(self, id: str | None) -> None:
        """Choose a pipe or a part, and bring it into view."""
        self._choose(id)
        if id is not None:
            box = self._content.box(id)
            if not box.isNull():
                self._scroller.bring(box)

    # Painting.

    def _changed(self, *_: object) -> None:
        """Something else is to be seen: paint it anew with the next frame."""
        self._picture = None
        self.viewport().update()
        self._start_or_stop()

    def _start_or_stop(self) -> None:
        quiet = self.style().styleHint(QStyle.StyleHint.SH_Widget_Animation_Duration, None, self) <= 0
        wanted = self._moves and not quiet and bool(self._arrows.runs) and self.isVisible()
        if wanted and not self._frame.isActive():
            self._painted_at = perf_counter()
            self._frame.start()
        elif not wanted:
            self._frame.stop()

    def _next_frame(self) -> None:
        now = perf_counter()
        # After a pause the arrowheads go on from where they stood.
        self._travelled_s += min(0.2, now - self._painted_at)
        self._painted_at = now
        self.viewport().update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The sheet from one picture made when something changed, then what moves: arrowheads and readings."""
        begun = perf_counter()
        view = self.viewport()
        ratio = view.devicePixelRatioF()
        if self._picture is None:
            self._picture = self._still_picture(ratio)
        painter = QPainter(view)
        painter.drawPixmap(0, 0, self._picture)
        self._arrows.paint(painter, self.viewportTransform(), QRectF(view.rect()), self._travelled_s, ratio)
        painter.setRenderHints(self.renderHints())
        painter.setTransform(self.viewportTransform())
        self._words.paint(painter)
        painter.end()
        self.frames = [*self.frames[-99:], perf_counter() - begun]

    def _still_picture(self, ratio: float) -> QPixmap:
        view = self.viewport()
        made = QPixmap(view.size() * ratio)
        made.setDevicePixelRatio(ratio)
        painter = QPainter(made)
        painter.setRenderHints(self.renderHints())
        self.render(painter, QRectF(view.rect()), view.rect())
        painter.end()
        return made

    def scrollContentsBy(self, dx: int, dy: int) -> None:
        """The picture is of another place."""
        super().scrollContentsBy(dx, dy)
        self._changed()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Look at a part of it."""
        self._is_fitted = False
        super().wheelEvent(event)

    def zoomed(self, zoom: float) -> None:
        """From far off show the overview; paint crisp some time after the last step."""
        self._is_fitted = False
        self._content.lens.settled = False
        self._settling.start()
        scene = self._content.seen_from(zoom)
        if self.scene() is not scene:
            self._overlay.adopt(scene)
            self._marks.adopt(scene)
            self.setScene(scene)

    def _settle(self) -> None:
        self._content.lens.settled = True
        self._changed()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the whole drawing in view, until somebody looks at a part of it."""
        super().resizeEvent(event)
        if self._is_fitted:
            self.fit()
        self._changed()

    def event(self, event: QEvent) -> bool:
        """What is hidden does not move; what is first seen is seen whole."""
        if event.type() is QEvent.Type.Show:
            if self._wants_fit:
                QTimer.singleShot(0, self, self._fit_once)
            QTimer.singleShot(0, self, self._start_or_stop)
        elif event.type() is QEvent.Type.Hide:
            self._frame.stop()
        return super().event(event)

    def _fit_once(self) -> None:
        if self._wants_fit and self.isVisible():
            self.fit()

    # The pointer.

    def _hit(self, at: QPointF) -> OnPart | OnPipe | None:
        place = self.viewportTransform().inverted()[0].map(at)
        part = hits.part_at(self._content, place)
        return part or hits.pipe_at(self._content, self._content.layout.routes, place, self.zoom)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of what is there, or of the paper."""
        if event.button() in (Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton):
            self._pressed_at = self._last = event.position().toPoint()
            self._dragged = event.button() == Qt.MouseButton.MiddleButton
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Move the paper, else show what can be turned."""
        at = event.position().toPoint()
        if self._pressed_at is not None:
            if self._dragged or (at - self._pressed_at).manhattanLength() > DRAG_PX:
                self._dragged, self._is_fitted = True, False
                self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
                self._scroller.by(self._last - at)
                self._last = at
            event.accept()
            return
        hit = self._hit(event.position())
        turns = isinstance(hit, OnPart) and self._turns(hit.id)
        self._overlay.show_hover(hit.id if hit is not None and (turns or isinstance(hit, OnPipe)) else None)
        self.viewport().setCursor(Qt.CursorShape.PointingHandCursor if turns else Qt.CursorShape.ArrowCursor)
        event.accept()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """A press that moved nothing turns the part, or chooses the pipe."""
        begun, dragged = self._pressed_at, self._dragged
        self._pressed_at, self._dragged = None, False
        self.viewport().setCursor(Qt.CursorShape.ArrowCursor)
        event.accept()
        if begun is None or dragged:
            return
        hit = self._hit(event.position())
        self._stand_on(None)
        self._choose(None if hit is None else hit.id)
        if isinstance(hit, OnPart) and self._turns(hit.id):
            self.pressed.emit(hit.id)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A second press is a press."""
        self.mousePressEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is under the pointer any more."""
        self._overlay.show_hover(None)
        super().leaveEvent(event)

    # The keyboard.

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Tab and arrows walk from one thing to turn to the next, Space and Enter turn it, Escape leaves."""
        key = event.key()
        if key in ARROWS:
            self._go(*ARROWS[Qt.Key(key)])
        elif key in (*ENTER, Qt.Key.Key_Space):
            if self._at is not None and not event.isAutoRepeat():
                self.pressed.emit(self._at)
                self._describe()
        elif key == Qt.Key.Key_Escape:
            if self._at is not None or self._chosen is not None:
                self._stand_on(None)
                self._choose(None)
            else:
                self.left.emit()
        elif event.text() == "+":
            self.zoom_in()
        elif event.text() == "-":
            self.zoom_out()
        else:
            super().keyPressEvent(event)

    def focusNextPrevChild(self, next: bool) -> bool:
        """Tab walks through what can be turned; past the last it leaves the sheet."""
        if not self.hasFocus():
            return super().focusNextPrevChild(next)
        order = [id for id in self._content.drawing.components if self._is_there(id)]
        if not order:
            return super().focusNextPrevChild(next)
        if self._at in order:
            place = order.index(self._at) + (1 if next else -1)
        else:
            place = 0 if next else len(order) - 1
        if not 0 <= place < len(order):
            self._stand_on(None)
            return super().focusNextPrevChild(next)
        self._stand_on(order[place])
        return True

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Without the keyboard there is no ring."""
        self._overlay.show_focus(None)
        super().focusOutEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """The ring comes back where it was."""
        self._overlay.show_focus(self._at)
        super().focusInEvent(event)

    def _is_there(self, id: str) -> bool:
        return walking.place_of(self._content.drawing, id) is not None and self._turns(id)

    def _go(self, dx: int, dy: int) -> None:
        """To the nearest thing to turn that way."""
        drawing = self._content.drawing
        here = walking.place_of(drawing, self._at) if self._at else None
        start = here or hits.snapped(self._scroller.seen().center())
        leaving, place = self._at, start
        for _ in range(len(drawing.components)):
            found = walking.nearest(drawing, place, dx, dy, leaving)
            if found is None:
                return
            if self._is_there(found):
                self._stand_on(found)
                return
            leaving, place = found, walking.place_of(drawing, found) or place

    def _stand_on(self, id: str | None) -> None:
        self._at = id
        self._overlay.show_focus(id)
        if id is not None:
            self._scroller.bring(self._content.box(id))
            self._choose(id)
        self._describe()

    @property
    def walked_to(self) -> str | None:
        """The part the keyboard is at."""
        return self._at

    def _choose(self, id: str | None) -> None:
        if id == self._chosen:
            return
        self._chosen = id
        pipes = self._content.drawing.pipes
        self._overlay.show_selection(frozenset({id}) if id is not None and id in pipes else frozenset())
        self.chosen.emit(id)

    @property
    def chosen_id(self) -> str | None:
        """The pipe or part that is chosen."""
        return self._chosen

    def _describe(self) -> None:
        keys = tr(
            "The drawing at work. Tab and arrow keys go from valve to valve, Space turns the one at hand, "
            "Escape leaves. The drawing itself is not changed here."
        )
        name = "" if self._at is None else self._content.drawing.name(self._at)
        self.setAccessibleDescription(f"{name}. {keys}" if name else keys)

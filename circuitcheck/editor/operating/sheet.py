"""The sheet in operation: read only; a press turns what lies under the pointer, arrowheads move along the pipes."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from time import perf_counter

from PySide6.QtCore import QEvent, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QKeyEvent,
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
from circuitcheck.editor.sheet import hits, walking
from circuitcheck.editor.sheet.hits import OnPart, OnPipe
from circuitcheck.editor.sheet.keyboard import ENTER
from circuitcheck.editor.sheet.laying_out import LayingOut
from circuitcheck.editor.sheet.painting import Prepared
from circuitcheck.editor.sheet.read_only import Layer, ReadOnlySheet
from circuitcheck.editor.sheet.shown_part import rect_of
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import shown_told, tr
from circuitcheck.operating.standing import Standing
from circuitcheck.report.flows import By

FRAME_MS = 33


class OperatedSheet(ReadOnlySheet):
    """Signals `pressed` with a part to turn, `chosen` with a pipe or a part (None: nothing) and `left`
    when Escape found nothing else to leave.

    A large drawing is laid out beside the window: until it lies there nothing is shown on it, and `laid_out`
    tells when what stands on it can be.
    """

    pressed = Signal(str)
    chosen = Signal(object)
    left = Signal()
    laid_out = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._laying_out = LayingOut(self._content, self.viewport(), self._lies_there)
        self._marks = OperatingMarks(self._content)
        self._arrows = Arrows(self._content.palette)
        self._words = Prepared((), self._content.palette)
        self._turns: Callable[[str], bool] = lambda part: False
        self._chosen: str | None = None
        self._at: str | None = None
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
        for scene in (self._content.scene, self._content.far_scene):
            scene.changed.connect(self._changed)
        self.setAccessibleName(tr("Sheet in operation"))
        self._describe()

    # What is shown.

    @property
    def marks(self) -> OperatingMarks:
        """What stands on the drawing."""
        return self._marks

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
            self._wants_fit = self._wants_fit or not self.isVisible()
            if not self._laying_out.takes(drawing, passing=False):
                self._content.show(drawing)
        self._show_place()

    @property
    def is_laying_out(self) -> bool:
        """Whether the drawing is still to come to lie on the sheet."""
        return self._laying_out.is_busy

    def stop(self) -> None:
        """Stop laying out, for the end of the window; its thread has ended when this returns."""
        self._laying_out.close()

    def _lies_there(self) -> None:
        """The drawing has been laid out."""
        self._overlay.refresh()
        self._show_place()
        self.laid_out.emit()

    def _show_place(self) -> None:
        """Look at what lies on the sheet now: at the whole, where that is wanted."""
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
        """Show how everything stands and what flows; see `OperatingMarks.show`. Nothing, where the drawing does
        not lie there yet."""
        if self.is_laying_out:
            standing, texts, words = None, None, None
        self._marks.show(standing, by, texts, words or {})
        self._arrows.show(self._marks.runs, self._content.palette)
        self._words = Prepared(self._marks.floating, self._content.palette)
        self._overlay.refresh()
        self._changed()

    def show_words(self, words: Mapping[str, str]) -> None:
        """Show what is read at parts by now; everything else stands as it is."""
        if self.is_laying_out:
            return
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
        """Show the whole drawing, once it lies there."""
        self._wants_fit = self.is_laying_out
        super().fit()
        self._is_fitted = not self._fitted_box().isNull()

    def _fitted_box(self) -> QRectF:
        drawn = self._content.layout.bounds()
        return rect_of(drawn) if drawn is not None and not self.fits_title else self._content.bounds()

    def _layers(self) -> tuple[Layer, ...]:
        return (self._marks,)

    def _looked_away(self) -> None:
        self._is_fitted = False

    def choose(self, id: str | None) -> None:
        """Choose a pipe or a part, and bring it into view."""
        self._choose(id)
        if id is not None:
            self.bring(id)

    # Painting.

    def _show_anew(self) -> None:
        self._changed()

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

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the whole drawing in view, until somebody looks at a part of it."""
        super().resizeEvent(event)
        if self._is_fitted:
            self.fit()
        self._laying_out.centre()
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

    def _hovers(self, hit: OnPart | OnPipe | None) -> None:
        """Show what can be turned, and a pipe."""
        turns = isinstance(hit, OnPart) and self._turns(hit.id)
        self._overlay.show_hover(hit.id if hit is not None and (turns or isinstance(hit, OnPipe)) else None)
        self.viewport().setCursor(Qt.CursorShape.PointingHandCursor if turns else Qt.CursorShape.ArrowCursor)

    def _clicked(self, hit: OnPart | OnPipe | None) -> None:
        """Turn the part, or choose the pipe."""
        self._stand_on(None)
        self._choose(None if hit is None else hit.id)
        if isinstance(hit, OnPart) and self._turns(hit.id):
            self.pressed.emit(hit.id)

    # The keyboard.

    @property
    def here(self) -> str | None:
        """The part the keyboard is at."""
        return self._at

    def _key(self, event: QKeyEvent) -> bool:
        """Space and Enter turn what is at hand, Escape leaves."""
        if event.key() in (*ENTER, Qt.Key.Key_Space):
            if self._at is not None and not event.isAutoRepeat():
                self.pressed.emit(self._at)
                self._describe()
        elif event.key() == Qt.Key.Key_Escape:
            if self._at is not None or self._chosen is not None:
                self._stand_on(None)
                self._choose(None)
            else:
                self.left.emit()
        else:
            return False
        return True

    def _order(self) -> Sequence[str]:
        return [id for id in self._content.drawing.components if self._is_there(id)]

    def _stand(self, id: str) -> None:
        self._stand_on(id)

    def _walked_off(self) -> None:
        self._stand_on(None)

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
            self.bring(id)
            self._choose(id)
        self._describe()

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
        name = "" if self._at is None else shown_told(self._content.drawing.name(self._at))
        self.setAccessibleDescription(f"{name}. {keys}" if name else keys)

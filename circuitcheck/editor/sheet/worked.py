"""The sheet as the pointer works it: the drawing shown, what is under the hand, gestures and drags."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QMouseEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QWidget

from circuitcheck.editor.sheet import commands
from circuitcheck.editor.sheet.beside import beside_selection
from circuitcheck.editor.sheet.canvas import Canvas
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.finder import Finder
from circuitcheck.editor.sheet.hands import Hands
from circuitcheck.editor.sheet.hits import snapped
from circuitcheck.editor.sheet.invitation import Invitation
from circuitcheck.editor.sheet.laying_out import LayingOut
from circuitcheck.editor.sheet.letters import Letters
from circuitcheck.editor.sheet.services import service_names
from circuitcheck.editor.sheet.serving import Serving
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.editor.theme import light
from circuitcheck.editor.translating import shown_told, tr
from circuitcheck.geometry import Point
from circuitcheck.picture.marks import SQUARE_PX
from circuitcheck.told import upper

SETTLE_MS = 100
REST_MS = 60
"""After so long without a step a gesture rests: longer than from one step to the next, shorter than one waits for."""


class WorkedCanvas(Canvas):
    """Shows a drawing, holds what works on it, and hands it what the pointer does."""

    edited = Signal(object, object)
    selection_changed = Signal(object)
    hint = Signal(str)
    pointer_at = Signal(object)
    place_heat_source = Signal()
    open_drawing = Signal()
    arrangement_wanted = Signal()
    tour_wanted = Signal()
    undo_wanted = Signal()
    menu_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.keep_placing = False
        """Whether after placing a part the next of its kind is in hand."""
        self._content = Content(service_names, light(), serves_later=True)
        self._stage = Stage(
            self._content, edited=self.edited.emit, selected=self._on_selected, hint=self.hint.emit
        )
        self._laying_out = LayingOut(self._content, self.viewport(), self._laid_out)
        self._stage.takes_over = lambda drawing, passing: self._laying_out.takes(drawing, passing=passing)
        self._serving = Serving(self._content, self._stage.follow, self)
        self._stage.await_services = self._serving.ask
        self._settling = QTimer(self, interval=SETTLE_MS, singleShot=True)
        self._settling.timeout.connect(self._settle)
        self._resting = QTimer(self, interval=REST_MS, singleShot=True)
        self._resting.timeout.connect(self._stage.at_rest)
        self._stage.await_rest = self._resting.start
        self._hands = Hands(self._stage, scroll=self._scroller.by, show_cursor=self._show_cursor)
        self._pointer_at: QPointF | None = None
        self._pasted: tuple[Point, int] | None = None
        self.finder = Finder(
            self,
            self.viewport(),
            self._stage,
            self._hands,
            theme=lambda: self._theme,
            over=self._show_invitation,
        )
        self._letters = Letters(
            self._stage, self._hands, self.finder, where=self._here, undo=self.undo_wanted.emit
        )
        self._set_up()
        self._invitation = Invitation(self.viewport())
        self._invitation.place_heat_source.connect(self.place_heat_source)
        self._invitation.open_drawing.connect(self.open_drawing)
        self._invitation.arrangement_wanted.connect(self.arrangement_wanted)
        self._invitation.tour_wanted.connect(self.tour_wanted)
        self._show_invitation()

    def _show_cursor(self, shape: Qt.CursorShape) -> None:
        self.viewport().setCursor(shape)

    def _set_up(self) -> None:
        self.setScene(self._content.scene)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAcceptDrops(True)
        self.setMouseTracking(True)
        self.viewport().setMouseTracking(True)
        self.setAccessibleName(tr("Sheet"))
        self._describe(frozenset())

    @property
    def is_at_rest(self) -> bool:
        """Whether nothing is in hand, no gesture lasts, and the drawing lies on the sheet."""
        return self._hands.gesture is None and not self.is_laying_out

    @property
    def is_laying_out(self) -> bool:
        """Whether the drawing is still to come to lie on the sheet: until then nothing can be taken hold of."""
        return self._laying_out.is_busy

    def stop(self) -> None:
        """Stop what runs beside the window, for its end; the threads have ended when this returns."""
        self._laying_out.close()
        self._serving.close()

    def _laid_out(self) -> None:
        """The drawing lies on the sheet."""
        self._stage.follow()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin a gesture by what lies under the pointer."""
        self._pointer_at = event.position()
        self._letters.forget()
        if self.is_laying_out:
            event.accept()
            return
        self._hands.press(event.button(), self._pointer(event.position(), event.modifiers()))
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Go on with the gesture, else show what is under the pointer."""
        self._pointer_at = event.position()
        pointer = self._pointer(event.position(), event.modifiers())
        self.pointer_at.emit(pointer.square)
        self._hands.move(pointer)
        event.accept()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """End the gesture."""
        self._hands.release(event.button(), self._pointer(event.position(), event.modifiers()))
        self._show_invitation()
        event.accept()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A second press is a press."""
        self.mousePressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """A menu about what is under the pointer, or about what is selected; what is in hand is put away."""
        event.accept()
        if not self.is_at_rest:
            self._hands.cancel()
            self._show_invitation()
            return
        at = event.globalPos()
        if event.reason() is QContextMenuEvent.Reason.Keyboard:
            at = self.viewport().mapToGlobal(self._here()[1])
        self.menu_wanted.emit(at)

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is under the pointer any more."""
        if not self.finder.is_open:
            self._pointer_at = None
        self._stage.overlay.show_hover(None)
        super().leaveEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """A part from the parts list comes in hand."""
        if not self.is_laying_out and self._hands.take_dragged(event.mimeData()):
            self._invitation.hide()
            self._drag_to(event)
        else:
            event.ignore()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """The part goes along."""
        self._drag_to(event)

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        """The part is taken away again."""
        self._hands.cancel()
        self._show_invitation()

    def dropEvent(self, event: QDropEvent) -> None:
        """The part is placed, or cut into the pipe it is dropped on."""
        self._hands.let_go(self._pointer(event.position(), event.modifiers()))
        event.acceptProposedAction()
        self._show_invitation()
        self.setFocus(Qt.FocusReason.MouseFocusReason)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the invitation in the middle."""
        super().resizeEvent(event)
        self._invitation.centre()
        self._laying_out.centre()

    def _drag_to(self, event: QDropEvent) -> None:
        self._hands.move(self._pointer(event.position(), event.modifiers()))
        event.acceptProposedAction()

    def _pointer(self, at: QPointF, modifiers: Qt.KeyboardModifier) -> Pointer:
        place = self.viewportTransform().inverted()[0].map(at)
        return Pointer(place, snapped(place), at.toPoint(), modifiers)

    def _middle(self) -> Point:
        """The square's corner nearest to the middle of the view."""
        return snapped(self._scroller.seen().center())

    def _here(self, *, beside: bool = True) -> tuple[QPointF, QPoint]:
        """Where the hand is, on the sheet in px and in the view: pointer, caret, what is selected, middle.

        On a pipe that is selected it is the middle of its longest run; of a part, beside it (`beside`).
        """
        to_sheet = self.viewportTransform().inverted()[0]
        if self._pointer_at is not None and self.viewport().rect().contains(self._pointer_at.toPoint()):
            return to_sheet.map(self._pointer_at), self._pointer_at.toPoint()
        caret = self._hands.keyboard.caret
        at = caret or (beside_selection(self._stage) if beside else None) or self._middle()
        place = QPointF(at.x * SQUARE_PX, at.y * SQUARE_PX)
        screen = self.viewportTransform().map(place).toPoint()
        if not self.viewport().rect().contains(screen):
            middle = self._middle()
            place = QPointF(middle.x * SQUARE_PX, middle.y * SQUARE_PX)
            screen = self.viewportTransform().map(place).toPoint()
        return place, screen

    def _on_selected(self, ids: frozenset[str]) -> None:
        self._pasted = self._pasted if ids else None
        self._describe(ids)
        self.selection_changed.emit(ids)
        if self._hands.gesture is None:
            self.hint.emit(commands.chosen_hint(self._stage))

    def _describe(self, ids: frozenset[str]) -> None:
        """Let a reader say what is chosen, where it is one thing, before what the keys do."""
        keys = tr(
            "The drawing. Letters find a part to place. Tab walks through the parts, Ctrl and an arrow "
            "goes to the next one that way, arrow keys move what is chosen, P begins a pipe and Tab "
            "takes it from port to port, Enter places or ends."
        )
        name = shown_told(upper(self._stage.drawing.name(next(iter(ids))))) if len(ids) == 1 else ""
        self.setAccessibleDescription(f"{name}. {keys}" if name else keys)

    def _show_invitation(self) -> None:
        self._invitation.setVisible(self._stage.drawing.is_empty and self._hands.gesture is None)
        self._invitation.centre()

    def zoomed(self, zoom: float) -> None:
        """From far off show the overview; paint crisp some time after the last step."""
        self._stage.zoom = zoom
        self._content.lens.settled = False
        self._settling.start()
        self._show_scene()

    def _show_scene(self) -> None:
        """From far off show the overview in place of the items."""
        scene = self._content.seen_from(self.zoom)
        if self.scene() is not scene:
            self._stage.overlay.adopt(scene)
            self._stage.findings.adopt(scene)
            self._stage.flows.adopt(scene)
            self._stage.review.adopt(scene)
            self.setScene(scene)

    def _settle(self) -> None:
        """Some time after the last step of zoom: paint everything crisp."""
        self._content.lens.settled = True
        self.viewport().update()

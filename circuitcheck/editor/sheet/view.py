"""The view of the sheet: its zoom, what the pointer and the keys begin, and what others may ask of it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence

from PySide6.QtCore import QEvent, QLocale, QPoint, QPointF, QRectF, Qt, QTimer, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet import commands, zooming
from circuitcheck.editor.sheet.beside import beside_selection
from circuitcheck.editor.sheet.canvas import Canvas
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.finder import Finder
from circuitcheck.editor.sheet.flow_marks import FlowMarks
from circuitcheck.editor.sheet.hands import Hands
from circuitcheck.editor.sheet.hits import snapped
from circuitcheck.editor.sheet.invitation import Invitation
from circuitcheck.editor.sheet.keyboard import ARROWS, ENTER
from circuitcheck.editor.sheet.letters import Letters
from circuitcheck.editor.sheet.review_marks import ReviewMarks
from circuitcheck.editor.sheet.services import service_names
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.editor.theme import Theme, light
from circuitcheck.finding import Finding
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.kind import Kind
from circuitcheck.picture.marks import SQUARE_PX
from circuitcheck.report.flows import By, SituationFlows
from circuitcheck.review.comparing import Comparison

SETTLE_MS = 100


class SheetView(Canvas):
    """Shows a drawing and announces edits of it; it never changes one itself."""

    edited = Signal(str, object)
    selection_changed = Signal(object)
    hint = Signal(str)
    pointer_at = Signal(object)
    place_heat_source = Signal()
    open_drawing = Signal()
    open_sample = Signal()
    undo_wanted = Signal()
    menu_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.keep_placing = False
        """Whether after placing a part the next of its kind is in hand."""
        self._content = Content(service_names, light(), QLocale().decimalPoint())
        self._stage = Stage(
            self._content, edited=self.edited.emit, selected=self._on_selected, hint=self.hint.emit
        )
        self._settling = QTimer(self, interval=SETTLE_MS, singleShot=True)
        self._settling.timeout.connect(self._settle)
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
        self._invitation.open_sample.connect(self.open_sample)
        self._show_invitation()

    def _show_cursor(self, shape: Qt.CursorShape) -> None:
        self.viewport().setCursor(shape)

    def _set_up(self) -> None:
        self.setScene(self._content.scene)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAcceptDrops(True)
        self.setMouseTracking(True)
        self.viewport().setMouseTracking(True)
        self.setAccessibleName("Sheet")
        self.setAccessibleDescription(
            "The drawing. Letters find a part to place. Tab walks through the parts, Ctrl and an arrow "
            "goes to the next one that way, arrow keys move what is chosen, P begins a pipe and Tab "
            "takes it from port to port, Enter places or ends."
        )

    # What others may ask.

    def set_drawing(self, drawing: Drawing) -> None:
        """Show a drawing; only what differs from the one shown is made anew."""
        if drawing is not self._stage.drawing:
            self._stage.set_drawing(drawing)
            self._hands.drawing_changed()
        self._show_invitation()
        self._scroller.widen(self._content.bounds())

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self._theme = theme
        self._content.set_theme(theme)
        self._stage.overlay.refresh()
        self._stage.findings.refresh()
        self._stage.refresh_flows()
        self.viewport().update()

    def set_finding(self, finding: Finding | None) -> None:
        """Show what one finding says; None: back to the whole drawing."""
        self._stage.findings.choose(finding)
        self._stage.refresh_flows()
        if finding is not None:
            self.bring_into_view((*finding.components, *finding.pipes))

    def set_findings(self, findings: Sequence[Finding]) -> None:
        """Mark the things that these findings judge."""
        before = self._stage.findings.taken
        self._stage.findings.show_all(findings)
        if self._stage.findings.taken != before:
            self._stage.refresh_flows()

    @property
    def flows(self) -> FlowMarks:
        """What is shown of the flows."""
        return self._stage.flows

    def set_flows(self, situation: SituationFlows | None, by: By) -> None:
        """Show what flows in one situation, and by what figure; None: nothing of it."""
        self._stage.flows.show(situation, by)
        self._stage.refresh_flows()

    @property
    def review(self) -> ReviewMarks:
        """What is shown of notes and of a comparison."""
        return self._stage.review

    def set_comparison(self, found: Comparison | None, old_lines: Mapping[str, tuple[Point, ...]]) -> None:
        """Draw what a comparison found, with the lines of the old drawing's pipes; None: nothing of it."""
        self._stage.review.compare(found, old_lines)
        self._stage.refresh_flows()

    @property
    def is_at_rest(self) -> bool:
        """Whether nothing is in hand and no gesture lasts."""
        return self._hands.gesture is None

    def selected_ids(self) -> frozenset[str]:
        """The ids of the parts, pipes and controls that are selected."""
        return self._stage.selection

    def select(self, ids: Iterable[str]) -> None:
        """Select these; ids that are not in the drawing are left out."""
        self._stage.select(ids)

    def run(self, command: Callable[[Stage], None]) -> None:
        """Do one of `commands` to what is selected; while a gesture lasts nothing is done."""
        if self.is_at_rest:
            command(self._stage)

    def select_all(self) -> None:
        """Select every part and pipe."""
        commands.select_all(self._stage)

    def taken_piece(self) -> Drawing | None:
        """What is selected, as a drawing of its own; None where nothing is."""
        return commands.taken_piece(self._stage)

    def paste(self, fragment: Drawing) -> None:
        """Put a piece in where the pointer or the caret is; again at the same place, a little aside."""
        place, _ = self._here(beside=False)
        at = snapped(place)
        times = self._pasted[1] + 1 if self._pasted is not None and self._pasted[0] == at else 0
        self._pasted = (at, times)
        aside = commands.ASIDE * times
        self.run(lambda stage: commands.paste(stage, fragment, Point(at.x + aside, at.y + aside)))

    def begin_finding(self) -> None:
        """Look for a part to place by typing."""
        self._invitation.hide()
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        self._letters.begin()

    @property
    def placed_last(self) -> Kind | None:
        """The kind placed last; None where none was."""
        return kinds()[self._stage.placed[0]] if self._stage.placed else None

    def begin_pipe(self) -> None:
        """Begin a pipe at what is selected or at the caret, as P does."""
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        if self.is_at_rest:
            self._hands.key(Qt.Key.Key_P, Qt.KeyboardModifier.NoModifier, self._middle())

    def place_again(self) -> None:
        """Take the kind placed last in hand once more."""
        if self.placed_last is not None:
            self.begin_placing(self.placed_last)

    def turn_selection(self) -> None:
        """Turn what is in hand, else what is selected, by 90 degrees clockwise."""
        if not self._hands.in_hand(Qt.Key.Key_R):
            commands.turn(self._stage)

    def mirror_selection(self) -> None:
        """Mirror what is in hand, else what is selected, left to right."""
        if not self._hands.in_hand(Qt.Key.Key_M):
            commands.mirror(self._stage)

    def remove_selection(self) -> None:
        """Take out what is selected; while a gesture lasts nothing is."""
        if self._hands.gesture is None:
            commands.remove(self._stage)

    def begin_placing(self, kind: Kind) -> None:
        """Take a kind in hand: a click or Enter places it."""
        self._invitation.hide()
        self._hands.take(kind, snapped(self._here()[0]), keeps=self.keep_placing)
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    def cancel_gesture_or_selection(self) -> None:
        """What Escape does: leave what is being done, else let go of the selection."""
        self._hands.escape()
        self._show_invitation()

    def bring_into_view(self, ids: Iterable[str]) -> None:
        """Scroll until these are in view, where they are not."""
        box = QRectF()
        for id in ids:
            found = self._content.box(id)
            box = found if box.isNull() else box.united(found) if not found.isNull() else box
        if not box.isNull():
            self._scroller.bring(box)

    def fit(self) -> None:
        """Show the whole drawing."""
        box = self._content.bounds()
        if box.isNull():
            self.zoom_reset()
            self.centerOn(QPointF(0, 0))
            return
        self.zoom_to(zooming.fitting(box, self.contentsRect().size()))
        self._scroller.widen(box)
        self._scroller.look_at(box.center())

    # The pointer.

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin a gesture by what lies under the pointer."""
        self._pointer_at = event.position()
        self._letters.forget()
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
        if self._hands.take_dragged(event.mimeData()):
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

    # The keyboard.

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Keys of the gesture at hand, of the selection, of the caret; letters find a part."""
        key, modifiers = event.key(), event.modifiers()
        if key in ARROWS:
            self._pointer_at = None
        meant = True
        if self._letters.press(event):
            self._invitation.hide()
        elif key == Qt.Key.Key_Escape:
            self.cancel_gesture_or_selection()
        elif key == Qt.Key.Key_Space and not modifiers & Qt.KeyboardModifier.ControlModifier:
            if not event.isAutoRepeat():
                self._hands.arm_panning(True)
        elif key in ENTER and not modifiers & Qt.KeyboardModifier.ControlModifier:
            meant = self._enter(modifiers)
        else:
            meant = self._hands.key(key, modifiers, self._middle())
            if self._hands.keyboard.walked_to is not None and key in ARROWS:
                self.bring_into_view((self._hands.keyboard.walked_to,))
        caret = self._hands.keyboard.caret
        if caret is not None:
            self.pointer_at.emit(caret)
        if not meant:
            super().keyPressEvent(event)

    def event(self, event: QEvent) -> bool:
        """A letter on the sheet is no shortcut of a menu."""
        is_key = isinstance(event, QKeyEvent) and event.type() is QEvent.Type.ShortcutOverride
        if is_key and isinstance(event, QKeyEvent) and self._letters.mean_something(event):
            event.accept()
            return True
        return super().event(event)

    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        """The space bar lets go of the paper."""
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._hands.arm_panning(False)
        super().keyReleaseEvent(event)

    def focusNextPrevChild(self, next: bool) -> bool:
        """Tab walks through the parts; past the last it leaves the sheet."""
        keyboard = self._hands.keyboard
        if self.hasFocus():
            self._pointer_at = None
            if self._hands.step_port(back=not next):
                return True
        if self._hands.gesture is None and self.hasFocus() and keyboard.walk(back=not next):
            if keyboard.walked_to is not None:
                self.bring_into_view((keyboard.walked_to,))
            return True
        return super().focusNextPrevChild(next)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Without the keyboard there is neither caret nor ring."""
        self._hands.arm_panning(False)
        self._hands.keyboard.leave()
        super().focusOutEvent(event)

    # The size, and what follows from it.

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the invitation in the middle."""
        super().resizeEvent(event)
        self._invitation.centre()

    def zoomed(self, zoom: float) -> None:
        """From far off show the overview; paint crisp some time after the last step."""
        self._stage.zoom = zoom
        self._content.lens.settled = False
        self._settling.start()
        self._show_scene()

    def _enter(self, modifiers: Qt.KeyboardModifier) -> bool:
        if self._hands.enter(again=bool(modifiers & Qt.KeyboardModifier.ShiftModifier)):
            self._show_invitation()
            return True
        if not self._invitation.isHidden():
            self.place_heat_source.emit()
            return True
        return False

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
        self.selection_changed.emit(ids)
        if self._hands.gesture is None:
            self.hint.emit(commands.chosen_hint(self._stage))

    def _show_invitation(self) -> None:
        drawing = self._stage.drawing
        empty = not (drawing.components or drawing.pipes or drawing.controls)
        self._invitation.setVisible(empty and self._hands.gesture is None)
        self._invitation.centre()

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

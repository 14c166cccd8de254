"""The view of the sheet: its zoom, what the pointer and the keys begin, and what others may ask of it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent, QResizeEvent

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet import commands, zooming
from circuitcheck.editor.sheet.flow_marks import FlowMarks
from circuitcheck.editor.sheet.hits import snapped
from circuitcheck.editor.sheet.keyboard import ARROWS, ENTER
from circuitcheck.editor.sheet.review_marks import ReviewMarks
from circuitcheck.editor.sheet.stage import Stage
from circuitcheck.editor.sheet.worked import WorkedCanvas
from circuitcheck.editor.theme import Theme
from circuitcheck.finding import Finding
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.kind import Kind

if TYPE_CHECKING:
    from circuitcheck.report.flows import By, SituationFlows
    from circuitcheck.review.comparing import Comparison


class SheetView(WorkedCanvas):
    """Shows a drawing and announces edits of it; it never changes one itself."""

    _fitted_at: tuple[float, QPoint] | None = None
    """Where the view stood after the whole drawing was shown last."""
    _fits_then = False
    """Whether the whole drawing is to be shown once it lies on the sheet."""

    # What others may ask.

    def set_drawing(self, drawing: Drawing) -> None:
        """Show a drawing; only what differs from the one shown is made anew."""
        if drawing is not self._stage.drawing:
            self._stage.set_drawing(drawing)
            self._hands.drawing_changed()
        self._show_invitation()
        self._scroller.widen(self._content.bounds())

    def _laid_out(self) -> None:
        """The drawing lies on the sheet: show it as was asked for while it did not."""
        super()._laid_out()
        self._scroller.widen(self._content.bounds())
        if self._fits_then:
            self.fit()

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
        if self.is_laying_out:
            return
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
        if not self._hands.in_hand(Qt.Key.Key_R) and self.is_at_rest:
            commands.turn(self._stage)

    def mirror_selection(self) -> None:
        """Mirror what is in hand, else what is selected, left to right."""
        if not self._hands.in_hand(Qt.Key.Key_M) and self.is_at_rest:
            commands.mirror(self._stage)

    def remove_selection(self) -> None:
        """Take out what is selected; while a gesture lasts nothing is."""
        if self.is_at_rest:
            commands.remove(self._stage)

    def begin_placing(self, kind: Kind) -> None:
        """Take a kind in hand: a click or Enter places it."""
        if self.is_laying_out:
            return
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
        # A whole drawing in view is not scrolled for the sake of a margin: it would be fitted no longer.
        if not box.isNull() and not (self._is_fitted() and self._scroller.seen().contains(box)):
            self._scroller.bring(box)

    def fit(self) -> None:
        """Show the whole drawing."""
        self._fits_then = self.is_laying_out
        box = self._content.bounds()
        if box.isNull():
            self.zoom_reset()
            self.centerOn(QPointF(0, 0))
            return
        self.zoom_to(zooming.fitting(box, self.contentsRect().size()))
        self._scroller.widen(box)
        self._scroller.look_at(box.center())
        self._fitted_at = self._looks_at()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """What was fitted and not moved since stays fitted, whatever opens or closes beside the sheet."""
        stays = self._is_fitted() and self.is_at_rest
        super().resizeEvent(event)
        if stays:
            self.fit()

    def _is_fitted(self) -> bool:
        return self._fitted_at is not None and self._fitted_at == self._looks_at()

    def _looks_at(self) -> tuple[float, QPoint]:
        """How large, and which place of the sheet lies in the corner of the view, in px of the screen."""
        return self.zoom, (self._scroller.seen().topLeft() * self.zoom).toPoint()

    # The keyboard.

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Keys of the gesture at hand, of the selection, of the caret; letters find a part."""
        key, modifiers = event.key(), event.modifiers()
        if self.is_laying_out:
            event.ignore()
            return
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
        if self.is_at_rest and self.hasFocus() and keyboard.walk(back=not next):
            if keyboard.walked_to is not None:
                self.bring_into_view((keyboard.walked_to,))
            return True
        return super().focusNextPrevChild(next)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Without the keyboard there is neither caret nor ring."""
        self._hands.arm_panning(False)
        self._hands.keyboard.leave()
        super().focusOutEvent(event)

    def _enter(self, modifiers: Qt.KeyboardModifier) -> bool:
        if self._hands.enter(again=bool(modifiers & Qt.KeyboardModifier.ShiftModifier)):
            self._show_invitation()
            return True
        if not self._invitation.isHidden():
            self.place_heat_source.emit()
            return True
        return False

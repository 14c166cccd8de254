"""What pointer and keys begin, carry on and end: one gesture at a time."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt

from circuitcheck.editor.sheet import commands
from circuitcheck.editor.sheet.gestures.draw_pipe import DrawPipe
from circuitcheck.editor.sheet.gestures.drop import start_of_drop
from circuitcheck.editor.sheet.gestures.gesture import Gesture
from circuitcheck.editor.sheet.gestures.move import Move
from circuitcheck.editor.sheet.gestures.pan import Pan
from circuitcheck.editor.sheet.gestures.place import Place, start_of_placing
from circuitcheck.editor.sheet.gestures.segment import DragRun
from circuitcheck.editor.sheet.gestures.select import RubberBand
from circuitcheck.editor.sheet.hits import OnEnd, OnPart, OnPipe, OnPort
from circuitcheck.editor.sheet.keyboard import Keyboard, pointer_at
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import Kind


class Hands:
    """Holds the gesture at hand. `scroll` moves the paper, `show_cursor` shows what the pointer does."""

    def __init__(
        self,
        stage: Stage,
        *,
        scroll: Callable[[QPoint], None],
        show_cursor: Callable[[Qt.CursorShape], None],
    ) -> None:
        self._stage = stage
        self._scroll = scroll
        self._show_cursor = show_cursor
        self._is_panning_armed = False
        self.keyboard = Keyboard(stage)
        self.gesture: Gesture | None = None

    def press(self, button: Qt.MouseButton, pointer: Pointer) -> None:
        """A button was pressed: begin by what lies under the pointer. A part in hand goes on."""
        if self.gesture is not None:
            return
        left = button == Qt.MouseButton.LeftButton
        if button == Qt.MouseButton.MiddleButton or (left and self._is_panning_armed):
            self._begin(Pan(self._stage, pointer, self._scroll))
        elif left:
            self.keyboard.leave()
            self._begin(self._gesture_for(pointer))
        elif button == Qt.MouseButton.RightButton:
            self._choose_for_menu(pointer)

    def move(self, pointer: Pointer) -> None:
        """The pointer moved: carry on, or show what is under it."""
        if self.gesture is not None:
            self.gesture.move(pointer)
            return
        hit = self._stage.hit(pointer.place)
        match hit:
            case OnPart() | OnPipe():
                self._stage.overlay.show_hover(hit.id)
            case OnPort():
                self._stage.overlay.show_hover(hit.joint.part)
            case _:
                self._stage.overlay.show_hover(None)
        if not self._is_panning_armed:
            on_port = isinstance(hit, OnPort | OnEnd)
            self._show_cursor(Qt.CursorShape.CrossCursor if on_port else Qt.CursorShape.ArrowCursor)

    def release(self, button: Qt.MouseButton, pointer: Pointer) -> None:
        """A button was released: end the gesture that it began."""
        if self.gesture is None:
            return
        pans = isinstance(self.gesture, Pan)
        if button == Qt.MouseButton.LeftButton or (pans and button == Qt.MouseButton.MiddleButton):
            self.gesture.end(pointer)
            self._tidy()

    def take(self, kind: Kind, at: Point, *, keeps: bool) -> None:
        """Take a kind in hand, shown at a square's corner."""
        self.cancel()
        self._stage.select(())
        self._begin(start_of_placing(self._stage, kind, at, keeps=keeps))

    def take_at(self, kind: Kind, place: QPointF) -> None:
        """Take a kind in hand, shown at a place in px: on a pipe there, cut in."""
        self.cancel()
        self._stage.select(())
        gesture = Place(self._stage, kind)
        gesture.reach(place)
        self._begin(gesture)

    def take_dragged(self, carried: QMimeData) -> bool:
        """Take in hand what a drag brings. Returns whether the sheet takes it."""
        gesture = start_of_drop(self._stage, carried)
        if gesture is None:
            return False
        self.cancel()
        self._begin(gesture)
        return True

    def let_go(self, pointer: Pointer) -> None:
        """Drop what a drag brought."""
        if self.gesture is not None:
            self.gesture.end(pointer)
            self._tidy()

    def key(self, key: int, modifiers: Qt.KeyboardModifier, middle: Point) -> bool:
        """A key other than Enter and Escape. Returns whether it meant something."""
        by_keys = isinstance(self.gesture, DrawPipe) and self.keyboard.caret is not None
        if key == Qt.Key.Key_P and not modifiers and (self.gesture is None or by_keys):
            begun = self.keyboard.pipe_from_here(self.gesture)
            if begun is not None:
                self._begin(begun)
            return True
        return self.keyboard.press(key, modifiers, self.gesture, middle)

    def in_hand(self, key: int) -> bool:
        """A key that came by way of a menu. Returns whether a gesture is at hand, to which it went."""
        if self.gesture is None:
            return False
        self.gesture.key(key)
        return True

    def enter(self, *, again: bool = False) -> bool:
        """Enter: place or end what is at hand, else select at the caret. Returns whether it did.

        `again`: the next part of its kind is in hand after it.
        """
        gesture = self.gesture
        if gesture is None:
            return self.keyboard.take()
        if isinstance(gesture, Place):
            square = gesture.square
            gesture.put(again=gesture.keeps or again)
            if not gesture.done and square is not None:
                gesture.move(pointer_at(square))
        elif isinstance(gesture, DrawPipe):
            gesture.end(gesture.pressed)
            self.keyboard.show_caret(None)
        self._tidy()
        return True

    def escape(self) -> None:
        """Escape: leave the gesture, else let go of the selection and the caret."""
        if self.gesture is not None:
            self.cancel()
        else:
            self.keyboard.let_go()

    def step_port(self, *, back: bool) -> bool:
        """Tab, while a pipe is drawn: on to the next port. Returns whether one is drawn."""
        if not isinstance(self.gesture, DrawPipe):
            return False
        self.keyboard.to_next_port(self.gesture, back=back)
        return True

    def cancel(self) -> None:
        """Leave the gesture at hand."""
        if self.gesture is not None:
            self.gesture.cancel()
            self._tidy()

    def drawing_changed(self) -> None:
        """The drawing is another: a gesture that was not its cause is left."""
        if self.gesture is not None and not self.gesture.done:
            self.gesture.drawing_changed()
            self._tidy()

    def arm_panning(self, armed: bool) -> None:
        """The space bar is held, or let go."""
        self._is_panning_armed = armed
        if self.gesture is None:
            self._show_cursor(Qt.CursorShape.OpenHandCursor if armed else Qt.CursorShape.ArrowCursor)

    def _gesture_for(self, pointer: Pointer) -> Gesture:
        hit = self._stage.hit(pointer.place)
        match hit:
            case OnPort() | OnEnd():
                return DrawPipe(self._stage, pointer, hit)
            case OnPart():
                return Move(self._stage, pointer, hit.id)
            case OnPipe():
                return DragRun(self._stage, pointer, hit)
        return RubberBand(self._stage, pointer)

    def _choose_for_menu(self, pointer: Pointer) -> None:
        """A menu is about what is under the pointer, or about the selection it lies in."""
        hit = self._stage.hit(pointer.place)
        match hit:
            case OnPart(id) | OnPipe(id):
                pass
            case OnPort(joint):
                id = joint.part
            case OnEnd(pipe):
                id = pipe
            case _:
                self._stage.select(())
                return
        if id not in self._stage.selection:
            self._stage.select({id})

    def _begin(self, gesture: Gesture) -> None:
        self.gesture = gesture
        self._stage.overlay.show_hover(None)
        self._show_cursor(gesture.cursor)

    def settle(self) -> None:
        """What was at hand may be over."""
        self._tidy()

    def _tidy(self) -> None:
        if self.gesture is not None and self.gesture.done:
            self.gesture = None
            self._show_cursor(Qt.CursorShape.ArrowCursor)
            self._stage.hint(commands.chosen_hint(self._stage))

"""What a gesture is: it moves, it ends or is left, and it says when it is done."""

from __future__ import annotations

from PySide6.QtCore import Qt

from circuitcheck.editor.sheet.stage import Pointer, Stage

SLACK_PX = 4
"""So many px of the screen the pointer may stray before a press becomes a drag."""


class Gesture:
    """One gesture on the stage. Nothing is edited before its end; `cancel` leaves all as it was."""

    cursor: Qt.CursorShape = Qt.CursorShape.ArrowCursor

    def __init__(self, stage: Stage) -> None:
        self.stage = stage
        self.done = False

    def move(self, pointer: Pointer) -> None:
        """The pointer moved."""

    def end(self, pointer: Pointer) -> None:
        """The button was released, or Enter pressed."""
        self.done = True

    def cancel(self) -> None:
        """Escape: leave all as it was."""
        self.done = True
        self.stage.end_preview()

    def drawing_changed(self) -> None:
        """The drawing is another by somebody else's doing."""
        self.cancel()

    def key(self, key: int) -> bool:
        """A key that means something while the gesture lasts. Returns whether it did."""
        return False


class Drag(Gesture):
    """A gesture that begins with a press, and is a click as long as the pointer hardly moved."""

    def __init__(self, stage: Stage, pointer: Pointer) -> None:
        super().__init__(stage)
        self.pressed = pointer
        self.is_drag = False

    def strayed(self, pointer: Pointer) -> bool:
        """Whether this is a drag by now."""
        off = pointer.screen - self.pressed.screen
        self.is_drag = self.is_drag or max(abs(off.x()), abs(off.y())) >= SLACK_PX
        return self.is_drag

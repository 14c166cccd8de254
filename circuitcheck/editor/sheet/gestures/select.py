"""Selecting a pipe with a press, and all that a rubber band takes in."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt

from circuitcheck.editor.sheet.gestures.gesture import Drag
from circuitcheck.editor.sheet.stage import Pointer, Stage


class RubberBand(Drag):
    """From an empty place: selects the parts and pipes that lie wholly inside."""

    cursor = Qt.CursorShape.CrossCursor

    def __init__(self, stage: Stage, pointer: Pointer) -> None:
        super().__init__(stage, pointer)
        self._before = stage.selection if pointer.adds else frozenset[str]()
        if not pointer.adds:
            stage.select(())

    def move(self, pointer: Pointer) -> None:
        """Stretch the band, and select as it goes."""
        if self.strayed(pointer):
            box = QRectF(self.pressed.place, pointer.place).normalized()
            self.stage.overlay.show_band(box)
            self.stage.select(self._before | self._inside(box))

    def end(self, pointer: Pointer) -> None:
        """Let go of the band."""
        self.done = True
        self.stage.overlay.show_band(None)

    def cancel(self) -> None:
        """Let go of the band and of what it took in."""
        super().cancel()
        self.stage.overlay.show_band(None)
        self.stage.select(self._before)

    def _inside(self, box: QRectF) -> frozenset[str]:
        content = self.stage.content
        parts, pipes = content.near(box)
        ids = {item.id for item in parts} | {item.id for item in pipes}
        return frozenset(id for id in ids if box.contains(content.box(id)))

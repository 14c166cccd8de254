"""Dropping a part dragged from the parts list: it is placed, or cut into the pipe it is dropped on."""

from __future__ import annotations

from PySide6.QtCore import QMimeData

from circuitcheck.editor.dragging import kind_in
from circuitcheck.editor.sheet.gestures.gesture import Gesture
from circuitcheck.editor.sheet.gestures.place import Place
from circuitcheck.editor.sheet.stage import Pointer, Stage


class Drop(Place):
    """A part that is held by a drag of the system's: let go once, whatever keys are held."""

    def end(self, pointer: Pointer) -> None:
        """Place the part where it is let go."""
        self.reach(pointer.place)
        self.put()
        self.done = True


def start_of_drop(stage: Stage, carried: QMimeData) -> Gesture | None:
    """The gesture for what a drag brings; None where the sheet does not take it."""
    kind = kind_in(carried)
    return None if kind is None else Drop(stage, kind)

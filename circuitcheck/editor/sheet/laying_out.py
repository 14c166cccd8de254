"""Laying a large drawing out beside the window, and what the sheet says until it lies there."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.translating import tr
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.garbage import building_to_stay
from circuitcheck.sheet.layout import Layout

BESIDE = 500
"""To lay out so many parts and pipes takes longer than a frame or two."""


class LayingOut(QObject):
    """Takes over drawings that would hold the window up. Until one is laid out the sheet is empty and says
    why; `laid_out` is called when it lies there."""

    def __init__(self, content: Content, on: QWidget, laid_out: Callable[[], None]) -> None:
        super().__init__(on)
        self._content = content
        self._laid_out = laid_out
        self._out = WorkingOut(self._lay_out, "layout", 0, self, gives_up=True)
        self._out.found.connect(self._found)
        self._on = on
        self._words = plain.label(tr("The drawing is being laid out…"), "name")
        self._words.setParent(on)
        self._words.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self._words.hide()

    @property
    def is_busy(self) -> bool:
        """Whether a drawing is still to come."""
        return self._out.is_busy

    def takes(self, drawing: Drawing, *, passing: bool) -> bool:
        """Whether it takes a drawing over: then nothing of it is to be shown now."""
        if passing and self.is_busy:
            return True
        if passing or not is_another(self._content.drawing, drawing):
            self._out.forget()
            self._words.hide()
            return False
        self._content.start_anew()
        self._out.ask(drawing)
        self._words.show()
        self.centre()
        return True

    def centre(self) -> None:
        """Let the words stand in the middle of what they lie on."""
        self._words.adjustSize()
        self._words.move(self._on.rect().center() - self._words.rect().center())

    def close(self) -> None:
        """Stop: nothing is laid out any more, and the thread has ended when this returns."""
        self._out.close()

    def _lay_out(self, drawing: Drawing) -> Layout:
        """In the other thread."""
        layout = self._content.new_layout()
        with building_to_stay():
            layout.update(drawing)
            layout.bounds()  # remembered: it takes a while of thousands of boxes
        return layout

    def _found(self, drawing: Drawing, layout: Layout | None) -> None:
        self._words.hide()
        if layout is None:
            # It failed beside the window: here it fails as anything fails in it, and is told as such.
            self._content.show(drawing)
        else:
            self._content.take(layout)
        self._laid_out()


def is_another(shown: Drawing, drawing: Drawing) -> bool:
    """Whether a large drawing has nothing in common with the one shown: an edit keeps most of what there was,
    and its lines depend on where they lay."""
    if len(drawing.components) + len(drawing.pipes) <= BESIDE:
        return False
    parts, pipes = shown.components, shown.pipes
    if any(parts.get(id) is part for id, part in drawing.components.items()):
        return False
    return not any(pipes.get(id) is pipe for id, pipe in drawing.pipes.items())

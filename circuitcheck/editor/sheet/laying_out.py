"""Laying a large drawing out beside the window, and what the sheet says until it lies there."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QWidget

from circuitcheck.drawing.difference import changed_or_gone, changes
from circuitcheck.drawing.routing import Routes, routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.translating import tr
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.garbage import building_to_stay
from circuitcheck.sheet.layout import Layout

BESIDE = 500
"""To lay out so many parts and pipes takes longer than a frame or two."""
MUCH = 1 / 8
"""Where so large a share of the parts and pipes is another, it is worth an empty sheet for a while not to hold the
window up."""


@dataclass(frozen=True, slots=True)
class Asked:
    """A drawing to be laid out, and the lines that were there before."""

    drawing: Drawing
    before: Routes | None


class LayingOut(QObject):
    """Takes over drawings that would hold the window up: large ones that were not shown before, and edits of much of a
    large one. Until one is laid out the sheet is empty and says why; `laid_out` is called when it lies there."""

    def __init__(self, content: Content, on: QWidget, laid_out: Callable[[], None]) -> None:
        super().__init__(on)
        self._content = content
        self._laid_out = laid_out
        self._out = WorkingOut(self._lay_out, "layout", 0, self, gives_up=True)
        self._out.found.connect(self._found)
        self._asked: Asked | None = None
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
        waiting = self._asked if self.is_busy else None
        if waiting is not None and (passing or drawing is waiting.drawing):
            return True
        shown = self._settled_drawing()
        if not passing and is_another(shown, drawing):
            # To forget a large drawing thing by thing takes longer than to begin anew.
            self._content.start_anew()
            shown = self._content.drawing
        if passing or not is_much(shown, drawing):
            self._out.forget()
            self._words.hide()
            return False
        before = self._content.layout.settled if waiting is None else _still_before(waiting, drawing)
        self._asked = Asked(drawing, before)
        self._content.start_anew()
        self._out.ask(self._asked)
        self._words.show()
        self.centre()
        return True

    def _settled_drawing(self) -> Drawing:
        """What was shown before a preview: an edit knows what it changed of that, and a preview lies there already."""
        settled = self._content.layout.settled
        return self._content.drawing if settled is None else settled.drawing

    def centre(self) -> None:
        """Let the words stand in the middle of what they lie on."""
        self._words.adjustSize()
        self._words.move(self._on.rect().center() - self._words.rect().center())

    def close(self) -> None:
        """Stop: nothing is laid out any more, and the thread has ended when this returns."""
        self._out.close()

    def _lay_out(self, asked: Asked) -> Layout:
        """In the other thread."""
        layout = self._content.new_layout()
        with building_to_stay():
            # Before all else: the checks, in a thread of their own, know no lines before, and whoever asks for those
            # of a drawing first settles what they are.
            layout.go_on_from(routes(asked.drawing, asked.before))
            layout.update(asked.drawing)
            layout.bounds()  # remembered: it takes a while of thousands of boxes
        return layout

    def _found(self, asked: Asked, layout: Layout | None) -> None:
        self._words.hide()
        if layout is None:
            # It failed beside the window: here it fails as anything fails in it, and is told as such.
            self._content.show(asked.drawing)
        else:
            self._content.take(layout)
        self._laid_out()


def _still_before(waiting: Asked, drawing: Drawing) -> Routes | None:
    """The lines before a drawing that comes while another is still to come: those before that one, where either is what
    it was made of."""
    before = waiting.before
    if before is None or (is_another(before.drawing, drawing) and is_another(waiting.drawing, drawing)):
        return None
    return before


def is_another(shown: Drawing, drawing: Drawing) -> bool:
    """Whether nothing is left of a large drawing that is shown."""
    if _things(shown) <= BESIDE:
        return False
    parts, pipes = shown.components, shown.pipes
    if any(parts.get(id) is part for id, part in drawing.components.items()):
        return False
    return not any(pipes.get(id) is pipe for id, pipe in drawing.pipes.items())


def is_much(shown: Drawing, drawing: Drawing) -> bool:
    """Whether so much of a large drawing is not as it is shown that to follow that would hold the window up."""
    things = max(_things(shown), _things(drawing))
    if things <= BESIDE:
        return False
    parts, pipes = changes(shown, drawing)
    others = len(changed_or_gone(parts, shown.components, drawing.components))
    others += len(changed_or_gone(pipes, shown.pipes, drawing.pipes))
    return others > max(BESIDE, things * MUCH)


def _things(drawing: Drawing) -> int:
    return len(drawing.components) + len(drawing.pipes)

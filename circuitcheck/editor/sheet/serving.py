"""What the pipes of a large drawing carry, worked out beside the window: until it is known a pipe keeps its colour,
and a new one has none."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QObject

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.services import service_names
from circuitcheck.editor.working_out import WorkingOut


class Serving(QObject):
    """Answers for a sheet that does not wait: `served` is called when the content has taken an answer."""

    def __init__(self, content: Content, served: Callable[[], object], parent: QObject) -> None:
        super().__init__(parent)
        self._content, self._served = content, served
        self._out = WorkingOut(service_names, "services", 0, self, gives_up=True)
        self._out.found.connect(self._found)

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._out.is_busy

    def ask(self) -> None:
        """Work out what the pipes carry, where the content waits for that; else for nothing any more."""
        if self._content.layout.waits_for_services:
            self._out.ask(self._content.drawing)
        else:
            self._out.forget()

    def close(self) -> None:
        """Stop: nothing is worked out any more, and the thread has ended when this returns."""
        self._out.close()

    def _found(self, drawing: Drawing, services: Mapping[str, str] | None) -> None:
        # While a gesture lasts it is of no use: its end asks again.
        if drawing is not self._content.drawing:
            return
        # It failed beside the window: here it fails as anything fails in it, and is told as such.
        self._content.take_services(service_names(drawing) if services is None else services)
        self._served()

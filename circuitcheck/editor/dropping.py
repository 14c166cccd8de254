"""Drawings' files dropped on the window from another program."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QMimeData, QObject, QTimer
from PySide6.QtGui import QDragEnterEvent, QDropEvent

from circuitcheck.editor.document import ENDING

if TYPE_CHECKING:
    from circuitcheck.editor.window import MainWindow


class Dropping(QObject):
    """Lets a window take files anywhere: the first is opened in it, each further one in a window of its own."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        window.setAcceptDrops(True)
        window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Take what is dragged in and dropped, where it is drawings and nothing else."""
        if watched is self._window and isinstance(event, QDropEvent):
            paths = dropped_files(event.mimeData())
            if paths and isinstance(event, QDragEnterEvent):
                event.acceptProposedAction()
                return True
            if paths and event.type() is QEvent.Type.Drop:
                event.acceptProposedAction()
                # The drag has to end before a dialog may ask about unsaved changes.
                QTimer.singleShot(0, self, lambda: self._open(paths))
                return True
        return super().eventFilter(watched, event)

    def _open(self, paths: list[Path]) -> None:
        self._window.files.open_path(paths[0])
        for path in paths[1:]:
            self._window.another_wanted.emit(path)


def dropped_files(data: QMimeData) -> list[Path]:
    """The drawings' files that a drag from another program carries; none where anything else is among them."""
    urls = data.urls()
    if not all(url.isLocalFile() and url.toLocalFile().endswith(ENDING) for url in urls):
        return []
    return [Path(url.toLocalFile()) for url in urls]

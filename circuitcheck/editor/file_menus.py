"""The menus that list files: those opened last, and the drawings that ship with the program."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QWidget

from circuitcheck.editor.actions import refill
from circuitcheck.editor.files import Files
from circuitcheck.editor.translating import tr


class FileMenus(QObject):
    """Keeps the recent files up to date and opens what is chosen."""

    def __init__(self, files: Files, window: QWidget) -> None:
        super().__init__(window)
        self._files = files
        self.recent = QMenu(tr("Open &recent"), window)
        self.samples = QMenu(tr("Open a sa&mple"), window)
        self.recent.triggered.connect(self._open_recent)
        self.samples.triggered.connect(self._open_sample)
        # Another window may have opened some meanwhile.
        self.recent.aboutToShow.connect(self._fill_recent)
        files.recent_changed.connect(self._fill_recent)
        refill(self.samples, files.samples(), tr("No samples are installed"))
        self._fill_recent()

    def _fill_recent(self) -> None:
        recent = self._files.recent()
        refill(self.recent, recent, tr("No files yet"))
        if recent:
            self.recent.addSeparator()
            self.recent.addAction(tr("&Clear the list")).triggered.connect(self._files.forget_all_recent)

    def _open_recent(self, action: QAction) -> None:
        if isinstance(path := action.data(), Path):
            self._files.open_path(path)

    def _open_sample(self, action: QAction) -> None:
        if isinstance(path := action.data(), Path):
            self._files.open_sample(path)

"""The menu of the windows that are open: chosen, one comes to the front."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QApplication, QMainWindow, QMenu

from circuitcheck.editor import plain


class WindowMenu(QObject):
    """Is filled whenever it is shown."""

    def __init__(self, window: QMainWindow, menu: QMenu, before: list[QAction]) -> None:
        super().__init__(window)
        self._window, self._before = window, before
        self.menu = menu
        self.menu.aboutToShow.connect(self._fill)
        self.menu.triggered.connect(self._bring)
        self._fill()

    def _fill(self) -> None:
        self.menu.clear()
        self.menu.addActions(self._before)
        self.menu.addSeparator()
        for window in main_windows():
            name = (
                window.windowTitle()
                .replace("[*][*]", "\0")
                .replace("[*]", "*" if window.isWindowModified() else "")
            )
            action = self.menu.addAction(plain.action_text(name.replace("\0", "[*]")))
            action.setData(window)
            action.setCheckable(True)
            action.setChecked(window is self._window)

    def _bring(self, action: QAction) -> None:
        window = action.data()
        if isinstance(window, QMainWindow):
            bring(window)


def main_windows() -> list[QMainWindow]:
    """The open windows with a drawing, by their titles."""
    found = [
        each for each in QApplication.topLevelWidgets() if isinstance(each, QMainWindow) and each.isVisible()
    ]
    return sorted(found, key=lambda window: window.windowTitle())


def bring(window: QMainWindow) -> None:
    """Bring a window to the front, with the keyboard."""
    if window.isMinimized():
        window.showNormal()
    window.raise_()
    window.activateWindow()

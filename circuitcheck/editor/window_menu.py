"""The menu of the windows that are open: chosen, one comes to the front."""

from __future__ import annotations

from weakref import ref

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QApplication, QMainWindow, QMenu

from circuitcheck.editor import plain
from circuitcheck.editor.actions import take_all_out


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
        take_all_out(self.menu)
        self.menu.addActions(self._before)
        self.menu.addSeparator()
        for window in main_windows():
            name = (
                window.windowTitle()
                .replace("[*][*]", "\0")
                .replace("[*]", "*" if window.isWindowModified() else "")
            )
            action = self.menu.addAction(plain.action_text(name.replace("\0", "[*]")))
            # Not the window itself: of one that is closed Qt would keep nothing but where it was.
            action.setData(ref(window))
            action.setCheckable(True)
            action.setChecked(window is self._window)

    def _bring(self, action: QAction) -> None:
        held = action.data()
        window = held() if isinstance(held, ref) else None
        # It may have been closed since the menu was filled, where a command is chosen in another way.
        if isinstance(window, QMainWindow) and window in main_windows():
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

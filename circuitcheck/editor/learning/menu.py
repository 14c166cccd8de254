"""The menu Learn of a window: made by whoever needs it first, filled by each that has something to learn."""

from __future__ import annotations

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMainWindow, QMenu

from circuitcheck.editor.translating import tr

NAME = "learn"


def learn_menu(window: QMainWindow) -> QMenu:
    """The window's menu Learn; made before the last of its menus, which is Help, where it is not there yet."""
    bar = window.menuBar()
    found = bar.findChild(QMenu, NAME)
    if isinstance(found, QMenu):
        return found
    made = QMenu(tr("&Learn"), bar)
    made.setObjectName(NAME)
    entries = bar.actions()
    bar.insertMenu(entries[-1] if entries else QAction(bar), made)
    return made

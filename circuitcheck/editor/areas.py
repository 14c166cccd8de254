"""From one area of the window to the next by one key: Tab alone would first walk through every part of the sheet."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QApplication, QMainWindow, QWidget


class Areas(QObject):
    """Goes along the areas that are shown, in the order in which `areas` lists them, and round."""

    def __init__(
        self,
        window: QMainWindow,
        areas: Callable[[], Sequence[QWidget]],
        following: QAction,
        before: QAction,
    ) -> None:
        super().__init__(window)
        self._areas = areas
        following.triggered.connect(self.go_on)
        before.triggered.connect(self.go_back)

    def go_on(self) -> None:
        """To the next area."""
        self._go(1)

    def go_back(self) -> None:
        """To the area before."""
        self._go(-1)

    def _go(self, by: int) -> None:
        entries = [(each, entry) for each in self._areas() if (entry := entry_of(each)) is not None]
        if not entries:
            return
        now = QApplication.focusWidget()
        here = [place for place, (area, _) in enumerate(entries) if now is not None and _holds(area, now)]
        start = here[0] + by if here else (0 if by > 0 else -1)
        entries[start % len(entries)][1].setFocus(Qt.FocusReason.ShortcutFocusReason)


def entry_of(area: QWidget) -> QWidget | None:
    """Where the keyboard comes into an area: where it was last, else its first control; None where it can not."""
    if not area.isVisible():
        return None
    last: QWidget | None = area.focusWidget()
    if last is not None and _takes_keys(last):
        return last
    if _takes_keys(area):
        return area
    # Not along Qt's focus chain: its binding takes each widget of the chain for the child of the one before, and once
    # one of them goes deletes what follows it, wherever in the window that is. Tab goes as one reads.
    return min(filter(_takes_keys, area.findChildren(QWidget)), key=partial(_read, area), default=None)


def _read(area: QWidget, widget: QWidget) -> tuple[int, int]:
    """When one comes to a widget, reading an area line by line."""
    middle = widget.mapTo(area, widget.rect().center())
    return middle.y(), middle.x()


def _holds(area: QWidget, widget: QWidget) -> bool:
    return area is widget or area.isAncestorOf(widget)


def _takes_keys(widget: QWidget) -> bool:
    by_tab = bool(widget.focusPolicy() & Qt.FocusPolicy.TabFocus)
    return by_tab and widget.isVisible() and widget.isEnabled()

"""What the window remembers from one start to the next: place and size, recent files, how it looks."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QByteArray, QRect, QSettings
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QSplitter, QWidget

MOST_RECENT = 8
LEAST_VISIBLE_PX = 80
FIRST_SIZE = (1440, 900)
_RECENT = "files/recent"
_GEOMETRY = "window/geometry"


def settings() -> QSettings:
    """The user's own settings, as the platform keeps them."""
    return QSettings("circuitcheck", "circuitcheck")


def recent(store: QSettings) -> list[Path]:
    """The files opened or saved last, newest first."""
    found = store.value(_RECENT, [])
    texts = [found] if isinstance(found, str) else found if isinstance(found, list) else []
    return [Path(text) for text in texts if isinstance(text, str) and text]


def add_recent(store: QSettings, path: Path) -> None:
    """Put a file first."""
    whole = path.absolute()
    rest = [each for each in recent(store) if each != whole]
    store.setValue(_RECENT, [str(each) for each in [whole, *rest][:MOST_RECENT]])


def forget_recent(store: QSettings, path: Path) -> None:
    """Take a file off, because it is gone."""
    store.setValue(_RECENT, [str(each) for each in recent(store) if each != path.absolute()])


def forget_all_recent(store: QSettings) -> None:
    """Forget all of them."""
    store.setValue(_RECENT, [])


def save_geometry(store: QSettings, window: QWidget, splitters: dict[str, QSplitter]) -> None:
    """Remember place, size and splitters."""
    store.setValue(_GEOMETRY, window.saveGeometry())
    for name, splitter in splitters.items():
        store.setValue(f"window/{name}", splitter.saveState())


def restore_place(store: QSettings, window: QWidget) -> None:
    """Put the window where it was, or in the middle of a screen where that place is gone."""
    geometry = store.value(_GEOMETRY)
    if not (isinstance(geometry, QByteArray) and window.restoreGeometry(geometry)):
        window.resize(*FIRST_SIZE)
    _bring_on_screen(window)


def restore_splitters(store: QSettings, splitters: dict[str, QSplitter]) -> None:
    """Give the panes the widths they had."""
    for name, splitter in splitters.items():
        state = store.value(f"window/{name}")
        if isinstance(state, QByteArray):
            splitter.restoreState(state)


def _bring_on_screen(window: QWidget) -> None:
    screens = [screen.availableGeometry() for screen in QGuiApplication.screens()]
    if not screens:
        return
    frame = window.frameGeometry()
    wanted = on_screen(frame, screens)
    if wanted != frame:
        window.setGeometry(wanted)


def on_screen(frame: QRect, screens: list[QRect]) -> QRect:
    """The frame where enough of it can be seen to be dragged, else one that fits on the first screen."""
    for screen in screens:
        seen = screen.intersected(frame)
        if (
            seen.width() >= LEAST_VISIBLE_PX
            and seen.height() >= LEAST_VISIBLE_PX
            and frame.top() >= screen.top()
        ):
            return frame
    first = screens[0]
    size = frame.size().boundedTo(first.size())
    fitted = QRect(first.topLeft(), size)
    fitted.moveCenter(first.center())
    return fitted

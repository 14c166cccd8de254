"""What is made once a window has been painted, or before: as soon as the user or a dialog comes to it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QApplication, QWidget

LATEST_MS = 500
"""A window that the screen does not show is never painted, and still comes to be whole."""
_Type = QEvent.Type
FROM_HANDS = frozenset(
    {
        _Type.ShortcutOverride,
        _Type.KeyPress,
        _Type.InputMethod,
        _Type.MouseButtonPress,
        _Type.Wheel,
        _Type.TouchBegin,
        _Type.TabletPress,
        _Type.NativeGesture,
        _Type.DragEnter,
        _Type.WindowBlocked,
        _Type.Close,
    }
)
"""What must find everything there: keys and pointer, a dialog that opens over the window, its being closed.

Qt asks the widget with the keyboard (ShortcutOverride) before it looks which action a key belongs to: an action
made then has the key.
"""


class AfterPainting(QObject):
    """Does something once: after `widget` was next painted, once `wait` was called, and before the first of
    `FROM_HANDS` reaches anything in the program, whenever that is. So nobody ever meets what is only half there.
    """

    def __init__(self, widget: QWidget, do: Callable[[], object]) -> None:
        super().__init__(widget)
        self._widget, self._do = widget, do
        self._then: Callable[[], object] | None = None
        self._waits = self._is_done = False
        self.is_hurried = False
        """Whether a hand or a dialog came first."""
        application = QApplication.instance()
        if application is not None:
            application.installEventFilter(self)

    def wait(self, then: Callable[[], object] | None = None) -> None:
        """Do it after the next painting, and `then`, if any, in the event loop after that; `then` too, where it
        is done."""
        self._then, self._waits = then, True
        if self._is_done:
            self._go_on()
        else:
            self._widget.update()
            QTimer.singleShot(LATEST_MS, self, self.now)

    def now(self) -> None:
        """Do it, if it is not done yet."""
        if self._is_done:
            return
        self._is_done = True
        application = QApplication.instance()
        if application is not None:
            application.removeEventFilter(self)
        self._do()
        if self._waits:
            self._go_on()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Keeps nothing back: an event goes on to what it was for, which by then is there."""
        kind = event.type()
        if kind in FROM_HANDS:
            self.is_hurried = True
            self.now()
        elif kind is _Type.Paint and self._waits and watched is self._widget:
            # What is painted reaches the screen once all of the window is.
            QTimer.singleShot(0, self, self.now)
        return False

    def _go_on(self) -> None:
        if self._then is not None:
            QTimer.singleShot(0, self, self._then)
            self._then = None

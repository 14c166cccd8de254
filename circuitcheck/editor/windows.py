"""The windows that are open: one drawing each, each followed by what keeps its unsaved work."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QPoint, QSettings

from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.window import MainWindow

if TYPE_CHECKING:
    from circuitcheck.editor.opened_twice import OpenedTwice
    from circuitcheck.editor.recovering import Recovering
    from circuitcheck.storage.recovery import Left

STEP = QPoint(28, 28)
"""How far a further window stands from the one before, so that both can be seen."""


class Windows(QObject):
    """Opens windows and holds them until they are closed; nothing else keeps a window alive."""

    def __init__(
        self, settings: QSettings, appearances: Appearances, folder: Path, parent: QObject | None = None
    ) -> None:
        """`folder` is where unsaved work is kept."""
        super().__init__(parent)
        self._settings, self._appearances, self._folder = settings, appearances, folder
        self._open: dict[MainWindow, Recovering | None] = {}
        self._claims: dict[MainWindow, OpenedTwice] = {}

    @property
    def open(self) -> tuple[MainWindow, ...]:
        """The open windows, oldest first."""
        return tuple(self._open)

    def new(self) -> MainWindow:
        """Open a window with an empty drawing."""
        window = self._bare()
        self.begin(window)
        self.furnish(window)
        if len(self._open) > 1:
            window.move(window.pos() + STEP * (len(self._open) - 1))
        window.show()
        return window

    def first(self) -> MainWindow:
        """Open a bare one: `begin` it once it stands on the screen, and `furnish` it once its drawing does."""
        window = self._bare()
        window.show()
        return window

    def begin(self, window: MainWindow, file: Path | None = None) -> None:
        """Put in the sheet with what the file holds, where there is one; else with an empty drawing."""
        # Here and not at the top: the bare window stands on the screen before these are read.
        from circuitcheck.editor.document import Document
        from circuitcheck.editor.opened_twice import FOLDER, OpenedTwice

        # To judge it meanwhile would keep the window's thread from both painting and furnishing.
        window.take(Document(is_judged=False))
        self._claims[window] = OpenedTwice(window, self._folder.parent / FOLDER, lambda: self._open)
        # Before the sheet, so that nothing empty is painted first; what is told of it is told over the bare window.
        if file is not None:
            window.files.read(file)
        if window in self._open:
            window.begin()

    def furnish(self, window: MainWindow) -> None:
        """Put in all the rest; nobody has changed anything in it yet."""
        self._claims[window].follow()
        window.furnish()
        self._follow(window)
        window.document.judge()

    def _bare(self) -> MainWindow:
        window = MainWindow(None, self._settings, self._appearances)
        self._open[window] = None
        window.left.connect(self._left)
        window.another_wanted.connect(self._another)
        return window

    def _follow(self, window: MainWindow) -> None:
        """From now on keep what is unsaved."""
        # Here and not at the top: the first window is painted before this is read.
        from circuitcheck.editor.recovering import Recovering

        recovering = self._open[window] = Recovering(window.document, self._folder, window)
        recovering.failed.connect(window.show_not_kept)

    def offer_recovered(self) -> None:
        """Ask, in the first window, about what an earlier start left behind."""
        from circuitcheck.editor.recovering import offer

        offer(self.open[0], self._folder, self._open_left)

    def keep_all(self) -> list[Path]:
        """The program failed: keep what is unsaved in every window. Returns the files."""
        kept = [recovering.leave() for recovering in self._open.values() if recovering is not None]
        return [file for file in kept if file is not None]

    def close_documents(self) -> None:
        """End what runs beside the windows that are still there; their threads have ended then."""
        for window, recovering in self._open.items():
            self._let_go(window, recovering)
            if window.has_taken:
                window.document.close()
        self._open.clear()

    def _open_left(self, left: Left) -> None:
        from circuitcheck.editor.recovering import recover

        window = next(filter(_is_blank, self._open), None) or self.new()
        recovering = self._open[window]
        if recovering is not None and recover(window, left, window.document, recovering):
            window.files.opened.emit()

    def _another(self, path: object) -> None:
        """A window asks for a further one: the file's if it is open already, else a new one."""
        from circuitcheck.editor.opened_twice import shows
        from circuitcheck.editor.window_menu import bring

        known = [each for each in self._open if isinstance(path, Path) and shows(each, path)]
        if known:
            bring(known[0])
            return
        window = self.new()
        window.activateWindow()
        if isinstance(path, Path):
            window.files.read(path)

    def _left(self) -> None:
        """A window was closed on purpose: its unsaved work was saved or given up."""
        window = self.sender()
        if isinstance(window, MainWindow) and window in self._open:
            self._let_go(window, self._open.pop(window))
            # Its panes hold it as it holds them: only Qt can let go of it all, once its close event is over.
            window.deleteLater()

    def _let_go(self, window: MainWindow, recovering: Recovering | None) -> None:
        """Of a window that is closed: nothing of it is kept, and its file is free."""
        if recovering is not None:
            recovering.close()
        if window in self._claims:
            self._claims.pop(window).close()


def _is_blank(window: MainWindow) -> bool:
    from circuitcheck.drawing.value import Drawing

    return window.document.path is None and window.document.drawing == Drawing()

"""Joins the page to begin with and the tour to the window."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence

from circuitcheck.editor import plain
from circuitcheck.editor.start.offers import Offer, offers
from circuitcheck.editor.start.start_page import StartPage
from circuitcheck.editor.start.tour import Tour
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr

if TYPE_CHECKING:
    from circuitcheck.editor.window import MainWindow


class Starting(QObject):
    """The page is made when it is first shown: a window that opens a file never needs it."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self.page: StartPage | None = None
        self.tour: Tour | None = None
        self.action = self._made(
            tr("New from an &arrangement…"),
            tr("Begin with a sound arrangement, a sample or an empty sheet"),
            self.show_page,
        )
        self.action.setShortcut(QKeySequence("Ctrl+Alt+N"))
        self.tour_action = self._made(
            tr("&Tour: one fault and its cure"), tr("Two minutes on a drawing of its own"), self.begin_tour
        )
        window.files.opened.connect(self._leave)
        window.document.changed.connect(self._leave)

    def _made(self, text: str, hint: str, does: object) -> QAction:
        action = QAction(text, self._window)
        action.setStatusTip(hint)
        plain.set_tip(action, hint)
        action.triggered.connect(does)
        return action

    def show_page(self) -> None:
        """Show the page over the sheet."""
        window = self._window
        if self.page is None:
            self.page = StartPage(window.sheet, list(offers(window.files.samples())), window.theme)
            self.page.begun.connect(self._begin)
            self.page.open_wanted.connect(window.files.open)
            self.page.file_wanted.connect(window.files.open_path)
            self.page.tour_wanted.connect(self.begin_tour)
            self.page.left.connect(window.sheet.setFocus)
        self.page.begin([path for _, path in window.files.recent()])

    def show_if_empty(self) -> None:
        """Show the page where nothing is drawn yet."""
        if self._window.document.drawing.is_empty and self._window.document.path is None:
            self.show_page()

    def begin_tour(self) -> None:
        """Begin the tour."""
        if self.tour is None:
            self.tour = Tour(self._window)
        self.tour.begin()

    def set_theme(self, theme: Theme) -> None:
        """Follow the theme."""
        if self.page is not None:
            self.page.set_theme(theme)

    def close(self) -> None:
        """The window closes."""
        if self.page is not None:
            self.page.close_pictures()

    def _begin(self, offer: Offer) -> None:
        files = self._window.files
        if offer.file is None:
            files.new()
            self._leave()
        elif isinstance(offer.file, Path):
            files.open_sample(offer.file)

    def _leave(self) -> None:
        if self.page is not None and not self.page.isHidden():
            self.page.hide()
            self._window.sheet.setFocus()

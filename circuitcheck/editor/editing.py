"""What hands do with a drawing beyond single gestures: clipboard, aligning, finding, menus under the pointer."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QObject, QPoint
from PySide6.QtGui import QAction, QGuiApplication
from PySide6.QtWidgets import QMainWindow, QMenu, QMessageBox

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import clipboard, plain
from circuitcheck.editor.actions import Actions
from circuitcheck.editor.command_search import CommandSearch
from circuitcheck.editor.document import Document
from circuitcheck.editor.finding_parts import FindingParts
from circuitcheck.editor.panes import Panes
from circuitcheck.editor.sheet import commands
from circuitcheck.editor.status import StatusLine
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import later, of_error, tr, tr_n


class Editing(QObject):
    """Connects the actions of editing to the sheet; what they change goes through the document."""

    def __init__(
        self,
        window: QMainWindow,
        document: Document,
        panes: Panes,
        actions: Actions,
        status: StatusLine,
        theme: Theme,
    ) -> None:
        super().__init__(window)
        self._window, self._document, self._panes = window, document, panes
        self._actions, self._status, self._theme = actions, status, theme
        sheet = panes.sheet
        self.finding = FindingParts(
            sheet, drawing=lambda: document.drawing, theme=lambda: self._theme, hint=status.show_hint
        )
        self.search = CommandSearch(
            window,
            window.menuBar(),
            place=sheet.begin_placing,
            over=sheet.setFocus,
            theme=lambda: self._theme,
        )
        self._connect()
        self.show_selection()

    def set_theme(self, theme: Theme) -> None:
        """Show the boxes' symbols in a theme from now on."""
        self._theme = theme

    def _connect(self) -> None:
        actions, sheet = self._actions, self._panes.sheet
        for action, command in (
            (actions.route, commands.route),
            (actions.duplicate, commands.duplicate),
            (actions.spread_across, partial(commands.spread, across=True)),
            (actions.spread_down, partial(commands.spread, across=False)),
            *((each, partial(commands.align, side=side)) for side, each in actions.align.items()),
        ):
            action.setData(command)
            action.triggered.connect(self._run)
        actions.cut.triggered.connect(self._cut)
        actions.copy.triggered.connect(self._copy)
        actions.paste.triggered.connect(self._paste)
        actions.rename.triggered.connect(self._rename)
        actions.place.triggered.connect(sheet.begin_finding)
        actions.place_again.triggered.connect(sheet.place_again)
        actions.keep_placing.toggled.connect(self._keep_placing)
        actions.pipe.triggered.connect(sheet.begin_pipe)
        actions.find.triggered.connect(self.finding.begin)
        actions.find_next.triggered.connect(partial(self.finding.step, 1))
        actions.find_previous.triggered.connect(partial(self.finding.step, -1))
        actions.search.triggered.connect(self.search.begin)
        sheet.undo_wanted.connect(self._document.undo)
        sheet.menu_wanted.connect(self._show_menu)
        sheet.selection_changed.connect(self.show_selection)
        QGuiApplication.clipboard().dataChanged.connect(self._clipboard_changed)
        self._clipboard_changed()

    def close(self) -> None:
        """Let go of what outlives the window."""
        QGuiApplication.clipboard().dataChanged.disconnect(self._clipboard_changed)

    def show_selection(self) -> None:
        """Enable what can be done to what is selected."""
        ids, pipes = self._panes.sheet.selected_ids(), self._document.drawing.pipes
        chosen_pipes = sum(id in pipes for id in ids)
        self._actions.show_selection(len(ids) - chosen_pipes, chosen_pipes)

    # The clipboard.

    def _clipboard_changed(self) -> None:
        self._actions.paste.setEnabled(clipboard.has_fragment(QGuiApplication.clipboard().mimeData()))

    def _copy(self) -> Drawing | None:
        taken = self._panes.sheet.taken_piece()
        if taken is not None:
            clipboard.put(clipboard.mime_of(taken, self._document.drawing))
            count = len(taken.components) + len(taken.controls)
            parts = tr_n("1 part", "{count} parts", count)
            pipes = tr_n("1 pipe", "{count} pipes", len(taken.pipes))
            self._status.show_hint(tr("Copied: {parts} and {pipes}.", parts=parts, pipes=pipes))
        return taken

    def _cut(self) -> None:
        sheet = self._panes.sheet
        if sheet.is_at_rest and self._copy() is not None:
            sheet.run(partial(commands.remove, verb=later("Cut")))

    def _paste(self) -> None:
        try:
            fragment = clipboard.fragment_on_clipboard()
        except clipboard.PasteError as error:
            plain.message(
                self._window, tr("Nothing was pasted."), tr(of_error(error)), icon=QMessageBox.Icon.Warning
            ).exec()
            return
        if not clipboard.fits(self._document.drawing, fragment):
            self._status.show_hint(tr("With this the drawing would have more parts than a file can hold."))
            return
        self._panes.sheet.paste(fragment)
        self._panes.sheet.setFocus()

    # The rest.

    def _run(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self._panes.sheet.run(action.data())

    def _rename(self) -> None:
        self._panes.details_section.set_folded(False)
        self._panes.details.focus_field("label")

    def _keep_placing(self, keeps: bool) -> None:
        self._panes.sheet.keep_placing = keeps

    def _show_menu(self, at: QPoint) -> None:
        menu = self.menu_for_selection()
        menu.popup(at)

    def menu_for_selection(self) -> QMenu:
        """What can be done here, as a menu that goes when it is closed."""
        actions, sheet = self._actions, self._panes.sheet
        self._clipboard_changed()
        ids = sheet.selected_ids()
        pipes = ids & self._document.drawing.pipes.keys()
        menu = QMenu(self._window)
        menu.aboutToHide.connect(menu.deleteLater)
        if not ids:
            menu.addActions([actions.place, actions.place_again, actions.paste])
            menu.addSeparator()
            menu.addActions([actions.select_all, actions.find, actions.search])
            menu.addSeparator()
            menu.addActions([actions.fit, actions.zoom_reset])
            return menu
        if len(ids) == 1 and pipes:
            cut_in = menu.addAction(tr("Cut a part &in…"))
            cut_in.setStatusTip(tr("Find a part by typing and put it into this pipe"))
            cut_in.triggered.connect(sheet.begin_finding)
            menu.addActions([actions.route])
        elif len(ids) == 1:
            menu.addActions([actions.pipe, actions.rename])
            menu.addSeparator()
            menu.addActions([actions.turn, actions.mirror])
        else:
            menu.addActions([actions.turn, actions.mirror])
            menu.addMenu(actions.align_menu(menu))
        menu.addSeparator()
        menu.addActions([actions.cut, actions.copy, actions.duplicate, actions.delete])
        menu.addSeparator()
        menu.addActions([actions.fit])
        return menu

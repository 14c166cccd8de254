"""The window's actions: their words, keys and hints, and the menus they stand in."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu, QMenuBar, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.appearance import Appearance

Key = QKeySequence.StandardKey | str | None
_Std = QKeySequence.StandardKey


class Actions:
    """Every action of the window, made once; what they do is connected by the window."""

    def __init__(self, owner: QWidget) -> None:
        self._owner = owner
        self.new = self._made("&New", _Std.New, "Begin an empty drawing")
        self.open = self._made("&Open…", _Std.Open, "Open a drawing")
        self.save = self._made("&Save", _Std.Save, "Save the drawing")
        self.save_as = self._made("Save &as…", _Std.SaveAs, "Save the drawing under another name")
        self.quit = self._made("&Quit", _Std.Quit, "Close the window")
        self.quit.setMenuRole(QAction.MenuRole.QuitRole)
        if self.save_as.shortcut().isEmpty():
            # Not every platform has a standard key for it.
            self.save_as.setShortcut(QKeySequence("Ctrl+Shift+S"))
        if self.quit.shortcut().isEmpty():
            self.quit.setShortcut(QKeySequence("Ctrl+Q"))

        self.undo = self._made("&Undo", _Std.Undo, "Take the last step back")
        self.redo = self._made("&Redo", _Std.Redo, "Make the step again")
        self.delete = self._made("&Delete", _Std.Delete, "Delete what is selected; pipes heal")
        self.select_all = self._made("Select &all", _Std.SelectAll, "Select everything")
        self.find = self._made("&Find a part", _Std.Find, "Find a part to place by typing")

        self.zoom_in = self._made("Zoom &in", _Std.ZoomIn, "Larger")
        self.zoom_out = self._made("Zoom &out", _Std.ZoomOut, "Smaller")
        self.zoom_reset = self._made("&100 %", "Ctrl+0", "One square is 16 px")
        self.fit = self._made("&Fit the drawing", "Ctrl+9", "The whole drawing in the window")
        self.next_finding = self._made("&Next finding", "F8", "Choose the next finding")
        self.previous_finding = self._made("&Previous finding", "Shift+F8", "Choose the finding before")
        self.leave_finding = self._made("&Leave the finding", None, "The drawing as it was (Escape)")

        self.turn = self._made("&Turn", "R", "Turn what is selected by a quarter, clockwise")
        self.mirror = self._made("&Mirror", "M", "Mirror what is selected, left to right")
        self.about = self._made("&About circuitcheck", None, "Version, licence and words of care")
        self.about.setMenuRole(QAction.MenuRole.AboutRole)
        self.appearances = self._appearances()

    @property
    def of_the_sheet(self) -> tuple[QAction, ...]:
        """Actions whose key belongs to the sheet alone: elsewhere it types or deletes a letter."""
        return (self.delete, self.select_all, self.turn, self.mirror)

    def give_to_sheet(self, sheet: QWidget) -> None:
        """Let those keys work only where the sheet has the focus."""
        for action in self.of_the_sheet:
            action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            sheet.addAction(action)

    def fill(
        self,
        bar: QMenuBar,
        *,
        recent: QMenu,
        samples: QMenu,
        parts_list: QAction,
        fill_in: QAction,
        counted: QAction,
        figures: QAction,
        flows: QMenu,
        hand_over: Sequence[QAction],
    ) -> None:
        """Put the menus into the menu bar."""
        file = bar.addMenu("&File")
        file.addActions([self.new, self.open])
        file.addMenu(recent)
        file.addMenu(samples)
        file.addSeparator()
        file.addActions([self.save, self.save_as])
        file.addSeparator()
        file.addActions(list(hand_over))
        file.addSeparator()
        file.addAction(self.quit)
        edit = bar.addMenu("&Edit")
        edit.addActions([self.undo, self.redo])
        edit.addSeparator()
        edit.addActions([self.delete, self.select_all])
        edit.addSeparator()
        edit.addActions([self.find, fill_in])
        view = bar.addMenu("&View")
        view.addActions([self.zoom_in, self.zoom_out, self.zoom_reset, self.fit])
        view.addSeparator()
        view.addActions([self.next_finding, self.previous_finding, self.leave_finding])
        view.addSeparator()
        view.addActions([parts_list, counted, figures])
        view.addMenu(flows)
        view.addMenu(self._appearance_menu(bar))
        bar.addMenu("&Arrange").addActions([self.turn, self.mirror])
        bar.addMenu("&Help").addAction(self.about)

    def show_steps(self, undo: str, redo: str) -> None:
        """Name the steps that undo and redo would take."""
        for action, word, step in ((self.undo, "&Undo", undo), (self.redo, "&Redo", redo)):
            action.setEnabled(bool(step))
            name = f"{step[:1].lower()}{step[1:]}" if step else ""
            action.setText(f"{word} {plain.action_text(name)}".rstrip())
            plain.set_tip(action, f"{word.replace('&', '')} {name}".rstrip())

    def _appearances(self) -> dict[Appearance, QAction]:
        group = QActionGroup(self._owner)
        made = {}
        for appearance in Appearance:
            action = self._made(appearance.value, None, "")
            action.setCheckable(True)
            group.addAction(action)
            made[appearance] = action
        return made

    def _appearance_menu(self, bar: QMenuBar) -> QMenu:
        menu = QMenu("&Appearance", bar)
        menu.addActions(list(self.appearances.values()))
        return menu

    def _made(self, text: str, key: Key, hint: str) -> QAction:
        action = QAction(text, self._owner)
        if isinstance(key, str):
            action.setShortcut(QKeySequence(key))
        elif key is not None:
            action.setShortcuts(key)
        action.setStatusTip(hint)
        plain.set_tip(action, hint)
        return action


def refill(menu: QMenu, entries: Iterable[tuple[str, object]], empty: str) -> list[QAction]:
    """Put entries of a text and data into a menu, in place of what it held; `empty` where there is none."""
    menu.clear()
    actions = []
    for text, data in entries:
        action = menu.addAction(plain.action_text(text))
        action.setData(data)
        actions.append(action)
    if not actions:
        menu.addAction(empty).setEnabled(False)
    return actions

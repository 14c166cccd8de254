"""The window's actions: their words, keys and hints, and the menus they stand in."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from circuitcheck.drawing.aligning import Side
from circuitcheck.editor import plain, translating
from circuitcheck.editor.appearance import Appearance
from circuitcheck.editor.language import NAMES, Language
from circuitcheck.editor.menus import Menus
from circuitcheck.editor.translating import later, tr

Key = QKeySequence.StandardKey | str | None
_Std = QKeySequence.StandardKey


ALIGNING = {
    Side.LEFT: (later("Align &left"), later("Left edges in one line")),
    Side.CENTRES: (later("Align in a &column"), later("One above the other, so that ports lie in one line")),
    Side.RIGHT: (later("Align &right"), later("Right edges in one line")),
    Side.TOP: (later("Align &top"), later("Upper edges in one line")),
    Side.MIDDLES: (later("Align in a ro&w"), later("Side by side, so that ports lie in one line")),
    Side.BOTTOM: (later("Align &bottom"), later("Lower edges in one line")),
}


class Actions:
    """Every action of the window, made once; what they do is connected by the window."""

    def __init__(self, owner: QWidget) -> None:
        self._owner = owner
        self.new = self._made(tr("&New"), _Std.New, tr("Begin an empty drawing"))
        self.open = self._made(tr("&Open…"), _Std.Open, tr("Open a drawing"))
        self.save = self._made(tr("&Save"), _Std.Save, tr("Save the drawing"))
        self.save_as = self._made(tr("Save &as…"), _Std.SaveAs, tr("Save the drawing under another name"))
        self.new_window = self._made(
            tr("New &window"), "Ctrl+Shift+N", tr("A window beside this one, with a drawing of its own")
        )
        self.close_window = self._made(tr("&Close the window"), _Std.Close, tr("Close this window"))
        self.quit = self._made(tr("&Quit"), _Std.Quit, tr("Close every window"))
        self.quit.setMenuRole(QAction.MenuRole.QuitRole)
        if self.save_as.shortcut().isEmpty():
            # Not every platform has a standard key for it.
            self.save_as.setShortcut(QKeySequence("Ctrl+Shift+S"))
        if self.quit.shortcut().isEmpty():
            self.quit.setShortcut(QKeySequence("Ctrl+Q"))

        self.undo = self._made(tr("&Undo"), _Std.Undo, tr("Take the last step back"))
        self.redo = self._made(tr("&Redo"), _Std.Redo, tr("Make the step again"))
        self.delete = self._made(tr("&Delete"), _Std.Delete, tr("Delete what is selected; pipes heal"))
        self.select_all = self._made(tr("Select &all"), _Std.SelectAll, tr("Select everything"))
        self.cut = self._made(tr("Cu&t"), _Std.Cut, tr("Take what is selected out, to paste it elsewhere"))
        self.copy = self._made(
            tr("&Copy"), _Std.Copy, tr("Copy what is selected, for a drawing or as a picture")
        )
        self.paste = self._made(
            tr("&Paste"), _Std.Paste, tr("Put in what was copied, where the pointer or the caret is")
        )
        self.duplicate = self._made(
            tr("D&uplicate"), "Ctrl+D", tr("What is selected once more, a little aside")
        )
        self.rename = self._made(tr("Re&name…"), "F2", tr("The label of what is selected, in the details"))
        self.find = self._made(
            tr("&Find in the drawing…"), _Std.Find, tr("A part or pipe by its label, kind or id")
        )
        self.find_next = self._made(tr("Find the ne&xt"), "F3", tr("The next of what was found last"))
        self.find_previous = self._made(
            tr("Find the one &before"), "Shift+F3", tr("Back among what was found last")
        )
        self.search = self._made(tr("Search the co&mmands…"), "Ctrl+K", tr("Any command by its name"))

        self.zoom_in = self._made(tr("Zoom &in"), _Std.ZoomIn, tr("Larger"))
        self.zoom_out = self._made(tr("Zoom &out"), _Std.ZoomOut, tr("Smaller"))
        self.zoom_reset = self._made("&100 %", "Ctrl+0", tr("One square is 16 px"))
        self.fit = self._made(tr("&Fit the drawing"), "Ctrl+9", tr("The whole drawing in the window"))
        self.next_finding = self._made(tr("&Next finding"), "F8", tr("Choose the next finding"))
        self.previous_finding = self._made(
            tr("&Previous finding"), "Shift+F8", tr("Choose the finding before")
        )
        self.next_area = self._made(
            tr("To the next a&rea"),
            "F6",
            tr("The keyboard goes on: sheet, parts, details, findings, what is open"),
        )
        self.previous_area = self._made(
            tr("To the area &before"), "Shift+F6", tr("The keyboard goes back by one area")
        )
        self.leave_finding = self._made(tr("&Leave the finding"), None, tr("The drawing as it was (Escape)"))

        self.place = self._made(
            tr("&Place a part…"), "Ins", tr("Find a part by typing and place it; letters do the same")
        )
        self.shelf = self._made(
            tr("Find on the &shelf"), "Ctrl+Shift+F", tr("Find a part among the parts to the left")
        )
        self.place_again = self._made(
            tr("Place a&gain"), "Ctrl+Return", tr("One more of the kind placed last")
        )
        self.keep_placing = self._made(
            tr("&Keep placing"), None, tr("After each part the next of its kind is in hand")
        )
        self.keep_placing.setCheckable(True)
        self.pipe = self._made(
            tr("&Draw a pipe from here"), "P", tr("From the part that is selected or the caret, by keys")
        )
        self.route = self._made(tr("&Let the program route it"), None, tr("Corners that were set by hand go"))
        self.align = {side: self._made(tr(text), None, tr(hint)) for side, (text, hint) in ALIGNING.items()}
        self.spread_across = self._made(tr("Spread a&cross"), None, tr("Alike gaps from left to right"))
        self.spread_down = self._made(tr("Spread d&own"), None, tr("Alike gaps from top to bottom"))
        self.turn = self._made(tr("&Turn"), "R", tr("Turn what is selected by a quarter, clockwise"))
        self.mirror = self._made(tr("&Mirror"), "M", tr("Mirror what is selected, left to right"))
        self.about = self._made(tr("&About circuitcheck"), None, tr("Version, licence and words of care"))
        self.about.setMenuRole(QAction.MenuRole.AboutRole)
        self.noted = self._made(
            tr("&Report of a failure…"),
            None,
            tr("What the program has noted of its own failures, to hand on by hand"),
        )
        self.appearances = self._appearances()
        self.languages = self._languages()

    @property
    def of_the_sheet(self) -> tuple[QAction, ...]:
        """Actions whose key belongs to the sheet alone: elsewhere it types or deletes a letter."""
        return (
            self.delete,
            self.select_all,
            self.turn,
            self.mirror,
            self.cut,
            self.copy,
            self.paste,
            self.duplicate,
            self.pipe,
            self.place_again,
        )

    def give_to_sheet(self, sheet: QWidget) -> None:
        """Let those keys work only where the sheet has the focus."""
        for action in self.of_the_sheet:
            action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            sheet.addAction(action)

    def fill(
        self,
        menus: Menus,
        *,
        recent: QMenu,
        samples: QMenu,
        outline: QAction,
        fill_in: QAction,
        counted: QAction,
        figures: QAction,
        flows: QMenu,
        operate: QAction,
        start: QAction,
        tour: QAction,
        hand_over: Sequence[QAction],
    ) -> None:
        """Put everything into the menus."""
        file, edit, view, arrange = menus.file, menus.edit, menus.view, menus.arrange
        file.addActions([self.new, start, self.new_window, self.open])
        file.addMenu(recent)
        file.addMenu(samples)
        file.addSeparator()
        file.addActions([self.save, self.save_as])
        file.addSeparator()
        file.addActions(list(hand_over))
        file.addSeparator()
        file.addActions([self.close_window, self.quit])
        edit.addActions([self.undo, self.redo])
        edit.addSeparator()
        edit.addActions([self.cut, self.copy, self.paste, self.duplicate, self.delete])
        edit.addSeparator()
        edit.addActions([self.select_all, self.rename])
        edit.addSeparator()
        edit.addActions([self.find, self.find_next, self.find_previous, self.search, fill_in])
        view.addActions([self.zoom_in, self.zoom_out, self.zoom_reset, self.fit])
        view.addSeparator()
        view.addActions([self.next_finding, self.previous_finding, self.leave_finding])
        view.addSeparator()
        view.addActions([self.next_area, self.previous_area])
        view.addSeparator()
        view.addActions([outline, counted, figures])
        view.addMenu(flows)
        view.addAction(operate)
        view.addMenu(self._appearance_menu(view))
        view.addMenu(self._language_menu(view))
        arrange.addActions([self.place, self.place_again, self.keep_placing, self.shelf, self.pipe])
        arrange.addSeparator()
        arrange.addActions([self.turn, self.mirror, self.route])
        arrange.addMenu(self.align_menu(arrange))
        menus.help.addActions([tour, self.noted, self.about])

    def show_steps(self, undo: str, redo: str) -> None:
        """Name the steps that undo and redo would take."""
        for action, alone, step, named in (
            (self.undo, tr("&Undo"), undo, tr("&Undo {step}")),
            (self.redo, tr("&Redo"), redo, tr("&Redo {step}")),
        ):
            action.setEnabled(bool(step))
            name = translating.lower(tr(step)) if step else ""
            text = named.format(step=plain.action_text(name)) if name else alone
            action.setText(text)
            plain.set_tip(action, text.replace("&&", "\0").replace("&", "").replace("\0", "&"))

    def align_menu(self, parent: QWidget) -> QMenu:
        """Aligning and spreading, as a menu of its own."""
        menu = QMenu(tr("&Align and spread"), parent)
        sides = list(self.align.values())
        menu.addActions(sides[:3])
        menu.addSeparator()
        menu.addActions(sides[3:])
        menu.addSeparator()
        menu.addActions([self.spread_across, self.spread_down])
        return menu

    def show_selection(self, parts: int, pipes: int) -> None:
        """Enable what can be done to so many parts and pipes."""
        anything = bool(parts or pipes)
        for action in (self.cut, self.copy, self.duplicate, self.delete):
            action.setEnabled(anything)
        for action in (self.turn, self.mirror):
            # In hand there may be a part all the same: R and M reach it by the sheet's own keys.
            action.setEnabled(anything)
        self.rename.setEnabled(parts == 1 and not pipes)
        self.route.setEnabled(bool(pipes))
        for action in self.align.values():
            action.setEnabled(parts > 1)
        for action in (self.spread_across, self.spread_down):
            action.setEnabled(parts > 2)

    def _appearances(self) -> dict[Appearance, QAction]:
        group = QActionGroup(self._owner)
        made = {}
        for appearance in Appearance:
            action = self._made(tr(appearance.value), None, tr("The colours of the window and the sheet"))
            action.setCheckable(True)
            group.addAction(action)
            made[appearance] = action
        return made

    def _appearance_menu(self, parent: QWidget) -> QMenu:
        menu = QMenu(tr("&Appearance"), parent)
        menu.addActions(list(self.appearances.values()))
        return menu

    def _language_menu(self, parent: QWidget) -> QMenu:
        menu = QMenu(tr("&Language"), parent)
        menu.addActions(list(self.languages.values()))
        return menu

    def _languages(self) -> dict[Language, QAction]:
        group = QActionGroup(self._owner)
        made = {}
        for language, name in NAMES.items():
            text = tr(name) if language is Language.SYSTEM else name
            action = self._made(text, None, tr("The language of the window, from the next start on"))
            action.setCheckable(True)
            group.addAction(action)
            made[language] = action
        return made

    def _made(self, text: str, key: Key, hint: str) -> QAction:
        action = QAction(text, self._owner)
        if isinstance(key, str):
            action.setShortcut(QKeySequence(key))
        elif key is not None:
            action.setShortcuts(key)
        action.setStatusTip(hint)
        plain.set_tip(action, hint)
        return action


def take_all_out(menu: QMenu) -> None:
    """Leave a menu empty. What was made for it goes when the events are through, and not at once as with
    `QMenu.clear`: one of them may be the very action that is being chosen."""
    for action in menu.actions():
        menu.removeAction(action)
        if action.parent() is menu:
            action.deleteLater()


def refill(menu: QMenu, entries: Iterable[tuple[str, object]], empty: str) -> list[QAction]:
    """Put entries of a text and data into a menu, in place of what it held; `empty` where there is none."""
    take_all_out(menu)
    actions = []
    for text, data in entries:
        action = menu.addAction(plain.action_text(text))
        action.setData(data)
        actions.append(action)
    if not actions:
        menu.addAction(empty).setEnabled(False)
    return actions

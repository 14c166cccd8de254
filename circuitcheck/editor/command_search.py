"""Searching the commands: every action of the menus by its words, and every part to place."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from PySide6.QtCore import QObject, QPoint
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QMenuBar, QWidget
from shiboken6 import isValid

from circuitcheck.editor.find_box import WIDE_PX, FindBox, Match
from circuitcheck.editor.icons import kind_icon
from circuitcheck.editor.part_search import found_by
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.kind import Kind
from circuitcheck.told import lower

MOST_FOUND = 60


@dataclass(frozen=True, eq=False)
class Command:
    """An action, and the menus it stands in."""

    action: QAction
    menus: tuple[str, ...]

    @property
    def is_there(self) -> bool:
        """Whether the action still exists: a menu that lists files or windows makes others whenever it is filled."""
        return isValid(self.action)

    @property
    def words(self) -> str:
        """What it is called, without the mark of its mnemonic or an ellipsis."""
        return plain_words(self.action.text())

    @property
    def beside(self) -> str:
        """Its key, else the menu it is in."""
        key = self.action.shortcut().toString(self.action.shortcut().SequenceFormat.NativeText)
        return key or self.menus[-1]


class CommandSearch(QObject):
    """The box; runs what is chosen. `place` takes a kind in hand, `over` gives the keyboard back."""

    def __init__(
        self,
        window: QWidget,
        bar: QMenuBar,
        *,
        place: Callable[[Kind], None],
        over: Callable[[], None],
        theme: Callable[[], Theme],
    ) -> None:
        super().__init__(window)
        self._window, self._bar = window, bar
        self._place, self._over, self._theme = place, over, theme
        self.commands: list[Command] = []
        self.box = FindBox(window, tr("Search the commands"), tr("No command is called that."))
        self.box.typed.connect(self._find)
        self.box.chosen.connect(self._run)
        self.box.left.connect(self._leave)

    def begin(self) -> None:
        """Open in the upper middle of the window."""
        self.commands = self._all()
        wide = self._window.width()
        self.box.begin("", QPoint((wide - WIDE_PX) // 2, 84))

    def _all(self) -> list[Command]:
        """Every action of the menus that does something by itself, the menus as they are when shown."""
        found: list[Command] = []
        for entry in self._bar.actions():
            menu = entry.menu()
            if isinstance(menu, QMenu):
                found += _commands_of(menu, (plain_words(entry.text()),))
        return found

    def _find(self, typed: str) -> None:
        if self.box.isHidden():
            return
        words = typed.casefold().split()
        if not all(command.is_there for command in self.commands):
            self.commands = self._all()
        rated = [(rate, command) for command in self.commands if (rate := _rate(command, words)) is not None]
        rated.sort(key=lambda each: (not each[1].action.isEnabled(), each[0]))
        matches = [
            Match(command.words, command, command.beside, can_be_chosen=command.action.isEnabled())
            for _, command in rated
        ]
        if words:
            theme = self._theme()
            matches += [
                Match(
                    tr("Place {part}", part=lower(kinds()[name].title)),
                    kinds()[name],
                    "part",
                    kind_icon(name, theme),
                )
                for name in found_by(typed.casefold().removeprefix("place "))
            ]
        # What cannot be done now comes last, after the parts.
        matches.sort(key=lambda match: not match.can_be_chosen)
        self.box.show_matches(matches[:MOST_FOUND])

    def _run(self, chosen: object, _keys: object) -> None:
        self._close()
        if isinstance(chosen, Command):
            if chosen.is_there:
                chosen.action.trigger()
        elif isinstance(chosen, Kind):
            self._place(chosen)

    def _leave(self) -> None:
        if not self.box.isHidden():
            self._close()

    def _close(self) -> None:
        had_keyboard = self.box.edit.hasFocus()
        self.box.end()
        if had_keyboard:
            self._over()


def plain_words(text: str) -> str:
    """An action's text as it is read: `&Save as…` is `Save as`."""
    return text.replace("&&", "\0").replace("&", "").replace("\0", "&").rstrip("…")


def _commands_of(menu: QMenu, path: tuple[str, ...]) -> Iterator[Command]:
    menu.aboutToShow.emit()
    for action in menu.actions():
        below = action.menu()
        if isinstance(below, QMenu):
            yield from _commands_of(below, (*path, plain_words(action.text())))
        elif not action.isSeparator() and action.isVisible() and action.text():
            yield Command(action, path)


def _rate(command: Command, words: list[str]) -> int | None:
    """How well a command fits, 0 the best; None where it does not."""
    text = command.words.casefold()
    if text.startswith(" ".join(words)):
        return 0
    if all(any(part.startswith(word) for part in text.split()) for word in words):
        return 1
    if all(word in text for word in words):
        return 2
    told = " ".join((text, *command.menus, command.action.statusTip())).casefold()
    return 3 if all(word in told for word in words) else None

"""Finding what is drawn: parts, controls and pipes by label, kind or id, shown on the sheet as one types."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, QPoint

from circuitcheck.drawing.value import Component, Control, Drawing
from circuitcheck.editor.find_box import FindBox, Match
from circuitcheck.editor.icons import kind_icon
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import shown_told, tr
from circuitcheck.report.wording import upper
from circuitcheck.sheet.depiction import one_line
from circuitcheck.told import lower

MOST_FOUND = 200


class FindingParts(QObject):
    """The box over the sheet; Enter stays with what was found, Escape goes back to where one was."""

    def __init__(
        self,
        sheet: SheetView,
        *,
        drawing: Callable[[], Drawing],
        theme: Callable[[], Theme],
        hint: Callable[[str], None],
    ) -> None:
        super().__init__(sheet)
        self._sheet, self._drawing, self._theme, self._hint = sheet, drawing, theme, hint
        self._before: frozenset[str] = frozenset()
        self._typed = ""
        self._last: str | None = None
        self.box = FindBox(sheet.viewport(), tr("Find in the drawing"), tr("Nothing here is called that."))
        self.box.typed.connect(self._find)
        self.box.moved.connect(self._show)
        self.box.chosen.connect(self._stay)
        self.box.left.connect(self._leave)

    def begin(self) -> None:
        """Open, with what was looked for last to be typed over."""
        self._before = self._sheet.selected_ids()
        self.box.begin(self._typed, QPoint(self._sheet.viewport().width(), 8))
        self.box.edit.selectAll()

    def step(self, by: int) -> None:
        """On to the next of what was found last, or back; round from the last to the first."""
        found = found_in(self._drawing(), self._typed) if self._typed.strip() else []
        if not found:
            self.begin()
            return
        index = found.index(self._last) + by if self._last in found else (0 if by > 0 else -1)
        self._last = found[index % len(found)]
        self._show(self._last)
        self._hint(
            tr(
                "{index} of {count} called “{typed}”.  F3 next, Shift F3 back.",
                index=index % len(found) + 1,
                count=len(found),
                typed=one_line(self._typed),
            )
        )

    def _find(self, typed: str) -> None:
        if self.box.isHidden():
            return
        self._typed = typed
        drawing, theme = self._drawing(), self._theme()
        matches = []
        for id in found_in(drawing, typed)[:MOST_FOUND] if typed.strip() else []:
            thing = drawing.components.get(id) or drawing.controls.get(id)
            icon = None if thing is None else kind_icon(thing.kind.name, theme)
            beside = "" if thing is None or not thing.label else tr(lower(thing.kind.title))
            matches.append(Match(one_line(shown_told(upper(drawing.name(id)))), id, beside, icon))
        self.box.show_matches(matches)

    def _show(self, id: object) -> None:
        if isinstance(id, str):
            self._last = id
            self._sheet.select((id,))
            self._sheet.bring_into_view((id,))

    def _stay(self, id: object, _keys: object) -> None:
        self._show(id)
        self.box.end()
        self._sheet.setFocus()

    def _leave(self) -> None:
        if self.box.isHidden():
            return
        was_here = self.box.edit.hasFocus()
        self.box.end()
        if was_here:
            self._sheet.select(self._before)
            self._sheet.setFocus()


def found_in(drawing: Drawing, typed: str) -> list[str]:
    """The ids of what is called so: names that begin so first, then those that hold all the words."""
    words = typed.casefold().split()
    text = " ".join(words)
    rated = []
    for order, (id, called) in enumerate(_names(drawing)):
        if all(word in called for word in words):
            begins = called.startswith(text)
            starts = all(any(part.startswith(word) for part in called.split()) for word in words)
            rated.append((not begins, not starts, order, id))
    return [id for *_, id in sorted(rated)]


def _names(drawing: Drawing) -> list[tuple[str, str]]:
    drawn: list[Component | Control] = [*drawing.components.values(), *drawing.controls.values()]
    things = [
        (thing.id, f"{thing.label} {tr(thing.kind.title)} {thing.id}".strip().casefold()) for thing in drawn
    ]
    return [*things, *((id, tr("pipe {id}", id=id).casefold()) for id in drawing.pipes)]

"""A figure opened in place: its results, how they are worked, from what, and what they rest on."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QToolButton, QVBoxLayout, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.figures import words
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.side_by_side import in_line
from circuitcheck.editor.translating import shown_told, tr
from circuitcheck.figures.figure import Figure, Input
from circuitcheck.finding import Finding
from circuitcheck.report.wording import upper

MOST_LINES = 14
"""Of a longer list so many lines are shown at first; the rest when asked for."""

LONG_VALUE = 18
"""A value of more letters than this, such as a list of sizes, is wrapped."""


class FigureCard(QFrame):
    """Signals `left` when it is closed, `part_wanted` for a part, `field_wanted` for a number where it
    lives, `figure_wanted` for another figure by its name, `finding_wanted` for a finding with its cures,
    `copy_wanted`, and `resized`."""

    left = Signal()
    part_wanted = Signal(str)
    field_wanted = Signal(str, str)
    figure_wanted = Signal(str)
    finding_wanted = Signal(object)
    copy_wanted = Signal()
    resized = Signal()

    def __init__(
        self,
        drawing: Drawing,
        figure: Figure,
        titles: Mapping[str, str],
        decimal: str = ".",
        found: Sequence[Finding] = (),
    ) -> None:
        super().__init__()
        self.setObjectName("card")
        self.setAccessibleName(words.spoken(drawing, figure, decimal))
        self._drawing, self._titles, self._decimal = drawing, titles, decimal
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(12, 10, 16, 14)
        self._column.setSpacing(4)
        self._head(figure)
        self._subjects(figure)
        self._found(found)
        self._refused(figure)
        self._results(figure)
        if figure.formula:
            self._heading(tr("How it is worked"))
            for line in tr(figure.formula).splitlines():
                self._text(line)
        self._inputs(figure)
        self._rests(figure)
        for heading, text in ((tr("Holds"), tr(figure.limits)), (tr("Source"), tr(figure.source))):
            if text:
                self._heading(heading)
                self._text(text, "second")

    def _head(self, figure: Figure) -> None:
        copy = self._button(tr("Copy"), tr("Copy this figure with its working as text (Ctrl+C)"))
        copy.setAccessibleName(tr("Copy: {title}", title=tr(figure.title)))
        copy.setProperty("link", True)
        copy.clicked.connect(self.copy_wanted)
        close = self._button("×", tr("Fold this figure (Escape)"))
        close.setAccessibleName(tr("Fold this figure"))
        close.setFixedSize(32, 32)
        close.clicked.connect(self.left)
        line = QHBoxLayout()
        line.setSpacing(4)
        title = plain.label(tr(figure.title), "finding", wrap=True)
        title.setContentsMargins(0, 4, 0, 0)
        line.addWidget(title, 1)
        line.addWidget(copy, 0, Qt.AlignmentFlag.AlignTop)
        line.addWidget(close, 0, Qt.AlignmentFlag.AlignTop)
        nest(self._column, line)

    def _subjects(self, figure: Figure) -> None:
        """What it is about, each to be shown on the sheet."""
        known = [id for id in figure.subject if self._is_there(id)]
        if not known:
            self._column.addWidget(plain.label(tr("The whole drawing"), "second"))
            return
        lines: list[list[QWidget]] = []
        for id in known:
            link = plain.link(shown_told(upper(self._drawing.name(id))), self._wants_part(id))
            plain.set_tip(link, tr("Show it on the sheet"))
            lines.append([link])
        self._listed(lines)

    def _is_there(self, id: str) -> bool:
        drawing = self._drawing
        return id in drawing.components or id in drawing.pipes or id in drawing.controls

    def _found(self, found: Sequence[Finding]) -> None:
        """What is not as this figure says it must be; the finding offers the cures, the next size made."""
        if not found:
            return
        self._heading(tr("Not kept to"))
        for each in found:
            self._text(tr(each.says.told))
            link = plain.link(tr("What puts it right"), self._wants_finding(each))
            link.setAccessibleDescription(tr(each.says.told))
            self._put(link)

    def _refused(self, figure: Figure) -> None:
        if not figure.refused:
            return
        self._text(words.why_not(figure))
        if not figure.missing:
            return
        self._heading(tr("Missing"))
        lines: list[list[QWidget]] = []
        for said, (id, field) in words.missing_places(self._drawing, figure):
            lines.append([plain.link(said, self._wants_field(id, field))])
        self._listed(lines)

    def _results(self, figure: Figure) -> None:
        self._column.addSpacing(4)
        for row, each in enumerate(figure.results):
            if row:
                self._column.addWidget(self._rule())
            value = self._selectable(words.result(each, self._decimal), "strong")
            value.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop)
            value.setAccessibleName(f"{tr(each.name)}: {value.text()}")
            value.setWordWrap(len(value.text()) > LONG_VALUE)
            name = plain.label(tr(upper(each.name)), "second", wrap=True)
            self._column.addWidget(in_line(name, value, gap=10))

    def _inputs(self, figure: Figure) -> None:
        if not figure.inputs:
            return
        self._heading(tr("From"))
        self._listed([self._input(each) for each in figure.inputs])

    def _input(self, each: Input) -> list[QWidget]:
        """A number that went in: symbol, name and value on a line, where it came from below."""
        top = QWidget()
        line = QHBoxLayout(top)
        line.setContentsMargins(0, 4, 0, 0)
        line.setSpacing(10)
        symbol = plain.label(shown_told(each.symbol), "strong")
        symbol.setMinimumWidth(36)
        line.addWidget(symbol, 0, Qt.AlignmentFlag.AlignTop)
        name = plain.label(tr(upper(each.name)), wrap=True)
        value = self._selectable(words.result(each, self._decimal), "body")
        value.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignTop)
        value.setAccessibleName(f"{shown_told(each.symbol)}, {tr(each.name)}: {value.text()}")
        value.setWordWrap(len(value.text()) > LONG_VALUE)
        line.addWidget(in_line(name, value, gap=10), 1)
        found = words.origin(self._drawing, each.origin)
        return [top, self._origin(found)]

    def _origin(self, found: words.Origin) -> QWidget:
        """Where a number came from; with a link to where it can be changed."""
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(46, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(plain.label(found.words, "second", wrap=True))
        if found.field is not None:
            link = plain.link(words.field_words(self._drawing, found.field), self._wants_field(*found.field))
            plain.set_tip(link, tr("Change it where it lives"))
            column.addWidget(link, 0, Qt.AlignmentFlag.AlignLeft)
        elif found.figure:
            title = self._titles.get(found.figure, found.figure.replace("-", " "))
            link = plain.link(title, lambda: self.figure_wanted.emit(found.figure))
            plain.set_tip(link, tr("Open that figure"))
            link.setEnabled(found.figure in self._titles)
            column.addWidget(link, 0, Qt.AlignmentFlag.AlignLeft)
        return made

    def _rests(self, figure: Figure) -> None:
        if not figure.moves:
            return
        self._heading(tr("Rests on usual values"))
        lines: list[list[QWidget]] = []
        for each in words.rests(self._drawing, figure.moves, self._decimal):
            line: list[QWidget] = [plain.label(each.words, "second", wrap=True)]
            if each.field is not None:
                said = words.field_words(self._drawing, each.field)
                line.append(plain.link(said, self._wants_field(*each.field)))
            lines.append(line)
        self._listed(lines)

    def _listed(self, lines: list[list[QWidget]]) -> None:
        """Lines below one another; of many the first ones, and a button for the rest."""
        for widget in (each for line in lines[:MOST_LINES] for each in line):
            self._put(widget)
        rest = [each for line in lines[MOST_LINES:] for each in line]
        if not rest:
            return
        more = QToolButton()
        more.setProperty("link", True)
        more.setText(tr("Show {count} more", count=len(lines) - MOST_LINES))
        self._column.addWidget(more, 0, Qt.AlignmentFlag.AlignLeft)
        for widget in rest:
            self._put(widget)
            widget.hide()
        more.clicked.connect(lambda: self._show_rest(more, rest))

    def _put(self, widget: QWidget) -> None:
        """A link is as wide as its words, anything else as the card."""
        if isinstance(widget, QToolButton):
            self._column.addWidget(widget, 0, Qt.AlignmentFlag.AlignLeft)
        else:
            self._column.addWidget(widget)

    def _show_rest(self, more: QToolButton, rest: list[QWidget]) -> None:
        for widget in rest:
            widget.show()
        # The keyboard goes on with what has come, not with what has gone.
        rest[0].setFocus(Qt.FocusReason.OtherFocusReason)
        more.hide()
        self.resized.emit()

    def _heading(self, text: str) -> None:
        self._column.addSpacing(6)
        made = plain.label(text, "grade", wrap=True)
        made.setProperty("role", "second")
        self._column.addWidget(made)

    def _text(self, text: str, role: str = "body") -> None:
        made = self._selectable(text, role)
        made.setWordWrap(True)
        self._column.addWidget(made)

    def _selectable(self, text: str, role: str) -> QLabel:
        made = plain.label(text, role, selectable=True)
        # Reached by the mouse alone: the tab key goes from one thing to do to the next.
        made.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        return made

    def _rule(self) -> QFrame:
        made = QFrame()
        made.setObjectName("rule")
        made.setFixedHeight(1)
        return made

    def _button(self, text: str, hint: str) -> QToolButton:
        made = QToolButton()
        made.setText(text)
        made.setMinimumHeight(32)
        plain.set_tip(made, hint)
        return made

    def _wants_part(self, id: str) -> Callable[[], None]:
        return lambda: self.part_wanted.emit(id)

    def _wants_finding(self, finding: Finding) -> Callable[[], None]:
        return lambda: self.finding_wanted.emit(finding)

    def _wants_field(self, id: str, field: str) -> Callable[[], None]:
        return lambda: self.field_wanted.emit(id, field)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """A press on the card is its own and not the list's."""
        event.accept()

"""The bar below the menus: undo and redo, the drawing's name, and how many findings there are."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QFrame, QHBoxLayout, QToolButton, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.icons import ARROW_PX, GRADE_PX, arrow_icon, grade_icon
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import later, tr
from circuitcheck.finding import Grade
from circuitcheck.report.grades import GRADE_MEANS, counts
from circuitcheck.report.wording import short

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis

BAR_PX = 48
MOST_LETTERS = 72
UNTITLED = later("Untitled drawing")


class Bar(QWidget):
    """Signals `grade_wanted` when a count is pressed."""

    grade_wanted = Signal(object)

    def __init__(self, undo: QAction, redo: QAction) -> None:
        super().__init__()
        self.setObjectName("bar")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFixedHeight(BAR_PX)
        self._actions = (undo, redo)
        line = QHBoxLayout(self)
        line.setContentsMargins(12, 0, 16, 0)
        line.setSpacing(4)
        for action in self._actions:
            line.addWidget(self._button(action))
        rule = QFrame()
        rule.setObjectName("rule")
        rule.setFixedSize(1, 28)
        line.addSpacing(6)
        line.addWidget(rule)
        line.addSpacing(12)
        self._name = plain.label(tr(UNTITLED), "name", elided=True)
        self._state = plain.label("", "second")
        line.addWidget(self._name)
        line.addSpacing(6)
        line.addWidget(self._state)
        line.addStretch(1)
        self._counts = {grade: self._count(grade) for grade in Grade}
        for button in self._counts.values():
            line.addWidget(button)
        self._mark = plain.label()
        self._sentence = plain.label("", "strong")
        line.addWidget(self._mark)
        line.addSpacing(4)
        line.addWidget(self._sentence)
        self.show_busy(empty=True)

    def show_name(self, title: str, state: str) -> None:
        """The drawing's name, and whether it is saved."""
        self._name.setText(short(title, MOST_LETTERS) or tr(UNTITLED))
        self._state.setText(state)

    def show_busy(self, *, empty: bool = False) -> None:
        """No answer yet: neither counts nor an all-clear; an empty drawing needs none."""
        self._show_sentence(tr("Nothing drawn") if empty else tr("Judging…"), sound=False)

    def show_analysis(self, analysis: Analysis) -> None:
        """One count for each grade, or a sentence where nothing was found."""
        if analysis.findings:
            self._show_counts(counts(analysis))
        elif analysis.drawing.is_empty:
            self._show_sentence(tr("Nothing drawn"), sound=False)
        elif not analysis.judged:
            self._show_sentence(tr("Nothing judged"), sound=False)
        else:
            self._show_sentence(tr("Nothing found"), sound=True)

    def set_theme(self, theme: Theme) -> None:
        """Paint arrows and marks anew."""
        for action, back in zip(self._actions, (True, False), strict=True):
            action.setIcon(arrow_icon(theme, back=back))
        for grade, button in self._counts.items():
            button.setIcon(grade_icon(grade, theme))
        self._mark.setPixmap(grade_icon(None, theme).pixmap(QSize(GRADE_PX, GRADE_PX)))

    def summary(self) -> str:
        """What the bar says of the findings, as it is read out."""
        if self._sentence.isVisibleTo(self):
            return self._sentence.text()
        return ", ".join(button.accessibleName() for button in self._counts.values())

    def _show_counts(self, found: dict[Grade, int]) -> None:
        self._mark.hide()
        self._sentence.hide()
        for grade, button in self._counts.items():
            number = found[grade]
            button.setText(f" {number}")
            button.setEnabled(bool(number))
            button.setAccessibleName(f"{number} {tr(grade.value)}")
            plain.set_tip(button, f"{number} {tr(grade.value)}: {tr(GRADE_MEANS[grade])}")
            button.show()

    def _show_sentence(self, text: str, *, sound: bool) -> None:
        for button in self._counts.values():
            button.hide()
        self._mark.setVisible(sound)
        self._sentence.setText(text)
        self._sentence.show()

    def _button(self, action: QAction) -> QToolButton:
        button = QToolButton()
        button.setDefaultAction(action)
        button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonIconOnly)
        button.setIconSize(QSize(ARROW_PX, ARROW_PX))
        button.setFixedSize(34, 34)
        return button

    def _count(self, grade: Grade) -> QToolButton:
        button = QToolButton()
        button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        button.setIconSize(QSize(GRADE_PX, GRADE_PX))
        button.setMinimumHeight(32)
        button.clicked.connect(lambda: self.grade_wanted.emit(grade))
        return button

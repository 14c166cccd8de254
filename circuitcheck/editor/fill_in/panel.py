"""The panel to fill in: what to show, the table, and a line that says what a row is and why it is asked."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QGuiApplication, QHideEvent, QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QMenu, QPushButton, QVBoxLayout, QWidget

from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.fill_in import entering, pasting
from circuitcheck.editor.fill_in.asked import Shown
from circuitcheck.editor.fill_in.entries import kept_words
from circuitcheck.editor.fill_in.model import AskModel
from circuitcheck.editor.fill_in.table import AskTable
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.panels.edged import ArrowedComboBox
from circuitcheck.editor.panels.subjects import Left
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import decimal_sign, later, of_error, tr
from circuitcheck.parts.kind import FieldType
from circuitcheck.report.asking import Question
from circuitcheck.report.wording import value_words

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.figures.figure import Figure

NOTHING = {
    Shown.OPEN: later("Every number is known."),
    Shown.NEEDED: later("No check and no figure waits for a number."),
    Shown.USUAL: later("No verdict rests on a usual value."),
    Shown.ALL: later("Nothing is drawn."),
}
KEYS = later(
    "Enter answers and goes on, Shift+Enter goes back, ? says not known, Ctrl+V pastes a column or a table."
)


class FillInPanel(QWidget):
    """Signals `edited` with a step's name and the drawing after it, `chosen` with the ids of the current
    row, `field_wanted` with an id and a field that is filled in elsewhere, `figures_wanted` when it comes
    into view and `figures_unwanted` when it goes."""

    edited = Signal(object, object)
    chosen = Signal(object)
    field_wanted = Signal(str, str)
    figures_wanted = Signal()
    figures_unwanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._pending: tuple[Drawing, Analysis | None] = (Drawing(), None)
        self._is_another = True
        self._is_ordered = False
        self._is_untouched = False
        self.model = AskModel()
        self.table = AskTable(self.model)
        self.find_box = QLineEdit()
        self.find_box.setPlaceholderText(tr("Find"))
        self.find_box.setAccessibleName(tr("Find in what is to be filled in"))
        self.find_box.setClearButtonEnabled(True)
        self.choice = ArrowedComboBox()
        self.choice.setAccessibleName(tr("What to show"))
        for shown in Shown:
            self.choice.addItem(tr(shown.value), shown)
        self.again = QPushButton(tr("Put in order"))
        plain.set_tip(self.again, tr("Take away what is filled in and ask for the most needed first (F5)"))
        self._about = plain.label("", "second", wrap=True)
        self._about.setAccessibleName(tr("What the row is, and what needs it"))
        self._fault = plain.label("", "fault", wrap=True)
        self._fault.setAccessibleName(tr("Why it was refused"))
        self._fault.hide()
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        line = QHBoxLayout()
        line.setSpacing(8)
        self.choice.setSizeAdjustPolicy(ArrowedComboBox.SizeAdjustPolicy.AdjustToContents)
        line.addWidget(self.choice)
        line.addWidget(self.find_box, 1)
        line.addWidget(self.again)
        foot = QVBoxLayout()
        foot.setContentsMargins(4, 0, 4, 0)
        foot.setSpacing(2)
        foot.addWidget(self._fault)
        foot.addWidget(self._about)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.setSpacing(8)
        nest(column, line)
        column.addWidget(self.table, 1)
        nest(column, foot)
        QWidget.setTabOrder(self.choice, self.find_box)
        QWidget.setTabOrder(self.find_box, self.again)
        QWidget.setTabOrder(self.again, self.table)

    def _connect(self) -> None:
        table = self.table
        table.delegate.answered.connect(self._answer)
        table.delegate.refused.connect(self._refuse)
        table.elsewhere.connect(self._go_elsewhere)
        table.copy_wanted.connect(self.copy)
        table.paste_wanted.connect(self.paste)
        table.menu_wanted.connect(self._offer)
        table.selectionModel().currentRowChanged.connect(self._row_changed)
        self.model.modelReset.connect(self._show_about)
        self.model.dataChanged.connect(self._show_about)
        self.find_box.textChanged.connect(self._find)
        self.find_box.returnPressed.connect(self.focus_table)
        self.choice.activated.connect(self._choose)
        self.again.clicked.connect(self.put_in_order)
        again = QShortcut(QKeySequence("F5"), self, self.put_in_order)
        again.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)

    # What is shown.

    def show_drawing(self, drawing: Drawing, *, is_another: bool = False) -> None:
        """Show another state of the drawing, or another drawing; put off as long as nobody sees it."""
        self._pending = (drawing, None)
        self._is_another = self._is_another or is_another
        if self.isVisible():
            self._catch_up()

    def show_analysis(self, analysis: Analysis) -> None:
        """Show what the checks need."""
        self._pending = (analysis.drawing, analysis)
        if self.isVisible():
            self._catch_up()

    def show_figures(self, figures: Sequence[Figure] | None) -> None:
        """Show what the figures need, None where they failed; nothing while nobody sees it."""
        if not self.isVisible():
            return
        self.model.show_figures(figures or ())
        if self._is_untouched:
            # Nobody has begun to answer: what figures need moves up before what nothing needs.
            self.put_in_order()
        self._is_untouched = False
        self._show_counts()
        self._show_about()

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up with what happened while it was not seen, and ask for the most needed first."""
        super().showEvent(event)
        self._is_ordered = False
        self._catch_up()
        self._is_untouched = True
        self.figures_wanted.emit()
        if not self._is_ordered:
            # The checks are still judging: in the order of what they said last, until they answer.
            self.put_in_order()

    def hideEvent(self, event: QHideEvent) -> None:
        """Nobody sees it: figures need not be worked out for it."""
        super().hideEvent(event)
        self.figures_unwanted.emit()

    def _catch_up(self) -> None:
        drawing, analysis = self._pending
        if self._is_another:
            self.model.begin(drawing)
            self._is_another = self._is_ordered = False
        elif self.model.drawing is not drawing:
            self.model.show_drawing(drawing)
        if analysis is not None:
            self.model.show_analysis(analysis)
            # The first answer of the checks decides the order; later ones move nothing.
            if not self._is_ordered and not self.table.is_typing:
                self.put_in_order()
                self._is_ordered = True
        self._show_counts()
        self._show_about()

    def put_in_order(self) -> None:
        """Show what is to be asked now, the most needed first; the first row is the current one."""
        self.model.put_in_order()
        self.table.go_to(0)

    def focus_table(self) -> None:
        """Put the keys into the table, on its first row if none is current."""
        if self.table.current_row() < 0:
            self.table.go_to(0)
        self.table.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self._tell_chosen()

    def set_theme(self, theme: Theme) -> None:
        """Paint the marks anew."""
        self.model.set_theme(theme)

    def _choose(self, index: int) -> None:
        self.model.choose(self.choice.itemData(index))
        self.table.go_to(0)
        self._show_about()

    def _find(self, typed: str) -> None:
        self.model.find(typed)
        self.table.go_to(0)
        self._show_about()

    def _show_counts(self) -> None:
        with QSignalBlocker(self.choice):
            for index, shown in enumerate(Shown):
                self.choice.setItemText(index, f"{tr(shown.value)} ({self.model.asked.count(shown)})")

    # The current row.

    @property
    def current(self) -> Question | None:
        """The question of the current row."""
        return self.model.question(self.table.current_row())

    def _row_changed(self) -> None:
        if self.table.current_row() > 0:
            self._is_untouched = False
        self._say("")
        self._show_about()
        self._tell_chosen()

    def _tell_chosen(self) -> None:
        question = self.current
        if question is not None and self.table.hasFocus():
            self.chosen.emit(frozenset(entering.subject_ids(question.subject)))

    def _show_about(self) -> None:
        question = self.current
        if question is None:
            empty = not self.model.rowCount()
            nothing = tr("Nothing found.") if self.find_box.text().strip() else tr(NOTHING[self.model.shown])
            self._about.setText(nothing if empty else tr(KEYS))
            return
        needed, rests = self.model.asked.needed(question.key), question.key in self.model.asked.resting
        is_judged = self._pending[1] is not None
        self._about.setText(
            entering.about(self.model.drawing, question, needed, rests=rests, is_judged=is_judged)
        )

    def _say(self, sentence: str) -> None:
        self._fault.setText(sentence)
        self._fault.setVisible(bool(sentence))
        if sentence and (layout := self.layout()) is not None:
            # The sentence takes its room from the table: what it is about stays in view.
            layout.activate()
            self.table.scrollTo(self.table.currentIndex())

    # Answers.

    def _answer(self, key: str, value: object) -> None:
        self._is_untouched = False
        question = self.model.asked.questions.get(key)
        if question is None:
            # What was asked about is gone by now, and with it what was typed for it.
            return
        try:
            step, after = entering.set_answer(self.model.drawing, question, value)
        except EditError as error:
            self.table.delegate.refuse()
            self._say(f"{tr(of_error(error))} {kept_words(self.model, question)}".rstrip())
            return
        self._say("")
        if after is not self.model.drawing:
            self.edited.emit(step, after)

    def _refuse(self, key: str, sentence: str) -> None:
        self._say(sentence)

    def answer(self, value: object) -> None:
        """Answer the current row: a value, None (not known) or `Left.OUT` (the usual one, or unsaid)."""
        if (question := self.current) is not None:
            self._answer(question.key, value)

    def _go_elsewhere(self) -> None:
        if (question := self.current) is not None:
            self.field_wanted.emit(question.subject, question.field.name)

    # Copying and pasting.

    def _selected(self) -> Sequence[Question]:
        rows = sorted({index.row() for index in self.table.selectionModel().selectedRows()})
        found = (self.model.question(row) for row in rows)
        return [question for question in found if question is not None]

    def copy(self) -> None:
        """Put the chosen rows on the clipboard, as a spreadsheet takes them."""
        text = entering.copied(self.model.drawing, self._selected(), self.model.asked.needs, decimal_sign())
        QGuiApplication.clipboard().setText(text)

    def paste(self) -> None:
        """Take values from the clipboard: a column from the current row on, or a table from a spreadsheet."""
        following = self.model.keys[max(0, self.table.current_row()) :]
        text = QGuiApplication.clipboard().text()
        try:
            step, after = pasting.pasted(self.model.drawing, self.model.asked.questions, following, text)
        except pasting.PasteError as error:
            self._say(tr(of_error(error)))
            return
        self._say("")
        if after is not self.model.drawing:
            self.edited.emit(step, after)

    def menu(self) -> QMenu:
        """What can be done with the current row."""
        made = QMenu(self)
        question = self.current
        if question is not None:
            field = question.field
            made.addAction(tr("Not known")).triggered.connect(lambda: self.answer(None))
            if field.has_default and field.type is not FieldType.CHOICES and field.default != "unknown":
                usual = tr(value_words(field, field.default, decimal_sign()))
                action = made.addAction(plain.action_text(tr("Usual: {usual}", usual=usual)))
                action.triggered.connect(lambda: self.answer(Left.OUT))
            made.addSeparator()
            made.addAction(tr("Show in the details")).triggered.connect(self._go_elsewhere)
            made.addSeparator()
        made.addAction(tr("Copy")).triggered.connect(self.copy)
        made.addAction(tr("&Paste")).triggered.connect(self.paste)
        return made

    def _offer(self, at: QPoint) -> None:
        menu = self.menu()
        menu.exec(at)
        menu.deleteLater()

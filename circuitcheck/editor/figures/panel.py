"""The panel of worked figures: a box to find one by typing, the list, and the opened one in its place."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, Qt, QTimer, Signal
from PySide6.QtGui import (
    QFont,
    QGuiApplication,
    QHideEvent,
    QKeyEvent,
    QKeySequence,
    QResizeEvent,
    QShowEvent,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QListView,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.figures import words
from circuitcheck.editor.figures.card import FigureCard
from circuitcheck.editor.figures.heights import MANY_ROWS, Asked, FoundRows, names
from circuitcheck.editor.figures.rows import FIGURE, FigureDelegate, FiguresModel
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.panels.finding_card import height_at
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import decimal_sign, later, tr
from circuitcheck.figures.figure import Figure
from circuitcheck.finding import Finding

NOTHING_APPLIES = later("No figure applies to this drawing.")
NOT_FOUND = later("No figure is called so.")
FAILED = later("The figures failed inside the program; none is shown.")
WORKING = later("Working out the figures…")
WORKING_ANEW = later("Working out the figures anew: these are of the drawing before the last step.")
WORKING_NOTE = later("working out…")
STALE_COPY = later("Of the drawing before the last step:")
BUSY_MS = 250
"""How long the figures of the drawing before stand without a sentence that says so."""


class FiguresList(QListView):
    """The rows; Enter opens and folds, Escape folds, copy takes the opened or the current one."""

    turned = Signal(QModelIndex)
    fold_wanted = Signal()
    copy_wanted = Signal()
    resized = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """The keys of a row."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self.turned.emit(self.currentIndex())
        elif event.key() == Qt.Key.Key_Escape:
            self.fold_wanted.emit()
        elif event.matches(QKeySequence.StandardKey.Copy):
            self.copy_wanted.emit()
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Wrap the texts anew."""
        super().resizeEvent(event)
        self.resized.emit()


class FiguresPanel(QWidget):
    """Signals `wanted` when it comes to be seen and `unwanted` when not, `field_wanted` and `part_wanted`
    to go to either, `note_changed` with what stands beside its heading.

    Nothing here takes the focus by itself.
    """

    wanted = Signal()
    unwanted = Signal()
    finding_wanted = Signal(object)
    field_wanted = Signal(str, str)
    part_wanted = Signal(str)
    note_changed = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._figures: tuple[Figure, ...] = ()
        self._drawing = Drawing()
        self._open: words.Key | None = None
        self._card: FigureCard | None = None
        self._is_stale = False
        self._findings: tuple[Finding, ...] = ()
        self._busy = QTimer(self)
        self._busy.setSingleShot(True)
        self._busy.setInterval(BUSY_MS)
        self._busy.timeout.connect(self._say_busy)
        self._wide_anew = QTimer(self, interval=0, singleShot=True)
        self._wide_anew.timeout.connect(self._measure)
        self.model = FiguresModel(decimal_sign())
        self.model.setParent(self)
        self.delegate = FigureDelegate(self.model)
        self.delegate.setParent(self)
        self.find_box = QLineEdit()
        self.find_box.setPlaceholderText(tr("Find a figure"))
        self.find_box.setAccessibleName(tr("Find a figure"))
        self.find_box.setClearButtonEnabled(True)
        self.list = FiguresList()
        self._said = plain.label("", "second", wrap=True)
        self._said.setContentsMargins(16, 8, 16, 8)
        self._lay_out()
        self.find_box.textChanged.connect(self._filter)
        self.list.clicked.connect(self._turn)
        self.list.turned.connect(self._turn)
        self.list.fold_wanted.connect(self.fold)
        self.list.copy_wanted.connect(self.copy)
        self.list.resized.connect(self._resized)

    def _lay_out(self) -> None:
        rows = self.list
        rows.setAccessibleName(tr("Figures"))
        rows.setFrameShape(QFrame.Shape.NoFrame)
        rows.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        rows.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        rows.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        rows.setResizeMode(QListView.ResizeMode.Adjust)
        rows.setMouseTracking(True)
        rows.setModel(self.model)
        rows.setItemDelegate(self.delegate)
        line = QHBoxLayout()
        line.setContentsMargins(16, 0, 16, 8)
        line.addWidget(self.find_box)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        nest(column, line)
        column.addWidget(self._said)
        column.addWidget(rows, 1)
        self._said.hide()

    # What is shown.

    @property
    def is_stale(self) -> bool:
        """Whether what is shown is not of the present drawing."""
        return self._is_stale

    def expect(self) -> None:
        """The figures of another drawing are being worked out: say so until they come."""
        self._is_stale = True
        self.note_changed.emit(tr(WORKING_NOTE))
        if not self._busy.isActive():
            self._busy.start()

    def outdate(self) -> None:
        """The drawing is another one, and nobody looks: nothing is claimed of it until somebody does."""
        self._is_stale = True
        self.note_changed.emit("")

    def _say_busy(self) -> None:
        self._say(tr(WORKING_ANEW) if self._figures else WORKING)

    @property
    def opened(self) -> Figure | None:
        """The figure that is open."""
        return next((each for each in self.model.figures if words.key(each) == self._open), None)

    @property
    def card(self) -> FigureCard | None:
        """The open figure's card."""
        return self._card

    @property
    def said(self) -> str:
        """The sentence in place of the list; empty where there are rows."""
        return self._said.text()

    def show_findings(self, findings: Sequence[Finding]) -> None:
        """Take over what the checks found: an open figure names what is not kept to."""
        was, self._findings = self._findings, tuple(findings)
        if was != self._findings and self._card is not None:
            self._rebuild()

    def _found_on(self, figure: Figure) -> list[Finding]:
        """What the checks that judge by a figure found on what it is about."""
        # Here and not at the top: the window shows before the figures are read.
        from circuitcheck.figures.catalogue import figures

        judged_by = frozenset(figures()[figure.name].checks) if figure.name in figures() else frozenset()
        subject = set(figure.subject)
        return [
            each
            for each in self._findings
            if each.check in judged_by and (not subject or subject & {*each.components, *each.pipes})
        ]

    def set_theme(self, theme: Theme) -> None:
        """Paint in another theme."""
        self.delegate.set_theme(theme)
        self._rebuild()

    def asked(self) -> Asked:
        """What has to be known to find many rows elsewhere: how the list lies with its scroll bar."""
        width = self.list.contentsRect().width() - self.list.verticalScrollBar().sizeHint().width()
        return Asked(
            QFont(self.list.font()), width, self.model.decimal, self._drawing, self.delegate.rows.found
        )

    def show_figures(
        self, drawing: Drawing, figures: Sequence[Figure] | None, rows: FoundRows | None = None
    ) -> None:
        """Show the figures of a drawing, the open one still open; None: they failed. `rows`, where they were found
        elsewhere."""
        self._busy.stop()
        self._is_stale = False
        was, wanted = (self._drawing, self._figures), (drawing, tuple(figures or ()))
        self._drawing, self._figures = wanted
        self.note_changed.emit("" if figures is None else words.note(figures))
        self._say(tr(FAILED) if figures is None else "" if figures else tr(NOTHING_APPLIES))
        is_renamed = names(was[0]) != names(drawing)
        if is_renamed:
            self.delegate.rows.forget()
        if was[1] != wanted[1] or is_renamed:
            if rows is None:
                self.delegate.rows.keep(self._figures)
            else:
                self.delegate.rows.take(rows)
            self._filter()
        else:
            # Nothing is another: what one reads, and where the keyboard is, stays.
            self.model.drawing = drawing

    def open(self, figure: Figure) -> None:
        """Open a figure in place, and fold the one that was open."""
        self._open = words.key(figure)
        self._rebuild()
        # Once the list knows how high the card is.
        QTimer.singleShot(0, self, self._show_opened)

    def open_named(self, name: str) -> None:
        """Open the first figure of that name, found or not by what was typed."""
        found = next((each for each in self._figures if each.name == name), None)
        if found is not None:
            if found not in self.model.figures:
                self.find_box.clear()
            self.open(found)

    def fold(self) -> None:
        """Fold the open figure; the keyboard goes back to its row."""
        focused = QApplication.focusWidget()
        had = self._card is not None and focused is not None and self._card.isAncestorOf(focused)
        self._open = None
        self._rebuild()
        if had:
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def copy(self) -> None:
        """Put the open figure, else the current one, on the clipboard with its working."""
        figure = self.opened or self.list.currentIndex().data(FIGURE)
        if isinstance(figure, Figure):
            text = words.as_text(self._drawing, [figure])
            QGuiApplication.clipboard().setText(f"{tr(STALE_COPY)}\n{text}" if self._is_stale else text)

    def focus_list(self) -> None:
        """Give the keyboard to the list, on a row of it."""
        if not self.list.currentIndex().isValid() and self.model.rowCount():
            self.list.setCurrentIndex(self.model.index(0))
        self.list.setFocus(Qt.FocusReason.ShortcutFocusReason)

    # How it is done.

    def _filter(self) -> None:
        """The figures that what was typed finds."""
        asked = self.find_box.text()
        found = list(self._figures)
        if asked.strip():
            found = [each for each in found if words.found_in(self._drawing, each, asked)]
        current = self.list.currentIndex().data(FIGURE)
        # Where it is sure to come, the bar is there before rows are measured for the room beside it.
        many = len(found) > MANY_ROWS
        bar = Qt.ScrollBarPolicy.ScrollBarAlwaysOn if many else Qt.ScrollBarPolicy.ScrollBarAsNeeded
        self.list.setVerticalScrollBarPolicy(bar)
        self.model.show_figures(self._drawing, found)
        if self._figures:
            self._say("" if found else tr(NOT_FOUND))
        keys = [words.key(each) for each in found]
        if isinstance(current, Figure) and words.key(current) in keys:
            self.list.setCurrentIndex(self.model.index(keys.index(words.key(current))))
        self._rebuild(keep_place=True)

    def _rebuild(self, *, keep_place: bool = True) -> None:
        """The card in the open figure's row, made anew."""
        bar = self.list.verticalScrollBar()
        place = bar.value()
        if self.delegate.opened_row >= 0:
            self.list.setIndexWidget(self.model.index(self.delegate.opened_row), None)  # type: ignore[arg-type]
        self._card, self.delegate.opened_row = None, -1
        figure = self.opened
        if figure is not None:
            titles = {each.name: tr(each.title) for each in self._figures}
            found = self._found_on(figure)
            card = self._card = FigureCard(self._drawing, figure, titles, self.model.decimal, found)
            card.finding_wanted.connect(self.finding_wanted)
            card.left.connect(self.fold)
            card.part_wanted.connect(self.part_wanted)
            card.field_wanted.connect(self.field_wanted)
            card.figure_wanted.connect(self.open_named)
            card.copy_wanted.connect(self.copy)
            card.resized.connect(self._measure)
            row = self.delegate.opened_row = self.model.figures.index(figure)
            self.list.setIndexWidget(self.model.index(row), card)
        self._measure()
        if keep_place:
            bar.setValue(place)

    def _resized(self) -> None:
        """Another style resizes the list to and fro, within one call: many rows are measured once it is through."""
        if len(self.model.figures) > MANY_ROWS:
            self._wide_anew.start()
        else:
            self._measure()

    def _measure(self) -> None:
        self._wide_anew.stop()
        if len(self.model.figures) > MANY_ROWS and not self.list.isVisible():
            return  # Nobody sees them; they are measured when somebody does.
        width = self.list.viewport().width()
        self.delegate.width = width
        if self._card is not None:
            self.delegate.opened_high = height_at(self._card, width)
        self.list.doItemsLayout()

    def _show_opened(self) -> None:
        if self.delegate.opened_row >= 0:
            index = self.model.index(self.delegate.opened_row)
            self.list.setCurrentIndex(index)
            self.list.scrollTo(index, QAbstractItemView.ScrollHint.PositionAtTop)

    def _turn(self, index: QModelIndex) -> None:
        figure = index.data(FIGURE)
        if not isinstance(figure, Figure):
            return
        if words.key(figure) == self._open:
            self.fold()
        else:
            self.open(figure)

    def _say(self, sentence: str) -> None:
        self._said.setText(sentence)
        self._said.setVisible(bool(sentence))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape in the card folds it."""
        if event.key() == Qt.Key.Key_Escape and self._card is not None:
            self.fold()
        elif event.matches(QKeySequence.StandardKey.Copy):
            self.copy()
        else:
            super().keyPressEvent(event)

    def showEvent(self, event: QShowEvent) -> None:
        """The figures are worked out while they are seen."""
        super().showEvent(event)
        self._resized()
        self.wanted.emit()

    def hideEvent(self, event: QHideEvent) -> None:
        """Nobody sees them: nothing is worked out."""
        super().hideEvent(event)
        self.unwanted.emit()

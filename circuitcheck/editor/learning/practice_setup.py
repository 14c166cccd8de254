"""The page on which an exercise is chosen: kinds of fault, how many, which arrangement, which seed."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QIntValidator
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.editor import plain
from circuitcheck.editor.learning.practice_words import reason_words, topic_words
from circuitcheck.editor.learning.rows import Rows
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.panels.edged import ArrowedComboBox
from circuitcheck.editor.translating import tr
from circuitcheck.lessons.catalogue import faults
from circuitcheck.lessons.generator import MOST_FAULTS

CHECK = Qt.ItemDataRole.UserRole
MOST_SEED = 999_999
USUAL_COUNT = 3
TICK_PX = 24


@dataclass(frozen=True, slots=True)
class Wanted:
    """What exercise is wanted; `seed` None: surprise me, `arrangement` None: any."""

    kinds: tuple[str, ...]
    count: int
    arrangement: str | None
    seed: int | None


class SetupPage(QWidget):
    """Signals `begun` with a `Wanted`, `arrangement_chosen` with a name or None for any,
    `suggestion_wanted` and `progress_wanted`."""

    begun = Signal(object)
    arrangement_chosen = Signal(object)
    suggestion_wanted = Signal()
    progress_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.kinds, self._items = _kinds_tree()
        self.all = QPushButton(tr("&All"))
        self.none = QPushButton(tr("N&one"))
        self.suggest = QPushButton(tr("Least &known"))
        plain.set_tip(self.suggest, tr("The kinds you have found least surely so far"))
        self.count = ArrowedComboBox()
        self.count.setAccessibleName(tr("How many faults"))
        self.count.addItems([str(number) for number in range(1, MOST_FAULTS + 1)])
        self.count.setCurrentIndex(USUAL_COUNT - 1)
        self.arrangement = ArrowedComboBox()
        self.arrangement.setAccessibleName(tr("Arrangement"))
        self.arrangement.addItem(tr("Any"), None)
        for name, each in arrangements().items():
            self.arrangement.addItem(tr(each.title.told), name)
        self.seed = QLineEdit()
        self.seed.setValidator(QIntValidator(0, MOST_SEED, self.seed))
        self.seed.setPlaceholderText(tr("Surprise me"))
        self.seed.setAccessibleName(tr("Seed: the same number makes the same exercise; empty: surprise me"))
        self.begin = QPushButton(tr("&Begin"))
        self.begin.setDefault(True)
        self.progress = QPushButton(tr("&Progress…"))
        self._said = plain.label("", "second", wrap=True)
        self._fault = plain.label("", "fault", wrap=True)
        self._fault.hide()
        self._lay_out()
        self.kinds.itemChanged.connect(self._count_kinds)
        self.all.clicked.connect(lambda: self.choose(faults()))
        self.none.clicked.connect(lambda: self.choose(()))
        self.suggest.clicked.connect(self.suggestion_wanted)
        self.begin.clicked.connect(self._begin)
        self.arrangement.currentIndexChanged.connect(
            lambda: self.arrangement_chosen.emit(self.arrangement.currentData())
        )
        self.seed.returnPressed.connect(self._begin)
        self.progress.clicked.connect(self.progress_wanted)
        self._count_kinds()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 16)
        column.setSpacing(8)
        column.addWidget(plain.label(tr("Practice"), "name"))
        column.addWidget(
            plain.label(
                tr("Faults are put into a sound drawing like this one. Find them, and say what is wrong."),
                wrap=True,
            )
        )
        column.addSpacing(4)
        column.addWidget(plain.label(tr("Kinds of fault"), "heading"))
        column.addWidget(self.kinds, 1)
        buttons = QHBoxLayout()
        for button in (self.all, self.none, self.suggest):
            buttons.addWidget(button)
        nest(column, buttons)
        column.addWidget(self._said)
        grid = QGridLayout()
        grid.setHorizontalSpacing(12)
        grid.setColumnStretch(1, 1)
        rows = ((tr("&Faults"), self.count), (tr("Ar&rangement"), self.arrangement), (tr("&Seed"), self.seed))
        for place, (text, field) in enumerate(rows):
            label = plain.label(text)
            label.setBuddy(field)
            grid.addWidget(label, place, 0)
            grid.addWidget(field, place, 1)
        nest(column, grid)
        column.addWidget(self._fault)
        end = QHBoxLayout()
        end.addWidget(self.progress)
        end.addStretch(1)
        end.addWidget(self.begin)
        nest(column, end)

    # What others may ask.

    @property
    def wanted(self) -> Wanted:
        """What is chosen now."""
        text = self.seed.text().strip()
        return Wanted(
            tuple(self._chosen()),
            self.count.currentIndex() + 1,
            self.arrangement.currentData(),
            int(text) if text.isdigit() else None,
        )

    def choose(self, kinds: Collection[str]) -> None:
        """Choose these kinds and no others."""
        for item in self._items:
            item.setCheckState(0, _state(item.data(0, CHECK) in kinds))

    def set_count(self, count: int) -> None:
        """Choose how many faults."""
        self.count.setCurrentIndex(count - 1)

    def say(self, sentence: str) -> None:
        """Say why no exercise was made; empty: nothing."""
        self._fault.setText(sentence)
        self._fault.setVisible(bool(sentence))

    def show_busy(self, busy: bool) -> None:
        """While an exercise is made none other can be begun."""
        self.begin.setEnabled(not busy and bool(list(self._chosen())))
        self.begin.setText(tr("Making it…") if busy else tr("&Begin"))

    @property
    def is_ready(self) -> bool:
        """Whether an exercise can be begun."""
        return self.begin.isEnabled()

    # Within.

    def _chosen(self) -> Iterable[str]:
        for item in self._items:
            if item.checkState(0) is Qt.CheckState.Checked:
                yield str(item.data(0, CHECK))

    def _count_kinds(self, *_: object) -> None:
        chosen = len(list(self._chosen()))
        self._said.setText(tr("{count} of {all} kinds chosen.", count=chosen, all=len(faults())))
        self.begin.setEnabled(chosen > 0)

    def _begin(self) -> None:
        if self.is_ready:
            self.begun.emit(self.wanted)


def _kinds_tree() -> tuple[Rows, list[QTreeWidgetItem]]:
    """The kinds by topic, each with a box to tick, and their rows."""
    items = []
    tree = Rows(tr("Kinds of fault"), indent=18, beside=TICK_PX)
    for topic in sorted({fault.topic for fault in faults().values()}, key=topic_words):
        head = tree.add(topic_words(topic))
        head.setFlags(
            Qt.ItemFlag.ItemIsEnabled
            | Qt.ItemFlag.ItemIsSelectable
            | Qt.ItemFlag.ItemIsUserCheckable
            | Qt.ItemFlag.ItemIsAutoTristate
        )
        names = [name for name, fault in faults().items() if fault.topic == topic]
        for name in sorted(names, key=reason_words):
            item = tree.add(reason_words(name), head)
            item.setData(0, CHECK, name)
            item.setCheckState(0, Qt.CheckState.Checked)
            plain.set_column_tip(item, 0, faults()[name].happens)
            items.append(item)
    return tree, items


def _state(on: bool) -> Qt.CheckState:
    return Qt.CheckState.Checked if on else Qt.CheckState.Unchecked

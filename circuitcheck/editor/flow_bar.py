"""The line above the sheet while flows are shown: which situation, what stands by the pipes, and what is missing."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QComboBox, QToolButton

from circuitcheck.editor import plain
from circuitcheck.editor.panels.edged import ArrowedComboBox
from circuitcheck.editor.said_line import SaidLine
from circuitcheck.editor.translating import tr
from circuitcheck.report.flows import By
from circuitcheck.report.wording import upper

MOST_SITUATION_PX = 260


class FlowBar(SaidLine):
    """Signals `changed` when another situation or another figure is chosen, `fill_in_wanted` and `left`."""

    changed = Signal()
    fill_in_wanted = Signal()
    left = Signal()

    def __init__(self) -> None:
        self.situation = ArrowedComboBox()
        self.situation.setAccessibleName(tr("Situation"))
        self.by = ArrowedComboBox()
        self.by.setAccessibleName(tr("What stands by the pipes"))
        for by in By:
            self.by.addItem(tr(by.value), by)
        for box in (self.situation, self.by):
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.situation.setMaximumWidth(MOST_SITUATION_PX)
        self.fill_in = QToolButton()
        self.fill_in.setText(tr("Fill in"))
        self.fill_in.setProperty("link", True)
        self.fill_in.setMinimumHeight(32)
        plain.set_tip(self.fill_in, tr("Fill in what is not known"))
        self.close_button = QToolButton()
        self.close_button.setText("×")
        self.close_button.setFixedSize(32, 32)
        self.close_button.setAccessibleName(tr("Hide the flows"))
        plain.set_tip(self.close_button, tr("Hide the flows (F9)"))
        super().__init__(
            (plain.label(tr("Flows"), "heading"), self.situation, self.by), (self.fill_in, self.close_button)
        )
        self.setObjectName("bar")
        self.setAccessibleName(tr("Flows on the sheet"))
        self.situation.currentIndexChanged.connect(self.changed)
        self.by.currentIndexChanged.connect(self.changed)
        self.fill_in.clicked.connect(self.fill_in_wanted)
        self.close_button.clicked.connect(self.left)
        self.by.setCurrentIndex(self.by.findData(By.FLOW))
        self.say("", asks=False)

    @property
    def chosen(self) -> str:
        """The chosen situation's name; empty where the drawing has none."""
        found = self.situation.currentData()
        return found if isinstance(found, str) else ""

    @property
    def chosen_by(self) -> By:
        """What stands by the pipes."""
        found = self.by.currentData()
        return found if isinstance(found, By) else By.FLOW

    def offer(self, names: Sequence[str]) -> None:
        """Offer these situations; the chosen one stays chosen while there is one of that name."""
        known = [self.situation.itemData(index) for index in range(self.situation.count())]
        if known == list(names):
            return
        was = self.chosen
        with QSignalBlocker(self.situation):
            self.situation.clear()
            for name in names:
                self.situation.addItem(plain.action_text(tr(upper(name))), name)
            if was in names:
                self.situation.setCurrentIndex(list(names).index(was))
        self.situation.setEnabled(bool(names))

    def step(self, by: int) -> None:
        """Choose the next (1) or the previous (-1) situation; beyond the last comes the first."""
        if count := self.situation.count():
            self.situation.setCurrentIndex((self.situation.currentIndex() + by) % count)

    def choose_by(self, by: By) -> None:
        """Choose what stands by the pipes."""
        self.by.setCurrentIndex(self.by.findData(by))

    def say(self, sentence: str, *, asks: bool) -> None:
        """A sentence with the choices; `asks`: with the way to what is to be filled in."""
        self.fill_in.setVisible(asks)
        self.fill_in.setAccessibleName(
            tr("Fill in: {sentence}", sentence=sentence) if asks else tr("Fill in")
        )
        self.show_sentence(sentence)
        self.setAccessibleDescription(sentence)

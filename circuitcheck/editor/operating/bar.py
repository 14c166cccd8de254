"""The line above the sheet in operation: the situation, what stands by the pipes, what is to be said of it."""

from __future__ import annotations

from collections.abc import Sequence
from enum import Enum

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QComboBox, QToolButton

from circuitcheck.editor import plain
from circuitcheck.editor.flow_bar import MOST_SITUATION_PX
from circuitcheck.editor.operating.words import situation_name
from circuitcheck.editor.panels.edged import ArrowedComboBox, EdgedCheckBox
from circuitcheck.editor.said_line import SaidLine
from circuitcheck.editor.translating import tr
from circuitcheck.operating.positions import Positions
from circuitcheck.report.flows import By

OWN = ""


class Shown(Enum):
    """What stands by the pipes."""

    NOTHING = "nothing"
    FLOW = "flow"
    VELOCITY = "velocity"
    LOSS = "loss"
    PRESSURE = "pressure"
    TEMPERATURE = "temperature"

    @property
    def by(self) -> By:
        """What the solved flows can say of it by themselves."""
        known = {Shown.FLOW: By.FLOW, Shown.VELOCITY: By.VELOCITY, Shown.LOSS: By.LOSS}
        return known.get(self, By.NOTHING)


def shown_words() -> dict[Shown, str]:
    """Each as it is offered."""
    return {
        Shown.NOTHING: tr("Arrows only"),
        Shown.FLOW: tr("Flow, l/min"),
        Shown.VELOCITY: tr("Velocity, m/s"),
        Shown.LOSS: tr("Pressure loss"),
        Shown.PRESSURE: tr("Pressure, bar"),
        Shown.TEMPERATURE: tr("Temperature, °C"),
    }


class OperatingBar(SaidLine):
    """Signals `situation_wanted` with a name, `shown_changed`, `moving_changed`, `fill_in_wanted`, `left`."""

    situation_wanted = Signal(str)
    shown_changed = Signal()
    moving_changed = Signal(bool)
    fill_in_wanted = Signal()
    left = Signal()

    def __init__(self, *, compact: bool, closable: bool) -> None:
        self.situation = ArrowedComboBox()
        self.situation.setAccessibleName(tr("Situation"))
        self.situation.setMaximumWidth(MOST_SITUATION_PX)
        self.shown = ArrowedComboBox()
        self.shown.setAccessibleName(tr("What stands by the pipes"))
        for each, words in shown_words().items():
            self.shown.addItem(words, each)
        for box in (self.situation, self.shown):
            box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.moving = EdgedCheckBox(tr("Arrows move"))
        self.moving.setChecked(True)
        plain.set_tip(self.moving, tr("Let the arrows move along the pipes, or stand still"))
        self.fill_in = QToolButton()
        self.fill_in.setText(tr("Fill in"))
        self.fill_in.setProperty("link", True)
        self.fill_in.setMinimumHeight(32)
        self.fill_in.hide()
        self.close_button = QToolButton()
        self.close_button.setText("×")
        self.close_button.setFixedSize(32, 32)
        self.close_button.setAccessibleName(tr("Leave operating"))
        plain.set_tip(self.close_button, tr("Leave operating (Escape)"))
        heading = () if compact else (plain.label(tr("Operating"), "heading"),)
        super().__init__(
            (*heading, self.situation, self.shown, self.moving), (self.fill_in, self.close_button)
        )
        self.setObjectName("bar")
        self.setAccessibleName(tr("Operating"))
        self.situation.setVisible(compact)
        self.close_button.setVisible(closable)
        self.situation.activated.connect(self._chosen)
        self.shown.currentIndexChanged.connect(self.shown_changed)
        self.moving.toggled.connect(self.moving_changed)
        self.fill_in.clicked.connect(self.fill_in_wanted)
        self.close_button.clicked.connect(self.left)
        self.shown.setCurrentIndex(self.shown.findData(Shown.FLOW))

    @property
    def chosen_shown(self) -> Shown:
        """What stands by the pipes."""
        found = self.shown.currentData()
        return found if isinstance(found, Shown) else Shown.FLOW

    def show_positions(self, offered: Sequence[Positions], now: Positions) -> None:
        """Offer these situations; the one that stands is chosen, or one's own."""
        with QSignalBlocker(self.situation):
            self.situation.clear()
            for each in offered:
                self.situation.addItem(plain.action_text(situation_name(each.name)), each.name)
            if now.is_own:
                self.situation.addItem(tr("Your own"), OWN)
                self.situation.setCurrentIndex(self.situation.count() - 1)
            else:
                self.situation.setCurrentIndex(max(0, self.situation.findData(now.name)))

    def say(self, sentence: str, *, asks: bool = False) -> None:
        """A sentence with the choices; `asks`: with the way to what is to be filled in."""
        self.fill_in.setVisible(asks)
        self.show_sentence(sentence)
        self.setAccessibleDescription(sentence)

    def _chosen(self, place: int) -> None:
        name = self.situation.itemData(place)
        if isinstance(name, str) and name != OWN:
            self.situation_wanted.emit(name)

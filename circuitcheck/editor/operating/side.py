"""Situations, and everything that can be turned, as two lists beside the sheet in operation."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QRect, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QButtonGroup,
    QFrame,
    QHBoxLayout,
    QHeaderView,
    QRadioButton,
    QScrollArea,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.checks.wording import upper
from circuitcheck.editor import plain
from circuitcheck.editor.icons import kind_icon
from circuitcheck.editor.nesting import emptied, nest
from circuitcheck.editor.operating.words import Row, rows, situation_name, stands
from circuitcheck.editor.panels.edged import EdgedRadioButton
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr
from circuitcheck.figures.plant import Plant
from circuitcheck.operating.positions import Positions

PLACE = Qt.ItemDataRole.UserRole
ICON_PX, LEAST_NAME_PX, BESIDE_NAME_PX = 24, 60, 14
WIDE_PX, EDGE_PX, SECOND_PX = 248, 12, 20
MOST_SHARE = 0.58
"""The most of the height that situations take; the rest is for valves and drives."""


class OperatingSide(QWidget):
    """Signals `situation_wanted` with a situation's name, `own_wanted` for one's own, `turn_wanted`
    with a `Row` to turn."""

    situation_wanted = Signal(str)
    turn_wanted = Signal(object)
    own_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._theme = light()
        self._rows: tuple[Row, ...] = ()
        self._names: list[str] = []
        self._kinds: dict[str, str] = {}
        self._icons: dict[str, QIcon] = {}
        self.situations = QWidget()
        self.situations.setAccessibleName(tr("Situations"))
        self._radios = QVBoxLayout(self.situations)
        self._radios.setContentsMargins(EDGE_PX, 0, EDGE_PX, 4)
        self._radios.setSpacing(2)
        self._group = QButtonGroup(self)
        self._group.idClicked.connect(self._chosen)
        self.valves = _Valves()
        self.valves.turned.connect(self._turned)
        area = QScrollArea()
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidgetResizable(True)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(self.situations)
        self._area = area
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 8, 0, 0)
        column.setSpacing(0)
        for text, body, stretch in ((tr("Situations"), area, 0), (tr("Valves and drives"), self.valves, 1)):
            head = plain.label(text, "heading")
            head.setContentsMargins(16, 8, 16, 6)
            column.addWidget(head)
            inset = QHBoxLayout()
            inset.setContentsMargins(12 if body is self.valves else 0, 0, 12, 0)
            inset.addWidget(body)
            nest(column, inset, stretch)
        self.setFixedWidth(WIDE_PX)

    def set_theme(self, theme: Theme) -> None:
        """Paint the symbols in a theme."""
        self._theme = theme
        self._icons.clear()
        self._fill()

    def show_positions(self, plant: Plant, offered: Sequence[Positions], now: Positions) -> None:
        """Offer these situations, and show how everything stands."""
        circuit = plant.circuit
        names = [each.name for each in offered]
        if names != self._names:
            self._names = names
            self._offer([(each.name, upper(stands(circuit, each))) for each in offered])
        with QSignalBlocker(self._group):
            chosen = len(names) if now.is_own else names.index(now.name) if now.name in names else -1
            button = self._group.button(chosen)
            if button is not None:
                button.setChecked(True)
        self._kinds = {id: part.kind.name for id, part in circuit.drawing.components.items()}
        self._rows = rows(plant, now)
        self._fill()

    def _offer(self, said: Sequence[tuple[str, str]]) -> None:
        emptied(self._radios)
        for widget in self.situations.findChildren(QWidget):
            if isinstance(widget, QRadioButton):
                self._group.removeButton(widget)
            widget.hide()
            widget.deleteLater()
        lines = [(situation_name(name), how) for name, how in said]
        lines.append((tr("Your own"), upper(tr("as the valves were turned"))))
        for place, (name, how) in enumerate(lines):
            radio = EdgedRadioButton(plain.action_text(name))
            radio.setMinimumHeight(26)
            radio.setAccessibleDescription(how)
            self._group.addButton(radio, place)
            second = plain.label(how, "second", wrap=True)
            inset = QHBoxLayout()
            inset.setContentsMargins(SECOND_PX, 0, 0, 6)
            inset.addWidget(second)
            self._radios.addWidget(radio)
            nest(self._radios, inset)
            for widget in (radio, second):
                widget.show()
        self._radios.addStretch(1)
        self._share()

    def _share(self) -> None:
        """As high as the situations need, and never so high that too little is left for the valves."""
        wide = self._area.viewport().width() or WIDE_PX - 2 * EDGE_PX
        need = max(0, self._radios.totalHeightForWidth(wide))
        self._area.setFixedHeight(min(need, int(MOST_SHARE * self.height())))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share another height."""
        super().resizeEvent(event)
        self._share()

    def _chosen(self, place: int) -> None:
        if place < len(self._names):
            self.situation_wanted.emit(self._names[place])
        else:
            self.own_wanted.emit()

    def _fill(self) -> None:
        tree = self.valves
        with QSignalBlocker(tree):
            if tree.topLevelItemCount() != len(self._rows):
                tree.clear()
                tree.addTopLevelItems([QTreeWidgetItem() for _ in self._rows])
            for place, row in enumerate(self._rows):
                item = tree.topLevelItem(place)
                if item is None:
                    continue
                item.setText(0, row.name)
                item.setText(1, row.state)
                item.setIcon(0, self._icon(self._kinds[row.part]))
                item.setData(0, PLACE, place)
                item.setData(0, Qt.ItemDataRole.AccessibleTextRole, f"{row.name}, {row.state}")
                item.setData(0, Qt.ItemDataRole.ToolTipRole, plain.tip_text(row.name))
                font = tree.font()
                font.setBold(row.is_set)
                item.setFont(1, font)
        tree.measure()

    def _icon(self, kind: str) -> QIcon:
        """The symbol of a kind, painted once for a theme."""
        if kind not in self._icons:
            self._icons[kind] = kind_icon(kind, self._theme)
        return self._icons[kind]

    def _turned(self, place: int) -> None:
        if 0 <= place < len(self._rows):
            self.turn_wanted.emit(self._rows[place])


class _Valves(QTreeWidget):
    """The rows; a click, Space or Enter turns one. Signals `turned` with its place."""

    turned = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Valves and drives"))
        self.setColumnCount(2)
        self.setHeaderHidden(True)
        self.setRootIsDecorated(False)
        self.setUniformRowHeights(False)
        self.setWordWrap(True)
        self.setIndentation(0)
        self.setIconSize(QSize(ICON_PX, ICON_PX))
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        header = self.header()
        header.setStretchLastSection(False)
        header.setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        header.setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        self.itemClicked.connect(lambda item, column: self.turned.emit(item.data(0, PLACE)))

    def measure(self) -> None:
        """Make every row as high as its name needs beside the state."""
        letters = self.fontMetrics()
        room = QRect(0, 0, max(LEAST_NAME_PX, self.columnWidth(0) - ICON_PX - BESIDE_NAME_PX), 4000)
        for place in range(self.topLevelItemCount()):
            item = self.topLevelItem(place)
            if item is not None:
                need = letters.boundingRect(room, int(Qt.TextFlag.TextWordWrap), item.text(0)).height()
                item.setSizeHint(0, QSize(0, max(ICON_PX + 2, need + 4)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width is another height of the rows."""
        super().resizeEvent(event)
        self.measure()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Space and Enter turn the row at hand."""
        if event.key() in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            item = self.currentItem()
            if item is not None and not event.isAutoRepeat():
                self.turned.emit(item.data(0, PLACE))
        else:
            super().keyPressEvent(event)

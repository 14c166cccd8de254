"""Everything that windows say: what stands in them, in their menus, lists and tables, and what is read out."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from html import unescape

from PySide6.QtCore import QAbstractItemModel, QAbstractListModel, QAbstractTableModel, QModelIndex, Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QGroupBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QMenu,
    QPlainTextEdit,
    QTabWidget,
    QWidget,
)

_ROLES = (
    Qt.ItemDataRole.DisplayRole,
    Qt.ItemDataRole.ToolTipRole,
    Qt.ItemDataRole.StatusTipRole,
    Qt.ItemDataRole.AccessibleTextRole,
    Qt.ItemDataRole.AccessibleDescriptionRole,
)
MOST_ROWS = 400


def said(top: QWidget) -> set[str]:
    """Each text of a window or dialog, without the mark of a mnemonic."""
    found: set[str] = set()
    for widget in (top, *top.findChildren(QWidget)):
        found.update(_of_widget(widget))
        for action in widget.actions():
            found.update(_of_action(action))
    return {plain for text in found if (plain := _plain(text))}


def _plain(text: str) -> str:
    return (
        unescape(re.sub(r"</?qt>", "", text)).replace("&&", "\0").replace("&", "").replace("\0", "&").strip()
    )


def _of_action(action: QAction) -> Iterator[str]:
    yield from (action.text(), action.toolTip(), action.statusTip())


def _of_widget(widget: QWidget) -> Iterator[str]:
    yield from (widget.toolTip(), widget.statusTip(), widget.accessibleName(), widget.accessibleDescription())
    yield widget.windowTitle()
    if isinstance(widget, QLabel | QAbstractButton):
        yield widget.text()
    elif isinstance(widget, QLineEdit):
        yield from (widget.placeholderText(), widget.text())
    elif isinstance(widget, QPlainTextEdit):
        yield from (widget.placeholderText(), widget.toPlainText())
    elif isinstance(widget, QComboBox):
        yield from (widget.itemText(row) for row in range(widget.count()))
    elif isinstance(widget, QGroupBox | QMenu):
        yield widget.title()
    elif isinstance(widget, QTabWidget):
        yield from (widget.tabText(place) for place in range(widget.count()))
    elif isinstance(widget, QAbstractItemView) and not isinstance(widget, QHeaderView):
        yield from _of_model(widget.model())


def _of_model(model: QAbstractItemModel) -> Iterator[str]:
    for column in range(_columns(model, QModelIndex())):
        yield str(model.headerData(column, Qt.Orientation.Horizontal) or "")
    for index in _indexes(model, QModelIndex()):
        yield from (text for role in _ROLES if isinstance(text := index.data(role), str))


def _indexes(model: QAbstractItemModel, parent: QModelIndex) -> Iterable[QModelIndex]:
    for row in range(min(model.rowCount(parent), MOST_ROWS)):
        for column in range(_columns(model, parent)):
            index = model.index(row, column, parent)
            yield index
            if (
                column == 0
                and not isinstance(model, QAbstractListModel | QAbstractTableModel)
                and model.hasChildren(index)
            ):
                yield from _indexes(model, index)


def _columns(model: QAbstractItemModel, parent: QModelIndex) -> int:
    # Of a list Qt keeps the question to itself.
    return 1 if isinstance(model, QAbstractListModel) else model.columnCount(parent)

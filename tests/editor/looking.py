"""What of a widget's texts is cut, and what of its controls has no name: measured on the widgets as they stand."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QAccessible, QFontMetrics
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QComboBox,
    QLabel,
    QLineEdit,
    QPushButton,
    QToolButton,
    QTreeWidget,
    QTreeWidgetItemIterator,
    QWidget,
)

from circuitcheck.editor.eliding import ElidedButton, ElidedLabel
from circuitcheck.editor.panels.edged import ArrowedComboBox

SLACK_PX, ROW_ICON_GAP_PX = 1, 4
"""What rounding at a fractional scale may take off."""


def shown(root: QWidget) -> Iterator[QWidget]:
    """All widgets below one that can be seen in it now, itself among them; other windows are not."""
    yield root
    for child in root.children():
        if isinstance(child, QWidget) and not child.isHidden() and not child.isWindow():
            yield from shown(child)


def cut(root: QWidget) -> list[str]:
    """Each text that does not fit where it stands, as `kind: text (why)`."""
    found = []
    for widget in shown(root):
        why = _why_cut(widget) or _why_out_of_view(widget, root)
        if why:
            found.append(f"{type(widget).__name__}: {_text(widget)[:60]!r} ({why})")
        if isinstance(widget, QTreeWidget):
            found += _rows_cut(widget)
    return found


def _rows_cut(tree: QTreeWidget) -> Iterator[str]:
    """Rows in view that are not read in full; where texts wrap, their heights are for other tests."""
    items = QTreeWidgetItemIterator(tree)
    while (item := items.value()) is not None:
        for column in range(tree.columnCount()):
            box = tree.visualRect(tree.indexFromItem(item, column))
            if tree.wordWrap() or tree.isColumnHidden(column) or not tree.viewport().rect().intersects(box):
                continue
            icon = 0 if item.icon(column).isNull() else tree.iconSize().width() + ROW_ICON_GAP_PX
            needs = QFontMetrics(item.font(column).resolve(tree.font())).horizontalAdvance(item.text(column))
            if needs + icon > box.width() + SLACK_PX:
                yield f"{tree.accessibleName()}: {item.text(column)!r} ({box.width() - icon} px, needs {needs})"
        items += 1


def nameless(root: QWidget) -> list[str]:
    """Each control that the keyboard reaches and that a reader has no word for."""
    return [
        f"{type(widget).__name__} {widget.objectName()!r} in {type(widget.parentWidget()).__name__}"
        for widget in shown(root)
        if by_tab(widget) and not name_of(widget)
    ]


def by_tab(widget: QWidget) -> bool:
    """Whether Tab stops here."""
    reached = widget.focusPolicy() & Qt.FocusPolicy.TabFocus
    return bool(reached) and widget.isEnabled() and widget.focusProxy() is None and widget.isVisible()


def name_of(widget: QWidget) -> str:
    """What a reader says of a widget: Qt's own answer, which knows buddies and the words of buttons."""
    return QAccessible.queryAccessibleInterface(widget).text(QAccessible.Text.Name)


def role_of(widget: QWidget) -> QAccessible.Role:
    """As what a reader announces it."""
    return QAccessible.queryAccessibleInterface(widget).role()


def _text(widget: QWidget) -> str:
    if isinstance(widget, QLabel | QAbstractButton | QLineEdit):
        return widget.text()
    return widget.currentText() if isinstance(widget, QComboBox) else ""


def _why_cut(widget: QWidget) -> str:
    if isinstance(widget, ElidedLabel | ElidedButton):
        return "" if widget.width() >= widget.minimumSizeHint().width() - SLACK_PX else "no room even for …"
    if isinstance(widget, QLabel) and widget.text():
        needs = widget.minimumSizeHint().width() if widget.wordWrap() else widget.sizeHint().width()
        if widget.width() < needs - SLACK_PX:
            return f"{widget.width()} px wide, needs {needs}"
        high = widget.heightForWidth(widget.width()) if widget.wordWrap() else widget.sizeHint().height()
        return "" if widget.height() >= high - SLACK_PX else f"{widget.height()} px high, needs {high}"
    if isinstance(widget, ArrowedComboBox) and widget.width() < widget.maximumWidth():
        lacks = widget.wanting_px(widget.currentText(), widget.size())
        return f"{lacks} px too narrow" if lacks > SLACK_PX else ""
    if isinstance(widget, QPushButton | QToolButton) and widget.text() and _shows_text(widget):
        needs = widget.fontMetrics().horizontalAdvance(widget.text().replace("&", ""))
        return "" if widget.width() >= needs else f"{widget.width()} px wide, its words {needs}"
    return ""


def _shows_text(widget: QAbstractButton) -> bool:
    only_icon = Qt.ToolButtonStyle.ToolButtonIconOnly
    return not (
        isinstance(widget, QToolButton)
        and widget.toolButtonStyle() is only_icon
        and not widget.icon().isNull()
    )


def _why_out_of_view(widget: QWidget, root: QWidget) -> str:
    """Cut off at the side by what it stands in, with no bar to bring it into view."""
    if not isinstance(widget, QLabel | QAbstractButton | QLineEdit | QComboBox):
        return ""
    at: QWidget = widget
    box = QRect(QPoint(0, 0), widget.size())
    while at is not root and (above := at.parentWidget()) is not None:
        box.translate(at.pos())
        if box.left() < -SLACK_PX or box.right() > above.width() + SLACK_PX:
            area = above.parentWidget()
            bar = area.horizontalScrollBar() if isinstance(area, QAbstractScrollArea) else None
            if bar is None or not bar.isVisible():
                return f"ends {box.right() - above.width()} px beyond {type(above).__name__}"
        at = above
    return ""

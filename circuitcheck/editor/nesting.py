"""Layouts within layouts, and what is taken out of one again: Python keeps no hold on what Qt deletes unseen.

The binding makes an object of every item of a layout that is filled when it is put into another one, and keeps it as
long as that layout. Qt deletes an item with the widget that it stands for, and tells nobody. Where something else
came to lie at its place in memory, a label for one, the binding took the one for the other when that label went, and
the program ended with a fault, once in some thousands of acts.
"""

from __future__ import annotations

from PySide6.QtWidgets import QBoxLayout, QLayout, QWidget
from shiboken6 import Shiboken


def nest(outer: QBoxLayout, inner: QLayout, stretch: int = 0) -> None:
    """Put a layout, filled or not, at the end of another one."""
    outer.addLayout(inner, stretch)
    _let_go(inner)


def emptied(layout: QLayout) -> list[QWidget]:
    """Take everything out of a layout, layouts inside it too. Returns the widgets that stood in it, which still are
    children of what they were."""
    widgets: list[QWidget] = []
    # Not until nothing is left to take: a form warns of that.
    while layout.count() and (item := layout.takeAt(0)) is not None:
        inner, widget = item.layout(), item.widget()
        if inner is not None:
            widgets += emptied(inner)
            inner.deleteLater()
            continue
        if widget is not None:
            widgets.append(widget)
        # Taken out it is nobody's any more.
        Shiboken.delete(item)
    return widgets


def _let_go(layout: QLayout) -> None:
    """Forget the objects that the binding made of a layout's items; the items stay."""
    for place in range(layout.count()):
        item = layout.itemAt(place)
        inner = None if item is None else item.layout()
        if inner is not None:
            _let_go(inner)
        elif item is not None and not Shiboken.createdByPython(item):
            Shiboken.invalidate(item)

"""Layouts within layouts: the binding holds nothing of them that Qt deletes unseen, and nobody goes round that."""

from __future__ import annotations

import shiboken6
from PySide6.QtCore import QEvent
from PySide6.QtWidgets import (
    QApplication,
    QFormLayout,
    QHBoxLayout,
    QLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.editor import plain
from circuitcheck.editor.nesting import emptied, nest
from circuitcheck.editor.side_by_side import SideBySide
from tests.editor.held_items import held_items
from tests.editor.test_plain import EDITOR, called


def filled() -> QHBoxLayout:
    """A label, room, a layout with another label, a form."""
    made, deep, form = QHBoxLayout(), QVBoxLayout(), QFormLayout()
    made.addWidget(plain.label("first"))
    made.addStretch(1)
    deep.addWidget(plain.label("second"))
    nest(made, deep, 2)
    form.addRow("third", QLineEdit("fourth"))
    nest(made, form)
    return made


def words(layout: QLayout) -> list[str]:
    """The texts that stand in it; what is asked of its items is let go again."""
    found: list[str] = []
    for place in range(layout.count()):
        item = layout.itemAt(place)
        assert item is not None
        inner, widget = item.layout(), item.widget()
        found += words(inner) if inner is not None else [] if widget is None else [widget.property("text")]
        if inner is None:
            shiboken6.invalidate(item)
    return found


def test_the_binding_does_hold_the_items_of_a_layout_that_is_put_into_another(qapp: QApplication) -> None:
    """Where it no longer does, `nest` has nothing to do any more."""
    owner = QWidget()
    column, row = QVBoxLayout(owner), QHBoxLayout()
    row.addWidget(plain.label("one"))
    column.addLayout(row)
    assert len(held_items()) == 1
    for item in held_items():
        shiboken6.invalidate(item)


def test_nothing_is_held_of_a_layout_that_is_nested(qapp: QApplication) -> None:
    owner = QWidget()
    column = QVBoxLayout(owner)
    row = filled()
    nest(column, row, 3)
    assert held_items() == []
    assert column.stretch(0) == 3 and row.stretch(2) == 2
    assert words(column) == ["first", "second", "third", "fourth"]
    owner.deleteLater()
    QApplication.sendPostedEvents(owner, QEvent.Type.DeferredDelete)
    assert held_items() == [] and not shiboken6.isValid(row)


def test_items_made_in_python_stay(qapp: QApplication) -> None:
    owner = QWidget()
    column = QVBoxLayout(owner)
    both = SideBySide(plain.label("left"), plain.label("right"))
    nest(column, both)
    assert all(shiboken6.isValid(both.itemAt(place)) for place in range(both.count()))


def test_all_is_taken_out_of_a_layout_and_the_widgets_stay(qapp: QApplication) -> None:
    owner = QWidget()
    column = QVBoxLayout(owner)
    nest(column, filled())
    column.addWidget(plain.label("last"))
    taken = emptied(column)
    assert [each.property("text") for each in taken] == ["first", "second", "third", "fourth", "last"]
    assert all(each.parent() is owner for each in taken)
    assert column.count() == 0 and held_items() == []
    assert emptied(column) == []
    column.addWidget(taken[0])
    assert words(column) == ["first"]


def test_nobody_goes_round_it() -> None:
    round_it = {"addLayout", "insertLayout", "itemAt", "takeAt", "itemAtPosition"}
    modules = [path for path in sorted(EDITOR.rglob("*.py")) if path.name != "nesting.py"]
    assert {path.name: bad for path in modules if (bad := called(path) & round_it)} == {}

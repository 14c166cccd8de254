"""The parts shelf: found by typing, taken by click, Enter or drag."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QMimeData, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QTreeWidgetItem
from pytestqt.qtbot import QtBot

from circuitcheck.editor import theme as themes
from circuitcheck.editor.dragging import kind_in, mime_of
from circuitcheck.editor.panels.shelf import STRIP_PX, Shelf
from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.kind import Kind


def child(group: QTreeWidgetItem | None, row: int) -> QTreeWidgetItem:
    """A kind of a group."""
    found = group.child(row) if group is not None else None
    assert found is not None
    return found


@pytest.fixture
def shelf(qtbot: QtBot) -> Shelf:
    made = Shelf()
    qtbot.addWidget(made)
    made.set_theme(themes.light())
    made.resize(224, 800)
    made.show()
    return made


@pytest.fixture
def taken(shelf: Shelf) -> list[Kind]:
    found: list[Kind] = []
    shelf.placing.connect(found.append)
    return found


def test_every_kind_stands_on_it_once(shelf: Shelf) -> None:
    assert sorted(shelf.shown()) == sorted(kinds())


def test_typing_leaves_what_is_meant(shelf: Shelf) -> None:
    QTest.keyClicks(shelf.find_box, "valve zone")
    assert shelf.shown() == ["zone_valve"]
    shelf.find_box.setText("CISTERN")
    assert shelf.shown() == ["feed_cistern"]
    shelf.find_box.setText("way round")
    assert shelf.shown() == ["bypass_valve"]
    shelf.find_box.setText("no such thing")
    assert shelf.shown() == []
    QTest.keyClick(shelf.find_box, Qt.Key.Key_Escape)
    assert sorted(shelf.shown()) == sorted(kinds())


def test_enter_takes_the_first_one_found(shelf: Shelf, taken: list[Kind]) -> None:
    QTest.keyClicks(shelf.find_box, "zone valve")
    QTest.keyClick(shelf.find_box, Qt.Key.Key_Return)
    assert [kind.name for kind in taken] == ["zone_valve"]
    shelf.find_box.clear()
    QTest.keyClick(shelf.find_box, Qt.Key.Key_Return)
    assert len(taken) == 1


def test_keys_go_from_the_find_box_to_the_list_and_take(shelf: Shelf, taken: list[Kind]) -> None:
    QTest.keyClicks(shelf.find_box, "pump")
    (first,) = shelf.shown()
    QTest.keyClick(shelf.find_box, Qt.Key.Key_Down)
    QTest.keyClick(shelf.tree, Qt.Key.Key_Return)
    assert [kind.name for kind in taken] == [first]


def test_a_click_takes_a_kind_and_opens_a_group(shelf: Shelf, taken: list[Kind]) -> None:
    group = shelf.tree.topLevelItem(0)
    assert group is not None and group.isExpanded()
    kind = child(group, 0)
    place = shelf.tree.visualItemRect(kind).center()
    QTest.mouseClick(shelf.tree.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert [each.title for each in taken] == [kind.text(0)]
    place = shelf.tree.visualItemRect(group).center()
    QTest.mouseClick(shelf.tree.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert not group.isExpanded()
    assert group.text(0).endswith(f"({group.childCount()})")


def test_a_drag_carries_the_kind(shelf: Shelf) -> None:
    group = shelf.tree.topLevelItem(0)
    assert group is not None
    carried = shelf.tree.mimeData([child(group, 0)])
    found = kind_in(carried)
    assert found is not None and found.title == child(group, 0).text(0)
    assert kind_in(shelf.tree.mimeData([group])) is None
    assert kind_in(QMimeData()) is None
    strange = mime_of(found)
    strange.setData("application/x-circuitcheck-kind", b"\xff no such kind")
    assert kind_in(strange) is None


def test_the_strip_shows_symbols_alone(shelf: Shelf) -> None:
    shelf.set_strip(True)
    assert shelf.maximumWidth() == STRIP_PX
    assert shelf.find_box.isHidden()
    group = shelf.tree.topLevelItem(0)
    assert group is not None and group.isExpanded() and group.text(0) == ""
    item = child(group, 0)
    assert item.text(0) == "" and not item.icon(0).isNull()
    assert item.data(0, Qt.ItemDataRole.AccessibleTextRole)
    shelf.set_strip(False)
    assert group.text(0) == "Heat and stores" and item.text(0)


@pytest.mark.parametrize("theme", [themes.light(), themes.dark()], ids=["light", "dark"])
def test_every_kind_has_a_symbol_that_can_be_seen(shelf: Shelf, theme: themes.Theme) -> None:
    shelf.set_theme(theme)
    for index in range(shelf.tree.topLevelItemCount()):
        group = shelf.tree.topLevelItem(index)
        assert group is not None
        for row in range(group.childCount()):
            image = child(group, row).icon(0).pixmap(28, 28).toImage()
            drawn = {
                image.pixelColor(x, y).alpha() for x in range(image.width()) for y in range(image.height())
            }
            assert max(drawn) == 255, child(group, row).text(0)

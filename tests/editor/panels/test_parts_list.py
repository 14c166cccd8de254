"""The parts list: what is drawn, by name."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from circuitcheck.editor.panels.parts_list import ID, PartsList
from tests.made import made


@pytest.fixture
def parts(qtbot: QtBot) -> PartsList:
    made_ = PartsList()
    qtbot.addWidget(made_)
    drawing = made(
        {"hs": "heat_source", "pump": "pump"},
        "p1: hs.flow - pump.in\np2: pump.out - 9,9",
        controls={"rt": ("room_thermostat", ())},
    )
    made_.show_drawing(drawing)
    return made_


def shown(parts: PartsList) -> dict[str, tuple[str, str]]:
    """Name and kind of each row that is not hidden, by id."""
    items = [parts.tree.topLevelItem(index) for index in range(parts.tree.topLevelItemCount())]
    return {
        item.data(0, ID): (item.text(0), item.text(1))
        for item in items
        if item is not None and not item.isHidden()
    }


def test_it_lists_parts_controls_and_pipes_once_it_is_seen(parts: PartsList) -> None:
    assert shown(parts) == {}
    parts.show()
    assert shown(parts) == {
        "hs": ("Heat source hs", "Heat source"),
        "pump": ("Pump pump", "Pump"),
        "rt": ("Room thermostat rt", "Room thermostat"),
        "p1": ("Heat source hs to pump pump", "Pipe"),
        "p2": ("Pump pump to free end", "Pipe"),
    }


def test_typing_finds(parts: PartsList) -> None:
    parts.show()
    parts.find_box.setText("pipe heat")
    assert list(shown(parts)) == ["p1"]
    parts.find_box.setText("p2")
    assert list(shown(parts)) == ["p2"]


def test_the_selection_goes_both_ways(parts: PartsList) -> None:
    told: list[frozenset[str]] = []
    parts.selected.connect(told.append)
    parts.show_selection(["pump"])
    parts.show()
    assert [item.data(0, ID) for item in parts.tree.selectedItems()] == ["pump"]
    assert told == []
    item = parts.tree.topLevelItem(0)
    assert item is not None
    parts.tree.clearSelection()
    item.setSelected(True)
    assert told[-1] == {item.data(0, ID)}

"""The outline: everything drawn by its name, to find, to walk along, and to hear read out."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import relabel, remove
from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.editor.outline.panel import OutlinePanel
from circuitcheck.editor.outline.rows import Row
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from tests.made import made

FINDING = Finding(
    "pump-against-flow", Grade.DANGER, Says("{part} pumps the wrong way", {"part": "it"}), ("pump",)
)


@pytest.fixture
def drawing() -> Drawing:
    return made(
        {"hs": "heat_source", "pump": "pump"},
        "p1: hs.flow - pump.in\np2: pump.out - 9,9",
        controls={"rt": ("room_thermostat", ("pump",))},
    )


@pytest.fixture
def outline(qtbot: QtBot, drawing: Drawing) -> OutlinePanel:
    panel = OutlinePanel()
    qtbot.addWidget(panel)
    panel.show_drawing(drawing)
    panel.show_findings([FINDING])
    return panel


def told(panel: OutlinePanel, rows: list[Row] | None = None, depth: int = 0) -> list[str]:
    """All rows in their order, each set in by how deep it lies."""
    found = []
    for row in panel.model.outline.top if rows is None else rows:
        found.append("  " * depth + panel.model.outline.text(row))
        found += told(panel, panel.model.outline.below(row), depth + 1)
    return found


def go(panel: OutlinePanel, *key: str) -> None:
    row = panel.model.outline.row_of(key)
    assert row is not None
    panel.tree.setCurrentIndex(panel.model.index_of(row))


def chosen(panel: OutlinePanel) -> list[str]:
    return [str(index.data()) for index in panel.tree.selectedIndexes()]


def test_it_tells_parts_with_ports_pipes_with_ends_and_findings(outline: OutlinePanel) -> None:
    assert told(outline) == []
    outline.show()
    assert told(outline) == [
        "Heat and stores (1)",
        "  Heat source hs",
        "    Port flow: by pipe p1 to pump pump, port in",
        "    Port return: no pipe",
        "    Port relief: no pipe",
        "Moving and steering (1)",
        "  Pump pump",
        "    Port in: by pipe p1 to heat source hs, port flow",
        "    Port out: by pipe p2 to a free end",
        "Controls (1)",
        "  Room thermostat rt",
        "    Acts on pump pump",
        "Pipes (2)",
        "  Pipe p1: heat source hs to pump pump",
        "    End on heat source hs, port flow",
        "    End on pump pump, port in",
        "  Pipe p2: pump pump to free end",
        "    End on pump pump, port out",
        "    Free end",
        "Findings (1)",
        "  Danger: Pump against flow",
        "    Pump pump",
    ]


def test_typing_finds(outline: OutlinePanel) -> None:
    outline.show()
    outline.find_box.setText("pipe heat")
    assert told(outline)[:2] == ["Pipes (1)", "  Pipe p1: heat source hs to pump pump"]
    assert outline.tree.isExpanded(outline.model.index(0, 0))
    outline.find_box.setText("danger pump")
    assert told(outline) == ["Findings (1)", "  Danger: Pump against flow", "    Pump pump"]
    outline.find_box.setText("no such thing")
    assert told(outline) == []


def test_numbers_are_in_order_and_a_label_says_what_it_names(outline: OutlinePanel) -> None:
    drawing = made({f"p{number}": "pump" for number in (10, 9, 100)}, "")
    outline.show_drawing(relabel(drawing, "p9", "p 9"))
    outline.show()
    assert [line for line in told(outline) if line.startswith("  P")][:3] == [
        "  P 9 (Pump)",
        "  Pump p10",
        "  Pump p100",
    ]


def test_the_selection_goes_both_ways(outline: OutlinePanel) -> None:
    said: list[frozenset[str]] = []
    outline.selected.connect(said.append)
    outline.show_selection(["pump"])
    outline.show()
    assert chosen(outline) == ["Pump pump"] and said == []
    assert outline.tree.isExpanded(outline.model.index(1, 0))
    go(outline, "thing", "hs")
    go(outline, "port", "hs", "flow")
    go(outline, "port", "hs", "return")
    go(outline, "finding", "pump-against-flow", "pump")
    assert said == [{"hs"}, {"p1"}, {"hs"}, {"pump"}]
    # What the sheet says back of it leaves the row where it is.
    outline.show_selection(["pump"])
    assert chosen(outline) == ["Danger: Pump against flow"]
    outline.show_selection(["hs", "rt", "p1", "p2"])
    assert len(chosen(outline)) == 4 and len(said) == 4


def test_enter_walks_along_the_pipe_and_opens_a_finding(outline: OutlinePanel, qtbot: QtBot) -> None:
    wanted: list[Finding] = []
    outline.finding_wanted.connect(wanted.append)
    outline.show()
    qtbot.waitExposed(outline)
    go(outline, "port", "hs", "flow")
    QTest.keyClick(outline.tree, Qt.Key.Key_Return)
    assert chosen(outline) == ["Pump pump"]
    QTest.keyClick(outline.tree, Qt.Key.Key_Return)
    assert outline.tree.isExpanded(outline.tree.currentIndex())
    go(outline, "finding", "pump-against-flow", "pump")
    QTest.keyClick(outline.tree, Qt.Key.Key_Return)
    assert wanted == [FINDING]


def test_an_edit_leaves_open_what_was_open_and_one_where_one_was(
    outline: OutlinePanel, drawing: Drawing
) -> None:
    outline.show()
    go(outline, "port", "hs", "flow")
    outline.show_drawing(remove(drawing, ["pump"]))
    outline.bring_up_to_date()
    assert outline.tree.currentIndex().data() == "Port flow: by pipe p1 to a free end"
    assert chosen(outline) == ["Port flow: by pipe p1 to a free end"]
    # A finding of the drawing before may name what is gone.
    go(outline, "finding", "pump-against-flow", "pump")
    assert "  Danger: Pump against flow" in told(outline) and told(outline)[-1] == "    Pump"


def test_a_reader_hears_a_tree(outline: OutlinePanel) -> None:
    outline.show()
    outline.tree.expandAll()
    face = QAccessible.queryAccessibleInterface(outline.tree)
    assert (
        face.role() == QAccessible.Role.Tree and face.text(QAccessible.Text.Name) == "Outline of the drawing"
    )
    rows = [face.child(number) for number in range(face.childCount())]
    said = [row.text(QAccessible.Text.Name) for row in rows if row.role() == QAccessible.Role.TreeItem]
    assert "Danger: Pump against flow. it pumps the wrong way" in said
    assert len(said) == len(told(outline))
    (pump,) = [
        row for row in rows if row.text(QAccessible.Text.Name) == "Pump pump" and row.state().expandable
    ]
    assert pump.state().expanded and pump.rect().height() > 0


def test_of_thousands_of_parts_only_what_is_open_is_made(outline: OutlinePanel) -> None:
    outline.show()
    outline.show_drawing(pumps_in_a_row(10_000))
    outline.bring_up_to_date()
    assert told_rows(outline) < 20, "nothing that is closed has been made"
    go(outline, "thing", "c5000")
    assert outline.tree.currentIndex().data() == "Pump c5000"


def pumps_in_a_row(count: int) -> Drawing:
    kind = kinds()["pump"]
    parts = {f"c{number}": Component(f"c{number}", kind, at=Point(number, 0)) for number in range(count)}
    pipes = {
        f"p{number}": Pipe(f"p{number}", (Joint(f"c{number}", "out"), Joint(f"c{number + 1}", "in")))
        for number in range(count - 1)
    }
    return Drawing(components=parts, pipes=pipes)


def told_rows(panel: OutlinePanel) -> int:
    return len(panel.model.outline._numbered)

"""Plain text only: what the helpers make, and that nobody goes round them."""

from __future__ import annotations

import ast
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QTextDocument
from PySide6.QtWidgets import QMessageBox, QWidget

import circuitcheck.editor
from circuitcheck.editor import plain

EVIL = '<b>bold</b> <img src="file:///etc/hostname"> & <a href="x">'
FORBIDDEN = {"setHtml", "setToolTip", "insertHtml", "appendHtml", "QLabel", "QMessageBox", "setWhatsThis"}
EDITOR = Path(circuitcheck.editor.__file__).parent


def called(path: Path) -> set[str]:
    """The names of all that a module calls, methods of any object included."""
    names = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Call):
            match node.func:
                case ast.Name(id=name) | ast.Attribute(attr=name):
                    names.add(name)
    return names


def names(path: Path) -> set[str]:
    """Every name that a module uses, by itself or of something."""
    nodes = ast.walk(ast.parse(path.read_text(encoding="utf-8")))
    return {
        node.id if isinstance(node, ast.Name) else node.attr
        for node in nodes
        if isinstance(node, ast.Name | ast.Attribute)
    }


def test_the_rule_sees_what_it_forbids() -> None:
    assert {"QLabel", "QMessageBox", "setToolTip"} <= called(EDITOR / "plain.py")


def test_no_module_makes_texts_that_could_be_markup() -> None:
    modules = [path for path in sorted(EDITOR.rglob("*.py")) if path.name != "plain.py"]
    assert len(modules) > 50
    assert {path.name: bad for path in modules if (bad := called(path) & FORBIDDEN)} == {}
    tips = [path for path in modules if {"ToolTipRole", "QToolTip"} & names(path)]
    assert len(tips) > 4
    assert [path.name for path in tips if "tip_text" not in called(path)] == []


def test_a_label_shows_its_text_as_it_is(qapp: object) -> None:
    made = plain.label(EVIL, wrap=True, selectable=True)
    assert made.textFormat() is Qt.TextFormat.PlainText
    assert made.text() == EVIL


def test_a_tooltip_shows_its_text_as_it_is(qapp: object) -> None:
    widget = QWidget()
    plain.set_tip(widget, EVIL)
    assert widget.toolTip().startswith("<qt>")
    document = QTextDocument()
    document.setHtml(widget.toolTip())
    assert document.toPlainText() == EVIL
    plain.set_tip(widget, "")
    assert widget.toolTip() == ""


def test_a_message_shows_its_texts_as_they_are(qapp: object) -> None:
    box = plain.message(None, EVIL, EVIL, icon=QMessageBox.Icon.Warning, details=EVIL)
    assert box.textFormat() is Qt.TextFormat.PlainText
    assert (box.text(), box.informativeText(), box.detailedText()) == (EVIL, EVIL, EVIL)


def test_no_letter_of_a_name_becomes_a_mnemonic() -> None:
    assert plain.action_text("Pipes & valves") == "Pipes && valves"

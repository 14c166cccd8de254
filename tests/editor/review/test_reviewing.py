"""Review in the window: notes, acceptances, comparing and the record, each step undone by one undo."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QTabBar, QTreeWidgetItem, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import move, remove, set_field
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.review.accepting import AcceptDialog
from circuitcheck.editor.reviewing import BROKEN, Reviewing
from circuitcheck.editor.window import MainWindow
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

SAMPLES = data_path("samples")
FAULTY, SOUND = "cottage-safety-valve-plugged", "cottage"


@pytest.fixture
def window(
    qtbot: QtBot, qapp: QApplication, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[MainWindow]:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    palette, sheet = qapp.palette(), qapp.styleSheet()
    made = MainWindow(Document(), settings, Appearances(settings))
    monkeypatch.setattr(made.files, "ask_unsaved", lambda: Answer.DISCARD)
    made.resize(1440, 900)
    made.show()
    made.reviewing.dock.show()
    yield made
    made.close()
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)


@pytest.fixture
def reviewing(window: MainWindow) -> Reviewing:
    window.reviewing.panel.author.setText("A. Looker")
    return window.reviewing


def show(window: MainWindow, qtbot: QtBot, name: str) -> Drawing:
    window.files.open_sample(SAMPLES / f"{name}.wetcircuit")
    wait(window, qtbot)
    return window.document.drawing


def wait(window: MainWindow, qtbot: QtBot) -> None:
    qtbot.waitUntil(
        lambda: window.document.analysis is not None and not window.reviewing.is_busy, timeout=20_000
    )


def texts(widget: QWidget) -> str:
    return "\n".join(each.text() for each in widget.findChildren(QLabel) if not each.isHidden())


def pin(reviewing: Reviewing, text: str) -> None:
    reviewing.panel.notes.box.setPlainText(text)
    reviewing.panel.notes.pin.click()


def test_a_note_is_pinned_answered_settled_and_each_is_one_step(
    window: MainWindow, reviewing: Reviewing, qtbot: QtBot
) -> None:
    before = show(window, qtbot, SOUND)
    window.sheet.select(("pump",))
    pin(reviewing, "Which <b>speed</b>?")
    (note,) = window.document.drawing.notes
    assert (note.on, note.author, note.text) == (("pump",), "A. Looker", "Which <b>speed</b>?")
    assert window.document.undo_text == "Pin note on Pump"
    assert window.sheet.review.pins == {"pump": 1}
    assert "Which <b>speed</b>?" in texts(reviewing.panel.notes)
    labels = reviewing.panel.notes.cards[note.id].findChildren(QLabel)
    assert {each.textFormat() for each in labels} == {Qt.TextFormat.PlainText}

    card = reviewing.panel.notes.cards[note.id]
    card.box.setPlainText("The second.")
    card.answer.click()
    assert window.document.drawing.notes[0].replies[0].text == "The second."
    reviewing.panel.notes.cards[note.id].turn.click()
    assert window.document.drawing.notes[0].state == "settled" and window.sheet.review.pins == {}
    reviewing.panel.notes.cards[note.id].turn.click()
    assert window.document.drawing.notes[0].state == "open"
    reviewing.panel.notes.cards[note.id].take_out.click()
    assert window.document.drawing.notes == ()
    names = []
    while window.document.undo_text:
        names.append(window.document.undo_text)
        window.document.undo()
    assert names == ["Take out note", "Open note again", "Settle note", "Answer note", "Pin note on Pump"]
    assert window.document.drawing is before


def test_without_a_name_nothing_is_said_and_the_box_for_it_is_asked(window: MainWindow, qtbot: QtBot) -> None:
    show(window, qtbot, SOUND)
    pin(window.reviewing, "Hello")
    assert window.document.drawing.notes == () and window.reviewing.panel.notes.box.toPlainText() == "Hello"
    assert "name" in window.status.hint


def test_a_note_outlives_its_part_and_says_so(window: MainWindow, reviewing: Reviewing, qtbot: QtBot) -> None:
    show(window, qtbot, SOUND)
    window.sheet.select(("pump",))
    pin(reviewing, "Keep")
    window.document.do("Remove", remove(window.document.drawing, ("pump",)))
    assert "Pump (gone)" in texts(reviewing.panel.notes) and window.sheet.review.pins == {}


def test_a_finding_is_accepted_from_its_card_and_taken_back(
    window: MainWindow, reviewing: Reviewing, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    show(window, qtbot, FAULTY)

    def fill(dialog: AcceptDialog) -> int:
        assert not dialog.confirm.isEnabled() and dialog.author.text() == "A. Looker"
        dialog.reason.setPlainText("For the pressure test only.")
        dialog.limited.setChecked(True)
        assert dialog.confirm.isEnabled() and dialog.last_day is not None
        return 1

    monkeypatch.setattr(AcceptDialog, "exec", fill)
    (finding,) = window.findings.findings
    window.findings.choose(finding)
    assert window.findings.card is not None
    click(window.findings.card, "Accept this finding…")
    wait(window, qtbot)
    (acceptance,) = window.document.drawing.acceptances
    assert acceptance.check == finding.check and acceptance.until is not None
    assert "For the pressure test only." in texts(window.findings.card)
    assert "For the pressure test only." in texts(reviewing.panel.accepted)
    assert window.document.undo_text == "Accept finding"
    click(window.findings.card, "Take the acceptance back")
    wait(window, qtbot)
    assert window.document.drawing.acceptances == ()


def click(widget: QWidget, text: str) -> None:
    next(each for each in widget.findChildren(QAbstractButton) if each.text() == text).click()


def lines(window: MainWindow) -> dict[str, list[str]]:
    tree = window.reviewing.panel.comparison.tree
    tops = [tree.topLevelItem(row) for row in range(tree.topLevelItemCount())]
    return {top.text(0): children(top) for top in tops if top is not None}


def children(top: QTreeWidgetItem) -> list[str]:
    below = (top.child(row) for row in range(top.childCount()))
    return [each.text(0) for each in below if each is not None]


def test_what_differs_from_an_earlier_file_is_drawn_and_listed_and_follows_edits(
    window: MainWindow, reviewing: Reviewing, qtbot: QtBot
) -> None:
    show(window, qtbot, FAULTY)
    assert reviewing.comparing.compare_with(SAMPLES / f"{SOUND}.wetcircuit")
    wait(window, qtbot)
    assert window.sheet.review.shown["outside"] == "removed" and window.sheet.review.shown["plug"] == "fitted"
    assert window.sheet.review.shown["p50"] == "re-piped"
    told = lines(window)
    assert told["−  Removed (1)"] == ["Outside wall (outside)"] and told["+  Fitted (1)"] == ["Plug (plug)"]
    assert told["Strip out (1)"] == ["1 × discharge end"] and told["Fit (1)"] == ["1 × cap 15 mm"]
    assert told["Findings that came (1)"][0].startswith("! danger")

    window.document.do("Move", move(window.document.drawing, ("pump",), 1, 0))
    wait(window, qtbot)
    assert window.sheet.review.shown["pump"] == "moved"
    window.document.do("Set", set_field(window.document.drawing, "store", "volume_l", 333))
    wait(window, qtbot)
    assert window.sheet.review.shown["store"] == "changed"
    reviewing.comparing.stop()
    assert window.sheet.review.shown == {} and "Choose an earlier file" in reviewing.panel.comparison.said


def test_a_file_that_is_none_is_told_and_nothing_is_compared(
    window: MainWindow, reviewing: Reviewing, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    show(window, qtbot, SOUND)
    broken = tmp_path / "broken.wetcircuit"
    broken.write_text("{", encoding="utf-8")
    monkeypatch.setattr("PySide6.QtWidgets.QMessageBox.exec", lambda box: 0)
    assert not reviewing.comparing.compare_with(broken) and not reviewing.comparing.compare_with(
        tmp_path / "none.wetcircuit"
    )


def test_a_record_is_made_holds_and_is_broken_by_one_pipe_and_says_why(
    window: MainWindow, reviewing: Reviewing, qtbot: QtBot
) -> None:
    show(window, qtbot, SOUND)
    page = reviewing.panel.record
    page.role.setText("supervisor")
    page.remarks.setPlainText("Well drawn.")
    page.sign.click()
    wait(window, qtbot)
    assert window.document.undo_text == "Make review record"
    (review,) = window.document.drawing.reviews
    assert (review.author, review.role, review.date) == ("A. Looker", "supervisor", date.today().isoformat())
    assert "✓ Holds" in texts(page) and "cannot prove who made it" in texts(page)

    window.document.do("Set size", set_field(window.document.drawing, "p50", "size_mm", 22))
    wait(window, qtbot)
    assert "✕ Broken" in texts(page) and "pipe p50, size from 15 mm to 22 mm" in texts(page)
    assert window.status.hint == BROKEN
    click(page.cards[0], "Show what changed")
    wait(window, qtbot)
    assert window.sheet.review.shown == {"p50": "changed"}
    window.document.undo()
    wait(window, qtbot)
    assert "✓ Holds" in texts(page)


def test_everything_to_do_has_a_name_for_a_screen_reader(
    window: MainWindow, reviewing: Reviewing, qtbot: QtBot
) -> None:
    show(window, qtbot, SOUND)
    pin(reviewing, "On all of it")
    for each in reviewing.panel.findChildren(QAbstractButton):
        # The arrows that scroll the tabs are Qt's own.
        assert each.accessibleName() or each.text() or isinstance(each.parent(), QTabBar)
    assert reviewing.panel.comparison.tree.accessibleName() and reviewing.panel.author.accessibleName()


def test_comparing_ends_with_another_drawing(window: MainWindow, reviewing: Reviewing, qtbot: QtBot) -> None:
    show(window, qtbot, FAULTY)
    reviewing.comparing.compare_with(SAMPLES / f"{SOUND}.wetcircuit")
    wait(window, qtbot)
    show(window, qtbot, SOUND)
    assert window.sheet.review.shown == {} and window.document.drawing == read(
        SAMPLES / f"{SOUND}.wetcircuit"
    )

"""The window of practice: chosen, answered by mouse or by keys alone, scored on the drawing, kept and exported."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QPointF, QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.learning import practising
from circuitcheck.editor.learning.practice_marks import FALSE, MARKED, OUTCOMES
from circuitcheck.editor.learning.practice_setup import Wanted
from circuitcheck.editor.learning.practice_window import PracticeWindow
from circuitcheck.editor.sheet.laying_out import BESIDE
from circuitcheck.editor.theme import dark, high_contrast_light, light
from circuitcheck.editor.window import MainWindow
from circuitcheck.lessons.catalogue import faults
from circuitcheck.lessons.generator import Exercise
from circuitcheck.lessons.progress import read
from circuitcheck.lessons.scoring import WHOLE, Mark, Outcome

TODAY = date(2031, 5, 6)
TWO = Wanted(("filling-link-left-connected", "vessel-absent"), 2, "no-store", 5)


@pytest.fixture
def practice(qtbot: QtBot, tmp_path: Path) -> Iterator[PracticeWindow]:
    """The window, shown, with no progress yet; the next surprise is 4711."""
    window = PracticeWindow(tmp_path / "practice.json", light(), today=lambda: TODAY, surprise=lambda: 4711)
    qtbot.addWidget(window)
    window.resize(1200, 800)
    window.show()
    window.activateWindow()
    yield window
    window.close_down()


def begun(qtbot: QtBot, practice: PracticeWindow, wanted: Wanted = TWO) -> Exercise:
    practice.begin(wanted)
    qtbot.waitUntil(lambda: not practice.is_busy, timeout=20_000)
    assert practice.exercise is not None
    return practice.exercise


def place_of(practice: PracticeWindow, id: str) -> QPoint:
    """Where to press for a thing: a pipe in the middle of its first run, else the middle of its box."""
    line = practice.sheet.content.layout.lines.get(id)
    if line:
        (ax, ay), (bx, by) = line[0], line[1]
        return practice.sheet.mapFromScene(QPointF((ax + bx) / 2, (ay + by) / 2))
    return practice.sheet.mapFromScene(practice.sheet.content.box(id).center())


def press(practice: PracticeWindow, id: str) -> None:
    QTest.mouseClick(practice.sheet.viewport(), Qt.MouseButton.LeftButton, pos=place_of(practice, id))


def key(widget: QWidget, which: Qt.Key, keys: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(widget, which, keys)


def marked(practice: PracticeWindow) -> list[Mark]:
    return list(practice.marks)


def outcomes(practice: PracticeWindow) -> dict[str, Outcome]:
    assert practice.result is not None
    return {told.planted.check: told.outcome for told in practice.result.told}


def test_where_the_keys_go_is_seen_from_the_first(practice: PracticeWindow, qtbot: QtBot) -> None:
    qtbot.waitUntil(practice.setup.begin.hasFocus)
    QTest.keyClick(practice.setup.begin, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: practice.exercise is not None, timeout=20_000)
    assert practice.sheet.hasFocus() and practice.sheet.property("keys")


def test_before_an_exercise_the_sound_drawing_is_shown(practice: PracticeWindow) -> None:
    first = next(iter(arrangements().values()))
    assert practice.sheet.content.drawing is first.drawing
    practice.setup.arrangement.setCurrentIndex(practice.setup.arrangement.findData("open-vented"))
    assert practice.sheet.content.drawing is arrangements()["open-vented"].drawing
    press(practice, "pump")
    assert practice.answer.place is None and practice.marks == ()


def test_what_is_chosen_is_what_is_wanted(practice: PracticeWindow) -> None:
    assert practice.setup.wanted == Wanted(tuple(practice.setup.wanted.kinds), 3, None, None)
    assert sorted(practice.setup.wanted.kinds) == sorted(faults())
    practice.setup.none.click()
    assert practice.setup.wanted.kinds == () and not practice.setup.is_ready
    practice.setup.choose({"gauge-absent"})
    practice.setup.set_count(1)
    practice.setup.seed.setText("42")
    assert practice.setup.wanted == Wanted(("gauge-absent",), 1, None, 42) and practice.setup.is_ready
    practice.setup.all.click()
    assert len(practice.setup.wanted.kinds) == len(faults())


def test_a_topic_is_ticked_as_a_whole(practice: PracticeWindow) -> None:
    practice.setup.none.click()
    head = practice.setup.kinds.topLevelItem(0)
    assert head is not None
    head.setCheckState(0, Qt.CheckState.Checked)
    chosen = practice.setup.wanted.kinds
    assert len(chosen) == head.childCount() and {faults()[each].topic for each in chosen} == {"circulation"}


def test_an_answer_by_mouse(qtbot: QtBot, practice: PracticeWindow) -> None:
    made = begun(qtbot, practice)
    assert practice.pages.currentWidget() is practice.answer
    assert practice.answer.title.text() == "Find the 2 faults"
    press(practice, "link")
    assert practice.answer.at_hand.text() == "Filling link"
    practice.answer.reasons.edit.setText("link left")
    assert practice.answer.reasons.shown() == ["filling-link-left-connected"]
    key(practice.answer.reasons.edit, Qt.Key.Key_Return)
    practice.answer.whole.click()
    practice.answer.reasons.edit.setText("no expansion vessel")
    row = practice.answer.reasons.list.currentItem()
    assert row is not None
    practice.answer.reasons.list.itemActivated.emit(row, 0)
    press(practice, "stop")
    practice.answer.reasons.edit.setText("stop-valve-absent")
    key(practice.answer.reasons.edit, Qt.Key.Key_Return)
    assert [mark.place for mark in practice.marks] == ["link", WHOLE, "stop"]
    assert [(each.id, each.text, each.look) for each in practice.sheet.marks.shown] == [
        ("link", "1", MARKED),
        ("stop", "3", MARKED),
    ]
    practice.answer.show_button.click()
    assert practice.pages.currentWidget() is practice.results
    assert outcomes(practice) == {each.check: Outcome.FOUND for each in made.planted}
    assert practice.results.points.text() == "1.5 of 2 points"
    assert practice.results.said.text() == "2 found, 0 for another reason, 0 missed, 1 accused wrongly."


def test_an_answer_by_keys_alone(qtbot: QtBot, practice: PracticeWindow) -> None:
    practice.setup.choose({"filling-link-left-connected"})
    practice.setup.set_count(1)
    practice.setup.arrangement.setCurrentIndex(practice.setup.arrangement.findData("no-store"))
    practice.setup.begin.setFocus()
    key(practice.setup.begin, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: not practice.is_busy, timeout=20_000)
    assert practice.exercise is not None and practice.exercise.seed == 4711
    qtbot.waitUntil(practice.sheet.hasFocus)
    for _ in range(200):
        if practice.sheet.chosen_id == "link":
            break
        key(practice.sheet, Qt.Key.Key_Tab)
    assert practice.sheet.chosen_id == "link"
    key(practice.sheet, Qt.Key.Key_Return)
    edit = practice.answer.reasons.edit
    qtbot.waitUntil(edit.hasFocus)
    QTest.keyClicks(edit, "left connected")
    key(edit, Qt.Key.Key_Return)
    assert practice.marks == (Mark("link", "filling-link-left-connected"),)
    qtbot.waitUntil(practice.sheet.hasFocus)
    key(practice.answer.show_button, Qt.Key.Key_Space)
    assert outcomes(practice) == {"filling-link-left-connected": Outcome.FOUND}
    qtbot.waitUntil(practice.results.list.hasFocus)


def test_a_whole_exercise_is_set_and_answered_by_keys_alone(qtbot: QtBot, practice: PracticeWindow) -> None:
    """Kinds, number, arrangement and seed chosen, the fault found, the answer read, and the next begun."""
    alt, setup = Qt.KeyboardModifier.AltModifier, practice.setup
    qtbot.waitUntil(practice.isActiveWindow)
    key(practice, Qt.Key.Key_O, alt)
    qtbot.waitUntil(lambda: setup.wanted.kinds == ())
    setup.kinds.setFocus()
    for _ in range(200):
        item = setup.kinds.currentItem()
        if item is not None and item.text(0) == "Filling link left connected":
            break
        key(setup.kinds, Qt.Key.Key_Right)
        key(setup.kinds, Qt.Key.Key_Down)
    key(setup.kinds, Qt.Key.Key_Space)
    assert setup.wanted.kinds == ("filling-link-left-connected",)
    key(practice, Qt.Key.Key_F, alt)
    qtbot.waitUntil(setup.count.hasFocus)
    key(setup.count, Qt.Key.Key_Home)
    key(practice, Qt.Key.Key_S, alt)
    qtbot.waitUntil(setup.seed.hasFocus)
    QTest.keyClicks(setup.seed, "7")
    assert (setup.wanted.count, setup.wanted.seed) == (1, 7)
    key(practice, Qt.Key.Key_B, alt)
    qtbot.waitUntil(lambda: practice.exercise is not None and not practice.is_busy, timeout=20_000)
    made = practice.exercise
    assert made is not None and made.seed == 7
    qtbot.waitUntil(practice.sheet.hasFocus)
    (fault,) = made.planted
    for _ in range(200):
        if practice.sheet.chosen_id in fault.parts:
            break
        key(practice.sheet, Qt.Key.Key_Tab)
    key(practice.sheet, Qt.Key.Key_Return)
    qtbot.waitUntil(practice.answer.reasons.edit.hasFocus)
    QTest.keyClicks(practice.answer.reasons.edit, "left connected")
    key(practice.answer.reasons.edit, Qt.Key.Key_Return)
    key(practice, Qt.Key.Key_S, alt)
    qtbot.waitUntil(lambda: practice.pages.currentWidget() is practice.results)
    assert outcomes(practice) == {fault.check: Outcome.FOUND}
    key(practice, Qt.Key.Key_N, alt)
    qtbot.waitUntil(lambda: practice.pages.currentWidget() is practice.answer, timeout=20_000)
    assert practice.exercise is not None and practice.exercise.seed != 7


def test_arrows_reach_pipes_too_and_escape_lets_go(qtbot: QtBot, practice: PracticeWindow) -> None:
    begun(qtbot, practice)
    practice.sheet.setFocus()
    seen = set()
    practice.sheet.choose("source")
    for step in (Qt.Key.Key_Right, Qt.Key.Key_Down, Qt.Key.Key_Right, Qt.Key.Key_Right, Qt.Key.Key_Up):
        key(practice.sheet, step)
        seen.add(practice.sheet.chosen_id)
    drawing = practice.sheet.content.drawing
    assert seen & drawing.pipes.keys() and seen & drawing.components.keys()
    assert "At " in practice.sheet.accessibleDescription()
    key(practice.sheet, Qt.Key.Key_Escape)
    assert practice.sheet.chosen_id == "" and practice.answer.place is None


def test_a_pipe_can_be_pressed(qtbot: QtBot, practice: PracticeWindow) -> None:
    made = begun(qtbot, practice)
    pipe = made.drawing.pipes_of("kitchen")[0]
    press(practice, pipe)
    assert practice.answer.place == pipe and practice.answer.remark.text().startswith("From ")


def test_marks_can_be_taken_back(qtbot: QtBot, practice: PracticeWindow) -> None:
    begun(qtbot, practice)
    first, second = Mark("pump", "open-end"), Mark("link", "gauge-absent")
    practice.mark(first)
    practice.mark(second)
    practice.mark(second)
    assert marked(practice) == [first, second]
    practice.answer.marks.choose_row(0)
    assert practice.sheet.chosen_id == "pump"
    key(practice.answer.marks, Qt.Key.Key_Delete)
    assert marked(practice) == [second]
    practice.answer.take_back.click()
    assert marked(practice) == [] and not practice.answer.take_back.isEnabled()


def test_what_is_open_shows_no_mark_until_the_answer_is_out(qtbot: QtBot, practice: PracticeWindow) -> None:
    made = begun(qtbot, practice, Wanted(("open-end",), 1, "no-store", 3))
    tee = made.planted[0].parts[0]
    assert practice.sheet.content.parts[tee].view.ports == ()
    practice.show_answer()
    assert practice.sheet.content.parts[tee].view.ports


def test_the_answer_is_told_by_words_and_outlines_not_by_colour_alone(
    qtbot: QtBot, practice: PracticeWindow
) -> None:
    made = begun(qtbot, practice)
    practice.mark(Mark("link", "gauge-absent"))
    practice.mark(Mark("kitchen", "open-end"))
    practice.show_answer()
    shown = {each.id: (each.text, each.look) for each in practice.sheet.marks.shown}
    assert shown["link"] == ("other reason", OUTCOMES[Outcome.WRONG_REASON])
    assert shown["kitchen"] == ("sound", FALSE)
    missed = next(each for each in made.planted if each.check == "vessel-absent")
    assert shown[missed.parts[0]] == ("missed", OUTCOMES[Outcome.MISSED])
    looks = [*OUTCOMES.values(), FALSE]
    assert len({look.dash for look in looks}) == len(looks)


def test_each_row_is_explained_and_shown(qtbot: QtBot, practice: PracticeWindow) -> None:
    made = begun(qtbot, practice)
    practice.mark(Mark("kitchen", "open-end"))
    practice.show_answer()
    for row, planted in enumerate(made.planted):
        practice.results.list.choose_row(row)
        card = practice.results.card.widget()
        assert card is not None
        texts = [each.text() for each in card.findChildren(type(practice.results.points))]
        assert str(planted.says) in texts and faults()[planted.check].happens in texts
    practice.results.list.choose_row(len(made.planted))
    card = practice.results.card.widget()
    assert card is not None
    assert "Kitchen is sound in this." in [
        each.text() for each in card.findChildren(type(practice.results.points))
    ]


def test_it_is_kept_and_counted_and_exported(qtbot: QtBot, practice: PracticeWindow, tmp_path: Path) -> None:
    begun(qtbot, practice)
    practice.mark(Mark("link", "filling-link-left-connected"))
    practice.show_answer()
    practice.show_answer()
    kept = read(tmp_path / "practice.json")
    assert len(kept.exercises) == 1 and kept.exercises[0].date == "2031-05-06"
    assert practice.results.kept.isHidden()
    practice.show_progress()
    assert practice.pages.currentWidget() is practice.progress
    first = practice.progress.table.topLevelItem(0)
    assert first is not None and first.text(0) == "Heated water has no expansion vessel"
    assert [first.text(column) for column in range(1, 5)] == ["1", "0", "0", "0"]
    target = tmp_path / "out"
    practice.progress.ask_path = lambda parent, title, ending: str(target)
    practice.progress.csv.click()
    practice.progress.json.click()
    rows = list(csv.DictReader(io.StringIO(target.with_suffix(".csv").read_text("utf-8-sig"))))
    assert {row["check"]: row["outcome"] for row in rows} == {
        "filling-link-left-connected": "found",
        "vessel-absent": "missed",
    }
    assert len(json.loads(target.with_suffix(".json").read_bytes())["exercises"]) == 1
    practice.progress.back.click()
    practice.setup.suggest.click()
    assert "vessel-absent" in practice.setup.wanted.kinds and len(practice.setup.wanted.kinds) == 5


def test_an_export_that_fails_is_told(qtbot: QtBot, practice: PracticeWindow, tmp_path: Path) -> None:
    begun(qtbot, practice)
    practice.show_answer()
    practice.show_progress()
    practice.progress.ask_path = lambda parent, title, ending: str(tmp_path / "nowhere" / "x.csv")
    practice.progress.csv.click()
    assert "x.csv was not written" in practice.progress.fault.text()


def test_a_broken_file_is_told_and_never_written_over(qtbot: QtBot, tmp_path: Path) -> None:
    file = tmp_path / "practice.json"
    file.write_text("{broken")
    window = PracticeWindow(file, light(), today=lambda: TODAY)
    qtbot.addWidget(window)
    begun(qtbot, window)
    window.show_answer()
    assert "Progress is not kept" in window.results.kept.text()
    assert file.read_text() == "{broken" and len(window.log.exercises) == 1
    window.close_down()


def test_the_same_again_and_the_next(qtbot: QtBot, practice: PracticeWindow) -> None:
    made = begun(qtbot, practice)
    practice.show_answer()
    practice.results.again_button.click()
    again = practice.exercise
    assert again is made and marked(practice) == [] and practice.result is None
    practice.show_answer()
    practice.results.another_button.click()
    qtbot.waitUntil(lambda: not practice.is_busy, timeout=20_000)
    following = practice.exercise
    assert following is not None and following.seed == 4711
    assert {each.check for each in following.planted} == set(TWO.kinds)


def test_what_cannot_be_made_is_told(qtbot: QtBot, practice: PracticeWindow) -> None:
    practice.begin(Wanted(("tundish-absent",), 1, "no-store", 1))
    qtbot.waitUntil(lambda: not practice.is_busy, timeout=20_000)
    assert practice.exercise is None and practice.pages.currentWidget() is practice.setup
    assert practice.setup.isVisible() and practice.setup.is_ready


def test_it_takes_on_other_colours(qtbot: QtBot, practice: PracticeWindow) -> None:
    begun(qtbot, practice)
    practice.mark(Mark("link", "open-end"))
    for theme in (dark(), high_contrast_light()):
        practice.set_theme(theme)
    practice.show_answer()
    practice.set_theme(light())
    assert practice.grab().width() > 0


def test_it_stands_in_the_menu_learn(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(practising, "folder", lambda: tmp_path)
    document, settings = Document(), QSettings(str(tmp_path / "s.ini"), QSettings.Format.IniFormat)
    window = MainWindow(document, settings, Appearances(settings))
    qtbot.addWidget(window)
    menu = window.menus.learn
    assert window.practising.action in menu.actions()
    titles = [action.text() for action in window.menuBar().actions()]
    assert titles.index("&Learn") == len(titles) - 2
    window.practising.action.trigger()
    practice = window.practising.practice
    assert practice is not None and practice.isVisible()
    window.practising.action.trigger()
    assert window.practising.practice is practice
    window.close()
    assert not practice.isVisible()
    document.close()


def test_no_arrangement_is_so_large_that_it_must_be_laid_out_beside_the_window() -> None:
    for arrangement in arrangements().values():
        drawing = arrangement.drawing
        assert 2 * (len(drawing.components) + len(drawing.pipes)) < BESIDE

"""How the panes of the window go together: selection, findings, keys, menus, what it remembers."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPointF, QSettings, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLineEdit, QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import place, remove
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.appearance import Appearance, Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.window import MainWindow
from circuitcheck.finding import Finding
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.report.care import CARE
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

FAULTY, SOUND = "terrace-valve-before-vessel", "cottage"


@pytest.fixture
def settings(tmp_path: Path) -> QSettings:
    return QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)


@pytest.fixture
def window(
    qtbot: QtBot, qapp: QApplication, settings: QSettings, monkeypatch: pytest.MonkeyPatch
) -> Iterator[MainWindow]:
    palette, sheet = qapp.palette(), qapp.styleSheet()
    made = MainWindow(Document(), settings, Appearances(settings))
    monkeypatch.setattr(made.files, "ask_unsaved", lambda: Answer.DISCARD)
    made.resize(1440, 900)
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    yield made
    made.close()
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)


def show(window: MainWindow, qtbot: QtBot, name: str) -> Drawing:
    """Open a sample and wait for its findings."""
    window.files.open_sample(data_path("samples") / f"{name}.wetcircuit")
    wait(window, qtbot)
    return window.document.drawing


def wait(window: MainWindow, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: window.document.analysis is not None, timeout=10_000)


def chosen(window: MainWindow) -> Finding | None:
    return window.findings.finding


def of_kind(drawing: Drawing, kind: str) -> str:
    return next(id for id, part in drawing.components.items() if part.kind.name == kind)


def test_an_empty_drawing(window: MainWindow, qtbot: QtBot) -> None:
    wait(window, qtbot)
    assert window.windowTitle() == "Untitled drawing[*] – circuitcheck"
    assert window.bar.summary() == "Nothing drawn"
    assert not window.actions_.undo.isEnabled() and not window.actions_.next_finding.isEnabled()


def test_the_bar_counts_by_grade_or_says_nothing_found(window: MainWindow, qtbot: QtBot) -> None:
    show(window, qtbot, SOUND)
    assert window.bar.summary() == "Nothing found"
    show(window, qtbot, FAULTY)
    assert window.bar.summary() == "1 danger, 0 fault, 0 advice, 0 unanswered"
    window.bar.grade_wanted.emit(window.findings.findings[0].grade)
    assert window.findings.finding is window.findings.findings[0]


def test_while_it_is_judged_nothing_is_approved(window: MainWindow, qtbot: QtBot) -> None:
    show(window, qtbot, SOUND)
    assert window.bar.summary() == "Nothing found"
    window.document._analysis = None
    window._show_busy()
    assert window.bar.summary() == "Judging…"


def test_the_keys_step_through_findings_and_leave_them(window: MainWindow, qtbot: QtBot) -> None:
    show(window, qtbot, FAULTY)
    window.sheet.setFocus()
    QTest.keyClick(window.sheet, Qt.Key.Key_F8)
    assert chosen(window) is window.findings.findings[0]
    assert window.details_section.is_folded
    assert window.sheet.hasFocus()
    assert window.status.hint.startswith("Finding 1 of 1.")
    window.sheet.select([of_kind(window.document.drawing, "pump")])
    QTest.keyClick(window.sheet, Qt.Key.Key_Escape)
    assert chosen(window) is not None and not window.sheet.selected_ids()
    window.shelf.placing.emit(kinds()["pump"])
    QTest.keyClick(window.sheet, Qt.Key.Key_Escape)
    assert chosen(window) is not None
    QTest.keyClick(window.sheet, Qt.Key.Key_Escape)
    assert chosen(window) is None
    QTest.keyClick(window.sheet, Qt.Key.Key_F8, Qt.KeyboardModifier.ShiftModifier)
    assert chosen(window) is window.findings.findings[-1]


def test_taking_the_valve_away_takes_the_finding_away(window: MainWindow, qtbot: QtBot) -> None:
    drawing = show(window, qtbot, FAULTY)
    window.findings.step(1)
    finding = window.findings.finding
    assert finding is not None
    assert finding.witness is not None
    (valve,) = [id for id in finding.witness.parts if drawing.components[id].kind.name == "isolating_valve"]
    window.document.do("Remove valve", remove(drawing, [valve]))
    wait(window, qtbot)
    assert window.findings.finding is None
    window.document.undo()
    wait(window, qtbot)
    assert [each.check for each in window.findings.findings] == [finding.check]


def test_new_answers_open_no_window_and_take_no_focus(window: MainWindow, qtbot: QtBot) -> None:
    window.sheet.setFocus()
    for name in (SOUND, FAULTY):
        show(window, qtbot, name)
        window.findings.step(1)
        assert window.isActiveWindow() and window.sheet.hasFocus()


def test_what_is_selected_shows_its_details(window: MainWindow, qtbot: QtBot) -> None:
    drawing = show(window, qtbot, SOUND)
    pump = of_kind(drawing, "pump")
    window.details_section.set_folded(True)
    window.sheet.select([pump])
    assert not window.details_section.is_folded
    field = window.details.field("shut_off_head_m")
    assert isinstance(field, QLineEdit)
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, "3,5")
    QTest.keyClick(field, Qt.Key.Key_Return)
    assert window.document.drawing.components[pump].data["shut_off_head_m"] == 3.5
    assert window.document.undo_text.endswith("shut-off head")
    assert window.actions_.undo.text().startswith("&Undo set ")
    assert window.isWindowModified()
    window.actions_.undo.trigger()
    assert window.document.drawing is drawing
    assert not window.isWindowModified()
    assert field.text() != "3.5"


def test_letters_typed_in_a_field_are_no_commands(window: MainWindow, qtbot: QtBot) -> None:
    drawing = show(window, qtbot, SOUND)
    pump = of_kind(drawing, "pump")
    window.sheet.select([pump])
    label = window.details.field("label")
    assert isinstance(label, QLineEdit)
    label.setFocus()
    label.end(False)
    QTest.keyClicks(label, "rmRM")
    QTest.keyClick(label, Qt.Key.Key_Delete)
    QTest.keyClick(label, Qt.Key.Key_Return)
    after = window.document.drawing.components[pump]
    assert after.label.endswith("rmRM")
    assert after.turn == drawing.components[pump].turn


def test_what_undo_brings_back_is_selected(window: MainWindow, qtbot: QtBot) -> None:
    drawing = show(window, qtbot, SOUND)
    pump = of_kind(drawing, "pump")
    window.sheet.select([pump])
    window.actions_.delete.trigger()
    assert pump not in window.document.drawing.components
    window.actions_.undo.trigger()
    assert pump in window.sheet.selected_ids()


def test_a_missing_number_is_brought_up_with_the_caret_in_it(window: MainWindow, qtbot: QtBot) -> None:
    drawing = show(window, qtbot, SOUND)
    window.findings.field_wanted.emit("design", "static_height_m")
    assert window.details.field("static_height_m").hasFocus()
    window.findings.field_wanted.emit(of_kind(drawing, "pump"), "maximum_flow_lpm")
    assert window.details.field("maximum_flow_lpm").hasFocus()


def test_the_outline_and_the_sheet_select_together(window: MainWindow, qtbot: QtBot) -> None:
    drawing = show(window, qtbot, SOUND)
    QTest.keyClick(window, Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    assert window.outline.isVisible()
    pump = of_kind(drawing, "pump")
    window.outline.selected.emit(frozenset({pump}))
    assert window.sheet.selected_ids() == {pump}
    window.sheet.select([of_kind(drawing, "heat_source")])
    names = [index.data() for index in window.outline.tree.selectedIndexes()]
    assert names == ["Heat source"]


def test_a_key_goes_to_the_parts(window: MainWindow, qtbot: QtBot) -> None:
    window.resize(1000, 700)
    assert window.shelf.is_strip
    keys = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(window, Qt.Key.Key_F, keys)
    assert window.shelf.find_box.hasFocus()
    assert not window.shelf.is_strip


def test_a_narrow_window_folds_the_parts(window: MainWindow) -> None:
    assert not window.shelf.is_strip
    window.resize(1100, 800)
    assert window.shelf.is_strip and window.shelf.width() == 56
    window.resize(1440, 900)
    assert not window.shelf.is_strip and window.shelf.width() >= 200


def test_parts_fold_where_a_dock_leaves_the_sheet_little_room(window: MainWindow, qtbot: QtBot) -> None:
    shown = window.reviewing.dock.toggleViewAction()
    shown.trigger()
    qtbot.waitUntil(lambda: window.shelf.is_strip)
    qtbot.waitUntil(lambda: window.sheet.width() > 600)
    shown.trigger()
    qtbot.waitUntil(lambda: not window.shelf.is_strip)


def test_enter_on_the_empty_sheet_places_the_heat_source(window: MainWindow) -> None:
    window.sheet.setFocus()
    QTest.keyClick(window.sheet, Qt.Key.Key_Return)
    QTest.keyClick(window.sheet, Qt.Key.Key_Return)
    assert [part.kind.name for part in window.document.drawing.components.values()] == ["heat_source"]


def test_an_appearance_chosen_in_the_menu(window: MainWindow, settings: QSettings) -> None:
    window.actions_.appearances[Appearance.DARK].trigger()
    assert window.findings._theme.is_dark
    assert Appearances(settings).choice is Appearance.DARK


def test_a_file_dropped_on_the_window_is_opened(window: MainWindow, qtbot: QtBot) -> None:
    path = data_path("samples") / f"{SOUND}.wetcircuit"
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    over = QPointF(700, 400)
    keys, buttons = Qt.KeyboardModifier.NoModifier, Qt.MouseButton.LeftButton
    enter = QDragEnterEvent(over.toPoint(), Qt.DropAction.CopyAction, data, buttons, keys)
    QApplication.sendEvent(window.sheet.viewport(), enter)
    QApplication.sendEvent(window, enter)
    assert enter.isAccepted()
    drop = QDropEvent(over, Qt.DropAction.CopyAction, data, buttons, keys)
    QApplication.sendEvent(window, drop)
    qtbot.waitUntil(lambda: window.document.path == path, timeout=5_000)


def test_closing_asks_about_unsaved_changes(window: MainWindow, monkeypatch: pytest.MonkeyPatch) -> None:
    drawing, _ = place(window.document.drawing, kinds()["pump"], Point(0, 0))
    window.document.do("Place pump", drawing)
    monkeypatch.setattr(window.files, "ask_unsaved", lambda: Answer.CANCEL)
    assert not window.close()
    assert window.isVisible()
    monkeypatch.setattr(window.files, "ask_unsaved", lambda: Answer.DISCARD)
    assert window.close()


def test_place_and_size_are_remembered(window: MainWindow, settings: QSettings, qtbot: QtBot) -> None:
    # The screen of the tests is 800 px wide.
    window.resize(777, 666)
    window.close()
    again = MainWindow(Document(), settings, Appearances(settings))
    try:
        assert again.size() == window.size()
    finally:
        again.close()


def test_a_title_of_the_file_is_shown_as_it_is(window: MainWindow) -> None:
    title = "Flat [*] <b>3</b> & more"
    window.document.do("Set title", Drawing(title=title))
    assert "[*][*] <b>3</b>" in window.windowTitle()
    assert window.windowTitle().endswith("[*] – circuitcheck")


def test_the_about_box_holds_the_words_of_care(window: MainWindow, monkeypatch: pytest.MonkeyPatch) -> None:
    told: list[str] = []

    def read_box(box: QMessageBox) -> int:
        told.append(box.informativeText())
        return 0

    monkeypatch.setattr(QMessageBox, "exec", read_box)
    window.actions_.about.trigger()
    assert CARE in told[0]


def test_every_control_has_a_name_that_can_be_heard(window: MainWindow, qtbot: QtBot) -> None:
    show(window, qtbot, FAULTY)
    window.findings.step(1)
    window.sheet.select([of_kind(window.document.drawing, "heat_source")])
    nameless = [
        widget
        for widget in window.findChildren(QWidget)
        if widget.isVisible()
        and widget.focusPolicy() & Qt.FocusPolicy.TabFocus
        and widget.focusProxy() is None
        and not (widget.accessibleName() or (isinstance(widget, QAbstractButton) and widget.text()))
    ]
    assert nameless == []


def test_the_menus_hold_no_key_twice(window: MainWindow) -> None:
    keys = [
        key.toString()
        for action in window.findChildren(type(window.actions_.new))
        for key in action.shortcuts()
    ]
    assert len(keys) == len(set(keys))
    assert {"F8", "Shift+F8", "Ctrl+Z", "Ctrl+S", "Ctrl+O", "Ctrl+N"} <= set(keys)


def test_twenty_windows_are_opened_and_closed(qtbot: QtBot, settings: QSettings) -> None:
    for _ in range(20):
        made = MainWindow(Document(), settings, Appearances(settings))
        made.show()
        made.document.open_copy(data_path("samples") / f"{FAULTY}.wetcircuit")
        made.findings.step(1)
        made.close()
        made.deleteLater()
        QApplication.processEvents()


def test_a_real_file_goes_round(window: MainWindow, qtbot: QtBot, tmp_path: Path) -> None:
    path = tmp_path / "own.wetcircuit"
    show(window, qtbot, SOUND)
    window.document.save(path)
    assert read(path) == window.document.drawing
    assert window.windowFilePath() == str(path)

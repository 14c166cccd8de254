"""Clipboard, aligning, finding, command search and menus, on the real window."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray, QEvent, QMimeData, QPoint, QPointF, QSettings, Qt
from PySide6.QtGui import QContextMenuEvent, QGuiApplication, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu, QMessageBox
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.value import Joint
from circuitcheck.editor import clipboard
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.window import MainWindow
from circuitcheck.shipped import data_path

CONTROL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
NO_KEYS = Qt.KeyboardModifier.NoModifier
SAMPLE = "terrace-as-proposed"


@pytest.fixture
def settings(tmp_path: Path) -> QSettings:
    return QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)


def shown(settings: QSettings, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> MainWindow:
    made = MainWindow(Document(), settings, Appearances(settings))
    monkeypatch.setattr(made.files, "ask_unsaved", lambda: Answer.DISCARD)
    made.resize(1440, 900)
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


@pytest.fixture
def window(qtbot: QtBot, settings: QSettings, monkeypatch: pytest.MonkeyPatch) -> Iterator[MainWindow]:
    QGuiApplication.clipboard().clear()
    made = shown(settings, qtbot, monkeypatch)
    made.files.open_sample(data_path("samples") / f"{SAMPLE}.wetcircuit")
    made.sheet.setFocus()
    yield made
    made.close()


@pytest.fixture
def told(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """What message boxes say."""
    found: list[str] = []

    def read_box(box: QMessageBox) -> int:
        found.append(f"{box.text()} {box.informativeText()}")
        return 0

    monkeypatch.setattr(QMessageBox, "exec", read_box)
    return found


def key(window: MainWindow, key: Qt.Key, keys: Qt.KeyboardModifier = CONTROL) -> None:
    QTest.keyClick(QApplication.focusWidget() or window.sheet, key, keys)


class TestClipboard:
    def test_a_copy_is_put_in_another_window(
        self, window: MainWindow, qtbot: QtBot, settings: QSettings, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        window.sheet.select(("pump", "t_bypass", "zv_store"))
        key(window, Qt.Key.Key_C)
        other = shown(settings, qtbot, monkeypatch)
        other.sheet.setFocus()
        assert other.actions_.paste.isEnabled()
        key(other, Qt.Key.Key_V)
        drawing = other.document.drawing
        assert sorted(part.kind.name for part in drawing.components.values()) == ["pump", "tee", "zone_valve"]
        (pipe,) = drawing.pipes.values()
        assert pipe.data["size_mm"] == 22
        assert other.document.undo_text == "Paste 3 parts and 1 pipe"
        assert other.sheet.selected_ids() == {*drawing.components, *drawing.pipes}
        key(other, Qt.Key.Key_Z)
        assert not other.document.drawing.components
        other.close()

    def test_pasted_again_it_lies_a_little_aside(self, window: MainWindow) -> None:
        window.sheet.select(("pump",))
        key(window, Qt.Key.Key_C)
        key(window, Qt.Key.Key_V)
        key(window, Qt.Key.Key_V)
        places = [part.at for part in window.document.drawing.components.values() if part.kind.name == "pump"]
        assert len(set(places)) == 3

    def test_other_programs_get_pictures_and_words(self, window: MainWindow, qtbot: QtBot) -> None:
        window.sheet.select_all()
        key(window, Qt.Key.Key_C)
        data = QGuiApplication.clipboard().mimeData()
        assert "Heat source" in data.text() and "53 pipes" in data.text()
        assert data.hasImage()
        png = QImage.fromData(data.data("image/png"))
        assert png.width() > 1000 and png.height() > 500
        colours = {
            png.pixelColor(x, y).name() for x in range(0, png.width(), 7) for y in range(0, png.height(), 7)
        }
        assert len(colours) > 5
        svg = bytes(data.data("image/svg+xml").data()).decode()
        assert "<svg" in svg and "<path" in svg and "<image" not in svg and "Heating vessel" in svg

    def test_cutting_and_duplicating_are_one_step_each(self, window: MainWindow) -> None:
        before = window.document.drawing
        window.sheet.select(("pump",))
        key(window, Qt.Key.Key_X)
        assert window.document.undo_text == "Cut pump"
        assert "pump" not in window.document.drawing.components
        assert len(window.document.drawing.pipes) == len(before.pipes) - 1
        key(window, Qt.Key.Key_Z)
        assert window.document.drawing is before
        window.sheet.select(("zv_store",))
        key(window, Qt.Key.Key_D)
        assert window.document.undo_text == "Duplicate zone valve"

    @pytest.mark.parametrize(
        ("raw", "says"),
        [
            (b"", "cannot be read"),
            (b"\xff\xfe\x00", "cannot be read"),
            (b'{"wetcircuit": 99}', "99"),
            (b'{"wetcircuit": 1, "components": [{"id": "x", "kind": "kettle"}]}', "kettle"),
            (
                b'{"wetcircuit": 1, "components": [{"id": "x", "kind": "pump", "at": [NaN, 1e999]}]}',
                "cannot be read",
            ),
            (
                b'{"wetcircuit": 1, "pipes": [{"id": "p", "ends": [["a", "b"], ["c", "d"]]}]}',
                "cannot be read",
            ),
            (b"[" * 100_000, "cannot be read"),
            (b'{"wetcircuit": 1, "title": "\\ud800"}', "half a character"),
            (b'{"wetcircuit": 1}', "is empty"),
        ],
    )
    def test_hostile_content_gets_a_sentence_and_changes_nothing(
        self, window: MainWindow, told: list[str], raw: bytes, says: str
    ) -> None:
        data = QMimeData()
        data.setData(clipboard.MIME, QByteArray(raw))
        QGuiApplication.clipboard().setMimeData(data)
        before = window.document.drawing
        key(window, Qt.Key.Key_V)
        assert len(told) == 1 and says in told[0] and "Nothing was" in told[0]
        assert window.document.drawing is before

    def test_a_file_copied_as_text_is_taken_and_other_text_is_not(
        self, window: MainWindow, told: list[str]
    ) -> None:
        text = (data_path("samples") / f"{SAMPLE}.wetcircuit").read_text()
        QGuiApplication.clipboard().setText(text)
        count = len(window.document.drawing.components)
        key(window, Qt.Key.Key_V)
        assert len(window.document.drawing.components) == 2 * count
        QGuiApplication.clipboard().setText("A shopping list")
        assert not window.actions_.paste.isEnabled()
        with pytest.raises(clipboard.PasteError, match="nothing on the clipboard"):
            clipboard.fragment_on_clipboard()


class TestArranging:
    def test_parts_are_aligned_and_spread_as_named_steps(self, window: MainWindow) -> None:
        window.sheet.select(("gauge", "safety_valve", "air_vent", "p1"))
        actions = window.actions_
        by_words = {action.text().replace("&", ""): action for action in actions.align.values()}
        by_words["Align bottom"].trigger()
        actions.spread_across.trigger()
        assert window.document.undo_text == "Spread 3 parts"
        window.document.undo()
        window.sheet.select(("gauge", "drain_store", "air_vent"))
        by_words["Align in a row"].trigger()
        assert window.document.undo_text == "Align 3 parts"

    def test_what_cannot_be_done_is_greyed(self, window: MainWindow) -> None:
        actions = window.actions_
        window.sheet.select(())
        assert (
            not actions.copy.isEnabled() and not actions.turn.isEnabled() and not actions.rename.isEnabled()
        )
        window.sheet.select(("pump",))
        assert actions.copy.isEnabled() and actions.rename.isEnabled() and not actions.route.isEnabled()
        assert not any(action.isEnabled() for action in actions.align.values())
        window.sheet.select(("p8",))
        actions.route.trigger()
        assert window.document.undo_text == "Route pipe" and window.document.drawing.pipes["p8"].via is None


class TestFinding:
    def test_a_part_is_found_by_its_label(self, window: MainWindow) -> None:
        key(window, Qt.Key.Key_F)
        box = window.editing.finding.box
        QTest.keyClicks(box.edit, "relief")
        assert box.texts()[:2] == ["Expansion relief", "Temperature relief"] or len(box.texts()) >= 2
        assert len(window.sheet.selected_ids()) == 1
        QTest.keyClick(box.edit, Qt.Key.Key_Down)
        found = window.sheet.selected_ids()
        QTest.keyClick(box.edit, Qt.Key.Key_Return)
        assert window.sheet.selected_ids() == found and window.sheet.hasFocus() and box.isHidden()
        key(window, Qt.Key.Key_F3, NO_KEYS)
        assert window.sheet.selected_ids() != found
        key(window, Qt.Key.Key_F3, SHIFT)
        assert window.sheet.selected_ids() == found

    def test_escape_goes_back_to_where_one_was(self, window: MainWindow) -> None:
        window.sheet.select(("pump",))
        key(window, Qt.Key.Key_F)
        box = window.editing.finding.box
        QTest.keyClicks(box.edit, "kitchen")
        assert window.sheet.selected_ids() == {"sink"}
        QTest.keyClick(box.edit, Qt.Key.Key_Escape)
        assert window.sheet.selected_ids() == {"pump"} and window.sheet.hasFocus()

    def test_pipes_and_nonsense(self, window: MainWindow) -> None:
        key(window, Qt.Key.Key_F)
        box = window.editing.finding.box
        QTest.keyClicks(box.edit, "p12")
        assert window.sheet.selected_ids() == {"p12"}
        QTest.keyClicks(box.edit, "xyz")
        assert box.texts() == [] and box.current is None
        QTest.keyClick(box.edit, Qt.Key.Key_Return)
        assert not box.isHidden()


class TestCommandSearch:
    def test_a_command_is_found_and_run(self, window: MainWindow) -> None:
        window.sheet.select(("pump",))
        key(window, Qt.Key.Key_K)
        box = window.editing.search.box
        QTest.keyClicks(box.edit, "dupl")
        assert box.texts()[0] == "Duplicate"
        QTest.keyClick(box.edit, Qt.Key.Key_Return)
        assert window.document.undo_text == "Duplicate pump"
        assert window.sheet.hasFocus() and box.isHidden()

    def test_a_part_can_be_placed_from_it(self, window: MainWindow) -> None:
        key(window, Qt.Key.Key_K)
        box = window.editing.search.box
        QTest.keyClicks(box.edit, "place tundish")
        QTest.keyClick(box.edit, Qt.Key.Key_Return)
        assert not window.sheet.is_at_rest
        key(window, Qt.Key.Key_Return, NO_KEYS)
        assert window.document.undo_text == "Place tundish"

    def test_every_command_of_the_menus_is_found_by_its_own_words(self, window: MainWindow) -> None:
        search = window.editing.search
        search.begin()
        for command in search.commands:
            search.box.edit.setText(command.words)
            items = [search.box.list.topLevelItem(row) for row in range(search.box.list.topLevelItemCount())]
            assert command.words in [item.text(0) for item in items if item is not None]
        QTest.keyClick(search.box.edit, Qt.Key.Key_Escape)
        assert window.sheet.hasFocus()

    def test_a_menu_filled_anew_meanwhile_is_searched_as_it_is_now(
        self, window: MainWindow, tmp_path: Path
    ) -> None:
        window.document.save(tmp_path / "kept.wetcircuit")
        window.files.open_path(tmp_path / "kept.wetcircuit")
        key(window, Qt.Key.Key_K)
        box = window.editing.search.box
        QTest.keyClicks(box.edit, "kept")
        assert box.texts()[0].startswith("kept")
        window.files.forget_all_recent()
        forget_what_is_deleted()
        QTest.keyClick(box.edit, Qt.Key.Key_Backspace)
        assert not any(text.startswith("kept") for text in box.texts())

    def test_a_command_that_went_meanwhile_does_nothing(self, window: MainWindow, tmp_path: Path) -> None:
        window.document.save(tmp_path / "kept.wetcircuit")
        window.files.open_path(tmp_path / "kept.wetcircuit")
        key(window, Qt.Key.Key_K)
        box = window.editing.search.box
        QTest.keyClicks(box.edit, "kept")
        window.files.forget_all_recent()
        forget_what_is_deleted()
        QTest.keyClick(box.edit, Qt.Key.Key_Return)
        assert box.isHidden()

    def test_the_recent_files_may_change_while_one_of_them_is_chosen(
        self, window: MainWindow, tmp_path: Path
    ) -> None:
        for name in ("one", "other"):
            window.document.save(tmp_path / f"{name}.wetcircuit")
            window.files.open_path(tmp_path / f"{name}.wetcircuit")
        key(window, Qt.Key.Key_K)
        box = window.editing.search.box
        QTest.keyClicks(box.edit, "one  (")
        QTest.keyClick(box.edit, Qt.Key.Key_Return)
        assert window.document.path == tmp_path / "one.wetcircuit"
        key(window, Qt.Key.Key_K)
        QTest.keyClicks(box.edit, "clear the list")
        QTest.keyClick(box.edit, Qt.Key.Key_Return)
        assert window.files.recent() == []


def forget_what_is_deleted() -> None:
    """What is to be deleted later goes now."""
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)


class TestMenus:
    @pytest.fixture(autouse=True)
    def _record(self, monkeypatch: pytest.MonkeyPatch) -> None:
        # The screen of the tests has no windows above others: a menu is taken instead of shown.
        self.shown: list[QMenu] = []
        monkeypatch.setattr(QMenu, "popup", lambda menu, at: self.shown.append(menu))

    def menu_at(self, window: MainWindow, x: float, y: float) -> QMenu:
        viewport = window.sheet.viewport()
        at = window.sheet.mapFromScene(QPointF(x * 16, y * 16))
        QTest.mousePress(viewport, Qt.MouseButton.RightButton, pos=at)
        event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, viewport.mapToGlobal(at))
        QApplication.sendEvent(viewport, event)
        return self.shown[-1]

    def texts(self, menu: QMenu) -> set[str]:
        return {action.text().replace("&", "") for action in menu.actions() if action.text()}

    def test_each_place_has_its_own(self, window: MainWindow) -> None:
        window.sheet.fit()
        part = self.menu_at(window, 20, 13)
        assert window.sheet.selected_ids() == {"pump"}
        assert {"Turn", "Mirror", "Cut", "Copy", "Duplicate", "Delete", "Rename…"} <= self.texts(part)
        part.close()
        pipe = self.menu_at(window, 22, 13)
        assert window.sheet.selected_ids() == {"p4"}
        assert {"Cut a part in…", "Let the program route it", "Delete"} <= self.texts(pipe)
        pipe.close()
        sheet = self.menu_at(window, 17, 19)
        assert window.sheet.selected_ids() == frozenset()
        assert {"Place a part…", "Paste", "Select all"} <= self.texts(sheet)
        sheet.close()
        window.sheet.select(("pump", "gauge"))
        many = self.menu_at(window, 20, 13)
        assert window.sheet.selected_ids() == {"pump", "gauge"}
        assert "Align and spread" in self.texts(many)
        many.close()

    def test_a_part_is_cut_into_the_pipe_by_its_menu(self, window: MainWindow) -> None:
        window.sheet.fit()
        menu = self.menu_at(window, 22, 28)
        (cut_in,) = [action for action in menu.actions() if action.text().startswith("Cut a part")]
        cut_in.trigger()
        menu.close()
        QTest.keyClicks(window.sheet.finder.box.edit, "iso")
        key(window, Qt.Key.Key_Return, NO_KEYS)
        drawing = window.document.drawing
        (valve,) = drawing.components.keys() - {"stop"} & {
            id for id, part in drawing.components.items() if part.kind.name == "isolating_valve"
        }
        assert {Joint(valve, "a"), Joint(valve, "b")} <= drawing.joined.keys()

    def test_the_menu_key_asks_about_what_is_selected(self, window: MainWindow) -> None:
        asked: list[QPoint] = []
        window.sheet.menu_wanted.disconnect()
        window.sheet.menu_wanted.connect(asked.append)
        window.sheet.select(("pump",))
        event = QContextMenuEvent(QContextMenuEvent.Reason.Keyboard, QPoint(0, 0), QPoint(0, 0))
        QApplication.sendEvent(window.sheet.viewport(), event)
        assert len(asked) == 1 and window.sheet.selected_ids() == {"pump"}


def test_escape_over_a_port_lets_go_of_a_finding(window: MainWindow, qtbot: QtBot) -> None:
    window.files.open_sample(data_path("samples") / "terrace-valve-before-vessel.wetcircuit")
    qtbot.waitUntil(lambda: window.document.analysis is not None, timeout=20_000)
    window.findings.step(1)
    window.sheet.select(())
    # A pipe ends in the open, so that there is a port to hover over.
    window.sheet._show_cursor(Qt.CursorShape.CrossCursor)
    window.sheet.setFocus()
    QTest.keyClick(window.sheet, Qt.Key.Key_Escape)
    assert window.findings.finding is None

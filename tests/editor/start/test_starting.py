"""The first minutes: the page to begin with, and the tour."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtGui import QAction
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QMenu
from pytestqt.qtbot import QtBot

from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.start.offers import offers
from circuitcheck.editor.start.start_page import StartPage
from circuitcheck.editor.start.tour import Tour
from circuitcheck.editor.window import MainWindow
from circuitcheck.finding import Finding

WORDS_READ_A_MINUTE = 180


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[MainWindow]:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made = MainWindow(Document(), settings, Appearances(settings))
    monkeypatch.setattr(made.files, "may_leave", lambda: True)
    made.resize(1440, 900)
    made.show()
    yield made
    made.close()


def page_of(window: MainWindow) -> StartPage:
    window.starting.show_if_empty()
    page = window.starting.page
    assert page is not None and page.isVisible()
    return page


def choose(page: StartPage, heading: int) -> None:
    """Choose the first entry below that heading; -1 for the last heading."""
    at = page.list.topLevelItemCount() - 1 if heading < 0 else heading
    below = page.list.topLevelItem(at)
    first = below.child(0) if below is not None else None
    assert first is not None
    page.list.setCurrentItem(first)


def tour_of(window: MainWindow) -> Tour:
    window.starting.begin_tour()
    tour = window.starting.tour
    assert tour is not None and tour.step == 0
    return tour


def found(window: MainWindow) -> tuple[Finding, ...]:
    analysis = window.document.analysis
    assert analysis is not None
    return analysis.findings


def press(tour: Tour) -> None:
    QTest.mouseClick(tour.card.next_button, Qt.MouseButton.LeftButton)


class TestThePage:
    def test_every_arrangement_and_sample_is_offered(self, window: MainWindow) -> None:
        files = [each.file for each in offers(window.files.samples())]
        assert files[0] is None
        assert {each.file for each in arrangements().values()} <= set(files)
        assert {path for _, path in window.files.samples()} <= set(files)

    def test_enter_begins_with_the_arrangement_as_a_drawing_without_a_file(self, window: MainWindow) -> None:
        page = page_of(window)
        QTest.keyClick(page.list, Qt.Key.Key_Down)
        offer = page.offer
        assert offer is not None and offer.file is not None
        QTest.keyClick(page.list, Qt.Key.Key_Return)
        assert page.isHidden()
        assert window.document.path is None
        assert window.document.drawing == next(
            each.drawing for each in arrangements().values() if each.file == offer.file
        )

    def test_the_button_begins_with_a_sample(self, window: MainWindow) -> None:
        page = page_of(window)
        choose(page, -1)
        assert page.offer is not None and page.offer.is_sample
        QTest.mouseClick(page.begin_button, Qt.MouseButton.LeftButton)
        assert window.document.drawing.components and window.document.path is None

    def test_escape_shows_the_empty_sheet_and_gives_it_the_keyboard(self, window: MainWindow) -> None:
        page = page_of(window)
        QTest.keyClick(page.list, Qt.Key.Key_Escape)
        assert page.isHidden() and window.document.drawing == Drawing()
        assert window.sheet.hasFocus() or not window.isActiveWindow()

    def test_the_empty_sheet_is_the_first_choice(self, window: MainWindow) -> None:
        page = page_of(window)
        choose(page, 0)
        QTest.keyClick(page.list, Qt.Key.Key_Return)
        assert page.isHidden() and window.document.drawing == Drawing()

    def test_a_picture_is_shown_of_each(self, window: MainWindow) -> None:
        page = page_of(window)
        paper = window.theme["paper"]
        image = page.preview.grab().toImage()
        colours = {image.pixelColor(x, y).rgb() for x in range(0, image.width(), 3) for y in range(0, 300, 3)}
        assert paper.rgb() in colours and len(colours) > 10

    def test_it_covers_the_sheet_however_large(self, window: MainWindow, qtbot: QtBot) -> None:
        page = page_of(window)
        window.resize(1000, 700)
        qtbot.waitUntil(lambda: page.size() == window.sheet.size())
        assert page.begin_button.isVisible()

    def test_files_opened_last_are_offered_by_name(self, window: MainWindow, tmp_path: Path) -> None:
        path = tmp_path / "larder & <b>attic.wetcircuit"
        path.write_bytes(next(iter(arrangements().values())).file.read_bytes())
        assert window.files.read(path)
        window.starting.show_page()
        page = window.starting.page
        assert page is not None
        names = [each.text() for each in page.findChildren(type(window.bar._button(window.actions_.undo)))]
        assert any("larder && <b>attic" in name for name in names)

    def test_a_drawing_that_is_there_is_not_hidden_by_it(self, window: MainWindow) -> None:
        window.files.open_sample(window.files.samples()[0][1])
        window.starting.show_if_empty()
        assert window.starting.page is None


class TestTheTour:
    def test_the_buttons_lead_from_the_fault_to_a_sound_drawing(
        self, window: MainWindow, qtbot: QtBot
    ) -> None:
        tour = tour_of(window)
        document = window.document
        qtbot.waitUntil(lambda: document.analysis is not None, timeout=20_000)
        assert found(window)
        press(tour)
        press(tour)
        assert tour.step == 2 and window.findings.finding is not None
        press(tour)
        qtbot.waitUntil(lambda: bool(tour._cures), timeout=20_000)
        press(tour)
        qtbot.waitUntil(lambda: tour.step == 4, timeout=20_000)
        assert document.undo_text
        assert found(window) == ()
        press(tour)
        press(tour)
        assert tour.step == -1 and tour.card.isHidden()

    def test_what_the_button_would_do_can_be_done_by_hand(self, window: MainWindow, qtbot: QtBot) -> None:
        tour = tour_of(window)
        qtbot.waitUntil(lambda: window.document.analysis is not None, timeout=20_000)
        press(tour)
        window.actions_.next_finding.trigger()
        assert tour.step == 2

    def test_an_edit_that_puts_nothing_right_is_not_called_sound(
        self, window: MainWindow, qtbot: QtBot
    ) -> None:
        tour = tour_of(window)
        document = window.document
        qtbot.waitUntil(lambda: document.analysis is not None, timeout=20_000)
        press(tour)
        press(tour)
        document.do("Move", move(document.drawing, ["pump"], 0, -1))
        qtbot.waitUntil(lambda: document.analysis is not None, timeout=20_000)
        assert tour.step == 2 and found(window)

    def test_escape_leaves_it_and_the_drawing_stays(self, window: MainWindow) -> None:
        tour = tour_of(window)
        QTest.keyClick(tour.card.next_button, Qt.Key.Key_Escape)
        assert tour.step == -1 and window.document.drawing.components

    def test_another_drawing_ends_it(self, window: MainWindow) -> None:
        tour = tour_of(window)
        window.files.open_sample(window.files.samples()[0][1])
        assert tour.step == -1

    def test_it_is_read_in_under_two_minutes(self, window: MainWindow) -> None:
        tour = tour_of(window)
        words = sum(len(f"{step.title} {step.words} {step.button}".split()) for step in tour.steps())
        assert words < 2 * WORDS_READ_A_MINUTE
        assert len(tour.steps()) <= 6

    @pytest.mark.parametrize("size", [(1440, 900), (1024, 700), (2560, 1440)])
    def test_its_words_are_not_cut(self, window: MainWindow, size: tuple[int, int]) -> None:
        window.resize(*size)
        tour = tour_of(window)
        for at in range(len(tour.steps())):
            tour._show(at)
            card = tour.card
            assert card.words.height() >= card.words.heightForWidth(card.words.width())
            assert window.rect().contains(card.geometry())


def leaves(menu: QMenu) -> Iterator[QAction]:
    """Every action of a menu and of those in it; those that list files, parts and windows aside."""
    for action in menu.actions():
        inner = action.menu()
        if isinstance(inner, QMenu):
            yield from leaves(inner)
        elif not action.isSeparator() and action.data() is None and action.isEnabled():
            yield action


def test_every_action_of_the_menus_says_what_it_does(window: MainWindow) -> None:
    menus = [menu for action in window.menuBar().actions() if isinstance(menu := action.menu(), QMenu)]
    assert [action.text() for menu in menus for action in leaves(menu) if not action.statusTip()] == []

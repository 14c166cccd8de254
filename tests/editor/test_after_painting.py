"""The first window: bare, then its sheet, then the rest in its place, and nothing lost that comes in between."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMainWindow, QMessageBox, QSplitter, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.editor import remembered
from circuitcheck.editor.after_painting import AfterPainting
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.coming_up import ComingUp
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer, Files
from circuitcheck.editor.window import MainWindow
from circuitcheck.editor.windows import Windows
from circuitcheck.shipped import data_path

HOUSE = data_path("samples") / "terrace-as-proposed.wetcircuit"


class Painted(QWidget):
    """Notes what happens to it, in order."""

    def __init__(self) -> None:
        super().__init__()
        self.happened: list[str] = []

    def event(self, event: QEvent) -> bool:
        """Note the kinds that the tests ask for."""
        if event.type() in (QEvent.Type.Paint, QEvent.Type.KeyPress, QEvent.Type.MouseButtonPress):
            self.happened.append(event.type().name)
        return super().event(event)


@pytest.fixture
def widget(qtbot: QtBot) -> Painted:
    made = Painted()
    qtbot.addWidget(made)
    return made


@pytest.fixture
def after(widget: Painted) -> AfterPainting:
    return AfterPainting(widget, lambda: widget.happened.append("made"))


def test_it_is_made_once_after_the_painting(widget: Painted, after: AfterPainting, qtbot: QtBot) -> None:
    widget.show()
    after.wait(lambda: widget.happened.append("then"))
    qtbot.waitUntil(lambda: "then" in widget.happened)
    assert widget.happened[:3] == ["Paint", "made", "then"]
    QTest.keyClick(widget, Qt.Key.Key_A)
    after.now()
    assert widget.happened.count("made") == widget.happened.count("then") == 1


def test_painted_before_it_waits_it_is_not_made(widget: Painted, after: AfterPainting) -> None:
    widget.show()
    QTest.qWait(50)
    assert widget.happened and "made" not in widget.happened


@pytest.mark.parametrize(
    "act",
    [
        lambda widget: QTest.keyClick(widget, Qt.Key.Key_A),
        lambda widget: QTest.mouseClick(widget, Qt.MouseButton.LeftButton, pos=QPoint(5, 5)),
    ],
)
def test_what_comes_from_hands_finds_it_made(
    widget: Painted, after: AfterPainting, act: Callable[[QWidget], None]
) -> None:
    act(widget)
    assert widget.happened[0] == "made" and len(widget.happened) > 1
    after.wait(lambda: widget.happened.append("then"))
    QTest.qWait(20)
    assert widget.happened.count("then") == 1


def test_a_dialog_over_the_window_finds_it_made(widget: Painted, after: AfterPainting) -> None:
    widget.show()
    box = QMessageBox(widget)
    box.open()
    assert "made" in widget.happened
    box.close()


def test_never_painted_it_is_made_all_the_same(
    widget: Painted, after: AfterPainting, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("circuitcheck.editor.after_painting.LATEST_MS", 20)
    after.wait(lambda: None)
    qtbot.waitUntil(lambda: widget.happened == ["made"])


# The window.


@pytest.fixture
def settings(tmp_path: Path) -> QSettings:
    return QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)


@pytest.fixture
def windows(settings: QSettings, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Windows]:
    monkeypatch.setattr(Files, "ask_unsaved", lambda files: Answer.DISCARD)
    made = Windows(settings, Appearances(settings), tmp_path / "kept")
    yield made
    for window in made.open:
        window.close()
    made.close_documents()


def with_its_sheet(windows: Windows, file: Path | None = None) -> MainWindow:
    """The first window, as it is once it was painted bare."""
    window = windows.first()
    windows.begin(window, file)
    return window


def places(window: MainWindow) -> dict[str, QRect]:
    """Where everything lies that is seen from the first moment."""
    seen: dict[str, QWidget] = {
        "menus": window.menuBar(),
        "bar": window.bar,
        "sheet": window.sheet,
        "shelf": window.shelf,
        "find": window.shelf.find_box,
        "details": window.details_section,
        "findings": window.findings_section,
        "figures": window.panes.figures_section,
        "status": window.status,
    }
    found = {name: QRect(each.mapTo(window, QPoint()), each.size()) for name, each in seen.items()}
    for action in window.menuBar().actions():
        found[action.text()] = window.menuBar().actionGeometry(action)
    return found


def test_bare_it_stands_where_it_was_and_is_as_large(windows: Windows, settings: QSettings) -> None:
    before = QMainWindow()
    before.setGeometry(40, 60, 730, 700)
    remembered.save_geometry(settings, before, {})
    bare = windows.first()
    assert bare.geometry() == QRect(40, 60, 730, 700)
    assert bare.isVisible() and not bare.has_begun and bare.windowTitle() == "circuitcheck"
    windows.begin(bare)
    windows.furnish(bare)
    QApplication.processEvents()
    assert bare.geometry() == QRect(40, 60, 730, 700)


def test_closed_while_bare_it_closes_well(windows: Windows) -> None:
    bare = windows.first()
    assert bare.close()
    assert not windows.open


def test_a_program_that_ends_while_the_window_is_bare_has_nothing_to_keep(windows: Windows) -> None:
    windows.first()
    assert windows.keep_all() == []
    windows.close_documents()
    assert not windows.open


class ComesUp:
    """The first window coming up by itself, and what of it was seen when."""

    def __init__(self, windows: Windows, file: Path | None) -> None:
        self.happened: list[str] = []
        self.coming = ComingUp(windows, lambda: self.happened.append("program"), file)
        (self.window,) = windows.open


def test_it_comes_up_step_by_step(windows: Windows, qtbot: QtBot) -> None:
    begun: list[str] = []

    class Watch(QObject):
        def eventFilter(self, watched: QObject, event: QEvent) -> bool:
            if event.type() is QEvent.Type.Paint and watched is up.window:
                begun.append(
                    "whole" if up.window.is_furnished else "sheet" if up.window.has_begun else "bare"
                )
            return False

    watch = Watch()
    QApplication.instance().installEventFilter(watch)  # type: ignore[union-attr]  # there is one
    up = ComesUp(windows, HOUSE)
    assert up.happened == [] and not up.window.has_begun
    assert up.window.windowTitle() == "terrace-as-proposed – circuitcheck"
    qtbot.waitUntil(lambda: up.window.is_furnished)
    assert list(dict.fromkeys(begun))[:2] == ["bare", "sheet"]
    assert up.happened == ["program"]
    assert up.window.document.path == HOUSE and up.window.document.drawing.components


@pytest.mark.parametrize("act", [lambda each: QTest.keyClick(each, Qt.Key.Key_A), lambda each: each.close()])
def test_a_hand_that_comes_first_finds_all_of_it(
    act: Callable[[MainWindow], object], windows: Windows, qtbot: QtBot
) -> None:
    up = ComesUp(windows, HOUSE)
    assert not up.window.has_begun
    act(up.window)
    assert up.happened == ["program"] and up.window.is_furnished
    if windows.open:
        qtbot.waitUntil(lambda: up.window.document.path == HOUSE)
    else:
        QApplication.processEvents()


def test_a_file_that_cannot_be_read_is_told_over_the_bare_window(
    windows: Windows, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    told: list[tuple[str, bool]] = []

    def tell(box: QMessageBox) -> int:
        QApplication.processEvents()
        told.append((box.text(), up.window.has_begun))
        return 0

    monkeypatch.setattr(QMessageBox, "exec", tell)
    up = ComesUp(windows, tmp_path / "gone.wetcircuit")
    qtbot.waitUntil(lambda: up.window.is_furnished)
    assert [begun for _, begun in told] == [False] and "gone.wetcircuit" in told[0][0]
    assert up.window.document.path is None and up.window.document.drawing.is_empty


def test_closed_while_something_is_told_of_the_file_it_stays_closed(
    windows: Windows, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(QMessageBox, "exec", lambda box: windows.open[0].close())
    up = ComesUp(windows, tmp_path / "gone.wetcircuit")
    qtbot.waitUntil(lambda: not windows.open)
    QApplication.processEvents()
    assert not up.window.has_begun


def test_a_failure_of_the_first_step_ends_well(windows: Windows) -> None:
    up = ComesUp(windows, HOUSE)
    up.coming.end()
    assert not up.window.has_begun
    assert up.window.close()


@pytest.mark.parametrize("size", [(1440, 900), (1024, 600)])
def test_the_rest_comes_into_its_place(windows: Windows, size: tuple[int, int]) -> None:
    window = with_its_sheet(windows, HOUSE)
    window.resize(*size)
    window.sheet.fit()
    QApplication.processEvents()
    before, zoom, seen = places(window), window.sheet.zoom, window.sheet.viewportTransform()
    assert window.bar.summary() == "Judging…"
    assert not window.is_furnished and not window.findChildren(QSplitter)[0].isHidden()
    windows.furnish(window)
    QApplication.processEvents()
    assert window.is_furnished
    assert places(window) == before
    assert (window.sheet.zoom, window.sheet.viewportTransform()) == (zoom, seen)


def test_a_window_made_in_two_steps_is_as_one_made_at_once(
    windows: Windows, settings: QSettings, qtbot: QtBot
) -> None:
    window = with_its_sheet(windows, HOUSE)
    windows.furnish(window)
    document = Document()
    whole = MainWindow(document, settings, Appearances(settings))
    whole.show()
    whole.files.read(HOUSE)
    both = (window.document, document)
    qtbot.waitUntil(lambda: all(each.analysis is not None for each in both), timeout=20_000)
    QApplication.processEvents()
    assert told(window) == told(whole)
    assert places(window) == places(whole)
    assert window.windowTitle() == whole.windowTitle()
    assert window.bar.summary() == whole.bar.summary()
    assert window.findings.findings == whole.findings.findings
    assert window.shelf.shown() == whole.shelf.shown()
    whole.close()
    document.close()


def told(window: MainWindow) -> list[tuple[str, bool, bool]]:
    """Every entry of the menus, whether it can be chosen, and whether it is ticked."""
    entries = [
        entry
        for menu in window.menuBar().actions()
        for entry in menu.menu().actions()  # type: ignore[attr-defined]  # stub: QObject
        if menu.text() != "&Window"
    ]
    return [(each.text(), each.isEnabled(), each.isChecked()) for each in entries]


def test_a_key_pressed_before_all_is_there_does_what_it_should(windows: Windows, qtbot: QtBot) -> None:
    window = with_its_sheet(windows)
    AfterPainting(window.sheet.viewport(), lambda: windows.furnish(window))
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.files.read(HOUSE)
    window.sheet.setFocus()
    assert not window.is_furnished
    QTest.keyClick(window.sheet, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    assert window.is_furnished
    assert window.sheet.selected_ids() >= window.document.drawing.components.keys()
    QTest.keyClick(window.sheet, Qt.Key.Key_Delete)
    assert not window.document.drawing.components


def test_closed_before_all_is_there_it_closes_well(windows: Windows) -> None:
    window = with_its_sheet(windows)
    AfterPainting(window.sheet.viewport(), lambda: windows.furnish(window))
    assert window.close()
    assert not windows.open


def test_a_window_that_failed_half_made_still_closes(
    windows: Windows, monkeypatch: pytest.MonkeyPatch
) -> None:
    class BrokenError(Exception):
        pass

    def breaks(window: MainWindow) -> None:
        raise BrokenError

    monkeypatch.setattr(MainWindow, "_fill_menus", breaks)
    window = with_its_sheet(windows)
    window.files.read(HOUSE)
    with pytest.raises(BrokenError):
        windows.furnish(window)
    left: list[bool] = []
    window.left.connect(lambda: left.append(True))
    window.close()
    assert left == [True] and window.isHidden()

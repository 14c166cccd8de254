"""The whole window, driven with mouse and keyboard as its users would."""

from __future__ import annotations

import threading
import time
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path
from threading import Event

import pytest
from PySide6.QtCore import QPoint, QPointF, QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import relabel
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.panels.findings import FindingsPanel
from circuitcheck.editor.window import MainWindow
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.sheet.layout import Layout
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from circuitcheck.storage.writing import write
from circuitcheck.wanted import go_on
from tests.benchmarks.laid_out import houses

LEFT = Qt.MouseButton.LeftButton
SQUARE_PX = 16


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[MainWindow]:
    """A window on an empty drawing, which throws unsaved changes away when the test is over."""
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made = MainWindow(Document(), settings, Appearances(settings))
    monkeypatch.setattr(made.files, "ask_unsaved", lambda: Answer.DISCARD)
    made.resize(1440, 900)
    made.show()
    qtbot.waitExposed(made)
    yield made
    made.close()


@pytest.fixture
def at(window: MainWindow) -> Callable[[float, float], QPoint]:
    """Where a place of the sheet, in squares, lies on the screen."""
    return lambda x, y: window.sheet.mapFromScene(QPointF(x * SQUARE_PX, y * SQUARE_PX))


def opened(window: MainWindow, qtbot: QtBot, name: str, folder: Path | None = None) -> Path:
    """Open a sample, from a copy in a folder if one is given, and wait for its findings."""
    path = data_path("samples") / f"{name}.wetcircuit"
    if folder is not None:
        path = Path(folder / path.name)
        path.write_bytes((data_path("samples") / path.name).read_bytes())
    assert window.files.read(path)
    qtbot.waitUntil(lambda: judged(window), timeout=5_000)
    return path


def judged(window: MainWindow) -> bool:
    """Whether the analysis shown is of the drawing shown."""
    analysis = window.document.analysis
    return analysis is not None and analysis.drawing is window.document.drawing


def place(
    window: MainWindow, qtbot: QtBot, at: Callable[[float, float], QPoint], kind: str, x: float, y: float
) -> str:
    """Place a part by a click; returns its id."""
    before = set(window.document.drawing.components)
    window.sheet.begin_placing(kinds()[kind])
    QTest.mouseMove(window.sheet.viewport(), at(x, y))
    QTest.mouseClick(window.sheet.viewport(), LEFT, pos=at(x, y))
    QTest.keyClick(window.sheet, Qt.Key.Key_Escape)
    (new,) = set(window.document.drawing.components) - before
    return new


def drag(window: MainWindow, qtbot: QtBot, start: QPoint, finish: QPoint) -> None:
    """Press, move in steps, release."""
    port = window.sheet.viewport()
    QTest.mouseMove(port, start)
    QTest.mousePress(port, LEFT, pos=start)
    for step in range(1, 6):
        QTest.mouseMove(port, start + (finish - start) * step / 5)
    QTest.mouseRelease(port, LEFT, pos=finish)


def test_a_sound_sample_says_so(window: MainWindow, qtbot: QtBot) -> None:
    opened(window, qtbot, "cottage")
    assert window.document.analysis is not None and window.document.analysis.findings == ()
    assert not window.document.is_unsaved


def test_choosing_a_finding_keeps_the_drawing_as_it_is(window: MainWindow, qtbot: QtBot) -> None:
    opened(window, qtbot, "terrace-valve-before-vessel")
    drawing = window.document.drawing
    panel = window.findChild(FindingsPanel)
    assert panel is not None
    QTest.keyClick(window, Qt.Key.Key_F8)
    panel.step(1)
    QApplication.processEvents()
    assert window.document.drawing is drawing and not window.document.is_unsaved
    QTest.keyClick(window.sheet, Qt.Key.Key_Escape)


def test_parts_are_placed_and_joined_by_hand(
    window: MainWindow, qtbot: QtBot, at: Callable[[float, float], QPoint]
) -> None:
    window.sheet.select(())
    pump = place(window, qtbot, at, "pump", 0, 0)
    valve = place(window, qtbot, at, "zone_valve", 12, 0)
    assert window.document.drawing.components[pump].at == Point(0, 0)
    drag(window, qtbot, at(1, 0), at(11, 0))
    (pipe,) = window.document.drawing.pipes.values()
    assert set(pipe.ends) == {Joint(pump, "out"), Joint(valve, "in")}
    # A pipe that ends on a pipe makes the tee.
    drain = place(window, qtbot, at, "drain", 6, 8)
    drag(window, qtbot, at(6, 7), at(6, 0))
    drawing = window.document.drawing
    (tee,) = [part.id for part in drawing.components.values() if part.kind.name == "tee"]
    assert len(drawing.pipes) == 3
    assert len(drawing.pipes_of(tee)) == 3 and drawing.joined.get(Joint(drain, "connection"))
    names = []
    while window.document.undo_text:
        names.append(window.document.undo_text)
        window.document.undo()
    assert all(names) and not window.document.drawing.components
    while window.document.redo_text:
        window.document.redo()
    assert window.document.drawing == drawing


def test_a_part_is_moved_turned_mirrored_and_removed(
    window: MainWindow, qtbot: QtBot, at: Callable[[float, float], QPoint]
) -> None:
    pump = place(window, qtbot, at, "pump", 0, 0)
    drag(window, qtbot, at(0, 0), at(4, 3))
    assert window.document.drawing.components[pump].at == Point(4, 3)
    window.sheet.select([pump])
    QTest.keyClick(window.sheet, Qt.Key.Key_R)
    assert window.document.drawing.components[pump].turn == 90
    QTest.keyClick(window.sheet, Qt.Key.Key_M)
    assert window.document.drawing.components[pump].mirrored
    QTest.keyClick(window.sheet, Qt.Key.Key_Delete)
    assert pump not in window.document.drawing.components
    window.document.undo()
    assert pump in window.document.drawing.components


def test_what_is_drawn_is_judged_as_it_is_drawn(
    window: MainWindow, qtbot: QtBot, at: Callable[[float, float], QPoint]
) -> None:
    heat = place(window, qtbot, at, "heat_source", 0, 0)
    qtbot.waitUntil(lambda: judged(window), timeout=5_000)
    analysis = window.document.analysis
    assert analysis is not None
    assert ("vessel-absent", heat) in {(f.check, f.components[0]) for f in analysis.findings}


def test_a_drawing_is_saved_and_read_again(
    window: MainWindow, qtbot: QtBot, at: Callable[[float, float], QPoint], tmp_path: Path
) -> None:
    path = opened(window, qtbot, "cottage", tmp_path)
    place(window, qtbot, at, "pressure_gauge", 30, -4)
    unsaved = window.document.is_unsaved
    assert unsaved
    window.document.save()
    assert read(path) == window.document.drawing
    assert not window.document.is_unsaved


def test_a_file_that_is_no_drawing_is_told_and_nothing_is_lost(
    window: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened(window, qtbot, "cottage")
    drawing = window.document.drawing
    told: list[object] = []
    monkeypatch.setattr(window.files, "_say", lambda *texts: told.append(texts))
    bad = tmp_path / "bad.wetcircuit"
    bad.write_text('{"wetcircuit": 1, "components": [{"id": "x", "kind": "kettle"}]}')
    assert not window.files.read(bad)
    assert told and window.document.drawing is drawing


def test_a_drawing_that_could_not_be_read_again_is_not_saved_and_told(
    window: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = opened(window, qtbot, "cottage", tmp_path)
    before = path.read_bytes()
    told: list[object] = []
    monkeypatch.setattr(window.files, "_say", lambda *texts: told.append(texts))
    window.document.do("Name the pump", relabel(window.document.drawing, "pump", "x" * 1_001))
    assert not window.files.save()
    assert told and window.document.is_unsaved and path.read_bytes() == before


def test_it_closes_while_a_large_drawing_is_laid_out(
    window: MainWindow, qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    begun = Event()

    update = Layout.update

    def never_ends(
        layout: Layout, drawing: Drawing, *, passing: bool = False, hurried: bool = False
    ) -> object:
        while drawing.title == "Large":
            begun.set()
            go_on()
            time.sleep(0.001)
        return update(layout, drawing, passing=passing, hurried=hurried)

    path = tmp_path / "large.wetcircuit"
    write(replace(houses(500), title="Large"), path)
    with monkeypatch.context() as patched:
        patched.setattr(Layout, "update", never_ends)
        assert window.files.read(path)
        qtbot.waitUntil(begun.is_set)
        assert window.sheet.is_laying_out
        assert window.close()
    assert not [each for each in threading.enumerate() if each.name.startswith("layout")]

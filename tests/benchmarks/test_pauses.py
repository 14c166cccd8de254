"""How long acts hold up a whole window with a large drawing: the longest time at a stretch in which it does not answer,
beside a bare painter that strokes the same over the full view, with growth.

What is found beside the window is waited for; what the window does with it then counts. Times are of the clock, so
what runs beside counts where the window waits for it.
Run: pytest -n 0 -q -s --benchmark-enable tests/benchmarks/test_pauses.py
"""

from __future__ import annotations

import gc
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from circuitcheck.editor import clipboard
from circuitcheck.editor.appearance import Appearance, Appearances
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.window import MainWindow
from circuitcheck.editor.windows import Windows
from circuitcheck.garbage import no_collection
from circuitcheck.storage.writing import write
from tests.benchmarks.laid_out import houses
from tests.benchmarks.sheet_settings import HIGH, WIDE, BarePainter, median_of
from tests.editor.until_quiet import until_quiet

SIZES = (100, 1_000, 10_000)

Act = tuple[str, Callable[[MainWindow], object]]


def acts() -> list[Act]:
    """What is done, one after the other, and what to call it."""
    return [
        ("fit", lambda w: w.actions_.fit.trigger()),
        ("select everything", lambda w: w.actions_.select_all.trigger()),
        ("turn everything", lambda w: w.actions_.turn.trigger()),
        ("undo it", lambda w: w.actions_.undo.trigger()),
        ("redo it", lambda w: w.actions_.redo.trigger()),
        ("undo it again", lambda w: w.actions_.undo.trigger()),
        ("copy everything", lambda w: w.actions_.copy.trigger()),
        ("paste everything", lambda w: w.actions_.paste.trigger()),
        ("undo the paste", lambda w: w.actions_.undo.trigger()),
        ("select everything anew", lambda w: w.actions_.select_all.trigger()),
        ("delete everything", lambda w: w.actions_.delete.trigger()),
        ("undo the deleting", lambda w: w.actions_.undo.trigger()),
        ("select one part", lambda w: w.sheet.select([some_part(w)])),
        ("turn one part", lambda w: w.actions_.turn.trigger()),
        ("duplicate one part", lambda w: w.actions_.duplicate.trigger()),
        ("delete one part", lambda w: w.actions_.delete.trigger()),
        ("undo the deleting of one", lambda w: w.actions_.undo.trigger()),
        ("next finding", lambda w: w.actions_.next_finding.trigger()),
        ("the one after", lambda w: w.actions_.next_finding.trigger()),
        ("leave the finding", lambda w: w.actions_.leave_finding.trigger()),
        ("figures", lambda w: w.live.figures_action.trigger()),
        ("dark", lambda w: w.actions_.appearances[Appearance.DARK].trigger()),
        ("light", lambda w: w.actions_.appearances[Appearance.LIGHT].trigger()),
        ("turn one part with the figures", lambda w: (w.sheet.select([some_part(w)]), w.actions_.turn.trigger())),
        ("no figures", lambda w: w.live.figures_action.trigger()),
        ("fill in", lambda w: w.tables.fill_in_action.trigger()),
        ("no fill in", lambda w: w.tables.fill_in_action.trigger()),
        ("outline", lambda w: w._outlining.action.trigger()),
        ("no outline", lambda w: w._outlining.action.trigger()),
        ("100 %", lambda w: w.actions_.zoom_reset.trigger()),
        ("turn one part at 100 %", lambda w: w.actions_.turn.trigger()),
        ("operate", lambda w: w.operate.action.trigger()),
        ("no longer operate", lambda w: w.operate.action.trigger()),
    ]  # fmt: skip


def some_part(window: MainWindow) -> str:
    """A part in the middle of the drawing's order that stands on the sheet."""
    placed = [id for id, part in window.document.drawing.components.items() if part.at is not None]
    return placed[len(placed) // 2]


@pytest.fixture(params=SIZES)
def size(request: pytest.FixtureRequest) -> int:
    return int(request.param)


@pytest.fixture
def window(qapp: QApplication, size: int, tmp_path: Path) -> Iterator[MainWindow]:
    """A whole window on a file of so many parts."""
    file = tmp_path / "houses.json"
    write(houses(size), file)
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    windows = Windows(settings, Appearances(settings, qapp), tmp_path / "recovery")
    with no_collection():
        made = windows.new()
        made.resize(WIDE, HIGH)
        took = until_quiet(made, partial(made.files.read, file))
        tell(size, "open", took, bare_painter_s(made.sheet))
        yield made
        windows.close_documents()
        clipboard.let_go()


def tell(size: int, what: str, took: tuple[float, float], limit_s: float) -> None:
    longest_s, whole_s = took
    print(
        f"{size:>6} parts  {what:<34} held up {longest_s * 1e3:8.1f} ms at a stretch"
        f"  {longest_s / limit_s:7.1f} x bare painter   over after {whole_s:6.2f} s"
    )


def test_pauses(window: MainWindow, size: int) -> None:
    """Each act by what a menu does."""
    limit_s = bare_painter_s(window.sheet)
    for name, act in acts():
        gc.freeze()
        tell(size, name, until_quiet(window, partial(act, window)), limit_s)


def bare_painter_s(view: SheetView) -> float:
    """What it takes to stroke all that is in view."""
    limit = BarePainter(view)
    return median_of(limit.paint)

"""The document: steps, files, and answers that always belong to the drawing shown."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from circuitcheck.analysis import Analysis
from circuitcheck.drawing.edits import set_title
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.analyser import Analyse
from circuitcheck.editor.document import Document, FileChangedError
from circuitcheck.finding import FAILED, Grade
from circuitcheck.storage.reading import DrawingError, read
from circuitcheck.storage.writing import write

Made = Callable[..., Document]


def answer(drawing: Drawing) -> Analysis:
    """An answer without a finding."""
    return Analysis(drawing, (), ("some-check",), (), (), (), (), "england")


@pytest.fixture
def made(qapp: object) -> Iterator[Made]:
    """Makes documents, and stops their threads afterwards."""
    documents: list[Document] = []

    def make(analyse: Analyse = answer, *, is_judged: bool = True) -> Document:
        documents.append(Document(analyse, is_judged=is_judged))
        return documents[-1]

    yield make
    for document in documents:
        document.close()


def titled(text: str) -> Drawing:
    return set_title(Drawing(), text)


def test_steps_are_undone_and_made_again_by_name(made: Made) -> None:
    document = made()
    told: list[tuple[str, str, str]] = []
    document.changed.connect(lambda before, after, step: told.append((before.title, after.title, step)))
    empty, one, two = document.drawing, titled("one"), titled("two")
    document.do("First", one)
    document.do("Second", two)
    assert (document.undo_text, document.redo_text) == ("Second", "")
    document.undo()
    assert document.drawing is one
    assert (document.undo_text, document.redo_text) == ("First", "Second")
    document.redo()
    assert document.drawing is two
    document.undo()
    document.undo()
    document.undo()
    assert document.drawing is empty
    assert told == [
        ("", "one", "First"),
        ("one", "two", "Second"),
        ("two", "one", "Second"),
        ("one", "two", "Second"),
        ("two", "one", "Second"),
        ("one", "", "First"),
    ]


def test_a_new_step_takes_the_place_of_those_taken_back(made: Made) -> None:
    document = made()
    document.do("First", titled("one"))
    document.undo()
    document.do("Other", titled("other"))
    assert document.redo_text == ""
    document.undo()
    assert document.drawing.title == ""


def test_the_present_drawing_is_no_step(made: Made) -> None:
    document = made()
    document.do("Nothing", document.drawing)
    assert document.undo_text == ""
    assert not document.is_unsaved


def test_undoing_back_to_the_saved_drawing_is_saved(made: Made, tmp_path: Path) -> None:
    document = made()
    document.do("First", titled("one"))
    assert document.is_unsaved
    document.save(tmp_path / "a.wetcircuit")
    assert not document.is_unsaved
    document.do("Second", titled("two"))
    assert document.is_unsaved
    document.undo()
    assert not document.is_unsaved
    document.undo()
    assert document.is_unsaved


def test_what_is_saved_can_be_read(made: Made, tmp_path: Path) -> None:
    document = made()
    document.do("First", titled("one"))
    path = tmp_path / "a.wetcircuit"
    document.save(path)
    assert read(path) == document.drawing
    other = made()
    other.open(path)
    assert (other.drawing.title, other.path, other.is_unsaved, other.undo_text) == ("one", path, False, "")


def test_a_file_changed_meanwhile_is_not_overwritten(made: Made, tmp_path: Path) -> None:
    path = tmp_path / "a.wetcircuit"
    document = made()
    document.do("First", titled("one"))
    document.save(path)
    write(titled("somebody else's"), path)
    document.do("Second", titled("two"))
    with pytest.raises(FileChangedError):
        document.save()
    assert read(path).title == "somebody else's"
    assert document.is_unsaved
    document.save(over_changes=True)
    assert read(path).title == "two"
    document.do("Third", titled("three"))
    document.save()
    assert read(path).title == "three"


def test_a_file_that_is_gone_is_written_again(made: Made, tmp_path: Path) -> None:
    path = tmp_path / "a.wetcircuit"
    document = made()
    document.save(path)
    path.unlink()
    document.save()
    assert path.exists()


def test_a_file_that_cannot_be_read_changes_nothing(made: Made, tmp_path: Path) -> None:
    path = tmp_path / "a.wetcircuit"
    path.write_text("no drawing")
    document = made()
    document.do("First", titled("one"))
    drawing = document.drawing
    with pytest.raises(DrawingError):
        document.open(path)
    with pytest.raises(OSError, match="absent"):
        document.open(tmp_path / "absent.wetcircuit")
    assert (document.drawing, document.path, document.undo_text) == (drawing, None, "First")


def test_a_failed_save_stays_unsaved(made: Made, tmp_path: Path) -> None:
    document = made()
    document.do("First", titled("one"))
    with pytest.raises(OSError, match="folder does not exist"):
        document.save(tmp_path / "absent" / "a.wetcircuit")
    assert document.is_unsaved
    assert document.path is None


def test_without_a_file_there_is_nowhere_to_save(made: Made) -> None:
    with pytest.raises(ValueError, match="no file yet"):
        made().save()


def test_a_sample_has_no_file(made: Made, tmp_path: Path) -> None:
    path = tmp_path / "a.wetcircuit"
    write(titled("sample"), path)
    document = made()
    document.open_copy(path)
    assert (document.drawing.title, document.path, document.is_unsaved) == ("sample", None, False)


def test_the_answer_is_of_the_drawing_shown(made: Made, qtbot: QtBot) -> None:
    document = made()
    with qtbot.waitSignal(document.analysed, timeout=5_000) as first:
        assert document.analysis is None
    assert first.args and first.args[0].drawing is document.drawing
    assert document.analysis is first.args[0]
    document.do("First", titled("one"))
    assert document.analysis is None
    with qtbot.waitSignal(document.analysed, timeout=5_000):
        pass
    assert document.analysis is not None
    assert document.analysis.drawing is document.drawing


def test_nothing_is_judged_before_it_is_asked_for(made: Made, qtbot: QtBot) -> None:
    asked: list[str] = []

    def analyse(drawing: Drawing) -> Analysis:
        asked.append(drawing.title)
        return answer(drawing)

    document = made(analyse, is_judged=False)
    document.do("First", titled("one"))
    qtbot.wait(100)
    assert asked == [] and document.analysis is None
    with qtbot.waitSignal(document.analysed):
        document.judge()
    document.judge()
    with qtbot.waitSignal(document.analysed):
        document.do("Second", titled("two"))
    assert asked == ["one", "two"]


def test_a_stale_answer_is_dropped(made: Made, qtbot: QtBot) -> None:
    go, begun = threading.Event(), threading.Event()
    asked: list[str] = []

    def slow(drawing: Drawing) -> Analysis:
        asked.append(drawing.title)
        begun.set()
        if drawing.title == "slow":
            assert go.wait(5)
        return answer(drawing)

    document = made(slow)
    document.do("First", titled("slow"))
    qtbot.waitUntil(lambda: "slow" in asked, timeout=5_000)
    told: list[str] = []
    document.analysed.connect(lambda analysis: told.append(analysis.drawing.title))
    document.do("Second", titled("between"))
    qtbot.wait(80)
    document.do("Third", titled("last"))
    go.set()
    qtbot.waitUntil(lambda: bool(told), timeout=5_000)
    qtbot.wait(80)
    assert told == ["last"]
    assert "between" not in asked


def test_an_analysis_that_fails_is_told(made: Made, qtbot: QtBot, caplog: pytest.LogCaptureFixture) -> None:
    def failing(drawing: Drawing) -> Analysis:
        raise ZeroDivisionError("no such luck")

    document = made(failing)
    with qtbot.waitSignal(document.analysed, timeout=5_000):
        pass
    assert document.analysis is not None
    (finding,) = document.analysis.findings
    assert (finding.check, finding.grade, finding.would_be) == (FAILED, Grade.UNANSWERED, Grade.DANGER)
    assert "ZeroDivisionError: no such luck" in finding.message
    assert not document.analysis.judged
    assert "vessel-can-be-cut-off" in document.analysis.not_judged
    assert "The analysis failed" in caplog.text


def test_closing_waits_for_the_thread_and_says_nothing_more(made: Made, qtbot: QtBot) -> None:
    begun = threading.Event()
    ended: list[bool] = []

    def slow(drawing: Drawing) -> Analysis:
        begun.set()
        threading.Event().wait(0.2)
        ended.append(True)
        return answer(drawing)

    document = made(slow)
    told: list[object] = []
    document.analysed.connect(told.append)
    qtbot.waitUntil(begun.is_set, timeout=5_000)
    document.close()
    assert ended
    document.do("First", titled("one"))
    qtbot.wait(100)
    assert not told
    assert not [thread for thread in threading.enumerate() if thread.name.startswith("analysis")]

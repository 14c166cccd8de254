"""A cure made from the window: the finding goes, one step, and undo brings it back."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from circuitcheck.analysis import analyse
from circuitcheck.editor.curing import Curer
from circuitcheck.editor.document import Document
from circuitcheck.finding import Finding
from circuitcheck.shipped import data_path

VESSEL = "vessel-can-be-cut-off"


@pytest.fixture
def document(qtbot: QtBot) -> Iterator[Document]:
    made = Document()
    with qtbot.waitSignal(made.analysed, timeout=20_000):
        made.open_copy(data_path("samples") / "terrace-valve-before-vessel.wetcircuit")
    yield made
    made.close()


def vessel(document: Document) -> Finding | None:
    assert document.analysis is not None
    return next((each for each in document.analysis.findings if each.check == VESSEL), None)


def test_a_cure_takes_its_finding_away_and_undo_brings_it_back(document: Document, qtbot: QtBot) -> None:
    before, finding = document.drawing, vessel(document)
    with qtbot.waitSignal(document.cured, timeout=20_000) as told:
        document.find_cures(finding)
    asked, cures = told.args or (None, ())
    assert asked is finding and cures
    with qtbot.waitSignal(document.analysed, timeout=20_000):
        document.do("put it right", cures[0].drawing)
    assert vessel(document) is None
    with qtbot.waitSignal(document.analysed, timeout=20_000):
        document.undo()
    assert document.drawing is before and vessel(document) is not None


def test_a_finding_of_another_drawing_is_not_asked_about(document: Document, qtbot: QtBot) -> None:
    finding = vessel(document)
    document.new()
    with qtbot.assertNotEmitted(document.cured, wait=100):
        document.find_cures(finding)


def test_a_search_that_fails_offers_nothing_and_says_so_in_the_log(
    document: Document, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def fails(*asked: object) -> None:
        raise ZeroDivisionError("a flaw")

    monkeypatch.setattr("circuitcheck.cures.cures", fails)
    curer = Curer()
    finding = vessel(document)
    assert finding is not None
    with qtbot.waitSignal(curer.found, timeout=5_000) as told:
        curer.ask(analyse(document.drawing), finding)
    curer.close()
    assert told.args == [finding, ()]
    assert "Looking for cures" in caplog.text

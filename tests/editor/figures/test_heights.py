"""What rows of figures say and how high they are: as Qt wraps them, and found once."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRect
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QApplication

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.figures import heights, words
from circuitcheck.editor.figures.heights import (
    WRAP,
    Asked,
    Faces,
    FoundRows,
    Measures,
    Rows,
    Said,
    Setting,
    rows_of,
    said_of,
)
from circuitcheck.figures.catalogue import all_figures
from circuitcheck.figures.figure import Figure
from circuitcheck.figures.plant import Plant
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

WIDE, NARROW = Setting(320, "face"), Setting(300, "face")
NO_ROWS = FoundRows(None, {}, {})


@pytest.fixture(scope="module")
def drawing() -> Drawing:
    return read(data_path("samples") / "terrace-as-proposed.wetcircuit")


@pytest.fixture(scope="module")
def found(drawing: Drawing) -> tuple[Figure, ...]:
    with Plant(drawing) as plant:
        return all_figures(plant)


@given(
    text=st.text(alphabet="aW ifü·-\n0123456789", max_size=60),
    room=st.integers(60, 400),
)
def test_a_text_is_as_high_as_qt_makes_it(qapp: QApplication, text: str, room: int) -> None:
    faces = Faces(qapp.font())
    for face in (faces.title, faces.text, faces.value):
        metrics = QFontMetrics(face)
        wrapped = metrics.boundingRect(QRect(0, 0, room, 10_000), WRAP, text).height()
        # Of nothing Qt makes no line; a row has one.
        assert faces.high(face, text, room) == (wrapped if text.strip(" ") else metrics.height())


class TestRows:
    def rows(self, drawing: Drawing) -> tuple[Rows, list[Figure], list[Figure]]:
        said: list[Figure] = []
        measured: list[Figure] = []

        def say(figure: Figure) -> Said:
            said.append(figure)
            return said_of(drawing, figure, ".")

        def measure(figure: Figure, _: Said) -> int:
            measured.append(figure)
            return 40 + len(measured)

        return Rows(say, measure), said, measured

    def test_each_is_said_and_measured_once(self, drawing: Drawing, found: tuple[Figure, ...]) -> None:
        rows, said, measured = self.rows(drawing)
        first = [rows.high(each, WIDE) for each in found]
        assert [rows.high(each, WIDE) for each in found] == first
        assert said == measured == list(found)

    def test_in_another_width_only_the_heights_are_others(
        self, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        rows, said, measured = self.rows(drawing)
        assert rows.high(found[0], WIDE) != rows.high(found[0], NARROW)
        assert (len(said), len(measured)) == (1, 2)

    def test_worked_out_anew_with_the_same_outcome_it_is_not_measured_anew(
        self, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        rows, said, measured = self.rows(drawing)
        assert rows.high(found[0], WIDE) == rows.high(replace(found[0]), WIDE)
        assert len(said) == len(measured) == 1

    def test_with_another_outcome_it_is_said_and_measured_anew(
        self, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        rows, said, measured = self.rows(drawing)
        worked = next(each for each in found if each.results)
        rows.high(worked, WIDE)
        other = replace(worked, results=worked.results[:-1])
        rows.high(other, WIDE)
        assert said == measured == [worked, other]
        assert rows.said(other) == said_of(drawing, other, ".")

    def test_what_is_forgotten_or_not_kept_is_said_anew(
        self, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        rows, said, _ = self.rows(drawing)
        for each in found[:2]:
            rows.high(each, WIDE)
        rows.keep(found[:1])
        for each in found[:2]:
            rows.high(each, WIDE)
        assert said == [found[0], found[1], found[1]]
        rows.forget()
        rows.high(found[0], WIDE)
        assert said[-1] is found[0] and len(said) == 4


class TestElsewhere:
    def asked(
        self, qapp: QApplication, drawing: Drawing, known: FoundRows = NO_ROWS, width: int = 320
    ) -> Asked:
        return Asked(qapp.font(), width, ".", drawing, known)

    def test_they_are_those_that_the_list_would_find(
        self, qapp: QApplication, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        with ThreadPoolExecutor(1) as thread:
            rows = thread.submit(rows_of, drawing, found, self.asked(qapp, Drawing())).result()
        measures = Measures(Faces(qapp.font()), 320)
        assert rows.setting == Setting(320, qapp.font().key())
        assert {key: said for key, (_, said) in rows.said.items()} == {
            words.key(each): said_of(drawing, each, ".") for each in found
        }
        assert rows.heights == {
            words.key(each): measures.high(each, said_of(drawing, each, ".")) for each in found
        }
        taken = Rows(lambda _: pytest.fail("said again"), lambda *_: pytest.fail("measured again"))
        taken.take(rows)
        assert [taken.high(each, Setting(320, qapp.font().key())) for each in found] == [
            rows.heights[words.key(each)] for each in found
        ]

    def test_what_is_known_of_the_drawing_before_is_taken_over(
        self, qapp: QApplication, drawing: Drawing, found: tuple[Figure, ...], monkeypatch: pytest.MonkeyPatch
    ) -> None:
        known = rows_of(drawing, found, self.asked(qapp, drawing))
        another = replace(found[0], title="Another")
        said: list[Figure] = []

        def say(of: Drawing, figure: Figure, decimal: str) -> Said:
            said.append(figure)
            return said_of(of, figure, decimal)

        monkeypatch.setattr(heights, "said_of", say)
        again = rows_of(drawing, [another, *found[1:]], self.asked(qapp, drawing, known))
        assert said == [another] and again.said[words.key(another)][1].texts[0] == "Another"
        said.clear()
        narrow = rows_of(drawing, found, self.asked(qapp, drawing, known, width=200))
        assert (
            not said
            and narrow.heights == rows_of(drawing, found, self.asked(qapp, drawing, width=200)).heights
        )
        assert narrow.heights != known.heights

    def test_what_was_found_by_now_stays_as_it_was(self, drawing: Drawing, found: tuple[Figure, ...]) -> None:
        """Another thread reads it while the list goes on: else what one drawing's rows say came to be another's."""
        rows = Rows(lambda figure: said_of(drawing, figure, "."), lambda *_: 40)
        rows.high(found[0], WIDE)
        by_now = rows.found
        rows.forget()
        rows.high(found[1], NARROW)
        key = words.key(found[0])
        assert by_now == FoundRows(WIDE, {key: (found[0], said_of(drawing, found[0], "."))}, {key: 40})

    def test_where_things_are_called_otherwise_all_is_said_anew(
        self, qapp: QApplication, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        known = rows_of(drawing, found, self.asked(qapp, drawing))
        id = next(each.subject[0] for each in found if each.subject and each.subject[0] in drawing.components)
        parts = {**drawing.components, id: replace(drawing.components[id], label="Called so")}
        renamed = replace(drawing, components=parts)
        rows = rows_of(renamed, found, self.asked(qapp, drawing, known))
        assert any("Called so" in text for _, said in rows.said.values() for text in said.texts)

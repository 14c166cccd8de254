"""What rows of figures say and how high they are: as Qt wraps them, and found once."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QRect
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QApplication

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.figures.heights import WRAP, Faces, Rows, Said, said_of
from circuitcheck.figures.catalogue import all_figures
from circuitcheck.figures.figure import Figure
from circuitcheck.figures.plant import Plant
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read


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
        first = [rows.high(each, 320) for each in found]
        assert [rows.high(each, 320) for each in found] == first
        assert said == measured == list(found)

    def test_in_another_width_only_the_heights_are_others(
        self, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        rows, said, measured = self.rows(drawing)
        assert rows.high(found[0], 320) != rows.high(found[0], 300)
        assert (len(said), len(measured)) == (1, 2)

    def test_worked_out_anew_with_the_same_outcome_it_is_not_measured_anew(
        self, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        rows, said, measured = self.rows(drawing)
        assert rows.high(found[0], 320) == rows.high(replace(found[0]), 320)
        assert len(said) == len(measured) == 1

    def test_with_another_outcome_it_is_said_and_measured_anew(
        self, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        rows, said, measured = self.rows(drawing)
        worked = next(each for each in found if each.results)
        rows.high(worked, 320)
        other = replace(worked, results=worked.results[:-1])
        rows.high(other, 320)
        assert said == measured == [worked, other]
        assert rows.said(other) == said_of(drawing, other, ".")

    def test_what_is_forgotten_or_not_kept_is_said_anew(
        self, drawing: Drawing, found: tuple[Figure, ...]
    ) -> None:
        rows, said, _ = self.rows(drawing)
        for each in found[:2]:
            rows.high(each, 320)
        rows.keep(found[:1])
        for each in found[:2]:
            rows.high(each, 320)
        assert said == [found[0], found[1], found[1]]
        rows.forget()
        rows.high(found[0], 320)
        assert said[-1] is found[0] and len(said) == 4

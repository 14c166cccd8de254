"""The sheet in German: labels, figures and the key have the room that the German words need."""

from __future__ import annotations

from itertools import pairwise

import pytest
from PySide6.QtWidgets import QApplication

from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.services import service_names
from circuitcheck.editor.theme import light
from circuitcheck.editor.translating import WINDOW, shown_told
from circuitcheck.picture.labels import size_of
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import TextMark
from circuitcheck.picture.title_block import title_block
from circuitcheck.sheet import depiction
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.editor.languages.speaking import german


def test_labels_are_laid_out_by_the_words_that_are_shown(qapp: QApplication) -> None:
    with german(qapp):
        content = Content(service_names, light())
        content.show(read(data_path("samples") / "terrace-valve-before-vessel.wetcircuit"))
        layout = content.layout
        told = {
            id: tuple(shown_told(line) for line in depiction.label_lines(layout.things[id], ","))
            for id in layout.labels
        }
        assert any(told[id] != depiction.label_lines(layout.things[id], ",") for id in told)
        for id, label in layout.labels.items():
            assert label.is_inside or label.lines == told[id]
            wide = label.box[2] - label.box[0]
            assert wide == pytest.approx(size_of(label.lines, label.heads)[0]), label.lines


def test_the_columns_of_the_key_are_as_wide_as_their_names(qapp: QApplication) -> None:
    with german(qapp):
        texts = sorted(
            (mark.y, mark.x, width(shown_told(mark.text), mark.size, mark.weight))
            for mark in title_block("Hütte", "", WINDOW)
            if isinstance(mark, TextMark)
        )
    assert any(y > 60 for y, _, _ in texts)
    for (y, x, wide), (other_y, other_x, _) in pairwise(texts):
        assert y != other_y or x + wide < other_x

"""Texts of the window: without a translation they are what they say; with one, told with their values."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import relabel
from circuitcheck.editor.figures.words import subject
from circuitcheck.editor.fill_in.entering import part_words
from circuitcheck.editor.learning.practice_words import place_words
from circuitcheck.editor.panels.numbers import NotANumberError, typed
from circuitcheck.editor.sheet.step_names import step_name
from circuitcheck.editor.sheet.view import SheetView
from circuitcheck.editor.translating import decimal_sign, lower, of_error, shown_told, tr, tr_n
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.told import a_word, listed, told_number, worded
from tests.editor.languages.speaking import german
from tests.made import made


def test_without_a_translation_a_text_is_itself() -> None:
    assert tr("Not joined") == "Not joined"
    assert tr("Valve {name} is shut", name="V1") == "Valve V1 is shut"


def test_a_value_is_never_read_as_a_template() -> None:
    assert tr("Valve {name} is shut", name="{count}") == "Valve {count} is shut"


def test_one_and_many() -> None:
    assert tr_n("{count} part", "{count} parts", 1) == "1 part"
    assert tr_n("{count} part", "{count} parts", 0) == "0 parts"


def test_what_a_row_below_told_is_told_again_and_a_persons_text_is_not(qapp: QApplication) -> None:
    said = worded("Charge {vessel} to {right} bar.", vessel="Pump", right=told_number("0.9"))
    with german(qapp):
        assert tr(said) == "Pump auf einen Vordruck von 0,9 bar bringen."
        assert tr(listed(["a", "b", a_word("Pump")])) == "a, b und Pumpe"
        assert (shown_told("Pump"), shown_told(a_word("Pump"))) == ("Pump", "Pumpe")
        assert lower("Pumpe") == "Pumpe"
    assert tr(said) == "Charge Pump to 0.9 bar."
    assert lower("Pump") == "pump"


def test_a_label_that_is_a_word_of_the_program_stays_as_it_was_typed(qapp: QApplication) -> None:
    drawing = made({"p": "pump", "q": "pump"}, "p.out - q.in")
    labelled = relabel(drawing, "p", "Heat source")
    with german(qapp):
        assert part_words(labelled, "p") == place_words(labelled, "p") == "Heat source"
        assert part_words(labelled, "q") == place_words(labelled, "q") == "Pumpe q"
        assert subject(labelled, figure_of("p", "q")) == "Heat source, Pumpe q"


def test_steps_are_named_in_the_language_of_the_window(qapp: QApplication, qtbot: QtBot) -> None:
    view = SheetView()
    qtbot.addWidget(view)
    drawing = made({"p": "pump"}, "")
    steps: list[str] = []
    view.edited.connect(lambda step, _: steps.append(step))
    # On its way through Qt's signal a name of a step stays what it was made of.
    view.edited.emit(step_name("Turn", drawing, {"p"}), drawing)
    assert steps == ["Turn pump"]
    with german(qapp):
        assert tr(steps[0]) == "Pumpe drehen"


def figure_of(*parts: str) -> Figure:
    return Figure("swell", "Swell", parts, (Result("Swell", 1.0, "l"),), "", (), "", "")


def test_sentences_put_together_are_told_one_by_one(qapp: QApplication) -> None:
    whole = "{thing} has no store thermostat that stops its heat. Whether that matters rests on what is not known: {missing}."
    nowhere = "Pump. Nobody has ever written this."
    with german(qapp):
        assert tr(whole).startswith("{thing} hat keinen Speicherthermostat")
        assert tr(whole).endswith("hängt an Unbekanntem: {missing}.")
        assert tr(nowhere) == nowhere


def test_an_error_is_told_as_it_was_given() -> None:
    assert of_error(ValueError(a_word("Pump"))) == "Pump"
    assert of_error(OSError(2, "no such file")) == "[Errno 2] no such file"


@pytest.mark.parametrize("place", ["de_DE", "en_GB", "de_CH", "sv_SE"])
def test_a_comma_and_a_point_part_the_decimals_wherever_one_is(place: str) -> None:
    """Nothing groups thousands: in Germany too `1.500` is one and a half, as `1,500` is in England."""
    before = QLocale()
    QLocale.setDefault(QLocale(place))
    try:
        for text, number in (
            ("1,5", 1.5),
            ("1.5", 1.5),
            ("1.500", 1.5),
            ("1,500", 1.5),
            ("−0,3", -0.3),
            ("12", 12),
        ):
            assert typed(text) == number
        for text in ("1.500,5", "1,500.5", "1 500", "1'500", "1.500.000"):
            with pytest.raises(NotANumberError, match="is not a number"):
                typed(text)
        assert decimal_sign() == ("," if place in ("de_DE", "sv_SE") else ".")
    finally:
        QLocale.setDefault(before)

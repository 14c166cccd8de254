"""Languages without Qt: the same texts as the window's, templates and pieces of them, and read only when asked for."""

from __future__ import annotations

import pytest

from circuitcheck.told import ENGLISH, a_word, dated, ended, tell, told_number, worded
from circuitcheck.tongues import CODES, tongue

GERMAN = tongue("de")


def test_english_needs_no_file_and_german_is_read_once() -> None:
    assert CODES == ("en", "de")
    assert tongue("en") is ENGLISH
    assert tongue("de") is GERMAN
    assert GERMAN.decimal == "," and tongue("de", ".").decimal == "."


def test_a_text_a_template_and_what_is_no_text_of_the_program() -> None:
    assert GERMAN.text("Heat source") == "Wärmeerzeuger"
    assert (
        tell(worded("{field} {value}", field=a_word("Size"), value=told_number("0.5")), GERMAN) == "Größe 0,5"
    )
    assert GERMAN.text("Nobody wrote this") == "Nobody wrote this"
    assert tell("Heat source", GERMAN) == "Heat source"


@pytest.mark.parametrize(
    ("template", "told"),
    [
        (
            "is it strong enough? It rests on what is not known: {missing}.",
            "Ist die Pumpe stark genug? Das hängt an Unbekanntem: {missing}.",
        ),
        (
            "{thing}: {question} It rests on what is not known: {missing}.",
            "{thing}: {question} Das hängt an Unbekanntem: {missing}.",
        ),
        ("{first}, {second}: {third}", "{first}, {second}: {third}"),
        (" is it strong enough? ", " Ist die Pumpe stark genug? "),
        ("{thing}: nobody wrote this", "{thing}: nobody wrote this"),
    ],
)
def test_a_template_is_known_by_its_pieces(template: str, told: str) -> None:
    assert GERMAN.text(template) == told


def test_days_and_full_stops() -> None:
    assert dated("2026-11-05") == "2026-11-05"
    assert tell(dated("2026-11-05"), GERMAN) == "05.11.2026"
    assert tell(dated("in spring"), GERMAN) == "in spring"
    assert ended("no water.") == ended("no water") == "no water."
    assert ended("") == ""
    assert tell(ended(a_word("Nothing was found.")), GERMAN) == "Nichts wurde gefunden."

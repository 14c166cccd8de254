"""What the panel of figures says: origins in words with the place to change them, defaults, what is found."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtWidgets import QApplication

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.figures import words
from circuitcheck.figures.catalogue import all_figures
from circuitcheck.figures.figure import Figure, Input, Moves, Result
from circuitcheck.figures.plant import Plant
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.editor.languages.speaking import german
from tests.made import made
from tests.report.document.untold import english_in, names_of


def drawing() -> Drawing:
    return made({"pump": "pump", "cap": "cap"}, "p1: pump.out - cap.a")


def figure(**changed: object) -> Figure:
    plain = Figure("swell", "Swell of the water", ("pump",), (Result("swell", 2.25, "l"),), "", (), "", "")
    return replace(plain, **changed)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        ("given pump.shut_off_head_m", words.Origin("given in the drawing", ("pump", "shut_off_head_m"))),
        ("usual value p1.material", words.Origin("usual value, not given", ("p1", "material"))),
        ("measured p1.length_m", words.Origin("measured on the sheet", ("p1", "length_m"))),
        (
            "given design.flow_temperature_c",
            words.Origin("given in the drawing", ("design", "flow_temperature_c")),
        ),
        ("given pump.no_such_field", words.Origin("Given: pump.no such field")),
        ("given, or of standard tube of its size", words.Origin("Given, or of standard tube of its size")),
        ("figure water-content", words.Origin("from the figure", figure="water-content")),
        ("rule england: supply.loading_units", words.Origin("Rule book England: EN 806-3:2006, Table 2")),
        ("common practice, no source", words.Origin("Common practice, no source")),
    ],
)
def test_where_a_number_came_from(said: str, expected: words.Origin) -> None:
    assert words.origin(drawing(), said) == expected


def test_values_carry_their_unit_and_the_decimal_sign() -> None:
    assert words.result(Result("swell", 2.25, "l"), ",") == "2,25 l"
    assert words.result(Result("head", -0.5, "bar")) == "−0.5 bar"
    assert words.result(Result("size", "22", "mm"), ",") == "22 mm"
    assert words.result(Result("share", float("inf"), "")) == "without limit"
    many = figure(results=tuple(Result(f"r{index}", index, "l") for index in range(5)))
    assert words.head(many) == (("R0", "0 l"), ("R1", "1 l"), ("R2", "2 l"), ("and 2 more", ""))


def test_a_refusal_says_why_and_how_many_numbers() -> None:
    assert words.why_not(figure()) == ""
    refused = figure(results=(), refused="Too hot.")
    assert words.why_not(refused) == "Not worked: Too hot."
    lacking = replace(refused, missing=("pump.shut_off_head_m",))
    assert words.why_not(lacking) == "Not worked: 1 number is missing."
    assert words.missing_places(drawing(), lacking) == (
        ("Pump pump: shut-off head", ("pump", "shut_off_head_m")),
    )
    assert words.note([figure(), lacking, refused]) == "1 worked, 2 not"


def test_what_it_rests_on_names_the_field_and_the_move() -> None:
    moves = (Moves("p1.material", "+20 %", -0.125), Moves("resistances not given", "half as much", 0.106))
    field, other = words.rests(drawing(), moves, ",")
    assert field.field == ("p1", "material") and field.words.endswith(
        "+20 % would move the result by −12,5\u00a0%."
    )
    assert other.field is None and other.words.startswith("Resistances not given: half as much")


def test_the_subject_is_named_and_a_long_one_cut() -> None:
    assert words.subject(drawing(), figure()) == "Pump pump"
    assert words.subject(drawing(), figure(subject=())) == ""
    many = figure(subject=("pump", "p1", "cap", "gone", "p1"))
    assert words.subject(drawing(), many) == "Pump pump, Pipe p1, Cap cap, 2 more"


@pytest.mark.parametrize(
    ("asked", "found"),
    [("", True), ("SWELL", True), ("pump swell", True), ("litre", False), ("swell bath", False)],
)
def test_found_by_every_word_that_is_typed(asked: str, found: bool) -> None:
    assert words.found_in(drawing(), figure(), asked) == found


def test_copied_as_text_it_has_all_its_working() -> None:
    full = figure(
        formula="Ve = e × V",
        inputs=(Input("V", "water content", 96.0, "l", "given design.fill_pressure_bar"),),
        source="EN 12828",
        limits="Water alone.",
        moves=(Moves("p1.material", "+20 %", 0.1),),
    )
    text = words.as_text(drawing(), [full])
    for said in ("Swell of the water: Pump pump", "= Swell  2.25  l", "Formula: Ve = e × V",
                 "V  96  l  Water content (given: the drawing’s fill pressure)",
                 "Source: EN 12828", "Holds: Water alone.", "Rests on: Pipe p1: material"):  # fmt: skip
        assert said in text
    assert text.startswith("Swell") and text.endswith("\n")


def test_copied_in_german_it_is_german(qapp: QApplication) -> None:
    full = read(data_path("samples") / "terrace-as-found.wetcircuit")
    found = all_figures(Plant(full))
    with german(qapp):
        text = words.as_text(full, found)
    # Lines end anywhere.
    assert not english_in([" ".join(text.split())], names_of(full))
    assert "Formel: " in text and "10,41  l/min" in text


@pytest.mark.parametrize("sample", sorted(path.name for path in data_path("samples").glob("*.wetcircuit")))
def test_every_origin_that_names_a_field_leads_there(sample: str) -> None:
    full = read(data_path("samples") / sample)
    found = all_figures(Plant(full))
    names = {figure.name for figure in found}
    for figure in found:
        assert words.spoken(full, figure) and words.as_text(full, [figure])
        for each in figure.inputs:
            told = words.origin(full, each.origin)
            starts = each.origin.startswith(("given ", "usual value ", "measured "))
            assert (told.field is not None) == starts or " " in each.origin.partition(" ")[2], each.origin
            if told.figure:
                assert told.figure in names or ":" in each.origin

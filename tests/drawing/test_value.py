"""What things are called in a sentence."""

from dataclasses import replace

import pytest

from circuitcheck.drawing.value import english_names
from tests.drawing.making import control, drawing, part


@pytest.mark.parametrize(
    ("label", "name"),
    [
        ("Pump, first floor", "Pump, first floor"),
        ("Pump\nof  the\tfirst\r\nfloor ", "Pump of the first floor"),
        ("Pump\u2028of\x85the\x0cloft", "Pump of the loft"),
        ("", "pump pm"),
        (" \n\u3000", "pump pm"),
    ],
)
def test_a_part_is_called_by_its_label_on_one_line(label: str, name: str) -> None:
    pump = replace(part("pm", "pump"), label=label)
    assert pump.name == name
    assert drawing([pump]).name("pm") == name
    assert english_names([pump]) == [name]


@pytest.mark.parametrize(
    ("label", "name"),
    [("", "room thermostat rt"), ("Hall\n\n stat", "Hall stat"), ("\n", "room thermostat rt")],
)
def test_a_control_is_called_by_its_label_on_one_line(label: str, name: str) -> None:
    stat = replace(control("rt", "room_thermostat"), label=label)
    assert drawing([], controls=[stat]).name("rt") == name

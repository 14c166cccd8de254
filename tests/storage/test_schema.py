"""The schema says of a file what reading says, as far as a schema can."""

from __future__ import annotations

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft202012Validator, FormatChecker

from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.storage.schema import SHIPPED, schema, written
from circuitcheck.storage.writing import dump
from tests.storage.files import cottage, encoded, faults
from tests.storage.test_faults import ONE_FAULT
from tests.strategies import drawings

VALIDATOR = Draft202012Validator(schema(), format_checker=FormatChecker(["date"]))

# What only reading sees: what holds between items, and numbers beyond any floating point.
BETWEEN_ITEMS = {"ends", "id", "energy_cut_out", "over", "acts_on", "in_same_room_as"}


def test_the_schema_that_ships_is_the_one_the_catalogue_makes() -> None:
    assert SHIPPED.read_text(encoding="utf-8") == written(), "run python -m circuitcheck.storage.schema"


def test_it_is_a_schema() -> None:
    Draft202012Validator.check_schema(schema())


def test_it_tells_of_every_kind_its_ports_size_units_limits_and_defaults() -> None:
    told = json.loads(SHIPPED.read_text(encoding="utf-8"))["$defs"]
    for name, kind in component_kinds().items():
        about = told[f"kind-{name}"]
        assert about["x-size"] == list(kind.size)
        assert [port["name"] for port in about["x-ports"]] == [port.name for port in kind.ports]
        assert [tuple(port["at"]) for port in about["x-ports"]] == [port.at for port in kind.ports]
        assert list(about["properties"]) == [field.name for field in kind.fields]
    pump_overrun = told["kind-heat_source"]["properties"]["pump_overrun_min"]
    assert (pump_overrun["x-unit"], pump_overrun["default"], pump_overrun["minimum"]) == ("min", 5, 0)


def test_a_sound_file_is_valid() -> None:
    VALIDATOR.validate(cottage())
    VALIDATOR.validate({"wetcircuit": 1})


@given(drawings())
def test_every_drawing_that_is_written_is_valid(drawing: Drawing) -> None:
    data = dump(drawing)
    VALIDATOR.validate(json.loads(data))
    assert faults(data) == ()


@pytest.mark.parametrize("number", range(len(ONE_FAULT)))
def test_what_reading_refuses_the_schema_refuses(number: int) -> None:
    change, _, field = ONE_FAULT[number]
    file = cottage()
    change(file)
    (fault,) = faults(encoded(file))
    valid = VALIDATOR.is_valid(file)
    if field not in BETWEEN_ITEMS:
        # A whole number of four hundred digits has no floating point, which JSON has no word for.
        assert not valid or file["components"][0]["data"].get("output_kw") == 10**400
    elif valid:
        assert any(word in fault.message for word in ("has an end", "names", "is given to"))


WRONG: st.SearchStrategy[Any] = (
    st.none()
    | st.booleans()
    | st.integers(-2000, 2000)
    | st.sampled_from(
        [0.5, -1e7, 1e7, "", "x", "copper", "england", "2030-02-30", "2030-02-28", "open", "a" * 1_001]
    )
    | st.lists(st.integers(0, 3) | st.sampled_from(["t1", "pump", ""]), max_size=3)
    | st.just({})
)


@given(st.data())
def test_both_say_the_same_of_a_file_with_a_value_changed(data: st.DataObject) -> None:
    file = cottage()
    place: Any = file
    while True:
        key = data.draw(st.sampled_from(list(place) if isinstance(place, dict) else list(range(len(place)))))
        if isinstance(place[key], (dict, list)) and place[key] and data.draw(st.integers(0, 4)):
            place = place[key]
        else:
            place[key] = data.draw(WRONG)
            break
    found = faults(encoded(file))
    if VALIDATOR.is_valid(file):
        # What is left is between the items.
        assert all(fault.field in BETWEEN_ITEMS for fault in found), found
    else:
        assert found

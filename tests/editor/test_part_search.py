"""What is typed finds the part that is meant."""

from __future__ import annotations

import pytest

from circuitcheck.editor.part_search import found_by
from circuitcheck.parts.catalogue import kinds


@pytest.mark.parametrize(
    ("typed", "best"),
    [
        ("zone", "zone_valve"),
        ("valve zone", "zone_valve"),
        ("zv", "zone_valve"),
        ("prv", "pressure_reducing_valve"),
        ("EXPANSION VES", "expansion_vessel"),
        ("vessel", "expansion_vessel"),
        ("pu", "pump"),
        ("three port", "three_port_valve"),
        ("three-port", "three_port_valve"),
        ("way round", "bypass_valve"),
        ("tundsh", "tundish"),
        ("iso", "isolating_valve"),
        ("temp rel", "temperature_relief_valve"),
        ("room th", "room_thermostat"),
    ],
)
def test_the_best_match_is_what_is_meant(typed: str, best: str) -> None:
    assert found_by(typed)[0] == best


@pytest.mark.parametrize("kind", list(kinds().values()), ids=lambda kind: kind.name)
def test_each_part_is_found_by_its_whole_name(kind: object) -> None:
    assert found_by(kind.title)[0] == kind.name  # type: ignore[attr-defined]  # parametrized


def test_nothing_typed_is_everything_and_nonsense_nothing() -> None:
    assert sorted(found_by(" ")) == sorted(kinds())
    assert found_by("qqq") == []


def test_what_was_placed_lately_comes_first_among_equals() -> None:
    assert found_by("valve")[0] != "zone_valve" and found_by("valve", ["zone_valve"])[0] == "zone_valve"
    assert found_by("drain", ["feed_cistern"])[0] == "drain"
    assert found_by("s", ["store_thermostat"])[0] == "store_thermostat"

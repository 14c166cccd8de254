"""A store's relief valves discharge through a tundish; other valves need none."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.houses import store_discharge
from tests.made import Part, made

NAME = "tundish-absent"


def straight(
    store: Part = ("unvented_store", {"volume_l": 150}), valve: str = "temperature_relief_valve"
) -> Drawing:
    """A store's valve that discharges straight to its end."""
    return made(
        {"us": store, "tr": valve, "de": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet de.inlet"),
    )


@pytest.mark.parametrize("valve", ["temperature_relief_valve", "expansion_relief_valve"])
def test_fires(valve: str) -> None:
    finding = only(NAME, straight(valve=valve))
    assert (finding.grade.value, finding.components) == ("danger", ("tr", "de"))


def test_does_not_fire_with_one() -> None:
    answer = asked(NAME, store_discharge())
    assert (answer.findings, answer.status) == ((), "judged")


def test_a_tundish_on_one_of_two_ways_is_not_enough() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "t1": "tee",
         "tu": "tundish", "d1": "discharge_end", "d2": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet t1.a:b tu.inlet:outlet d1.inlet", "t1.branch d2.inlet"),
    )  # fmt: skip
    assert only(NAME, drawing).components == ("tr", "d2")


def test_the_heating_safety_valve_needs_none() -> None:
    drawing = made(
        {"hs": "heat_source", "sv": "safety_valve", "de": "discharge_end"},
        way("hs.flow sv.inlet", "sv.outlet de.inlet"),
    )
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize(("volume", "fires"), [(15, False), (15.01, True)])
def test_stores_of_15_litres_or_less(volume: float, fires: bool) -> None:
    drawing = straight(("unvented_store", {"volume_l": volume}))
    assert bool(found(NAME, drawing)) is fires


@pytest.mark.parametrize("data", [{}, {"volume_l": None}])
def test_unanswered_where_the_volume_is_not_known(data: dict[str, object]) -> None:
    finding = only(NAME, straight(("unvented_store", data)))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("us.volume_l",))
    assert finding.would_be is not None and finding.would_be.value == "danger"


def test_an_unknown_volume_does_not_matter_with_a_tundish() -> None:
    drawing = store_discharge(store={"volume_l": None})
    assert asked(NAME, drawing).status == "judged"
    assert found(NAME, drawing) == ()


def test_one_large_store_on_the_same_water_is_enough_for_the_rules() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 10}), "u2": ("unvented_store", {"volume_l": 150}),
         "tr": "temperature_relief_valve", "de": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet de.inlet", "us.hot u2.cold"),
    )  # fmt: skip
    assert only(NAME, drawing).grade.value == "danger"


@pytest.mark.parametrize("built_in", ["temperature_relief", "expansion_relief"])
def test_built_in_valves_too(built_in: str) -> None:
    store: Part = ("unvented_store", {"volume_l": 150, "built_in": [built_in]})
    without = made({"us": store, "de": "discharge_end"}, way("us.relief_outlet de.inlet"))
    assert only(NAME, without).components == ("us", "de")
    with_one = made(
        {"us": store, "tu": "tundish", "de": "discharge_end"},
        way("us.relief_outlet tu.inlet:outlet de.inlet"),
    )
    assert found(NAME, with_one) == ()


def test_a_built_in_safety_valve_of_a_heat_source_needs_none() -> None:
    drawing = made(
        {"hs": ("heat_source", {"built_in": ["safety_valve"]}), "de": "discharge_end"},
        way("hs.relief de.inlet"),
    )
    assert found(NAME, drawing) == ()


def test_no_discharge_at_all_is_another_checks() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve"},
        way("us.relief tr.inlet"),
    )
    assert asked(NAME, drawing).status == "not applicable"

"""From valve to tundish: 600 mm passes, a step over does not."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.houses import store_discharge
from tests.made import made

NAME = "tundish-too-far"
Pieces = tuple[Mapping[str, Any], ...]


@pytest.mark.parametrize(
    "before",
    [
        ({"length_m": 0.6},),
        ({"length_m": 0.5},),
        ({"length_m": 0.1}, {"length_m": 0.5}),
        ({"length_m": 0.2}, {"length_m": 0.2}, {"length_m": 0.2}),
        ({"length_m": 0.6, "bends": 5},),
        ({"length_m": 0.6, "material": "plastic"},),
    ],
)
def test_does_not_fire(before: Pieces) -> None:
    answer = asked(NAME, store_discharge(before=before))
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(
    ("before", "length"),
    [
        (({"length_m": 0.61},), 0.61),
        (({"length_m": 0.6001},), 0.6001),
        (({"length_m": 0.3}, {"length_m": 0.31}), 0.61),
        (({"length_m": 0.61}, {"length_m": None}), 0.61),
    ],
)
def test_fires(before: Pieces, length: float) -> None:
    finding = only(NAME, store_discharge(before=before))
    assert (finding.grade.value, finding.components) == ("danger", ("tr", "tu"))
    assert finding.numbers == {"length_m": pytest.approx(length), "limit_m": 0.6}
    assert finding.pipes == tuple(f"b{number}" for number in range(1, len(before) + 1))


@pytest.mark.parametrize(
    ("before", "missing"),
    [
        (({},), ("b1.length_m",)),
        (({"length_m": None},), ("b1.length_m",)),
        (({"length_m": 0.6}, {}), ("b2.length_m",)),
        (({}, {}), ("b1.length_m", "b2.length_m")),
    ],
)
def test_unanswered_naming_what_is_missing(before: Pieces, missing: tuple[str, ...]) -> None:
    finding = only(NAME, store_discharge(before=before))
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "danger"


@pytest.mark.parametrize(("volume", "fires"), [(15, False), (15.1, True)])
def test_small_stores_are_outside_the_rule(volume: float, fires: bool) -> None:
    drawing = store_discharge(before=({"length_m": 2},), store={"volume_l": volume})
    assert bool(found(NAME, drawing)) is fires


def test_unanswered_where_only_the_volume_is_missing() -> None:
    finding = only(NAME, store_discharge(before=({"length_m": 2},), store={"volume_l": None}))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("us.volume_l",))
    assert found(NAME, store_discharge(before=({"length_m": 0.6},), store={"volume_l": None})) == ()


def test_the_heating_safety_valve_is_outside_the_rule() -> None:
    drawing = made(
        {"hs": "heat_source", "sv": "safety_valve", "tu": "tundish", "de": "discharge_end"},
        way("hs.flow sv.inlet", "sv.outlet tu.inlet:outlet de.inlet"),
        pipe_data={"p2": {"length_m": 4}},
    )
    assert asked(NAME, drawing).status == "not applicable"


def test_each_of_two_valves_into_one_tundish_has_its_own_distance() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "xr": "expansion_relief_valve",
         "t1": "tee", "tu": "tundish", "de": "discharge_end"},
        way("us.relief tr.inlet", "us.cold xr.inlet", "tr.outlet t1.a:branch tu.inlet:outlet de.inlet", "xr.outlet t1.b"),
        pipe_data={"p3": {"length_m": 0.3}, "p4": {"length_m": 0.2}, "p6": {"length_m": 0.5}},
    )  # fmt: skip
    assert only(NAME, drawing).components == ("xr", "tu")


def test_nothing_is_said_where_there_is_no_tundish() -> None:
    drawing = made(
        {
            "us": ("unvented_store", {"volume_l": 150}),
            "tr": "temperature_relief_valve",
            "de": "discharge_end",
        },
        way("us.relief tr.inlet", "tr.outlet de.inlet"),
    )
    assert asked(NAME, drawing).status == "not applicable"


def two_tundishes(pipe_data: Mapping[str, Any]) -> Drawing:
    """One valve's outlet divided by a tee: by p2 and p3 to the tundish u1, by p2 and p5 to u2."""
    return made(
        {"us": ("unvented_store", {"volume_l": 150}), "tr": "temperature_relief_valve", "t1": "tee",
         "u1": "tundish", "u2": "tundish", "d1": "discharge_end", "d2": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet t1.a:b u1.inlet:outlet d1.inlet", "t1.branch u2.inlet:outlet d2.inlet"),
        pipe_data=pipe_data,
    )  # fmt: skip


@pytest.mark.parametrize(("first", "second", "far"), [(0.4, 0.7, "u2"), (0.7, 0.4, "u1")])
def test_the_farther_of_two_tundishes_is_judged(first: float, second: float, far: str) -> None:
    drawing = two_tundishes({"p2": {"length_m": 0}, "p3": {"length_m": first}, "p5": {"length_m": second}})
    finding = only(NAME, drawing)
    assert finding.components == ("tr", far)
    assert finding.numbers["length_m"] == pytest.approx(0.7)


def test_two_tundishes_of_which_one_is_not_known_to_be_near() -> None:
    drawing = two_tundishes({"p2": {"length_m": 0.1}, "p3": {"length_m": 0.4}})
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", ("p5.length_m",))

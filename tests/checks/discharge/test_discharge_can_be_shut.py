"""Valves of every kind in a discharge, before the tundish and after it."""

from __future__ import annotations

import pytest

from circuitcheck.circuit.discharge import discharges
from circuitcheck.circuit.joining import Circuit
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.discharge.plants import EUROPEAN, heating
from tests.made import Part, made

NAME = "discharge-can-be-shut"

VALVES: dict[str, tuple[Part, str]] = {
    "isolating valve": ("isolating_valve", "a:b"),
    "secured": (("isolating_valve", {"secured": True}), "b:a"),
    "balancing valve": ("balancing_valve", "a:b"),
    "zone valve": ("zone_valve", "in:out"),
    "zone valve that rests open": (("zone_valve", {"rest": "open"}), "out:in"),
    "three-port valve": ("three_port_valve", "ab:a"),
    "check valve": ("check_valve", "in:out"),
    "bypass valve": ("bypass_valve", "in:out"),
    "reducing valve": ("pressure_reducing_valve", "in:out"),
    "pump with isolating valves": ("pump", "in:out"),
    "dirt separator with isolating valves": ("dirt_separator", "a:b"),
    "thermostatic head": ("radiator", "flow:return"),
}
NONE: dict[str, tuple[Part, str]] = {
    "tundish": ("tundish", "inlet:outlet"),
    "strainer": ("strainer", "in:out"),
    "tee": ("tee", "a:branch"),
    "dirt separator without": (("dirt_separator", {"isolating_valves": False}), "a:b"),
}


@pytest.mark.parametrize(("part", "ports"), VALVES.values(), ids=VALVES.keys())
def test_any_valve_fires(part: Part, ports: str) -> None:
    finding = only(NAME, heating(f"xx.{ports}", xx=part))
    assert (finding.grade.value, finding.components) == ("danger", ("sv", "xx"))
    assert finding.pipes == ("p2", "p3")


@pytest.mark.parametrize(("part", "ports"), NONE.values(), ids=NONE.keys())
def test_what_nothing_shuts(part: Part, ports: str) -> None:
    answer = asked(NAME, heating(f"xx.{ports}", xx=part))
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize("stops", [("iv.a:b", "tu.inlet:outlet"), ("tu.inlet:outlet", "iv.a:b")])
@pytest.mark.parametrize("volume", [200, 15, None])
@pytest.mark.parametrize("design", [None, EUROPEAN])
def test_a_stores_before_and_after_its_tundish_whatever_it_holds(
    stops: tuple[str, ...], volume: float | None, design: dict[str, str] | None
) -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": volume}), "tr": "temperature_relief_valve", "tu": "tundish",
         "iv": "isolating_valve", "de": "discharge_end"},
        way("us.relief tr.inlet", " ".join(("tr.outlet", *stops, "de.inlet"))),
        design=design,
    )  # fmt: skip
    assert only(NAME, drawing).components == ("tr", "iv")


def test_on_one_of_two_ways_and_every_valve_named() -> None:
    drawing = made(
        {"sv": "safety_valve", "t1": "tee", "v1": "isolating_valve", "v2": "check_valve", "d1": "discharge_end",
         "d2": "discharge_end"},
        way("sv.outlet t1.a:b v1.a:b v2.in:out d1.inlet", "t1.branch d2.inlet"),
    )  # fmt: skip
    assert only(NAME, drawing).components == ("sv", "v1", "v2")


def test_a_valve_beside_the_way_is_none_of_it() -> None:
    drawing = made(
        {"sv": "safety_valve", "t1": "tee", "iv": "isolating_valve", "k": "cap", "de": "discharge_end"},
        way("sv.outlet t1.a:b de.inlet", "t1.branch iv.a:b k.connection"),
    )
    assert found(NAME, drawing) == ()


def test_no_discharge_is_another_checks() -> None:
    drawing = made({"sv": "safety_valve", "iv": "isolating_valve"}, way("sv.outlet iv.a"))
    assert asked(NAME, drawing).status == "not applicable"


def test_unanswered_where_it_is_not_known_whether_a_part_has_valves() -> None:
    finding = only(NAME, heating("xx.a:b", xx=("dirt_separator", {"isolating_valves": None})))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("xx.isolating_valves",))


def test_each_valve_that_discharges_through_it() -> None:
    drawing: Drawing = made(
        {
            "s1": "safety_valve",
            "s2": "safety_valve",
            "t1": "tee",
            "iv": "isolating_valve",
            "de": "discharge_end",
        },
        way("s1.outlet t1.a:b iv.a:b de.inlet", "s2.outlet t1.branch"),
    )
    assert [finding.components for finding in found(NAME, drawing)] == [("s1", "iv"), ("s2", "iv")]
    assert len(discharges(Circuit(drawing))) == 2

"""Relief and safety valves whose discharge reaches no end."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.houses import store_discharge
from tests.made import Part, made

NAME = "discharge-absent"


def valve_to(*stops: str, valve: Part = "safety_valve", **parts: Part) -> Drawing:
    """A valve on a heat source's flow, and its outlet's way through these stops."""
    return made(
        {"hs": "heat_source", "sv": valve, **parts}, way("hs.flow sv.inlet", " ".join(("sv.outlet", *stops)))
    )


SOUND: dict[str, Drawing] = {
    "straight to its end": valve_to("de.inlet", de="discharge_end"),
    "through a tundish": valve_to("tu.inlet:outlet de.inlet", tu="tundish", de="discharge_end"),
    "through a valve, which another check speaks of": valve_to(
        "iv.a:b de.inlet", iv="isolating_valve", de="discharge_end"
    ),
    "through a check valve along its arrow": valve_to("cv.in:out de.inlet", cv="check_valve", de="discharge_end"),
    "through a tee, one way of it to an end": valve_to(
        "t1.a:branch de.inlet", "", t1="tee", de="discharge_end"
    ),
    "to an end whose place is not known": valve_to("de.inlet", de=("discharge_end", {"place": "unknown"})),
    "a store's relief valve": store_discharge(),
}  # fmt: skip

ABSENT: dict[str, tuple[Drawing, tuple[str, ...], tuple[str, ...]]] = {
    "no pipe": (valve_to(), ("sv",), ()),
    "a pipe that ends in the room": (
        made({"hs": "heat_source", "sv": "safety_valve"}, "hs.flow - sv.inlet\np9: sv.outlet - 4,4"),
        ("sv",),
        ("p9",),
    ),
    "plugged": (valve_to("k.connection", k="cap"), ("sv", "k"), ()),
    "a tundish that leads nowhere": (valve_to("tu.inlet", tu="tundish"), ("sv", "tu"), ()),
    "a tundish from below": (
        valve_to("tu.outlet:inlet de.inlet", tu="tundish", de="discharge_end"),
        ("sv", "tu"),
        (),
    ),
    "a check valve against its arrow": (
        valve_to("cv.out:in de.inlet", cv="check_valve", de="discharge_end"),
        ("sv", "cv"),
        (),
    ),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "components", "pipes"), ABSENT.values(), ids=ABSENT.keys())
def test_fires(drawing: Drawing, components: tuple[str, ...], pipes: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components, finding.pipes) == ("danger", components, pipes)


@pytest.mark.parametrize("kind", ["safety_valve", "temperature_relief_valve", "expansion_relief_valve"])
def test_every_kind_of_valve(kind: str) -> None:
    assert only(NAME, valve_to(valve=kind)).components == ("sv",)
    assert found(NAME, valve_to("de.inlet", valve=kind, de="discharge_end")) == ()


BUILT_IN: dict[str, tuple[str, dict[str, object], str]] = {
    "safety valve of a heat source": ("heat_source", {"built_in": ["safety_valve"]}, "relief"),
    "safety valve of a combination heat source": ("combination_heat_source", {"built_in": ["safety_valve"]}, "relief"),
    "temperature relief of a store": ("unvented_store", {"built_in": ["temperature_relief"]}, "relief_outlet"),
    "expansion relief of a store": ("unvented_store", {"built_in": ["expansion_relief"]}, "relief_outlet"),
    "relief of an inlet group": ("inlet_group", {}, "relief"),
}  # fmt: skip


@pytest.mark.parametrize(("kind", "data", "port"), BUILT_IN.values(), ids=BUILT_IN.keys())
def test_built_in_valves_too(kind: str, data: dict[str, object], port: str) -> None:
    assert only(NAME, made({"xx": (kind, data)}, "")).components == ("xx",)
    led_away = made({"xx": (kind, data), "de": "discharge_end"}, f"xx.{port} - de.inlet")
    assert found(NAME, led_away) == ()


@pytest.mark.parametrize("kind", ["heat_source", "combination_heat_source", "unvented_store"])
def test_nothing_built_in_has_no_discharge(kind: str) -> None:
    assert asked(NAME, made({"xx": kind}, "")).status == "not applicable"


def test_each_valve_by_itself() -> None:
    drawing = made(
        {"v1": "safety_valve", "v2": "safety_valve", "de": "discharge_end"}, "v1.outlet - de.inlet"
    )
    assert only(NAME, drawing).components == ("v2",)


def test_two_ends_and_two_valves_into_one_tundish() -> None:
    two_ends = valve_to("t1.a:b d1.inlet", t1="tee", d1="discharge_end")
    assert found(NAME, two_ends) == ()
    shared = made(
        {"v1": "temperature_relief_valve", "v2": "expansion_relief_valve", "t1": "tee", "tu": "tundish", "de": "discharge_end"},
        way("v1.outlet t1.a:branch tu.inlet:outlet de.inlet", "v2.outlet t1.b"),
    )  # fmt: skip
    assert found(NAME, shared) == ()


def test_the_message_says_where_it_stops() -> None:
    assert "no pipe leads away" in only(NAME, valve_to()).message
    assert "cap k" in only(NAME, valve_to("k.connection", k="cap")).message

"""Whether the heat source stops when every thermostat is satisfied."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, fault, only, told
from tests.checks.circulation.controlled import (
    PROGRAMMER,
    ROOM,
    STORE,
    Controls,
    behind_exchanger,
    radiators,
    three_port,
    two_pumps,
    two_valves,
)
from tests.checks.houses import pumped

NAME = "heat-called-without-interlock"
HELD_ROOMS: Controls = {"rt": (ROOM, ("z1",))}

SOUND: dict[str, Drawing] = {
    "valves obey thermostats, a rail left open": two_valves(),
    "pumps obey thermostats": two_pumps(),
    "three-port valve": three_port(),
    "radiators on a pump that obeys a thermostat": radiators({"rt": (ROOM, ("pu",))}),
    "the heat source itself obeys it": pumped(
        "hs.flow hz.flow:return hs.return", controls={"rt": (ROOM, ("hs",))},
        hs=("combination_heat_source", {"built_in": ["pump"]}), hz="heating_zone",
    ),
    "held before an exchanger": behind_exchanger(),
    "held beyond an exchanger": behind_exchanger({"rt": (ROOM, ("p2",))}),
    "a radiator that hangs by its flow alone": two_valves("t3.branch rail.flow", rail="radiator"),
    "two heat sources": pumped(
        "hs.flow t1.a:b pu.in:out z1.in:out hz.flow:return t2.a:b hs.return", "h2.flow t1.branch", "t2.branch h2.return",
        controls=HELD_ROOMS, h2="heat_source", z1="zone_valve", hz="heating_zone",
    ),
}  # fmt: skip

FIRES: dict[str, tuple[Drawing, tuple[str, ...]]] = {
    "heads only": (radiators(), ("hs", "r1", "r2")),
    "the programmer alone calls": (two_valves(design={"heat_called_by": "programmer_only"}), ("hs",)),
    "no store thermostat": (two_valves(controls=HELD_ROOMS), ("hs", "us")),
    "a programmer on the store's valve is no thermostat": (
        two_valves(controls={**HELD_ROOMS, "pr": (PROGRAMMER, ("z1", "z2"))}), ("hs", "us"),
    ),
    "the room thermostat acts on nothing": (two_valves(controls={"rt": (ROOM, ()), "st": (STORE, ("z2",))}), ("hs", "hz")),
    "no controls at all": (two_valves(controls={}), ("hs", "hz", "us")),
    "no controls at all, and a radiator that hangs by its flow alone": (
        two_valves("t3.branch rail.flow", controls={}, rail="radiator"), ("hs", "hz", "us"),
    ),
    "a rail with a head, which nothing holds": (two_valves(rail="radiator"), ("hs", "rail")),
    "one plain radiator that nothing holds": (
        pumped("hs.flow pu.in:out r1.flow:return hs.return", r1=("radiator", {"thermostatic": False})), ("hs", "r1"),
    ),
    "one pump without": (two_pumps({"rt": (ROOM, ("pu",))}), ("hs", "us")),
    "beyond an exchanger": (behind_exchanger({}), ("hs", "hx")),
    "one of two beyond an exchanger": (
        pumped(
            "hs.flow pu.in:out hx.primary_in:primary_out hs.return", "t1.branch h2.flow:return t2.branch",
            "hx.secondary_out p2.in:out t1.a:b z1.in:out hz.flow:return t2.a:b hx.secondary_in",
            controls=HELD_ROOMS, hx="heat_exchanger", p2="pump", z1="zone_valve", hz="heating_zone", h2="heating_zone",
        ), ("hs", "hx"),
    ),
}  # fmt: skip


def test_a_drawing_without_thermostats_is_told_so() -> None:
    assert "no thermostat acts on anything" in only(NAME, two_valves(controls={})).message
    assert "every thermostat is satisfied" in only(NAME, two_valves(controls=HELD_ROOMS)).message


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "components"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, components: tuple[str, ...]) -> None:
    assert told(NAME, drawing) == [fault("hs")]
    assert only(NAME, drawing).components == components


@pytest.mark.parametrize(
    "drawing",
    [
        two_valves(hs=("heat_source", {"heat": "uncontrolled"}), controls={}),
        pumped("hs.flow pu.in:out hs.return"),
        pumped("cm.outlet us.cold", cm="cold_main", us="unvented_store"),
    ],
    ids=["uncontrolled heat", "nothing takes heat", "no heat source"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (two_valves(design={"heat_called_by": None}), ("design.heat_called_by",)),
        (two_valves(controls={}, hs=("heat_source", {"heat": None})), ("hs.heat",)),
        (
            two_valves(design={"heat_called_by": None}, hs=("heat_source", {"heat": None})),
            ("design.heat_called_by", "hs.heat"),
        ),
    ],
)
def test_unanswered(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert all(name in finding.message for name in missing)


def test_answered_though_not_known_who_calls() -> None:
    assert told(NAME, two_valves(controls={}, design={"heat_called_by": None})) == [fault("hs")]
    assert told(NAME, two_valves(hs=("heat_source", {"heat": None}))) == []


def test_what_is_taken_is_told() -> None:
    assert "design.heat_called_by = valve_end_switches" in analyse(two_valves()).taken

"""What goes round through a heat source while valves are shut."""

from __future__ import annotations

from hypothesis import given

from circuitcheck.circuit.circulating import circulating
from circuitcheck.circuit.joining import Circuit, Placed
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.parts.kind import Role, Way
from tests.checks.asking import way
from tests.circuit.random_circuits import circuits
from tests.made import made

TWO_ZONES = made(
    {"hs": "heat_source", "pu": "pump", "t1": "tee", "t2": "tee", "t3": "tee", "t4": "tee", "zv": "zone_valve",
     "us": "unvented_store", "rad": "radiator", "ev": "expansion_vessel", "bv": "bypass_valve"},
    way("hs.flow pu.in:out t1.a:b t2.a:b zv.in:out us.coil_flow:coil_return t3.a:b t4.a:b hs.return",
        "t1.branch bv.in:out t4.branch", "t2.branch rad.flow:return t3.branch"),
)  # fmt: skip


def heat(circuit: Circuit) -> Placed:
    return circuit.devices(Role.HEATS)[0]


def parts(drawing: Drawing, *shut: str) -> set[str]:
    circuit = Circuit(drawing)
    return set(circulating(circuit, heat(circuit), frozenset(shut)).parts)


def test_with_everything_open_but_the_heads() -> None:
    assert parts(TWO_ZONES) == {"pu", "t1", "t2", "zv", "us", "t3", "t4", "bv", "hs"}


def test_with_the_zone_shut_only_the_bypass_is_left() -> None:
    assert parts(TWO_ZONES, "zv") == {"pu", "t1", "bv", "t4", "hs"}


def test_dead_ends_and_vessels_are_no_way_round() -> None:
    drawing = made(
        {"hs": "heat_source", "t1": "tee", "zv": "zone_valve", "ev": "expansion_vessel"},
        way("hs.flow t1.a:b zv.in:out hs.return", "t1.branch ev.connection"),
    )
    assert parts(drawing) == {"hs", "t1", "zv"}
    assert parts(drawing, "zv") == set()


def test_legs_of_a_three_port_valve() -> None:
    drawing = made(
        {
            "hs": "heat_source",
            "tv": "three_port_valve",
            "us": "unvented_store",
            "bv": "bypass_valve",
            "t1": "tee",
        },
        way("hs.flow tv.ab:a us.coil_flow:coil_return t1.a:b hs.return", "tv.b bv.in:out t1.branch"),
    )
    assert parts(drawing, "tv:a") == {"hs", "tv", "bv", "t1"}
    assert parts(drawing, "tv:b") == {"hs", "tv", "us", "t1"}


@given(circuits(most_shuttable=5))
def test_against_every_way_tried_one_by_one(drawing: Drawing) -> None:
    """Every port on a simple way from flow to return, found by walking them all."""
    circuit = Circuit(drawing)
    for place in circuit.devices(Role.HEATS):
        found = circulating(circuit, place, frozenset())
        on = _on_simple_ways(drawing, circuit, place)
        assert {
            id for id, pipe in drawing.pipes.items() if len(pipe.joints) == 2 and on.issuperset(pipe.joints)
        } == set(found.pipes)


def _on_simple_ways(drawing: Drawing, circuit: Circuit, place: Placed) -> set[Joint]:
    beside: dict[Joint, set[Joint]] = {}

    def joined(one: Joint, other: Joint) -> None:
        beside.setdefault(one, set()).add(other)
        beside.setdefault(other, set()).add(one)

    for pipe in drawing.pipes.values():
        if len(pipe.joints) == 2:
            joined(*pipe.joints)
    for part, plan in circuit.plans.items():
        for passage in plan.passages if part != place.part else ():
            if not passage.gap and passage.way is not Way.THERMOSTAT and not passage.householder:
                joined(Joint(part, passage.a), Joint(part, passage.b))
    start, goal = Joint(place.part, place.device.other), Joint(place.part, "return")
    on: set[Joint] = set()

    def walk(way: list[Joint]) -> None:
        if way[-1] == goal:
            on.update(way)
            return
        for there in beside.get(way[-1], ()):
            if there not in way:
                walk([*way, there])

    walk([start])
    return on

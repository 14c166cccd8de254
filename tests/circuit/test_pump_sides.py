"""What lies on a pump's delivery and on its suction, as far as the first emitter."""

from __future__ import annotations

import pytest

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.pump_sides import PumpSides, pump_sides
from circuitcheck.parts.kind import Role
from tests.checks.houses import pumped

CHECKS = dict.fromkeys(("c1", "c2", "c3", "c4"), "check_valve")


def sides(*ways: str, **parts: str) -> tuple[Circuit, PumpSides]:
    circuit = Circuit(pumped(*ways, controls=None, design=None, **parts))
    pump = next(place for place in circuit.devices(Role.PUMPS) if place.part == "pu")
    return circuit, pump_sides(circuit, pump)


@pytest.mark.parametrize(
    ("part", "port", "delivery", "suction"),
    [
        ("pu", "out", True, False),
        ("c3", "out", True, False),
        ("rad", "flow", True, False),
        ("rad", "return", False, True),
        ("c1", "out", False, True),
        ("pu", "in", False, True),
    ],
)
def test_each_side_goes_on_through_several_arrows(
    part: str, port: str, delivery: bool, suction: bool
) -> None:
    ring = "pu.out c3.in:out c4.in:out rad.flow:return c1.in:out c2.in:out pu.in"
    circuit, found = sides(ring, rad="radiator", **CHECKS)
    reach = found.reaches.of(circuit.node(part, port))
    assert (reach in found.delivery, reach in found.suction) == (delivery, suction)


def test_water_goes_no_way_against_an_arrow() -> None:
    circuit, found = sides(
        "pu.out t1.a:b rad.flow:return t2.a:b pu.in", "t1.branch c1.out:in ca.connection",
        "t2.branch c2.in:out cb.connection", rad="radiator", ca="cap", cb="cap", c1="check_valve", c2="check_valve",
    )  # fmt: skip
    beyond = {
        found.reaches.of(circuit.node("ca", "connection")),
        found.reaches.of(circuit.node("cb", "connection")),
    }
    assert not beyond & (found.delivery | found.suction)

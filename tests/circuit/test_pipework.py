"""The way along the pipes: the cheapest of several, by all of its steps."""

from __future__ import annotations

import pytest

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.pipework import Cost, Step, Tapping, tapping, through, way
from circuitcheck.drawing.value import Joint
from tests.checks.asking import way as pipes_of
from tests.made import made

SHORT_WAY_ROUND = made(
    dict.fromkeys(("t1", "t2", "a", "b", "c"), "tee"),
    pipes_of("t1.a a.a:b b.a:b c.a:b t2.a", "t1.b t2.b"),
)


def test_the_price_of_a_way_is_that_of_all_its_pipes() -> None:
    """Four pipes of one metre, or one of three: each of the four is cheaper than the one."""
    lengths = {"p1": 1.0, "p2": 1.0, "p3": 1.0, "p4": 1.0, "p5": 3.0}

    def cost(step: Step) -> Cost:
        return (lengths.get(step.pipe, 0.0),)

    found = way(
        Circuit(SHORT_WAY_ROUND), [Joint("t1", "branch")], Joint("t2", "branch").__eq__, lambda _: True, cost
    )
    assert found is not None
    assert [step.pipe for step in found if step.pipe] == ["p5"]


@pytest.mark.parametrize(
    ("kind", "port", "stores", "emits"),
    [
        ("unvented_store", "cold", True, False),
        ("unvented_store", "relief", True, False),
        ("unvented_store", "secondary_return", True, False),
        ("unvented_store", "coil_flow", False, True),
        ("vented_store", "hot", True, False),
        ("vented_store", "coil_return", False, True),
        ("heat_exchanger", "primary_in", False, True),
        ("separator", "source_flow", False, False),
    ],
)
def test_every_way_through_a_store_is_by_its_water_or_by_its_coil(
    kind: str, port: str, stores: bool, emits: bool
) -> None:
    steps = list(through(Circuit(made({"it": kind}, "")), Joint("it", port)))
    assert steps and {(step.stores, step.emits) for step in steps} == {(stores, emits)}


@pytest.mark.parametrize("port", ["cold", "hot", "relief", "secondary_return"])
def test_a_vent_led_to_a_store_joins_the_circuit_there(port: str) -> None:
    circuit = Circuit(
        made({"ov": "open_vent", "t": "tee", "cp": "cap", "us": "unvented_store"},
             pipes_of("ov.connection t.a", f"t.b us.{port}", "t.branch cp.connection"))
    )  # fmt: skip
    assert tapping(circuit, Joint("ov", "connection")) == Tapping(Joint("us", port), ("p1", "p2"))

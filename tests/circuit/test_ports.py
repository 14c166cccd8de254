"""The flat row of ports against the drawing itself."""

from __future__ import annotations

from hypothesis import given

from circuitcheck.circuit.joining import Circuit
from circuitcheck.drawing.value import Drawing, Joint
from tests.benchmarks.synthetic import plant
from tests.circuit.random_circuits import circuits


@given(circuits())
def test_a_pipe_is_on_the_ports_and_beside_the_parts_that_it_joins(drawing: Drawing) -> None:
    ports = Circuit(drawing).ports
    for number, pipe in enumerate(drawing.pipes.values()):
        for end, place in zip(pipe.ends, ports.sides[2 * number : 2 * number + 2], strict=True):
            if isinstance(end, Joint):
                assert ports.ids[place] == end.part
                assert ports.node(end.part, end.port) == number
            else:
                assert place == -1


def test_a_port_that_nothing_is_on_has_its_node_when_it_is_asked_for() -> None:
    circuit = Circuit(plant(60))
    assert circuit.ports.node("c0", "no such port") == -1
    asked = circuit.node("c0", "no such port")
    assert asked == circuit.node("c0", "no such port") == circuit.ports.node("c0", "no such port")
    assert circuit.ports.slot("nobody", "a") == -1

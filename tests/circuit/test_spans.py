"""Spans tell the same whenever they are asked for."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.keyed import rounds_of
from circuitcheck.circuit.spans import spans_of
from circuitcheck.drawing.value import Drawing
from tests.circuit.random_circuits import circuits, plants


def bodies(circuit: Circuit) -> list[object]:
    return [
        (body.drives, body.warms, body.takes, body.open_to_air, body.edges)
        for body in rounds_of(circuit).bodies
    ]


@given(st.one_of(circuits(), plants()))
def test_a_port_numbered_between_changes_nothing(drawing: Drawing) -> None:
    circuit = Circuit(drawing)
    spans_of(circuit)
    for part in circuit.partly_joined:
        for port in drawing.components[part].kind.ports:
            circuit.node(part, port.name)
    assert bodies(circuit) == bodies(Circuit(drawing))


@given(st.one_of(circuits(), plants()))
def test_the_nodes_at_the_start(drawing: Drawing) -> None:
    spans = spans_of(Circuit(drawing))
    assert spans.nodes_at_start == [spans.node(start) for start in spans.starts]
    giving = [
        span for span, each in enumerate(spans.passages) if each is not None and each.passage.gives_heat
    ]
    assert spans.giving == giving
    inward = {span for span, each in enumerate(spans.passages) if each is not None and each.inward}
    assert spans.inward == inward

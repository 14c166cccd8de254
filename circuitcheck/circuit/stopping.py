"""Whether shutting one valve stops all flow through a coil."""

from __future__ import annotations

from circuitcheck.circuit.flowways import Ways
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.keyed import rounds_of
from circuitcheck.circuit.rounds import AIR


def stops(circuit: Circuit, valve: str, coil_part: str) -> bool:
    """Whether no loop through the coil is left once that two-port motor valve is shut.

    Every loop counts that takes in a pump or a heat source, whatever else may shut it: heat moves
    on both, by force or by gravity. A coil that is on no loop at all is stopped. A three-port valve
    stops nothing, since one of its legs is always open. Raises TooLargeError beyond the search bound.
    """
    rounds = rounds_of(circuit)
    body = rounds.of(coil_part)
    if body is None or coil_part not in body.takes:
        return True
    ways = Ways([edge for edge in body.edges if valve not in edge.labels])
    driving = dict.fromkeys((*body.warms, *body.drives))
    return not any(body.loop_through(ways, coil_part, key) for key in driving if key != AIR)

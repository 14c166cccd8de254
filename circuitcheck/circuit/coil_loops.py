"""Whether water is still driven through a coil once several parts are called off together."""

from __future__ import annotations

from circuitcheck.circuit.flowways import Ways
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.keyed import rounds_of
from circuitcheck.circuit.labels import leg_label
from circuitcheck.circuit.rounds import AIR


def still_driven(circuit: Circuit, coil_part: str, off: frozenset[tuple[str, str]]) -> bool:
    """Whether a loop through the coil is left that takes in a running pump or a heat source.

    `off` holds parts as (part, "") and legs of three-port valves as (part, leg): nothing goes
    through them. All else stands open. Raises TooLargeError beyond the search bound.
    """
    body = rounds_of(circuit).of(coil_part)
    if body is None or coil_part not in body.takes:
        return False
    shut = {leg_label(part, leg) if leg else part for part, leg in off}
    ways = Ways([edge for edge in body.edges if not shut & edge.labels and not shut & edge.pumps])
    driving = [key for key in (*body.warms, *body.drives) if key != AIR and key not in shut]
    return any(body.loop_through(ways, coil_part, key) for key in dict.fromkeys(driving))

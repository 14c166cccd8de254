"""A part stands backwards if no loop takes it and one would the other way, proved by listing every loop."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.facing import Sort, stands_backwards
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.keyed import rounds_of
from circuitcheck.drawing.value import Drawing
from tests.circuit.brute_rounds import Ring, rings, with_part
from tests.circuit.random_circuits import circuits, plants

SORTS = {
    "pump": Sort.PUMP,
    "bypass_valve": Sort.BYPASS,
    "check_valve": Sort.OTHER,
    "pressure_reducing_valve": Sort.OTHER,
}


def forward(found: list[Ring], part: str, heats: bool, sort: Sort) -> bool:
    """Whether a ring takes the part, with what gives the direction on it."""
    own = [ring for ring in found if part in ring.parts]
    return any(
        bool(ring.heats) if heats and sort is not Sort.BYPASS else bool(ring.heats | ring.pumps)
        for ring in own
    )


def turned(found: list[Ring], part: str, heats: bool, pumps: bool, sort: Sort) -> bool:
    """Whether a driven ring takes the part once it is turned."""
    own = [ring for ring in found if part in ring.parts]
    if heats:
        return any(ring.heats and (ring.pumps or not pumps) for ring in own)
    return sort is not Sort.PUMP and any(ring.pumps for ring in own)


@given(st.one_of(circuits(), plants()))
def test_against_every_loop(drawing: Drawing) -> None:
    rounds = rounds_of(Circuit(drawing))
    kinds = {id: part.kind.name for id, part in drawing.components.items()}
    built_in = {id for id, part in drawing.components.items() if "pump" in part.data.get("built_in", ())}
    drawn = rings(drawing)
    for part, sort in ((id, SORTS[kind]) for id, kind in kinds.items() if kind in SORTS):
        body = rounds.of(part)
        assert body is not None
        near = with_part(drawing, part)
        heats = any(kinds[id] == "heat_source" for id in near)
        pumps = any(kinds[id] == "pump" or id in built_in for id in near)
        free = [id for id, kind in kinds.items() if kind in SORTS and id != part]
        expected = not forward(drawn, part, heats, sort) and (
            turned(rings(drawing, turned=[part]), part, heats, pumps, sort)
            or (
                heats
                and not forward(rings(drawing, freed=free), part, heats, sort)
                and turned(rings(drawing, freed=free, turned=[part]), part, heats, pumps, sort)
            )
        )
        assert stands_backwards(body, part, sort) == expected

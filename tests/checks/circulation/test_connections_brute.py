"""What is said of connections changed over is what plain reachability says, in random circuits."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.circuit.water_connections import WaterConnections
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import found
from tests.checks.circulation.brute_connections import Drinking, Heat, all_pairs
from tests.checks.circulation.random_plants import TAKERS, sound_plants
from tests.checks.supply.brute_supply import fed_supplies, random_supplies
from tests.circuit.random_circuits import circuits, plants
from tests.drawing.changing_over import changed_over

NAME = "connections-changed-over"
many = settings(max_examples=200, deadline=None)
GIVES_OR_PARTS = {
    "heat_source": [("flow", "return")],
    "separator": [
        ("source_flow", "source_return"),
        ("source_flow", "load_return"),
        ("source_return", "load_flow"),
    ],
}


def flows_and_returns(drawing: Drawing) -> list[tuple[str, str, str]]:
    """The slips that matter in heating: each part with its flow and its return."""
    return [
        (part.id, *pair)
        for part in drawing.components.values()
        for pair in (
            *GIVES_OR_PARTS.get(part.kind.name, ()),
            *([TAKERS[part.kind.name]] if part.kind.name in TAKERS else ()),
        )
    ]


@st.composite
def with_slips(draw: st.DrawFn, drawings: st.SearchStrategy[Drawing], most: int = 2) -> Drawing:
    """A drawing with some connections changed over, or none."""
    drawing = draw(drawings)
    for _ in range(draw(st.integers(0, most))):
        likely = flows_and_returns(drawing) if draw(st.booleans()) else []
        drawing = changed_over(drawing, *draw(st.sampled_from(likely or list(all_pairs(drawing)))))
    return drawing


@many
@given(with_slips(st.one_of(circuits(), plants(), sound_plants(), sound_plants()), most=4))
def test_heating(drawing: Drawing) -> None:
    told = [(each.grade.value, each.components[0]) for each in found(NAME, drawing)]
    assert set(told) == Heat(drawing).expected()
    assert len(told) == len(set(told))


@many
@given(sound_plants())
def test_a_sound_plant_is_judged_and_nothing_said(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()
    assert Heat(drawing).expected() == set()


@many
@given(with_slips(st.one_of(random_supplies(), fed_supplies(), fed_supplies())))
def test_drinking_water(drawing: Drawing) -> None:
    circuit = Circuit(drawing)
    ways = WaterConnections(Supplies(circuit, Bodies(circuit)), frozenset)
    slips = [each for giver in ways.givers if (each := ways.changed(giver)) is not None]
    slips += ways.changed_at_taps()
    pairs = {(each.right.part, frozenset({each.right.port, each.other.port})) for each in slips}
    assert pairs == Drinking(drawing).expected()
    assert len(pairs) == len(slips)
    assert {part for part, _ in pairs} <= {each.components[0] for each in found(NAME, drawing)}

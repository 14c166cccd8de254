"""A loop seen near a pump is one that a closer look finds too; where it is not seen nothing is said."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.flowways import FlowWays
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.loops import find_loop
from circuitcheck.circuit.round_about import seen_near
from circuitcheck.drawing.value import Drawing, End, Joint
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.parts.kind import Role
from tests.benchmarks.synthetic import plant
from tests.circuit.random_circuits import circuits, plants

HEAT, PUMP, BYPASS = "c0", "c3", "c4"


@given(st.one_of(circuits(), plants()))
def test_what_is_seen_is_there(drawing: Drawing) -> None:
    circuit = Circuit(drawing)
    never_shut = FlowWays(circuit).never_shut
    for pump in {place.part for place in circuit.devices(Role.PUMPS)}:
        for heat in ("", *(place.part for place in circuit.devices(Role.HEATS))):
            if seen_near(circuit, pump, heat):
                loop = find_loop(never_shut, pump, heat)
                assert loop is not None
                assert all(edge.hands <= {pump} for edge in loop.edges)


@pytest.mark.parametrize("heat", ["", HEAT])
def test_a_bypass_is_seen(heat: str) -> None:
    assert seen_near(Circuit(plant(60)), PUMP, heat)


def cut_away(drawing: Drawing, *kinds: str) -> Drawing:
    """Without the pipes on parts of these kinds."""
    parts = {id for id, part in drawing.components.items() if part.kind.name in kinds}
    pipes = drawing.pipes.items()
    return replace(
        drawing, pipes={id: pipe for id, pipe in pipes if not parts & {end.part for end in pipe.joints}}
    )


def test_without_a_bypass_nothing_is_seen() -> None:
    assert not seen_near(Circuit(cut_away(plant(60), "bypass_valve", "heating_zone")), PUMP, HEAT)


@pytest.mark.parametrize(
    ("kind", "ends"), [("isolating_valve", {"in": "a", "out": "b"}), ("zone_valve", {}), ("check_valve", {})]
)
def test_what_can_be_shut_instead_of_the_bypass_is_none(kind: str, ends: dict[str, str]) -> None:
    drawing = cut_away(plant(60), "heating_zone")
    instead = replace(drawing.components[BYPASS], kind=component_kinds()[kind], data={})

    def end(joint: End) -> End:
        if isinstance(joint, Joint) and joint.part == BYPASS:
            return Joint(BYPASS, ends.get(joint.port, joint.port))
        return joint

    pipes = {
        id: replace(pipe, ends=(end(pipe.ends[0]), end(pipe.ends[1]))) for id, pipe in drawing.pipes.items()
    }
    changed = replace(drawing, components={**drawing.components, BYPASS: instead}, pipes=pipes)
    assert seen_near(Circuit(changed), PUMP, HEAT) == (kind == "check_valve")


def test_round_the_pump_alone_is_no_way_through_the_heat_source() -> None:
    """The bypass led back to the pump's own inlet, so that no water comes through the heat source."""
    drawing = plant(60)
    safety = next(id for id, pipe in drawing.pipes.items() if any(end.part == "c1" for end in pipe.joints))
    back = next(
        id for id, pipe in drawing.pipes.items() if {end.part for end in pipe.joints} == {BYPASS, "c7"}
    )
    led = replace(drawing.pipes[back], ends=(drawing.pipes[back].ends[0], drawing.pipes[safety].ends[0]))
    pipes = {id: pipe for id, pipe in {**drawing.pipes, back: led}.items() if id != safety}
    circuit = Circuit(replace(drawing, pipes=pipes))
    assert seen_near(circuit, PUMP)
    assert not seen_near(circuit, PUMP, HEAT)


def test_what_nothing_is_joined_to_is_on_no_loop() -> None:
    drawing = plant(60)
    assert not seen_near(Circuit(replace(drawing, pipes={})), PUMP, HEAT)

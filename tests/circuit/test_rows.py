"""Long rows of three-port valves are answered, and at once: no position is tried one by one."""

from __future__ import annotations

import pytest

from circuitcheck.circuit.circulation import HeatRound
from circuitcheck.circuit.flowways import FlowWays
from circuitcheck.circuit.isolation import cut_off
from circuitcheck.circuit.joining import Circuit
from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.kind import Role
from tests.made import Part, made

LENGTH = 25


def row(
    on_leg_a: tuple[str, str, str] | None, on_leg_b: tuple[str, str, str] | None, **more: Part
) -> Drawing:
    """Heat source, pump and a row of three-port valves whose legs meet again, with these on the legs."""
    parts: dict[str, Part] = {"hs": "heat_source", "pu": "pump", **more}
    lines = ["hs.flow - pu.in"]
    last = "pu.out"
    for number in range(LENGTH):
        valve, tee = f"v{number}", f"t{number}"
        parts |= {valve: "three_port_valve", tee: "tee"}
        lines.append(f"{last} - {valve}.ab")
        for leg, onto, on_leg in (("a", "a", on_leg_a), ("b", "branch", on_leg_b)):
            if on_leg is None:
                lines.append(f"{valve}.{leg} - {tee}.{onto}")
            else:
                kind, first, second = on_leg
                id = f"x{leg}{number}"
                parts[id] = kind
                lines += [f"{valve}.{leg} - {id}.{first}", f"{id}.{second} - {tee}.{onto}"]
        last = f"{tee}.b"
    lines.append(f"{last} - hs.return")
    return made(parts, "\n".join(lines))


COIL = ("vented_store", "coil_flow", "coil_return")
HAND = ("balancing_valve", "a", "b")
ZONE = ("zone_valve", "in", "out")
HEADS = ("radiator", "flow", "return")


@pytest.mark.parametrize(
    ("on_leg_a", "on_leg_b", "expected"),
    [
        (None, None, None),
        (COIL, None, None),
        (COIL, COIL, None),
        (COIL, ZONE, 2),
        (HEADS, ZONE, 2),
        (COIL, HAND, None),
        (HAND, HAND, None),
    ],
)
def test_way_round_through_a_row(
    on_leg_a: tuple[str, str, str] | None, on_leg_b: tuple[str, str, str] | None, expected: int | None
) -> None:
    drawing = row(on_leg_a, on_leg_b)
    answer = HeatRound(FlowWays(Circuit(drawing)), "hs").shut_in()
    if expected is None and (on_leg_a, on_leg_b) in ((COIL, HAND), (HAND, HAND)):
        # A loop by the hand valves alone is none: shutting every leg with a coil leaves no other.
        assert answer is not None
        assert len(answer) == (LENGTH if on_leg_a == COIL else 0)
    elif expected is None:
        assert answer is None
    else:
        assert answer is not None
        assert len(answer) == expected


def test_a_chain_of_valves_each_feeding_one_emitter_always_leaves_one_open() -> None:
    parts: dict[str, Part] = {"hs": "heat_source", "pu": "pump"}
    lines = ["hs.flow - pu.in"]
    last, back = "pu.out", "hs.return"
    for number in range(LENGTH):
        valve, coil, tee = f"v{number}", f"c{number}", f"t{number}"
        parts |= {valve: "three_port_valve", coil: "vented_store", tee: "tee"}
        lines += [
            f"{last} - {valve}.ab",
            f"{valve}.a - {coil}.coil_flow",
            f"{coil}.coil_return - {tee}.branch",
        ]
        lines.append(f"{back} - {tee}.a")
        last, back = f"{valve}.b", f"{tee}.b"
    parts["end"] = "vented_store"
    lines += [f"{last} - end.coil_flow", f"end.coil_return - {back}"]
    assert HeatRound(FlowWays(Circuit(made(parts, "\n".join(lines)))), "hs").shut_in() is None


def test_a_vessel_at_the_end_of_a_row_is_cut_off_where_a_leg_has_its_own_valve() -> None:
    parts_and_pipes = row(None, ZONE, ve="expansion_vessel", te="tee")
    pipes = dict(parts_and_pipes.pipes)
    last = list(pipes)[-1]
    drawing = made(
        {id: part.kind.name for id, part in parts_and_pipes.components.items()},
        "\n".join(
            [
                f"{p.joints[0].part}.{p.joints[0].port} - {p.joints[1].part}.{p.joints[1].port}"
                for p in pipes.values()
                if p.id != last
            ]
            + [f"t{LENGTH - 1}.b - te.a", "te.branch - ve.connection", "te.b - hs.return"]
        ),
    )
    circuit = Circuit(drawing)
    (heat,) = circuit.devices(Role.HEATS)
    (vessel,) = circuit.devices(Role.HOLDS_EXPANSION)
    # Along the return nothing can shut.
    assert cut_off(circuit, circuit.water(heat.other), [circuit.water(vessel.node)]) is None


def test_a_pump_with_a_loop_of_its_own_does_not_serve_a_heat_source_on_a_dead_end() -> None:
    drawing = made(
        {"hs": "heat_source", "pu": "pump", "t": "tee", "st": "vented_store", "cap": "cap"},
        """pu.out - st.coil_flow
        st.coil_return - t.a
        t.b - pu.in
        t.branch - hs.flow
        hs.return - cap.connection""",
    )
    assert HeatRound(FlowWays(Circuit(drawing)), "hs").shut_in() == frozenset()

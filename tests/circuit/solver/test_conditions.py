"""Random networks with everything in them: a solution must meet the conditions of one, and there is but one.

Water balances at every node, and every link loses what its law says, worked here by the plain formulas
of `sizing.pipe`; a one-way link lets nothing back, and nothing at all below its setting.
"""

from __future__ import annotations

import numpy as np
import pytest

from circuitcheck.circuit.solver import balance
from circuitcheck.circuit.solver.network import Link, Network, State, kv_quadratic, pipe, pump
from circuitcheck.circuit.solver.solution import Solution
from circuitcheck.circuit.solver.solve import solve
from circuitcheck.sizing.pipe import pressure_drop

DENSITY, VISCOSITY = 978.0, 0.0004


def plant(random: np.random.Generator, *, wide: bool = True) -> tuple[Network, list[State]]:
    """Rings with pumps, pipes, kv, springs and check valves, some of them in odd places, and states."""
    nodes = int(random.integers(3, 14))
    links = []
    for number in range(int(random.integers(nodes, 3 * nodes))):
        a, b = (int(each) for each in random.choice(nodes, 2, replace=False))
        kind = random.choice(
            ["pipe", "kv", "spring", "check", "pump", "wide"], p=[0.5, 0.15, 0.1, 0.1, 0.1, 0.05]
        )
        if kind == "pipe" or number < 2:
            bore = float(random.choice([0.0088, 0.0136, 0.0202, 0.0262]))
            links.append(
                pipe(a, b, length_m=float(random.uniform(0.1, 20)), diameter_m=bore, roughness_m=1.5e-6,
                     density_kg_m3=DENSITY, loss_factor=float(random.uniform(0, 5)))
            )  # fmt: skip
        elif kind == "pump":
            links.append(
                pump(
                    a,
                    b,
                    shut_off_pa=float(random.uniform(5e3, 6e4)),
                    maximum_flow_m3_s=float(random.uniform(2e-4, 1e-3)),
                )
            )
        elif kind == "wide" and wide:
            links.append(Link(a, b))
        else:
            opens = float(random.uniform(2e3, 3e4)) if kind == "spring" else 0.0
            links.append(
                Link(
                    a,
                    b,
                    quadratic=kv_quadratic(float(random.uniform(0.5, 6))),
                    one_way=kind != "kv",
                    opens_at_pa=opens,
                )
            )
    states = [State()]
    for _ in range(4):
        shut = frozenset(int(each) for each in np.flatnonzero(random.random(len(links)) < 0.2))
        stopped = frozenset(
            place for place, link in enumerate(links) if link.head_pa and random.random() < 0.4
        )
        states.append(State(shut, stopped))
    return Network(nodes, tuple(links), DENSITY, VISCOSITY), states


def assert_solved(network: Network, states: list[State], solution: Solution) -> None:
    assert not solution.failures
    for row, state in enumerate(states):
        net = [0.0] * network.nodes
        wide = False
        for place, link in enumerate(network.links):
            flow = solution.flow_m3_s(row, place)
            if flow is None:
                wide = True
                continue
            net[link.a] -= flow
            net[link.b] += flow
            if place in state.shut:
                assert flow == 0
            elif (across := solution.difference_pa(row, place)) is not None:
                assert_law(network, link, flow, across, running=place not in state.stopped)
        if not wide:
            assert max(map(abs, net)) < 1e-8


def assert_law(network: Network, link: Link, flow: float, across: float, *, running: bool) -> None:
    lost = link.opens_at_pa - (link.head_pa if running else 0.0)
    lost += (link.quadratic + link.pump_quadratic) * flow * abs(flow)
    if link.length_m:
        lost += pressure_drop(
            flow * 1000, bore_mm=link.diameter_m * 1000, length_m=link.length_m, roughness_mm=link.roughness_m * 1000,
            density_kg_m3=network.density_kg_m3, viscosity_pa_s=network.viscosity_pa_s,
        ).friction_pa  # fmt: skip
    if link.one_way and flow <= 0:
        assert flow == 0 and across <= lost + 5
    else:
        assert across == pytest.approx(lost, rel=1e-4, abs=5)


@pytest.mark.parametrize("first", range(0, 200, 40))
def test_solutions_meet_their_conditions(first: int) -> None:
    for seed in range(first, first + 40):
        network, states = plant(np.random.default_rng(seed))
        assert_solved(network, states, solve(network, states))


def same(one: float | None, two: float | None) -> bool:
    """Equal, or neither to be told."""
    if one is None or two is None:
        return one is two
    return one == pytest.approx(two, rel=1e-5, abs=1e-8)


def test_all_states_at_once_are_as_one_by_one() -> None:
    network, states = plant(np.random.default_rng(5), wide=False)
    together = solve(network, states)
    for row, state in enumerate(states):
        alone = solve(network, (state,))
        for link in range(len(network.links)):
            assert same(together.flow_m3_s(row, link), alone.flow_m3_s(0, link))


@pytest.mark.parametrize("band", [balance.BAND_WORK_BOUND, -1.0])
def test_banded_and_sparse_are_as_dense(monkeypatch: pytest.MonkeyPatch, band: float) -> None:
    networks = [plant(np.random.default_rng(seed)) for seed in range(20)]
    dense = [solve(*each) for each in networks]
    monkeypatch.setattr(balance, "DENSE_UP_TO", 0)
    monkeypatch.setattr(balance, "BAND_WORK_BOUND", band)
    for (network, states), known in zip(networks, dense, strict=True):
        found = solve(network, states)
        for row in range(len(states)):
            for link in range(len(network.links)):
                assert same(found.flow_m3_s(row, link), known.flow_m3_s(row, link))

"""Pumps, kv, bypasses, check valves and limits against cases worked by hand."""

from __future__ import annotations

from math import inf, pi, sqrt

import pytest

from circuitcheck.circuit.solver.network import Link, Network, State, kv_quadratic, pipe, pump
from circuitcheck.circuit.solver.solve import solve

WATER = (1000.0, 0.001)
BAR = 1e5
HEAD, MOST = 30_000.0, 5e-4
CURVE = HEAD / MOST**2
CLOSE = 1e-6


def ring(*links: Link, nodes: int = 2) -> Network:
    """A closed circuit: a pump from node 0 to node 1, and more."""
    return Network(nodes, (pump(0, 1, shut_off_pa=HEAD, maximum_flow_m3_s=MOST), *links), *WATER)


def flows(network: Network, state: State | None = None) -> list[float]:
    solution = solve(network, (state or State(),))
    assert not solution.failures
    return [flow for link in range(len(network.links)) if (flow := solution.flow_m3_s(0, link)) is not None]


def test_kv_by_its_definition() -> None:
    # 1 bar across kv 2: two cubic metres an hour.
    network = Network(2, (Link(0, 1, quadratic=kv_quadratic(2.0)),), *WATER, fixed_pa={0: BAR, 1: 0.0})
    assert flows(network)[0] * 3600 == pytest.approx(2.0, rel=CLOSE)


def test_a_pump_and_one_valve() -> None:
    # 30 kPa (1 - Q²/Qm²) = k Q².
    k = kv_quadratic(1.5)
    through, round_ = flows(ring(Link(1, 0, quadratic=k)))
    assert through == round_ == pytest.approx(sqrt(HEAD / (CURVE + k)), rel=CLOSE)


def test_two_zones_share_by_their_kv() -> None:
    total, one, two = flows(ring(*(Link(1, 0, quadratic=kv_quadratic(kv)) for kv in (1.0, 3.0))))
    assert two == pytest.approx(3 * one, rel=CLOSE)
    assert total == pytest.approx(sqrt(HEAD / (CURVE + kv_quadratic(4.0))), rel=CLOSE)


def test_pipe_in_laminar_flow() -> None:
    # Hagen-Poiseuille: Q = Δp π d⁴ / (128 μ L): 100 Pa over 8 m of 4 mm bore, Reynolds 25.
    tube = pipe(0, 1, length_m=8, diameter_m=0.004, density_kg_m3=1000)
    network = Network(2, (tube,), *WATER, fixed_pa={0: 100.0, 1: 0.0})
    assert flows(network)[0] == pytest.approx(100 * pi * 0.004**4 / (128 * 0.001 * 8), rel=CLOSE)


ZONE, BYPASS = kv_quadratic(2.0), kv_quadratic(4.0)


def with_bypass(opens_at: float, zone: float = ZONE, *, turned: bool = False) -> Network:
    ends = (0, 1) if turned else (1, 0)
    return ring(Link(1, 0, quadratic=zone), Link(*ends, quadratic=BYPASS, one_way=True, opens_at_pa=opens_at))


def test_a_bypass_at_run_on() -> None:
    # The zone shut: 30 kPa - a Q² = 20 kPa + k Q².
    network = with_bypass(20_000)
    solution = solve(network, (State(shut=frozenset({1})),))
    assert solution.flow_m3_s(0, 1) == 0
    assert solution.flow_m3_s(0, 2) == pytest.approx(sqrt(10_000 / (CURVE + BYPASS)), rel=CLOSE)
    across = 20_000 + BYPASS * 10_000 / (CURVE + BYPASS)
    assert solution.difference_pa(0, 2) == solution.difference_pa(0, 1) == pytest.approx(across, rel=CLOSE)


def test_a_bypass_stays_shut_below_its_setting() -> None:
    # With the zone open k Q² = 30 kPa k / (a + k) stand across it.
    across = HEAD * ZONE / (CURVE + ZONE)
    total, zone, bypass = flows(with_bypass(across * 1.001))
    assert bypass == 0 and total == pytest.approx(zone, rel=CLOSE)
    assert zone == pytest.approx(sqrt(HEAD / (CURVE + ZONE)), rel=CLOSE)
    assert flows(with_bypass(across * 0.999))[2] > 0


def test_a_bypass_that_opens_in_normal_running() -> None:
    # Chosen backwards: 2e-4 through the zone, 1e-4 through the bypass, so that k z² = p + b y² and the
    # pump's curve give the zone's resistance and the setting.
    across = HEAD - CURVE * (3e-4) ** 2
    zone = across / (2e-4) ** 2
    opens_at = across - BYPASS * (1e-4) ** 2
    assert flows(with_bypass(opens_at, zone)) == pytest.approx([3e-4, 2e-4, 1e-4], rel=CLOSE)


def test_a_bypass_the_wrong_way_round_never_opens() -> None:
    assert flows(with_bypass(5_000, turned=True))[2] == 0
    shut = State(shut=frozenset({1}))
    assert flows(with_bypass(5_000, turned=True), shut) == [0, 0, 0]


def two_pumps(*, check: bool) -> Network:
    """Two zones with a pump each between common headers, and a heat source with a resistance."""
    k = kv_quadratic(2.0)
    links = [Link(0, 1, quadratic=k)]
    for node in (2, 3):
        links.append(pump(1, node, shut_off_pa=HEAD, maximum_flow_m3_s=MOST))
        links.append(Link(node, 0, quadratic=k, one_way=check))
    return Network(4, tuple(links), *WATER)


def test_a_pump_pushes_water_back_through_the_other_zone() -> None:
    stopped = State(stopped=frozenset({3}))
    heat, first, _, second, _ = flows(two_pumps(check=False), stopped)
    assert second < 0 and heat == pytest.approx(first + second, abs=1e-12)
    # Heat source and the standing zone lie side by side: flows as roots of their resistances.
    k = kv_quadratic(2.0)
    assert -second / heat == pytest.approx(sqrt(k / (k + CURVE)), rel=1e-5)


def test_a_check_valve_stops_it() -> None:
    stopped = State(stopped=frozenset({3}))
    heat, first, _, second, _ = flows(two_pumps(check=True), stopped)
    assert second == 0
    assert heat == pytest.approx(first, rel=1e-5)
    assert first == pytest.approx(sqrt(HEAD / (CURVE + 2 * kv_quadratic(2.0))), rel=1e-5)


def test_pumps_in_series_and_side_by_side() -> None:
    k = kv_quadratic(2.0)
    one = pump(1, 2, shut_off_pa=HEAD, maximum_flow_m3_s=MOST)
    series = ring(one, Link(2, 0, quadratic=k), nodes=3)
    assert flows(series)[0] == pytest.approx(sqrt(2 * HEAD / (2 * CURVE + k)), rel=CLOSE)
    beside = ring(pump(0, 1, shut_off_pa=HEAD, maximum_flow_m3_s=MOST), Link(1, 0, quadratic=k))
    assert flows(beside)[2] == pytest.approx(sqrt(HEAD / (CURVE / 4 + k)), rel=CLOSE)


def test_a_set_valve_takes_up_what_is_left() -> None:
    network = ring(Link(1, 0, quadratic=ZONE, limit_m3_s=1e-4))
    solution = solve(network)
    assert solution.flow_m3_s(0, 1) == pytest.approx(1e-4, rel=1e-5)
    assert solution.difference_pa(0, 1) == pytest.approx(HEAD - CURVE * 1e-8, rel=1e-5)
    wide = ring(Link(1, 0, quadratic=ZONE, limit_m3_s=1.0))
    assert flows(wide)[1] == pytest.approx(sqrt(HEAD / (CURVE + ZONE)), rel=CLOSE)


def test_a_separator_parts_two_circuits() -> None:
    # A wide way between nodes 0 and 3: each ring runs as if the other were not there.
    k = kv_quadratic(2.0)
    links = (Link(1, 0, quadratic=k), Link(0, 3), pump(3, 2, shut_off_pa=HEAD / 2, maximum_flow_m3_s=MOST))
    source, _, load, _ = flows(ring(*links, Link(2, 3, quadratic=2 * k), nodes=4))
    assert source == pytest.approx(sqrt(HEAD / (CURVE + k)), rel=CLOSE)
    assert load == pytest.approx(sqrt(HEAD / 2 / (CURVE / 2 + 2 * k)), rel=CLOSE)


def test_dead_ends_carry_nothing_and_have_their_pressure() -> None:
    network = ring(Link(1, 0, quadratic=ZONE), Link(1, 2, quadratic=ZONE), nodes=3)
    solution = solve(network)
    assert solution.flow_m3_s(0, 2) == 0
    assert solution.pressure_pa(0, 2) == solution.pressure_pa(0, 1)


def test_a_pump_against_a_shut_valve_stands_at_its_shut_off_head() -> None:
    network = ring(Link(1, 2, quadratic=ZONE), Link(2, 0, quadratic=ZONE), nodes=3)
    solution = solve(network, (State(shut=frozenset({1})), State(shut=frozenset({1, 2}))))
    assert solution.flow_m3_s(0, 0) == 0
    assert solution.difference_pa(0, 0) == pytest.approx(-HEAD)
    assert solution.difference_pa(0, 1) == pytest.approx(HEAD)
    assert solution.difference_pa(1, 0) == pytest.approx(-HEAD)
    # What lies between two shut valves has a pressure that nothing tells.
    assert solution.pressure_pa(1, 2) is None and solution.difference_pa(1, 1) is None


def test_nothing_runs_nothing_flows() -> None:
    assert flows(with_bypass(5_000), State(stopped=frozenset({0}))) == [0, 0, 0]


def test_no_links_at_all() -> None:
    assert not solve(Network(1, (), *WATER)).failures


def test_too_few_steps_are_told_with_the_place() -> None:
    network = ring(*(Link(1, 0, quadratic=kv_quadratic(kv)) for kv in (1.0, 3.0)))
    solution = solve(network, iteration_bound=1)
    failure = solution.failures[0]
    assert "1 steps" in failure.why and failure.links
    assert solution.flow_m3_s(0, 0) is None and solution.pressure_pa(0, 0) is None


def test_water_drawn_where_none_can_come() -> None:
    network = Network(
        3, (Link(0, 1, quadratic=1e9), Link(1, 2, quadratic=1e9)), *WATER, {0: 1e5}, {1: 1e-4, 2: 1e-4}
    )
    solution = solve(network, (State(), State(shut=frozenset({1}))))
    assert list(solution.failures) == [1]
    assert "0.1 l/s" in solution.failures[1].why
    assert solution.flow_m3_s(0, 0) == pytest.approx(2e-4)


@pytest.mark.parametrize(
    ("wrong", "says"),
    [
        (Network(2, (Link(0, 2, quadratic=1.0),), *WATER), "no node"),
        (Network(2, (Link(0, 1, length_m=1.0),), *WATER), "no width"),
        (Network(2, (Link(0, 1, quadratic=-1.0),), *WATER), "below 0"),
        (Network(2, (Link(0, 1, head_pa=inf),), *WATER), "below 0"),
        (Network(2, (Link(0, 1, limit_m3_s=0.0),), *WATER), "limit"),
        (Network(2, (), 0.0, 1.0), "density"),
    ],
)
def test_impossible_networks_are_refused(wrong: Network, says: str) -> None:
    with pytest.raises(ValueError, match=says):
        solve(wrong)


@pytest.mark.parametrize("kv_m3h", [1e-9, 1e-12, 1e-200, 5e-324])
def test_a_kv_next_to_nothing_is_a_number(kv_m3h: float) -> None:
    # The square of 5e-324 is 0.0: a file may hold it.
    assert 1e20 < kv_quadratic(kv_m3h) < 1e40

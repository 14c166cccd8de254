"""Random looped networks against a compiled general-purpose hydraulic engine with the same law and constants."""

from __future__ import annotations

import numpy as np
import pytest

from circuitcheck.circuit.solver import laws
from circuitcheck.circuit.solver.solve import solve

pytest.importorskip("epanet", reason="the compiled engine has no build for this Python")

from tests.circuit.solver.engine import (
    BARRED_PA_S_M3,
    M3_S_PER_LPS,
    PA_PER_M,
    Engine,
    Plan,
    friction,
    grid,
    looped,
    ours,
)

CLOSE = 1e-4
NETWORKS = 220


def apart(plan: Plan) -> tuple[float, float] | None:
    """How far flows and heads lie apart, as shares of the largest; None where the engine lets water back
    through a check valve, which it does while the difference is within its own tolerance."""
    engine = Engine(plan)
    try:
        engine.run()
        flows, heads = np.array(engine.flows_lps()), np.array(engine.heads_m())
    finally:
        engine.close()
    if any(tube.check and flow < -1e-5 for tube, flow in zip(plan.tubes, flows, strict=False)):
        return None
    solution = solve(ours(plan), friction=friction)
    assert not solution.failures
    our_flows = np.array([solution.flow_m3_s(0, link) for link in range(len(flows))]) / M3_S_PER_LPS
    our_heads = np.array([solution.pressure_pa(0, node) for node in range(len(heads))]) / PA_PER_M
    return (
        float(np.abs(our_flows - flows).max() / np.abs(flows).max()),
        float(np.abs(our_heads - heads).max() / np.ptp(heads)),
    )


def test_random_looped_networks(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(laws, "BARRED_PA_S_M3", BARRED_PA_S_M3)
    found = {seed: apart(looped(np.random.default_rng(seed))) for seed in range(NETWORKS)}
    compared = {seed: each for seed, each in found.items() if each is not None}
    assert len(compared) >= 0.98 * NETWORKS >= 200
    assert {seed: each for seed, each in compared.items() if max(each) > CLOSE} == {}


@pytest.mark.parametrize("pipes", [10, 100, 1000])
def test_grids(pipes: int) -> None:
    difference = apart(grid(pipes, np.random.default_rng(pipes)))
    assert difference is not None and max(difference) < CLOSE

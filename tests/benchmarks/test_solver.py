"""The network solver beside a compiled general-purpose hydraulic engine, in one run.

Both solve from fresh starting flows what has been laid out before. Each line is a ratio:
pytest -n 0 -s tests/benchmarks/test_solver.py
"""

from __future__ import annotations

import time
from collections.abc import Callable
from functools import partial

import numpy as np
import pytest

from circuitcheck.checks.case import Case
from circuitcheck.circuit.solver.network import State
from circuitcheck.circuit.solver.solve import Prepared
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.circuit.solver.engine import Engine, grid, ours

SITUATIONS = 16
HOUSE_BOUND_S = 0.05


def best_s(work: Callable[[], object], tries: int = 30) -> float:
    """The least time of several tries, in seconds: what the work needs when nothing disturbs it."""
    times = []
    for _ in range(tries):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return min(times)


@pytest.mark.parametrize("pipes", [10, 57, 100, 1000])
def test_beside_the_engine(pipes: int) -> None:
    plan = grid(pipes, np.random.default_rng(pipes))
    engine = Engine(plan, accuracy=1e-5)
    limit = best_s(engine.run)
    engine.close()
    network = ours(plan)
    once = best_s(Prepared(network).run)
    all_states = best_s(Prepared(network, [State()] * SITUATIONS).run)
    print(
        f"\n{len(plan.tubes):5} pipes: engine {limit * 1e3:.3f} ms; one state {once * 1e3:.2f} ms, ratio "
        f"{once / limit:.1f}; {SITUATIONS} states {all_states * 1e3:.2f} ms, ratio {all_states / limit / SITUATIONS:.2f}"
    )


def test_every_situation_of_the_sample_houses() -> None:
    for path in sorted(data_path("samples").glob("*.wetcircuit")):
        case = Case(read(path))
        for body in case.solved.bodies:
            if body.is_known:
                situations = case.situations.all
                took = best_s(partial(body.network.solve, situations), tries=7)
                print(
                    f"\n{path.stem}: {len(situations)} situations, {len(body.pipes)} pipes, {took * 1e3:.1f} ms"
                )
                assert took < HOUSE_BOUND_S

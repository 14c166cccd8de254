"""The network solver beside a compiled general-purpose hydraulic engine, in one run.

Both have the same law of friction and the same constants, begin from fresh flows, and come as close: within
`AGREE` of each other, which is asserted first. Told apart are solving alone, of what has been laid
out before, and solving with the set-up: for the engine its network built up by calls, without any file; for
ours the reduction and the arrays. The bounds only watch for a fall; what is aimed at is to be no slower with
many states of a house, and three times as slow at a thousand pipes. Each line is a ratio: pytest -n 0 -s tests/benchmarks/test_solver.py
"""

from __future__ import annotations

import time
import warnings
from collections.abc import Callable, Sequence
from functools import partial

import numpy as np
import pytest

from circuitcheck.checks.case import Case
from circuitcheck.circuit.solver import chains
from circuitcheck.circuit.solver.network import State
from circuitcheck.circuit.solver.solve import Prepared
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.circuit.solver.engine import M3_S_PER_LPS, Engine, Plan, friction, grid, house, ours

SITUATIONS = 16
HOUSE_BOUND_S = 0.05
ACCURACY = 1e-5
AGREE = 1e-7
AGREE_SHUT = 1e-3
"""The greatest difference of flow, as a share of the greatest flow; where something is shut the engine lets
some water through it."""

TRIES = 25


def best_s(*work: Callable[[], object], tries: int = TRIES) -> list[float]:
    """The least time of several tries of each, in seconds, taken by turns: what disturbs one disturbs all."""
    times = [float("inf")] * len(work)
    for _ in range(tries):
        for place, each in enumerate(work):
            start = time.perf_counter()
            each()
            times[place] = min(times[place], time.perf_counter() - start)
    return times


def situations(may_shut: Sequence[int], count: int) -> list[State]:
    """All open, then so many with something shut; no two alike."""
    random = np.random.default_rng(1)
    found = {State(): None}
    while len(found) < count:
        some = random.choice(may_shut, int(random.integers(1, max(2, len(may_shut) // 2))), replace=False)
        found[State(frozenset(int(each) for each in some))] = None
    return list(found)


def by_engine(engine: Engine, states: Sequence[State]) -> float:
    """Solve each state; the seconds spent in solving, the commands between left out."""
    seconds = 0.0
    for state in states:
        engine.shut(state.shut)
        start = time.perf_counter()
        engine.solve()
        seconds += time.perf_counter() - start
        engine.shut(state.shut, is_open=True)
    return seconds


def afresh(plan: Plan, states: Sequence[State]) -> None:
    """Ours with the set-up, as for a network never seen before."""
    chains._reduced.cache_clear()
    Prepared(ours(plan), states, friction).run()


def engine_afresh(plan: Plan, states: Sequence[State]) -> None:
    engine = Engine(plan, accuracy=ACCURACY)
    by_engine(engine, states)
    engine.close()


def compare(name: str, plan: Plan, states: Sequence[State]) -> float:
    """Print the ratios; the one of solving alone."""
    engine, prepared = Engine(plan, accuracy=ACCURACY), Prepared(ours(plan), states, friction)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        assert_agree(engine, prepared)
        colebrook = Prepared(ours(plan), states)
        limit, own, own_colebrook = float("inf"), float("inf"), float("inf")
        for _ in range(TRIES):
            limit = min(limit, by_engine(engine, states))
            times = best_s(prepared.run, colebrook.run, tries=1)
            own, own_colebrook = min(own, times[0]), min(own_colebrook, times[1])
        engine.close()
        set_up_limit, set_up = best_s(
            partial(engine_afresh, plan, states), partial(afresh, plan, states), tries=7
        )
    print(
        f"\n{name}, {len(plan.tubes)} pipes, {len(states)} states: engine {limit * 1e3:.3f} ms, ours {own * 1e3:.3f}: "
        f"ratio {own / limit:.2f} (Colebrook-White solved {own_colebrook / limit:.2f}); with set-up "
        f"{set_up_limit * 1e3:.2f} ms, ours {set_up * 1e3:.2f}: ratio {set_up / set_up_limit:.2f}"
    )
    return own / limit


def assert_agree(engine: Engine, prepared: Prepared) -> None:
    solution = prepared.run()
    assert not solution.failures
    for row, state in enumerate(prepared.states):
        engine.shut(state.shut)
        engine.solve()
        theirs = np.array(engine.flows_lps()) * M3_S_PER_LPS
        engine.shut(state.shut, is_open=True)
        own = np.array([solution.flow_m3_s(row, link) for link in range(len(theirs))], dtype=float)
        close = AGREE_SHUT if state.shut else AGREE
        assert np.abs(own - theirs).max() <= close * np.abs(theirs).max()


@pytest.mark.parametrize(("pipes", "bound"), [(10, 200.0), (57, 60.0), (100, 40.0), (1000, 15.0)])
@pytest.mark.parametrize("count", [1, SITUATIONS])
def test_grids_beside_the_engine(pipes: int, bound: float, count: int) -> None:
    """Every mesh a loop, and water drawn at most nodes: nothing can be contracted."""
    plan = grid(pipes, np.random.default_rng(pipes))
    # In a grid no one pipe cuts anything off; in so small a one there are not so many pipes.
    shut = [frozenset({tube}) for tube in range(len(plan.tubes))]
    states = [State(), *(State(each) for each in shut)][:count]
    assert compare("grid", plan, states) < (bound if count == 1 else bound / 3)


@pytest.mark.parametrize("count", [1, SITUATIONS])
def test_a_house_beside_the_engine(count: int) -> None:
    """Eight radiators, of which some are shut."""
    plan, radiators = house(8, np.random.default_rng(3))
    assert compare("house", plan, situations(radiators, count)) < (60 if count == 1 else 8)


def test_every_situation_of_the_sample_houses() -> None:
    for path in sorted(data_path("samples").glob("*.wetcircuit")):
        case = Case(read(path))
        for body in case.solved.bodies:
            if body.is_known:
                situations_ = case.situations.all
                (took,) = best_s(partial(body.network.solve, situations_), tries=7)
                print(
                    f"\n{path.stem}: {len(situations_)} situations, {len(body.pipes)} pipes, {took * 1e3:.1f} ms"
                )
                assert took < HOUSE_BOUND_S

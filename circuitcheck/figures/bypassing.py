"""Between which set differences a bypass serves: shut while heat is called, open enough at pump run-on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import inf

from circuitcheck.circuit.situations import RUN_ON
from circuitcheck.circuit.solver.network import Network
from circuitcheck.figures.driven import LEAST_FLOW_LPM, calling, driven, on, place_of, sources
from circuitcheck.figures.resistance import LITRES_A_MINUTE
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.parts.kind import Role

TRIES = 5
WITHIN = 0.01
"""A source's least flow is met from 99 % of it."""

BARELY_M3_S = LEAST_FLOW_LPM / LITRES_A_MINUTE


@dataclass(frozen=True, slots=True)
class Serves:
    """In kilopascals. `called_kpa`: the most that stands across the bypass, held shut, while heat or hot
    water is called; `run_on_kpa`: the highest setting at which the heat sources still get their least
    flow at run-on, infinite where they get it without the bypass, below 0 where not even an open way
    gives it. Each with its run; None where there is none such."""

    called_kpa: float
    called: Run | None
    run_on_kpa: float
    run_on: Run | None

    @property
    def is_possible(self) -> bool:
        """Whether one setting serves both."""
        return max(0.0, self.called_kpa) < self.run_on_kpa


def least_flows(body: SolvedBody) -> dict[str, float | None]:
    """The least flow in l/min of each heat source that needs one of the circuit; a source with a bypass of
    its own looks after itself. None: not known."""
    value = body.plant.value
    built_in = {part: tuple(value(part, "built_in") or ()) for part in sources(body)}
    return {
        part: value(part, "minimum_flow_lpm") for part, inside in built_in.items() if "bypass" not in inside
    }


def serves(body: SolvedBody, bypass: str) -> Serves | None:
    """The two bounds of one bypass, all others left as they are set; None where it is on no loop."""
    _ = body.solution
    network, place = body.network.network, place_of(body, bypass)
    if network is None or place is None or not body.network.carries(place):
        return None
    called_kpa, called = _highest_called(body, network, place)
    run_on_kpa, run_on = _lowest_run_on(body, network, place)
    return Serves(called_kpa, called, run_on_kpa, run_on)


def _highest_called(body: SolvedBody, network: Network, place: int) -> tuple[float, Run | None]:
    from circuitcheck.circuit.solver.solve import solve

    runs = calling(body)
    if not runs:
        return 0.0, None
    states = [body.solution.states[run.row] for run in runs]
    shut = [replace(state, shut=state.shut | {place}) for state in states]
    solution = solve(network, shut)
    found = [(solution.difference_pa(row, place) or 0.0, row) for row in range(len(runs))]
    pascals, row = max(found)
    return max(0.0, pascals) / 1000, runs[row]


def _lowest_run_on(body: SolvedBody, network: Network, place: int) -> tuple[float, Run | None]:
    """By letting a flow of its own through the bypass, whatever pressure that leaves across it, until the
    heat sources have their least flow; what is left then is what the spring may hold."""
    from circuitcheck.circuit.solver.solve import solve

    runs = [run for run in driven(body) if run.situation.name == RUN_ON]
    needs = {
        part: max((least or 0.0) / LITRES_A_MINUTE, BARELY_M3_S) for part, least in least_flows(body).items()
    }
    if not runs or not needs:
        return inf, None
    states = [body.solution.states[run.row] for run in runs]
    spring = network.links[place]
    through, result = max(needs.values()), (inf, runs[0])
    for _ in range(TRIES):
        links = list(network.links)
        links[place] = replace(spring, opens_at_pa=0.0, limit_m3_s=through)
        solution = solve(replace(network, links=tuple(links)), states)
        flows = [solution.flow_m3_s(row, place) or 0.0 for row in range(len(runs))]
        left = [
            (_left_kpa(solution.difference_pa(row, place), flow, spring.quadratic, through), row)
            for row, flow in enumerate(flows)
        ]
        kilopascals, row = min(left)
        result = (kilopascals, runs[row])
        more = min(
            (solution.flow_m3_s(each, at) or 0.0) - need
            for part, need in needs.items()
            if (at := place_of(body, part)) is not None
            for each in range(len(runs))
        )
        if kilopascals < 0 or abs(more) <= WITHIN * max(needs.values()):
            return result
        if more > 0 and through <= BARELY_M3_S:
            return inf, runs[row]
        through = max(BARELY_M3_S, through - more)
    return result


def _left_kpa(across_pa: float | None, flow_m3_s: float, quadratic: float, wanted_m3_s: float) -> float:
    """What the spring may hold at a flow; below 0 where that flow does not come at all."""
    if across_pa is None or flow_m3_s < (1 - WITHIN) * wanted_m3_s:
        return -1.0
    return (across_pa - quadratic * flow_m3_s**2) / 1000


def bypasses(body: SolvedBody) -> Iterator[str]:
    """The bypasses that stand as parts of their own on the body."""
    return (place.part for place in on(body, Role.BYPASSES) if not place.device.built_in)

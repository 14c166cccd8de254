"""Balancing of emitters and coils.

What each emitter's and coil's valve has to take up so that all get their design flow, as a kv to set, and
what pressure stands across thermostatic heads, at design and when all of them have shut. What is not
balanced starves the far rooms; a head under too much pressure whistles.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import sqrt

from circuitcheck.circuit.solver.network import State
from circuitcheck.figures.design_flows import DesignFlows, design_flows
from circuitcheck.figures.driven import (
    LIMITS,
    SOURCE,
    USUAL,
    called,
    lpm,
    place_of,
    refusing,
    take_curves,
    take_water,
)
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hydraulic_body import SETTING_ORDER
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.figures.telling import Telling
from circuitcheck.parts.kind import Way
from circuitcheck.told import a_word, worded

QUIET_KPA = 20.0
"""Across a thermostatic head: from 10 to 20 kPa on it may be heard. Common practice, no source."""

SECONDS_AN_HOUR = 3600
LEAST_LEFT_PA = 1.0
TELLING = Telling(
    "balancing",
    a_word("Balancing of emitters and coils"),
    a_word(
        "left over = pump's head at design flow − losses of its circuit at design flow\n"
        "kv = Q [m³/h] / √(Δp [bar])"
    ),
    SOURCE,
    f"{LIMITS} The pump as drawn, not turned down; a pump that is too weak leaves the valve that decides open. "
    "kv of a radiator: of its two valves and itself together. Across heads from 10 to 20 kPa on they may be "
    "heard: common practice, no source.",
)


@dataclass(frozen=True, slots=True)
class Spare:
    """What is left over for one taker's valve, in pascals, and the flow it is for."""

    run: Run
    part: str
    flow_m3_s: float
    left_pa: float


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each body of pumped heating water with emitters or coils."""
    return tuple(_one(plant, body) for body in plant.solved.bodies if body.takers)


def _one(plant: Plant, body: SolvedBody) -> Figure:
    refused = refusing(TELLING, body, body.takers)
    if refused is not None:
        return refused
    told = Gathering(plant)
    take_water(told)
    take_curves(told, body)
    flows = design_flows(body)
    if flows.missing:
        told.lacks(*flows.missing)
        return TELLING.lacking(told, body.takers)
    spares = [*_spares(flows)]
    if not spares:
        return TELLING.refused(
            told, body.takers, a_word("what the pumps leave over can't be told for any of them")
        )
    told.add(
        a_word("limit"),
        a_word("Quiet across a thermostatic head up to"),
        QUIET_KPA,
        "kPa",
        a_word("common practice, no source"),
    )
    results = [result for spare in spares for result in _results(flows, spare)]
    results += _heads(body, spares)
    return TELLING.worked(told, body.takers, results, moves=_moves(flows, spares))


def _spares(flows: DesignFlows) -> Iterator[Spare]:
    """For each taker, in the situation that valves are set in: the one that asks most of the pump first."""
    order: dict[str, int] = {name: place for place, name in enumerate(SETTING_ORDER)}
    done: set[str] = set()
    for run in sorted(flows.runs, key=lambda each: order.get(each.situation.name, len(order))):
        needs = [need for pump in flows.body.pumps if (need := flows.needed(run, pump)) is not None]
        for need in needs:
            if need.why:
                continue
            surplus = max(0.0, flows.surplus_pa(need))
            others = {need.decides: 0.0, **flows.less_pa(need)}
            for part in flows.served(run, need.pump):
                if part in others and part in flows.body.takers and part not in done:
                    done.add(part)
                    yield Spare(run, part, flows.held(run)[part], others[part] + surplus)


def _results(flows: DesignFlows, spare: Spare) -> Iterator[Result]:
    body, plant = flows.body, flows.body.plant
    name = plant.drawing.name(spare.part)
    yield Result(
        worded("{name}: design flow, {run}", name=name, run=called(spare.run)), lpm(spare.flow_m3_s), "l/min"
    )
    yield Result(worded("{name}: its valve has to take up", name=name), spare.left_pa / 1000, "kPa")
    valve = body.network.set_by_flow
    places = body.network.place.get(spare.part, ())
    own = _own_pa(flows, spare)
    if any(place in valve for place in places):
        yield from _kv(worded("{name}: kv, valves and all", name=name), spare.flow_m3_s, spare.left_pa + own)
    else:
        yield from _kv(
            worded("{name}: kv of a valve in series with it", name=name), spare.flow_m3_s, spare.left_pa
        )


def _kv(name: str, flow_m3_s: float, pascals: float) -> Iterator[Result]:
    if pascals < LEAST_LEFT_PA:
        yield Result(name, a_word("as open as it goes"), "")
    else:
        yield Result(name, flow_m3_s * SECONDS_AN_HOUR / sqrt(pascals / 1e5), "m³/h")


def _own_pa(flows: DesignFlows, spare: Spare) -> float:
    """What the taker loses by itself at that flow."""
    place = place_of(flows.body, spare.part)
    return 0.0 if place is None else flows.own_loss_pa(place, spare.flow_m3_s)


def _heads(body: SolvedBody, spares: list[Spare]) -> Iterator[Result]:
    """The pressure across thermostatic heads once all have shut, in the situations valves are set in."""
    from circuitcheck.circuit.solver.solve import solve

    heads = {
        strand.id: place
        for place, strand in enumerate(body.network.strands)
        if strand.passage is not None and strand.passage.way is Way.THERMOSTAT and body.network.carries(place)
    }
    runs = {spare.run.row: spare.run for spare in spares if spare.part in heads}
    network = body.network.network
    if not runs or network is None:
        return
    own = [body.solution.states[row] for row in runs]
    states = [State(state.shut | frozenset(heads.values()), state.stopped) for state in own]
    solution = solve(network, states)
    for row, run in enumerate(runs.values()):
        for part, place in heads.items():
            across = solution.difference_pa(row, place)
            if across is None or not any(each.part == part and each.run is run for each in spares):
                continue
            name = body.plant.drawing.name(part)
            yield Result(
                worded("{name}: across its head, all heads shut", name=name), abs(across) / 1000, "kPa"
            )
            if abs(across) > QUIET_KPA * 1000:
                yield Result(
                    worded("{name}: above {quiet_kpa:g} kPa", name=name, quiet_kpa=QUIET_KPA),
                    a_word("a shut head may be heard"),
                    "",
                )


def _moves(flows: DesignFlows, spares: list[Spare]) -> Iterator[Moves]:
    """Of what is left over for the first: the losses that are defaults, halved and doubled."""
    first = spares[0]
    loss = flows.usual_loss_pa(first.run, first.part)
    if loss and first.left_pa > 0:
        name = flows.body.plant.drawing.name(first.part)
        yield Moves(
            worded("{usual} ({what})", usual=USUAL, what=name),
            a_word("half as much"),
            loss / 2 / first.left_pa,
        )
        yield Moves(
            worded("{usual} ({what})", usual=USUAL, what=name),
            a_word("twice as much"),
            max(-1.0, -loss / first.left_pa),
        )

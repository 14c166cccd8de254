"""Duty of each pump.

At which flow and head each pump works in every situation, and what is needed of it there: the flow of
all that it serves at its design, and the head that the circuit which decides loses at those flows. A pump
that has too little leaves the far rooms cool; one that has far too much hisses, and costs money every hour.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.figures.design_flows import DesignFlows, Needed, design_flows
from circuitcheck.figures.driven import (
    LIMITS,
    SOURCE,
    across_pa,
    called,
    driven,
    flow_lpm,
    head_m,
    lpm,
    refusing,
    take_curves,
    take_water,
    usual_moves,
)
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import SolvedBody
from circuitcheck.figures.telling import Telling
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "pump-duty",
    a_word("Duty of the pump"),
    a_word(
        "works where H0 (1 − (Q/Q0)²) = what the circuit loses at Q\n"
        "needed: Q = Σ P / (ρ c ΔT) of what it serves, H = losses of the index circuit at design flows\n"
        "to spare = pump's head at the needed flow − needed head"
    ),
    SOURCE,
    f"{LIMITS} Where all that is called wants more than the heat sources give, its design is cut to that. A coil "
    "without a stated power takes what the others leave of the heat source's output.",
)

CHECKS = ("pump-too-weak", "emitter-starved")
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each pump on heating water."""
    return tuple(_one(plant, body, pump) for body in plant.solved.bodies for pump in body.pumps)


def _one(plant: Plant, body: SolvedBody, pump: str) -> Figure:
    refused = refusing(TELLING, body, (pump,))
    if refused is not None:
        return refused
    told = Gathering(plant)
    take_water(told)
    take_curves(told, body, (pump,))
    flows = design_flows(body)
    results = [*_works(body, pump)]
    if flows.missing:
        told.lacks(*flows.missing)
        return TELLING.lacking(told, (pump,))
    needs = [need for run in flows.runs if (need := flows.needed(run, pump)) is not None]
    for need in needs:
        results += _needed(flows, need)
    if not results:
        return TELLING.refused(told, (pump,), a_word("it runs in no situation"))
    moves = (
        move
        for run in driven(body)[:1]
        for move in usual_moves(
            body, run, lambda each: flow_lpm(each, pump), worded("flow, {run}", run=called(run))
        )
    )
    return TELLING.worked(told, (pump,), results, moves=moves)


def _works(body: SolvedBody, pump: str) -> Iterator[Result]:
    for run in driven(body):
        flow, across = flow_lpm(run, pump), across_pa(run, pump)
        if pump in run.situation.running and flow is not None:
            yield Result(worded("{run}: flow", run=called(run)), flow, "l/min")
            if across is not None:
                yield Result(worded("{run}: head", run=called(run)), head_m(body, -across), "m")


def _needed(flows: DesignFlows, need: Needed) -> Iterator[Result]:
    situation = called(need.run)
    if need.why:
        yield Result(
            worded("{situation}: needed", situation=situation), worded("not told: {why}", why=need.why), ""
        )
        return
    body = flows.body
    yield Result(worded("{situation}: flow needed", situation=situation), lpm(need.flow_m3_s), "l/min")
    yield Result(worded("{situation}: head needed", situation=situation), head_m(body, need.pressure_pa), "m")
    spare = flows.surplus_pa(need)
    yield Result(
        worded(
            "{situation}: head {what}",
            situation=situation,
            what=a_word("to spare") if spare >= 0 else a_word("short by"),
        ),
        head_m(body, abs(spare)),
        "m",
    )

"""Flow through the heat source at pump run-on.

When the zones have shut and the pump runs on, what still flows through each heat source, and whether it is
the least flow that it needs to give up its heat. Too little, and the water left in it boils.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.situations import RUN_ON
from circuitcheck.figures.bypassing import bypasses
from circuitcheck.figures.driven import (
    LIMITS,
    SOURCE,
    called,
    driven,
    flow_lpm,
    refusing,
    sources,
    take_curves,
    take_water,
    usual_moves,
)
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.figures.telling import Telling
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "source-flow-at-run-on",
    a_word("Flow through the heat source at pump run-on"),
    a_word("where H0 (1 − (Q/Q0)²) = what the ways still open lose\nto spare = Q − Qmin"),
    SOURCE,
    LIMITS,
)

CHECKS = ("source-flow-below-minimum",)
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each heat source on pumped water that a pump of it may run on in."""
    found = (_one(plant, body, heat) for body in plant.solved.bodies for heat in sources(body))
    return tuple(each for each in found if each is not None)


def _one(plant: Plant, body: SolvedBody, heat: str) -> Figure | None:
    if plant.value(heat, "pump_overrun_min") == 0:
        return None
    refused = refusing(TELLING, body, (heat,))
    if refused is not None:
        return refused
    runs = [run for run in driven(body) if run.situation.name == RUN_ON]
    if not runs:
        return None
    told = Gathering(plant)
    take_water(told)
    running = [pump for pump in body.pumps if any(pump in run.situation.running for run in runs)]
    take_curves(told, body, running)
    told.part(heat, "pump_overrun_min", "t", needed=False)
    own = "bypass" in (plant.value(heat, "built_in") or ())
    least = told.part(heat, "minimum_flow_lpm", "Qmin", needed=not own)
    for bypass in bypasses(body):
        told.part(
            bypass,
            "set_difference_kpa",
            worded("set {part}", part=bypass),
            worded("Set difference of {bypass}", bypass=plant.drawing.name(bypass)),
        )
    flows = {run.row: flow for run in runs if (flow := flow_lpm(run, heat)) is not None}
    if told.missing:
        return TELLING.lacking(told, (heat,))
    results = [result for run in runs for result in _results(run, heat, None if own else least)]
    if not flows or not results:
        return TELLING.refused(told, (heat,), a_word("the flow through it can't be told"))
    lowest = min((run for run in runs if run.row in flows), key=lambda run: flows[run.row])
    more = (
        a_word("A bypass of its own is built in: what it lets through is the maker's, and not counted here.")
        if own
        else ""
    )
    moves = usual_moves(body, lowest, lambda run: flow_lpm(run, heat), called(lowest))
    overrun = f"{heat}.pump_overrun_min"
    stops = (Moves(overrun, a_word("no run-on"), -1.0),) if told.is_default(overrun) else ()
    return TELLING.worked(told, (heat,), results, more_limits=more, moves=(*moves, *stops))


def _results(run: Run, heat: str, least: float | None) -> Iterator[Result]:
    flow, situation = flow_lpm(run, heat), called(run)
    if flow is None:
        return
    yield Result(worded("{situation}: flow", situation=situation), flow, "l/min")
    for bypass in bypasses(run.body):
        yield Result(
            worded(
                "{situation}: of it through {bypass}",
                situation=situation,
                bypass=run.body.plant.drawing.name(bypass),
            ),
            flow_lpm(run, bypass) or 0.0,
            "l/min",
        )
    if least is not None:
        yield Result(
            worded(
                "{situation}: {what}",
                situation=situation,
                what=a_word("to spare") if flow >= least else a_word("short by"),
            ),
            abs(flow - least),
            "l/min",
        )

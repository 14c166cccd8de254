"""Index circuit of each pump.

The circuit that decides what head a pump must have: of all ways round through what it serves, the one
that loses most at design flows, its losses one by one. Widening anything else gains nothing.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.figures.design_flows import DesignFlows, Needed, design_flows
from circuitcheck.figures.driven import (
    LIMITS,
    SOURCE,
    USUAL,
    called,
    count_usual,
    head_m,
    lpm,
    refusing,
    take_water,
)
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.held_flows import Loss
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import SolvedBody
from circuitcheck.figures.telling import Telling
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "index-circuit",
    a_word("Index circuit of the pump"),
    a_word(
        "design flow: Q = P / (ρ c ΔT), of a pipe the sum of those it feeds; P of an emitter: what it gives at "
        "the design's temperatures, (ΔT / 50 K)^n of its nominal output\n"
        "head needed = Σ Δp round the circuit that loses most"
    ),
    SOURCE,
    f"{LIMITS} Valves that are set to a flow count as wide open on this circuit. In the situation that asks "
    "most head of the pump.",
)


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each pump on heating water that serves something with a design flow."""
    found = (_one(plant, body, pump) for body in plant.solved.bodies for pump in body.pumps)
    return tuple(each for each in found if each is not None)


def _one(plant: Plant, body: SolvedBody, pump: str) -> Figure | None:
    refused = refusing(TELLING, body, (pump,))
    if refused is not None:
        return refused
    told = Gathering(plant)
    take_water(told)
    flows = design_flows(body)
    if flows.missing:
        told.lacks(*flows.missing)
        return TELLING.lacking(told, (pump,))
    needs = [need for run in flows.runs if (need := flows.needed(run, pump)) is not None]
    if not needs:
        return None
    worst = max(needs, key=lambda need: need.pressure_pa)
    if worst.why:
        return TELLING.refused(told, (pump,), worst.why)
    losses = flows.circuit(worst)
    if not losses:
        return TELLING.refused(told, (pump,), a_word("the way round could not be followed"))
    count_usual(told, body)
    for part, flow in flows.held(worst.run).items():
        told.add(
            f"Q {part}",
            worded("Design flow of {part}", part=plant.drawing.name(part)),
            lpm(flow),
            "l/min",
            a_word("worked: P / (ρ c ΔT)"),
        )
    return TELLING.worked(
        told, (pump,), _results(flows, worst, losses), moves=_moves(flows, worst.pressure_pa, losses)
    )


def _results(flows: DesignFlows, need: Needed, losses: tuple[Loss, ...]) -> Iterator[Result]:
    body = flows.body
    name = body.plant.drawing.name
    yield Result(
        "Decides", worded("{decides}, in {run}", decides=name(need.decides), run=called(need.run)), ""
    )
    yield Result("Flow rate", lpm(need.flow_m3_s), "l/min")
    yield Result(a_word("Head needed"), head_m(body, need.pressure_pa), "m")
    yield Result(a_word("All losses together"), need.pressure_pa / 1000, "kPa")
    for loss in losses:
        bore = body.bore_mm(loss.id) if loss.id in body.plant.drawing.pipes else None
        wide = worded(", bore {bore:g} mm", bore=bore) if bore else ""
        yield Result(
            worded(
                "{id}{wide}, {flow_m3_s:.3g} l/min",
                id=name(loss.id),
                wide=wide,
                flow_m3_s=lpm(loss.flow_m3_s),
            ),
            loss.pascals / 1000,
            "kPa",
        )
    others = flows.less_pa(need)
    if others:
        part = min(others, key=lambda each: others[each])
        yield Result(worded("Next, {part}, loses less by", part=name(part)), others[part] / 1000, "kPa")


def _moves(flows: DesignFlows, total: float, losses: tuple[Loss, ...]) -> Iterator[Moves]:
    """What on the way has its resistance by default, halved and doubled."""
    share = sum(loss.pascals for loss in losses if loss.id in flows.usual) / total if total > 0 else 0.0
    if share:
        yield Moves(USUAL, a_word("half as much"), -share / 2)
        yield Moves(USUAL, a_word("twice as much"), share)

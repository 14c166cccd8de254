"""Velocity in each pipe.

The highest velocity that each pipe sees in any situation, with the limit above which it is heard, and
how wide a pipe would have to be that is too narrow.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import sqrt

from circuitcheck.figures.driven import (
    LIMITS,
    SOURCE,
    called,
    driven,
    refusing,
    take_curves,
    take_water,
    usual_moves,
)
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.figures.telling import Telling
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "noise",
    a_word("Velocity in each pipe"),
    a_word("v = 4 Q / (π d²)\nbore that is quiet = d √(v / limit)"),
    SOURCE,
    f"{LIMITS} Mean velocity over the bore; valves and sharp bends can be heard sooner.",
)
Fast = tuple[float, str, Run]

CHECKS = ("pipe-too-fast",)
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each body of pumped heating water."""
    return tuple(_one(plant, body) for body in plant.solved.bodies)


def _one(plant: Plant, body: SolvedBody) -> Figure:
    refused = refusing(TELLING, body, body.pumps)
    if refused is not None:
        return refused
    told = Gathering(plant)
    limit = float(told.limit("flow.highest_velocity_m_s", a_word("limit"), a_word("Highest velocity")))
    take_water(told)
    take_curves(told, body)
    fast = sorted(_fastest(body), key=lambda each: (-each[0], each[1]))
    if not fast:
        return TELLING.refused(told, body.pumps, a_word("no pump drives water through any pipe"))
    speed, pipe, run = fast[0]
    results = [
        Result(a_word("Fastest of all"), speed, "m/s"),
        *(_shown(plant, body, each) for each in fast),
        *(_wider(plant, body, each, limit) for each in fast if each[0] > limit),
    ]
    moves = usual_moves(body, run, lambda each: each.velocity_m_s(pipe), plant.drawing.name(pipe))
    return TELLING.worked(told, body.pumps, results, moves=moves)


def _fastest(body: SolvedBody) -> Iterator[Fast]:
    """Each pipe that water is driven through, with its highest velocity and the run it has it in."""
    runs = driven(body)
    for pipe in body.pipes:
        speeds = [(speed, run) for run in runs if (speed := run.velocity_m_s(pipe))]
        if speeds:
            speed, run = max(speeds, key=lambda each: each[0])
            yield speed, pipe, run


def _shown(plant: Plant, body: SolvedBody, fast: Fast) -> Result:
    speed, pipe, run = fast
    return Result(
        worded(
            "{pipe}, bore {bore_mm:g} mm, {run}",
            pipe=plant.drawing.name(pipe),
            bore_mm=body.bore_mm(pipe),
            run=called(run),
        ),
        speed,
        "m/s",
    )


def _wider(plant: Plant, body: SolvedBody, fast: Fast, limit: float) -> Result:
    speed, pipe, _ = fast
    bore = (body.bore_mm(pipe) or 0.0) * sqrt(speed / limit)
    return Result(worded("Too fast: {pipe} would want a bore of", pipe=plant.drawing.name(pipe)), bore, "mm")

"""Setting of the bypass.

Between which set differences a bypass stays shut while heat or hot water is called, and yet opens far
enough at pump run-on that the heat source keeps its least flow; or that no setting does both. Then the
pump is too large, or the pipes behind it lose too much.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import isfinite

from circuitcheck.figures.bypassing import Serves, bypasses, least_flows, serves
from circuitcheck.figures.driven import LIMITS, SOURCE, USUAL, called, refusing, take_curves, take_water
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import SolvedBody
from circuitcheck.figures.telling import Telling
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "bypass-setting",
    a_word("Setting of the bypass"),
    a_word(
        "no lower than Δp across it, shut, while heat or hot water is called\n"
        "no higher than Δp across it at run-on with Qmin through the heat source, less Δp of the open valve, "
        "(Q/kv)² × 100 kPa"
    ),
    SOURCE,
    f"{LIMITS} The spring is taken to hold its set difference at any flow; a real one rises some kPa as it opens. "
    "Heads that have shut leave more across the bypass than is told here: it should open then.",
)

CHECKS = ("bypass-set-wrong",)
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each bypass that stands on pumped heating water as a part of its own."""
    return tuple(_one(plant, body, bypass) for body in plant.solved.bodies for bypass in bypasses(body))


def _one(plant: Plant, body: SolvedBody, bypass: str) -> Figure:
    refused = refusing(TELLING, body, (bypass,))
    if refused is not None:
        return refused
    told = Gathering(plant)
    take_water(told)
    take_curves(told, body)
    for part in least_flows(body):
        told.part(
            part,
            "minimum_flow_lpm",
            f"Qmin {part}",
            worded("Least flow of {part}", part=plant.drawing.name(part)),
        )
    told.part(
        bypass, "set_difference_kpa", worded("set {part}", part=bypass), a_word("Set difference as drawn")
    )
    if told.missing:
        return TELLING.lacking(told, (bypass,))
    found = serves(body, bypass)
    if found is None:
        return TELLING.refused(told, (bypass,), a_word("it is on no loop that a pump drives water round"))
    moves = _moves(body, bypass, found) if body.taken else ()
    return TELLING.worked(told, (bypass,), _results(found), moves=moves)


def _results(found: Serves) -> Iterator[Result]:
    if found.called is not None:
        yield Result(
            worded("Across it, shut, in {called}: at least", called=called(found.called)),
            found.called_kpa,
            "kPa",
        )
    if found.run_on is None:
        yield Result(
            a_word("At run-on"),
            a_word("no pump runs on, or no heat source needs it: any setting above serves"),
            "",
        )
    elif found.run_on_kpa < 0:
        yield Result(a_word("At run-on"), a_word("even with no spring at all it lets too little through"), "")
    elif isfinite(found.run_on_kpa):
        yield Result(
            worded("For the least flow in {run_on}: at most", run_on=called(found.run_on)),
            found.run_on_kpa,
            "kPa",
        )
    else:
        yield Result(a_word("At run-on"), a_word("the heat source has its least flow without it"), "")
    if not found.is_possible:
        yield Result(a_word("Set difference that serves both"), a_word("none does"), "")
    elif isfinite(found.run_on_kpa):
        between = worded(
            "{called_kpa:.3g} to {run_on_kpa:.3g}", called_kpa=found.called_kpa, run_on_kpa=found.run_on_kpa
        )
        yield Result(a_word("Set difference that serves both"), between, "kPa")
        yield Result(a_word("In the middle"), (found.called_kpa + found.run_on_kpa) / 2, "kPa")


def _moves(body: SolvedBody, bypass: str, found: Serves) -> Iterator[Moves]:
    for other, by in zip(body.least_and_most, (a_word("half as much"), a_word("twice as much")), strict=True):
        moved = serves(other, bypass)
        for what, own, its in (
            ()
            if moved is None
            else (
                (a_word("at least"), found.called_kpa, moved.called_kpa),
                (a_word("at most"), found.run_on_kpa, moved.run_on_kpa),
            )
        ):
            if own > 0 and isfinite(own) and isfinite(its) and abs(max(0.0, its) / own - 1) > 1e-3:
                yield Moves(worded("{usual} ({what})", usual=USUAL, what=what), by, max(0.0, its) / own - 1)

"""Secondary return: water, length and loss.

Hot water that goes round all day is at the tap at once, and heats the house in summer all day as well. What
the round loses must be made up by the heat source; how much flows must keep it warm to its end; and its
water swells with the store's, so that beyond some litres the vessel must be larger.
"""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.circuit.secondary import kept_hot
from circuitcheck.circuit.supplies import Giver
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_water import limit_or_none, stores, supplies
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.figures.working import hotter_moves
from circuitcheck.sizing.heating_up import flow_heated_l_min
from circuitcheck.sizing.standing_loss import TESTED_ROOM_C, bare_pipe_w_m, insulated_pipe_w_m
from circuitcheck.sizing.tube import outside_mm
from circuitcheck.told import a_word, worded

DROP_K = 5.0
TELLING = Telling(
    "secondary-return",
    a_word("Secondary return: water, length and loss"),
    a_word("V = sum of bore area × length\nΦ = sum of loss a metre × length\nq = Φ / (ρ c × 5 K)"),
    a_word(
        "Insulated pipe: the most that the Domestic Building Services Compliance Guide lets it lose (from "
        "memory), in proportion to the difference from the room. Bare pipe: EN ISO 12241 (from memory). "
        "A drop of 5 K on the way: common practice, no source. Return at 50 °C or above: trade guidance."
    ),
    a_word(
        "Still air of 15 °C and water as hot as the store all the way; dull tube; fittings and brackets lose more. "
        "Plastic tube is told as copper of its outside diameter."
    ),
)


@dataclass(slots=True)
class _Round:
    """The sums over the pipes: each as drawn at the least and at the most, for insulation not known."""

    length_m: float = 0.0
    litres: float = 0.0
    least_w: float = 0.0
    most_w: float = 0.0
    insulated_w: float = 0.0


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each store that a secondary return comes back to."""
    found = ((giver, _pipes(plant, giver)) for giver in stores(plant))
    return tuple(_store(plant, giver.part, pipes) for giver, pipes in found if pipes)


def _pipes(plant: Plant, giver: Giver) -> tuple[str, ...]:
    joints = kept_hot(supplies(plant), giver)
    if not joints:
        return ()
    pipes = plant.drawing.pipes.items()
    return tuple(id for id, pipe in pipes if len(pipe.joints) == 2 and joints.issuperset(pipe.joints))


def _store(plant: Plant, store: str, pipes: tuple[str, ...]) -> Figure:
    told = Gathering(plant)
    hot = told.part(store, "thermostat_c", "Ts")
    for pipe in pipes:
        told.lacks(*plant.contents.pipe_litres(pipe)[1])
        told.pipe(pipe, "size_mm", "D")
    if hot is None or told.missing:
        return TELLING.lacking(told, (store,))
    sums = _Round()
    for pipe in pipes:
        _add(told, pipe, float(hot), sums)
    results = [
        Result(a_word("Pipe that is kept hot"), sums.length_m, "m"),
        Result(a_word("Water in it"), sums.litres, "l"),
    ]
    beyond = limit_or_none(plant, "store.secondary_content_l")
    if beyond is not None:
        told.limit(
            "store.secondary_content_l", "V2", a_word("Content beyond which the vessel must be larger")
        )
        results.append(Result(a_word("A larger vessel beyond"), beyond, "l"))
    results += _losses(sums, float(hot))
    unknown = [f"{pipe}.insulated" for pipe in pipes if plant.pipe_value(pipe, "insulated") is None]
    more = worded("Not known: {unknown}.", unknown=", ".join(unknown)) if unknown else ""

    def lost(hot_c: float) -> float:
        warmer = _Round()
        for pipe in pipes:
            _add(Gathering(plant), pipe, hot_c, warmer)
        return warmer.most_w / sums.most_w - 1 if sums.most_w > 0 else 0.0

    moves = hotter_moves(told, store, lost)
    return TELLING.worked(told, (store,), results, more_limits=more, moves=moves)


def _add(told: Gathering, pipe: str, hot: float, sums: _Round) -> None:
    plant = told.plant
    length = told.length_m(pipe, "L", worded("Length of {pipe}", pipe=pipe))
    litres, _ = plant.contents.pipe_litres(pipe)
    if length is None or litres is None:
        return
    outside = outside_mm(str(plant.pipe_value(pipe, "material")), float(plant.pipe_value(pipe, "size_mm")))
    insulated = told.pipe(pipe, "insulated", "i", worded("{pipe} insulated", pipe=pipe), needed=False)
    wrapped = insulated_pipe_w_m(outside, hot, TESTED_ROOM_C) * length
    bare = bare_pipe_w_m(outside, hot, TESTED_ROOM_C) * length
    sums.length_m += length
    sums.litres += litres
    sums.insulated_w += wrapped
    sums.least_w += bare if insulated is False else wrapped
    sums.most_w += wrapped if insulated else bare


def _losses(sums: _Round, hot: float) -> list[Result]:
    if sums.most_w <= 0:
        return []
    found = []
    if sums.least_w < sums.most_w:
        found.append(Result(a_word("Loss, if what is not known is insulated"), sums.least_w, "W"))
        found.append(Result(a_word("Loss, if what is not known is bare"), sums.most_w, "W"))
    else:
        found.append(Result(a_word("Loss as drawn"), sums.most_w, "W"))
        if sums.insulated_w < sums.most_w:
            found.append(Result(a_word("Loss if all of it were insulated"), sums.insulated_w, "W"))
    most = a_word(", at the most") if sums.least_w < sums.most_w else ""
    found.append(Result(worded("Loss in a day{most}", most=most), sums.most_w * 24 / 1000, "kWh"))
    flow = flow_heated_l_min(sums.most_w / 1000, hot - DROP_K, hot)
    found.append(Result(a_word("Flow that keeps the drop to 5 K"), flow, "l/min"))
    return found

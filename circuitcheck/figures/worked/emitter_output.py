"""Output of the emitter at the design's temperatures.

A radiator's output is told for water that is 50 K above the room on the mean. Run it cooler, as an efficient
heat source likes it, and it gives much less: at 30 K little more than half. An emitter that was just large
enough at 75 °C leaves the room cold at 55.
"""

from __future__ import annotations

from circuitcheck.figures.emitting import Emitted, emitted
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.emitter import (
    EXPONENT,
    cools_much,
    excess_k,
    logarithmic_excess_k,
    output_share,
)
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "emitter-output",
    a_word("Output of the emitter at the design's temperatures"),
    "ΔT = (Tf + Tr) / 2 − Ti\nΦ = Φn × (ΔT / 50 K)^n",
    a_word(
        "EN 442-1 (nominal at 75/65/20 °C: 50 K) and EN 442-2 (characteristic equation). Exponent 1.3: usual for "
        "radiators; the maker's own goes before."
    ),
    a_word(
        "The stated output is the nominal one, at 50 K. Radiators and convectors; for floors and fan units other "
        "laws hold. A casing, a shelf or paint with metal in it takes some away."
    ),
)
ROOM_BY_K = 1.0
OTHER_EXPONENT = 1.2


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each emitter."""
    places = plant.circuit.devices(Role.EMITS)
    return tuple(_emitter(plant, place.part) for place in places)


def _emitter(plant: Plant, part: str) -> Figure:
    told = Gathering(plant)
    found = emitted(told, part)
    if found is None:
        return TELLING.lacking(told, (part,))
    if found.limited_c is not None:
        why = worded(
            "Its water is limited to {limited_c:g} °C, cooler than the design's flow: what "
            "it gives there is its stated output, and no law for radiators tells it.",
            limited_c=found.limited_c,
        )
        return TELLING.refused(told, (part,), why)
    flow, back = float(plant.design("flow_temperature_c")), float(plant.design("return_temperature_c"))
    excess = excess_k(flow, back, found.room_c)
    if excess <= 0:
        why = worded(
            "Water of {flow:g} °C on the mean does not warm a room of {room_c:g} °C.",
            flow=(flow + back) / 2,
            room_c=found.room_c,
        )
        return TELLING.refused(told, (part,), why)
    results = [
        Result(a_word("Mean water above the room"), excess, "K"),
        Result(a_word("Share of the nominal output"), 100 * output_share(excess), "%"),
        Result("Output", found.given_w, "W"),
        *_logarithmic(found, flow, back),
    ]
    return TELLING.worked(told, (part,), results, moves=_moves(excess, found.room_c))


def _logarithmic(found: Emitted, flow: float, back: float) -> list[Result]:
    """Where the water cools far, what the logarithmic mean gives: the arithmetic one then flatters."""
    if not found.room_c < back <= flow or not cools_much(flow, back, found.room_c):
        return []
    share = output_share(logarithmic_excess_k(flow, back, found.room_c))
    return [
        Result(a_word("By the logarithmic mean, since the water cools far"), found.nominal_w * share, "W")
    ]


def _moves(excess: float, room_c: float) -> list[Moves]:
    share = output_share(excess)
    cooler = output_share(excess - ROOM_BY_K)
    other = output_share(excess, OTHER_EXPONENT)
    found = [
        Moves(
            a_word("room temperature"),
            worded("+{room_by_k:g} °C on {room_c:g} °C", room_by_k=ROOM_BY_K, room_c=room_c),
            cooler / share - 1,
        )
    ]
    if share and abs(other / share - 1) > 1e-9:
        found.append(
            Moves(
                "exponent",
                worded(
                    "{other_exponent:g} instead of {exponent:g}",
                    other_exponent=OTHER_EXPONENT,
                    exponent=EXPONENT,
                ),
                other / share - 1,
            )
        )
    return found

"""Wait for hot water.

The water in the pipe has gone cold since the tap was last open, and must run out first: down the drain, with
the heat that went into it. A long or wide pipe to a small tap waits longest. What is right is told
differently by different sources: within 30 seconds by the guidance to the water regulations, within a minute
by the health authority and BS 8558.
"""

from __future__ import annotations

from circuitcheck.circuit.supplies import Giver
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_legs import HotLegs, hot_legs
from circuitcheck.figures.hot_water import UNITS_SOURCE, draw_off_lpm
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.sizing.waiting import HSE_S, WFR_S, wait_s
from circuitcheck.told import a_word

TELLING = Telling(
    "wait-for-hot",
    a_word("Wait for hot water"),
    a_word(
        "V = sum of the contents of the pipes from what is hot to the outlet\nt = V / q, q = 0.1 l/s for each "
        "loading unit, or the heat source's hot flow if that is less"
    ),
    f"{UNITS_SOURCE}. Sources disagree on the limit: 30 s by the WFR guidance, G18.4; a minute by HSG274 "
    "part 2 and BS 8558.",
    a_word(
        "The outlet wide open, the pipe cold and full; insulation keeps it warm for a while only. The tube's own "
        "metal and the mixing on the way add to it (some 10 to 20 % in copper), and a heat source that heats "
        "water on its way needs seconds to start. A blending valve draws from its hot side alone until that is hot."
    ),
)
HOT_FLOW = "hot_flow_lpm"

CHECKS = ("hot-pipe-too-long", "hot-water-slow")
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each outlet that hot water comes to."""
    legs = hot_legs(plant)
    return tuple(_outlet(legs, joint) for joint in legs.outlets)


def _outlet(legs: HotLegs, joint: Joint) -> Figure:
    told = Gathering(legs.plant)
    length, litres = 0.0, 0.0
    for _, pipe in legs.pipes(joint):
        length, litres = length + pipe.length_m, litres + pipe.litres
        if pipe.told is None:
            told.lacks(*pipe.missing)
        else:
            one = pipe.told
            told.add(one.symbol, one.name, one.value, one.unit, one.origin)
    flow = _flow(told, joint.part, legs.giver(joint))
    if told.missing or flow is None:
        return TELLING.lacking(told, (joint.part,))
    if flow <= 0:
        return TELLING.refused(told, (joint.part,), a_word("Its hot flow is 0."))
    results = [
        Result(a_word("Pipe that goes cold"), length, "m"),
        Result(a_word("Water in it"), litres, "l"),
        Result("Flow rate", flow, "l/min"),
        Result("Wait", wait_s(litres, flow), "s"),
        Result(a_word("Limit by the WFR guidance, G18.4"), WFR_S, "s"),
        Result(a_word("Limit by HSG274 part 2 and BS 8558"), HSE_S, "s"),
    ]
    return TELLING.worked(told, (joint.part,), results)


def _flow(told: Gathering, outlet: str, giver: Giver) -> float | None:
    """What the outlet draws, or what a heat source that stores none gives if that is less."""
    flow = draw_off_lpm(told, outlet)
    fields = told.plant.drawing.components[giver.part].kind.own_fields
    if giver.stores or all(field.name != HOT_FLOW for field in fields):
        return flow
    most = told.part(giver.part, HOT_FLOW, "qs", needed=False)
    return flow if flow is None or most is None else min(flow, float(most))

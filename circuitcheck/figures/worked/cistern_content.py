"""What the feed cistern must take up.

The water of an open-vented circuit swells into its cistern. A cistern that is filled to the brim when cold
runs over every time the circuit is heated, and draws fresh water, with fresh air and lime in it, every time it
cools. Sources disagree on how much it is: 4 % of the circuit's water by most, 5 % by others; what water really
does from cold to hot stands beside them.
"""

from __future__ import annotations

from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heat_nets import heat_nets
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.open_vent import CISTERN_SHARE_OTHERWISE, LEAST_CISTERN_L, cistern_l
from circuitcheck.sizing.water import expansion
from circuitcheck.told import a_word

TELLING = Telling(
    "cistern-content",
    a_word("What the feed cistern must take up"),
    a_word("Ve = 0.04 V (others: 0.05 V)\nby the densities: Ve = V (ρ(t1) / ρ(t2) − 1)"),
    a_word(
        "4 %: BS 5449 and WFR guidance to Schedule 2, as taught in trade textbooks. 5 %: from memory; sources "
        "disagree. 18 l as the smallest: BS 5449, as taught in the trade."
    ),
    a_word(
        "Room above the cold water level and below the warning pipe, which the cistern's content does not tell. "
        "Water without glycol: with it, it swells by about a fifth more."
    ),
)
COLD = "fill_temperature_c"

CHECKS = ("cistern-too-small", "cistern-runs-dry")
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each cistern that feeds heating water."""
    found = (_cistern(plant, place) for place in plant.circuit.devices(Role.FEEDS))
    return tuple(figure for figure in found if figure is not None)


def _cistern(plant: Plant, place: Placed) -> Figure | None:
    body = plant.bodies.of(place.node)
    net = next((net for net in heat_nets(plant) if body in net.waters), None)
    if net is None or body in plant.bodies.drinking:
        return None
    told = Gathering(plant)
    content = plant.contents.of(body)
    told.lacks(*content.missing)
    if not content.known:
        return TELLING.lacking(told, (place.part,))
    origin = "given design.system_content_l" if content.given else "figure water-content"
    told.add("V", a_word("Water of the circuit"), content.litres, "l", origin)
    results = [
        Result(a_word("Room for 4 %"), cistern_l(content.litres), "l"),
        Result(
            a_word("Room for 5 %, by other sources"), cistern_l(content.litres, CISTERN_SHARE_OTHERWISE), "l"
        ),
    ]
    swell = _swell(told, net.sources)
    if swell is not None:
        results.append(Result(a_word("By the densities of water"), content.litres * swell, "l"))
    results.append(Result(a_word("Smallest cistern"), LEAST_CISTERN_L, "l"))
    stated = told.part(place.part, "content_l", "Vc", needed=False)
    if stated is not None:
        results.append(Result(a_word("Content stated"), float(stated), "l"))
    return TELLING.worked(told, (place.part,), results)


def _swell(told: Gathering, sources: tuple[str, ...]) -> float | None:
    """From filling to the hottest that any of the heat sources gives, else the design's flow; None where
    that is not known, and with glycol in the water, which swells more than the densities of water tell."""
    if told.plant.design("glycol_percent"):
        return None
    cold = told.design(COLD, "t1", needed=False)
    limits = [told.plant.value(source, "maximum_flow_temperature_c") for source in sources]
    known = [
        (float(limit), source) for limit, source in zip(limits, sources, strict=True) if limit is not None
    ]
    if known:
        hot, source = max(known)
        told.part(source, "maximum_flow_temperature_c", "t2")
    else:
        design = told.design("flow_temperature_c", "t2", needed=False)
        if design is None:
            return None
        hot = float(design)
    return None if cold is None else expansion(float(cold), hot)

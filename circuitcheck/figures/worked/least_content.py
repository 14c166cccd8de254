"""Content that always circulates, against what the heat source needs.

A heat source that cannot turn its heat down far enough needs some litres going round through it whenever
it runs, or it starts and stops all day. What thermostatic heads and motor valves can shut off does not
count: it is just then that the rest is too little.
"""

from __future__ import annotations

from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.going_round import going_round
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import refusal
from circuitcheck.parts.kind import Role

NAME, TITLE = "least-content", "Content that always circulates"
FORMULA = (
    "Vround = Σ content of what lies on a way round through the heat source; the least of all situations"
)
SOURCE = (
    "The least circulating content: the maker of the heat source. That thermostatic heads count as shut, and "
    "motor valves as their controls stand them: common practice, no source."
)
LIMITS = (
    "Hand valves open, thermostatic heads and emitters with a hand wheel shut; arrows fitted the right way. Where a "
    "bypass is the only way round, its water counts only while it is open."
)
FIELD = "minimum_content_l"


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each heat source, but for those that state that nothing need circulate."""
    heats = plant.circuit.devices(Role.HEATS)
    return tuple(_one(plant, heat) for heat in heats if plant.value(heat.part, FIELD) != 0)


def _one(plant: Plant, heat: Placed) -> Figure:
    gathering, subject = Gathering(plant), (heat.part,)
    needed = gathering.part(heat.part, FIELD, "Vmin", "Content that must circulate")
    if needed is None:
        return refusal(NAME, TITLE, subject, gathering, formula=FORMULA, source=SOURCE, limits=LIMITS)
    whole = plant.contents.of(plant.bodies.of(heat.other))
    if whole.known and whole.litres < needed:
        gathering.add("V", "Water content", whole.litres, "l", "figure water-content")
        short = (
            Result("All of the water content", whole.litres, "l"),
            Result("Short of what must circulate by, at least", needed - whole.litres, "l"),
        )
        return Figure(NAME, TITLE, subject, short, FORMULA, gathering.inputs, SOURCE, LIMITS)
    situations = [each for each in plant.situations.all if each.running]
    if not situations:
        why = "no pump drives water round, so nothing says what circulates"
        return refusal(
            NAME, TITLE, subject, gathering, formula=FORMULA, source=SOURCE, limits=LIMITS, why=why
        )
    found = [going_round(plant, heat, each) for each in situations]
    gathering.lacks(*(field for each in found for field in each.missing))
    if gathering.missing:
        return refusal(NAME, TITLE, subject, gathering, formula=FORMULA, source=SOURCE, limits=LIMITS)
    for each in {each.situation.name: each for each in reversed(found)}.values():
        gathering.add(
            "Vround", f"Goes round, {each.situation.name}", each.litres, "l", "worked from the drawing"
        )
    least = min(found, key=lambda each: each.litres)
    spare = least.litres - needed
    results = (
        Result("Least that goes round", least.litres, "l"),
        Result("That is in the situation", least.situation.name, ""),
        Result("To spare" if spare >= 0 else "Short by", abs(spare), "l"),
    )
    return Figure(NAME, TITLE, subject, results, FORMULA, gathering.inputs, SOURCE, LIMITS)

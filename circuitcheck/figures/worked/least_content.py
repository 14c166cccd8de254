"""Content that always circulates, against what the heat source needs.

A heat source that cannot turn its heat down far enough needs some litres going round through it whenever
it runs, or it starts and stops all day. What thermostatic heads and motor valves can shut off does not
count: it is just then that the rest is too little.
"""

from __future__ import annotations

from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.going_round import heated_rounds
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import refusal
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import within
from circuitcheck.told import a_word, worded

NAME, TITLE = "least-content", "Content that always circulates"
FORMULA = (
    "Vround = Σ content of what lies on a way round through the heat source while heating is called; "
    "the least of these situations"
)
SOURCE = (
    "The least circulating content: the maker of the heat source. That thermostatic heads count as shut, and "
    "motor valves as their controls stand them: common practice, no source."
)
LIMITS = (
    "Situations with heating called: at run-on the heat source is off, and behind a coil or an exchanger the "
    "heat is taken up. Hand valves open, thermostatic heads and emitters with a hand wheel shut; arrows "
    "fitted the right way. Where a bypass is the only way round, its water counts only while it is open."
)
FIELD = "minimum_content_l"

CHECKS = ("content-below-minimum",)
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each heat source, but for those that state that nothing need circulate."""
    heats = plant.circuit.devices(Role.HEATS)
    return tuple(_one(plant, heat) for heat in heats if plant.value(heat.part, FIELD) != 0)


def _one(plant: Plant, heat: Placed) -> Figure:
    gathering, subject = Gathering(plant), (heat.part,)
    needed = gathering.part(heat.part, FIELD, "Vmin", a_word("Content that must circulate"))
    if needed is None:
        return _refused(gathering, subject)
    if not any(each.running for each in plant.situations.all):
        return _refused(
            gathering, subject, a_word("no pump drives water round, so nothing says what circulates")
        )
    found = heated_rounds(plant, heat)
    if not found:
        return _refused(
            gathering,
            subject,
            a_word("hot water alone takes its heat, and what is behind a coil takes it up"),
        )
    if missing := tuple(field for each in found for field in each.missing):
        whole = plant.contents.of(plant.bodies.of(heat.other))
        if whole.known and not within(needed, whole.litres):
            return _short_in_all(gathering, subject, whole.litres, needed)
        gathering.lacks(*missing)
        return _refused(gathering, subject)
    for each in {each.situation.name: each for each in reversed(found)}.values():
        gathering.add(
            "Vround",
            worded("Goes round, {name}", name=each.situation.name),
            each.litres,
            "l",
            a_word("worked from the drawing"),
        )
    least = min(found, key=lambda each: each.litres)
    spare = least.litres - needed
    results = (
        Result(a_word("Least that goes round"), least.litres, "l"),
        Result(a_word("That is in the situation"), least.situation.name, ""),
        Result(a_word("To spare") if spare >= 0 else a_word("Short by"), abs(spare), "l"),
    )
    return Figure(NAME, TITLE, subject, results, FORMULA, gathering.inputs, SOURCE, LIMITS)


def _short_in_all(gathering: Gathering, subject: tuple[str, ...], litres: float, needed: float) -> Figure:
    """Though not all is known of what goes round: there is not so much in the whole circuit."""
    gathering.add("V", a_word("Water content"), litres, "l", "figure water-content")
    results = (
        Result(a_word("All of the water content"), litres, "l"),
        Result(a_word("Short of what must circulate by, at least"), needed - litres, "l"),
    )
    return Figure(NAME, TITLE, subject, results, FORMULA, gathering.inputs, SOURCE, LIMITS)


def _refused(gathering: Gathering, subject: tuple[str, ...], why: str = "") -> Figure:
    return refusal(NAME, TITLE, subject, gathering, formula=FORMULA, source=SOURCE, limits=LIMITS, why=why)

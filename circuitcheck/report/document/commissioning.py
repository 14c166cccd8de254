"""The commissioning sheet: what to do, to see and to write down, in order, made from what the drawing shows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from circuitcheck.figures.figure import Figure
from circuitcheck.figures.plant import Plant
from circuitcheck.report.document import steps_before, steps_safety, steps_use
from circuitcheck.report.document.asked_of import Asked
from circuitcheck.report.document.content import Commissioning, Stage, Step
from circuitcheck.report.document.situations_told import situations_told
from circuitcheck.report.flows import Flows
from circuitcheck.sheet.pictures import Pictures
from circuitcheck.told import a_word

BEFORE = a_word("Before water is let in")
FILLING = a_word("Filling")
SAFETY = a_word("Safety devices and discharge")
CONTROLS = a_word("Controls and interlock")
FLOW = a_word("Balancing and bypass")
TAPS = a_word("At the taps")
OVER = a_word("Handing over")
LEADS: dict[str, str] = {
    BEFORE: a_word("Cold, dry, and with the electricity isolated."),
    FILLING: a_word("Readings cold and at rest, before the heat source is fired."),
    SAFETY: a_word(
        "By a person qualified for unvented hot water where there is such a store. Keep clear of the ends."
    ),
    CONTROLS: a_word("One control at a time, each from calling to satisfied."),
    FLOW: a_word("Hot, with thermostatic heads open, after dirt has been filtered out."),
    TAPS: a_word("With the store at its temperature. Water above 60 °C scalds in seconds."),
    OVER: a_word("With the user at the plant."),
}


def commissioning(plant: Plant, figures: Sequence[Figure], flows: Flows, pictures: Pictures) -> Commissioning:
    """The sheet of one drawing; a stage that it gives no cause for is left out."""
    asked = Asked(plant, figures)
    stages = tuple(
        Stage(title, LEADS[title], steps) for title, found in _stages(asked) if (steps := tuple(found))
    )
    return Commissioning(stages, situations_told(plant, figures, flows, pictures), tuple(asked.lacking))


def _stages(asked: Asked) -> Iterator[tuple[str, Iterator[Step]]]:
    if not asked.drawing.components:
        return
    yield BEFORE, steps_before.before(asked)
    yield FILLING, steps_before.filling(asked)
    yield SAFETY, steps_safety.safety(asked)
    yield CONTROLS, steps_safety.controls(asked)
    yield FLOW, steps_use.flow(asked)
    yield TAPS, steps_use.taps(asked)
    yield OVER, steps_use.handing_over(asked)

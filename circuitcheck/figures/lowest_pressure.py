"""The lowest pressure in a circuit while its pumps run, with an expansion vessel as the fixed point."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.circuit.joining import Placed
from circuitcheck.drawing.value import Joint
from circuitcheck.sizing.vessel import static_bar

if TYPE_CHECKING:
    from circuitcheck.figures.plant import Plant
    from circuitcheck.figures.solved import Run

KPA_A_BAR = 100


@dataclass(frozen=True, slots=True)
class Lowest:
    """Where pressure is lowest: the gauge pressure in bar, at the first end of a pipe, in a situation."""

    bar: float
    pipe: str
    part: str
    situation: str


def lowest_pressure(plant: Plant, vessel: Placed, fill_bar: float) -> Lowest | None:
    """The lowest pressure in the vessel's water in any situation, cold, filled to `fill_bar` at the vessel.

    The pressure at the vessel's tee does not change when a pump starts; elsewhere it is that, less the
    height above the vessel, and what the solved pressures differ by. Only places of known height on
    water that is solved are looked at; None where there is none.
    """
    body = plant.solved.at(vessel)
    own = plant.heights.of(vessel.part)
    if body is None or own is None:
        return None
    places = tuple(_places(plant, vessel))
    fixed = _pipes_by(plant, vessel)
    found: Lowest | None = None
    for run in body.runs:
        start = next((pipe for pipe in fixed if run.between_kpa(pipe, pipe) is not None), None)
        for pipe, part, height in places if start is not None else ():
            bar = _bar(run, pipe, str(start), fill_bar - static_bar(height - own))
            if bar is not None and (found is None or bar < found.bar):
                found = Lowest(bar, pipe, part, run.situation.name)
    return found


def _bar(run: Run, pipe: str, fixed: str, at_rest_bar: float) -> float | None:
    more = run.between_kpa(pipe, fixed)
    return None if more is None else at_rest_bar + more / KPA_A_BAR


def _places(plant: Plant, vessel: Placed) -> Iterator[tuple[str, str, float]]:
    """The pipes of the vessel's water whose first end stands on a part of known height, with both."""
    body = plant.bodies.of(vessel.node)
    for node, (id, pipe) in enumerate(plant.drawing.pipes.items()):
        end = pipe.ends[0]
        if plant.bodies.of(node) == body and isinstance(end, Joint):
            height = plant.heights.of(end.part)
            if height is not None:
                yield id, end.part, height


def _pipes_by(plant: Plant, vessel: Placed) -> tuple[str, ...]:
    """The vessel's own pipe, then those on the part at its far end, those that begin there first."""
    drawing = plant.drawing
    own = drawing.joined.get(Joint(vessel.part, vessel.device.port))
    if own is None:
        return ()
    far = [end.part for end in drawing.pipes[own].joints if end.part != vessel.part]
    beside = [pipe for part in far for pipe in drawing.pipes_of(part) if pipe != own]
    beside.sort(key=lambda pipe: getattr(drawing.pipes[pipe].ends[0], "part", "") not in far)
    return (own, *beside)

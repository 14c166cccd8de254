"""What flows, and what is cut off, with everything in one position."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import TYPE_CHECKING

from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.situations import Situation
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.plant import Plant
from circuitcheck.operating.cutting import CutOff, cut_off_by
from circuitcheck.operating.positions import Positions, Turnable, situations, turnables
from circuitcheck.parts.kind import Role
from circuitcheck.report.flows import (
    NO_WATER,
    TOO_MANY,
    PipeFlow,
    SituationFlows,
    failure_words,
    pipe_flows,
)
from circuitcheck.rules.book import NoRuleError
from circuitcheck.sizing.water import OutsideLimitsError
from circuitcheck.told import worded

if TYPE_CHECKING:
    from circuitcheck.figures.solved import Run


@dataclass(frozen=True, slots=True)
class Standing:
    """One position of everything in a drawing, solved.

    `flows` by pipe, with `fault` where some or all cannot be told; `through` is the flow in litres a minute
    through each part that water passes by a way of its own, as its passage is written; `across_kpa` the
    pressure at that passage's beginning less that at its end. `missing` names fields. `is_known` is False where
    a pump runs on heating water and what it drives cannot be told: nothing can then be said of later, either.
    """

    drawing: Drawing
    positions: Positions
    flows: SituationFlows
    through: Mapping[str, float] = field(default_factory=dict)
    across_kpa: Mapping[str, float] = field(default_factory=dict)
    cut_off: tuple[CutOff, ...] = ()
    missing: tuple[str, ...] = ()
    runs: tuple[Run, ...] = ()
    is_known: bool = True


class Operated:
    """One drawing to be put into any position. Not to be asked from two threads at once."""

    def __init__(self, drawing: Drawing) -> None:
        self.drawing = drawing
        self.plant = Plant(drawing)

    @cached_property
    def situations(self) -> tuple[Positions, ...]:
        """Its situations; never none."""
        return situations(self.plant)

    @cached_property
    def turnables(self) -> tuple[Turnable, ...]:
        """All that can be shut in it."""
        return turnables(self.plant.circuit)

    def standing(self, positions: Positions) -> Standing:
        """What flows and what is cut off then. Never raises for what a drawing holds."""
        cut = cut_off_by(self.plant, positions.shut)
        runs: list[Run] = []
        fault, missing = "", positions.missing
        try:
            bodies = self.plant.solved.bodies
            missing += self.plant.solved.missing
            situation = Situation(
                positions.name, positions.shut, positions.running, positions.called, bool(positions.firing)
            )
            if not positions.missing:
                runs = [run for body in bodies if (run := body.standing(situation)) is not None]
            told = _Told(self.drawing, runs)
            refused = next((body.refused for body in bodies if body.refused), "")
            fault = told.fault or (
                worded("Flows cannot be worked out: {refused}.", refused=refused) if refused else ""
            )
            fault = fault if bodies else NO_WATER
        except TooLargeError:
            told, fault = _Told(self.drawing, ()), TOO_MANY
        except (NoRuleError, OutsideLimitsError) as error:
            told, fault = _Told(self.drawing, ()), worded("Flows cannot be worked out: {error}.", error=error)
        running = tuple(id for id in self.drawing.components if id in positions.running)
        return Standing(
            self.drawing,
            positions,
            SituationFlows(positions.name, told.pipes, positions.shut, running, fault),
            told.through,
            told.across_kpa,
            cut,
            tuple(dict.fromkeys(missing)),
            tuple(run for run in told.runs if run.failure is None),
            not (missing or fault) or not self._is_driven(positions),
        )

    def _is_driven(self, positions: Positions) -> bool:
        """Whether a pump runs on heating water."""
        bodies = self.plant.bodies
        pumps = self.plant.circuit.devices(Role.PUMPS)
        return any(
            pump.part in positions.running and bodies.of(pump.node) in bodies.with_heat_source
            for pump in pumps
        )


class _Told:
    """The runs of a position, told by pipe and part."""

    def __init__(self, drawing: Drawing, runs: list[Run] | tuple[()]) -> None:
        self.runs = tuple(runs)
        self.pipes: dict[str, PipeFlow] = {}
        self.through: dict[str, float] = {}
        self.across_kpa: dict[str, float] = {}
        self.fault = " ".join(words for run in runs if (words := failure_words(drawing, run)))
        for run in runs:
            if run.failure is None:
                self.pipes |= pipe_flows(run.body, run)
                for id, flow, across in _through(run):
                    self.through[id] = flow
                    if across is not None:
                        self.across_kpa[id] = across


def _through(run: Run) -> Iterator[tuple[str, float, float | None]]:
    """The flow through every part that has one way of its own, and each leg of those that have several."""
    for strand in run.body.network.strands:
        if strand.passage is None:
            continue
        flow = run.flow_lpm(strand.id, strand.leg)
        if flow is not None:
            label = f"{strand.id}:{strand.leg}" if strand.leg else strand.id
            yield label, flow, run.difference_kpa(strand.id, strand.leg)

"""The drawing with a fault and the remedied one side by side, put into positions alike."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from functools import cached_property

from circuitcheck.circuit.situations import BOTH, HEATING_ONLY, HOT_WATER_ONLY, RUN_ON
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.finding import Finding
from circuitcheck.operating.course import Course, course
from circuitcheck.operating.positions import Positions, proving, turnables, vessels
from circuitcheck.operating.positions import named as situation_named
from circuitcheck.operating.readings import Readings
from circuitcheck.operating.running import Model
from circuitcheck.operating.standing import Operated, Standing

BY_HEAT = (BOTH, HEATING_ONLY, HOT_WATER_ONLY, RUN_ON)
"""The situations in which a consequence is looked for, in this order."""


class Tried:
    """One drawing in one position, solved and carried on in time only as far as asked."""

    def __init__(
        self, operated: Operated, model: Model, positions: Positions, is_wanted: Callable[[], bool]
    ) -> None:
        self.operated, self.model, self.positions, self._is_wanted = operated, model, positions, is_wanted

    @cached_property
    def standing(self) -> Standing:
        """It solved."""
        return self.operated.standing(self.positions)

    @cached_property
    def course(self) -> Course | None:
        """It carried on in time; None where it cannot be."""
        if not self.model.can_run or not self.standing.is_known:
            return None
        return course(self.model, self.positions, self.standing.flows.pipes, is_wanted=self._is_wanted)

    @cached_property
    def begins_bar(self) -> Mapping[str, float]:
        """The pressure in each pipe as the course begins."""
        if self.course is None:
            return {}
        begins = self.model.bar(self.course.states[0])
        return Readings(self.operated.plant, self.standing).by_pipe(begins)

    def hottest_c(self, part: str) -> float | None:
        """How hot the water in the pipe on a part's flow gets in the course; None where there is none."""
        pipe = self.operated.drawing.joined.get(Joint(part, "flow"))
        if self.course is None or pipe is None:
            return None
        found = (self.model.celsius(state).get(pipe) for state in self.course.states)
        return max((celsius for celsius in found if celsius is not None), default=None)


class Pair:
    """The two drawings, put into positions alike."""

    def __init__(self, faulty: Drawing, remedied: Drawing, is_wanted: Callable[[], bool]) -> None:
        self._is_wanted = is_wanted
        self.before, self.after = Operated(faulty), Operated(remedied)
        self._models = Model(self.before.plant), Model(self.after.plant)

    def tried(self, positions: Positions) -> tuple[Tried, Tried]:
        """Both in this position."""
        alike = _alike(self.after, positions)
        return (
            Tried(self.before, self._models[0], positions, self._is_wanted),
            Tried(self.after, self._models[1], alike, self._is_wanted),
        )


def positions_of(operated: Operated, finding: Finding) -> Iterator[Positions]:
    """The valves that prove it; each situation with heat; and the first with the vessels' gas lost."""
    if finding.witness is not None and finding.witness.shut:
        yield proving(operated.situations, operated.plant.circuit, finding.witness.shut)
    known = [found for name in BY_HEAT if (found := situation_named(operated.situations, name))]
    # What the finding itself speaks of comes first.
    known.sort(key=lambda each: each.name.partition(":")[0] not in finding.message)
    yield from known or operated.situations[:1]
    lost = frozenset(vessels(operated.plant))
    if lost and known:
        yield known[0].by_hand(flooded=lost)


def _alike(operated: Operated, positions: Positions) -> Positions:
    """The same position in another drawing, as far as its parts are there."""
    parts = frozenset(operated.drawing.components)
    if not positions.is_own:
        found = situation_named(operated.situations, positions.name)
        if found is not None:
            return found
    base = situation_named(operated.situations, positions.name) or operated.situations[0]
    known = {each.label for each in turnables(operated.plant.circuit)}
    # What the remedy put in instead, a pump say, works as its controls have it.
    put_in = parts - _named_parts(positions)
    return base.by_hand(
        shut=positions.shut & known,
        running=(positions.running & parts) | (base.running & put_in),
        firing=(positions.firing & parts) | (base.firing & put_in),
        flooded=positions.flooded & frozenset(vessels(operated.plant)),
    )


def _named_parts(positions: Positions) -> frozenset[str]:
    """The parts that a position names."""
    shut = frozenset(label.partition(":")[0] for label in positions.shut)
    return shut | positions.running | positions.firing | positions.flooded

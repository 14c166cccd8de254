"""What comes of a fault: how everything must stand for it to be seen, and what is worked out then."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property

from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.wording import figure, named, valves
from circuitcheck.circuit.situations import BOTH, HEATING_ONLY, HOT_WATER_ONLY, RUN_ON
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.finding import Finding, Says
from circuitcheck.operating.course import LONG_S, Course, Event, Happens, course
from circuitcheck.operating.positions import Positions, proving, turnables, vessels
from circuitcheck.operating.positions import named as situation_named
from circuitcheck.operating.readings import Readings
from circuitcheck.operating.running import Model
from circuitcheck.operating.standing import Operated, Standing
from circuitcheck.told import a_word, worded

BY_HEAT = (BOTH, HEATING_ONLY, HOT_WATER_ONLY, RUN_ON)
"""The situations in which a consequence is looked for, in this order."""
LEAST_BAR, LEAST_SHARE, LEAST_K = 0.3, 0.05, 5.0
"""A difference in pressure, in flow by share, and in temperature that is worth telling."""

FLOWS = ("circulation", "drawing_itself", "flow")
"""The topics of checks that find what flows amiss."""

HAPPENS = {
    Happens.LIFTS: a_word("{time} after the start {part} lifts{where}; after the remedy it does not."),
    Happens.TRIPS: a_word(
        "{time} after the start the overheat cut-out of {part} trips{where}; after the remedy it does not."
    ),
    Happens.OVER: a_word(
        "{time} after the start the pressure passes what {part} is made for{where}; after the remedy it "
        "does not."
    ),
    Happens.EMPTY: a_word(
        "{time} after the start the pressure at {part} is gone{where}, and air can be drawn in; after the "
        "remedy it is not."
    ),
    Happens.TOO_HOT: a_word(
        "{time} after the start the water at {part} is about to boil{where}; after the remedy it is not."
    ),
    Happens.BURSTS: a_word(
        "{time} after the start the pressure at {part} passes 100 bar{where}: something has burst long "
        "before. After the remedy it does not."
    ),
}
"""What is worth telling of a course; a pump that stops and a store that is warm are as they should be."""


@dataclass(frozen=True, slots=True)
class Scene:
    """How everything stands in the drawing with the fault and in the remedied one, and what then happens,
    in sentences of numbers worked out; none where no flow, pressure or heat tells the two apart."""

    positions: Positions
    remedied: Positions
    says: tuple[Says, ...] = ()


class _Tried:
    """One drawing in one position, solved and carried on in time only as far as asked."""

    def __init__(
        self, operated: Operated, model: Model, positions: Positions, is_wanted: Callable[[], bool]
    ) -> None:
        self.operated, self.model, self.positions, self._is_wanted = operated, model, positions, is_wanted

    @cached_property
    def standing(self) -> Standing:
        return self.operated.standing(self.positions)

    @cached_property
    def course(self) -> Course | None:
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


class _Pair:
    """The two drawings, put into positions alike."""

    def __init__(self, faulty: Drawing, remedied: Drawing, is_wanted: Callable[[], bool]) -> None:
        self._is_wanted = is_wanted
        self.before, self.after = Operated(faulty), Operated(remedied)
        self._models = Model(self.before.plant), Model(self.after.plant)

    def tried(self, positions: Positions) -> tuple[_Tried, _Tried]:
        alike = _alike(self.after, positions)
        return (
            _Tried(self.before, self._models[0], positions, self._is_wanted),
            _Tried(self.after, self._models[1], alike, self._is_wanted),
        )


def scene(
    faulty: Drawing,
    remedied: Drawing,
    finding: Finding,
    is_wanted: Callable[[], bool] = lambda: True,
    *,
    in_time: bool = True,
) -> Scene:
    """The first position, of those that may show it, in which the fault makes a difference to what flows or is
    cut off; else the first in which it makes one in time; else the first. Time costs most by far.

    `in_time`: without it nothing is worked out in time, and only the first is looked at. Once it is no longer
    wanted what comes back is worth nothing.
    """
    pair = _Pair(faulty, remedied, is_wanted)
    tried = [pair.tried(positions) for positions in dict.fromkeys(_positions(pair.before, finding))]
    assert tried, "a drawing has at least one situation"
    if not in_time:
        return _scene(*tried[0], _at_once(*tried[0], finding))
    for each in tried:
        if at_once := tuple(_at_once(*each, finding)):
            return _scene(*each, (*at_once, *_in_time(*each, finding)))
    for each in tried:
        if later := tuple(_in_time(*each, finding)):
            return _scene(*each, later)
    return _scene(*tried[0])


def _scene(before: _Tried, after: _Tried, says: Iterable[Says] = ()) -> Scene:
    return Scene(before.positions, after.positions, tuple(says))


def _positions(operated: Operated, finding: Finding) -> Iterator[Positions]:
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


def _at_once(before: _Tried, after: _Tried, finding: Finding) -> Iterator[Says]:
    """The differences in what is cut off and in what flows."""
    yield from _parted(before.standing, after.standing, _where(before, finding))
    yield from _flows(before, after, finding)


def _in_time(before: _Tried, after: _Tried, finding: Finding) -> Iterator[Says]:
    """The differences in pressure and heat."""
    where = _where(before, finding)
    one, other = before.course, after.course
    if one is None or other is None:
        return
    yield from _drawn_in(before, after)
    yield from _events(before.operated.drawing, one, other, where)
    yield from _peaks(before.operated.drawing, one, other, where)
    yield from _hottest(before, after, finding)


def _where(tried: _Tried, finding: Finding) -> str:
    """How it stands, to be put into a sentence."""
    drawing, positions = tried.operated.drawing, tried.positions
    if finding.witness is not None and frozenset(finding.witness.shut) == positions.shut:
        return worded(" with {valves} shut", valves=valves(drawing, finding.witness.shut))
    if positions.flooded:
        return worded(" once {vessels} has lost its gas", vessels=named(drawing, sorted(positions.flooded)))
    return ""


def _parted(before: Standing, after: Standing, where: str) -> Iterator[Says]:
    """What the shut valves part off, and would not after the remedy."""
    still = {(each.part, each.lacks) for each in after.cut_off}
    for each in before.cut_off:
        if (each.part, each.lacks) not in still:
            yield Says(
                "{part} has no way left to its {lacks}{where}; after the remedy it has.",
                {"part": before.drawing.name(each.part), "lacks": each.lacks, "where": where},
            )


def _flows(before: _Tried, after: _Tried, finding: Finding) -> Iterator[Says]:
    """The flow through what is judged, where the remedy changes it. What is found of safety has none to tell."""
    if checks()[finding.check].topic not in FLOWS:
        return
    for part in finding.components[:1]:
        one, other = before.standing.through.get(part), after.standing.through.get(part)
        if one is None or other is None:
            continue
        if abs(one - other) > LEAST_SHARE * max(abs(one), abs(other), 0.1):
            values = {
                "part": before.operated.drawing.name(part),
                "situation": before.positions.name,
                "before": figure(abs(one)),
                "after": figure(abs(other)),
            }
            template = "Through {part} ({situation}) flow {before} l/min, after the remedy {after} l/min."
            if one * other < 0:
                template = (
                    "Through {part} ({situation}) flow {before} l/min, after the remedy {after} l/min "
                    "the other way."
                )
            yield Says(template, values)


def _drawn_in(before: _Tried, after: _Tried) -> Iterator[Says]:
    """Where pumps take the pressure below the air's, and would not after the remedy."""
    one, other = before.begins_bar, after.begins_bar
    lowest = min(one, key=lambda pipe: one[pipe], default="")
    if lowest and other and one[lowest] < 0 <= min(other.values()):
        values = {
            "pipe": before.operated.drawing.name(lowest),
            "situation": before.positions.name,
            "before": figure(one[lowest]),
            "after": figure(min(other.values())),
        }
        yield Says(
            "As the pump starts ({situation}) the pressure in {pipe} falls to {before} bar, below that of the air "
            "outside, and air can be drawn in; after the remedy no pipe has less than {after} bar.",
            values,
        )


def _events(drawing: Drawing, one: Course, other: Course, where: str) -> Iterator[Says]:
    """The first thing of each kind that happens only with the fault."""
    unheard: dict[Happens, Event] = {}
    for event in one.events:
        unheard.setdefault(event.what, event)
    for what, event in unheard.items():
        if what in HAPPENS and what not in {each.what for each in other.events}:
            part = drawing.name(event.part)
            if what is Happens.LIFTS and drawing.components[event.part].kind.name != "safety_valve":
                part = worded("the safety valve in {part}", part=part)
            values = {"time": _time(event.seconds), "part": part, "where": where}
            yield Says(HAPPENS[what], values)


def _peaks(drawing: Drawing, one: Course, other: Course, where: str) -> Iterator[Says]:
    """How high the pressure comes, where the remedy changes that."""
    for source, peak in _highest(one).items():
        sound = _highest(other).get(source)
        if sound is not None and abs(peak - sound) >= LEAST_BAR:
            values: Mapping[str, str | float] = {
                "part": drawing.name(source),
                "minutes": figure(LONG_S / 60),
                "before": figure(peak),
                "after": figure(sound),
                "where": where,
            }
            yield Says(
                "Within {minutes} minutes the pressure at {part} comes to {before} bar{where}; after the remedy "
                "to {after} bar.",
                values,
            )


def _hottest(before: _Tried, after: _Tried, finding: Finding) -> Iterator[Says]:
    """How hot the water gets that comes to the part judged, where the remedy keeps it cooler."""
    for part in finding.components[:1]:
        one, other = before.hottest_c(part), after.hottest_c(part)
        if one is not None and other is not None and one - other >= LEAST_K:
            values: Mapping[str, str | float] = {
                "part": before.operated.drawing.name(part),
                "situation": before.positions.name,
                "before": round(one),
                "after": round(other),
            }
            yield Says(
                "The water at the flow of {part} ({situation}) gets {before} °C hot; after the remedy {after} °C.",
                values,
            )


def _highest(told: Course) -> dict[str, float]:
    return {source: max(row.bar[place] for row in told.rows) for place, source in enumerate(told.sources)}


def _time(seconds: float) -> str:
    minutes, rest = divmod(round(seconds), 60)
    return worded("{minutes} min {rest} s", minutes=minutes, rest=rest) if minutes else f"{rest} s"

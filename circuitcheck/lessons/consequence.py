"""What comes of a fault: how everything must stand for it to be seen, and what is worked out then."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass

from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.wording import figure, named, valves
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Says
from circuitcheck.lessons.pairing import Pair, Tried, positions_of
from circuitcheck.operating.course import LONG_S, Course, Event, Happens
from circuitcheck.operating.positions import Positions
from circuitcheck.operating.standing import Standing
from circuitcheck.told import a_word, worded

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
    pair = Pair(faulty, remedied, is_wanted)
    tried = [pair.tried(positions) for positions in dict.fromkeys(positions_of(pair.before, finding))]
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


def _scene(before: Tried, after: Tried, says: Iterable[Says] = ()) -> Scene:
    return Scene(before.positions, after.positions, tuple(says))


def _at_once(before: Tried, after: Tried, finding: Finding) -> Iterator[Says]:
    """The differences in what is cut off and in what flows."""
    yield from _parted(before.standing, after.standing, _where(before, finding))
    yield from _flows(before, after, finding)


def _in_time(before: Tried, after: Tried, finding: Finding) -> Iterator[Says]:
    """The differences in pressure and heat."""
    where = _where(before, finding)
    one, other = before.course, after.course
    if one is None or other is None:
        return
    yield from _drawn_in(before, after)
    yield from _events(before.operated.drawing, one, other, where)
    yield from _peaks(before.operated.drawing, one, other, where)
    yield from _hottest(before, after, finding)


def _where(tried: Tried, finding: Finding) -> str:
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


def _flows(before: Tried, after: Tried, finding: Finding) -> Iterator[Says]:
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
                "before": figure(round(abs(one), 1)),
                "after": figure(round(abs(other), 1)),
            }
            template = "Through {part} ({situation}) flow {before} l/min, after the remedy {after} l/min."
            if one * other < 0:
                template = (
                    "Through {part} ({situation}) flow {before} l/min, after the remedy {after} l/min "
                    "the other way."
                )
            yield Says(template, values)


def _drawn_in(before: Tried, after: Tried) -> Iterator[Says]:
    """Where pumps take the pressure below the air's, and would not after the remedy."""
    one, other = before.begins_bar, after.begins_bar
    lowest = min(one, key=lambda pipe: one[pipe], default="")
    if lowest and other and one[lowest] < 0 <= min(other.values()):
        values = {
            "pipe": before.operated.drawing.name(lowest),
            "situation": before.positions.name,
            "before": figure(round(one[lowest], 2)),
            "after": figure(round(min(other.values()), 2)),
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
                "before": figure(round(peak, 2)),
                "after": figure(round(sound, 2)),
                "where": where,
            }
            yield Says(
                "Within {minutes} minutes the pressure at {part} comes to {before} bar{where}; after the remedy "
                "to {after} bar.",
                values,
            )


def _hottest(before: Tried, after: Tried, finding: Finding) -> Iterator[Says]:
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

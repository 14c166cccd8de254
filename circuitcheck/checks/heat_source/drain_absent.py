"""Stretch of heating pipework cannot be drained.

Flags: Heating pipework between valves that can be shut, more than a metre of pipe in all, with no
    drain on it, or with none at its lowest point: a part of it lies more than 0.1 m below every drain.
    A check valve or a bypass does not part a stretch: only what can be shut does. The pipe between an
    open vent or a cistern and a valve in it is not asked for a drain: it is the valve that is wrong.
Why: Sooner or later a valve, a radiator or the heat source must come out. Water that cannot be let
    out beforehand comes out over the floor, and water left lying in a low place freezes and splits
    the tube when the house stands empty in winter.
Remedy: Fit a drain at the lowest point of each stretch that valves can shut off, and on each drop to
    radiators that are fed from above.
Source: taught in trade textbooks (City & Guilds Textbook: Plumbing, Book 1, 2019): drain valves at all
    low points. That a metre or less holds nothing worth a drain: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import chain

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.heating_water import heater_of, heating_bodies
from circuitcheck.checks.stretches import Stretch, bounding_valves, pipe_ids, spurs, stretches
from circuitcheck.checks.wording import figure, named, shortened
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, NameTuple, Says, names
from circuitcheck.parts.kind import Role

NAME = "drain-absent"

WORTH_A_DRAIN_M = 1.0
"""A stretch of so much or less holds nothing worth a drain. Common practice, no source."""
LEVEL_WITHIN_M = 0.1
"""What a drain may stand above the lowest point: as well as heights must agree in a drawing."""

_ROUNDING_M = 1e-9


def judge(case: Case) -> Verdict:
    """Advice for each stretch without a drain at its low point; what is not known, once a body."""
    if not heating_bodies(case):
        return Verdict()
    findings, sound = [], 0
    unknown: dict[int, list[_Unknown]] = {}
    judging = _Judging(case)
    for stretch in stretches(case):
        if judging.is_bare and not stretch.drains:
            unknown.setdefault(stretch.body, []).append((stretch, None))
            continue
        verdict = judging.judged(stretch)
        if isinstance(verdict, Finding):
            findings.append(verdict)
        elif verdict is None:
            sound += 1
        else:
            unknown.setdefault(stretch.body, []).append((stretch, verdict))
    findings += [_unanswered(case, body, found) for body, found in unknown.items()]
    return Verdict(tuple(findings), sound)


_Unknown = tuple[Stretch, tuple[str, ...] | None]
"""A stretch, and what must be known before it can be judged; None: the length of each of its pipes."""


class _Judging:
    """Judges one stretch after another."""

    def __init__(self, case: Case) -> None:
        self.case = case
        self.spurs = spurs(case)
        self.open_ends = case.circuit.parts_with(Role.VENTS, Role.FEEDS)

        self.is_bare = not case.told_pipes and not self.open_ends

    def judged(self, stretch: Stretch) -> Finding | tuple[str, ...] | None:
        """Advice, what is missing, or None where nothing is wrong."""
        drains = tuple(stretch.drains)
        length, unknown = self._length_m(stretch)
        is_long = length > WORTH_A_DRAIN_M + _ROUNDING_M
        if not is_long and not unknown:
            return None
        if not drains and self.open_ends and self._is_open_to_air(stretch):
            return None
        if not drains:
            return _no_drain(self.case, stretch, length) if is_long else unknown
        missing, lowest = self._low_point(stretch, drains)
        if missing is None:
            return None
        if lowest and not missing:
            return _not_at_the_low_point(self.case, stretch, length, lowest) if is_long else unknown
        return missing if is_long else (*unknown, *missing)

    def _is_open_to_air(self, stretch: Stretch) -> bool:
        """Whether it is the pipe of an open vent or a cistern, with a valve in it."""
        if self.open_ends.isdisjoint(stretch.parts(self.case.circuit)):
            return False
        return len(bounding_valves(self.case, stretch)) == 1

    def _length_m(self, stretch: Stretch) -> tuple[float, tuple[str, ...]]:
        """The length known in all, and the fields of the lengths that are not known."""
        ids = stretch.ids(self.case)
        known, missing = 0.0, []
        for pipe in ids:
            length = self.case.length_m(pipe)
            if length is None:
                missing.append(f"{pipe}.length_m")
            else:
                known += length.value
        return known, tuple(missing)

    def _low_point(self, stretch: Stretch, drains: tuple[str, ...]) -> tuple[tuple[str, ...] | None, str]:
        """What is missing (None: a drain stands at the low point), and the part below every drain."""
        heights = self.case.heights
        parts = [part for part in stretch.parts(self.case.circuit) if part not in self.spurs]
        depths = [(self._depth_m(part, drains), part) for part in parts]
        known = [(depth, part) for depth, part in depths if depth is not None]
        if known and max(known)[0] > LEVEL_WITHIN_M + _ROUNDING_M:
            return (), max(known)[1]
        if len(known) == len(parts):
            return None, ""
        return heights.missing_for([*parts, *drains]), ""

    def _depth_m(self, part: str, drains: tuple[str, ...]) -> float | None:
        """How far a part lies below the lowest drain (negative: above); None where that is not known.

        Below none of the drains is known as soon as one drain is known to lie as low.
        """
        difference = self.case.heights.difference
        below = [difference(part, drain) for drain in drains]
        known = [each for each in below if each is not None]
        if len(known) == len(below) or (known and min(known) <= LEVEL_WITHIN_M + _ROUNDING_M):
            return min(known)
        return None


def _where(case: Case, stretch: Stretch) -> tuple[str, dict[str, str | float]]:
    """The beginning of a sentence on a stretch, and its values."""
    valves = bounding_valves(case, stretch)
    if not valves:
        return "The pipework of {thing}", {"thing": case.drawing.name(heater_of(case, stretch.body))}
    if len(valves) > 4:
        some = named(case.drawing, valves[:3])
        return "The pipework between {valves} and {more} more valves", {
            "valves": some,
            "more": len(valves) - 3,
        }
    template = "The pipework between {valves}" if len(valves) > 1 else "The pipework behind {valves}"
    return template, {"valves": named(case.drawing, valves)}


def _no_drain(case: Case, stretch: Stretch, length_m: float) -> Finding:
    template, values = _where(case, stretch)
    return Finding(
        NAME,
        Grade.ADVICE,
        Says(
            template + " ({length} m) has no drain.",
            {**values, "length": figure(length_m)},
        ),
        pipes=tuple(stretch.ids(case)),
        numbers={"length_m": length_m},
    )


def _not_at_the_low_point(case: Case, stretch: Stretch, length_m: float, lowest: str) -> Finding:
    drains = tuple(stretch.drains)
    below = min(each for drain in drains if (each := case.heights.difference(lowest, drain)) is not None)
    template, values = _where(case, stretch)
    says = Says(
        template + " has no drain at its low point: {lowest} lies {below} m below {drains}.",
        {
            **values,
            "lowest": case.drawing.name(lowest),
            "below": figure(below),
            "drains": named(case.drawing, drains),
        },
    )
    return Finding(
        NAME,
        Grade.ADVICE,
        says,
        pipes=tuple(stretch.ids(case)),
        numbers={"length_m": length_m, "below_m": below},
    )


def _missing(case: Case, unknown: _Unknown) -> tuple[str, ...]:
    stretch, missing = unknown
    return tuple(f"{pipe}.length_m" for pipe in stretch.ids(case)) if missing is None else missing


def _unanswered(case: Case, body: int, unknown: list[_Unknown]) -> Finding:
    ids = pipe_ids(case)
    pipes = tuple([ids[pipe] for stretch, _ in unknown for pipe in stretch.pipes])
    if all(missing is None for _, missing in unknown):
        fields: NameTuple = names((pipes, (".length_m",)))  # no pipe is in two stretches
    else:
        fields = tuple(dict.fromkeys(chain.from_iterable([_missing(case, each) for each in unknown])))
    heater = heater_of(case, body)
    says = Says(
        "Whether the pipework of {thing} can be drained rests on what is not known: {missing}.",
        {"thing": case.drawing.name(heater), "missing": shortened(fields)},
    )
    return Finding(
        NAME,
        Grade.UNANSWERED,
        says,
        (heater,),
        pipes=pipes,
        missing=fields,
        would_be=Grade.ADVICE,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A drain at the lowest point of the stretch."""
    for by in _places(case, finding.pipes):
        fitting = Fitting(case.drawing, case.lines)
        try:
            drain = fitting.tee_off(by, "drain", "connection")
            height = case.heights.of(by.part)
            if height is not None:
                fitting.set(drain, "height_m", height)
        except EditError:
            continue
        says = Says("Tee in a drain by {part}.", {"part": case.drawing.name(by.part)})
        yield Proposal(says, fitting.drawing)
        return


def _places(case: Case, pipes: tuple[str, ...]) -> list[Joint]:
    """The ends of a stretch's pipes, the lowest known first."""
    left_out = spurs(case)
    joints = [
        joint for pipe in pipes for joint in case.drawing.pipes[pipe].joints if joint.part not in left_out
    ]
    heights = {joint: case.heights.of(joint.part) for joint in joints}
    known = [height for height in heights.values() if height is not None]
    top = max(known, default=0.0)
    return sorted(joints, key=lambda joint: top if heights[joint] is None else heights[joint] or 0.0)

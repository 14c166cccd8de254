"""High point of the heating water has nothing to let air out.

Flags: A part in heating water that stands higher than all that it is joined to, with nothing there
    that lets air out: no air vent, emitter, open vent or cistern. Parts that stand level count as
    one high point. What stands at the end of a pipe of its own, as a gauge, a safety valve, a vessel
    or a cap, is no high point, nor is what stands on its way there: no water has to pass it.
Why: Air comes out of the water as it is heated and gathers where the pipe is highest. There it makes
    an air lock: the pump cannot push water over it, the coil or the rooms beyond stay cold, the pipes
    gurgle, and the steel rusts from within.
Remedy: Fit an air vent on the high point, upright; or lead the pipe so that it rises all the way to an
    emitter or a vent.
Source: taught in trade textbooks (City & Guilds Textbook: Plumbing, Book 1, 2019): air release at every
    emitter, and automatic vents where air gathers, as at high points and the flow to a coil.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import chain, compress
from typing import NamedTuple

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.heating_water import heater_of, heating_bodies
from circuitcheck.checks.stretches import spurs, stretches
from circuitcheck.checks.wording import figure, named, shortened, upper
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, NameTuple, Says, names
from circuitcheck.parts.kind import Role
from circuitcheck.told import worded

NAME = "air-vent-absent"

LEVEL_WITHIN_M = 0.005
"""Parts whose heights differ by no more stand level: heights are given in centimetres at best."""

_LETS_OUT, _PASSED_OVER = 1, 2
"""How a part stands that is not to be judged itself: it lets air out, or is beside nothing."""

LETS_OUT = (Role.LETS_AIR_OUT, Role.EMITS, Role.VENTS, Role.FEEDS, Role.DRAWS)


def judge(case: Case) -> Verdict:
    """Advice for each high point without a vent; what is not known, once a body."""
    findings, sound = [], 0
    bodies = heating_bodies(case)
    if not bodies:
        return Verdict()
    left_out = spurs(case)
    water = _Water(case, bodies, left_out)
    if case.heights.is_told and any(water.judged(body) for body in bodies):
        water = _Water(case, bodies, left_out | _dead_ends(case, left_out))
    for body in bodies:
        found = water.judged(body)
        findings += found
        sound += not found
    return Verdict(tuple(findings), sound)


def _dead_ends(case: Case, spurs: frozenset[str]) -> frozenset[str]:
    """The parts on the way to spurs and caps alone, with the caps."""
    drawing = case.drawing
    near: dict[str, list[str]] = defaultdict(list)
    for stretch in stretches(case):
        for id in stretch.ids(case):
            joints = drawing.pipes[id].joints
            for joint, other in ((0, 1), (1, 0)) if len(joints) == 2 else ():
                near[joints[joint].part].append(joints[other].part)
    ends = [part for part in near if part in spurs or _only_closes(case, part)]
    found = set(ends)
    for end in ends:
        for part in near[end]:
            if part not in found and sum(other not in found for other in near[part]) <= 1:
                found.add(part)
                ends.append(part)
    return frozenset(found)


def _only_closes(case: Case, part: str) -> bool:
    kind = case.drawing.components[part].kind
    return len(kind.ports) == 1 and not case.circuit.plans[part].devices


class _High(NamedTuple):
    """Parts that stand level, are joined, and have nothing higher beside them; and those of the parts
    beside them whose height, next to theirs, is not known."""

    parts: tuple[str, ...]
    unknown: Sequence[str]


class _Water:
    """How high the parts of the heating water stand beside one another, body by body."""

    def __init__(self, case: Case, bodies: tuple[int, ...], left_out: frozenset[str]) -> None:
        self.case = case
        self.lets_out = case.circuit.parts_with(*LETS_OUT)
        self.parts: dict[int, dict[str, None]] = {body: {} for body in bodies}
        self.below: dict[int, set[str]] = {body: set() for body in bodies}
        self.level: dict[int, dict[str, list[str]]] = {body: defaultdict(list) for body in bodies}
        self.unknown: dict[int, dict[str, list[str]]] = {body: defaultdict(list) for body in bodies}
        self.left_out = left_out
        pipes = case.drawing.pipes
        for stretch in stretches(case) if case.heights.is_told else ():
            parts = self.parts[stretch.body]
            for id in stretch.ids(case):
                start, finish = pipes[id].ends
                one = start.part if isinstance(start, Joint) and start.part not in left_out else ""
                two = finish.part if isinstance(finish, Joint) and finish.part not in left_out else ""
                if one:
                    parts[one] = None
                if two:
                    parts[two] = None
                    if one and one != two:
                        self._compare(stretch.body, one, two)

    def _compare(self, body: int, one: str, two: str) -> None:
        above = self.case.heights.difference(one, two)
        if above is not None and above > LEVEL_WITHIN_M:
            self.below[body].add(one)
        elif above is not None and above < -LEVEL_WITHIN_M:
            self.below[body].add(two)
        else:
            beside = (self.unknown if above is None else self.level)[body]
            beside[one].append(two)
            beside[two].append(one)

    def judged(self, body: int) -> list[Finding]:
        """Advice for each high point without a vent, and one finding for what is not known."""
        if self.case.heights.is_told:
            high = self._high(body)
            groups = (group for parts, unknown in high if unknown for group in (parts, unknown))
            unsure = list(dict.fromkeys(chain.from_iterable(groups)))
        else:
            high, unsure = self._nothing_told(body)
        findings = [self._advice(each.parts) for each in high if not each.unknown]
        if unsure:
            findings.append(self._unanswered(body, unsure))
        return findings

    def _high(self, body: int) -> list[_High]:
        """What has nothing higher beside it, as far as is known, and nothing that lets air out."""
        below, level, unknown = self.below[body], self.level[body], self.unknown[body]
        if not level:
            return [
                _High((part,), unknown.get(part, ()))
                for part in self.parts[body]
                if part not in below and part not in self.lets_out
            ]
        found = []
        seen: set[str] = set()
        for start in self.parts[body]:
            if start in seen or start in below:
                continue
            seen.add(start)
            group = [start]
            for part in group:
                for other in level.get(part, ()):
                    if other not in seen:
                        seen.add(other)
                        group.append(other)
            if below.isdisjoint(group) and self.lets_out.isdisjoint(group):
                beside = (other for part in group for other in unknown.get(part, ()))
                found.append(_High(tuple(group), tuple(beside)))
        return found

    def _nothing_told(self, body: int) -> tuple[list[_High], list[str]]:
        """The high points and what is unsure, where no height is told at all. Nothing need be compared then:
        each part may be high, and what it is joined to as well. Drawings begin so, and the largest most of
        all: hence by the parts' places, and not by their names."""
        ports = self.case.circuit.ports
        ids, sides, place = ports.ids, ports.sides, ports.place
        standing = bytearray(len(ids) + 1)
        standing[-1] = _PASSED_OVER  # a free end, which like a spur is beside nothing
        for part in self.lets_out:
            standing[place[part]] = _LETS_OUT
        for part in self.left_out:
            standing[place[part]] = _PASSED_OVER
        alone, unsure = bytearray(len(standing)), bytearray(len(standing))
        of_pipes = zip(sides[::2], sides[1::2], self.case.bodies.by_node, strict=False)
        for one, two, at in of_pipes:
            if at == body:
                a, b = standing[one], standing[two]
                if a == _PASSED_OVER or b == _PASSED_OVER or one == two:
                    alone[one] = alone[two] = 1
                elif not (a and b):
                    unsure[one] = unsure[two] = 1
        high = [
            _High((id,), ())
            for id, is_high, stands, beside in zip(ids, alone, standing, unsure, strict=False)
            if is_high and not stands and not beside
        ]
        return high, list(compress(ids, unsure))

    def _advice(self, group: tuple[str, ...]) -> Finding:
        drawing, heights = self.case.drawing, self.case.heights
        order = {id: place for place, id in enumerate(drawing.components)}
        parts = tuple(sorted(group, key=order.__getitem__))
        height = heights.of(parts[0])
        values: dict[str, str | float] = {"parts": upper(named(drawing, parts[:3]))}
        more = len(parts) - 3
        if more > 0:
            values["parts"] = worded(
                "{part} with what stands level with it", part=upper(named(drawing, parts[:1]))
            )
        template = "{parts} stands higher than all that it is joined to"
        if 1 < len(parts) <= 3:
            template = "{parts} stand higher than all that they are joined to"
        if height is not None:
            values["height"] = figure(height)
            template += ", at {height} m"
        return Finding(
            NAME,
            Grade.ADVICE,
            Says(template + ", and nothing there lets air out.", values),
            parts,
            numbers={} if height is None else {"height_m": height},
        )

    def _unanswered(self, body: int, unsure: list[str]) -> Finding:
        heater = heater_of(self.case, body)
        heights = self.case.heights
        # Where no height is told at all there is nothing to look for a shorter way to say it in.
        missing: NameTuple = (
            heights.missing_for(unsure) if heights.is_told else names((tuple(unsure), (".height_m",)))
        )
        says = Says(
            "Whether air can get out at the high points of {thing}'s water rests on what is not known: {missing}.",
            {"thing": self.case.drawing.name(heater), "missing": shortened(missing)},
        )
        return Finding(NAME, Grade.UNANSWERED, says, (heater,), missing=missing, would_be=Grade.ADVICE)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """An air vent at the high point."""
    for part in finding.components:
        for pipe in case.drawing.pipes_of(part):
            by = next(joint for joint in case.drawing.pipes[pipe].joints if joint.part == part)
            fitting = Fitting(case.drawing, case.lines)
            try:
                _fit_vent(case, fitting, by)
            except EditError:
                continue
            says = Says("Fit an air vent at the high point, by {part}.", {"part": case.drawing.name(part)})
            yield Proposal(says, fitting.drawing)
            return


def _fit_vent(case: Case, fitting: Fitting, by: Joint) -> None:
    vent = fitting.tee_off(by, "air_vent", "connection")
    height = case.heights.of(by.part)
    if height is not None:
        # The tee stands right at the part, and the vent upright on it.
        (pipe,) = fitting.drawing.pipes_of(vent)
        tee = next(joint.part for joint in fitting.drawing.pipes[pipe].joints if joint.part != vent)
        fitting.set(tee, "height_m", height)
        fitting.set(vent, "height_m", height)

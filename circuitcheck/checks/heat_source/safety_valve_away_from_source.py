"""Safety valve is not close by the heat source.

Flags: A heat source of a sealed circuit whose nearest safety valve is more than a metre of pipe from its
    flow, or is not on its flow at all but beyond an emitter, a coil or on the return; or one that is
    reached from the flow only through a strainer, a dirt separator or a plate exchanger, which can
    block. Each heat source needs one of its own.
Why: Steam forms in the heat source and leaves at its flow. A valve far off, or beyond a strainer that has
    caught the sludge of years, does not see that pressure in time, or at all.
Remedy: Fit the safety valve on the flow pipe right at the heat source, before any strainer, with a short
    pipe of full bore up to it.
Source: BS EN 12828, 4.6 and BS 5449: in the flow, close to the heat source. The metre: common practice, no
    source.
"""

from __future__ import annotations

import heapq
from collections.abc import Iterator
from dataclasses import dataclass
from math import inf

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import HeatedWater
from circuitcheck.checks.sealed_cures import moved_to_flow
from circuitcheck.checks.sealed_water import flow_of, sealed_with
from circuitcheck.checks.wording import figure, named, shortened, upper
from circuitcheck.circuit.walking import STOPS
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Passage, Role

NAME = "safety-valve-away-from-source"
LIMIT = "heat_source.safety_valve_within_m"
_ROUNDING_M = 1e-9


@dataclass(frozen=True, slots=True)
class _Way:
    """A way from the flow to a safety valve: the metres known, the lengths that are not, what may block."""

    valve: str
    known_m: float
    missing: tuple[str, ...]
    blockers: tuple[str, ...]


def judge(case: Case) -> Verdict:
    """One fault for each heat source of a sealed circuit without a safety valve close by its flow."""
    findings, sound = [], 0
    for water in sealed_with(case, Role.RELIEVES_HEATING):
        limit_m = float(case.limit(LIMIT).value)
        finding = _judged(case, water, limit_m)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _judged(case: Case, water: HeatedWater, limit_m: float) -> Finding | None:
    built_in = [each for each in water.reached(Role.RELIEVES_HEATING) if each.device.built_in]
    if any(valve.part == water.heated.part for valve in built_in):
        return None
    search = _Search(case, water)
    most = search.nearest(unknown_m=inf, through_blockers=False)
    if most is not None and most.known_m <= limit_m + _ROUNDING_M:
        return None
    least = search.nearest(unknown_m=0.0, through_blockers=False)
    if least is not None and least.known_m <= limit_m + _ROUNDING_M:
        return _unanswered(case, water, least)
    blocked = search.nearest(unknown_m=0.0, through_blockers=True)
    return _away(case, water, least, blocked, limit_m)


def _unanswered(case: Case, water: HeatedWater, way: _Way) -> Finding:
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Is {valve} close by {thing}? It rests on what is not known: {missing}.",
            {
                "valve": case.drawing.name(way.valve),
                "thing": case.drawing.name(water.heated.part),
                "missing": shortened(way.missing),
            },
        ),
        components=(water.heated.part, way.valve),
        missing=way.missing,
        would_be=Grade.FAULT,
    )


def _away(
    case: Case, water: HeatedWater, clear: _Way | None, blocked: _Way | None, limit_m: float
) -> Finding:
    by_blocker = (
        blocked is not None
        and bool(blocked.blockers)
        and (clear is None or blocked.known_m <= limit_m + _ROUNDING_M)
    )
    near = blocked if by_blocker or clear is None else clear
    values: dict[str, str | float] = {
        "thing": upper(case.drawing.name(water.heated.part)),
        "limit": figure(limit_m),
    }
    numbers = {"limit_m": limit_m}
    if near is None:
        parts: tuple[str, ...] = tuple(place.part for place in water.reached(Role.RELIEVES_HEATING))
        template = "{thing} has no safety valve on its flow: {valve} stands elsewhere on its water."
        values["valve"] = named(case.drawing, parts)
    elif by_blocker:
        parts = (*near.blockers, near.valve)
        template = "{thing} reaches {valve} from its flow only through {blockers}, which can block."
        values |= {
            "valve": case.drawing.name(near.valve),
            "blockers": named(case.drawing, near.blockers),
        }
    else:
        parts = (near.valve,)
        template = (
            "The safety valve nearest to the flow of {thing}, {valve}, stands {at_least}{length} m of pipe "
            "away, not within {limit} m."
        )
        values["thing"] = case.drawing.name(water.heated.part)
        values["at_least"] = "at least " if near.missing else ""
        values |= {"valve": case.drawing.name(near.valve), "length": figure(near.known_m)}
        numbers["length_m"] = near.known_m
    return Finding(
        NAME,
        Grade.FAULT,
        Says(template, values),
        components=tuple(dict.fromkeys((water.heated.part, *parts))),
        numbers=numbers,
    )


class _Search:
    """The shortest ways by pipe from a heat source's flow to the safety valves on its water."""

    def __init__(self, case: Case, water: HeatedWater) -> None:
        self.case = case
        self.start = flow_of(case, water)
        self.valves = {
            Joint(place.part, place.device.port): place.part
            for place in water.reached(Role.RELIEVES_HEATING)
            if not place.device.built_in
        }

    def nearest(self, *, unknown_m: float, through_blockers: bool) -> _Way | None:
        """The nearest safety valve, a pipe of unknown length taken as that long; None for none."""
        todo: list[tuple[float, int, Joint, tuple[str, ...], tuple[str, ...]]] = [
            (0.0, 0, self.start, (), ())
        ]
        seen: set[Joint] = set()
        number = 0
        while todo:
            length_m, _, here, missing, blockers = heapq.heappop(todo)
            if here in seen or length_m == inf:
                continue
            seen.add(here)
            if here in self.valves:
                return _Way(self.valves[here], length_m, missing, blockers)
            for there, more_m, lacks, blocker in self._onward(here, unknown_m, through_blockers):
                number += 1
                heapq.heappush(
                    todo, (length_m + more_m, number, there, (*missing, *lacks), (*blockers, *blocker))
                )
        return None

    def _onward(
        self, here: Joint, unknown_m: float, through_blockers: bool
    ) -> Iterator[tuple[Joint, float, tuple[str, ...], tuple[str, ...]]]:
        drawing = self.case.drawing
        pipe = drawing.joined.get(here)
        if pipe is not None:
            length = self.case.length_m(pipe)
            more_m = unknown_m if length is None else length.value
            lacks = (f"{pipe}.length_m",) if length is None else ()
            for far in drawing.pipes[pipe].joints:
                if far != here:
                    yield far, more_m, lacks, ()
        for there, blocks in self._through(here):
            if through_blockers or not blocks:
                yield there, 0.0, (), (here.part,) if blocks else ()

    def _through(self, here: Joint) -> Iterator[tuple[Joint, bool]]:
        """The ports that the flow's pressure reaches through a part, and whether that way can block."""
        plan = self.case.circuit.plans[here.part]
        roles = {device.role for device in plan.devices}
        if here.part == self.start.part or Role.HEATS in roles or Role.SEPARATES in roles:
            return
        blocks = Role.CAN_BLOCK in roles
        for passage in plan.passages:
            if here.port in (passage.a, passage.b) and self._passes(passage, blocks):
                yield Joint(here.part, passage.b if here.port == passage.a else passage.a), blocks

    @staticmethod
    def _passes(passage: Passage, blocks: bool) -> bool:
        return not (passage.gap or passage.pressure_way in STOPS or (passage.gives_heat and not blocks))


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The safety valve moved to a tee in the flow pipe, right at the heat source."""
    return moved_to_flow(case, finding, Role.RELIEVES_HEATING)

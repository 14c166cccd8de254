"""Plastic pipe too close to a heat source.

Flags: Plastic pipe on the flow or return within a metre of a heat source, measured along the pipe;
    exactly a metre passes. Where the heat cannot be switched off, plastic that is joined to the heat
    source with no metal pipe between is a danger. Beyond an emitter, a coil or an exchanger the water
    has cooled, and nothing is measured there.
Why: Close by the burner the pipe takes heat from the metal, and water far above the flow's setting when
    the pump stops or the thermostat fails. Plastic softens under pressure well below the boiling point
    and gives way; a fire's water boils, and a burst pipe then empties steam into the room.
Remedy: Run the first metre from the heat source in copper or steel; from an uncontrolled heat source,
    run the whole of the loop that takes its heat away in metal.
Source: BS 5955-8, plastic pipework for hot water and heating (from memory); else common practice, no
    source.
"""

from __future__ import annotations

import heapq
from collections.abc import Iterator
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.wording import figure, named, shortened, upper
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word

NAME = "plastic-near-heat-source"

LIMIT = "heat_source.metal_pipe_m"
_ROUNDING_M = 1e-9


def judge(case: Case) -> Verdict:
    """One finding for each heat source with plastic pipe too near."""
    heats = case.circuit.devices(Role.HEATS)
    if not heats:
        return Verdict()
    limit_m = float(case.limit(LIMIT).value)
    findings, sound = [], 0
    not_metal = _not_metal(case)
    for place in heats:
        near = _Near(case, place.part, limit_m, not_metal)
        if not near.starts:
            continue
        finding = _judge(case, near, limit_m)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _not_metal(case: Case) -> frozenset[str]:
    """The pipes that are plastic, or of a material that is not known."""
    pipes = case.drawing.pipes
    return frozenset(
        id
        for id in case.told_pipes
        if "material" in pipes[id].data and case.pipe_value(id, "material") in ("plastic", None)
    )


@dataclass(frozen=True, slots=True)
class _Reached:
    """A pipe, how far along the pipe it begins at least, and the lengths on the way not known.

    `direct`: no pipe on the way is known to be metal; `all_plastic`: all of them are known to be plastic.
    """

    pipe: str
    from_m: float
    unknown: tuple[str, ...]
    direct: bool
    all_plastic: bool


class _Near:
    """The pipes that begin within the limit of a heat source's flow or return, nearest first."""

    def __init__(self, case: Case, heat: str, limit_m: float, not_metal: frozenset[str]) -> None:
        self.case, self.heat, self.limit_m = case, heat, limit_m
        self.not_metal = not_metal
        joints = [Joint(heat, port) for port in ("flow", "return")]
        self.starts = [joint for joint in joints if joint in case.drawing.joined]
        self.plastic: list[_Reached] = []
        self.unknown_material: list[_Reached] = []
        # Sure ways first: by a way whose lengths are all known plastic is near for certain.
        self._walk(known_only=True)
        if not_metal:
            self._walk(known_only=False)

    def _walk(self, *, known_only: bool) -> None:
        case = self.case
        told = {each.pipe for each in (*self.plastic, *self.unknown_material)}
        todo: list[tuple[float, int, Joint, tuple[str, ...], bool, bool]] = []
        for number, joint in enumerate(self.starts):
            todo.append((0.0, number, joint, (), True, True))
        seen: set[str] = set()
        number = len(todo)
        while todo:
            from_m, _, joint, unknown, direct, all_plastic = heapq.heappop(todo)
            pipe = case.drawing.joined.get(joint)
            if pipe is None or pipe in seen or from_m >= self.limit_m - _ROUNDING_M:
                continue
            seen.add(pipe)
            material = case.pipe_value(pipe, "material") if known_only or pipe in self.not_metal else "copper"
            if pipe in self.not_metal and pipe not in told:
                into = self.plastic if material == "plastic" else self.unknown_material
                into.append(_Reached(pipe, from_m, unknown, direct, all_plastic))
            length = case.length_m(pipe)
            if length is None and known_only:
                continue
            end_m = from_m + (0.0 if length is None else length.value)
            lacking = unknown if length is not None else (*unknown, f"{pipe}.length_m")
            way = (lacking, direct and pipe in self.not_metal, all_plastic and material == "plastic")
            for far in case.drawing.pipes[pipe].joints:
                if far == joint:
                    continue
                for onward in self._beyond(far):
                    number += 1
                    heapq.heappush(todo, (end_m, number, onward, *way))

    def _beyond(self, joint: Joint) -> Iterator[Joint]:
        """The other ports that water reaches through a part, but for one that gives its heat away."""
        part, port = joint
        if part == self.heat:
            return
        seen, todo = {port}, [port]
        while todo:
            here = todo.pop()
            for passage in self.case.circuit.plans[part].passages:
                if passage.gap or passage.gives_heat or here not in (passage.a, passage.b):
                    continue
                there = passage.b if here == passage.a else passage.a
                if there not in seen:
                    seen.add(there)
                    todo.append(there)
                    yield Joint(part, there)


def _judge(case: Case, near: _Near, limit_m: float) -> Finding | None:
    heat = case.value(near.heat, "heat") if near.plastic or near.unknown_material else "switched"
    sure = [each for each in near.plastic if not each.unknown]
    direct = [each for each in near.plastic if each.all_plastic]
    if heat == "uncontrolled" and direct:
        return _found(case, near, Grade.DANGER, direct, limit_m)
    unsure = [each for each in (*near.plastic, *near.unknown_material) if each not in sure]
    may_be_danger = heat is None and any(each.direct for each in (*near.plastic, *near.unknown_material))
    may_be_danger |= heat == "uncontrolled" and any(each.direct for each in unsure)
    if sure and not may_be_danger:
        return _found(case, near, Grade.FAULT, sure, limit_m)
    if not sure and not unsure:
        return None
    missing = [name for each in unsure for name in each.unknown]
    missing += [f"{each.pipe}.material" for each in near.unknown_material]
    if may_be_danger and heat is None:
        missing.append(f"{near.heat}.heat")
    return _unanswered(case, near, tuple(dict.fromkeys(missing)), may_be_danger)


def _found(case: Case, near: _Near, grade: Grade, reached: list[_Reached], limit_m: float) -> Finding:
    nearest = min(reached, key=lambda each: each.from_m)
    pipes = tuple(each.pipe for each in reached)
    values: dict[str, str | float] = {
        "pipes": upper(named(case.drawing, pipes)),
        "thing": case.drawing.name(near.heat),
        "from": figure(nearest.from_m),
        "limit": figure(limit_m),
        "are": a_word("are") if len(pipes) > 1 else a_word("is"),
    }
    if grade is Grade.DANGER:
        template = "{pipes} {are} plastic and joined to {thing}, which cannot be switched off, with no metal between."
    elif nearest.direct:
        template = "{pipes} {are} plastic and joined to {thing}: the first {limit} m must be metal."
    else:
        template = (
            "{pipes} {are} plastic, {from} m from {thing} along the pipe: the first {limit} m must be metal."
        )
    return Finding(
        NAME,
        grade,
        Says(template, values),
        (near.heat,),
        pipes=pipes,
        numbers={"from_m": nearest.from_m, "limit_m": limit_m},
    )


def _unanswered(case: Case, near: _Near, missing: tuple[str, ...], may_be_danger: bool) -> Finding:
    says = Says(
        "Whether plastic pipe is too near {thing} rests on what is not known: {missing}.",
        {"thing": case.drawing.name(near.heat), "missing": shortened(missing)},
    )
    return Finding(
        NAME,
        Grade.UNANSWERED,
        says,
        (near.heat,),
        pipes=tuple(each.pipe for each in (*near.plastic, *near.unknown_material)),
        missing=missing,
        would_be=Grade.DANGER if may_be_danger else Grade.FAULT,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Run the pipes too near in copper."""
    drawing = case.drawing
    for pipe in finding.pipes:
        drawing = set_field(drawing, pipe, "material", "copper")
    says = Says("Run {pipes} in copper.", {"pipes": named(drawing, finding.pipes)})
    yield Proposal(says, drawing)

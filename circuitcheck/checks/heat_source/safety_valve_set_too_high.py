"""Safety valve is set higher than what it protects can bear.

Flags: A safety valve of a sealed circuit set above the highest pressure that a heat source, a vessel or a
    coil on its water is made for. One that is built in and states no setting is taken as set at what
    its heat source is made for.
Why: The valve is there to open before anything breaks. Set above what the weakest part can bear, it
    watches that part burst: the pressure that should have lifted it is never reached.
Remedy: Fit a safety valve set no higher than the weakest part on its water is made for, or replace that
    part by one made for more.
Source: BS EN 12828, 4.6.2 (from memory): no part of the system may see more than it is made for; 3 bar is usual
    in dwellings (BS 5449).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import HeatedWater
from circuitcheck.checks.sealed_water import sealed_with
from circuitcheck.checks.wording import figure, named, shortened, upper
from circuitcheck.circuit.joining import Placed
from circuitcheck.drawing.edits import set_field
from circuitcheck.figures.expansion import safety_valve_field, safety_valve_set_bar
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import worded

NAME = "safety-valve-set-too-high"
_MADE_FOR = (
    (Role.HEATS, "maximum_pressure_bar"),
    (Role.HOLDS_EXPANSION, "maximum_pressure_bar"),
    (Role.HEATED_BY_COIL, "coil_maximum_pressure_bar"),
)


def judge(case: Case) -> Verdict:
    """One danger for each safety valve that is set above what something on its water is made for."""
    findings: list[Finding] = []
    sound = 0
    seen: set[str] = set()
    for water in sealed_with(case, Role.RELIEVES_HEATING):
        limits = _limits(case, water)
        for valve in water.reached(Role.RELIEVES_HEATING):
            if valve.part in seen:
                continue
            seen.add(valve.part)
            finding = _judged(case, valve, limits)
            if finding is None:
                sound += 1
            else:
                findings.append(finding)
    return Verdict(tuple(findings), sound)


Limits = dict[tuple[str, str], float | None]


def _limits(case: Case, water: HeatedWater) -> Limits:
    """The highest pressure of each part on this water, by part and field."""
    found: Limits = {}
    for role, field in _MADE_FOR:
        for place in water.reached(role):
            if not (role is Role.HOLDS_EXPANSION and place.device.built_in):
                found[place.part, field] = case.value(place.part, field)
    return found


def _judged(case: Case, valve: Placed, limits: Limits) -> Finding | None:
    setting = safety_valve_set_bar(case, valve)
    known = {part: limit for (part, _), limit in limits.items() if limit is not None}
    weak = {part: limit for part, limit in known.items() if setting is not None and setting > limit}
    if setting is not None and weak:
        lowest = min(weak.values())
        weakest = tuple(sorted(weak, key=lambda part: weak[part]))
        return Finding(
            NAME,
            Grade.DANGER,
            Says(
                "{valve} opens at {setting} bar; {weak} must not see more than {lowest} bar.",
                {
                    "valve": upper(case.drawing.name(valve.part)),
                    "setting": figure(setting),
                    "weak": named(case.drawing, [part for part in weakest if weak[part] == lowest]),
                    "lowest": figure(lowest),
                },
            ),
            components=tuple(dict.fromkeys((valve.part, *weakest))),
            numbers={"set_pressure_bar": setting, "lowest_maximum_bar": lowest},
        )
    missing = [] if setting is not None else [safety_valve_field(valve)]
    missing += [f"{part}.{field}" for (part, field), limit in limits.items() if limit is None]
    if not missing:
        return None
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Does {valve} open before anything it protects is overstrained? It rests on what is not known: "
            "{missing}.",
            {"valve": case.drawing.name(valve.part), "missing": shortened(tuple(missing))},
        ),
        components=(valve.part,),
        missing=tuple(missing),
        would_be=Grade.DANGER,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A valve set at the lowest of the limits."""
    lowest = finding.numbers.get("lowest_maximum_bar")
    for valve in case.circuit.devices(Role.RELIEVES_HEATING):
        if lowest is not None and valve.part == finding.components[0]:
            name = case.drawing.name(valve.part)
            name = worded("the safety valve in {part}", part=name) if valve.device.built_in else name
            says = Says("Fit {valve} set at {lowest} bar.", {"valve": name, "lowest": figure(lowest)})
            field = safety_valve_field(valve).rpartition(".")[2]
            yield Proposal(says, set_field(case.drawing, valve.part, field, lowest))

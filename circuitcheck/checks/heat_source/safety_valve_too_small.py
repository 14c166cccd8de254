"""Safety valve is too small for the heat.

Flags: The heat sources on one sealed water give more heat, at their full output, than its safety valves can
    blow off together. A valve that is built into a heat source is taken as large enough for that heat
    source and for no other. Behind a heat exchanger the whole output of the heat sources counts.
Why: When everything else has failed the heat source boils, and all its heat leaves as steam through the
    safety valve. A valve that can pass less than is made opens and the pressure climbs all the same.
Remedy: Fit a safety valve whose stated capacity in kW is at least the output of all heat sources on its
    water, or one more valve beside each heat source.
Source: BS EN 12828, 4.6.2.2 (from memory): the safety valve passes the whole output of its heat generator; capacities
    to BS EN ISO 4126-1.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import HeatedWater
from circuitcheck.checks.sealed_water import sealed_with
from circuitcheck.checks.wording import figure, named, shortened, upper
from circuitcheck.drawing.edits import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "safety-valve-too-small"


def judge(case: Case) -> Verdict:
    """One danger for each sealed body of heated water whose safety valves pass less than is heated."""
    findings, sound = [], 0
    for water in sealed_with(case, Role.RELIEVES_HEATING):
        finding = _judged(case, water)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _sources(case: Case, water: HeatedWater) -> tuple[str, ...]:
    """The heat sources whose heat comes into this water and that have no safety valve of their own."""
    sources = case.circuit.devices(Role.HEATS)
    if water.heated.by_exchanger:
        return tuple(place.part for place in sources)
    valves = case.circuit.devices(Role.RELIEVES_HEATING)
    own = {valve.part for valve in valves if valve.device.built_in}
    return tuple(place.part for place in water.reached(Role.HEATS) if place.part not in own)


def _judged(case: Case, water: HeatedWater) -> Finding | None:
    sources = _sources(case, water)
    valves = [each.part for each in water.reached(Role.RELIEVES_HEATING) if not each.device.built_in]
    if not sources:
        return None
    outputs = {part: case.value(part, "output_kw") for part in sources}
    capacities = {part: case.value(part, "capacity_kw") for part in valves}
    output = sum(each for each in outputs.values() if each is not None)
    capacity = sum(each for each in capacities.values() if each is not None)
    no_output = tuple(f"{part}.output_kw" for part, each in outputs.items() if each is None)
    no_capacity = tuple(f"{part}.capacity_kw" for part, each in capacities.items() if each is None)
    thing = water.heated.part
    parts = tuple(dict.fromkeys((thing, *valves, *sources)))
    if not no_capacity and output > capacity * (1 + 1e-9):
        blow = (
            "{valves} can blow off {capacity} kW"
            if valves
            else "the safety valves built in serve only their own"
        )
        return Finding(
            NAME,
            Grade.DANGER,
            Says(
                "{sources} can give {output} kW to this water, and " + blow + ".",
                {
                    "sources": upper(named(case.drawing, sources)),
                    "output": figure(output),
                    "valves": named(case.drawing, valves),
                    "capacity": figure(capacity),
                },
            ),
            components=parts,
            numbers={"output_kw": output, "capacity_kw": capacity},
        )
    if not no_output and output <= capacity * (1 + 1e-9):
        return None
    missing = (*no_output, *no_capacity)
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Can {valves} blow off all the heat of {sources}? It rests on what is not known: {missing}.",
            {
                "valves": named(case.drawing, valves),
                "sources": named(case.drawing, sources),
                "missing": shortened(missing),
            },
        ),
        components=parts,
        missing=missing,
        would_be=Grade.DANGER,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A valve that passes the heat the others leave, in place of each valve there is."""
    output, capacity = finding.numbers.get("output_kw"), finding.numbers.get("capacity_kw")
    if output is None or capacity is None:
        return
    for valve in case.circuit.devices(Role.RELIEVES_HEATING):
        if valve.part in finding.components and not valve.device.built_in:
            needed = output - capacity + case.value(valve.part, "capacity_kw")
            says = Says(
                "Fit {valve} with a capacity of {needed} kW at least.",
                {"valve": case.drawing.name(valve.part), "needed": figure(needed)},
            )
            yield Proposal(says, set_field(case.drawing, valve.part, "capacity_kw", needed))

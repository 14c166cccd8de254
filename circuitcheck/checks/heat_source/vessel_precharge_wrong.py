"""Expansion vessel is charged wrongly.

Flags: A vessel charged to less than the height of water above it plus the safety margin (a tenth of a
    bar under that still passes), or to more than the pressure the circuit is filled to. Charged to just
    the fill pressure it is advice: the vessel then holds no water in reserve.
Why: The charge is the gas that pushes water back as the circuit cools. With too little, the vessel is
    full of water before anything is heated, and has no room left for the swell. With too much, no water
    gets in until the pressure is above the charge, so it holds no reserve: the first litre that is lost
    leaves the top radiators short of water and draws in air.
Remedy: With the circuit empty of pressure at the vessel, set the charge to the static height (0.0981 bar a
    metre) plus the margin, and fill the circuit to a little more than that.
Source: BS EN 12828, Annex D (from memory): charge at least static height, vapour and 0.3 bar; BS 7074-1: not
    less than the static head. The tenth of a bar: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import isfinite

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.heating_water import heating_bodies
from circuitcheck.checks.reserve import FILL, fill_for
from circuitcheck.checks.sealed_cures import rounded_up
from circuitcheck.checks.sealed_water import sealed_with
from circuitcheck.checks.wording import figure, shortened, upper
from circuitcheck.drawing.edits import set_design, set_field
from circuitcheck.figures.expansion import (
    PRECHARGE_TOLERANCE_BAR,
    Vessel,
    expansion_of,
    vessel_fields,
)
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import within
from circuitcheck.told import worded

NAME = "vessel-precharge-wrong"
_ROUNDING = 1e-9


def judge(case: Case) -> Verdict:
    """One finding for each vessel on sealed heated water that is charged wrongly."""
    findings: list[Finding] = []
    sound = 0
    seen: set[str] = set()
    filled = set(heating_bodies(case))  # a store that is heated directly is filled by the main
    for water in sealed_with(case, Role.HOLDS_EXPANSION):
        if water.heated.body not in filled:
            continue
        expansion = expansion_of(case, water.heated)
        fields = {place.part: vessel_fields(place)[1] for place in water.reached(Role.HOLDS_EXPANSION)}
        for vessel in expansion.vessels:
            if vessel.part in seen:
                continue
            seen.add(vessel.part)
            finding = _judged(case, vessel, f"{vessel.part}.{fields[vessel.part]}")
            if finding is None:
                sound += 1
            else:
                findings.append(finding)
    return Verdict(tuple(findings), sound)


def _judged(case: Case, vessel: Vessel, field: str) -> Finding | None:
    charge, least, fill = vessel.set_bar, vessel.least_bar, case.design("fill_pressure_bar")
    if charge is not None:
        if fill is not None and charge > fill + _ROUNDING:
            return _wrong(
                case,
                vessel,
                Grade.FAULT,
                "{vessel} is charged to {charge} bar, above the {fill} bar the circuit is filled to: "
                "it holds no water in reserve.",
            )
        if charge < least.low - PRECHARGE_TOLERANCE_BAR - _ROUNDING:
            return _wrong(
                case,
                vessel,
                Grade.FAULT,
                "{vessel} is charged to {charge} bar and needs {least} bar to carry the water above it.",
            )
        if fill is not None and charge >= least.high - PRECHARGE_TOLERANCE_BAR - _ROUNDING:
            if charge < fill - _ROUNDING:
                return None
            return _wrong(
                case,
                vessel,
                Grade.ADVICE,
                "{vessel} is charged to just the {fill} bar that the circuit is filled to: it holds no "
                "water in reserve.",
            )
    missing = tuple(
        dict.fromkeys(
            (
                *((field,) if charge is None else ()),
                *least.missing,
                *(("design.fill_pressure_bar",) if fill is None else ()),
            )
        )
    )
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Is {vessel} charged as it must be? It rests on what is not known: {missing}.",
            {"vessel": case.drawing.name(vessel.part), "missing": shortened(missing)},
        ),
        components=(vessel.part,),
        missing=missing,
        would_be=Grade.FAULT,
    )


def _wrong(case: Case, vessel: Vessel, grade: Grade, template: str) -> Finding:
    fill = case.design("fill_pressure_bar")
    numbers = {
        "precharge_bar": vessel.set_bar,
        "least_precharge_bar": vessel.least_bar.low,
        "fill_pressure_bar": fill,
    }
    known = {name: value for name, value in numbers.items() if value is not None and isfinite(value)}
    if not vessel.least_bar.known:
        known.pop("least_precharge_bar", None)
    return Finding(
        NAME,
        grade,
        Says(
            template,
            {
                "vessel": upper(case.drawing.name(vessel.part)),
                "charge": figure(vessel.set_bar or 0.0),
                "least": figure(vessel.least_bar.low),
                "fill": "" if fill is None else figure(fill),
            },
        ),
        components=(vessel.part,),
        numbers=known,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The least charge that is right, to a hundredth of a bar upwards; then with the fill that gives the
    vessel its reserve at that charge."""
    least, part = finding.numbers.get("least_precharge_bar"), finding.components[0]
    if least is None:
        return
    right = rounded_up(least)
    for place in case.circuit.devices(Role.HOLDS_EXPANSION):
        if place.part == part:
            name = case.drawing.name(part)
            name = worded("the vessel in {part}", part=name) if place.device.built_in else name
            says = Says("Charge {vessel} to {right} bar.", {"vessel": name, "right": figure(right)})
            charged = set_field(case.drawing, part, vessel_fields(place)[1], right)
            yield Proposal(says, charged)
            fill, stated = fill_for(case, part, right), case.design(FILL)
            if fill is None or stated is None or within(fill, stated):
                continue
            says = Says(
                "Charge {vessel} to {right} bar and fill the cold circuit to {fill} bar.",
                {**says.values, "fill": figure(rounded_up(fill))},
            )
            yield Proposal(says, set_design(charged, FILL, rounded_up(fill)))

"""Circuit is filled too low for its vessel to hold a reserve.

Flags: Sealed heating water whose fill pressure pushes less water into the vessels than the reserve they
    should hold when all is cold: a fifth of a vessel up to 15 litres; of larger ones 0.5 % of the
    circuit's water, and 3 litres at least. So 12 litres charged to 0.8 bar want a fill of 1.25 bar: the
    1 bar that is often taken out of habit leaves half of the reserve. It is advice. A fill pressure
    that is no higher than the charge is told by the check of the charge, and vessels that are too small
    by the check of their size.
Why: Every sealed circuit loses a little water: air is let out, a joint weeps, a valve drips. The reserve
    in the vessel makes up for it. Where there is next to none, the pressure is gone after the first
    bleeding of a radiator, and the house is cold until somebody fills the circuit again.
Remedy: Fill the cold circuit to the pressure named, as long as that leaves room for the swell; where it
    does not, charge the vessel less or fit a larger one.
Source: BS EN 12828:2012, Annex D (method and numbers from memory); Boyle's law where there are several
    vessels.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import isfinite

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.reserve import FILL, reserve_of
from circuitcheck.checks.sealed_cures import rounded_up
from circuitcheck.checks.wording import each_once, figure, listed, shortened, upper
from circuitcheck.drawing.edits import set_design
from circuitcheck.figures.expansion import Bounds, expansion_of, vessel_fields
from circuitcheck.figures.heated_water import HeatedWater, sealed_waters
from circuitcheck.finding import Finding, Grade, NameTuple, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import within
from circuitcheck.sizing.vessel import least_fill_bar, room_share
from circuitcheck.told import a_word, worded

NAME = "fill-pressure-below-reserve"


def judge(case: Case) -> Verdict:
    """One piece of advice for each sealed heating water whose vessels hold too little when cold."""
    findings: list[Finding] = []
    sound = 0
    for water in sealed_waters(case) if case.circuit.devices(Role.HOLDS_EXPANSION) else ():
        if not water.reached(Role.HOLDS_EXPANSION):
            continue
        case.rests_on_pressure_ways(water.reach)
        finding, judged = _judged(case, water)
        findings += [] if finding is None else [finding]
        sound += judged and finding is None
    return Verdict(tuple(findings), sound)


def _judged(case: Case, water: HeatedWater) -> tuple[Finding | None, bool]:
    """What is found, and whether anything was judged here."""
    places = water.reached(Role.HOLDS_EXPANSION)
    fill = case.design(FILL)
    known: list[tuple[float, float]] = []
    missing = [f"design.{FILL}"] if fill is None else []
    for place in places:
        fields = vessel_fields(place)
        volume, charge = (case.value(place.part, field) for field in fields)
        missing += [
            f"{place.part}.{field}"
            for field, value in zip(fields, (volume, charge), strict=True)
            if value is None
        ]
        if charge is not None and fill is not None and within(fill, charge):
            return None, False
        if volume is not None and charge is not None:
            known.append((float(volume), float(charge)))
    content = case.contents.of(water.body)
    expansion = expansion_of(case, water.heated[0])
    if not expansion.reckoned(content, expansion.vessels, best=True).serves:
        return None, False
    if missing:
        # The content only matters above what is held, which is not known.
        return _unanswered(case, water, missing, content.missing), True
    held = sum(volume * room_share(charge, fill) for volume, charge in known)
    reserve = reserve_of(case, water, sum(volume for volume, _ in known))
    if not within(reserve.low, held):
        return _finding(case, water, known, held, reserve), True
    if not within(reserve.high, held):
        return _unanswered(case, water, reserve.missing), True
    return None, True


def _parts(water: HeatedWater) -> tuple[str, ...]:
    vessels = (place.part for place in water.reached(Role.HOLDS_EXPANSION))
    return tuple(dict.fromkeys((water.parts[0], *vessels)))


def _finding(
    case: Case, water: HeatedWater, vessels: list[tuple[float, float]], held: float, reserve: Bounds
) -> Finding:
    fill, least = float(case.design(FILL)), least_fill_bar(vessels, reserve.low)
    name = case.drawing.name
    places = [
        worded("the vessel in {part}", part=name(place.part)) if place.device.built_in else name(place.part)
        for place in water.reached(Role.HOLDS_EXPANSION)
    ]
    template = "Filled cold to {fill} bar, {vessels} {holds} {held} l of water and should hold {reserve} l in reserve"
    template += ": that takes {least} bar." if isfinite(least) else "."
    says = Says(
        template,
        {
            "fill": figure(fill),
            "vessels": listed(places),
            "holds": a_word("holds") if len(places) == 1 else a_word("hold"),
            "held": figure(held),
            "reserve": figure(reserve.low),
            "least": figure(least),
        },
    )
    numbers = {"fill_pressure_bar": fill, "held_l": held, "reserve_l": reserve.low}
    numbers |= {"least_fill_pressure_bar": least} if isfinite(least) else {}
    return Finding(NAME, Grade.ADVICE, says, _parts(water), numbers=numbers)


def _unanswered(case: Case, water: HeatedWater, missing: Sequence[str], more: NameTuple = ()) -> Finding:
    fields = each_once(missing, more)
    says = Says(
        "{thing}: whether its vessel holds a reserve when cold rests on what is not known: {missing}.",
        {"thing": upper(case.drawing.name(water.parts[0])), "missing": shortened(fields)},
    )
    return Finding(NAME, Grade.UNANSWERED, says, _parts(water), missing=fields, would_be=Grade.ADVICE)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The circuit filled to the least pressure that serves, to a hundredth of a bar upwards."""
    least = finding.numbers.get("least_fill_pressure_bar")
    if least is None:
        return
    right = rounded_up(least)
    says = Says("Fill the cold circuit to {right} bar.", {"right": figure(right)})
    yield Proposal(says, set_design(case.drawing, FILL, right))

"""Store's vessel is too small for its water.

Flags: A mains-fed store whose vessels, charged as they are, cannot take up the swell of its water from
    cold to its thermostat's setting between the reducing valve's pressure and 0.8 of the expansion relief
    valve's. A secondary circuit of more than 10 litres is added. Several stores on one water share their
    vessels. A store with internal expansion is left out.
Why: The gas in a vessel is squeezed as water comes in. If the vessel is too small, or charged too high
    or too low, the pressure reaches the expansion relief valve before the water is hot, and the valve
    weeps at every heating.
Remedy: Fit a larger vessel, or charge it from 0.2 bar below the reducing valve's setting to equal.
Source: The gas law (Boyle) on absolute pressures; the final pressure of 0.8 of the relief valve after
    BS EN 806-2 (from memory); the 10 litres and the charge are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_cures import with_larger_vessel
from circuitcheck.checks.store_swell import FILL_TEMPERATURE, Known, Pressure, Shared, shared_waters
from circuitcheck.checks.store_water import unanswered
from circuitcheck.checks.wording import figure, listed, named, upper
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import within
from circuitcheck.sizing.store_vessel import next_size_l, taken_l, vessel_for

NAME = "store-vessel-too-small"

LEAST_BETWEEN_BAR = 1e-3
"""Less is a slip of rounding between two pressures that are the same."""

NOT_KNOWN = "{thing}: whether its vessel is large enough rests on what is not known: {missing}."


@dataclass(frozen=True, slots=True)
class Between:
    """The pressures between which the vessels work, in bar."""

    fill: float
    final: float


def judge(case: Case) -> Verdict:
    """One fault for each water of mains-fed stores whose vessels cannot take up its swell."""
    findings, sound = [], 0
    for shared in shared_waters(case) if case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE) else ():
        fill, relief = shared.fill, shared.relief
        if not shared.vessels or fill is None or relief is None:
            continue
        if all(case.value(store, "internal_expansion") for store in shared.stores):
            continue
        case.rests_on_pressure_ways(shared.waters[0].reach)
        finding = _judged(case, shared, fill, relief)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _judged(case: Case, shared: Shared, fill: Pressure, relief: Pressure) -> Finding | None:
    swell = shared.swell
    missing = [*swell.missing, *fill.missing, *relief.missing]
    parts = (*shared.stores, *shared.vessels)
    if fill.bar is None or relief.bar is None:
        missing += _vessels(case, shared.vessels, None).missing
        return unanswered(case, NAME, NOT_KNOWN, parts, missing, Grade.FAULT)
    between = Between(fill.bar, case.limit("store.vessel_final_share_of_relief").value * relief.bar)
    taken = _vessels(case, shared.vessels, between)
    missing += taken.missing
    if taken.most is not None and not within(swell.least, taken.most):
        return _finding(case, shared, between, swell.least, taken.most)
    sure = swell.most is not None and within(swell.most, taken.least) and not relief.missing
    return None if sure else unanswered(case, NAME, NOT_KNOWN, parts, missing, Grade.FAULT)


def _vessels(case: Case, vessels: tuple[str, ...], between: Between | None) -> Known:
    """Litres that the vessels take up together. A charge that is not known takes up most where it
    equals the reducing valve's setting, and nothing where it is wide of it."""
    least, most, missing = 0.0, 0.0, list[str]()
    unbounded = between is None
    for vessel in vessels:
        volume, charge = case.value(vessel, "volume_l"), case.value(vessel, "precharge_bar")
        missing += [f"{vessel}.volume_l"] if volume is None else []
        missing += [f"{vessel}.precharge_bar"] if charge is None else []
        unbounded |= volume is None
        if volume is None or between is None:
            continue
        best = taken_l(volume, between.fill if charge is None else charge, between.fill, between.final)
        most += best
        least += 0.0 if charge is None else best
    return Known(least, None if unbounded else most, tuple(missing))


def _finding(case: Case, shared: Shared, between: Between, swell: float, taken: float) -> Finding:
    charges = [case.value(vessel, "precharge_bar") for vessel in shared.vessels]
    hot = [case.value(store, "thermostat_c") for store in shared.stores]
    cold = float(case.design(FILL_TEMPERATURE))
    # Where hardly any pressure is left to work between, no vessel does, and no size is told.
    works = between.final - between.fill > LEAST_BETWEEN_BAR
    needed = vessel_for(swell, between.fill, between.fill, between.final).volume_l if works else None
    size = None if needed is None else next_size_l(needed)
    values: dict[str, str | float] = {
        "thing": upper(named(case.drawing, shared.vessels)),
        "stores": named(case.drawing, shared.stores),
        "taken": figure(taken if works else 0.0),
        "swell": figure(swell),
        "fill": figure(between.fill),
        "final": figure(between.final),
        "cold": figure(cold),
        "hot": listed(figure(each) for each in hot if each is not None),
    }
    template = (
        "{thing} takes up {taken} l between {fill} bar and {final} bar, and the water of {stores} swells by "
        "{swell} l from {cold} °C to {hot} °C."
    )
    numbers = {
        "swell_l": swell,
        "taken_l": taken if works else 0.0,
        "fill_pressure_bar": between.fill,
        "final_pressure_bar": between.final,
        "fill_temperature_c": cold,
        "hot_temperature_c": max(float(each) for each in hot if each is not None),
    }
    if all(charge is not None for charge in charges):
        values["charge"] = listed(figure(charge) for charge in charges)
        numbers["precharge_bar"] = float(charges[0])
        template += " It is charged at {charge} bar."
    if needed is not None:
        values["needed"] = figure(needed)
        numbers["needed_l"] = needed
        template += " A vessel charged at {fill} bar must hold {needed} l"
        template += ", so {size} l is the next size made." if size is not None else "."
        values |= {} if size is None else {"size": figure(size)}
    parts = (*shared.stores, *shared.vessels)
    return Finding(NAME, Grade.FAULT, Says(template, values), parts, numbers=numbers)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A charge that fits the reducing valve, or the next size of vessel that will do."""
    yield from with_larger_vessel(case, finding.components[0])

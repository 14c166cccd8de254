"""The main is too weak for what it feeds.

Flags: A main whose running flow is below the design flow of the outlets it feeds, by their loading
    units; or whose running pressure, less the height to an outlet, is below 1 bar there; or that
    feeds a mains-fed store with less than 1.5 bar or 20 l/min. Losses in the pipes come on top and
    are not counted. Outlets fed from a cistern need nothing of the main.
Why: A mains-fed store gives no more than the main does: on a weak main two taps open at once starve
    each other, the shower runs hot and cold, and a heater that needs a least flow goes out.
Remedy: Renew or enlarge the service pipe; or add a break tank with a pump set, or an accumulator; or
    keep a store fed from a cistern.
Source: EN 806-3:2006, Table 2 (loading units); its Annex B for the design flow and 1 bar at the outlet
    (both from memory). NHBC Standards 8.1.5 (1.5 bar); 20 l/min: common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.supplying import supplies
from circuitcheck.checks.wording import figure, upper
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.rules.book import NoRuleError
from circuitcheck.sizing.demand import design_flow_l_s, l_min, total_units
from circuitcheck.sizing.vessel import static_bar

NAME = "main-too-weak"
ROUNDING = 1e-9

TOO_LITTLE = "It gives {flow} l/min where {need} l/min are needed."
TOO_LOW = "It runs at {running} bar where a mains-fed store needs {for_store} bar."
TOO_HIGH_UP = "{outlet}, {rise} m above it, is left with {left} bar where {least} bar are needed."


@dataclass(slots=True)
class _Wants:
    """What a main falls short of, what is missing to say so, and the numbers."""

    short: list[str] = field(default_factory=list)
    values: dict[str, str | float] = field(default_factory=dict)
    missing: list[str] = field(default_factory=list)
    parts: list[str] = field(default_factory=list)
    numbers: dict[str, float] = field(default_factory=dict)


def judge(case: Case) -> Verdict:
    """One fault for each main that gives less than its outlets and stores need."""
    ways = supplies(case)
    findings, sound = [], 0
    for main in ways.mains:
        reached = ways.mains_water([main])
        outlets = [
            place.part
            for place in ways.outlets
            if Joint(place.part, place.device.port) in reached
            or Joint(place.part, place.device.other) in reached
        ]
        stores = [
            place.part
            for place in case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
            if Joint(place.part, place.device.port) in reached
        ]
        if not outlets and not stores:
            continue
        wants = _Wants()
        _flow(case, main.part, outlets, stores, wants)
        _pressure(case, main.part, outlets, stores, wants)
        if wants.short:
            findings.append(_finding(case, main.part, wants))
        elif wants.missing:
            findings.append(_unknown(case, main.part, wants))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _store_limit(case: Case, name: str) -> float | None:
    """What the rule book asks of a main that feeds a store; None where it asks nothing."""
    try:
        return float(case.limit(name).value)
    except NoRuleError:
        return None


def _flow(case: Case, main: str, outlets: list[str], stores: list[str], wants: _Wants) -> None:
    need_lpm = 0.0
    unknown: list[str] = []
    if outlets:
        table = case.limit("supply.loading_units").value
        units = []
        for outlet in outlets:
            known = table.get(case.value(outlet, "fitting"))
            if known is None:
                unknown.append(f"{outlet}.fitting")
            # The least that any outlet draws: what is not known can only add to the demand.
            units.append(float(min(table.values()) if known is None else known))
        total = total_units(units)
        need_lpm = l_min(design_flow_l_s(total, max(units)))
        wants.numbers |= {"loading_units": total}
    for_store = _store_limit(case, "supply.store_flow_lpm") if stores else None
    need_lpm = max(need_lpm, for_store or 0.0)
    wants.numbers["needed_lpm"] = need_lpm
    flow = case.value(main, "flow_lpm")
    if flow is None:
        wants.missing += [f"{main}.flow_lpm", *unknown]
        return
    wants.numbers["flow_lpm"] = float(flow)
    if flow < need_lpm - ROUNDING:
        wants.short.append(TOO_LITTLE)
        wants.values |= {"flow": figure(flow), "need": figure(need_lpm)}
        wants.parts += [*stores, *outlets]
    else:
        wants.missing += unknown


def _pressure(case: Case, main: str, outlets: list[str], stores: list[str], wants: _Wants) -> None:
    running = case.value(main, "running_pressure_bar")
    if running is None:
        wants.missing.append(f"{main}.running_pressure_bar")
    else:
        wants.numbers["running_pressure_bar"] = float(running)
    for_store = _store_limit(case, "supply.store_running_pressure_bar") if stores else None
    if running is not None and for_store is not None and running < for_store - ROUNDING:
        wants.short.append(TOO_LOW)
        wants.values |= {"running": figure(running), "for_store": figure(for_store)}
        wants.parts += stores
    if not outlets:
        return
    least = float(case.limit("supply.least_draw_off_pressure_bar").value)
    rises = {outlet: case.heights.difference(main, outlet) for outlet in outlets}
    unknown = [outlet for outlet, rise in rises.items() if rise is None]
    if unknown:
        wants.missing += case.heights.missing_for([main, *unknown])
    known = {outlet: rise for outlet, rise in rises.items() if rise is not None}
    if running is None or not known:
        return
    highest = max(known, key=lambda outlet: known[outlet])
    left = running - static_bar(known[highest])
    if left < least - ROUNDING:
        wants.short.append(TOO_HIGH_UP)
        wants.values |= {
            "outlet": upper(case.drawing.name(highest)),
            "rise": figure(known[highest]),
            "left": figure(left),
            "least": figure(least),
        }
        wants.parts.append(highest)
        wants.numbers |= {"pressure_at_outlet_bar": left, "least_bar": least}


def _finding(case: Case, main: str, wants: _Wants) -> Finding:
    return Finding(
        NAME,
        Grade.FAULT,
        Says(
            " ".join(["{thing} is too weak.", *wants.short]),
            {"thing": upper(case.drawing.name(main)), **wants.values},
        ),
        components=tuple(dict.fromkeys((main, *wants.parts))),
        numbers=wants.numbers,
    )


def _unknown(case: Case, main: str, wants: _Wants) -> Finding:
    missing = tuple(dict.fromkeys(wants.missing))
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Whether {thing} is strong enough for what it feeds is not known: {missing}.",
            {"thing": case.drawing.name(main), "missing": ", ".join(missing)},
        ),
        components=(main,),
        missing=missing,
        would_be=Grade.FAULT,
    )

"""What would put the pressures of a mains-fed store in order: proposals of several checks."""

from __future__ import annotations

from collections.abc import Iterator
from math import floor

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.store_cures import fitting
from circuitcheck.checks.store_feed import Feed, feeds
from circuitcheck.checks.store_swell import is_set_in_the_store, relief_field
from circuitcheck.checks.wording import figure, named
from circuitcheck.circuit.walking import along_the_flow, walk
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Says
from circuitcheck.parts.kind import Role, Way
from circuitcheck.sizing.discharge import within

USUAL_REDUCED_BAR = 3.0
"""What a reducing valve before a store is commonly set at (common practice, no source)."""


def with_reducing_valve(case: Case, store: str) -> Iterator[Proposal]:
    """Reducing valves set low enough; where a way has none, one after the main's own valve."""
    feed = next(feed for feed in feeds(case) if feed.water.store == store)
    bar = _reduced_to(case, feed)
    work = fitting(case)
    names: dict[str, str | float] = {"store": case.drawing.name(store), "bar": figure(bar)}
    limit = case.value(store, "maximum_pressure_bar")
    above = () if limit is None else feed.above(limit)
    if feed.unreduced:
        for main in feed.mains:
            by = _after_main(case, main)
            work.cut_in("pressure_reducing_valve", by, port="in", data={"set_pressure_bar": bar})
        says = Says("Fit a reducing valve set at {bar} bar where the main comes in.", names)
        yield Proposal(says, work.drawing)
    elif above:
        for part in above:
            work.set(part, "set_pressure_bar", bar)
        names["valves"] = named(case.drawing, above)
        yield Proposal(Says("Set {valves} at {bar} bar.", names), work.drawing)


def _reduced_to(case: Case, feed: Feed) -> float:
    """A setting that the store and its expansion relief valve bear, near what its vessel is charged at."""
    limit = _bears(case, feed)
    charges = [
        case.value(place.part, "precharge_bar")
        for place in feed.water.reached(Role.HOLDS_EXPANSION)
        if not place.device.built_in
    ]
    charge = next((float(each) for each in charges if each), USUAL_REDUCED_BAR)
    return charge if within(charge, limit) else floor(limit * 10) / 10


def _bears(case: Case, feed: Feed) -> float:
    limits = [case.value(feed.water.store, "maximum_pressure_bar")]
    share = case.limit("store.reducing_share_of_relief").value
    for place in feed.water.reached(Role.RELIEVES_BY_PRESSURE):
        if is_set_in_the_store(place):
            continue
        bar = case.value(place.part, relief_field(case, place.part))
        limits.append(None if bar is None else share * bar)
    return min((float(limit) for limit in limits if limit is not None), default=USUAL_REDUCED_BAR)


def _after_main(case: Case, main: str) -> Joint:
    """The port after the last part in line with a main, before its pipe first branches."""
    place = next(each for each in case.circuit.devices(Role.MAIN) if each.part == main)
    start = Joint(main, place.device.port)
    best = start
    found = walk(case.circuit, [start], along_the_flow)
    for joint in found.steps:
        passages = case.circuit.plans[joint.part].passages
        before = found.came[joint]
        if len(passages) > 1 or (passages and passages[0].way not in (Way.OPEN, Way.HAND)):
            break
        if before is not None and before.part == joint.part:
            best = joint
    return best


def with_settings_in_order(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Another relief valve in its place, or the reducing valves set lower."""
    valve = finding.components[0]
    work = fitting(case)
    numbers = finding.numbers
    names: dict[str, str | float] = {"valve": case.drawing.name(valve)}
    if "set_temperature_c" in numbers:
        work.set(valve, "set_temperature_c", 90)
        template = "Fit a valve set at 90 °C in place of {valve}."
    elif "relief_pressure_bar" in numbers:
        bar = floor(numbers["limit_bar"] * 10 + 1e-9) / 10
        reducers = finding.components[1:] or (valve,)
        for part in reducers:
            work.set(part, "set_pressure_bar", bar)
        names |= {"reducers": named(case.drawing, reducers), "bar": figure(bar)}
        template = "Set {reducers} at {bar} bar."
    else:
        work.set(valve, relief_field(case, valve), numbers["limit_bar"])
        names["bar"] = figure(numbers["limit_bar"])
        template = "Fit a valve set at {bar} bar in place of {valve}."
    yield Proposal(Says(template, names), work.drawing)

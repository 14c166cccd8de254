"""Nothing holds the main's pressure down to what the store is made for.

Flags: A mains-fed store whose feed from the main passes no reducing valve, or one set above the store's
    highest pressure. Danger where the main stands above the store's highest pressure, or the
    reducing valve is set above it; without any reducing valve it is a fault even where the main stands
    lower by day.
Why: The pressure of a main is not constant: it rises at night, when nobody draws, and after work in the
    street. A store is made for a stated pressure and no more, and the relief valve is not there to hold
    back the main.
Remedy: Fit a reducing valve in the cold feed, or an inlet group with one in it, set well below the
    store's highest pressure.
Source: BS EN 12897, a store's highest working pressure; BS EN 1567, reducing valves; that mains rise at
    night is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_feed import Feed, feeds
from circuitcheck.checks.store_pressure_cures import with_reducing_valve
from circuitcheck.checks.store_water import unanswered
from circuitcheck.checks.wording import figure, listed, named, upper
from circuitcheck.finding import Finding, Grade, Says

NAME = "store-pressure-not-limited"

NOT_KNOWN = "Whether the pressure that comes to {thing} is low enough rests on what is not known: {missing}."


def judge(case: Case) -> Verdict:
    """One finding for each store that the main's pressure is not held down for."""
    findings, sound = [], 0
    for feed in feeds(case):
        if not feed.mains and not feed.reducers:
            continue
        case.rests_on_pressure_ways(feed.water.reach)
        finding = _unreduced(case, feed) if feed.unreduced else _set_too_high(case, feed)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _unreduced(case: Case, feed: Feed) -> Finding:
    """No reducing valve on some way: how much it weighs rests on the main."""
    store = feed.water.store
    limit = case.value(store, "maximum_pressure_bar")
    standing = {main: case.value(main, "standing_pressure_bar") for main in feed.mains}
    known = {main: bar for main, bar in standing.items() if bar is not None}
    missing = [f"{main}.standing_pressure_bar" for main in standing if main not in known]
    missing += [f"{store}.maximum_pressure_bar"] if limit is None else []
    highest = max(known, key=lambda main: known[main], default="")
    values: dict[str, str | float] = {
        "thing": upper(case.drawing.name(store)),
        "mains": named(case.drawing, feed.mains),
        "missing": ", ".join(missing),
    }
    numbers = {} if limit is None else {"maximum_pressure_bar": float(limit)}
    numbers |= {"standing_pressure_bar": float(known[highest])} if highest else {}
    template = "{thing} is fed by {mains} with no reducing valve between."
    parts = (store, *feed.mains)
    if limit is not None and highest and known[highest] > limit:
        values |= {"standing": figure(known[highest]), "limit": figure(limit)}
        template += " The main stands at {standing} bar, above the store's highest pressure, {limit} bar."
        return Finding(NAME, Grade.DANGER, Says(template, values), parts, numbers=numbers)
    if missing:
        template += " Whether the main stands above what the store is made for is not known: {missing}."
    else:
        values |= {"standing": figure(known[highest]), "limit": figure(float(limit))}
        template += (
            " The main stands at {standing} bar, below the store's highest pressure, {limit} bar, "
            "but it rises at night."
        )
    return Finding(NAME, Grade.FAULT, Says(template, values), parts, numbers=numbers, missing=tuple(missing))


def _set_too_high(case: Case, feed: Feed) -> Finding | None:
    """Reducing valves on every way: whether they are set low enough."""
    store = feed.water.store
    limit = case.value(store, "maximum_pressure_bar")
    if limit is None:
        missing = (f"{store}.maximum_pressure_bar", *feed.unknown)
        return unanswered(case, NAME, NOT_KNOWN, (store, *_ids(feed)), missing, Grade.DANGER)
    held = feed.holds(limit)
    if held is None:
        return unanswered(case, NAME, NOT_KNOWN, (store, *_ids(feed)), feed.unknown, Grade.DANGER)
    if held:
        return None
    above = feed.above(limit)
    says = Says(
        "{thing} is made for {limit} bar at most, and {reducers} is set at {set} bar.",
        {
            "thing": upper(case.drawing.name(store)),
            "limit": figure(limit),
            "reducers": named(case.drawing, above),
            "set": listed(figure(float(feed.settings[part] or 0)) for part in above),
        },
    )
    numbers = {"maximum_pressure_bar": float(limit)}
    numbers["set_pressure_bar"] = max(float(feed.settings[part] or 0) for part in above)
    return Finding(NAME, Grade.DANGER, says, (store, *above), numbers=numbers)


def _ids(feed: Feed) -> tuple[str, ...]:
    return tuple(place.part for place in feed.reducers)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A reducing valve in the cold feed, or those there set lower."""
    yield from with_reducing_valve(case, finding.components[0])

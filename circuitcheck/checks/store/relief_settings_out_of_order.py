"""Relief valve's setting does not fit the store or the reducing valve.

Flags: A relief valve of a mains-fed store set above the store's highest pressure, or a temperature
    relief valve set above 95 °C: danger. A reducing valve set above 0.8 of the expansion relief valve: a
    fault. Exactly a limit passes. Valves built into a store come set with it.
Why: The settings must stand in a row: reducing valve, then expansion relief, then what the store is made
    for. A relief valve set above the store opens after the store has given; one set close above the
    reducing valve weeps at every heating, and a valve that weeps scales up and sticks.
Remedy: Fit a relief valve set at or below the store's highest pressure; set the reducing valve at 0.8 of
    the expansion relief valve or lower. Relief valves are not to be adjusted on site.
Source: BS EN 1490 and BS EN 1491; BS EN 806-2 (from memory), a supply stands within 80 % of a safety
    valve's setting.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_feed import Feed, feeds
from circuitcheck.checks.store_pressure_cures import with_settings_in_order
from circuitcheck.checks.store_swell import is_set_in_the_store, relief_field
from circuitcheck.checks.store_water import StoreWater, above_exempt, store_waters, unanswered
from circuitcheck.checks.wording import figure, listed, named, upper
from circuitcheck.circuit.joining import Placed
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import within

NAME = "relief-settings-out-of-order"

NOT_KNOWN = "{thing}: whether it is set right rests on what is not known: {missing}."


def judge(case: Case) -> Verdict:
    """One finding for each thing wrong with a store's relief valve; a valve that is right is sound."""
    findings: list[Finding] = []
    sound = 0
    waters = store_waters(case)
    by_temperature: dict[str, Placed] = {}
    stores: dict[str, list[str]] = {}
    for water in waters:
        for place in water.temperature_reliefs:
            by_temperature[place.part] = place
            stores.setdefault(place.part, []).append(water.store)
    by_pressure = {
        place.part: place for water in waters for place in water.reached(Role.RELIEVES_BY_PRESSURE)
    }
    for valve in by_temperature.values():
        if not is_set_in_the_store(valve):
            told = _temperature_relief(case, valve, stores[valve.part], waters)
            findings += told or ()
            sound += told == []
    for valve in by_pressure.values():
        if not is_set_in_the_store(valve):
            told = _expansion_relief(case, valve)
            findings += told
            sound += not told
    return Verdict(tuple(findings), sound)


def _temperature_relief(
    case: Case, valve: Placed, stores: list[str], waters: tuple[StoreWater, ...]
) -> list[Finding] | None:
    """What is wrong with it; None where only small stores have it, which are outside its rule."""
    sizes = {store: above_exempt(case, store) for store in stores}
    if all(above is False for above in sizes.values()):
        return None
    set_bar = case.value(valve.part, "set_pressure_bar")
    told = [_pressure(case, valve, set_bar, f"{valve.part}.set_pressure_bar", waters)]
    told.append(_temperature(case, valve, stores[0]))
    findings = [finding for finding in told if finding is not None]
    unsized = [f"{store}.volume_l" for store, above in sizes.items() if above is None]
    if not unsized or any(sizes.values()):
        return _one_unanswered(case, findings)
    return _one_unanswered(
        case,
        [
            unanswered(case, NAME, NOT_KNOWN, finding.components, (*finding.missing, *unsized), Grade.DANGER)
            for finding in findings
        ],
    )


def _one_unanswered(case: Case, findings: list[Finding]) -> list[Finding]:
    """The findings with those that are unanswered told as one, heaviest first."""
    open_ = [finding for finding in findings if finding.grade is Grade.UNANSWERED]
    sure = [finding for finding in findings if finding.grade is not Grade.UNANSWERED]
    if len(open_) < 2:
        return sure + open_
    parts = [id for finding in open_ for id in finding.components]
    missing = [name for finding in open_ for name in finding.missing]
    worst = min((finding.would_be or Grade.FAULT for finding in open_), key=lambda grade: grade.rank)
    return [*sure, unanswered(case, NAME, NOT_KNOWN, parts, missing, worst)]


def _temperature(case: Case, valve: Placed, store: str) -> Finding | None:
    set_c = case.value(valve.part, "set_temperature_c")
    if set_c is None:
        missing = (f"{valve.part}.set_temperature_c",)
        return unanswered(case, NAME, NOT_KNOWN, (valve.part, store), missing, Grade.DANGER)
    limit = case.limit("store.highest_relief_temperature_c").value
    if within(set_c, limit):
        return None
    says = Says(
        "{thing} is set at {set} °C, above {limit} °C: the store may boil before it opens.",
        {"thing": upper(case.drawing.name(valve.part)), "set": figure(set_c), "limit": figure(limit)},
    )
    numbers = {"set_temperature_c": float(set_c), "limit_c": float(limit)}
    return Finding(NAME, Grade.DANGER, says, (valve.part, store), numbers=numbers)


def _pressure(
    case: Case, valve: Placed, set_bar: float | None, field: str, waters: tuple[StoreWater, ...]
) -> Finding | None:
    """Set above the lowest highest pressure of the stores it stands on?"""
    water = case.circuit.water(valve.node)
    stores = [each.store for each in waters if water in each.reach]
    limits = {store: case.value(store, "maximum_pressure_bar") for store in stores}
    known = {store: float(limit) for store, limit in limits.items() if limit is not None}
    lowest = min(known, key=lambda store: known[store], default="")
    if set_bar is not None and lowest and not within(set_bar, known[lowest]):
        says = Says(
            "{thing} is set at {set} bar, above the highest pressure of {store}, {limit} bar.",
            {
                "thing": upper(case.drawing.name(valve.part)),
                "set": figure(set_bar),
                "store": case.drawing.name(lowest),
                "limit": figure(known[lowest]),
            },
        )
        numbers = {"set_pressure_bar": float(set_bar), "limit_bar": known[lowest]}
        return Finding(NAME, Grade.DANGER, says, (valve.part, lowest), numbers=numbers)
    missing = [] if set_bar is not None else [field]
    missing += [f"{store}.maximum_pressure_bar" for store in stores if store not in known]
    if not missing:
        return None
    return unanswered(case, NAME, NOT_KNOWN, (valve.part, *stores), missing, Grade.DANGER)


def _expansion_relief(case: Case, valve: Placed) -> list[Finding]:
    field = relief_field(case, valve.part)
    set_bar = case.value(valve.part, field)
    name = f"{valve.part}.{field}"
    waters = store_waters(case)
    told = [_pressure(case, valve, set_bar, name, waters)]
    water = case.circuit.water(valve.node)
    for feed in feeds(case):
        if water in feed.water.reach and feed.reducers and not feed.unreduced:
            told.append(_against_reducers(case, valve, set_bar, name, feed))
    once: dict[tuple[object, ...], Finding] = {}
    for finding in told:
        if finding is not None:
            once.setdefault((finding.grade, str(finding.says)), finding)
    return _one_unanswered(case, list(once.values()))


def _against_reducers(
    case: Case, valve: Placed, set_bar: float | None, name: str, feed: Feed
) -> Finding | None:
    """Is the feed reduced to the stated share of the relief valve's setting, or less?"""
    reducers = tuple(place.part for place in feed.reducers)
    if set_bar is None:
        missing: tuple[str, ...] = (name, *feed.unknown)
        return unanswered(case, NAME, NOT_KNOWN, (valve.part, *reducers), missing, Grade.FAULT)
    share = case.limit("store.reducing_share_of_relief").value
    limit = share * set_bar
    held = feed.holds(limit)
    if held:
        return None
    if held is None:
        return unanswered(case, NAME, NOT_KNOWN, (valve.part, *reducers), feed.unknown, Grade.FAULT)
    above = feed.above(limit)
    settings = [float(feed.settings[part] or 0) for part in above]
    says = Says(
        "{reducers} is set at {set} bar, above {limit} bar, which is {share} of what {thing} opens at: "
        "it will weep at every heating.",
        {
            "reducers": upper(named(case.drawing, above)),
            "set": listed(map(figure, settings)),
            "limit": figure(limit),
            "share": figure(share),
            "thing": case.drawing.name(valve.part),
        },
    )
    numbers = {"set_pressure_bar": max(settings), "limit_bar": limit, "relief_pressure_bar": float(set_bar)}
    parts = tuple(dict.fromkeys((valve.part, *above)))
    return Finding(NAME, Grade.FAULT, says, parts, numbers=numbers)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The settings put in order."""
    yield from with_settings_in_order(case, finding)

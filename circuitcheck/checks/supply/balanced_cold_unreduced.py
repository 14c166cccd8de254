"""A mixer takes its cold from the main unreduced, its hot from a reduced store.

Flags: An outlet or blending valve with hot from a mains-fed store behind a reducing valve, and cold
    that comes from the main by some way without one. Advice; a fault where the main can stand higher
    than the store's expansion relief valve is set and its pressure can pass back through the mixer.
Why: The stronger side pushes back the weaker: the mix runs cold, then hot when a tap elsewhere opens,
    and a shower scalds. Through a mixer left open with its outlet shut the whole pressure of the main
    stands on the store, until its relief valve weeps and never stops.
Remedy: Take the cold of every mixer from behind the store's reducing valve, before the check valve:
    the balanced cold connection.
Source: Common practice, no source: balanced cold supplies for mixers on mains-fed stores.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.supplying import supplies
from circuitcheck.checks.wording import figure, upper
from circuitcheck.circuit.isolation import reaches
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.circuit.waterways import CameBy, pipes_of
from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "balanced-cold-unreduced"

MIXES = "{thing} mixes hot from {store}, which is reduced, with cold straight from {main}."
LIFTS = "At rest the main stands at {standing} bar and can lift the expansion relief, set at {relief} bar."
PERHAPS_LIFTS = "Whether the main can lift the store's expansion relief is not known: {missing}."


@dataclass(frozen=True, slots=True)
class _Mixer:
    hot: Joint
    cold: Joint


def judge(case: Case) -> Verdict:
    """One finding for each mixer with hot from a reduced store and cold straight from the main."""
    ways = supplies(case)
    if not case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE) or not ways.mains:
        return Verdict()
    if not ways.reducers:
        return Verdict()
    unreduced = ways.mains_water(ways.mains, unreduced=True)
    fed = ways.mains_water(ways.mains)
    open_stores = case.circuit.parts_with(Role.STORES_OPEN)
    reduced = [
        giver
        for giver in ways.givers
        if giver.stores
        and giver.part not in open_stores
        and giver.inlet in fed
        and giver.inlet not in unreduced
    ]
    if not reduced:
        return Verdict()
    hot = ways.hot(reduced, lambda valve: False)
    findings, sound = [], 0
    for mixer in _mixers(case, ways):
        if mixer.hot not in hot or mixer.cold not in fed:
            continue
        if mixer.cold in unreduced:
            findings.append(_finding(case, ways, mixer, hot, unreduced))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _mixers(case: Case, ways: Supplies) -> Iterator[_Mixer]:
    """Every outlet and blending valve with both hot and cold joined."""
    joined = case.drawing.joined
    found = [
        _Mixer(Joint(place.part, place.device.port), Joint(place.part, place.device.other))
        for place in ways.outlets
    ]
    for place in case.circuit.devices(Role.BLENDS):
        for passage in case.circuit.plans[place.part].passages:
            if passage.b == place.device.other and passage.a != place.device.port:
                found.append(_Mixer(Joint(place.part, place.device.port), Joint(place.part, passage.a)))
    return (mixer for mixer in found if mixer.hot in joined and mixer.cold in joined)


def _finding(case: Case, ways: Supplies, mixer: _Mixer, hot: CameBy, unreduced: CameBy) -> Finding:
    drawing = case.drawing
    store = ways.origin(hot, mixer.hot).part
    main = ways.origin(unreduced, mixer.cold).part
    crossing = _crossing(case, mixer, store, main)
    template = MIXES
    if crossing.missing:
        template = f"{MIXES} {PERHAPS_LIFTS}"
    elif crossing.lifts:
        template = f"{MIXES} {LIFTS}"
    numbers = {}
    if crossing.lifts:
        numbers = {"standing_pressure_bar": crossing.standing_bar, "relief_bar": crossing.relief_bar}
    grade = Grade.FAULT if crossing.lifts else Grade.ADVICE
    return Finding(
        NAME,
        Grade.UNANSWERED if crossing.missing else grade,
        Says(
            template,
            {
                "thing": upper(drawing.name(mixer.hot.part)),
                "store": drawing.name(store),
                "main": drawing.name(main),
                "missing": ", ".join(crossing.missing),
                "standing": figure(crossing.standing_bar),
                "relief": figure(crossing.relief_bar),
            },
        ),
        components=(mixer.hot.part, store, main),
        pipes=pipes_of(ways.way(unreduced, mixer.cold)),
        numbers=numbers,
        missing=crossing.missing,
        would_be=Grade.FAULT if crossing.missing else None,
    )


@dataclass(frozen=True, slots=True)
class _Crossing:
    """Whether the main's pressure can lift the store's expansion relief through the mixer."""

    lifts: bool = False
    standing_bar: float = 0.0
    relief_bar: float = 0.0
    missing: tuple[str, ...] = ()


def _crossing(case: Case, mixer: _Mixer, store: str, main: str) -> _Crossing:
    circuit = case.circuit
    if mixer.hot.part not in {place.part for place in supplies(case).outlets}:
        return _Crossing()  # a blending valve lets nothing back through its hot inlet
    water = circuit.water(circuit.node(*mixer.hot))
    reach = reaches(circuit, water)
    ports = (Joint(store, device.other) for device in circuit.plans[store].devices if device.other)
    if not any(circuit.water(circuit.node(*port)) in reach for port in ports):
        return _Crossing()
    standing = case.value(main, "standing_pressure_bar")
    settings, missing = _settings(case, reach)
    lowest = min(settings, default=None)
    if standing is not None and lowest is not None and standing > lowest:
        return _Crossing(True, float(standing), lowest)
    if standing is None and (settings or missing):
        missing = (f"{main}.standing_pressure_bar", *missing)
    return _Crossing(missing=missing)


def _settings(case: Case, reach: frozenset[int]) -> tuple[list[float], tuple[str, ...]]:
    """What the expansion relief valves on this water are set to, and the settings not known. One
    built into a store is set no higher than what the store can bear."""
    settings, missing = [], []
    for place in case.circuit.devices(Role.RELIEVES_BY_PRESSURE):
        if case.circuit.water(place.node) not in reach:
            continue
        names = {field.name for field in case.drawing.components[place.part].kind.fields}
        field = next(
            name
            for name in ("relief_pressure_bar", "maximum_pressure_bar", "set_pressure_bar")
            if name in names
        )
        value = case.value(place.part, field)
        if value is None:
            missing.append(f"{place.part}.{field}")
        else:
            settings.append(float(value))
    return settings, tuple(missing)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Take the mixer's cold from behind the reducing valve that the store is fed by."""
    mixer_part, store = finding.components[:2]
    ways = supplies(case)
    mixer = next((each for each in _mixers(case, ways) if each.hot.part == mixer_part), None)
    fed = ways.mains_water(ways.mains)
    inlet = next(giver.inlet for giver in ways.givers if giver.part == store)
    if mixer is None or inlet not in fed:
        return
    reducers = [step for step in ways.way(fed, inlet) if ways.through(step, ways.reducers)]
    for step in reversed(reducers):
        behind = step.finish
        fitting = Fitting(case.drawing)
        try:
            pipe = fitting.pipe_at(mixer.cold)
            if behind in case.drawing.joined:
                source = Joint(fitting.tee(behind), "branch")
            else:
                source = behind
            fitting.take_out(pipe)
            fitting.pipe(source, mixer.cold)
        except EditError:
            continue
        says = Says(
            "Take the cold of {thing} from behind {reducer}.",
            {"thing": case.drawing.name(mixer_part), "reducer": case.drawing.name(behind.part)},
        )
        yield Proposal(says, fitting.drawing)

"""Heat source that can be fired though every thermostat is satisfied.

Flags: A switched heat source that may be called when no thermostat calls: because a programmer alone
    calls it, or because something it heats is not held by a thermostat that acts on a motor valve, a
    pump or the heat source itself. Thermostatic heads alone hold nothing: they cannot tell the heat
    source to stop. One emitter left open on purpose, as a way round for the pump, is not meant. A
    drawing without thermostats is judged as a house without them.
Why: When all the rooms are warm and nothing tells the heat source so, it goes on heating its own few
    litres of water over and over, all day, for nothing. That wastes fuel and wears it out.
Remedy: Let a thermostat act on the valve or pump of every zone and every store, and let the heat source
    and the pump be called by the end switches of those valves and not by the programmer alone.
Source: Approved Document L (England): controls wired so that with no demand for heating or hot water the
    appliance and the pump are off; City & Guilds Textbook: Plumbing, Book 1 (2019), interlock.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.control_cures import fit_valve, own_holder, thermostat_for, with_thermostat
from circuitcheck.checks.wording import named, named_again, upper
from circuitcheck.checks.zones import THERMOSTATS, always_open_one, emitters, is_held
from circuitcheck.circuit.rounds import Body, part_of_key
from circuitcheck.drawing.filling_in import set_design
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "heat-called-without-interlock"

NOT_HELD = "{thing} can be fired though every thermostat is satisfied: none acts on what feeds {parts}."
NO_THERMOSTAT = "{thing} can be fired at any time: no thermostat acts on anything that feeds {parts}."
BY_PROGRAMMER = "{thing} can be fired though every thermostat is satisfied: the programmer alone calls it."
NOT_KNOWN = (
    "Whether {thing} can be fired with every thermostat satisfied rests on what is not known: {missing}."
)


def judge(case: Case) -> Verdict:
    """One finding for each switched heat source that has no interlock."""
    sources = case.circuit.devices(Role.HEATS)
    if not sources:
        return Verdict()
    findings, sound = [], 0
    for place in sources:
        heat = place.part
        # What is fed and held rests on no data but the circuit's: it stays when a part is called otherwise.
        fed = case.circuit.keep(f"{__name__} fed {heat}", partial(_fed_by, case, heat))
        if not fed or case.value(heat, "heat") == "uncontrolled":
            continue
        loose = case.circuit.keep(f"{__name__} loose {heat}", partial(_not_held, case, fed))
        finding = _judged(case, heat, loose)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _fed_by(case: Case, heat: str) -> tuple[str, ...]:
    """What a heat source feeds; where nothing is on a loop and no thermostat acts on anything, what would
    take heat on its water."""
    body = case.situations.rounds.of(heat)
    fed = _fed(case, body) if body is not None else ()
    if body is not None and not fed and not _has_thermostat(case):
        fed = tuple(dict.fromkeys(map(part_of_key, body.takes)))
    return fed


def _has_thermostat(case: Case) -> bool:
    return any(
        control.kind.name in THERMOSTATS and control.acts_on for control in case.drawing.controls.values()
    )


def _fed(case: Case, body: Body) -> tuple[str, ...]:
    """What is on a loop of that water, in the order of the drawing."""
    fed = set(map(part_of_key, body.fed))
    return tuple(filter(fed.__contains__, case.drawing.components))


def _not_held(case: Case, fed: tuple[str, ...]) -> tuple[str, ...]:
    """What no thermostat can stop; an exchanger is held where all that it heats is."""
    free = [part for part in fed if not is_held(case, part, THERMOSTATS)] if case.drawing.controls else fed
    exchangers = case.circuit.parts_with(Role.EXCHANGES)
    loose = [part for part in free if part not in exchangers or not _held_beyond(case, part)]
    emitting = frozenset(emitters(case))
    left_open = always_open_one(case, (part for part in loose if part in emitting))
    others = tuple(part for part in loose if part != left_open)
    return others if others or len(fed) > 1 else tuple(loose)


def _held_beyond(case: Case, exchanger: str) -> bool:
    """Whether the water behind an exchanger has nothing on it that no thermostat holds. What drinking
    water is heated at once as it is drawn is called by the tap."""
    for body in case.situations.rounds.bodies:
        if exchanger in map(part_of_key, body.warms):
            return all(is_held(case, part, THERMOSTATS) for part in _fed(case, body))
    return False


def _judged(case: Case, heat: str, loose: tuple[str, ...]) -> Finding | None:
    thing = upper(case.drawing.name(heat))
    missing: tuple[str, ...] = ()
    finding = None
    called_by = case.design("heat_called_by")
    if called_by == "programmer_only":
        finding = Finding(NAME, Grade.FAULT, Says(BY_PROGRAMMER, {"thing": thing}), (heat,))
    elif loose:
        values = {"thing": thing, "parts": named_again(case, loose)}
        template = NOT_HELD if _has_thermostat(case) else NO_THERMOSTAT
        finding = Finding(NAME, Grade.FAULT, Says(template, values), (heat, *loose))
    elif called_by is None:
        missing += ("design.heat_called_by",)
    if case.value(heat, "heat") is None and (finding or missing):
        missing += (f"{heat}.heat",)
    if not missing:
        return finding
    says = Says(NOT_KNOWN, {"thing": case.drawing.name(heat), "missing": ", ".join(missing)})
    return Finding(NAME, Grade.UNANSWERED, says, (heat,), missing=missing, would_be=Grade.FAULT)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The heat source called by the valves' end switches; a thermostat for all that none holds."""
    loose = finding.components[1:]
    if not loose:
        says = Says("Let the valves' end switches call the heat source and the pump.")
        yield Proposal(says, set_design(case.drawing, "heat_called_by", "valve_end_switches"))
        return
    work = Fitting(case.drawing, case.lines)
    for part in loose:
        holder = own_holder(case, part, loose)
        if holder and case.situations.acting_on(holder) != _acting_on(work.drawing, holder):
            continue  # what came before acts on it already
        holder = holder or fit_valve(work, case, part)
        work.drawing = with_thermostat(work.drawing, thermostat_for(case, part), holder, part)
    says = Says(
        "Fit a thermostat for {parts}, each on a valve or pump of its own.",
        {"parts": named(case.drawing, loose)},
    )
    yield Proposal(says, work.drawing)


def _acting_on(drawing: Drawing, holder: str) -> tuple[str, ...]:
    return tuple(id for id, control in drawing.controls.items() if holder in control.acts_on)

"""Emitter or coil that no water can be driven through.

Flags: An emitter, a store's coil or an exchanger with no loop from a pump through a heat source (or the
    exchanger that heats its water), through it and back, that passes nothing twice; all valves open.
    Gravity does for a pump where the heat is uncontrolled, and for a store's coil on open-vented water.
    A loop from leg to leg of a diverting three-port valve is none: it opens one leg at a time. Nor is one
    that passes a bypass valve: it stands shut until other ways are.
Why: Water goes round or it does not go at all. A radiator that hangs on a branch by both its pipes, or
    behind a check valve that faces the wrong way, fills with water and stays cold.
Remedy: Lead its flow to the flow pipe and its return to the return pipe, and see that every pump and
    check valve on the way faces the way the water must go. On a three-port valve the port ab is the one
    that the water of both legs comes in by, or goes out by.
Source: Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.circulation_cures import backwards_turned_round, with_pump
from circuitcheck.checks.wording import named, upper
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.rounds import Body, part_of_key, port_of_key
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "emitter-not-in-a-loop"

NO_HEAT = "{thing} stands on water that no heat source heats."
NO_PUMP = "{thing} stays cold: nothing drives water round through {heats}."
NO_LOOP = (
    "{thing} stays cold: no loop leads from {pumps} through {heats}, through it and back without passing "
    "the same place twice."
)
ACROSS = (
    "{thing} stays cold: its water would have to go through {valve} from leg to leg, and a diverting valve "
    "opens one leg at a time."
)
BY_BYPASS = (
    "{thing} gets water only through {bypass}: every loop there is passes it, and it stays shut until "
    "other ways are."
)
ACROSS_NOT_KNOWN = (
    "{thing}'s water has to go through {valve} from leg to leg. Whether both ever stand open rests on what "
    "is not known: {missing}."
)
NOT_KNOWN = (
    "{thing} is on a loop with no pump in it. Whether water goes round by itself rests on what is not "
    "known: {missing}."
)


def judge(case: Case) -> Verdict:
    """One finding for each emitter, coil and exchanger that is on no loop."""
    if not any(case.circuit.devices(role) for role in (Role.EMITS, Role.HEATED_BY_COIL, Role.EXCHANGES)):
        return Verdict()
    idle = _idle_coils(case)
    across = _across_legs(case)
    findings, sound = [], 0
    for body in case.situations.rounds.bodies:
        keys = [key for key in body.takes if part_of_key(key) not in idle] if idle else list(body.takes)
        if not keys:
            continue
        _remember(case, body, keys[0])
        bypasses = _bypasses(case, body)
        try:
            fed, behind = body.fed, _behind(body, bypasses)
        except TooLargeError:
            findings += [too_large(case, NAME, part_of_key(key), Grade.FAULT) for key in keys]
            continue
        unfed = [key for key in keys if key not in fed]
        crossing = [key for key in keys if across and key in fed and part_of_key(key) in across]
        by_bypass = [key for key in keys if key in behind and key not in crossing] if behind else []
        sound += len(keys) - len(unfed) - len(crossing) - len(by_bypass)
        findings += [_by_bypass(case, part_of_key(key), bypasses) for key in by_bypass]
        findings += [_across(case, part_of_key(key), across[part_of_key(key)]) for key in crossing]
        findings += [_finding(case, body, key) for key in unfed]
    return Verdict(tuple(findings), sound)


def _bypasses(case: Case, body: Body) -> tuple[str, ...]:
    """The bypass valves on that water."""
    places = (place for place in case.circuit.devices(Role.BYPASSES) if not place.device.built_in)
    return tuple(place.part for place in places if case.situations.rounds.of(place.part) is body)


def _behind(body: Body, bypasses: tuple[str, ...]) -> frozenset[str]:
    """What has no loop but through a bypass valve. Raises TooLargeError beyond the search bound."""
    if len(bypasses) < 2:
        return frozenset().union(*map(body.behind, bypasses))
    springs = frozenset(bypasses)
    return body.fed - body.fed_in(tuple(edge for edge in body.edges if not edge.pumps & springs))


def _idle_coils(case: Case) -> frozenset[str]:
    """The stores whose coil nothing is joined to: no coil heats them."""
    joined = case.drawing.joined
    return frozenset(
        place.part
        for place in case.circuit.devices(Role.HEATED_BY_COIL)
        if not {Joint(place.part, place.device.port), Joint(place.part, place.device.other)} & joined.keys()
    )


def _across_legs(case: Case) -> dict[str, str]:
    """What has no loop but from leg to leg of a three-port valve that is not known to open both, with
    that valve. Raises TooLargeError beyond the search bound."""
    found: dict[str, str] = {}
    for valve in case.situations.three_port:
        one, two = (case.situations.behind(f"{valve}:{leg}") for leg in ("a", "b"))
        both = one & two
        if both and case.value(valve, "action") != "share":
            found |= dict.fromkeys(both, valve)
    return found


def _across(case: Case, part: str, valve: str) -> Finding:
    values = {"thing": upper(case.drawing.name(part)), "valve": case.drawing.name(valve)}
    if case.value(valve, "action") is not None:
        return Finding(NAME, Grade.FAULT, Says(ACROSS, values), (part, valve))
    missing = (f"{valve}.action",)
    says = Says(ACROSS_NOT_KNOWN, {**values, "missing": missing[0]})
    return Finding(NAME, Grade.UNANSWERED, says, (part, valve), missing=missing, would_be=Grade.FAULT)


def _by_bypass(case: Case, part: str, bypasses: tuple[str, ...]) -> Finding:
    values = {"thing": upper(case.drawing.name(part)), "bypass": named(case.drawing, bypasses)}
    return Finding(NAME, Grade.FAULT, Says(BY_BYPASS, values), (part, *bypasses))


def _remember(case: Case, body: Body, key: str) -> None:
    """The answers rest on how water circulates there, and on what drives it."""
    part = part_of_key(key)
    port = port_of_key(key) or case.drawing.components[part].kind.ports[0].name
    case.rests_on_water_ways(case.bodies.of(case.circuit.node(part, port)))
    for heat in _sources(case, body):
        case.value(heat, "heat")


def _sources(case: Case, body: Body) -> list[str]:
    """The heat sources on that water; the exchangers that heat it are none."""
    sources = case.circuit.parts_with(Role.HEATS)
    return [key for key in body.warms if key in sources]


def _finding(case: Case, body: Body, key: str) -> Finding:
    part = part_of_key(key)
    heats = tuple(dict.fromkeys(map(part_of_key, body.warms)))
    values: dict[str, str | float] = {
        "thing": upper(case.drawing.name(part)),
        "heats": named(case.drawing, heats),
        "pumps": named(case.drawing, body.drives),
    }
    missing = tuple(
        f"{heat}.heat"
        for heat in _sources(case, body)
        if case.value(heat, "heat") is None and body.loop_through(body.ways, key, heat)
    )
    if missing:
        says = Says(NOT_KNOWN, {**values, "missing": ", ".join(missing)})
        return Finding(NAME, Grade.UNANSWERED, says, (part,), missing=missing, would_be=Grade.FAULT)
    template = NO_LOOP if body.drives and heats else NO_PUMP if heats else NO_HEAT
    return Finding(NAME, Grade.FAULT, Says(template, values), (part,))


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Whatever stands backwards turned round; a pump where there is none."""
    yield from backwards_turned_round(case)
    for body in case.situations.rounds.bodies:
        if not body.drives and finding.components[0] in map(part_of_key, body.takes):
            yield from with_pump(case, _sources(case, body))

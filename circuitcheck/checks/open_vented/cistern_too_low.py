"""Cistern's water stands below what it is to fill.

Flags: An emitter, heat source, coil, store or outlet on the water that a cistern feeds, standing higher
    than that cistern's water. Where several cisterns feed one water, the highest counts. An outlet behind
    a pump that lifts its water is left out, as are outlets on water that a main feeds too; a pump that only
    drives a secondary return round lifts nothing.
Why: Water from a cistern rises to the level it stands at there, and no further: what lies above never
    fills, gives no heat or runs dry, and the air that stays in it can stop the whole circuit. It is the
    usual end of a new top-floor radiator or a shower in the loft on an old tank-fed system.
Remedy: Raise the cistern, with its water above all that it feeds; or bring the part down; or make the
    circuit a sealed one, filled under pressure.
Source: Hydrostatics: still water that is joined stands at one level. That it is looked for when a drawing is
    checked is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.supplying import supplies
from circuitcheck.checks.venting import is_cistern
from circuitcheck.checks.wording import figure, named, shortened, upper
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.secondary import hot_port, past
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.circuit.waterways import Step
from circuitcheck.drawing.edits import set_field
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word

NAME = "cistern-too-low"
LEVEL = "water_level_m"

_FILLED = (Role.EMITS, Role.HEATS, Role.HEATED_BY_COIL, Role.STORES_OPEN)
_ROUNDING_M = 1e-9


def judge(case: Case) -> Verdict:
    """One fault for each water that stands lower in its cistern than a part on it."""
    findings: list[Finding] = []
    sound = 0
    for body, cisterns in _fed(case).items():
        parts = _filled(case, body)
        if not parts:
            continue
        finding = _judged(case, tuple(dict.fromkeys(place.part for place in cisterns)), parts)
        findings += [] if finding is None else [finding]
        sound += finding is None
    return Verdict(tuple(findings), sound)


def _fed(case: Case) -> dict[int, list[Placed]]:
    """The cisterns that feed each body of water."""
    found: dict[int, list[Placed]] = {}
    for place in case.circuit.devices(Role.FEEDS):
        found.setdefault(case.bodies.of(place.node), []).append(place)
    return found


def _filled(case: Case, body: int) -> tuple[str, ...]:
    """The parts on that water which only the cistern's height fills, in the order of their roles."""
    circuit, of = case.circuit, case.bodies.of
    found = [
        place.part for role in _FILLED for place in circuit.devices(role) if _stands_on(case, place, body)
    ]
    if not any(of(place.node) == body for place in circuit.devices(Role.MAIN)):
        lifted = case.kept("parts that a pump lifts water to", lambda: _lifted(case))
        outlets = (place for place in circuit.devices(Role.DRAWS) if _stands_on(case, place, body))
        found += [place.part for place in outlets if place.part not in lifted]
    return tuple(dict.fromkeys(found))


def _lifted(case: Case) -> frozenset[str]:
    """The parts behind a pump in drinking water, other than one that only drives a secondary return round."""
    ways = supplies(case)
    found: set[str] = set()
    for place in ways.drinking_pumps:
        inlet, outlet = (Joint(place.part, port) for port in (place.device.port, place.device.other))
        back = ways.walk([outlet], partial(past, ways, place.part))
        stores = (
            giver for giver in ways.givers if giver.stores and {*giver.ports, giver.inlet} & back.keys()
        )
        if not any(inlet in ways.walk([hot_port(ways, giver)], ways.drawn_outside) for giver in stores):
            found.update(joint.part for joint in ways.walk([outlet], partial(_drawn_past, ways, place.part)))
    return frozenset(found)


def _drawn_past(ways: Supplies, pump: str, step: Step) -> bool:
    """Whether drawn water takes a step, through stores too, and not through that pump."""
    return ways.drawn(step) and (bool(step.pipe) or step.start.part != pump)


def _stands_on(case: Case, place: Placed, body: int) -> bool:
    return any(node >= 0 and case.bodies.of(node) == body for node in (place.node, place.other))


def _judged(case: Case, cisterns: tuple[str, ...], parts: tuple[str, ...]) -> Finding | None:
    heights = {part: case.heights.of(part) for part in parts}
    levels = {cistern: case.value(cistern, LEVEL) for cistern in cisterns}
    missing = [f"{cistern}.{LEVEL}" for cistern, level in levels.items() if level is None]
    missing += case.heights.missing_for([part for part, height in heights.items() if height is None])
    told = [float(level) for level in levels.values() if level is not None]
    if told and len(told) == len(levels):
        level = max(told)
        above = [
            part for part, height in heights.items() if height is not None and height > level + _ROUNDING_M
        ]
        if above:
            return _fault(
                case, cisterns, above, level, max(height for height in heights.values() if height is not None)
            )
    return _unanswered(case, cisterns, parts, tuple(missing)) if missing else None


def _fault(case: Case, cisterns: tuple[str, ...], above: list[str], level: float, highest: float) -> Finding:
    one = len(above) == 1
    says = Says(
        "The water in {cisterns} stands at {level} m. {parts} {verb} up to {by} m higher, and never {fill}.",
        {
            "cisterns": named(case.drawing, cisterns),
            "level": figure(level),
            "parts": upper(named(case.drawing, above)),
            "verb": a_word("stands") if one else a_word("stand"),
            "by": figure(highest - level),
            "fill": a_word("fills") if one else a_word("fill"),
        },
    )
    numbers = {"water_level_m": level, "highest_m": highest}
    return Finding(NAME, Grade.FAULT, says, (*cisterns, *above), numbers=numbers)


def _unanswered(
    case: Case, cisterns: tuple[str, ...], parts: tuple[str, ...], missing: tuple[str, ...]
) -> Finding:
    says = Says(
        "Whether the water in {cisterns} stands above all that it feeds is not known: {missing}.",
        {"cisterns": named(case.drawing, cisterns), "missing": shortened(missing)},
    )
    unknown = tuple(part for part in parts if case.heights.of(part) is None)
    return Finding(NAME, Grade.UNANSWERED, says, (*cisterns, *unknown), missing=missing, would_be=Grade.FAULT)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The one cistern raised until its water stands half a metre above the highest part."""
    cisterns = [part for part in finding.components if is_cistern(case, part)]
    if len(cisterns) != 1:
        return
    level = round(finding.numbers["highest_m"] + 0.5, 2)
    says = Says(
        "Raise {cistern} until its water stands at {level} m.",
        {"cistern": case.drawing.name(cisterns[0]), "level": figure(level)},
    )
    yield Proposal(says, set_field(case.drawing, cisterns[0], LEVEL, level))

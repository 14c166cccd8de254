"""Two connections of a part are changed over.

Flags: A store, or a heat source that heats drinking water on its way, whose cold feed comes to another
    connection than its cold, whose hot water is drawn from another than its hot, or whose secondary circuit
    comes back by another than its secondary return. A tap or a blending valve whose cold gets the hot water;
    a blending valve that water is drawn from by its cold. A heat source whose flow leads to the return of all
    that it feeds: its own flow and return are changed over, or theirs. A separator that the heat source's
    water does not enter above and leave below. As advice, a coil or an exchanger whose return the flow pipe
    comes to, and a heat source that feeds but one emitter, by its return: which of the two it is cannot be
    told, and an emitter heats by either end. For that reason an emitter is left alone where others, or the
    arrow of a pump, show that the heat source is joined the right way. Nothing is said where water can go
    either way; nor of a store's connection that nothing is on, or that its relief valve should be on: these
    are found as what they are.
Why: The connections are not alike. A store's cold comes in low, so that it pushes the hot up and out at the
    top: changed over, the cold falls through the hot and stirs it, taps run lukewarm, and relief valve and
    thermostat feel other water than they are made to feel. Heating water the other way round passes filter,
    vessel and safety valve in the wrong order, and a separator sends its hot water straight back to the
    heat source. A coil with its flow below heats the store slower and less evenly. And whoever opens a cold
    tap does not reckon with hot water.
Remedy: Change the two pipes over, at the part itself.
Source: Common practice, no source: the maker's marks on the connections.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_water import RELIEF_PORT, home_of
from circuitcheck.checks.supplying import supplies
from circuitcheck.checks.wording import named
from circuitcheck.circuit.heat_connections import Side, Turned, Whose, turned
from circuitcheck.circuit.water_connections import Changed, Tells, WaterConnections
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import spoken

NAME = "connections-changed-over"

WATER = {
    Tells.FED: (
        "The connections {right} and {other} of {thing} are changed over: cold water comes to the {other}."
    ),
    Tells.DRAWN: (
        "The connections {right} and {other} of {thing} are changed over: water is drawn from the {other}, and the "
        "{right} leads to no tap."
    ),
    Tells.COMES_BACK: (
        "The connections {right} and {other} of {thing} are changed over: the water of the secondary circuit comes "
        "back by the {other}."
    ),
    Tells.HOT_ON_COLD: (
        "The connections {right} and {other} of {thing} are changed over: hot water comes to the {other}, and none "
        "to the {right}."
    ),
}
SOURCE = (
    "The flow and the return of {thing} are changed over: its flow leads to the return of {taker}, which is "
    "right for the other heat source."
)
EITHER = (
    "Either the flow and the return of {thing} are changed over, or those of {taker}: the flow of the one leads "
    "to the return of the other."
)
EITHER_ALL = (
    "Either the flow and the return of {thing} are changed over, or those of all that is fed from there: the flow "
    "leads to the return of {taker}."
)
SEPARATOR = (
    "The connections {flow} and {return} of {thing} are changed over: the heat source's water has to come in above "
    "and to leave below."
)
TAKER = {
    Role.HEATED_BY_COIL: (
        "The flow and the return of the coil in {thing} are changed over: it heats slower and less evenly."
    ),
    Role.EXCHANGES: (
        "The flow and the return of one side of {thing} are changed over: hot water enters it where it should "
        "leave, and less heat goes over."
    ),
}
MOST_TAKERS = 6
"""With more to change over than these, the pipes are changed over at the heat source."""


def judge(case: Case) -> Verdict:
    """A finding for each part of which two connections are changed over."""
    drinking = _drinking(case)
    findings = []
    sound = 0
    for giver in drinking.givers:
        case.rests_on_water_ways(case.bodies.of(case.circuit.node(*giver.inlet)))
        changed = drinking.changed(giver)
        if changed is None:
            sound += 1
        else:
            findings.append(_of_water(case, changed))
    for changed in drinking.changed_at_taps():
        findings.append(_of_water(case, changed))
    for place in case.circuit.devices(Role.HEATS):
        case.rests_on_water_ways(case.bodies.of(place.other))
        sound += 1
    for each in _turned(case):
        findings.append(_of_heat(case, each))
        sound -= sum(side.role is Role.HEATS for side in each.sides)
    return Verdict(tuple(findings), sound)


def _drinking(case: Case) -> WaterConnections:
    return case.kept(NAME, lambda: WaterConnections(supplies(case), lambda: _spoken_for(case)))


def _turned(case: Case) -> tuple[Turned, ...]:
    return case.kept(f"{NAME} heat", lambda: turned(case.circuit, case.bodies))


def _spoken_for(case: Case) -> Collection[frozenset[Joint]]:
    """The relief connection of a store, and the one that its temperature relief valve hangs on instead."""
    homes = (home_of(case, valve) for valve in case.circuit.devices(Role.RELIEVES_BY_TEMPERATURE))
    return frozenset(
        frozenset({Joint(home.store, home.port), Joint(home.store, RELIEF_PORT)})
        for home in homes
        if home.store and not home.on_relief_port
    )


def _of_water(case: Case, changed: Changed) -> Finding:
    values = {
        "thing": case.drawing.name(changed.right.part),
        "right": spoken(changed.right.port),
        "other": spoken(changed.other.port),
    }
    pipes = _pipes(case, changed.right, changed.other)
    return Finding(NAME, Grade.FAULT, Says(WATER[changed.tells], values), (changed.right.part,), pipes=pipes)


def _of_heat(case: Case, each: Turned) -> Finding:
    first = each.sides[0]
    parts = tuple(side.flow.part for side in each.sides)
    takers = [side.flow.part for side in each.against]
    grade = Grade.FAULT
    if first.role is Role.HEATS:
        template = SOURCE if each.whose is Whose.SURELY else EITHER if len(takers) == 1 else EITHER_ALL
        if each.whose is Whose.EITHER and [side.role for side in each.against] == [Role.EMITS]:
            grade = Grade.ADVICE
    elif first.role is Role.SEPARATES:
        template = SEPARATOR
    else:
        template, grade = TAKER[first.role], Grade.ADVICE
    values = {
        "thing": named(case.drawing, parts),
        "taker": named(case.drawing, takers[:1]),
        "flow": spoken(first.flow.port),
        "return": spoken(first.back.port),
    }
    says = Says(template, values)
    pipes = _pipes(case, *(port for side in each.sides for port in (side.flow, side.back)))
    return Finding(NAME, grade, says, (*parts, *takers[:1]), pipes=pipes)


def _pipes(case: Case, *ports: Joint) -> tuple[str, ...]:
    joined = case.drawing.joined
    return tuple(dict.fromkeys(joined[port] for port in ports if port in joined))


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The two pipes changed over at the part; where it may be either, at all that the heat source feeds too."""
    part = finding.components[0]
    drinking = _drinking(case)
    for changed in (*map(drinking.changed, drinking.givers), *drinking.changed_at_taps()):
        if changed is not None and _of_water(case, changed) == finding:
            yield from _changed_over(case, (changed.right, changed.other))
    for each in _turned(case):
        if each.sides[0].flow.part == part and _of_heat(case, each) == finding:
            yield from _changed_over(case, *map(_ports, each.sides))
            if each.whose is Whose.EITHER and 0 < len(each.against) <= MOST_TAKERS:
                yield from _changed_over(case, *map(_ports, each.against))


def _ports(side: Side) -> tuple[Joint, Joint]:
    return side.flow, side.back


def _changed_over(case: Case, *pairs: tuple[Joint, Joint]) -> Iterator[Proposal]:
    work = Fitting(case.drawing, case.lines)
    try:
        for one, other in pairs:
            work.change_over(one.part, one.port, other.port)
    except EditError:
        return
    one, other = pairs[0]
    values = {
        "one": spoken(one.port),
        "other": spoken(other.port),
        "thing": named(case.drawing, [pair[0].part for pair in pairs]),
    }
    template = "Change over the pipes on {one} and {other} of {thing}."
    if len({(a.port, b.port) for a, b in pairs}) > 1:
        template = "Change over the pipes on the flow and the return of each of {thing}."
    yield Proposal(Says(template, values), work.drawing)

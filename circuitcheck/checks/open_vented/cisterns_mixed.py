"""Heating and hot water share a cistern.

Flags: One cistern that feeds heating water and also the hot water of a store or tap, or that is said
    to serve the one and feeds the other. Old direct hot water, where the heat source heats the store's
    own water and nothing else, is no such case.
Why: Heating water is black with rust and dosed with inhibitor. Through a shared cistern, or the pipes
    that meet below it, it gets into water that people wash in and drink, and fresh water that is
    drawn off brings new air and lime to the radiators every day.
Remedy: Give the heating a small feed cistern of its own, and bring its vent over that one.
Source: WFR Schedule 2, paragraph 15 and its guidance (from memory); BS 5449: a separate feed and
    expansion cistern.
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.wording import upper
from circuitcheck.circuit.joining import Placed
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word

NAME = "cisterns-mixed"

_SERVES = {"heating": a_word("heating"), "hot_water": a_word("hot water")}


def judge(case: Case) -> Verdict:
    """One danger for each cistern that both waters share."""
    cisterns = case.circuit.devices(Role.FEEDS)
    if not cisterns:
        return Verdict()
    heating, drawn = _heating(case), _drawn(case)
    findings, sound = [], 0
    for cistern in cisterns:
        body = case.bodies.of(cistern.node)
        feeds = tuple(name for name, bodies in (("heating", heating), ("hot_water", drawn)) if body in bodies)
        serves = case.value(cistern.part, "serves")
        if len(feeds) == 2:
            findings.append(_both(case, cistern))
        elif feeds and serves is not None and serves not in feeds:
            findings.append(_said_otherwise(case, cistern, str(serves), feeds[0]))
        else:
            sound += bool(feeds)
    return Verdict(tuple(findings), sound)


def _heating(case: Case) -> frozenset[int]:
    """The bodies of water that give heat to rooms, or to a store through its coil, or that heat alone
    makes heating water: a heat source's, with no hot water in it."""
    circuit, bodies = case.circuit, case.bodies
    found = set[int]()
    for role in (Role.EMITS, Role.HEATED_BY_COIL):
        found |= {bodies.of(place.node) for place in circuit.devices(role)}
    return frozenset(found | (bodies.with_heat_source - _drawn(case)))


def _drawn(case: Case) -> frozenset[int]:
    """The bodies of water with a store's hot water in them, or from which water is drawn."""
    circuit, bodies = case.circuit, case.bodies
    found = set[int]()
    for role in (Role.STORES_OPEN, Role.STORES_AT_MAINS_PRESSURE, Role.DRAWS):
        for place in circuit.devices(role):
            found |= {bodies.of(node) for node in (place.node, place.other) if node >= 0}
    return frozenset(found)


def _both(case: Case, cistern: Placed) -> Finding:
    says = Says(
        "{cistern} feeds both heating water and hot water: the two can mix.",
        {"cistern": upper(case.drawing.name(cistern.part))},
    )
    return Finding(NAME, Grade.DANGER, says, (cistern.part,))


def _said_otherwise(case: Case, cistern: Placed, serves: str, feeds: str) -> Finding:
    says = Says(
        "{cistern} is said to serve {serves}, but feeds {feeds} water: the two would share it.",
        {
            "cistern": upper(case.drawing.name(cistern.part)),
            "serves": _SERVES[serves],
            "feeds": _SERVES[feeds],
        },
    )
    return Finding(NAME, Grade.DANGER, says, (cistern.part,))

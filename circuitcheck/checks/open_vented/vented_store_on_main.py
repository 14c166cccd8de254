"""A vented store is joined to the main.

Flags: A vented store whose water the cold main reaches by pipes, with no cistern between. A check
    valve or reducing valve on the way does not part them, since it lets the main through.
Why: A vented store is a thin vessel made for a few metres of water. Mains pressure bursts it, or
    drives water out of its vent without end; and hot water can get back into the main.
Remedy: Feed it from a storage cistern above it, or fit a store made for mains pressure with all its
    safety devices.
Source: WFR Schedule 2 and Approved Document G (England), G3: a vented store is fed from a cistern.
"""

from __future__ import annotations

from collections.abc import Callable

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.wording import named, upper
from circuitcheck.circuit.joining import Circuit
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Passage, Role, Way

NAME = "vented-store-on-main"

_FORWARD_ONLY = frozenset({Way.ONE_WAY, Way.SPRING, Way.REDUCING})


def judge(case: Case) -> Verdict:
    """One danger for each vented store that a main's water comes to, or whose water comes to a main."""
    circuit, bodies = case.circuit, case.bodies
    stores = circuit.devices(Role.STORES_OPEN)
    if not stores:
        return Verdict()
    mains = circuit.devices(Role.MAIN)
    maybe = {bodies.of(place.node) for place in mains}
    ways = _ways(circuit) if any(bodies.of(store.node) in maybe for store in stores) else None
    findings, sound = [], 0
    for store in stores:
        joined: tuple[str, ...] = ()
        if ways is not None and bodies.of(store.node) in maybe:
            from_store = _reached({store.node, store.other}, ways)
            joined = tuple(
                place.part
                for place in mains
                if place.node in from_store or {store.node, store.other} & _reached({place.node}, ways)
            )
        if not joined:
            sound += 1
            continue
        says = Says(
            "{store} is joined to {mains} with no cistern between: it is not made for mains pressure.",
            {"store": upper(case.drawing.name(store.part)), "mains": named(case.drawing, joined)},
        )
        findings.append(Finding(NAME, Grade.DANGER, says, (store.part, *joined)))
    return Verdict(tuple(findings), sound)


Onward = Callable[[int], list[int]]


def _ways(circuit: Circuit) -> Onward:
    """Where water can go on to from each node, in the directions that pressure can drive it."""
    found: dict[int, list[int]] = {}
    for part, plan in circuit.plans.items():
        for passage in plan.passages:
            if passage.gap:
                continue
            a, b = circuit.node(part, passage.a), circuit.node(part, passage.b)
            found.setdefault(a, []).append(b)
            if not _forward_only(passage):
                found.setdefault(b, []).append(a)
    return lambda node: found.get(node, [])


def _forward_only(passage: Passage) -> bool:
    return passage.pressure_way in _FORWARD_ONLY


def _reached(starts: set[int], ways: Onward) -> set[int]:
    seen = set(starts)
    todo = list(starts)
    while todo:
        for there in ways(todo.pop()):
            if there not in seen:
                seen.add(there)
                todo.append(there)
    return seen

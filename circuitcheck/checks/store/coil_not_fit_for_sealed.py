"""Store's coil is not fit for a sealed circuit.

Flags: A store's coil in a sealed circuit whose highest pressure is below the safety valve's setting plus
    0.35 bar. Exactly that passes. The lowest set of several safety valves counts.
Why: In a sealed circuit the coil bears whatever the safety valve lets the pressure climb to, and a little
    more while it opens. A coil made for the head of a cistern gives way under that, and heating water
    gets into the hot water.
Remedy: Use a store whose coil is stated for the safety valve's setting plus 0.35 bar or more.
Source: BS 5449, stores in sealed systems.
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.cutting_off import HeatedWater, heated_waters
from circuitcheck.checks.store_water import unanswered
from circuitcheck.checks.wording import figure
from circuitcheck.circuit.joining import Placed
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import within

NAME = "coil-not-fit-for-sealed"

NOT_KNOWN = "{thing}: whether its coil bears the sealed circuit rests on what is not known: {missing}."


def judge(case: Case) -> Verdict:
    """One fault for each coil that the sealed circuit can press harder than it is made for."""
    findings, sound = [], 0
    coils = case.circuit.devices(Role.HEATED_BY_COIL)
    waters = heated_waters(case) if coils else ()
    for coil in coils:
        finding = _judged(case, coil, waters)
        if isinstance(finding, Finding):
            findings.append(finding)
        sound += finding is True
    return Verdict(tuple(findings), sound)


def _judged(case: Case, coil: Placed, waters: tuple[HeatedWater, ...]) -> Finding | bool:
    """A finding; True where the coil is fit, False where nothing is to be judged."""
    body = case.bodies.of(coil.node)
    own = [water for water in waters if water.heated.body == body]
    if not own or any(water.is_open_vented for water in own):
        return False
    valves = {place.part: place for water in own for place in water.reached(Role.RELIEVES_HEATING)}
    if not valves:
        return False
    settings = {part: _setting(case, place) for part, place in valves.items()}
    bears = case.value(coil.part, "coil_maximum_pressure_bar")
    margin = case.limit("store.coil_margin_bar").value
    known = {part: bar for part, (bar, _) in settings.items() if bar is not None}
    lowest = min(known, key=lambda part: known[part], default="")
    if bears is not None and lowest and within(known[lowest] + margin, bears):
        return True
    missing = [field for bar, field in settings.values() if bar is None]
    missing += [f"{coil.part}.coil_maximum_pressure_bar"] if bears is None else []
    if missing:
        return unanswered(case, NAME, NOT_KNOWN, (coil.part, *valves), missing, Grade.FAULT)
    needed = known[lowest] + margin
    says = Says(
        "The coil of {store} bears {bears} bar at most; {valve} opens at {set} bar, so it must bear "
        "{needed} bar.",
        {
            "store": case.drawing.name(coil.part),
            "bears": figure(bears),
            "valve": case.drawing.name(lowest),
            "set": figure(known[lowest]),
            "needed": figure(needed),
        },
    )
    numbers = {
        "coil_maximum_pressure_bar": float(bears),
        "set_pressure_bar": known[lowest],
        "margin_bar": float(margin),
        "needed_bar": needed,
    }
    return Finding(NAME, Grade.FAULT, says, (coil.part, lowest), numbers=numbers)


def _setting(case: Case, valve: Placed) -> tuple[float | None, str]:
    """A safety valve's setting in bar, and the field it stands in."""
    if not valve.device.built_in:
        return _number(case, valve.part, "set_pressure_bar")
    own, field = _number(case, valve.part, "built_in_safety_valve_bar")
    if own is None and "built_in_safety_valve_bar" not in case.drawing.components[valve.part].data:
        return _number(case, valve.part, "maximum_pressure_bar")
    return own, field


def _number(case: Case, part: str, field: str) -> tuple[float | None, str]:
    value = case.value(part, field)
    return (None if value is None else float(value)), f"{part}.{field}"

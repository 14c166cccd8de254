"""A discharge pipe rises, or falls too little.

Flags: After a store's tundish, and anywhere in the discharge of the heating's safety valve or of a
    valve without a tundish, a pipe that rises on its way to the end, or falls less than 1 in 200. Of a
    pipe that drops straight down below a tundish, what comes after the drop counts. Before a store's
    tundish only a pipe that is said to rise is flagged. Exactly 1 in 200 passes.
Why: Water stands in a pipe that rises or lies level. It holds back the next discharge, freezes at an
    outside wall and closes the pipe with ice, and rots the seat of the valve above it.
Remedy: Let the pipe fall all the way to its end, at least 5 mm in each metre, so that it empties itself.
Source: Approved Document G (England) 3.54 and 3.56b; WFR guidance G19.3c (a self-draining gradient). For
    the heating's safety valve: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.discharging import drop_of, fall_m, followed, unanswered
from circuitcheck.checks.wording import figure, upper
from circuitcheck.circuit.discharge import Discharge
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import fall_of, within

NAME = "discharge-rises"
ROUNDING_M = 1e-9


@dataclass(frozen=True, slots=True)
class _Fall:
    """A pipe as it falls on the way to the end. `missing`: what must be known to say more."""

    pipe: str
    fall_m: float | None
    length_m: float | None
    drop_m: float
    too_little: bool
    missing: tuple[str, ...] = ()

    @property
    def slope(self) -> float:
        """Metres it falls a metre, without its drop; 0 where its length is not known."""
        if self.fall_m is None or self.length_m is None:
            return 0.0
        return fall_of(self.fall_m, self.length_m, self.drop_m)


def judge(case: Case) -> Verdict:
    """One finding for each relief or safety valve whose discharge does, or may, hold water back."""
    findings, sound = [], 0
    for discharge in case.discharges:
        if not discharge.runs:
            continue
        least = float(case.limit("discharge.least_fall_m_a_m").value)
        falls = _falls(case, discharge, least)
        wrong = [fall for fall in falls if fall.too_little]
        missing = tuple(field for fall in falls for field in fall.missing)
        if wrong:
            findings.append(_finding(case, discharge, wrong, least))
        elif missing:
            template = "Whether the discharge of {thing} falls all the way is not known: {missing}."
            thing = case.drawing.name(discharge.valve.part)
            pipes = tuple(fall.pipe for fall in falls if fall.missing)
            findings.append(unanswered(NAME, template, {"thing": thing}, discharge, missing, pipes=pipes))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _falls(case: Case, discharge: Discharge, least: float) -> list[_Fall]:
    """Every pipe of the discharge once, in the order of the ways it takes."""
    found: dict[str, _Fall] = {}
    for run in discharge.runs:
        before = run.before_tundish if discharge.for_store and run.tundish is not None else ()
        for pipe, leaves in followed(discharge, run):
            if pipe not in found:
                found[pipe] = (
                    _before(case, pipe, leaves) if pipe in before else _fall(case, pipe, leaves, least)
                )
    return list(found.values())


def _before(case: Case, pipe: str, leaves: Joint) -> _Fall:
    """Before the tundish a pipe is judged by its bore and length; that it rises is wrong all the same."""
    fall, length = fall_m(case, pipe, leaves), case.length_m(pipe)
    rises = fall is not None and not within(0, fall)
    return _Fall(pipe, fall, length.value if length else None, 0.0, rises)


def _fall(case: Case, pipe: str, leaves: Joint, least: float) -> _Fall:
    fall = fall_m(case, pipe, leaves)
    measured = case.length_m(pipe)
    length = measured.value if measured else None
    below = _leaves_tundish(case, leaves)
    drop = drop_of(case, pipe, leaves) if below else 0.0
    if fall is None:
        return _Fall(
            pipe, None, length, drop or 0.0, False, _unknown(pipe, rise=True, length=length, drop=drop)
        )
    if length is None:
        # A pipe that rises below its drop, or has none and does not fall, is wrong however long it is.
        rest = fall - (drop or 0.0)
        too_little = rest < -ROUNDING_M or (not drop and rest <= ROUNDING_M)
        missing = () if too_little else _unknown(pipe, rise=False, length=None, drop=drop)
        return _Fall(pipe, fall, None, drop or 0.0, too_little, missing)
    # A drop takes from the fall of the rest, so that what falls too little with none does so with any.
    too_little = not within(least, fall_of(fall, length, drop or 0.0))
    missing = () if too_little or drop is not None else (f"{pipe}.straight_drop_m",)
    return _Fall(pipe, fall, length, drop or 0.0, too_little, missing)


def _leaves_tundish(case: Case, leaves: Joint) -> bool:
    devices = case.circuit.plans[leaves.part].devices
    return any(each.role is Role.SHOWS_DISCHARGE and each.other == leaves.port for each in devices)


def _unknown(pipe: str, *, rise: bool, length: float | None, drop: float | None) -> tuple[str, ...]:
    lacks = {"rise_m": rise, "length_m": length is None, "straight_drop_m": drop is None}
    return tuple(f"{pipe}.{field}" for field, missing in lacks.items() if missing)


def _finding(case: Case, discharge: Discharge, wrong: Sequence[_Fall], least: float) -> Finding:
    worst = min(wrong, key=lambda each: (within(0, each.fall_m or 0), each.slope))
    fall, drop = worst.fall_m or 0.0, worst.drop_m
    values: dict[str, str | float] = {
        "thing": case.drawing.name(discharge.valve.part),
        "pipe": upper(case.drawing.name(worst.pipe)),
        "rise": figure((drop - fall) * 1000),
        "fall": figure((fall - drop) * 1000),
        "length": figure((worst.length_m or 0.0) - drop),
        "drop": figure(drop * 1000),
        "one_in": figure(1 / least),
    }
    rest = fall - drop
    where = " below its drop of {drop} mm" if drop else ""
    template = "{pipe} in the discharge of {thing} "
    if rest < -ROUNDING_M:
        template += "rises by {rise} mm" + where + "."
    elif rest <= ROUNDING_M:
        template += "runs level" + where + "."
    else:
        template += "falls {fall} mm in {length} m" + where + "; it must fall at least 1 in {one_in}."
    numbers = {"fall_m": fall, "least_fall_m_a_m": least, "straight_drop_m": drop}
    if worst.length_m is not None:
        numbers["length_m"] = worst.length_m
    return Finding(
        NAME,
        Grade.DANGER,
        Says(template, values),
        components=(discharge.valve.part,),
        pipes=tuple(fall.pipe for fall in wrong),
        numbers=numbers,
    )

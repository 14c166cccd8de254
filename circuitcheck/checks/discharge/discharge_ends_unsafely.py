"""A discharge ends where it can do harm.

Flags: A discharge end inside the building; at low level outside or on a roof where people can stand
    in the way; on a roof, at high level or into a soil stack without what the rules ask of such an
    end. An end below the grating of a gully is safe as it is.
Why: What comes out may be boiling water and steam, at any hour. It scalds whoever stands there, and
    softens felt, asphalt and plastic gutters; in a soil stack with a water trap it drives foul air
    into the house.
Remedy: End the pipe below the grating of a trapped gully and above its water; or at low level, pointing
    down, up to 100 mm above the ground, with a guard that leaves it visible; or high up into a metal
    hopper, 3 m from any plastic gutter. Into a soil stack only by a mechanical seal, on a branch of its
    own that stands the heat and is marked.
Source: Approved Document G (England) 3.60 to 3.63; WFR guidance G19.3e; NHBC Standards 8.1.9.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.wording import named, upper
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.told import a_word

NAME = "discharge-ends-unsafely"

_PLACES = {
    "outside_low_level": a_word("outside at low level"),
    "gully_below_grating": a_word("below the grating of a gully"),
    "roof_or_high_level": a_word("on a roof or at high level"),
    "soil_stack": a_word("in a soil stack"),
    "inside": a_word("inside the building"),
}
_LACKS = {
    "clear_of_people": a_word("clear of people"),
    "conditions_met": a_word("as the rules ask of such an end"),
}


def judge(case: Case) -> Verdict:
    """One finding for each discharge end that is not, or may not be, safe."""
    findings, sound = [], 0
    for end, valves in _ends(case).items():
        rules = {rule["place"]: rule for rule in case.limit("discharge.ends").value}
        found = _judge_end(case, end, valves, rules)
        if found is None:
            sound += 1
        else:
            findings.append(found)
    return Verdict(tuple(findings), sound)


def _ends(case: Case) -> dict[str, tuple[str, ...]]:
    """The discharge ends that a relief or safety valve reaches, each with its valves."""
    found: dict[str, dict[str, None]] = {}
    for discharge in case.discharges:
        for run in discharge.runs:
            found.setdefault(run.end, {})[discharge.valve.part] = None
    return {end: tuple(valves) for end, valves in found.items()}


def _judge_end(
    case: Case, end: str, valves: tuple[str, ...], rules: Mapping[str, Mapping[str, Any]]
) -> Finding | None:
    place = case.value(end, "place")
    values = {
        "end": case.drawing.name(end),
        "let": a_word("lets") if len(valves) == 1 else a_word("let"),
        "place": _PLACES.get(place, ""),
        "valves": named(case.drawing, valves),
    }
    if place not in rules:
        return _unknown(end, valves, (f"{end}.place",), values)
    if rules[place].get("never"):
        template = "{end}, where {valves} {let} water out, is {place}."
        values["end"] = upper(values["end"])
        return Finding(NAME, Grade.DANGER, Says(template, values), (end, *valves))
    needs = {need: case.value(end, need) for need in rules[place]["needs"]}
    failed = [need for need, met in needs.items() if met is False]
    if failed:
        template = "{end}, where {valves} {let} water out, is {place} and not {lacks}."
        values["end"] = upper(values["end"])
        lacks = " nor ".join(_LACKS[need] for need in failed)
        return Finding(NAME, Grade.DANGER, Says(template, {**values, "lacks": lacks}), (end, *valves))
    missing = tuple(f"{end}.{need}" for need, met in needs.items() if met is None)
    return _unknown(end, valves, missing, values) if missing else None


def _unknown(end: str, valves: tuple[str, ...], missing: tuple[str, ...], values: dict[str, str]) -> Finding:
    template = "Whether {end}, where {valves} {let} water out, is safe is not known: {missing}."
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(template, {**values, "missing": ", ".join(missing)}),
        (end, *valves),
        missing=missing,
        would_be=Grade.DANGER,
    )

"""A storage cistern runs dry.

Flags: A storage cistern that holds less than a bath draws, where a bath is fed from it. Several
    cisterns that feed the same water count together.
Why: The float valve lets water in far more slowly than a bath draws it. An empty cistern lets air
    into the pipes, the hot tap stops half way through the bath, and the air lock has to be driven
    out. Worse, a mixing shower on the same cistern may lose its cold water first.
Remedy: Fit a cistern that holds more than the largest bath takes.
Source: Common practice, no source: a bath takes about 100 litres.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.wording import figure, named, upper
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "cistern-runs-dry"


def judge(case: Case) -> Verdict:
    """One advice for each water whose cisterns hold less than a bath that is fed from them draws."""
    fed: dict[int, list[str]] = {}
    for place in case.circuit.devices(Role.FEEDS):
        fed.setdefault(case.bodies.of(place.node), []).append(place.part)
    if not fed:
        return Verdict()
    findings, sound = [], 0
    for body, cisterns in fed.items():
        found = _judged(case, cisterns, _outlets_on(case, body))
        if found is not None:
            findings.append(found)
        else:
            sound += bool(_baths(case, _outlets_on(case, body)))
    return Verdict(tuple(findings), sound)


def _outlets_on(case: Case, body: int) -> tuple[str, ...]:
    outlets = case.circuit.devices(Role.DRAWS)
    return tuple(place.part for place in outlets if body in map(case.bodies.of, (place.node, place.other)))


def _baths(case: Case, outlets: tuple[str, ...]) -> tuple[str, ...]:
    """The outlets that are a bath or, their fitting not being known, may be one."""
    return tuple(outlet for outlet in outlets if case.value(outlet, "fitting") in ("bath", None))


def _judged(case: Case, cisterns: list[str], outlets: tuple[str, ...]) -> Finding | None:
    maybe = _baths(case, outlets)
    if not maybe:
        return None
    baths = tuple(outlet for outlet in maybe if case.value(outlet, "fitting") == "bath")
    draws = float(case.limit("storage_cistern.bath_draws_l").value)
    contents = {cistern: case.value(cistern, "content_l") for cistern in cisterns}
    known = sum(float(content) for content in contents.values() if content is not None)
    if known >= draws:
        return None
    missing = [f"{cistern}.content_l" for cistern, content in contents.items() if content is None]
    if not baths:
        missing += [f"{outlet}.fitting" for outlet in maybe]
    values: dict[str, str | float] = {
        "cisterns": named(case.drawing, cisterns),
        "baths": named(case.drawing, baths or maybe),
        "content": figure(known),
        "draws": figure(draws),
        "missing": ", ".join(missing),
    }
    components = (*cisterns, *(baths or maybe))
    numbers = {"bath_draws_l": draws}
    if missing:
        template = "Whether {cisterns} holds what {baths} draws, {draws} l, is not known: {missing}."
        return Finding(
            NAME,
            Grade.UNANSWERED,
            Says(template, values),
            components,
            numbers=numbers,
            missing=tuple(missing),
            would_be=Grade.ADVICE,
        )
    template = "{cisterns} holds {content} l; {baths} draws about {draws} l, so it can run dry."
    values["cisterns"] = upper(str(values["cisterns"]))
    return Finding(
        NAME, Grade.ADVICE, Says(template, values), components, numbers={**numbers, "content_l": known}
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A cistern that, with the others on its water, holds what a bath draws."""
    short = finding.numbers["bath_draws_l"] - finding.numbers.get("content_l", 0.0)
    cisterns = case.circuit.parts_with(Role.FEEDS)
    for cistern in finding.components:
        own = case.value(cistern, "content_l") if cistern in cisterns else None
        if own is not None:
            size = float(own) + short
            says = Says(
                "Fit a cistern that holds {size} l at least in place of {cistern}.",
                {"cistern": case.drawing.name(cistern), "size": figure(size)},
            )
            yield Proposal(says, set_field(case.drawing, cistern, "content_l", size))

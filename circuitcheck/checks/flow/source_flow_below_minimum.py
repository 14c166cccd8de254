"""Heat source gets less water than it needs.

Flags: In some situation in which the pump runs, pump run-on with the zones shut included, the solved
    flow through the heat source is below its least flow. Thermostatic heads are taken as open. A heat
    source with a bypass of its own built in looks after its least flow itself, and is passed.
Why: A heat source makes its heat whether the water takes it away or not. With too little water
    passing, that water boils against the hot metal, bangs, and trips the limit; the burner cuts in and
    out and the heat exchanger cracks in the end.
Remedy: Set the bypass lower so that it opens sooner, give the pump a larger setting, or widen what
    holds the water back between pump and heat source.
Source: The heat source's own least flow; friction by Colebrook-White, network by Todini and Pilati,
    1988. Resistances that the drawing does not give: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.bypass_cures import body_of, while_pumping, with_new_bypass, with_setting
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.solving import barred, if_otherwise, in_words, unanswered
from circuitcheck.checks.wording import figure, upper
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "source-flow-below-minimum"
QUESTION = "does it always get its least flow?"


def judge(case: Case) -> Verdict:
    """One finding for each heat source on pumped water."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.HEATS):
        body = case.solved.at(place)
        if body is None:
            continue
        heat = place.part
        least = case.value(heat, "minimum_flow_lpm")
        if least == 0 or "bypass" in (case.value(heat, "built_in") or ()):
            sound += 1
            continue
        finding = _judged(case, heat, body, least)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _judged(case: Case, heat: str, body: SolvedBody, least: float | None) -> Finding | None:
    bar = barred(case, body)
    if least is None or bar is not None:
        missing, why = bar or ((), "")
        own = () if least is not None else (f"{heat}.minimum_flow_lpm",)
        return unanswered(case, NAME, heat, QUESTION, (*own, *missing), Grade.FAULT, why)
    flows = [(flow, run) for run in body.runs if (flow := _through(heat, run)) is not None]
    flow, run = min(flows, key=lambda each: each[0], default=(least, None))
    if run is None or flow >= least:
        return None
    halved, doubled = (_again(heat, other, run.row) for other in body.least_and_most)
    template = "{thing} gets {flow} l/min in {situation} and needs {least}.{otherwise}"
    if flow < 0:
        template = "{flow} l/min run backward through {thing} in {situation}; it needs {least} forward."
    says = Says(
        template,
        {
            "thing": case.drawing.name(heat) if flow < 0 else upper(case.drawing.name(heat)),
            "flow": figure(abs(flow)),
            "least": figure(least),
            "situation": in_words(run),
            "otherwise": if_otherwise(halved, doubled),
        },
    )
    numbers = {"flow_lpm": flow, "minimum_flow_lpm": least}
    return Finding(NAME, Grade.FAULT, says, (heat, *sorted(run.situation.running - {heat})), numbers=numbers)


def _through(heat: str, run: Run) -> float | None:
    """Flow through the heat source where some pump of its water runs, else None."""
    if not set(run.body.pumps) & run.situation.running:
        return None
    return run.flow_lpm(heat)


def _again(heat: str, body: SolvedBody, row: int) -> float:
    return body.runs[row].flow_lpm(heat) or 0.0


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A bypass set lower; one of its own where there is none."""
    heat = finding.components[0]
    body = body_of(case, heat)
    if body is None:
        return
    bypasses = [place for place in case.circuit.devices(Role.BYPASSES) if not place.device.built_in]
    own = [place.part for place in bypasses if case.solved.at(place) is body]
    for bypass in own:
        yield from with_setting(case, bypass, heat, while_pumping)
    if not own:
        yield from with_new_bypass(case, body.pumps, heat, while_pumping)

"""Bypass set wrong.

Flags: By the solved pressures the bypass stays shut at pump run-on, so that the heat source gets less
    than its least flow (or none): it is then no way round, and a fault. Or it opens while heating or hot
    water is called: advice. One that is fitted the wrong way round is another check's business.
Why: Set too high, the bypass never opens and the heat of the run-on stays in the heat source. Set too
    low, it takes water that the rooms should have, and sends hot water straight back so that the heat
    source never cools it enough to run well.
Remedy: Set it between the pressure across it with the zones open and the pressure at which the pump
    stands with them shut; both are told in the message.
Source: Common practice, no source. Pressures by the solved network (Colebrook-White; Todini and
    Pilati, 1988).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.bypass_cures import at_run_on, body_of, with_setting
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.solving import NO_FLOW_LPM, barred, calling, in_words, unanswered
from circuitcheck.checks.wording import figure, upper
from circuitcheck.circuit.situations import RUN_ON
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "bypass-set-wrong"
QUESTION = "is it set right?"


def judge(case: Case) -> Verdict:
    """One finding for each bypass that stands as a part of its own on pumped heating water."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.BYPASSES):
        body = case.solved.at(place)
        if place.device.built_in or body is None:
            continue
        bar = barred(case, body)
        if bar is not None:
            findings.append(unanswered(case, NAME, place.part, QUESTION, bar[0], Grade.FAULT, bar[1]))
            continue
        finding = _stays_shut(case, place.part, body) or _opens(case, place.part, body)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _stays_shut(case: Case, bypass: str, body: SolvedBody) -> Finding | None:
    for run in body.runs:
        across = run.difference_kpa(bypass)
        if run.situation.name != RUN_ON or across is None or across <= 0:
            continue
        if (run.flow_lpm(bypass) or 0.0) >= NO_FLOW_LPM:
            continue
        heat = _short_of_flow(case, body, run)
        if heat is None:
            continue
        says = Says(
            "{thing} stays shut at pump run-on: it opens at {set} kPa, the pump raises {across} kPa, and "
            "{heat} gets {flow} l/min.",
            {
                "thing": upper(case.drawing.name(bypass)),
                "set": figure(case.value(bypass, "set_difference_kpa")),
                "across": figure(round(across, 3)),
                "heat": case.drawing.name(heat),
                "flow": figure(run.flow_lpm(heat) or 0.0),
            },
        )
        return Finding(NAME, Grade.FAULT, says, (bypass, heat), numbers=_numbers(case, bypass, across, 0.0))
    return None


def _short_of_flow(case: Case, body: SolvedBody, run: Run) -> str | None:
    """A heat source of that water without its least flow; where that is not known, without any."""
    for place in case.circuit.devices(Role.HEATS):
        if case.solved.at(place) is body:
            least = case.value(place.part, "minimum_flow_lpm") or 0.0
            if (run.flow_lpm(place.part) or 0.0) < max(least, NO_FLOW_LPM):
                return place.part
    return None


def _opens(case: Case, bypass: str, body: SolvedBody) -> Finding | None:
    runs = [(flow, run) for run in calling(body) if (flow := run.flow_lpm(bypass) or 0.0) >= NO_FLOW_LPM]
    if not runs:
        return None
    flow, run = max(runs, key=lambda each: each[0])
    across = run.difference_kpa(bypass) or 0.0
    says = Says(
        "{thing} opens in {situation}: it is set to {set} kPa, {across} kPa stand across it, and "
        "{flow} l/min go straight back.",
        {
            "thing": upper(case.drawing.name(bypass)),
            "situation": in_words(run),
            "set": figure(case.value(bypass, "set_difference_kpa")),
            "across": figure(round(across, 3)),
            "flow": figure(flow),
        },
    )
    return Finding(NAME, Grade.ADVICE, says, (bypass,), numbers=_numbers(case, bypass, across, flow))


def _numbers(case: Case, bypass: str, across: float, flow: float) -> dict[str, float]:
    set_kpa = float(case.value(bypass, "set_difference_kpa"))
    return {"set_difference_kpa": set_kpa, "difference_kpa": across, "flow_lpm": flow}


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The setting between what stands across it while heat is called and what run-on needs."""
    bypass, *short = finding.components
    body = body_of(case, bypass)
    heats = [place.part for place in case.circuit.devices(Role.HEATS) if case.solved.at(place) is body]
    for heat in short or heats[:1]:
        yield from with_setting(case, bypass, heat, at_run_on)

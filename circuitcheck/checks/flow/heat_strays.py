"""Heat strays where it is not called.

Flags: While heating or hot water is called, an emitter or coil that is not called carries flow by the
    solved network, forward or backward. Thermostatic heads are taken as open; a zone without any
    control counts as called. Water that circulates by its warmth alone is not solved.
Why: Two circuits that share a pipe can push water through one another. Radiators grow warm in summer
    when the store is heated, heat is wasted, and backward flow blows air and hammers valves.
Remedy: Part the circuits: a check valve in the one that is pushed, a zone valve that shuts, or its
    return joined at a place where no other pump raises the pressure.
Source: Common practice, no source. Flows by the solved network (Colebrook-White; Todini and Pilati,
    1988).
"""

from __future__ import annotations

from itertools import islice

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.solving import NO_FLOW_LPM, barred, calling, in_words, unanswered
from circuitcheck.checks.wording import figure, upper
from circuitcheck.figures.solved import SolvedBody
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "heat-strays"
QUESTION = "does heat stray to what is not called?"


def judge(case: Case) -> Verdict:
    """One finding for each emitter or coil; one for the first pump of a water that can't be solved."""
    findings, sound = [], 0
    for body in case.solved.bodies:
        if not _could_stray(case, body):
            continue
        bar = barred(case, body)
        if bar is not None:
            findings.append(unanswered(case, NAME, body.pumps[0], QUESTION, bar[0], Grade.FAULT, bar[1]))
            continue
        found, right = _judged(case, body)
        findings += found
        sound += right
    return Verdict(tuple(findings), sound)


def _could_stray(case: Case, body: SolvedBody) -> bool:
    """Whether two things on this water take heat, so that one can be called and the other not."""
    roles = (Role.EMITS, Role.HEATED_BY_COIL, Role.EXCHANGES)
    places = (place for role in roles for place in case.circuit.devices(role))
    here = (place for place in places if case.solved.at(place) is body)
    return len(list(islice(here, 2))) == 2


def _judged(case: Case, body: SolvedBody) -> tuple[list[Finding], int]:
    worst: dict[str, tuple[float, float, str]] = {}
    for run in calling(body):
        for part in body.takers:
            flow = run.flow_lpm(part)
            if part not in run.situation.called and flow is not None:
                entry = (abs(flow), flow, in_words(run))
                worst[part] = max(worst.get(part, entry), entry)
    findings = [
        _strays(case, part, flow, situation)
        for part, (size, flow, situation) in worst.items()
        if size >= NO_FLOW_LPM
    ]
    return findings, len(worst) - len(findings)


def _strays(case: Case, part: str, flow: float, situation: str) -> Finding:
    says = Says(
        "{thing} is not called in {situation}, and {flow} l/min run {way} through it.",
        {
            "thing": upper(case.drawing.name(part)),
            "situation": situation,
            "flow": figure(abs(flow)),
            "way": "forward" if flow > 0 else "backward",
        },
    )
    return Finding(NAME, Grade.FAULT, says, (part,), numbers={"flow_lpm": flow})

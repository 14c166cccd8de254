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

from collections.abc import Iterator
from itertools import islice

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.solving import NO_FLOW_LPM, barred, calling, in_words, unanswered
from circuitcheck.checks.wording import figure, upper
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.solved import SolvedBody
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word, spoken

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
            "way": a_word("forward") if flow > 0 else a_word("backward"),
        },
    )
    return Finding(NAME, Grade.FAULT, says, (part,), numbers={"flow_lpm": flow})


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A check valve where water runs against its way: after a pump that stands, else before what it
    strays into."""
    (part,) = finding.components
    body = next((each for each in case.solved.bodies if each.place(part) is not None), None)
    if body is None:
        return
    for by in _against_their_way(case, body, part):
        work = Fitting(case.drawing, case.lines)
        after_it = by.part != part
        try:
            work.cut_in("check_valve", by, port="in" if after_it else "out")
        except EditError:
            continue
        template = "Fit a check valve at the {port} of {thing}, letting water {way} it only."
        names = {
            "port": spoken({"out": "outlet"}.get(by.port, by.port)),
            "thing": case.drawing.name(by.part),
            "way": a_word("out of") if after_it else a_word("into"),
        }
        yield Proposal(Says(template, names), work.drawing)


def _against_their_way(case: Case, body: SolvedBody, part: str) -> Iterator[Joint]:
    """The ports of what carries water backward while that part is not called: each pump's outlet, then
    its own inlet."""
    runs = [run for run in calling(body) if part not in run.situation.called and run.flow_lpm(part)]
    parts = {place.part: place.device.other for place in case.circuit.devices(Role.PUMPS)}
    for pump, port in parts.items():
        if any((run.flow_lpm(pump) or 0.0) <= -NO_FLOW_LPM for run in runs):
            yield Joint(pump, port)
    if any((run.flow_lpm(part) or 0.0) <= -NO_FLOW_LPM for run in runs):
        yield Joint(part, next(each.a for each in case.circuit.plans[part].passages if each.gives_heat))

"""Pump too weak for what it serves.

Flags: In a situation that calls them, the emitters and coils that have no water without this pump get
    together less than 90 % of their design flow, and the pump itself moves less than that too: what a
    bypass takes away, or a pump beyond a separator fails to carry on, is not its weakness. Where
    they want more heat than the heat sources give, their design is cut to that; beside a coil whose
    power has no number they are not judged.
Why: The pump carries the heat. If it can't push enough water round, the far rooms stay cool however hot
    the heat source runs, and no setting of the valves can give what the pump does not bring.
Remedy: Take a pump with more head at the design flow, or wider pipes and valves on the way that loses
    most pressure.
Source: Common practice, no source (90 %). Flows by the solved network (Colebrook-White; Todini and
    Pilati, 1988).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.pipe_cures import Short, with_wider_way
from circuitcheck.checks.solving import (
    ENOUGH,
    barred,
    called,
    calling,
    has_design,
    if_otherwise,
    in_words,
    share,
    through_lpm,
    unanswered,
)
from circuitcheck.checks.wording import figure, upper
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "pump-too-weak"
QUESTION = "is it strong enough?"

Runs = list[tuple[Run, tuple[str, ...]]]


def judge(case: Case) -> Verdict:
    """One finding for each pump on heating water that serves emitters or coils."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.PUMPS):
        body = case.solved.at(place)
        if body is None:
            continue
        bar = barred(case, body)
        if bar is not None:
            findings.append(unanswered(case, NAME, place.part, QUESTION, bar[0], Grade.FAULT, bar[1]))
            continue
        runs = _runs(case, body, place.part)
        missing = _missing(body, [served for _, served in runs])
        if missing:
            findings.append(unanswered(case, NAME, place.part, QUESTION, missing, Grade.FAULT))
            continue
        finding = _worst(case, place.part, runs)
        if finding is not None:
            findings.append(finding)
        elif runs:
            sound += 1
    return Verdict(tuple(findings), sound)


def _runs(case: Case, body: SolvedBody, pump: str) -> Runs:
    """The runs in which the pump serves something that can be judged, and what it serves."""
    return [
        (run, served)
        for run in calling(body)
        if (served := _served(case, body, pump, run)) and share(case, run) is not None
    ]


def _served(case: Case, body: SolvedBody, pump: str, run: Run) -> tuple[str, ...]:
    """What is called, has a design flow, and has no water without the pump; all that is called where it
    is the only pump."""
    if pump not in run.situation.running:
        return ()
    wanted = [part for part in called(run) if has_design(case, part)]
    if len(body.pumps) > 1:
        behind = case.situations.behind(pump)
        wanted = [part for part in wanted if part in behind]
    return tuple(wanted)


def _missing(body: SolvedBody, served: list[tuple[str, ...]]) -> tuple[str, ...]:
    return body.design_missing(dict.fromkeys(part for parts in served for part in parts))


def _shortest(case: Case, pump: str, runs: Runs) -> tuple[float, float, Run, tuple[str, ...]] | None:
    """The run in which what is served gets the least share, if both that and the pump's own flow are too
    little: the pump's flow, design, run, served."""
    found = []
    for run, served in runs:
        design = (share(case, run) or 0.0) * sum(run.body.design_lpm(part) or 0.0 for part in served)
        reaching = sum(through_lpm(run, part) for part in served)
        own = run.flow_lpm(pump)
        flow = reaching if own is None else max(own, reaching)
        if flow < ENOUGH * design:
            found.append((flow, design, run, served))
    return min(found, key=lambda each: each[0] / each[1], default=None)


def _worst(case: Case, pump: str, runs: Runs) -> Finding | None:
    shortest = _shortest(case, pump, runs)
    if shortest is None:
        return None
    flow, design, run, _ = shortest
    halved, doubled = (_again(case, pump, body, run.row) for body in run.body.least_and_most)
    says = Says(
        "{thing} brings {flow} l/min in {situation}, and what it serves is designed for {design}.{otherwise}",
        {
            "thing": upper(case.drawing.name(pump)),
            "flow": figure(flow),
            "design": figure(design),
            "situation": in_words(run),
            "otherwise": if_otherwise(halved, doubled),
        },
    )
    return Finding(NAME, Grade.FAULT, says, (pump,), numbers={"flow_lpm": flow, "design_flow_lpm": design})


def _again(case: Case, pump: str, body: SolvedBody, row: int) -> float:
    run = body.runs[row]
    reaching = sum(through_lpm(run, part) for part in _served(case, body, pump, run))
    return max(run.flow_lpm(pump) or 0.0, reaching)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Larger pipes on the way that loses most; which pump would do is a sizing."""
    return with_wider_way(case, lambda after: _short(after, finding.components[0]))


def _short(case: Case, pump: str) -> Short | None:
    """What gets the least share of its design from the pump, where that brings too little."""
    for place in case.circuit.devices(Role.PUMPS):
        body = case.solved.at(place)
        if place.part != pump or body is None or barred(case, body) is not None:
            continue
        shortest = _shortest(case, pump, _runs(case, body, pump))
        if shortest is not None:
            _, _, run, served = shortest
            wanted = {part: body.design_lpm(part) or 0.0 for part in served}
            return Short(min(served, key=lambda part: through_lpm(run, part) / (wanted[part] or 1.0)), run)
    return None

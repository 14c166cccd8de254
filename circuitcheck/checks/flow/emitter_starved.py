"""Emitter starved of water.

Flags: In a situation that calls it, an emitter or coil gets less than 90 % of its design flow by the
    solved network. Where what is called wants more heat than the heat sources give, every design is
    cut alike; beside a coil whose power has no number it is not judged. Thermostatic heads are taken
    as open, and valves without a number as set to the design flow where they can give it.
Why: Water takes the easy way. An emitter far off, or beside one that lets far more through, is left
    with too little, and its room stays cold while others overheat.
Remedy: Set or add balancing valves on the ways that take more than their share; if all are short, the
    pump is too weak or the pipes too narrow.
Source: Common practice, no source (90 %). Flows by the solved network (Colebrook-White; Todini and
    Pilati, 1988).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.balancing_cures import with_balancing
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.pipe_cures import Short, with_wider_way
from circuitcheck.checks.solving import (
    ENOUGH,
    barred,
    called,
    calling,
    in_words,
    share,
    through_lpm,
    unanswered,
)
from circuitcheck.checks.wording import figure, upper
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.finding import Finding, Grade, Says

NAME = "emitter-starved"
QUESTION = "does all that it serves get enough water?"


def judge(case: Case) -> Verdict:
    """One finding for each emitter or coil; one for the first pump of a water that can't be solved."""
    findings, sound = [], 0
    for body in case.solved.bodies:
        bar = barred(case, body)
        if bar is not None:
            findings.append(unanswered(case, NAME, body.pumps[0], QUESTION, bar[0], Grade.FAULT, bar[1]))
            continue
        found, right = _judged(case, body)
        findings += found
        sound += right
    return Verdict(tuple(findings), sound)


def _judged(case: Case, body: SolvedBody) -> tuple[list[Finding], int]:
    worst: dict[str, tuple[float, float, float, str]] = {}
    unknown: dict[str, tuple[str, ...]] = {}
    for run in calling(body):
        known = share(case, run)
        if known is None:
            continue
        for part in called(run):
            missing = body.design_missing((part,))
            if missing:
                unknown[part] = missing
                continue
            design = known * (body.design_lpm(part) or 0.0)
            if design > 0 and run.flow_lpm(part) is not None:
                flow = through_lpm(run, part)
                entry = (flow / design, flow, design, in_words(run))
                worst[part] = min(worst.get(part, entry), entry)
    findings = [
        unanswered(case, NAME, part, "does it get enough water?", missing, Grade.FAULT)
        for part, missing in unknown.items()
    ]
    findings += [_starved(case, part, *entry[1:]) for part, entry in worst.items() if entry[0] < ENOUGH]
    return findings, sum(entry[0] >= ENOUGH for entry in worst.values())


def _starved(case: Case, part: str, flow: float, design: float, situation: str) -> Finding:
    says = Says(
        "{thing} gets {flow} l/min in {situation}, {share} % of the {design} l/min it should have.",
        {
            "thing": upper(case.drawing.name(part)),
            "flow": figure(flow),
            "situation": situation,
            "share": f"{100 * flow / design:.0f}",
            "design": figure(design),
        },
    )
    return Finding(NAME, Grade.FAULT, says, (part,), numbers={"flow_lpm": flow, "design_flow_lpm": design})


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Balancing valves that hold back what takes too much; else larger pipes on its own way round."""
    (part,) = finding.components
    short = _short(case, part)
    if short is not None:
        yield from with_balancing(case, short.run)
    yield from with_wider_way(case, lambda after: _short(after, part))


def _short(case: Case, part: str) -> Short | None:
    """The run in which that emitter or coil gets its least share, where that is too little."""
    shares: list[tuple[float, Run]] = []
    for body in case.solved.bodies:
        if body.place(part) is None or barred(case, body) is not None:
            continue
        for run in calling(body):
            design = (share(case, run) or 0.0) * (body.design_lpm(part) or 0.0)
            if part in called(run) and design > 0:
                shares.append((through_lpm(run, part) / design, run))
    if not shares:
        return None
    least, run = min(shares, key=lambda each: each[0])
    return Short(part, run) if least < ENOUGH else None

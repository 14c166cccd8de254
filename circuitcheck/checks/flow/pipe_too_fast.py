"""Water too fast in a pipe.

Flags: In some situation the solved flow runs faster through a pipe than the rule book's limit for
    noise. Pipes on no loop, and pipes through which no pump drives water, are not judged.
Why: Fast water can be heard: it hisses at bends and valves, at night most of all. Faster still it wears
    the tube away from inside, and it costs the pump most of its head.
Remedy: Take the next larger tube, or less flow: a lower pump setting, a bypass set higher.
Source: Copper Development Association publication 150: noise above 1.5 m/s, wear above 2.5 m/s.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.pipe_cures import with_larger_stretch
from circuitcheck.checks.solving import barred, in_words, unanswered
from circuitcheck.checks.wording import figure
from circuitcheck.figures.solved import SolvedBody
from circuitcheck.finding import Finding, Grade, Says

NAME = "pipe-too-fast"
QUESTION = "does the water that it drives run too fast?"


def judge(case: Case) -> Verdict:
    """One finding for each pipe; one for the first pump of a water that can't be solved."""
    findings, sound = [], 0
    for body in case.solved.bodies:
        bar = barred(case, body)
        if bar is not None:
            findings.append(unanswered(case, NAME, body.pumps[0], QUESTION, bar[0], Grade.ADVICE, bar[1]))
            continue
        most = float(case.limit("flow.highest_velocity_m_s").value)
        for pipe in body.pipes:
            finding = _judged(case, body, pipe, most)
            if finding is None:
                sound += 1
            else:
                findings.append(finding)
    return Verdict(tuple(findings), sound)


def _judged(case: Case, body: SolvedBody, pipe: str, most: float) -> Finding | None:
    speeds = [
        (speed, row) for row, run in enumerate(body.runs) if (speed := run.velocity_m_s(pipe)) is not None
    ]
    speed, row = max(speeds, default=(0.0, 0))
    if speed <= most:
        return None
    run = body.runs[row]
    flow = abs(run.flow_lpm(pipe) or 0.0)
    says = Says(
        "In {thing} water runs at {speed} m/s in {situation} ({flow} l/min in {bore} mm bore); above {most} "
        "m/s it is heard.",
        {
            "thing": case.drawing.name(pipe),
            "speed": figure(speed),
            "situation": in_words(run),
            "flow": figure(flow),
            "bore": figure(body.bore_mm(pipe) or 0.0),
            "most": figure(most),
        },
    )
    numbers = {"velocity_m_s": speed, "highest_velocity_m_s": most, "flow_lpm": flow}
    return Finding(NAME, Grade.ADVICE, says, (), (pipe,), numbers=numbers)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The next larger tube that is wide enough, from fitting to fitting."""
    (pipe,) = finding.pipes
    yield from with_larger_stretch(
        case, pipe, lambda after: all(pipe not in each.pipes for each in judge(after).findings)
    )

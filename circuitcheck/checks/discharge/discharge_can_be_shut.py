"""A discharge pipe can be shut.

Flags: Any valve in the discharge of a relief or safety valve, before the tundish or after it: one
    shut by hand, by a motor or by a thermostat, a secured one too, and any check valve, bypass or
    reducing valve.
Why: A relief valve is the last thing between too much pressure and a burst. A valve behind it that
    somebody shuts to stop a drip, or a check valve that sticks, takes that away without a sign.
Remedy: Take the valve out of the discharge. Nothing but pipe and a tundish belongs there.
Source: Common practice, no source with a clause; what Approved Document G (England) 3.50 to 3.63 says of
    the pipe leaves no room for a valve (from memory).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.wording import named, upper
from circuitcheck.circuit.discharge import Discharge, Step
from circuitcheck.drawing.edits import remove
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Way

NAME = "discharge-can-be-shut"


def judge(case: Case) -> Verdict:
    """One danger for each relief or safety valve with a valve in its discharge."""
    findings, sound = [], 0
    for discharge in case.discharges:
        if not discharge.runs:
            continue
        found = _valves_in(case, discharge)
        if not found:
            sound += 1
            continue
        drawing, valve = case.drawing, discharge.valve.part
        findings.append(
            Finding(
                NAME,
                Grade.DANGER,
                Says(
                    "The discharge of {thing} goes through {valves}: nothing there may shut or stick.",
                    {"thing": drawing.name(valve), "valves": named(drawing, found)},
                ),
                components=(valve, *found),
                pipes=tuple(
                    pipe
                    for pipe in dict.fromkeys(pipe for run in discharge.runs for pipe in run.pipes)
                    if any(end.part in found for end in drawing.pipes[pipe].joints)
                ),
            )
        )
    return Verdict(tuple(findings), sound)


def _valves_in(case: Case, discharge: Discharge) -> tuple[str, ...]:
    found = (step.part for run in discharge.runs for step in run.steps[:-1] if _can_stop(case, step))
    return tuple(dict.fromkeys(found))


def _can_stop(case: Case, step: Step) -> bool:
    """Whether no way through the part from port to port is always open."""
    ways: dict[str, set[str]] = {}
    for passage in case.circuit.plans[step.part].passages:
        if passage.way is Way.OPEN:
            ways.setdefault(passage.a, set()).add(passage.b)
            if not passage.gap:
                ways.setdefault(passage.b, set()).add(passage.a)
    reached, todo = {step.came_by}, [step.came_by]
    while todo:
        for port in ways.get(todo.pop(), set()) - reached:
            reached.add(port)
            todo.append(port)
    return step.left_by not in reached


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To take the valves out, so that the pipe heals."""
    valves = finding.components[1:]
    yield Proposal(
        Says(
            "Take {valves} out of the discharge of {thing}.",
            {
                "valves": named(case.drawing, valves),
                "thing": upper(case.drawing.name(finding.components[0])),
            },
        ),
        remove(case.drawing, valves),
    )

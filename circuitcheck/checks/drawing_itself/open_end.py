"""An end that is not joined.

Flags: A port that must be joined and has no pipe, and the end of a pipe that is on no part. A cap
    closes a port or a pipe on purpose. Ports that serve only where they are wanted may stay free.
    The free outlet of a relief or safety valve is an absent discharge instead.
Why: As drawn, the water would run out here. More often a pipe was forgotten or stops one square
    short, and every other answer about this circuit then rests on a drawing nobody meant.
Remedy: Join the end to the part it was meant for, or put a cap on it.
Source: Common practice, no source.
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.open_ports import open_ports
from circuitcheck.checks.wording import upper
from circuitcheck.drawing.value import Component, Pipe
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.told import spoken, worded

NAME = "open-end"


def judge(case: Case) -> Verdict:
    """One fault for each port and each pipe's end that must be joined and is not."""
    drawing, findings = case.drawing, []
    sound = len(drawing.components) + len(drawing.pipes)
    for id in case.circuit.partly_joined:
        part = drawing.components[id]
        free = open_ports(drawing, part)
        sound -= bool(free)
        findings += [_port_finding(part, port) for port in free]
    for id in case.circuit.loose_pipes:
        sound -= 1
        findings.append(_pipe_finding(drawing.pipes[id]))
    return Verdict(tuple(findings), sound)


def _pipe_finding(pipe: Pipe) -> Finding:
    if not pipe.joints:
        template = "Neither end of pipe {pipe} is joined."
    else:
        template = "One end of pipe {pipe} is not joined."
    return Finding(NAME, Grade.FAULT, Says(template, {"pipe": pipe.id}), pipes=(pipe.id,))


def _port_finding(part: Component, port: str) -> Finding:
    if len(part.kind.ports) == 1:
        says = Says("{thing} is joined to nothing.", {"thing": upper(part.name)})
    else:
        says = Says(
            "Nothing is joined to {port} of {thing}.",
            {"port": worded("the {port} port", port=spoken(port)), "thing": part.name},
        )
    return Finding(NAME, Grade.FAULT, says, components=(part.id,))

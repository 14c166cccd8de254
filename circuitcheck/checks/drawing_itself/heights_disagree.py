"""Heights that disagree.

Flags: Pipes in a loop whose rises do not bring you back to the height you began at within 0.1 m; two
    parts whose heights are given, and pipes between them whose rises say otherwise by more than
    that; a pipe that rises or falls by more than its length.
Why: One of the numbers is wrong, and a height or a rise decides whether a vent rises all the way,
    whether a discharge falls, and what pressure there is at each point. Every part stands at one
    height above the sheet's datum, and a pipe's rise is told between the parts at its two ends, from
    its first end to its second: often just the sign is the wrong way round.
Remedy: Go round the pipes named and correct the height, the rise or the length that is wrong.
Source: Common practice, no source; the 0.1 m is this program's drawing format.
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.wording import figure, named, upper
from circuitcheck.figures.heights import CLOSES_WITHIN_M, Against, Disagreement
from circuitcheck.finding import Finding, Grade, Says

NAME = "heights-disagree"

_TEMPLATES = {
    Against.ITSELF: "The rises round the loop of {pipes} do not close: they miss by {by} m.",
    Against.HEIGHTS: "The heights given for {first} and {last} and the rise of {pipes} between them "
    "disagree by {by} m.",
    Against.LENGTH: "{thing} rises or falls by {rise} m, {by} m more than its length of {length} m.",
}


def judge(case: Case) -> Verdict:
    """One fault for each pipe that closes a disagreement. Sound: the drawing's heights agree."""
    heights = case.heights
    if not heights.is_told:
        return Verdict()
    findings = tuple(_finding(case, each) for each in heights.disagreements)
    return Verdict(findings, sound=0 if findings else 1)


def _finding(case: Case, found: Disagreement) -> Finding:
    drawing = case.drawing
    pipe = found.pipes[0]
    values: dict[str, str | float] = {
        "pipes": named(drawing, found.pipes),
        "by": figure(found.by_m),
        "thing": upper(drawing.name(pipe)),
    }
    numbers = {"disagree_by_m": found.by_m}
    if found.parts:
        values |= {"first": drawing.name(found.parts[0]), "last": drawing.name(found.parts[-1])}
    if found.against is Against.LENGTH:
        length = case.length_m(pipe)
        rise = case.heights.rise(pipe)
        if length is not None and rise is not None:
            values |= {"rise": figure(abs(rise)), "length": figure(length.value)}
            numbers |= {"rise_m": rise, "length_m": length.value}
    else:
        numbers["closes_within_m"] = CLOSES_WITHIN_M
    return Finding(
        NAME,
        Grade.FAULT,
        Says(_TEMPLATES[found.against], values),
        components=found.parts,
        pipes=found.pipes,
        numbers=numbers,
    )

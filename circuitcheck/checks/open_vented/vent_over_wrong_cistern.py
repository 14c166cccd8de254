"""An open vent ends over the wrong cistern.

Flags: An open vent over a cistern other than one that feeds the water it vents.
Why: Whatever comes out of a vent falls into the cistern below. Over another cistern, hot or dirty
    heating water gets into water that is drawn at taps, and the circuit it came from is not
    refilled by it: one cistern overflows while the other must feed fresh, air-laden water.
Remedy: Bring the vent over the cistern that feeds the same water.
Source: WFR guidance to Schedule 2, G20.3 (the vent ends over its own cistern); BS 5449.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.venting import cistern_under, cisterns_feeding, is_cistern
from circuitcheck.checks.wording import named, upper
from circuitcheck.circuit.joining import Placed
from circuitcheck.drawing.edits import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "vent-over-wrong-cistern"


def judge(case: Case) -> Verdict:
    """One danger for each vent over another cistern than feeds its water; nothing where none does."""
    findings, sound = [], 0
    for vent in case.circuit.devices(Role.VENTS):
        feeding = tuple(place.part for place in cisterns_feeding(case, vent.node))
        if not feeding:
            continue  # its water has no feed at all: that is another check's finding
        over = cistern_under(case, vent)
        if over in feeding:
            sound += 1
            continue
        findings.append(_finding(case, vent, over, feeding))
    return Verdict(tuple(findings), sound)


def _finding(case: Case, vent: Placed, over: str | None, feeding: tuple[str, ...]) -> Finding:
    drawing = case.drawing
    values: dict[str, str | float] = {
        "vent": upper(drawing.name(vent.part)),
        "feeding": named(drawing, feeding),
    }
    if over is not None:
        template = "{vent} ends over {over}, but {feeding} feeds the water it vents."
        values["over"] = drawing.name(over)
        components = tuple(dict.fromkeys((vent.part, over, *feeding)))
        return Finding(NAME, Grade.DANGER, Says(template, values), components)
    missing = f"{vent.part}.over"
    template = "Whether {vent} ends over {feeding}, which feeds its water, is not known: {missing}."
    values |= {"missing": missing, "vent": drawing.name(vent.part)}
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(template, values),
        components=(vent.part, *feeding),
        missing=(missing,),
        would_be=Grade.DANGER,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The vent brought over a cistern that feeds its water, where the part names its cistern."""
    vent = finding.components[0]
    if is_cistern(case, vent):
        return
    place = next(each for each in case.circuit.devices(Role.VENTS) if each.part == vent)
    for cistern in cisterns_feeding(case, place.node):
        says = Says(
            "Bring {vent} over {cistern}.",
            {"vent": case.drawing.name(vent), "cistern": case.drawing.name(cistern.part)},
        )
        yield Proposal(says, set_field(case.drawing, vent, "over", cistern.part))

"""Findings, acceptances and what was judged, as the document tells them."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from circuitcheck.analysis import Analysis
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Acceptance, Drawing
from circuitcheck.finding import Finding, Grade
from circuitcheck.report import finding_text as says
from circuitcheck.report.document.content import Accepted, Found, Judgement
from circuitcheck.report.wording import missing_words, upper
from circuitcheck.review.acceptances import Standing, acceptance_of, standings
from circuitcheck.sheet.pictures import Pictures

MOST_PICTURES = 150
"""So many findings get a picture of their own, the heaviest first."""
MOST_NAMED = 8
MOST_PARTS_CURED = 300
"""In larger drawings cures are not tried: each is a whole analysis, and the document should not keep one waiting."""
_CURED = frozenset({Grade.DANGER, Grade.FAULT})


def found(analysis: Analysis, pictures: Pictures, today: date) -> tuple[Found, ...]:
    """Every finding, heaviest first."""
    return tuple(_found(analysis, pictures, today))


def _found(analysis: Analysis, pictures: Pictures, today: date) -> Iterator[Found]:
    drawing = analysis.drawing
    tries_cures = len(drawing.components) <= MOST_PARTS_CURED
    for number, finding in enumerate(analysis.findings):
        title, lesson = says.title(finding), says.lesson(finding)
        acceptance = acceptance_of(finding, drawing, today)
        shown = f"Where it is: {', '.join(_names(drawing, finding))}"
        yield Found(
            grade=finding.grade,
            grade_words=says.grade_words(finding),
            title=title,
            message=says.message(drawing, finding),
            where=_names(drawing, finding),
            shut=tuple(f"{each.name}, {each.how}" for each in says.witness(drawing, finding)),
            alone=says.alone(drawing, finding),
            missing=tuple(missing_words(drawing, each) for each in finding.missing),
            why=lesson.why if lesson else "",
            remedy=lesson.remedy if lesson else "",
            source=lesson.source if lesson else "",
            cures=_cures(analysis, finding) if tries_cures and finding.grade in _CURED else (),
            accepted=_accepted_words(acceptance) if acceptance else "",
            picture=pictures.finding(finding, shown) if number < MOST_PICTURES else None,
        )


def _cures(analysis: Analysis, finding: Finding) -> tuple[str, ...]:
    return tuple(dict.fromkeys(cure.message for cure in cures(analysis, finding)))


def _names(drawing: Drawing, finding: Finding) -> tuple[str, ...]:
    """What a finding names, the thing judged first."""
    names = [upper(_name(drawing, id)) for id in dict.fromkeys((*finding.components, *finding.pipes))]
    if len(names) > MOST_NAMED:
        names = [*names[:MOST_NAMED], f"{len(names) - MOST_NAMED} more"]
    return tuple(names)


def _name(drawing: Drawing, id: str) -> str:
    try:
        return drawing.name(id)
    except KeyError:
        return f"{id} (no longer in the drawing)"


def _accepted_words(acceptance: Acceptance) -> str:
    who = acceptance.author or "somebody who gave no name"
    on = f" on {acceptance.date}" if acceptance.date else ""
    until = f", until {acceptance.until}" if acceptance.until else ""
    reason = f": {acceptance.reason}" if acceptance.reason else "; no reason is given"
    return f"Accepted by {who}{on}{until}{reason}"


_STATES = {
    Standing.HOLDS: "holds",
    Standing.RUN_OUT: "has run out",
    Standing.NO_FINDING: "matches no finding here",
}


def acceptances(analysis: Analysis, today: date) -> tuple[Accepted, ...]:
    """Every acceptance of the file, those too that hold no longer."""
    drawing = analysis.drawing
    found = []
    for each in standings(drawing, analysis.findings, today):
        said, state = each.acceptance, _STATES[each.standing]
        if each.standing is Standing.HOLDS and each.finding and each.finding.grade is Grade.DANGER:
            state = "holds, and the danger counts all the same"
        on = ", ".join(upper(_name(drawing, id)) for id in said.on)
        title = says.check_title(said.check)
        found.append(Accepted(title, on, said.reason, said.author, said.date, said.until or "", state))
    return tuple(found)


def judgement(analysis: Analysis) -> Judgement:
    """What was judged and what was not."""
    speaking = {finding.check for finding in analysis.findings}
    silent = tuple(says.check_title(name) for name in analysis.judged if name not in speaking)
    verdict = " ".join(f"{each}." for each in _verdict(analysis) if each)
    pairs = (each.partition(": ") for each in says.not_judged(analysis))
    return Judgement(
        verdict,
        len(analysis.judged),
        tuple(says.counts(analysis).items()),
        silent,
        tuple((check, why) for check, _, why in pairs),
        says.not_applicable(analysis),
        says.taken(analysis),
        says.beyond(),
        len(analysis.crashed),
    )


def _verdict(analysis: Analysis) -> tuple[str, ...]:
    first, second = says.verdict(analysis)
    count = len(analysis.findings)
    found = f"{count} finding{'' if count == 1 else 's'}" if count else ""
    return found, first.rstrip("."), second.rstrip(".")

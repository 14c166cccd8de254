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
from circuitcheck.report.grades import counts
from circuitcheck.report.wording import missing_words, upper
from circuitcheck.review.acceptances import Standing, acceptance_of, standings
from circuitcheck.sheet.pictures import Pictures
from circuitcheck.told import a_word, dated, ended, strung, worded, worded_n

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
        shown = worded("Where it is: {names}", names=strung(_names(drawing, finding)))
        yield Found(
            grade=finding.grade,
            grade_words=says.grade_words(finding),
            title=title,
            message=says.message(drawing, finding),
            where=_names(drawing, finding),
            shut=tuple(
                worded("{valve}, {how}", valve=each.name, how=each.how)
                for each in says.witness(drawing, finding)
            ),
            alone=says.alone(drawing, finding),
            missing=tuple(missing_words(drawing, each) for each in finding.missing),
            why=a_word(lesson.why) if lesson else "",
            remedy=a_word(lesson.remedy) if lesson else "",
            source=a_word(lesson.source) if lesson else "",
            cures=_cures(analysis, finding) if tries_cures and finding.grade in _CURED else (),
            accepted=_accepted_words(acceptance) if acceptance else "",
            picture=pictures.finding(finding, shown) if number < MOST_PICTURES else None,
        )


def _cures(analysis: Analysis, finding: Finding) -> tuple[str, ...]:
    return tuple(dict.fromkeys(upper(cure.message) for cure in cures(analysis, finding)))


def _names(drawing: Drawing, finding: Finding) -> tuple[str, ...]:
    """What a finding names, the thing judged first."""
    names = [upper(_name(drawing, id)) for id in dict.fromkeys((*finding.components, *finding.pipes))]
    if len(names) > MOST_NAMED:
        names = [*names[:MOST_NAMED], worded("{count} more", count=len(names) - MOST_NAMED)]
    return tuple(names)


def _name(drawing: Drawing, id: str) -> str:
    try:
        return drawing.name(id)
    except KeyError:
        return worded("{id} (no longer in the drawing)", id=id)


def _accepted_words(acceptance: Acceptance) -> str:
    said = [worded("Accepted by {who}", who=acceptance.author or a_word("somebody who gave no name"))]
    said += [worded(" on {date}", date=dated(acceptance.date))] if acceptance.date else []
    said += [worded(", until {date}", date=dated(acceptance.until))] if acceptance.until else []
    said.append(
        worded(": {reason}", reason=acceptance.reason)
        if acceptance.reason
        else a_word("; no reason is given")
    )
    return strung(said, "")


_STATES = {
    Standing.HOLDS: a_word("holds good"),
    Standing.RUN_OUT: a_word("has run out"),
    Standing.NO_FINDING: a_word("matches no finding here"),
}


def acceptances(analysis: Analysis, today: date) -> tuple[Accepted, ...]:
    """Every acceptance of the file, those too that hold no longer."""
    drawing = analysis.drawing
    found = []
    for each in standings(drawing, analysis.findings, today):
        said, state = each.acceptance, _STATES[each.standing]
        if each.standing is Standing.HOLDS and each.finding and each.finding.grade is Grade.DANGER:
            state = a_word("holds, and the danger counts all the same")
        on = strung(upper(_name(drawing, id)) for id in said.on)
        title = says.check_title(said.check)
        day, until = dated(said.date), dated(said.until or "")
        found.append(Accepted(title, on, said.reason, said.author, day, until, state))
    return tuple(found)


def judgement(analysis: Analysis) -> Judgement:
    """What was judged and what was not."""
    speaking = {finding.check for finding in analysis.findings}
    silent = tuple(says.check_title(name) for name in analysis.judged if name not in speaking)
    return Judgement(
        strung((ended(each) for each in _verdict(analysis) if each), " "),
        len(analysis.judged),
        tuple(counts(analysis).items()),
        silent,
        says.why_not_judged(analysis),
        says.not_applicable(analysis),
        says.taken(analysis),
        says.beyond(),
        len(analysis.crashed),
    )


def _verdict(analysis: Analysis) -> tuple[str, ...]:
    first, second = says.verdict(analysis)
    count = len(analysis.findings)
    return worded_n("1 finding", "{count} findings", count) if count else "", first, second

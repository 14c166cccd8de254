"""Notes and the review record as the document tells them."""

from __future__ import annotations

from circuitcheck.analysis import Analysis
from circuitcheck.drawing.value import Drawing, Note, Reply
from circuitcheck.report.document.content import NoteTold, ReviewTold
from circuitcheck.report.wording import upper
from circuitcheck.review.holding import Held, held
from circuitcheck.review.notes import pinned_name
from circuitcheck.review.record import CANNOT_PROVE, COVERS
from circuitcheck.review.words import held_lines, held_words, record_title
from circuitcheck.told import a_word, dated, spoken, strung, worded

NO_NAME, NO_DATE, NONE = a_word("no name"), a_word("no date"), a_word("none")
NOT_REVIEWED = a_word("This drawing carries no review record.")
MOST_CHANGES = 40


def notes_told(drawing: Drawing) -> tuple[NoteTold, ...]:
    """Every note with its thread, those too whose parts are gone."""
    return tuple(
        NoteTold(
            strung(upper(pinned_name(drawing, id)) for id in note.on) or a_word("The whole drawing"),
            a_word(note.state),
            (_said(note), *(_said(reply) for reply in note.replies)),
        )
        for note in drawing.notes
    )


def _said(each: Note | Reply) -> tuple[str, str, str]:
    return each.author or NO_NAME, dated(each.date) or NO_DATE, each.text


def review_told(drawing: Drawing, analysis: Analysis) -> ReviewTold:
    """The last record and how it stands; the ones before it in a line each."""
    records = held(drawing, analysis)
    if not records:
        return ReviewTold(NOT_REVIEWED, None)
    last = records[-1]
    return ReviewTold(
        held_words(last),
        last.holds,
        tuple(_rows(last, records[:-1])),
        tuple(held_lines(last, MOST_CHANGES))[1:],
        (a_word(COVERS), a_word(CANNOT_PROVE)),
    )


def _rows(last: Held, earlier: tuple[Held, ...]) -> list[tuple[str, str]]:
    review = last.review
    rows: list[tuple[str, str]] = [
        (a_word("Reviewed by"), ", ".join(each for each in (review.author, review.role) if each) or NO_NAME),
        (a_word("Reviewed on"), dated(review.date) or NO_DATE),
        (a_word("Decision"), a_word(review.decision or "no decision")),
        (a_word("Remarks"), review.remarks or NONE),
        (
            a_word("With"),
            worded(
                "{program}, rule book {rule_book}",
                program=review.program or a_word("a program not named"),
                rule_book=spoken(review.rule_book) if review.rule_book else a_word("not named"),
            ),
        ),
        (a_word("Digest of the circuit"), review.meaning or NONE),
        (a_word("Digest of the layout"), review.layout or NONE),
        (a_word("Digest of findings, notes and acceptances"), review.findings or NONE),
    ]
    before = a_word("Before it")
    return [
        *rows,
        *(
            (before, worded("{record}. {state}", record=record_title(each), state=held_words(each)))
            for each in reversed(earlier)
        ),
    ]

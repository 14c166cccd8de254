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

NO_NAME, NO_DATE = "no name", "no date"
NOT_REVIEWED = "This drawing carries no review record."
MOST_CHANGES = 40


def notes_told(drawing: Drawing) -> tuple[NoteTold, ...]:
    """Every note with its thread, those too whose parts are gone."""
    return tuple(
        NoteTold(
            ", ".join(upper(pinned_name(drawing, id)) for id in note.on) or "The whole drawing",
            note.state,
            (_said(note), *(_said(reply) for reply in note.replies)),
        )
        for note in drawing.notes
    )


def _said(each: Note | Reply) -> tuple[str, str, str]:
    return each.author or NO_NAME, each.date or NO_DATE, each.text


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
        (COVERS, CANNOT_PROVE),
    )


def _rows(last: Held, earlier: tuple[Held, ...]) -> list[tuple[str, str]]:
    review = last.review
    rows = [
        ("Reviewed by", ", ".join(each for each in (review.author, review.role) if each) or NO_NAME),
        ("On", review.date or NO_DATE),
        ("Decision", review.decision or "no decision"),
        ("Remarks", review.remarks or "none"),
        ("With", f"{review.program or 'a program not named'}, rule book {review.rule_book or 'not named'}"),
        ("Digest of the circuit", review.meaning or "none"),
        ("Digest of the layout", review.layout or "none"),
        ("Digest of findings, notes and acceptances", review.findings or "none"),
    ]
    return [
        *rows,
        *(("Before it", f"{record_title(each)}. {held_words(each)}") for each in reversed(earlier)),
    ]

"""Notes with their threads, and acceptances made and taken back: each an edit that names what is wrong."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.review.acceptances import Standing, accept, acceptance_of, standings, take_back
from circuitcheck.review.notes import (
    add_note,
    answer_note,
    gone,
    note_of,
    pinned_name,
    remove_note,
    reopen_note,
    settle_note,
)
from tests.made import made

DAY = date(2031, 3, 15)
FOUND = Finding("open-end", Grade.FAULT, Says("It is so."), ("t1",), ("p1",))


def drawing() -> Drawing:
    return made({"t1": "tee", "iv": "isolating_valve"}, "t1.a - iv.a")


def test_a_thread_from_the_first_word_to_the_end() -> None:
    noted, id = add_note(drawing(), ("t1", "p1", "t1"), " A ", DAY, " Why a tee? ")
    note = note_of(noted, id)
    assert (note.on, note.author, note.date, note.text, note.state) == (
        ("t1", "p1"),
        "A",
        "2031-03-15",
        "Why a tee?",
        "open",
    )
    noted = answer_note(noted, id, "B", DAY, "For the drain.")
    noted = settle_note(noted, id)
    assert note_of(noted, id).state == "settled" and note_of(noted, id).replies[0].text == "For the drain."
    assert note_of(reopen_note(noted, id), id).state == "open"
    assert remove_note(noted, id).notes == ()
    assert noted.components is drawing().components or noted.components == drawing().components


def test_a_note_outlives_its_part() -> None:
    noted, id = add_note(drawing(), ("iv",), "A", DAY, "Keep it.")
    without = replace(noted, components={"t1": noted.components["t1"]}, pipes={})
    assert gone(without, note_of(without, id)) == ("iv",)
    assert pinned_name(without, "iv") == "iv (gone)" and pinned_name(noted, "p1") == "pipe p1"


@pytest.mark.parametrize(
    ("on", "author", "text", "said"),
    [((), "", "Text", "who"), ((), "A", " ", "something"), (("no",), "A", "Text", "no is none")],
)
def test_what_is_no_note_is_refused(on: tuple[str, ...], author: str, text: str, said: str) -> None:
    with pytest.raises(EditError, match=said):
        add_note(drawing(), on, author, DAY, text)


def test_no_such_note() -> None:
    with pytest.raises(EditError, match="no note n7"):
        settle_note(drawing(), "n7")


def test_a_finding_is_accepted_and_the_acceptance_taken_back() -> None:
    accepted = accept(drawing(), FOUND, "Agreed.", "A", DAY, date(2031, 4, 1))
    holds = acceptance_of(FOUND, accepted, DAY)
    assert holds is not None and (holds.on, holds.until) == (("t1", "p1"), "2031-04-01")
    again = accept(accepted, FOUND, "Still so.", "B", DAY)
    assert [each.reason for each in again.acceptances] == ["Still so."]
    assert take_back(accepted, holds).acceptances == ()
    with pytest.raises(EditError, match="no longer"):
        take_back(again, holds)


@pytest.mark.parametrize(
    ("reason", "author", "until", "said"),
    [("", "A", None, "reason"), ("R", " ", None, "name"), ("R", "A", date(2031, 3, 14), "run out")],
)
def test_what_is_no_acceptance_is_refused(reason: str, author: str, until: date | None, said: str) -> None:
    with pytest.raises(EditError, match=said):
        accept(drawing(), FOUND, reason, author, DAY, until)


def test_how_acceptances_stand() -> None:
    accepted = accept(drawing(), FOUND, "Agreed.", "A", DAY, DAY)
    assert [each.standing for each in standings(accepted, [FOUND], DAY)] == [Standing.HOLDS]
    assert [each.standing for each in standings(accepted, [FOUND], date(2031, 3, 16))] == [Standing.RUN_OUT]
    assert [each.standing for each in standings(accepted, [], DAY)] == [Standing.NO_FINDING]

"""Accepted findings: which acceptance holds on which day, and what still counts."""

from __future__ import annotations

from datetime import date

import pytest

from circuitcheck.drawing.value import Acceptance, Drawing
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.review.acceptances import acceptance_of, weight

TODAY = date(2031, 3, 15)
FOUND = Finding("open-end", Grade.FAULT, Says("It is so."), ("t1", "iv"), ("p2",))


def holds(acceptance: Acceptance, finding: Finding = FOUND, today: date = TODAY) -> bool:
    return acceptance_of(finding, Drawing(acceptances=(acceptance,)), today) is not None


@pytest.mark.parametrize(
    ("check", "on", "expected"),
    [
        ("open-end", ("t1", "iv", "p2"), True),
        ("open-end", ("p2", "iv", "t1"), True),
        ("open-end", ("t1", "iv"), False),
        ("open-end", ("t1", "iv", "p2", "p3"), False),
        ("open-end", (), False),
        ("near-miss", ("t1", "iv", "p2"), False),
    ],
)
def test_it_must_name_the_check_and_the_same_ids(check: str, on: tuple[str, ...], expected: bool) -> None:
    assert holds(Acceptance(check, on)) is expected


@pytest.mark.parametrize(
    ("until", "expected"),
    [(None, True), ("2031-03-16", True), ("2031-03-15", True), ("2031-03-14", False), ("2030-12-31", False)],
)
def test_it_holds_up_to_and_on_its_day(until: str | None, expected: bool) -> None:
    assert holds(Acceptance("open-end", ("t1", "iv", "p2"), until=until)) is expected


def test_a_later_one_holds_where_an_earlier_one_has_run_out() -> None:
    ids = ("t1", "iv", "p2")
    old, new = (
        Acceptance("open-end", ids, until="2031-01-01"),
        Acceptance("open-end", ids, reason="Still so."),
    )
    assert acceptance_of(FOUND, Drawing(acceptances=(old, new)), TODAY) is new


def test_none_without_acceptances() -> None:
    assert acceptance_of(FOUND, Drawing(), TODAY) is None


def finding(grade: Grade, would_be: Grade | None = None) -> Finding:
    return Finding("open-end", grade, Says("It is so."), would_be=would_be)


@pytest.mark.parametrize(
    ("grade", "accepted", "expected"),
    [
        (Grade.DANGER, False, Grade.DANGER),
        (Grade.DANGER, True, Grade.DANGER),
        (Grade.FAULT, False, Grade.FAULT),
        (Grade.FAULT, True, None),
        (Grade.ADVICE, False, Grade.ADVICE),
        (Grade.ADVICE, True, None),
    ],
)
@pytest.mark.parametrize("strict", [False, True])
def test_an_accepted_danger_counts_and_nothing_else_accepted_does(
    grade: Grade, accepted: bool, expected: Grade | None, strict: bool
) -> None:
    assert weight(finding(grade), accepted=accepted, strict=strict) is expected


@pytest.mark.parametrize(
    ("would_be", "accepted", "strict", "expected"),
    [
        (Grade.DANGER, False, False, None),
        (Grade.DANGER, False, True, Grade.DANGER),
        (Grade.DANGER, True, True, Grade.DANGER),
        (Grade.FAULT, False, True, Grade.FAULT),
        (Grade.FAULT, True, True, None),
        (Grade.ADVICE, False, True, Grade.ADVICE),
    ],
)
def test_an_unanswered_finding_counts_only_when_strict(
    would_be: Grade, accepted: bool, strict: bool, expected: Grade | None
) -> None:
    assert weight(finding(Grade.UNANSWERED, would_be), accepted=accepted, strict=strict) is expected

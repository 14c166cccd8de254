"""Lessons: each with a drawing that fires its check, a remedy that does not, and numbers that were worked out."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks.catalogue import checks
from circuitcheck.cures import subject
from circuitcheck.lessons.catalogue import faults
from circuitcheck.lessons.fault import HEAVY
from circuitcheck.lessons.lesson import lesson, subjects
from circuitcheck.operating.standing import Operated

pytestmark = pytest.mark.slow
EACH = 5
"""Every so manieth is tried every time: one takes seconds."""


@pytest.mark.evening
@pytest.mark.parametrize("check", subjects(live=True))
def test_the_drawing_fires_and_the_remedied_one_does_not(check: str) -> None:
    teaches(check)


@pytest.mark.parametrize("check", subjects(live=True)[::EACH])
def test_some_drawings_fire_and_the_remedied_ones_do_not(check: str) -> None:
    teaches(check)


def teaches(check: str) -> None:
    found = lesson(check)
    before, after = analyse(found.drawing).findings, analyse(found.remedy.drawing).findings
    assert found.finding in before and found.finding.check == check and found.finding.grade in HEAVY
    assert not [each for each in after if each.check == check]
    known = {(each.check, subject(each)) for each in before}
    new = [each for each in after if (each.check, subject(each)) not in known]
    assert not [each.message for each in new if each.grade.rank <= found.finding.grade.rank]
    assert str(found.remedy.says).endswith(".")
    for said in found.scene.says:
        assert str(said).endswith(".") and "{" not in str(said)


@pytest.mark.parametrize("check", ["vessel-can-be-cut-off", "safety-valve-can-be-cut-off"])
def test_what_the_proof_parts_off_is_told_and_can_be_seen(check: str) -> None:
    found = lesson(check)
    assert found.finding.witness is not None
    assert found.scene.positions.shut >= set(found.finding.witness.shut)
    assert Operated(found.drawing).standing(found.scene.positions).cut_off
    assert any("no way left" in str(each) for each in found.scene.says)


def test_a_lesson_is_the_same_at_every_call() -> None:
    first, again = lesson("gauge-absent"), lesson("gauge-absent")
    assert again is not first and again.drawing == first.drawing and again.finding == first.finding
    assert again.remedy.drawing == first.remedy.drawing and again.scene.says == first.scene.says


def test_every_check_has_a_lesson_or_its_text() -> None:
    live, others = subjects(live=True), subjects(live=False)
    assert sorted((*live, *others)) == sorted(checks()) and set(live) == set(faults())
    with pytest.raises(KeyError):
        lesson(others[0])

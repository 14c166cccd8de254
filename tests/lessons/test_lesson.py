"""Lessons: each with a drawing that fires its check, a remedy that does not, and numbers that were worked out."""

from __future__ import annotations

import ast
import inspect
from functools import cache
from importlib import import_module
from types import ModuleType

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks.catalogue import checks
from circuitcheck.cures import subject
from circuitcheck.lessons.catalogue import faults
from circuitcheck.lessons.fault import HEAVY
from circuitcheck.lessons.lesson import Lesson, lesson, subjects
from circuitcheck.operating.standing import Operated
from tests.lessons.sampling import each_fifth

pytestmark = pytest.mark.slow


@cache
def made(check: str) -> Lesson:
    """The lesson of a check: it takes seconds to make, and nobody can change it."""
    return lesson(check)


@pytest.mark.parametrize("check", each_fifth(subjects(live=True)))
def test_the_drawing_fires_and_the_remedied_one_does_not(check: str) -> None:
    found = made(check)
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
    found = made(check)
    assert found.finding.witness is not None
    assert found.scene.positions.shut >= set(found.finding.witness.shut)
    assert Operated(found.drawing).standing(found.scene.positions).cut_off
    assert any("no way left" in str(each) for each in found.scene.says)


def test_a_lesson_is_the_same_at_every_call() -> None:
    first, again = made("gauge-absent"), lesson("gauge-absent")
    assert again is not first and again.drawing == first.drawing and again.finding == first.finding
    assert again.remedy.drawing == first.remedy.drawing and again.scene.says == first.scene.says


def test_every_check_has_a_lesson_or_its_text() -> None:
    live, others = subjects(live=True), subjects(live=False)
    assert sorted((*live, *others)) == sorted(checks()) and set(live) == set(faults())
    with pytest.raises(KeyError):
        lesson(others[0])


def graded(module: ModuleType) -> set[str]:
    """The grades that a module gives, in the names of `Grade`; what a finding without an answer would be is
    not given."""
    tree = ast.parse(inspect.getsource(module))
    could_be = {
        id(inner)
        for node in ast.walk(tree)
        if isinstance(node, ast.keyword) and node.arg == "would_be"
        for inner in ast.walk(node)
    }
    return {
        node.attr
        for node in ast.walk(tree)
        if isinstance(node, ast.Attribute)
        and isinstance(node.value, ast.Name)
        and node.value.id == "Grade"
        and id(node) not in could_be
    } & {"DANGER", "FAULT", "ADVICE"}


def grades(check: str) -> set[str]:
    """The grades that a check gives: those that its module names, else those of the modules that it shares
    with other checks."""
    module = import_module(f"circuitcheck.checks.{checks()[check].topic}.{check.replace('-', '_')}")
    if own := graded(module):
        return own
    shared = {inspect.getmodule(each) for each in vars(module).values() if callable(each)} - {module, None}
    names = {each for each in shared if each and each.__name__.startswith("circuitcheck.checks.")}
    return {grade for each in names for grade in graded(each)}


def test_every_check_that_can_find_danger_or_fault_has_a_lesson_with_a_drawing() -> None:
    given = {check: grades(check) for check in checks()}
    assert [check for check, known in given.items() if not known] == []
    heavy = {check for check, known in given.items() if known & {"DANGER", "FAULT"}}
    assert len(heavy) > 80
    assert sorted(heavy) == sorted(subjects(live=True))


def test_a_vessel_on_the_pumps_delivery_is_seen_below_the_pressure_of_the_air() -> None:
    found = made("vessel-on-pump-delivery")
    assert [str(each) for each in found.scene.says if "air can be drawn in" in str(each)]
    assert str(found.remedy.says).startswith("Move Pump into pipe")

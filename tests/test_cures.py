"""A cure is tried first: it removes its finding, and raises nothing new of its grade or a higher one."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from circuitcheck import cures as module
from circuitcheck.analysis import Analysis, analyse
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.check import Check, Proposal, Verdict
from circuitcheck.cures import cures, subject
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.edits import relabel
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.removing import remove
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import parse, read
from circuitcheck.storage.writing import dump
from tests.checks.houses import sealed
from tests.drawing.invariants import broken

NAMES = sorted(path.stem for path in data_path("samples").glob("*.wetcircuit"))
CURED = {
    "cottage-safety-valve-plugged": {"discharge-absent"},
    "flat-over-workshop-pump-no-way-round": {
        "no-way-round-when-zones-shut",
        "pump-against-shut-valves",
        "source-flow-below-minimum",
    },
    "guest-house-second-source-cut-off": {"vessel-can-be-cut-off"},
    "terrace-as-found-valve-in-vent": {"open-vent-can-be-cut-off", "bath-not-blended"},
    "terrace-bypass-backwards": {"fitted-backwards", "no-way-round-when-zones-shut"},
    "terrace-discharge-too-long": {"discharge-too-long"},
    "terrace-valve-before-vessel": {"vessel-can-be-cut-off"},
    "village-hall-near-miss": {"near-miss"},
}


@pytest.mark.parametrize("name", NAMES)
def test_what_is_offered_for_a_sample_is_safe_and_one_edit_away(name: str) -> None:
    before = analyse(read(data_path("samples") / f"{name}.wetcircuit"))
    offered = [(finding, cure) for finding in before.findings for cure in cures(before, finding)]
    assert {finding.check for finding, _ in offered} >= CURED.get(name, set())
    for finding, cure in offered:
        assert broken(cure.drawing) == []
        assert parse(dump(cure.drawing), "cured") == cure.drawing
        after = analyse(cure.drawing)
        assert (finding.check, subject(finding)) not in told(after)
        new = told(after) - told(before)
        assert not {check for check, thing in new if rank(after, check, thing) <= finding.grade.rank}
        assert after.crashed == ()
        assert cure.message[0].isupper() and cure.message.endswith(".") and "{" not in cure.message


def told(analysis: Analysis) -> set[tuple[str, str]]:
    return {(each.check, subject(each)) for each in analysis.findings}


def rank(analysis: Analysis, check: str, thing: str) -> int:
    return min(each.grade.rank for each in analysis.findings if (each.check, subject(each)) == (check, thing))


class Proposing:
    """Stands in for a check: it proposes what it was given."""

    def __init__(self, monkeypatch: pytest.MonkeyPatch, check: str, *proposals: Proposal | EditError) -> None:
        self.proposals = proposals
        real = checks()[check]
        stand_in = Check(check, real.topic, real.lesson, lambda case: Verdict(), self.propose)
        monkeypatch.setattr(module, "checks", lambda: {**checks(), check: stand_in})

    def propose(self, case: Case, finding: Finding) -> Iterator[Proposal]:
        for each in self.proposals:
            if isinstance(each, EditError):
                raise each
            yield each


def test_only_what_helps_and_harms_nothing_is_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    drawing = sealed(vessel="t2.branch iv.a:b ev.connection", iv="isolating_valve")
    analysis = analyse(drawing)
    finding = next(each for each in analysis.findings if each.check == "vessel-can-be-cut-off")
    good = Proposal(Says("Take the valve out."), remove(drawing, ["iv"]))
    no_help = Proposal(Says("Name it."), relabel(drawing, "iv", "Valve"))
    harmful = Proposal(Says("Take both out."), remove(drawing, ["iv", "sv"]))
    same = Proposal(Says("Do nothing."), drawing)
    Proposing(monkeypatch, finding.check, no_help, harmful, same, good)
    assert [cure.message for cure in cures(analysis, finding)] == ["Take the valve out."]


def test_what_was_proposed_before_a_step_failed_still_stands(monkeypatch: pytest.MonkeyPatch) -> None:
    drawing = sealed(vessel="t2.branch iv.a:b ev.connection", iv="isolating_valve")
    analysis = analyse(drawing)
    finding = next(each for each in analysis.findings if each.check == "vessel-can-be-cut-off")
    good = Proposal(Says("Take the valve out."), remove(drawing, ["iv"]))
    Proposing(monkeypatch, finding.check, good, EditError("no"))
    assert len(cures(analysis, finding)) == 1


def test_hiding_a_finding_behind_a_missing_number_is_no_cure(monkeypatch: pytest.MonkeyPatch) -> None:
    drawing = sealed(ev="expansion_vessel", sv=("safety_valve", {"set_pressure_bar": 6}))
    analysis = analyse(drawing)
    finding = next(each for each in analysis.findings if each.check == "safety-valve-set-too-high")
    hidden = Proposal(Says("Forget it."), set_field(drawing, "sv", "set_pressure_bar", None))
    Proposing(monkeypatch, finding.check, hidden)
    assert cures(analysis, finding) == ()


def test_an_unanswered_finding_has_no_cure() -> None:
    analysis = analyse(sealed())
    unanswered = [each for each in analysis.findings if each.grade is Grade.UNANSWERED]
    assert unanswered and all(cures(analysis, each) == () for each in unanswered)

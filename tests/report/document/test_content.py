"""What the document says: findings, what was not judged, the commissioning sheet, notes and the record."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.edits import set_field
from circuitcheck.drawing.value import Acceptance, Drawing, Note, Reply
from circuitcheck.finding import Grade
from circuitcheck.report.document.content import Content, Step
from circuitcheck.report.document.gathering import gather
from circuitcheck.review.record import sign
from circuitcheck.sheet.pictures import UNTITLED
from tests.made import made

from .conftest import DAY, content_of, sample


def steps(content: Content) -> dict[str, Step]:
    return {step.what: step for stage in content.commissioning.stages for step in stage.steps}


def step(content: Content, start: str) -> Step:
    (found,) = (each for what, each in steps(content).items() if what.startswith(start))
    return found


class TestFindings:
    def test_one_is_told_with_what_proves_it_and_what_puts_it_right(self) -> None:
        (found,) = content_of("terrace-valve-before-vessel").findings
        assert found.grade is Grade.DANGER
        assert found.shut == ("Pump, by hand", "Return valve, by hand")
        assert found.alone.startswith("No one valve does it alone")
        assert found.why and found.remedy and found.source
        assert "Take Return valve out of the pipe." in found.cures

    def test_its_picture_shows_the_valves_shut_and_leaves_the_rest_quiet(self) -> None:
        (found,) = content_of("terrace-valve-before-vessel").findings
        assert found.picture is not None
        texts = [mark.text for mark in found.picture.marks if hasattr(mark, "text")]
        assert texts.count("shut") == 2
        assert "cut off from the" in texts
        roles = {mark.role for mark in found.picture.marks}
        assert {"danger", "danger_tint", "quiet", "flow"} <= roles

    def test_an_acceptance_is_told_and_one_that_has_run_out_says_so(self) -> None:
        drawing = sample("terrace-as-found")
        (first, *_) = analyse(drawing).findings
        on = (*first.components, *first.pipes)
        accepted = Acceptance(
            first.check, on, "agreed with the owner", "A. Reader", "2026-11-01", "2026-12-01"
        )
        gone = Acceptance("filter-absent", ("nothing_here",), "", "", "")
        told = replace(drawing, acceptances=(accepted, gone))
        content = gather(told, "x", DAY)
        assert content.findings[0].accepted == (
            "Accepted by A. Reader on 2026-11-01, until 2026-12-01: agreed with the owner"
        )
        assert [each.state for each in content.acceptances] == ["holds good", "matches no finding here"]
        later = gather(told, "x", date(2026, 12, 2))
        assert later.findings[0].accepted == ""
        assert later.acceptances[0].state == "has run out"


class TestJudgement:
    def test_the_verdict_counts_findings_before_what_was_found_right(self) -> None:
        verdict = content_of("terrace-valve-before-vessel").judgement.verdict
        assert verdict.startswith("1 finding. ")
        assert verdict.endswith("A drawing is not a certificate.")

    def test_a_sound_drawing_says_how_many_checks_found_nothing(self) -> None:
        assert content_of("cottage").judgement.verdict.startswith("Nothing found by ")

    def test_every_check_is_told_just_once(self) -> None:
        from circuitcheck.checks.catalogue import checks

        told = content_of("terrace-valve-before-vessel").judgement
        silent = {*told.silent, *told.not_applicable, *(check for check, _ in told.not_judged)}
        titles = {check.lesson.title for check in checks().values()}
        found = {each.title for each in content_of("terrace-valve-before-vessel").findings}
        assert silent | found == titles
        assert not silent & found

    def test_what_could_not_judge_says_why(self) -> None:
        drawing = set_field(sample("cottage"), "vessel", "volume_l", None)
        content = gather(drawing, "x", DAY)
        assert any("Heating vessel: volume" in each.missing for each in content.findings)
        assert any("Heating vessel: volume" in figure.missing for figure in content.figures)


class TestCommissioning:
    def test_each_situation_says_which_valve_opens_and_what_gets_warm(self) -> None:
        told = {each.name: each for each in content_of("cottage").commissioning.situations}
        heating, water = told["Heating only"], told["Hot water only"]
        assert (heating.open, heating.shut) == (("Rooms valve",), ("Store valve",))
        assert (water.open, water.shut) == (("Store valve",), ("Rooms valve",))
        assert "Rooms" in heating.warm.split(", ") and heating.cold == "Store"
        assert "Store" in water.warm.split(", ") and water.cold == "Rooms"
        assert told["At rest"].warm == "Nothing: no water is driven"
        assert told["Pump run-on"].warm.startswith("Only what is left in it")

    def test_flows_and_gauge_are_those_of_the_figures(self) -> None:
        told = {each.name: each for each in content_of("cottage").commissioning.situations}
        both = dict(told["Heating and hot water together"].flows)
        assert float(both["Rooms"]) + float(both["Store"]) == pytest.approx(float(both["Pump"]), abs=0.15)
        assert told["Heating only"].gauge == "Gauge: 1.26 bar cold, 1.93 bar hot"
        assert told["At rest"].gauge == "Gauge: 1.26 bar cold"

    @pytest.mark.parametrize(
        ("start", "expect"),
        [
            ("Pressure test", "4.5 bar"),
            ("Heating vessel: gas charge", "0.8 bar"),
            ("Heating circuit filled", "1.3 bar"),
            ("Gauge: reading cold", "1.26 bar"),
            ("Safety valve: lifted", "Set at 3 bar. Water seen at Outside wall."),
            ("Temperature relief: lifted", "Water seen at Tundish and at Back yard."),
            ("Store: energy cut-out", "Store valve shuts and stays shut"),
            ("Heat source: every thermostat satisfied", "After at most 5 minutes the pump stops"),
            ("Inhibitor", "0.74 l for 74 l"),
            ("Store: temperature", "At least 60 °C"),
            ("Kitchen: hot water", "50 °C within 30 seconds"),
            ("Filling link: taken off", "off"),
        ],
    )
    def test_what_to_expect(self, start: str, expect: str) -> None:
        assert expect in step(content_of("cottage"), start).expect

    @pytest.mark.parametrize(
        ("start", "result"),
        [("Rooms: flow set", "Rooms: design flow"), ("Bypass: set", "Set difference that serves both")],
    )
    def test_what_to_expect_is_what_the_figure_says(self, start: str, result: str) -> None:
        content = content_of("cottage")
        (value,) = (
            value
            for figure in content.figures
            for name, value, _ in figure.results
            if name.startswith(result) and figure.title.startswith(("Balancing", "Setting"))
        )
        told = value if " to " in value else f"{float(value):.3g}"
        assert told in step(content, start).expect

    def test_a_bath_is_not_to_be_hotter_than_the_rule_book_says(self) -> None:
        found = step(content_of("terrace-valve-before-vessel"), "Bathroom")
        assert found.expect == "at most 48 °C"
        assert "3.65" in found.source

    def test_every_step_says_its_source_or_that_there_is_none(self) -> None:
        for name in ("cottage", "terrace-as-found", "guest-house"):
            assert all(each.source for each in steps(content_of(name)).values())

    def test_what_the_drawing_does_not_tell_is_said_and_never_guessed(self) -> None:
        drawing = set_field(sample("cottage"), "pump", "shut_off_head_m", None)
        drawing = set_field(drawing, "vessel", "precharge_bar", None)
        content = gather(drawing, "x", DAY)
        assert step(content, "Heating vessel: gas charge").expect.startswith("not known")
        assert "Heating vessel: precharge" in content.commissioning.lacking
        heating = content.commissioning.situations[0]
        assert heating.flows == () and heating.picture is None
        assert "Pump: shut-off head" in heating.fault
        assert heating.open == ("Rooms valve",) and heating.warm == "Meant to: Rooms"

    def test_an_open_vented_plant_has_no_gauge_and_no_vessel(self) -> None:
        content = content_of("terrace-as-found")
        assert content.commissioning.situations[0].gauge == "no gauge is drawn"
        assert not any("gas charge" in what for what in steps(content))
        assert any("float valve" in what for what in steps(content))


class TestTheRest:
    def test_notes_with_their_replies(self) -> None:
        note = Note(
            "n1",
            ("hs", "gone"),
            "B. Viewer",
            "2026-11-02",
            "why so large?",
            "open",
            (Reply("C", "", "spare"),),
        )
        (told,) = gather(replace(sample("cottage"), notes=(note,)), "x", DAY).notes
        assert told.where == "Heat source, Gone (gone)"
        assert told.says == (("B. Viewer", "2026-11-02", "why so large?"), ("C", "no date", "spare"))

    def test_no_record_is_said(self) -> None:
        review = content_of("cottage").review
        assert (review.holds, review.rows) == (None, ())

    def test_a_record_holds_and_is_broken_by_one_changed_pipe(self) -> None:
        signed = sign(sample("cottage"), "D. Supervisor", DAY, "fit to build")
        assert gather(signed, "x", DAY).review.holds is True
        broken = gather(set_field(signed, "p1", "length_m", 9), "x", DAY).review
        assert broken.holds is False
        assert any("length from 0.4 m to 9 m" in each for each in broken.changes)
        assert ("Reviewed by", "D. Supervisor") in broken.rows

    def test_an_empty_drawing_has_a_document(self) -> None:
        content = gather(Drawing(), "empty", DAY)
        assert content.title == UNTITLED
        assert content.drawing is None
        assert content.commissioning.stages == ()
        assert content.judgement.verdict == "Nothing drawn, nothing judged."

    def test_parts_that_are_not_placed_are_named(self) -> None:
        drawing = made({"hs": "heat_source", "pu": "pump"}, "hs.flow - pu.in", at={"hs": (5, 5)})
        assert gather(drawing, "x", DAY).not_placed == ("Pump pu",)

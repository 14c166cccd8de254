"""What the findings panel says, without a window."""

from __future__ import annotations

from dataclasses import replace

import pytest

from circuitcheck.analysis import Analysis, analyse
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.analyser import failed
from circuitcheck.finding import Finding, Grade, Says, Witness
from circuitcheck.report import finding_text as says
from circuitcheck.report.grades import counts
from tests.made import made


@pytest.fixture
def drawing() -> Drawing:
    return made(
        {
            "hs": "heat_source",
            "iv": "isolating_valve",
            "locked": ("isolating_valve", {"secured": True}),
            "zv": "zone_valve",
            "tv": "three_port_valve",
            "rad": "radiator",
            "cv": "check_valve",
            "zone": "heating_zone",
            "ev": "expansion_vessel",
        },
        "p1: hs.flow - iv.a",
    )


def finding(shut: tuple[str, ...], alone: tuple[str, ...] = ()) -> Finding:
    parts = tuple(entry.partition(":")[0] for entry in shut)
    witness = Witness(shut, alone, parts)
    return Finding("vessel-can-be-cut-off", Grade.DANGER, Says("Cut off."), ("hs",), witness=witness)


def test_a_witness_says_how_each_valve_is_shut(drawing: Drawing) -> None:
    how = {
        entry: says.how_shut(drawing, entry) for entry in ("iv", "locked", "zv", "tv:a", "rad", "cv", "zone")
    }
    assert how == {
        "iv": "by hand",
        "locked": "by hand, secured",
        "zv": "no call",
        "tv:a": "no call",
        "rad": "room warm",
        "cv": "against its arrow",
        "zone": "by hand, room warm",
    }
    names = [each.name for each in says.witness(drawing, finding(("iv", "tv:a")))]
    assert names == ["Isolating valve iv", "Three-port valve tv (leg a)"]


def test_which_valves_do_it_alone(drawing: Drawing) -> None:
    assert says.alone(drawing, finding(())) == ""
    assert says.alone(drawing, finding(("iv", "zv"))) == "No one valve does it alone. Both together do."
    assert says.alone(drawing, finding(("iv", "zv", "rad"))).endswith("All three together do.")
    assert says.alone(drawing, finding(("iv",), ("iv",))) == "It does it alone."
    both = says.alone(drawing, finding(("iv",), ("iv", "zv")))
    assert both == "Zone valve zv does it alone too."


def test_what_is_missing_is_said_in_words(drawing: Drawing) -> None:
    missing = ("design.static_height_m", "p1.rise_m", "hs.output_kw")
    template = "Missing: {missing}."
    one = Finding(
        "vessel-absent",
        Grade.UNANSWERED,
        Says(template, {"missing": ", ".join(missing)}),
        ("hs",),
        missing=missing,
        would_be=Grade.DANGER,
    )
    assert says.message(drawing, one) == (
        "Missing: the drawing’s static height, pipe p1: rise and heat source hs: output."
    )
    assert says.grade_words(one) == "unanswered, would be danger"


def test_the_empty_drawing_is_not_judged() -> None:
    assert says.verdict(analyse(Drawing())) == ("Nothing drawn, nothing judged", "")


def test_silence_is_no_approval(drawing: Drawing) -> None:
    nothing = Analysis(drawing, (), (), ("a",), ("b",), (), (), "england")
    assert says.verdict(nothing)[0] == "No check judged anything"
    sound = replace(nothing, judged=("vessel-absent",))
    assert says.verdict(sound) == ("Nothing found by 1 check", says.NOT_A_CERTIFICATE)
    found = replace(sound, findings=(finding(("iv",)),), judged=("vessel-absent", "vessel-can-be-cut-off"))
    assert says.verdict(found) == ("1 check found nothing", says.NOT_A_CERTIFICATE)
    only = replace(found, judged=("vessel-can-be-cut-off",))
    assert says.verdict(only) == ("", says.NOT_A_CERTIFICATE)


def test_a_failed_analysis_is_said_to_have_judged_nothing(drawing: Drawing) -> None:
    analysis = failed(drawing, RuntimeError("<b>broken</b>"))
    (one,) = analysis.findings
    assert says.title(one) == "The checks failed"
    assert says.lesson(one) is None
    assert "<b>broken</b>" in says.message(drawing, one)
    assert all("it failed inside the program" in line for line in says.not_judged(analysis))


def test_what_was_taken_is_said_in_words(drawing: Drawing) -> None:
    analysis = Analysis(
        drawing,
        (),
        (),
        (),
        (),
        (),
        ("iv.secured = false", "hs.pump_overrun_min = 5", "design.dwelling = existing", "gone.x = 1"),
        "england",
    )
    assert says.taken(analysis) == (
        "Isolating valve iv: secured no",
        "Heat source hs: pump run-on 5 min",
        "The drawing’s dwelling existing",
        "gone.x = 1",
    )


def test_every_check_of_a_real_drawing_is_in_one_list(drawing: Drawing) -> None:
    analysis = analyse(drawing)
    listed = len(analysis.judged) + len(says.not_applicable(analysis)) + len(says.not_judged(analysis))
    assert listed == len(checks())
    assert counts(analysis)[Grade.DANGER] == sum(f.grade is Grade.DANGER for f in analysis.findings)

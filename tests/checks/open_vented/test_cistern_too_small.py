"""The heating's feed cistern against what its water gains as it is heated."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks.case import Case
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from circuitcheck.rules.book import book
from circuitcheck.sizing.open_vent import CISTERN_SHARE, LEAST_CISTERN_L
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed
from tests.checks.open_vented.plants import pumped_vented, vented_store, with_data

NAME = "cistern-too-small"


def circuit(cistern: float | None, litres: float | None = 600, **more: Any) -> Drawing:
    """Heating water of so many litres under a cistern of so many."""
    drawing = pumped_vented(**{**with_data("fc", content_l=cistern), **more})
    return replace(drawing, design={"system_content_l": litres})


def test_the_rule_book_has_the_numbers_of_the_figure() -> None:
    england = book("england")
    assert england.limit("open_vent.cistern_share").value == CISTERN_SHARE
    assert england.limit("open_vent.least_cistern_l").value == LEAST_CISTERN_L


@pytest.mark.parametrize(
    ("cistern", "litres", "grade"),
    [
        (24, 600, None),
        (23.9, 600, "fault"),
        (18, 100, None),
        (17.9, 100, "advice"),
        (4, 100, "advice"),
        (3.9, 100, "fault"),
        (18, 451, "fault"),
    ],
)
def test_the_size(cistern: float, litres: float, grade: str | None) -> None:
    findings = found(NAME, circuit(cistern, litres))
    assert [(each.grade.value, each.components) for each in findings] == (
        [] if grade is None else [(grade, ("fc",))]
    )


def test_the_numbers() -> None:
    finding = only(NAME, circuit(20))
    assert (finding.numbers["content_l"], finding.numbers["swell_l"]) == (20, 24)
    assert "20 l" in finding.message and "24 l" in finding.message and "600 l" in finding.message
    assert "that it feeds" in finding.message


def test_two_cisterns_count_together() -> None:
    two: dict[str, Any] = {"f2": ("feed_cistern", {"content_l": 12, "serves": "heating"}), "x": "tee"}
    more = "feed: fc.feed - x.a\nf3: x.b - tf.branch\nf4: f2.feed - x.branch"
    drawing = pumped_vented(more, without="feed", **two, **with_data("fc", content_l=12))
    assert found(NAME, replace(drawing, design={"system_content_l": 600})) == ()
    finding = only(NAME, replace(drawing, design={"system_content_l": 601}))
    assert finding.components == ("fc", "f2") and "hold 24 l" in finding.message
    assert "that they feed" in finding.message


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (circuit(None), ("fc.content_l",)),
        (circuit(40, None), ("hs.water_content_l", "rad.water_content_l")),
        (circuit(None, None), ("fc.content_l", "hs.water_content_l", "rad.water_content_l")),
    ],
)
def test_unanswered(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.would_be and finding.would_be.value) == ("unanswered", "fault")
    assert set(missing) <= set(finding.missing)


def test_what_is_known_can_settle_it() -> None:
    known = {"hs": ("heat_source", {"water_content_l": 500})}
    assert only(NAME, circuit(19, None, **known)).grade.value == "fault"
    finding = only(NAME, circuit(17, None))
    assert finding.grade.value == "advice" and "rad.water_content_l" in finding.missing


def test_a_rule_book_without_the_limit_says_so() -> None:
    drawing = circuit(1)
    other = replace(drawing, design={**drawing.design, "rule_book": "european_standards"})
    answer = asked(NAME, other)
    assert (answer.status, answer.findings) == ("not judged", ()) and "cistern share" in answer.why


FILLED_THROUGH_A_CHECK = pumped_vented(
    "f1: fc.feed - cv.in\nf2: cv.out - tf.branch", without="feed vent", cv="check_valve", ov="cap", tv="tee"
)


@pytest.mark.parametrize(
    "drawing",
    [
        sealed(),
        pumped_vented(without="feed"),
        vented_store(sc=("feed_cistern", {"content_l": 1, "serves": "hot_water"})),
        FILLED_THROUGH_A_CHECK,
    ],
    ids=["sealed", "no feed", "a store's cistern", "a cistern that fills a sealed circuit"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"
    assert not Case(drawing).taken


@pytest.mark.parametrize(("cistern", "litres", "fitted"), [(10, 100, 18), (20, 610, 25)])
def test_the_cure_is_the_size_that_serves(cistern: float, litres: float, fitted: float) -> None:
    analysis = analyse(circuit(cistern, litres))
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    (cure,) = cures(analysis, finding)
    assert cure.drawing.components["fc"].data["content_l"] == fitted

"""An open-vented circuit without a cold feed that water can take both ways."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed, vented

NAME = "cold-feed-absent"

SOUND: dict[str, Drawing] = {
    "vent and feed": vented(),
    "feed behind a valve, which another check speaks of": vented(
        feed="fc.feed iv.a:b t2.branch", iv="isolating_valve"
    ),
    "feed and no vent, which another check speaks of": vented(vent=""),
    "sealed": sealed(),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()


def test_a_vent_without_a_feed() -> None:
    finding = only(NAME, vented(feed=""))
    assert (finding.grade.value, finding.components) == ("danger", ("hs",))


def test_a_feed_that_ends_at_another_circuit() -> None:
    drawing = vented("h2.flow r2.flow:return t3.a:b h2.return", "t3.branch o2.connection",
        h2="heat_source", r2="radiator", t3="tee", o2="open_vent")  # fmt: skip
    assert only(NAME, drawing).components == ("h2",)


def test_a_feed_through_a_check_valve_is_named() -> None:
    finding = only(NAME, vented(feed="fc.feed cv.in:out t2.branch", cv="check_valve"))
    assert finding.components == ("hs", "cv", "fc")
    assert "check valve cv" in finding.message


def test_the_vent_over_the_cistern_is_no_feed() -> None:
    drawing = vented(vent="t1.branch fc.vent_over", feed="")
    assert only(NAME, drawing).components == ("hs",)


def test_statuses() -> None:
    assert asked(NAME, vented()).status == "judged"
    assert asked(NAME, sealed()).status == "not applicable"

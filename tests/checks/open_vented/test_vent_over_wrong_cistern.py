"""A vent over another cistern than feeds its water."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.open_vented.plants import pumped_vented, vented_store, with_data

NAME = "vent-over-wrong-cistern"

OTHER: dict[str, Any] = {"other": ("feed_cistern", {"serves": "hot_water"})}


@pytest.mark.parametrize(
    "drawing",
    [
        pumped_vented(**OTHER),
        pumped_vented("vent: tv.branch - fc.vent_over", without="vent"),
        vented_store(),
    ],
)
def test_does_not_fire(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


def test_fires_and_is_cured_by_the_right_cistern() -> None:
    drawing = pumped_vented(**with_data("ov", over="other"), **OTHER)
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("ov", "other", "fc"))
    (cure,) = cures(analyse(drawing), finding)
    assert cure.drawing.components["ov"].data["over"] == "fc"


def test_drawn_to_the_wrong_cistern() -> None:
    drawing = pumped_vented("vent: tv.branch - other.vent_over", without="vent", **OTHER)
    assert only(NAME, drawing).components == ("other", "fc")


def test_a_stores_vent_over_the_heating_cistern() -> None:
    drawing = vented_store(
        fc=("feed_cistern", {}),
        sv=("open_vent", {"over": "fc"}),
    )
    assert only(NAME, drawing).components == ("sv", "fc", "sc")


def test_not_known_is_unanswered() -> None:
    finding = only(NAME, pumped_vented(**with_data("ov", over=None)))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("ov.over",))


def test_without_a_feed_another_check_speaks() -> None:
    assert asked(NAME, pumped_vented(without="feed")).status == "not applicable"

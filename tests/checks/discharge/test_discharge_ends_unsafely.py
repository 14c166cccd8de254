"""Where a discharge ends: every place, and what each asks for."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.discharge.plants import EUROPEAN, heating
from tests.made import made

NAME = "discharge-ends-unsafely"
GROUND, GULLY, ROOF, STACK = "outside_low_level", "gully_below_grating", "roof_or_high_level", "soil_stack"


def ending(place: str | None = None, clear: bool | None = None, conditions: bool | None = None) -> Drawing:
    data: dict[str, Any] = {"clear_of_people": clear, "conditions_met": conditions}
    return heating(de=("discharge_end", data if place is None else {**data, "place": place}))


SOUND = [(GROUND, True, None), (GROUND, True, False), (GULLY, None, None), (GULLY, False, False), (ROOF, True, True),
         (STACK, None, True), (STACK, False, True)]  # fmt: skip
UNSAFE = [("inside", True, True), ("inside", None, None), (GROUND, False, True), (ROOF, False, True), (ROOF, True, False),
          (ROOF, False, None), (ROOF, None, False), (STACK, None, False), (STACK, True, False)]  # fmt: skip
UNANSWERED: list[tuple[str | None, bool | None, bool | None, tuple[str, ...]]] = [
    (None, True, True, ("de.place",)),
    ("unknown", True, True, ("de.place",)),
    (GROUND, None, True, ("de.clear_of_people",)),
    (ROOF, None, True, ("de.clear_of_people",)),
    (ROOF, True, None, ("de.conditions_met",)),
    (ROOF, None, None, ("de.clear_of_people", "de.conditions_met")),
    (STACK, True, None, ("de.conditions_met",)),
]


@pytest.mark.parametrize(("place", "clear", "conditions"), SOUND)
def test_safe(place: str, clear: bool | None, conditions: bool | None) -> None:
    answer = asked(NAME, ending(place, clear, conditions))
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("place", "clear", "conditions"), UNSAFE)
def test_unsafe(place: str, clear: bool | None, conditions: bool | None) -> None:
    finding = only(NAME, ending(place, clear, conditions))
    assert (finding.grade.value, finding.components, finding.missing) == ("danger", ("de", "sv"), ())


@pytest.mark.parametrize(("place", "clear", "conditions", "missing"), UNANSWERED)
def test_unanswered(
    place: str | None, clear: bool | None, conditions: bool | None, missing: tuple[str, ...]
) -> None:
    finding = only(NAME, ending(place, clear, conditions))
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "danger"


@pytest.mark.parametrize("volume", [200, 10, None])
def test_a_stores_too_whatever_it_holds(volume: float | None) -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": volume, "built_in": ["temperature_relief"]}), "tu": "tundish",
         "de": ("discharge_end", {"place": "inside"})},
        way("us.relief_outlet tu.inlet:outlet de.inlet"),
    )  # fmt: skip
    assert only(NAME, drawing).components == ("de", "us")


def test_one_finding_an_end() -> None:
    drawing = made(
        {"s1": "safety_valve", "s2": "safety_valve", "t1": "tee", "t2": "tee",
         "d1": ("discharge_end", {"place": "inside"}), "d2": ("discharge_end", {"place": GULLY})},
        way("s1.outlet t1.a:b t2.a:b d1.inlet", "s2.outlet t1.branch", "t2.branch d2.inlet"),
    )  # fmt: skip
    assert only(NAME, drawing).components == ("d1", "s1", "s2")


def test_an_end_that_no_valve_reaches_is_not_judged() -> None:
    inside = ("discharge_end", {"place": "inside"})
    drawing = made({"fc": "feed_cistern", "de": inside}, way("fc.warning de.inlet"))
    assert asked(NAME, drawing).status == "not applicable"
    assert found(NAME, drawing) == ()


def test_not_judged_without_the_rule() -> None:
    assert asked(NAME, heating(design=EUROPEAN)).status == "not judged"

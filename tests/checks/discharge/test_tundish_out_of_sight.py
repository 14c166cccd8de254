"""Tundishes that nobody sees."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.discharge.plants import EUROPEAN, heating, two_stores
from tests.made import made

NAME = "tundish-out-of-sight"


def store(
    tundish: dict[str, object], volume: float | None = 200, design: dict[str, str] | None = None
) -> Drawing:
    return made(
        {"us": ("unvented_store", {"volume_l": volume}), "tr": "temperature_relief_valve",
         "tu": ("tundish", tundish), "de": "discharge_end"},
        way("us.relief tr.inlet", "tr.outlet tu.inlet:outlet de.inlet"),
        design=design,
    )  # fmt: skip


@pytest.mark.parametrize("tundish", [{}, {"in_sight": True}])
def test_in_sight(tundish: dict[str, object]) -> None:
    answer = asked(NAME, store(tundish))
    assert (answer.findings, answer.status) == ((), "judged")
    assert asked(NAME, store(tundish, volume=None)).status == "judged"


def test_out_of_sight() -> None:
    finding = only(NAME, store({"in_sight": False}))
    assert (finding.grade.value, finding.components) == ("fault", ("tu", "tr"))


@pytest.mark.parametrize(
    ("tundish", "volume", "missing"),
    [
        ({"in_sight": None}, 200, ("tu.in_sight",)),
        ({"in_sight": None}, None, ("tu.in_sight", "us.volume_l")),
        ({"in_sight": False}, None, ("us.volume_l",)),
    ],
)
def test_unanswered(tundish: dict[str, object], volume: float | None, missing: tuple[str, ...]) -> None:
    finding = only(NAME, store(tundish, volume))
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "fault"


@pytest.mark.parametrize(
    "drawing",
    [
        store({"in_sight": False}, volume=15),
        heating("tu.inlet:outlet", tu=("tundish", {"in_sight": False})),
        heating(),
    ],
    ids=["a store of 15 litres", "the heating's safety valve", "no tundish"],
)
def test_not_asked_for(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_one_finding_for_a_tundish_that_valves_share() -> None:
    drawing = made(
        {"us": ("unvented_store", {"volume_l": 200}), "tr": "temperature_relief_valve", "xr": "expansion_relief_valve",
         "t1": "tee", "tu": ("tundish", {"in_sight": False}), "de": "discharge_end"},
        way("us.relief tr.inlet", "us.cold xr.inlet", "tr.outlet t1.a:b tu.inlet:outlet de.inlet", "xr.outlet t1.branch"),
    )  # fmt: skip
    assert only(NAME, drawing).components == ("tu", "tr", "xr")


def test_each_tundish_by_itself() -> None:
    assert asked(NAME, two_stores({})).status == "judged"
    assert found(NAME, two_stores({})) == ()


def test_not_judged_without_the_rule() -> None:
    answer = asked(NAME, store({"in_sight": False}, design=EUROPEAN))
    assert answer.status == "not judged" and "discharge" in answer.why

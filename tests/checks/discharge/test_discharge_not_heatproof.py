"""Plastic in a discharge: before the tundish, after it, marked, unmarked and not known."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.discharge.plants import EUROPEAN, heating
from tests.made import made

NAME = "discharge-not-heatproof"
MARKED, BARE, UNSURE = ({"material": "plastic", "heatproof": mark} for mark in (True, False, None))


def pipes(
    before: dict[str, Any],
    after: dict[str, Any],
    volume: float | None = 200,
    design: dict[str, str] | None = None,
) -> Drawing:
    return made(
        {"us": ("unvented_store", {"volume_l": volume}), "tr": "temperature_relief_valve", "tu": "tundish",
         "de": "discharge_end"},
        way("us.relief tr.inlet") + "\nb1: tr.outlet - tu.inlet\na1: tu.outlet - de.inlet",
        pipe_data={"b1": before, "a1": after},
        design=design,
    )  # fmt: skip


SOUND = {
    "copper by default": pipes({}, {}),
    "steel": pipes({"material": "steel"}, {"material": "steel"}),
    "marked plastic after the tundish": pipes({}, MARKED),
    "marked, whether it be plastic or not": pipes({}, {"material": None, "heatproof": True}),
    "copper without a mark": pipes({"heatproof": False}, {"heatproof": False}),
    "a store of 15 litres, marked": pipes(MARKED, MARKED, volume=15),
    "the heating's, marked": heating(pipe_data={"p2": MARKED}),
    "the heating's, marked before a tundish": heating(
        "tu.inlet:outlet", tu="tundish", pipe_data={"p2": MARKED}
    ),
}
WRONG = {
    "before the tundish, marked": (pipes(MARKED, {}), "tr", ("b1",)),
    "before the tundish, mark not known": (pipes(UNSURE, {}), "tr", ("b1",)),
    "before the tundish, unmarked": (pipes(BARE, {}), "tr", ("b1",)),
    "after the tundish, unmarked": (pipes({}, BARE), "tr", ("a1",)),
    "both": (pipes(BARE, BARE), "tr", ("b1", "a1")),
    "one, the other not known": (pipes(BARE, UNSURE), "tr", ("b1",)),
    "unmarked, whatever the store holds": (pipes(BARE, {}, volume=None), "tr", ("b1",)),
    "a store of 15 litres, unmarked": (pipes(BARE, {}, volume=15), "tr", ("b1",)),
    "the heating's": (heating(pipe_data={"p2": BARE}), "sv", ("p2",)),
}
UNANSWERED = {
    "mark": (pipes({}, UNSURE), ("a1.heatproof",)),
    "mark left out": (pipes({}, {"material": "plastic"}), ("a1.heatproof",)),
    "material and mark": (pipes({}, {"material": None}), ("a1.material", "a1.heatproof")),
    "material, unmarked": (pipes({}, {"material": None, "heatproof": False}), ("a1.material",)),
    "material before the tundish": (pipes({"material": None, "heatproof": True}, {}), ("b1.material",)),
    "marked before it, if the store is no small one": (pipes(MARKED, {}, volume=None), ("us.volume_l",)),
    "the heating's": (heating(pipe_data={"p2": UNSURE}), ("p2.heatproof",)),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "valve", "wrong"), WRONG.values(), ids=WRONG.keys())
def test_fires(drawing: Drawing, valve: str, wrong: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components, finding.pipes) == ("danger", (valve,), wrong)


@pytest.mark.parametrize(("drawing", "missing"), UNANSWERED.values(), ids=UNANSWERED.keys())
def test_unanswered(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.pipes == tuple(dict.fromkeys(name[:2] for name in missing if name[0] in "abp"))


def test_does_not_apply_without_a_discharge() -> None:
    assert asked(NAME, made({"sv": "safety_valve"}, "")).status == "not applicable"


def test_what_needs_no_rule_is_judged_under_any_book() -> None:
    assert only(NAME, pipes({}, BARE, design=EUROPEAN)).pipes == ("a1",)
    assert found(NAME, pipes({}, {}, design=EUROPEAN)) == ()
    assert asked(NAME, pipes(MARKED, {}, design=EUROPEAN)).status == "not judged"

"""A vent below 22 mm, 19 mm of bore."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed
from tests.checks.open_vented.plants import pumped_vented, vented_store

NAME = "open-vent-too-small"


@pytest.mark.parametrize(
    "pipe",
    [
        {"size_mm": 22},
        {"size_mm": 28, "material": "plastic", "bore_mm": 19},
        {"size_mm": 20, "material": "steel"},
        {"size_mm": None, "bore_mm": 19.5},
    ],
)
def test_wide_enough(pipe: dict[str, Any]) -> None:
    drawing = pumped_vented(data={"vent": {"size_mm": None, **pipe}})
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize(
    "pipe",
    [
        {"size_mm": 15},
        {"size_mm": 22, "bore_mm": 18.9},
        {"size_mm": 15, "material": "steel"},
        {"size_mm": 16, "material": "plastic"},
    ],
)
def test_too_small(pipe: dict[str, Any]) -> None:
    finding = only(NAME, pumped_vented(data={"vent": pipe}))
    assert (finding.grade.value, finding.components, finding.pipes) == ("danger", ("ov", "hs"), ("vent",))
    assert finding.numbers["smallest_bore_mm"] == 19


def test_every_thin_pipe_on_the_way_is_named_and_cured() -> None:
    drawing = pumped_vented(data={"vent": {"size_mm": 15}, "flow": {"size_mm": 15}})
    finding = only(NAME, drawing)
    assert finding.pipes == ("flow", "vent")
    (cure,) = cures(analyse(drawing), finding)
    assert [cure.drawing.pipes[pipe].data["size_mm"] for pipe in ("flow", "vent")] == [22, 22]


def test_a_thin_feed_is_no_vent_unless_it_is_both() -> None:
    assert found(NAME, pumped_vented()) == ()
    both = pumped_vented(without="vent", hs=("heat_source", {"combined_feed_and_vent": True}))
    assert only(NAME, both).pipes == ("feed",)


@pytest.mark.parametrize(("size", "pipes"), [(15, [("vent",)]), (22, [])])
def test_a_vent_on_the_return_is_reached_through_the_heat_source(
    size: float, pipes: list[tuple[str, ...]]
) -> None:
    drawing = pumped_vented(
        "flow: hs.flow - pu.in\npush: pu.out - rad.flow\nback: rad.return - tf.a\n"
        "gap: tf.b - tv.a\nhome: tv.b - hs.return",
        without="flow gap suck push back", data={"vent": {"size_mm": size}, "home": {"size_mm": 28}},
    )  # fmt: skip
    assert [finding.pipes for finding in found(NAME, drawing)] == pipes


def test_a_stores_vent() -> None:
    assert found(NAME, vented_store(data={"draw": {"size_mm": 15}})) == ()
    assert only(NAME, vented_store(data={"up": {"size_mm": 15}})).components == ("sv", "st")


@pytest.mark.parametrize(
    ("pipe", "missing"),
    [
        ({"size_mm": None}, ("vent.size_mm",)),
        ({"size_mm": 22, "material": "plastic"}, ("vent.bore_mm",)),
        ({"size_mm": None, "material": None}, ("vent.size_mm", "vent.material")),
    ],
)
def test_unknown(pipe: dict[str, Any], missing: tuple[str, ...]) -> None:
    finding = only(NAME, pumped_vented(data={"vent": pipe}))
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "danger"


def test_a_known_thin_pipe_settles_it() -> None:
    drawing = pumped_vented(data={"vent": {"size_mm": None}, "flow": {"size_mm": 15}})
    assert only(NAME, drawing).grade.value == "danger"


def test_sealed_is_not_applicable() -> None:
    assert asked(NAME, sealed()).status == "not applicable"

"""A filled store on the floor: within, over, and not known."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.made import made

NAME = "floor-load"
# 155 l in all and 45 kg: 200 kg on a circle of 0.19635 m²: 9.989 kN/m².
STORE = {"volume_l": 150, "coil_content_l": 5, "empty_weight_kg": 45, "diameter_mm": 500}
LOAD = 200 * 9.80665 / 1000 / 0.1963495408


def on_floor(capacity: float | None = 20, kind: str = "unvented_store", **data: Any) -> Drawing:
    known = {name: value for name, value in {**STORE, **data}.items() if value != "left out"}
    design = {} if capacity is None else {"floor_capacity_kn_m2": capacity}
    return made({"us": (kind, known)}, "", design=design)


@pytest.mark.parametrize(("capacity", "fires"), [(20, False), (LOAD, False), (9.98, True), (0, True)])
def test_against_what_the_floor_carries(capacity: float, fires: bool) -> None:
    answer = asked(NAME, on_floor(capacity))
    assert answer.status == "judged"
    assert bool(answer.findings) == fires
    for finding in answer.findings:
        assert (finding.grade, finding.components) == ("advice", ("us",))
        assert "weighs 200 kg filled" in finding.message
        assert "competent person must confirm the structure" in finding.message
        assert finding.numbers == {
            "filled_weight_kg": pytest.approx(200),
            "load_kn_m2": pytest.approx(LOAD),
            "capacity_kn_m2": capacity,
        }


@pytest.mark.parametrize(
    ("data", "capacity", "missing"),
    [
        ({}, None, ("design.floor_capacity_kn_m2",)),
        ({"diameter_mm": None}, 20, ("us.diameter_mm",)),
        ({"diameter_mm": "left out", "volume_l": "left out"}, 20, ("us.volume_l", "us.diameter_mm")),
        ({"empty_weight_kg": None}, 20, ("us.empty_weight_kg",)),
        ({"coil_content_l": None}, None, ("us.coil_content_l", "design.floor_capacity_kn_m2")),
    ],
)
def test_not_known(data: dict[str, Any], capacity: float | None, missing: tuple[str, ...]) -> None:
    finding = only(NAME, on_floor(capacity, **data))
    assert (finding.grade, finding.would_be, finding.missing) == ("unanswered", "advice", missing)
    assert "competent person must confirm the structure" in finding.message


@pytest.mark.parametrize(
    ("data", "capacity", "numbers"),
    [
        ({}, None, {"load_kn_m2": LOAD}),
        ({"volume_l": None}, 20, {"load_kn_m2": LOAD / 4, "capacity_kn_m2": 20}),
        ({"coil_content_l": None}, 20, {"load_kn_m2": LOAD * 0.975, "capacity_kn_m2": 20}),
        ({"diameter_mm": None}, 20, {"capacity_kn_m2": 20}),
    ],
)
def test_what_is_known_is_told(
    data: dict[str, Any], capacity: float | None, numbers: dict[str, float]
) -> None:
    assert only(NAME, on_floor(capacity, **data)).numbers == pytest.approx(numbers)


def test_the_water_alone_may_settle_it() -> None:
    finding = only(NAME, on_floor(5, empty_weight_kg=None))
    assert finding.grade == "advice"
    assert "at least 155 kg" in finding.message


def test_two_stores() -> None:
    drawing = made(
        {"a": ("unvented_store", STORE), "b": ("unvented_store", {**STORE, "volume_l": 60})},
        "",
        design={"floor_capacity_kn_m2": 7},
    )
    assert [finding.components for finding in found(NAME, drawing)] == [("a",)]


def test_does_not_apply() -> None:
    vented = made({"vs": ("vented_store", {"volume_l": 150})}, "")
    assert asked(NAME, vented).status == asked(NAME, made({}, "")).status == "not applicable"

"""What stands above the cistern that feeds it never fills."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed
from tests.checks.open_vented.plants import pumped_vented, vented_store, with_data

NAME = "cistern-too-low"

# Heat source at 1 m, the vent's tee 2.5 m up, the radiator 1 m below it.
RADIATOR_M = 2.5
SOURCE_M = 1.0
OUTLET_M = 5.5 - 1 - 1.5 + 0.5 - 1


@pytest.mark.parametrize(
    ("level", "above"),
    [
        (5.5, ()),
        (RADIATOR_M, ()),
        (RADIATOR_M - 0.001, ("rad",)),
        (SOURCE_M, ("rad",)),
        (SOURCE_M - 0.001, ("rad", "hs")),
    ],
)
def test_heating(level: float, above: tuple[str, ...]) -> None:
    findings = found(NAME, pumped_vented(**with_data("fc", water_level_m=level)))
    assert [each.components for each in findings] == ([("fc", *above)] if above else [])
    assert all(each.grade.value == "fault" for each in findings)


def test_the_sentence_and_the_numbers() -> None:
    one = only(NAME, pumped_vented(**with_data("fc", water_level_m=2.1)))
    assert one.numbers == {"water_level_m": 2.1, "highest_m": RADIATOR_M}
    assert one.message.startswith("The water in ") and "stands at 2.1 m. " in one.message
    assert one.message.endswith(" stands up to 0.4 m higher, and never fills.")
    two = only(NAME, pumped_vented(**with_data("fc", water_level_m=0.5)))
    assert two.message.endswith(" stand up to 2 m higher, and never fill.")


def test_of_two_cisterns_the_higher_counts() -> None:
    extra: dict[str, Any] = {"fd": ("feed_cistern", {"water_level_m": 3.0, "serves": "heating"}), "tx": "tee"}
    more = "x: tx.a - hs.return\n y: rad.return - tx.b\n z: fd.feed - tx.branch"
    low = with_data("fc", water_level_m=2.0)
    assert not found(NAME, pumped_vented(more, without="back", **{**extra, **low}))


def test_an_outlet_above_a_storage_cistern() -> None:
    high: dict[str, Any] = {"st": ("vented_store", {"volume_l": 140, "height_m": 0.5})}
    bath: dict[str, Any] = {"bath": ("outlet", {"fitting": "bath", "height_m": 6.0})}
    assert only(NAME, vented_store(**{**high, **bath})).components == ("sc", "bath")
    assert not found(NAME, vented_store(**{**high, "bath": ("outlet", {"fitting": "bath", "height_m": 5.5})}))


def test_a_store_above_its_cistern() -> None:
    high: dict[str, Any] = {
        "st": ("vented_store", {"volume_l": 140, "height_m": 6.0}),
        "bath": ("outlet", {"height_m": 1.0}),
    }
    assert only(NAME, vented_store(**high)).components == ("sc", "st")


def test_an_outlet_that_a_pump_lifts_water_to_is_left_out() -> None:
    parts: dict[str, Any] = {
        "bath": ("outlet", {"fitting": "bath", "height_m": 6.0}),
        "st": ("vented_store", {"volume_l": 140, "height_m": 0.5}),
        "up": "pump",
    }
    drawing = vented_store("lift: th.branch - up.in\n on: up.out - bath.hot", without="draw", **parts)
    assert asked(NAME, drawing).findings == ()


def test_only_what_is_behind_the_pump_is_left_out() -> None:
    parts: dict[str, Any] = {
        "bath": ("outlet", {"fitting": "bath", "height_m": 6.0}),
        "basin": ("outlet", {"fitting": "basin", "height_m": 6.5}),
        "st": ("vented_store", {"volume_l": 140, "height_m": 0.5}),
        "tb": "tee",
        "up": "pump",
    }
    more = "one: th.branch - tb.a\n lift: tb.branch - up.in\n on: up.out - bath.hot\n free: tb.b - basin.hot"
    assert only(NAME, vented_store(more, without="draw", **parts)).components == ("sc", "basin")


def test_a_pump_that_drives_hot_water_round_lifts_nothing() -> None:
    parts: dict[str, Any] = {
        "bath": ("outlet", {"fitting": "bath", "height_m": 6.0}),
        "st": ("vented_store", {"volume_l": 140, "height_m": 0.5}),
        "tb": "tee",
        "tc": "tee",
        "up": "pump",
    }
    more = (
        "one: th.branch - tb.a\n draw2: tb.b - bath.hot\n lift: tb.branch - up.in\n on: up.out - tc.branch\n"
        "in1: iv.b - tc.a\n in2: tc.b - st.cold"
    )
    assert only(NAME, vented_store(more, without="draw cold", **parts)).components == ("sc", "bath")


def test_what_is_missing_is_named() -> None:
    finding = only(NAME, pumped_vented(**with_data("fc", water_level_m=None)))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("fc.water_level_m",))
    assert finding.would_be is not None and finding.would_be.value == "fault"
    loose = pumped_vented(data={"push": {"rise_m": None}, "back": {"rise_m": None}})
    (finding,) = found(NAME, loose)
    assert finding.missing and finding.components == ("fc", "rad")


def test_what_is_known_settles_it() -> None:
    loose = pumped_vented(
        data={"back": {"rise_m": None}, "push": {"rise_m": None}}, **with_data("fc", water_level_m=0.9)
    )
    assert only(NAME, loose).components == ("fc", "hs")


def test_sealed_water_has_no_cistern() -> None:
    assert asked(NAME, sealed()).status == "not applicable"


def test_the_cure_raises_the_cistern() -> None:
    drawing = pumped_vented(**with_data("fc", water_level_m=2.1))
    finding = only(NAME, drawing)
    (cure, *_) = cures(analyse(drawing), finding)
    assert cure.drawing.components["fc"].data["water_level_m"] == 3.0
    assert "stands at 3 m" in cure.message
    assert not found(NAME, cure.drawing)

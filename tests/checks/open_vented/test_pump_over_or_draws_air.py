"""A pump's head against the vent's height above the water, and against the water above what it sucks on."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import vented
from tests.checks.open_vented.plants import pumped_vented, with_data
from tests.checks.open_vented.test_vent_and_feed_apart import gravity

NAME = "pump-over-or-draws-air"

ALL = "flow gap suck push back"
PUSHES_ON_VENT = (
    "flow: hs.flow - tv.a\na: tv.b - rad.flow\nb: rad.return - tf.a\nc: tf.b - pu.in\nd: pu.out - hs.return"
)
SUCKS_ON_VENT = (
    "flow: hs.flow - tv.a\na: tv.b - pu.in\nb: pu.out - tf.a\nc: tf.b - rad.flow\nd: rad.return - hs.return"
)
BOTH_ON_DELIVERY = (
    "a: hs.flow - pu.in\nb: pu.out - tv.a\ngap: tv.b - tf.a\nc: tf.b - rad.flow\nd: rad.return - hs.return"
)


UNTOLD = {"flow": {"rise_m": None}, "vent": {"rise_m": None}}


def plant(ways: str, *, head: float | None = 4, height: float | None = 450, **data: Any) -> Drawing:
    """That ring, by the pump's head and the vent's height; `data` are heights in metres by part."""
    parts: dict[str, Any] = {
        **with_data("pu", shut_off_head_m=head, height_m=data.get("pu")),
        **with_data("ov", height_above_water_mm=height),
        "tv": ("tee", {"height_m": data.get("tv")}),
    }
    return pumped_vented(ways, without=ALL, data=UNTOLD, **parts)


SOUND: dict[str, Drawing] = {
    "both before the pump, 450 mm": pumped_vented(),
    "pushed by less than the vent is high": plant(PUSHES_ON_VENT, head=0.6, height=601),
    "sucked by less than stands above": plant(SUCKS_ON_VENT, head=1.9, tv=3.55),
    "on the delivery side of a weak pump": plant(BOTH_ON_DELIVERY, head=1.9, pu=3.55),
    "no head known, none needed": plant(
        "flow: hs.flow - tv.a\ngap: tv.b - tf.a\nc: tf.b - pu.in\nd: pu.out - rad.flow\ne: rad.return - hs.return",
        head=None,
    ),
    "height told by two heights": pumped_vented(**with_data("ov", height_above_water_mm=None, height_m=6)),
    "drawn to the cistern": pumped_vented("vent: tv.branch - fc.vent_over", without="vent"),
}  # fmt: skip

FIRES: dict[str, tuple[Drawing, str]] = {
    "pushed by exactly its height": (plant(PUSHES_ON_VENT, head=0.6, height=600), "pumps over"),
    "pushed, and the rest unknown": (plant(PUSHES_ON_VENT, head=4), "pumps over"),
    "sucked by all that stands above": (plant(SUCKS_ON_VENT, head=2, tv=3.5), "air is drawn in"),
    "on the delivery side": (plant(BOTH_ON_DELIVERY, head=2, pu=3.5), "delivery side"),
    "below 450 mm": (pumped_vented(**with_data("ov", height_above_water_mm=449)), "0.449 m"),
}

UNKNOWN: dict[str, tuple[Drawing, set[str]]] = {
    "height": (
        pumped_vented(data=UNTOLD, **with_data("ov", height_above_water_mm=None)),
        {"ov.height_above_water_mm"},
    ),
    "pushed by an unknown head": (plant(PUSHES_ON_VENT, head=None), {"pu.shut_off_head_m"}),
    "pushed, neither known": (
        plant(PUSHES_ON_VENT, head=None, height=None),
        {"pu.shut_off_head_m", "ov.height_above_water_mm"},
    ),
    "sucked by less than stands above, the vent's height": (
        plant(SUCKS_ON_VENT, head=1.9, tv=3.55, height=None),
        {"ov.height_above_water_mm"},
    ),
    "sucked, the tee's height": (plant(SUCKS_ON_VENT, head=1), {"flow.rise_m"}),
    "delivery side": (plant(BOTH_ON_DELIVERY, head=None), {"pu.shut_off_head_m", "a.rise_m"}),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "says"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, says: str) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components[0]) == ("fault", "ov")
    assert says in finding.message


def test_a_vent_that_is_only_sucked_on_need_not_tell_its_height() -> None:
    finding = only(NAME, plant(SUCKS_ON_VENT, head=2, tv=3.5, height=None))
    assert (finding.grade.value, finding.missing) == ("fault", ())


@pytest.mark.parametrize(("drawing", "missing"), UNKNOWN.values(), ids=UNKNOWN.keys())
def test_unknown(drawing: Drawing, missing: set[str]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, set(finding.missing)) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "fault"


@pytest.mark.parametrize(("height", "fires"), [(330, False), (329, True)])
def test_gravity_hot_water_needs_40_mm_a_metre_and_150(height: float, fires: bool) -> None:
    drawing = gravity()
    part = drawing.components["ov"]
    components = {
        **drawing.components,
        "ov": replace(part, data={**part.data, "height_above_water_mm": height}),
    }
    findings = found(NAME, replace(drawing, components=components))
    assert [each.grade.value for each in findings] == ["fault"] * fires


def test_without_a_pump_it_does_not_apply() -> None:
    assert asked(NAME, vented()).status == "not applicable"


def test_a_low_vent_is_cured_by_a_higher_end() -> None:
    drawing = pumped_vented(**with_data("ov", height_above_water_mm=200))
    proposed = cures(analyse(drawing), only(NAME, drawing))
    assert [cure.drawing.components["ov"].data["height_above_water_mm"] for cure in proposed] == [450]


def test_a_pump_that_pushes_on_the_vent_is_cured_by_the_feeds_place() -> None:
    drawing = plant(PUSHES_ON_VENT, pu=0.5)
    proposed = cures(analyse(drawing), only(NAME, drawing))
    assert proposed
    assert all(found(NAME, cure.drawing) == () for cure in proposed)

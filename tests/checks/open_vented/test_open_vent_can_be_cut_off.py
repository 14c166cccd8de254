"""Valves between heat source and open vent."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, asked, danger, found, told
from tests.checks.houses import OPEN_RADIATOR, SECURED, sealed, vented

NAME = "open-vent-can-be-cut-off"
HAND = "isolating_valve"
COMBINED = ("heat_source", {"combined_feed_and_vent": True})

SOUND: dict[str, Drawing] = {
    "nothing between": vented(),
    "a valve in the feed only": vented(feed="fc.feed iv.a:b t2.branch", iv=HAND),
    "a valve on one of two ways round": vented(
        ring="hs.flow iv.a:b t1.a:b rad.flow:return t2.a:b hs.return", rad=OPEN_RADIATOR, iv=HAND
    ),
    "two vents, a valve in one": vented(
        "t3.branch iv.a:b o2.connection",
        ring="hs.flow t1.a:b rad.flow:return t2.a:b t3.a:b hs.return",
        t3="tee", iv=HAND, o2="open_vent",
    ),
    "no vent at all": vented(vent=""),
    "combined feed and vent with nothing between": vented(vent="", hs=COMBINED),
    "a vent of its own, and a valve in the feed, where they might be one": vented(
        feed="fc.feed iv.a:b t2.branch", hs=COMBINED, iv=HAND
    ),
    "a valve in a store's cold feed": vented(
        "f2.feed iv.a:b vs.cold", "vs.hot ot.hot",
        ring="hs.flow t1.a:b vs.coil_flow:coil_return t2.a:b hs.return",
        vs="vented_store", f2=("feed_cistern", {"serves": "hot_water"}), iv=HAND, ot="outlet",
    ),
    "sealed": sealed(),
}  # fmt: skip

CUT_OFF: dict[str, tuple[Drawing, Told]] = {
    "a valve in the vent": (
        vented(vent="t1.branch iv.a:b ov.connection", iv=HAND),
        danger("hs", "iv", "iv"),
    ),
    "a secured valve in the vent": (
        vented(vent="t1.branch iv.a:b ov.connection", iv=SECURED),
        danger("hs", "iv", "iv"),
    ),
    "a pump with its own valves before it, and the emitters' heads": (
        vented(ring="hs.flow pu.in:out t1.a:b rad.flow:return t2.a:b hs.return", pu="pump"),
        danger("hs", "pu rad"),
    ),
    "a zone valve before it": (
        vented(vent="t1.branch zv.in:out ov.connection", zv="zone_valve"),
        danger("hs", "zv", "zv"),
    ),
    "a valve in a combined feed and vent": (
        vented(vent="", feed="fc.feed iv.a:b t2.branch", hs=COMBINED, iv=HAND),
        danger("hs", "iv", "iv"),
    ),
    "one leg of a three-port valve": (
        vented(vent="t1.branch tp.ab:a ov.connection", tp="three_port_valve"),
        danger("hs", "tp:a", "tp:a"),
    ),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()


@pytest.mark.parametrize(("drawing", "expected"), CUT_OFF.values(), ids=CUT_OFF.keys())
def test_fires(drawing: Drawing, expected: Told) -> None:
    assert told(NAME, drawing) == [expected]


def test_not_applicable_to_a_sealed_circuit() -> None:
    assert asked(NAME, sealed()).status == "not applicable"

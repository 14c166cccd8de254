"""Valves between the cistern's feed and the heat source."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, danger, found, told
from tests.checks.houses import SECURED, sealed, vented

NAME = "cold-feed-can-be-cut-off"
HAND = "isolating_valve"

SOUND: dict[str, Drawing] = {
    "nothing between": vented(),
    "a valve in the vent only": vented(vent="t1.branch iv.a:b ov.connection", iv=HAND),
    "a valve in the cistern's supply": vented("cm.outlet iv.a:b fc.supply", cm="cold_main", iv=HAND),
    "a valve in a store's own cold feed": vented(
        "f2.feed iv.a:b vs.cold", "vs.hot ot.hot",
        ring="hs.flow t1.a:b vs.coil_flow:coil_return t2.a:b hs.return",
        vs="vented_store", f2=("feed_cistern", {"serves": "hot_water"}), iv=HAND, ot="outlet",
    ),
    "no feed at all": vented(feed=""),
    "sealed": sealed(),
}  # fmt: skip

CUT_OFF: dict[str, tuple[Drawing, Told]] = {
    "a valve in the feed": (vented(feed="fc.feed iv.a:b t2.branch", iv=HAND), danger("hs", "iv", "iv")),
    "a secured valve in the feed": (
        vented(feed="fc.feed iv.a:b t2.branch", iv=SECURED),
        danger("hs", "iv", "iv"),
    ),
    "valves on both ways from the heat source": (
        vented(ring="hs.flow v1.a:b t1.a:b rad.flow:return t2.a:b v2.a:b hs.return", v1=HAND, v2=HAND,
            rad=("radiator", {"thermostatic": False, "valves": False})),
        danger("hs", "v1 v2"),
    ),
    "two cisterns, each with a valve": (
        vented(
            "f2.feed v2.a:b t3.branch", feed="fc.feed v1.a:b t2.branch",
            ring="hs.flow t1.a:b rad.flow:return t2.a:b t3.a:b hs.return",
            t3="tee", v1=HAND, v2=HAND, f2="feed_cistern",
        ),
        danger("hs", "v1 v2"),
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()


@pytest.mark.parametrize(("drawing", "expected"), CUT_OFF.values(), ids=CUT_OFF.keys())
def test_fires(drawing: Drawing, expected: Told) -> None:
    assert told(NAME, drawing) == [expected]

"""Valves between heat source and safety valve: no kind is excused, not even a secured one."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, danger, found, told
from tests.checks.houses import SECURED, TIGHT_PUMP, sealed, vented

NAME = "safety-valve-can-be-cut-off"
HAND = "isolating_valve"

SOUND: dict[str, Drawing] = {
    "nothing between": sealed(),
    "a valve beyond the safety valve's tee": sealed(
        ring="hs.flow t1.a:b iv.a:b rad.flow:return t2.a:b hs.return", iv=HAND
    ),
    "built in, beside one with a valve": sealed(
        safety="t1.branch iv.a:b sv.inlet", iv=HAND, hs=("heat_source", {"built_in": ["safety_valve"]})
    ),
    "strainer, which another check speaks of": sealed(safety="t1.branch st.in:out sv.inlet", st="strainer"),
    "pump without valves": sealed(safety="t1.branch pu.in:out sv.inlet", pu=TIGHT_PUMP),
    "a valve on one of two ways round": sealed(
        ring="hs.flow iv.a:b t1.a:b t3.a:b t2.a:b hs.return", safety="t1.branch sv.inlet", iv=HAND, t3="tee"
    ),
    "three-port valve, both legs to it": sealed(
        "tp.b t3.branch", safety="t1.branch tp.ab:a t3.a:b sv.inlet", tp="three_port_valve", t3="tee"
    ),
    "no safety valve at all": sealed(safety=""),
    "open-vented": vented("t3.branch iv.a:b sv.inlet", iv=HAND, t3="tee",
        ring="hs.flow t1.a:b rad.flow:return t2.a:b t3.a:b hs.return"),
    "a valve in its discharge, which is another check's": sealed("sv.outlet iv.a:b de.inlet", iv=HAND, de="discharge_end"),
}  # fmt: skip

CUT_OFF: dict[str, tuple[Drawing, Told]] = {
    "isolating valve": (sealed(safety="t1.branch iv.a:b sv.inlet", iv=HAND), danger("hs", "iv", "iv")),
    "secured valve": (sealed(safety="t1.branch iv.a:b sv.inlet", iv=SECURED), danger("hs", "iv", "iv")),
    "secured, and one that is not": (
        sealed(safety="t1.branch v1.a:b v2.a:b sv.inlet", v1=SECURED, v2=HAND),
        danger("hs", "v2", "v1 v2"),
    ),
    "zone valve": (sealed(safety="t1.branch zv.in:out sv.inlet", zv="zone_valve"), danger("hs", "zv", "zv")),
    "balancing valve": (
        sealed(safety="t1.branch bv.a:b sv.inlet", bv="balancing_valve"),
        danger("hs", "bv", "bv"),
    ),
    "pump with its own valves": (
        sealed(safety="t1.branch pu.in:out sv.inlet", pu="pump"),
        danger("hs", "pu", "pu"),
    ),
    "valves on both ways round": (
        sealed(ring="hs.flow v1.a:b t1.a:b rad.flow:return t2.a:b v2.a:b hs.return", v1=HAND, v2=HAND),
        danger("hs", "v1 v2"),
    ),
    "a valve on the flow and the emitters' heads": (
        sealed(ring="hs.flow v1.a:b t1.a:b rad.flow:return t2.a:b hs.return", v1=HAND),
        danger("hs", "v1 rad"),
    ),
    "one leg of a three-port valve": (
        sealed(safety="t1.branch tp.ab:b sv.inlet", tp="three_port_valve"),
        danger("hs", "tp:b", "tp:b"),
    ),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()


@pytest.mark.parametrize(("drawing", "expected"), CUT_OFF.values(), ids=CUT_OFF.keys())
def test_fires(drawing: Drawing, expected: Told) -> None:
    assert told(NAME, drawing) == [expected]


def test_of_several_heat_sources_only_the_one_that_can_be_cut_off() -> None:
    drawing = sealed(
        "h2.flow v1.a:b t3.branch",
        "h2.return v2.a:b t4.branch",
        ring="hs.flow t1.a:b t3.a:b rad.flow:return t4.a:b t2.a:b hs.return",
        h2="heat_source",
        t3="tee",
        t4="tee",
        v1=HAND,
        v2=HAND,
    )
    assert told(NAME, drawing) == [danger("h2", "v1 v2")]

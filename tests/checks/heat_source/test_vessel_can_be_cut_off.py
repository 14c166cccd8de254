"""Valves between heat source and vessel: each that counts, and each that does not."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, advice, asked, danger, found, only, told
from tests.checks.houses import OPEN_RADIATOR, SECURED, TIGHT_PUMP, sealed, vented

NAME = "vessel-can-be-cut-off"
HAND = "isolating_valve"

SOUND: dict[str, Drawing] = {
    "nothing between": sealed(),
    "a valve elsewhere": sealed("t2.branch iv.a:b dr.connection", vessel="t3.branch ev.connection",
        ring="hs.flow t1.a:b rad.flow:return t2.a:b t3.a:b hs.return", t3="tee", iv=HAND, dr="drain"),
    "a valve on one of two ways round": sealed(
        ring="hs.flow t1.a:b rad.flow:return t2.a:b iv.a:b hs.return", rad=OPEN_RADIATOR, iv=HAND
    ),
    "three-port valve, both legs to the vessel": sealed(
        "tp.b t3.branch", vessel="t2.branch tp.ab:a t3.a:b ev.connection", tp="three_port_valve", t3="tee"
    ),
    "three-port valve backwards, both legs from the heat source": sealed(
        "t1.branch tp.a:ab ev.connection",
        "t2.branch tp.b",
        vessel="",
        safety="",
        tp="three_port_valve",
    ),
    "built-in vessel beside one with a valve": sealed(
        vessel="t2.branch iv.a:b ev.connection", iv=HAND, hs=("heat_source", {"built_in": ["vessel"]})
    ),
    "built-in vessel only": sealed(vessel="", hs=("heat_source", {"built_in": ["vessel"]})),
    "a second vessel with nothing between": sealed(
        "t2.branch iv.a:b ev.connection", vessel="t1.branch e2.connection", safety="", iv=HAND, e2="expansion_vessel"
    ),
    "strainer": sealed(vessel="t2.branch st.in:out ev.connection", st="strainer"),
    "dirt separator without valves": sealed(
        vessel="t2.branch ds.a:b ev.connection", ds=("dirt_separator", {"isolating_valves": False})
    ),
    "pump without valves": sealed(vessel="t2.branch pu.in:out ev.connection", pu=TIGHT_PUMP),
    "built-in pump": sealed(hs=("heat_source", {"built_in": ["pump"]})),
    "radiator without valves or head": sealed(vessel="t2.branch r2.flow:return ev.connection", r2=OPEN_RADIATOR),
    "separator": sealed(vessel="t2.branch se.source_flow:load_return ev.connection", se="separator"),
    "exchanger": sealed(vessel="t2.branch hx.primary_in:primary_out ev.connection", hx="heat_exchanger"),
    "no vessel at all, which another check speaks of": sealed(vessel=""),
    "vessel beyond a check valve, which another check speaks of": sealed(
        vessel="t2.branch cv.in:out iv.a:b ev.connection", cv="check_valve", iv=HAND
    ),
    "open-vented": vented("t3.branch iv.a:b ev.connection", iv=HAND, t3="tee",
        ring="hs.flow t1.a:b rad.flow:return t2.a:b t3.a:b hs.return"),
    "built-in check valve, vessel on the flow": sealed(
        "t1.branch t3.a:b ev.connection", vessel="", safety="t3.branch sv.inlet", t3="tee",
        hs=("heat_source", {"built_in": ["check_valve"]}),
    ),
}  # fmt: skip

CUT_OFF: dict[str, tuple[Drawing, Told]] = {
    "isolating valve": (
        sealed(vessel="t2.branch iv.a:b ev.connection", iv=HAND),
        danger("hs", "iv", "iv"),
    ),
    "balancing valve": (
        sealed(vessel="t2.branch bv.a:b ev.connection", bv="balancing_valve"),
        danger("hs", "bv", "bv"),
    ),
    "zone valve, shut by its motor": (
        sealed(vessel="t2.branch zv.in:out ev.connection", zv="zone_valve"),
        danger("hs", "zv", "zv"),
    ),
    "thermostatic radiator": (
        sealed(vessel="t2.branch r2.flow:return ev.connection", r2="radiator"),
        danger("hs", "r2", "r2"),
    ),
    "radiator with valves": (
        sealed(vessel="t2.branch r2.flow:return ev.connection", r2=("radiator", {"thermostatic": False})),
        danger("hs", "r2", "r2"),
    ),
    "heating zone": (
        sealed(vessel="t2.branch hz.flow:return ev.connection", hz="heating_zone"),
        danger("hs", "hz", "hz"),
    ),
    "heating zone that is always a way round": (
        sealed(
            vessel="t2.branch hz.flow:return ev.connection", hz=("heating_zone", {"all_thermostatic": False})
        ),
        danger("hs", "hz", "hz"),
    ),
    "pump with its own valves": (
        sealed(vessel="t2.branch pu.in:out ev.connection", pu="pump"),
        danger("hs", "pu", "pu"),
    ),
    "pump with its own valves, against its arrow": (
        sealed(vessel="t2.branch pu.out:in ev.connection", pu="pump"),
        danger("hs", "pu", "pu"),
    ),
    "dirt separator with valves": (
        sealed(vessel="t2.branch ds.a:b ev.connection", ds="dirt_separator"),
        danger("hs", "ds", "ds"),
    ),
    "two valves one after the other": (
        sealed(vessel="t2.branch v1.a:b v2.a:b ev.connection", v1=HAND, v2=HAND),
        danger("hs", "v1", "v1 v2"),
    ),
    "two valves side by side": (
        sealed(
            "t3.branch v2.a:b t4.branch",
            vessel="t2.branch t3.a:b v1.a:b t4.a:b ev.connection",
            t3="tee",
            t4="tee",
            v1=HAND,
            v2=HAND,
        ),
        danger("hs", "v1 v2"),
    ),
    "a valve on each of two ways round": (
        sealed(ring="hs.flow t1.a:b rad.flow:return t2.a:b iv.a:b hs.return", iv=HAND),
        danger("hs", "iv rad"),
    ),
    "a valve on each vessel's pipe": (
        sealed(
            "t1.branch v2.a:b e2.connection",
            vessel="t2.branch v1.a:b ev.connection",
            safety="",
            v1=HAND,
            v2=HAND,
            e2="expansion_vessel",
        ),
        danger("hs", "v1 v2"),
    ),
    "one leg of a three-port valve": (
        sealed(vessel="t2.branch tp.ab:a ev.connection", tp="three_port_valve"),
        danger("hs", "tp:a", "tp:a"),
    ),
    "a three-port valve's leg and a valve on its other": (
        sealed(
            "tp.b iv.a:b t3.branch",
            vessel="t2.branch tp.ab:a t3.a:b ev.connection",
            tp="three_port_valve",
            t3="tee",
            iv=HAND,
        ),
        danger("hs", "iv tp:a"),
    ),
    "a vessel on each leg of a three-port valve, one with a valve": (
        sealed(
            "tp.b iv.a:b e2.connection",
            vessel="t2.branch tp.ab:a ev.connection",
            tp="three_port_valve",
            iv=HAND,
            e2="expansion_vessel",
        ),
        danger("hs", "iv tp:a"),
    ),
    "built-in check valve: no way for pressure by the return": (
        sealed(hs=("heat_source", {"built_in": ["check_valve"]})),
        danger("hs", "rad", "rad"),
    ),
    "secured valve": (
        sealed(vessel="t2.branch iv.a:b ev.connection", iv=SECURED),
        advice("hs", "iv", "iv"),
    ),
    "secured valves, two": (
        sealed(vessel="t2.branch v1.a:b v2.a:b ev.connection", v1=SECURED, v2=SECURED),
        advice("hs", "v1", "v1 v2"),
    ),
    "secured, beside a valve that is not": (
        sealed(
            "t3.branch v2.a:b t4.branch",
            vessel="t2.branch t3.a:b v1.a:b t4.a:b ev.connection",
            t3="tee",
            t4="tee",
            v1=SECURED,
            v2=HAND,
        ),
        advice("hs", "v1 v2"),
    ),
    "secured, before a valve that is not": (
        sealed(vessel="t2.branch v1.a:b v2.a:b ev.connection", v1=SECURED, v2=HAND),
        danger("hs", "v2", "v1 v2"),
    ),
    "secured, before two side by side that are not": (
        sealed(
            "t3.branch v3.a:b t4.branch",
            vessel="t2.branch v1.a:b t3.a:b v2.a:b t4.a:b ev.connection",
            t3="tee",
            t4="tee",
            v1=SECURED,
            v2=HAND,
            v3=HAND,
        ),
        danger("hs", "v2 v3", "v1"),
    ),
    "fed through a check valve only, so sealed": (
        sealed(
            "fc.feed cv.in:out t3.branch",
            vessel="t2.branch iv.a:b ev.connection",
            ring="hs.flow t1.a:b rad.flow:return t2.a:b t3.a:b hs.return",
            iv=HAND,
            cv="check_valve",
            fc="feed_cistern",
            t3="tee",
        ),
        danger("hs", "iv", "iv"),
    ),
    "behind an exchanger": (
        sealed(
            "hx.secondary_out r2.flow:return t3.a:b hx.secondary_in",
            "t3.branch iv.a:b e2.connection",
            ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return",
            hx="heat_exchanger",
            r2="radiator",
            t3="tee",
            iv=HAND,
            e2="expansion_vessel",
        ),
        danger("hx", "iv", "iv"),
    ),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert found(NAME, drawing) == ()


@pytest.mark.parametrize(("drawing", "expected"), CUT_OFF.values(), ids=CUT_OFF.keys())
def test_fires(drawing: Drawing, expected: Told) -> None:
    (answer,) = told(NAME, drawing)
    if len(expected.shut) == 1 and len(expected.alone) > 1:
        # Which of several smallest sets is named is not promised.
        assert len(answer.shut) == 1 and answer.shut <= expected.alone
        expected = Told(expected.subject, expected.grade, answer.shut, expected.alone)
    assert answer == expected


def test_the_witness_prefers_what_is_not_secured() -> None:
    both = sealed(vessel="t2.branch v1.a:b v2.a:b ev.connection", v1=SECURED, v2=HAND)
    assert told(NAME, both) == [danger("hs", "v2", "v1 v2")]
    other_order = sealed(vessel="t2.branch v2.a:b v1.a:b ev.connection", v1=SECURED, v2=HAND)
    assert told(NAME, other_order) == [danger("hs", "v2", "v1 v2")]


def test_of_several_heat_sources_only_the_one_that_can_be_cut_off() -> None:
    drawing = sealed(
        "t1.branch v1.a:b h2.flow",
        "t3.branch v2.a:b h2.return",
        safety="",
        ring="hs.flow t1.a:b rad.flow:return t2.a:b t3.a:b hs.return",
        t3="tee",
        v1=HAND,
        v2=HAND,
        h2="heat_source",
    )
    assert told(NAME, drawing) == [danger("h2", "v1 v2")]


def test_ids_are_the_heat_source_then_the_witness_then_what_is_cut_off() -> None:
    finding = only(NAME, sealed(vessel="t2.branch iv.a:b ev.connection", iv=HAND))
    assert finding.components == ("hs", "iv", "ev")
    assert finding.witness is not None and finding.witness.parts == ("iv",)


def test_the_part_cut_off_is_told_for_the_drawing_of_it() -> None:
    drawing = sealed(vessel="t2.branch iv.a:b t3.a:b ev.connection", iv=HAND, t3="tee")
    finding = only(NAME, drawing)
    ids = {id: {end.part for end in pipe.joints} for id, pipe in drawing.pipes.items()}
    assert set(finding.cut_off_components) == {"t3", "ev"}
    assert {frozenset(ids[pipe]) for pipe in finding.cut_off_pipes} == {
        frozenset({"iv", "t3"}),
        frozenset({"t3", "ev"}),
    }


def test_the_message_names_every_valve_that_does_it_alone() -> None:
    message = only(NAME, sealed(vessel="t2.branch v1.a:b v2.a:b ev.connection", v1=HAND, v2=HAND)).message
    assert "isolating valve v1" in message and "isolating valve v2" in message and "alone" in message


def test_the_message_of_a_secured_valve_asks_to_keep_it_so() -> None:
    message = only(NAME, sealed(vessel="t2.branch iv.a:b ev.connection", iv=SECURED)).message
    assert "secured" in message


def test_two_water_bodies_in_one_drawing() -> None:
    drawing = sealed(
        "h2.flow r2.flow:return t5.a:b h2.return",
        "t5.branch iv.a:b e2.connection",
        h2="heat_source",
        r2="radiator",
        t5="tee",
        iv=HAND,
        e2="expansion_vessel",
    )
    assert told(NAME, drawing) == [danger("h2", "iv", "iv")]


def test_not_applicable_where_there_is_no_vessel_to_be_cut_off_from() -> None:
    assert asked(NAME, sealed(vessel="")).status == "not applicable"
    assert asked(NAME, sealed()).status == "judged"

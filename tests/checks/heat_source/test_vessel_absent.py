"""No expansion vessel: every way to lack one, and what looks like lacking one and does not."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import OPEN_RADIATOR, TIGHT_PUMP, sealed, vented
from tests.made import Part

NAME = "vessel-absent"

SOUND: dict[str, Drawing] = {
    "on the return": sealed(),
    "on the flow": sealed(vessel="t1.branch t3.a:b ev.connection", safety="t3.branch sv.inlet", t3="tee"),
    "built in": sealed(vessel="", hs=("heat_source", {"built_in": ["vessel"]})),
    "behind a valve, which another check speaks of": sealed(
        vessel="t2.branch iv.a:b ev.connection", iv="isolating_valve"
    ),
    "beyond a thermostatic radiator": sealed(vessel="t2.branch r2.flow:return ev.connection", r2="radiator"),
    "beyond a pump": sealed(vessel="t2.branch pu.in:out ev.connection", pu=TIGHT_PUMP),
    "beyond a pump, against its arrow": sealed(vessel="t2.branch pu.out:in ev.connection", pu=TIGHT_PUMP),
    "beyond a strainer": sealed(vessel="t2.branch st.in:out ev.connection", st="strainer"),
    "beyond a separator": sealed(vessel="t2.branch se.source_flow:load_return ev.connection", se="separator"),
    "beyond a store's coil": sealed(
        vessel="t2.branch us.coil_flow:coil_return ev.connection", us="unvented_store"
    ),
    "a check valve in one of two ways": sealed(
        "t3.branch cv.in:out t4.branch",
        vessel="t2.branch t3.a:b t4.a:b ev.connection",
        t3="tee",
        t4="tee",
        cv="check_valve",
    ),
    "open-vented": vented(),
    "open-vented by its feed alone": vented(vent=""),
    "open-vented by its vent alone": vented(feed=""),
}

ABSENT: dict[str, Drawing] = {
    "none drawn": sealed(vessel=""),
    "a gauge in its place": sealed(vessel="t2.branch pg.connection", pg="pressure_gauge"),
    "drawn and joined to nothing": sealed(vessel="", ev="expansion_vessel"),
    "beyond a filling link left connected": sealed(
        vessel="t2.branch fl.system:supply ev.connection", fl=("filling_link", {"left_connected": True})
    ),
    "on the drinking side of a combination heat source": sealed(
        vessel="hs.cold ev.connection", hs="combination_heat_source"
    ),
    "on a store's water, not on its coil's": sealed(
        vessel="us.cold ev.connection",
        ring="hs.flow t1.a:b us.coil_flow:coil_return t2.a:b hs.return",
        us="unvented_store",
    ),
    "on the other side of an exchanger": sealed(
        "hx.secondary_out:secondary_in t4.branch",
        "t4.a ev.connection",
        vessel="",
        ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return",
        hx="heat_exchanger",
        t4="tee",
    ),
    "the heat source has everything else built in": sealed(
        vessel="", hs=("heat_source", {"built_in": ["pump", "safety_valve", "bypass", "gauge"]})
    ),
}

BLOCKED: dict[str, tuple[Drawing, str]] = {
    "check valve out": (sealed(vessel="t2.branch cv.in:out ev.connection", cv="check_valve"), "cv"),
    "check valve in": (sealed(vessel="t2.branch cv.out:in ev.connection", cv="check_valve"), "cv"),
    "bypass valve": (sealed(vessel="t2.branch bv.in:out ev.connection", bv="bypass_valve"), "bv"),
    "reducing valve": (
        sealed(vessel="t2.branch rv.in:out ev.connection", rv="pressure_reducing_valve"),
        "rv",
    ),
    "blending valve": (sealed(vessel="t2.branch bl.hot:mixed ev.connection", bl="blending_valve"), "bl"),
    "check valve, then a valve": (
        sealed(vessel="t2.branch cv.in:out iv.a:b ev.connection", cv="check_valve", iv="isolating_valve"),
        "cv",
    ),
    "two check valves side by side, one each way": (
        sealed(
            "t3.branch c2.out:in t4.branch",
            vessel="t2.branch t3.a:b c1.in:out t4.a:b ev.connection",
            t3="tee",
            t4="tee",
            c1="check_valve",
            c2="check_valve",
        ),
        "c",
    ),
}


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert asked(NAME, drawing).findings == ()


@pytest.mark.parametrize("drawing", ABSENT.values(), ids=ABSENT.keys())
def test_fires(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("hs",))
    assert "no expansion vessel" in finding.message


@pytest.mark.parametrize(("drawing", "blocker"), BLOCKED.values(), ids=BLOCKED.keys())
def test_names_the_part_that_cannot_serve(drawing: Drawing, blocker: str) -> None:
    finding = only(NAME, drawing)
    assert finding.grade.value == "danger"
    assert finding.components[0] == "hs"
    assert finding.components[1].startswith(blocker)
    assert finding.components[2] == "ev"
    assert drawing.name(finding.components[1]) in finding.message


def test_a_built_in_check_valve_and_an_open_way_round_it() -> None:
    way_round = sealed(hs=("heat_source", {"built_in": ["check_valve"]}), rad=OPEN_RADIATOR)
    assert asked(NAME, way_round).findings == ()


def test_a_built_in_check_valve_on_the_only_way() -> None:
    no_way_back = sealed(
        ring="hs.flow t1.a:b cv.in:out t2.a:b hs.return",
        hs=("heat_source", {"built_in": ["check_valve"]}),
        cv="check_valve",
    )
    finding = only(NAME, no_way_back)
    assert (finding.grade.value, finding.components) == ("danger", ("hs", "ev"))


def test_judged_where_there_is_heat_and_not_applicable_where_there_is_none() -> None:
    assert asked(NAME, sealed()).status == "judged"
    assert asked(NAME, vented()).status == "not applicable"
    no_heat = sealed(ring="t1.a rad.flow:return t2.a", hs="cold_main")
    assert asked(NAME, no_heat).status == "not applicable"


def test_each_heat_source_by_itself() -> None:
    two = sealed(
        "h2.flow r2.flow:return h2.return",
        h2="heat_source",
        r2="radiator",
    )
    assert only(NAME, two).components == ("h2",)


def _behind(*far_side: str, **parts: Part) -> Drawing:
    """The usual plant with an exchanger in its ring, and what stands behind it."""
    return sealed(
        *far_side,
        ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return",
        hx="heat_exchanger",
        **parts,  # type: ignore[arg-type]  # no part is called as a parameter is
    )


class TestBehindAPlateExchanger:
    """Water that only an exchanger heats is a body of its own."""

    def test_it_needs_its_own_vessel(self) -> None:
        drawing = _behind("hx.secondary_out r2.flow:return hx.secondary_in", r2="radiator")
        assert only(NAME, drawing).components == ("hx",)

    def test_and_has_it(self) -> None:
        drawing = _behind(
            "hx.secondary_out r2.flow:return t3.a:b hx.secondary_in",
            "t3.branch e2.connection",
            r2="radiator",
            t3="tee",
            e2="expansion_vessel",
        )
        assert found(NAME, drawing) == ()

    def test_the_far_vessel_does_not_serve_the_near_side(self) -> None:
        drawing = sealed(
            "hx.secondary_out r2.flow:return t3.a:b hx.secondary_in",
            "t3.branch e2.connection",
            vessel="",
            ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return",
            hx="heat_exchanger",
            r2="radiator",
            t3="tee",
            e2="expansion_vessel",
        )
        assert only(NAME, drawing).components == ("hs",)

    def test_whichever_way_round_it_is_fitted(self) -> None:
        drawing = sealed(
            "hx.primary_out r2.flow:return hx.primary_in",
            ring="hs.flow t1.a:b hx.secondary_in:secondary_out t2.a:b hs.return",
            hx="heat_exchanger",
            r2="radiator",
        )
        assert only(NAME, drawing).components == ("hx",)

    def test_drinking_water_is_none(self) -> None:
        drawing = _behind("cm.outlet hx.secondary_in", "hx.secondary_out ot.hot", cm="cold_main", ot="outlet")
        assert found(NAME, drawing) == ()

    def test_drinking_water_from_a_check_valve_on_is_none(self) -> None:
        drawing = _behind(
            "cm.outlet cv.in:out hx.secondary_in",
            "hx.secondary_out ot.hot",
            cm="cold_main",
            cv="check_valve",
            ot="outlet",
        )
        assert found(NAME, drawing) == ()

    def test_a_capped_side_is_none(self) -> None:
        drawing = _behind(
            "hx.secondary_in k1.connection", "hx.secondary_out k2.connection", k1="cap", k2="cap"
        )
        assert found(NAME, drawing) == ()

    def test_a_side_nothing_is_joined_to_is_none(self) -> None:
        assert found(NAME, _behind()) == ()

    def test_one_behind_another(self) -> None:
        drawing = _behind(
            "hx.secondary_out h2.primary_in:primary_out t3.a:b hx.secondary_in",
            "t3.branch e2.connection",
            "h2.secondary_out r2.flow:return h2.secondary_in",
            h2="heat_exchanger",
            t3="tee",
            e2="expansion_vessel",
            r2="radiator",
        )
        assert only(NAME, drawing).components == ("h2",)

    def test_two_heated_sides_are_judged_by_their_heat_sources_alone(self) -> None:
        drawing = _behind("hx.secondary_out hb.return", "hb.flow hx.secondary_in", hb="heat_source")
        assert only(NAME, drawing).components == ("hb",)

    def test_open_vented_behind(self) -> None:
        drawing = _behind(
            "hx.secondary_out r2.flow:return t3.a:b hx.secondary_in",
            "fc.feed t3.branch",
            r2="radiator",
            t3="tee",
            fc=("feed_cistern", {"serves": "heating"}),
        )
        assert found(NAME, drawing) == ()

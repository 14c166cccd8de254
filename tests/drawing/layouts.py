"""Layouts as people draw them: a guest house with a store, a hall with a cistern, a combination, a separator."""

from __future__ import annotations

from circuitcheck.drawing.value import Drawing
from tests.drawing.making import chained, control, drawing, part


def guest_house() -> Drawing:
    """Sealed heating of two zones and a mains-fed store, with all that stands on its cold feed."""
    parts = [
        part("hs", "heat_source", (8, 14)),
        part("t1", "tee", (14, 12)),
        part("sv", "safety_valve", (14, 8)),
        part("e1", "discharge_end", (5, 22)),
        part("t2", "tee", (18, 12)),
        part("pg", "pressure_gauge", (18, 9)),
        part("t3", "tee", (24, 12)),
        part("ev", "expansion_vessel", (24, 18)),
        part("pu", "pump", (29, 12)),
        part("t4", "tee", (34, 12)),
        part("bv", "bypass_valve", (34, 18, 90)),
        part("t5", "tee", (38, 12)),
        part("z1", "zone_valve", (42, 5)),
        part("hz", "heating_zone", (50, 6)),
        part("z3", "zone_valve", (42, -1)),
        part("h2", "heating_zone", (50, -1)),
        part("t6", "tee", (38, 5)),
        part("z2", "zone_valve", (46, 12)),
        part("t7", "tee", (55, 12)),
        part("av", "air_vent", (55, 9)),
        part("st", "unvented_store", (60, 20), energy_cut_out="z2"),
        part("t8", "tee", (45, 26)),
        part("t9", "tee", (34, 26)),
        part("t10", "tee", (40, 26)),
        part("t11", "tee", (22, 26)),
        part("dr", "drain", (22, 30)),
        part("t12", "tee", (28, 26)),
        part("fl", "filling_link", (28, 31, 270)),
        part("t13", "tee", (28, 36)),
        part("cm", "cold_main", (10, 36)),
        part("iv", "isolating_valve", (16, 36)),
        part("sr", "strainer", (21, 36)),
        part("rv", "pressure_reducing_valve", (32, 36)),
        part("cv", "check_valve", (38, 36)),
        part("t14", "tee", (43, 36)),
        part("v2", "expansion_vessel", (43, 31, 180)),
        part("t15", "tee", (48, 36)),
        part("xr", "expansion_relief_valve", (48, 40, 180)),
        part("t16", "tee", (60, 31)),
        part("d2", "drain", (63, 34)),
        part("tr", "temperature_relief_valve", (67, 15)),
        part("tu", "tundish", (69, 42)),
        part("t17", "tee", (69, 38)),
        part("e2", "discharge_end", (69, 48)),
        part("ks", "outlet", (66, 8)),
        part("t18", "tee", (60, 11)),
        part("bl", "blending_valve", (72, 12)),
        part("bt", "outlet", (79, 8)),
        part("t19", "tee", (52, 36)),
    ]
    pipes = chained(
        """
        hs.flow t1.a
        t1.branch sv.inlet
        sv.outlet e1.inlet
        t1.b t2.a
        t2.branch pg.connection
        t2.b t3.a
        t3.branch ev.connection
        t3.b pu.in
        pu.out t4.a
        t4.branch bv.in
        t4.b t5.a
        t5.branch t6.a
        t6.b z3.in
        t6.branch z1.in
        z1.out hz.flow
        z3.out h2.flow
        t5.b z2.in
        z2.out t7.a
        t7.branch av.connection
        t7.b st.coil_flow
        st.coil_return t8.a
        hz.return t8.branch
        t8.b t10.a
        h2.return t10.branch
        t10.b t9.a
        bv.out t9.branch
        t9.b t12.a
        t12.branch fl.system
        t12.b t11.a
        t11.branch dr.connection
        t11.b hs.return
        cm.outlet iv.a
        iv.b sr.in
        sr.out t13.a
        t13.branch fl.supply
        t13.b rv.in
        rv.out cv.in
        cv.out t14.a
        t14.branch v2.connection
        t14.b t15.a
        t15.branch xr.inlet
        t15.b t19.a
        t19.b t16.a
        t16.branch d2.connection
        t16.b st.cold
        st.hot t18.a
        t18.b ks.hot
        t18.branch bl.hot
        t19.branch bl.cold
        bl.mixed bt.hot
        st.relief tr.inlet
        tr.outlet t17.a
        xr.outlet t17.branch
        t17.b tu.inlet
        tu.outlet e2.inlet
        """
    )
    controls = [
        control("c1", "room_thermostat", "z1"),
        control("c2", "room_thermostat", "z3"),
        control("c3", "store_thermostat", "z2"),
    ]
    return drawing(parts, pipes, controls)


def village_hall() -> Drawing:
    """Open-vented heating from its own cistern, and a vented store fed from another."""
    parts = [
        part("hs", "heat_source", (8, 30)),
        part("t1", "tee", (16, 28)),
        part("t2", "tee", (20, 28)),
        part("ov", "open_vent", (21, 4)),
        part("fc", "feed_cistern", (24, 10), serves="heating"),
        part("m1", "cold_main", (2, 9)),
        part("pu", "pump", (26, 28)),
        part("mv", "three_port_valve", (32, 28)),
        part("ra", "radiator", (42, 18)),
        part("rb", "radiator", (52, 18)),
        part("t3", "tee", (40, 28)),
        part("t4", "tee", (44, 36)),
        part("vs", "vented_store", (66, 30)),
        part("cc", "feed_cistern", (72, 6), serves="hot_water"),
        part("m2", "cold_main", (56, 5)),
        part("sv", "open_vent", (66, 2)),
        part("t5", "tee", (66, 22)),
        part("ba", "outlet", (80, 20)),
        part("t6", "tee", (74, 14)),
        part("t7", "tee", (40, 36)),
        part("ed", "discharge_end", (34, 14)),
    ]
    pipes = chained(
        """
        hs.flow t1.a
        t1.branch ov.connection
        t1.b t2.a
        t2.branch fc.feed
        m1.outlet fc.supply
        t2.b pu.in
        pu.out mv.ab
        mv.a t3.a
        t3.b rb.flow
        t3.branch ra.flow
        ra.return t4.branch
        rb.return t4.a
        mv.b vs.coil_flow
        vs.coil_return t7.a
        t4.b t7.branch
        t7.b hs.return
        m2.outlet cc.supply
        cc.feed t6.a
        t6.b vs.cold
        t6.branch ba.cold
        vs.hot t5.a
        t5.b sv.connection
        t5.branch ba.hot
        fc.warning ed.inlet
        """
    )
    return drawing(parts, pipes)


def flat_over_workshop() -> Drawing:
    """A combination heat source, two radiators, a sink and its safety valve's discharge."""
    parts = [
        part("cs", "combination_heat_source", (8, 8), built_in=["pump", "vessel", "safety_valve"]),
        part("cm", "cold_main", (-2, 18)),
        part("t1", "tee", (6, 18)),
        part("si", "outlet", (20, 14)),
        part("ed", "discharge_end", (0, 14)),
        part("t2", "tee", (18, 2)),
        part("t3", "tee", (30, 10)),
        part("ra", "radiator", (24, -2)),
        part("rb", "radiator", (34, -2)),
    ]
    pipes = chained(
        """
        cs.flow t2.a
        t2.b ra.flow
        t2.branch rb.flow
        ra.return t3.a
        rb.return t3.branch
        t3.b cs.return
        cm.outlet t1.a
        t1.b cs.cold
        t1.branch si.cold
        cs.hot si.hot
        cs.relief ed.inlet
        """
    )
    return drawing(parts, pipes)


def terrace_with_separator() -> Drawing:
    """A heat source with its own pump, a separator, and two pumped circuits behind it."""
    parts = [
        part("hs", "heat_source", (6, 10)),
        part("p0", "pump", (14, 8)),
        part("se", "separator", (22, 10)),
        part("t1", "tee", (28, 8)),
        part("p1", "pump", (34, 8)),
        part("hz", "heating_zone", (46, 9)),
        part("p2", "pump", (34, 2)),
        part("h2", "heating_zone", (46, 1)),
        part("t2", "tee", (28, 12)),
        part("t3", "tee", (12, 12)),
        part("ev", "expansion_vessel", (12, 18)),
        part("hx", "heat_exchanger", (46, 20)),
        part("t4", "tee", (38, 8)),
        part("t5", "tee", (36, 14)),
        part("cm", "cold_main", (60, 28, 180)),
        part("sh", "outlet", (58, 12)),
    ]
    pipes = chained(
        """
        hs.flow p0.in
        p0.out se.source_flow
        se.source_return t3.a
        t3.b hs.return
        t3.branch ev.connection
        se.load_flow t1.a
        t1.b p1.in
        t1.branch p2.in
        p1.out t4.a
        t4.b hz.flow
        t4.branch hx.primary_in
        p2.out h2.flow
        hz.return t5.a
        hx.primary_out t5.branch
        t5.b t2.a
        h2.return t2.branch
        t2.b se.load_return
        cm.outlet hx.secondary_in
        hx.secondary_out sh.hot
        """
    )
    return drawing(parts, pipes)


LAYOUTS = {
    "guest house": guest_house,
    "village hall": village_hall,
    "flat over a workshop": flat_over_workshop,
    "terrace with a separator": terrace_with_separator,
}

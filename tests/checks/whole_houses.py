"""Whole sound houses, one of each usual arrangement: no check has anything to say of them."""

from __future__ import annotations

from collections.abc import Callable

from circuitcheck.drawing.value import Drawing, Joint, Pipe
from tests.checks.house import House


def two_zone_valves(*, inlet_group: bool = False) -> House:
    """Sealed, a zone valve for the rooms and one for the store, an automatic bypass."""
    house = House().source().main().store(inlet_group=inlet_group).bypass()
    house.run("t_by.b t_flow.a", 1.7).run("t_back.b t_rby.a", 0.3)
    house.zone("rooms", "t_flow.branch", "t_back.branch", "zv_rooms")
    return house.coil("t_flow.b", "t_back.a", "zv_store").controlled()


def inlet_group() -> House:
    """The same with all of the store's cold supply in one body."""
    return two_zone_valves(inlet_group=True)


def _from_cisterns(house: House) -> House:
    """A vented store under its cistern, which a mixer's cold comes from too, and a vent over it."""
    house.part("store", "vented_store", 1.0).part("blend", "blending_valve", 3.2).part("sdrain", "drain", 0.3)
    house.part("cis", "feed_cistern", 5.5, content_l=230, serves="hot_water", water_level_m=5.8)
    house.part("cv_store", "isolating_valve", 5.3).part("cv_bath", "isolating_valve", 5.3)
    house.run("t_main.b cis.supply", length_m=6).run("cis.feed t_cis.a:b cv_store.a", 5.4)
    house.run("cv_store.b t_sdrain.a:b store.cold", 0.6, length_m=5).run("t_sdrain.branch sdrain.connection")
    house.run("t_cis.branch cv_bath.a:b blend.cold")
    house.part("hv", "open_vent", 6.2, over="cis", height_above_water_mm=400)
    return house.run("store.hot t_hv.a:b hv.connection", 2.2, length_m=4).taps("t_hv.branch")


def _three_port(house: House) -> House:
    house.part("tp", "three_port_valve", 1.75).bypass().run("t_by.b tp.ab").run("t_back.b t_rby.a", 0.3)
    house.coil("tp.a", "t_back.a").zone("rooms", "tp.b", "t_back.branch")
    return house.controlled(("tp",), "tp")


def three_port() -> House:
    """Sealed heating with a three-port valve, hot water from a vented store."""
    return _three_port(_from_cisterns(House().source().main()))


def open_vented() -> House:
    """Open vent and cold feed on the flow before the pump, two cisterns."""
    house = House(fill_pressure_bar=None).part("hs", "heat_source", 1.0, maximum_flow_temperature_c=82)
    house.part("ov", "open_vent", 6.6, over="fe").part("fe", "feed_cistern", 6.0, water_level_m=6.1)
    house.part("pu", "pump", 1.5).part("av", "air_vent", 1.8)
    house.run("hs.flow t_ov.a:b t_feed.a:b pu.in:out t_out.a").run("t_ov.branch ov.connection")
    house.run("fe.feed t_feed.branch", size_mm=15).run("t_out.branch t_av.a:b av.connection", 1.75)
    house.part("end", "cap", 1.7).run("t_av.branch end.connection").main("fe.supply")
    house.part("filter", "dirt_separator", 0.25).part("drain", "drain", 0.1).part("cap", "cap", 0.25)
    house.run("t_in.b filter.a:b t_drain.a:b hs.return", 0.25).run("t_drain.branch drain.connection")
    return _three_port(_from_cisterns(house.run("t_in.branch cap.connection")))


def built_in() -> House:
    """Pump, vessel, safety valve, gauge, filling link, bypass and air vent inside the heat source."""
    devices = ("pump", "vessel", "safety_valve", "gauge", "filling_link", "bypass", "air_vent")
    house = House(system_content_l=80, fill_pressure_bar=1.4).part(
        "hs", "heat_source", 1.0, built_in=devices, built_in_vessel_l=12, built_in_vessel_precharge_bar=0.9,
        built_in_safety_valve_bar=3, shut_off_head_m=6, maximum_flow_lpm=25,
    )  # fmt: skip
    house.part("wall", "discharge_end", 0.2).run("hs.relief wall.inlet", size_mm=15, bends=2)
    house.part("filter", "dirt_separator", 0.3).part("drain", "drain", 0.1).part("av", "air_vent", 1.9)
    house.run("t_back.b filter.a:b t_drain.a:b hs.return", 0.3).run("t_drain.branch drain.connection")
    house.run("hs.flow t_av.a:b t_flow.a", 1.8).run("t_av.branch av.connection")
    house.main("cap.connection").store().zone("rooms", "t_flow.branch", "t_back.branch", "zv_rooms")
    return house.coil("t_flow.b", "t_back.a", "zv_store").controlled()


def separator() -> House:
    """Two zones and a store, each with its pump, check valve and zone valve behind a separator."""
    house = House(system_content_l=120).source().main().store().part("sep", "separator", 1.5)
    wide = {"size_mm": 28}
    house.run("t_out.b sep.source_flow", **wide).run("sep.source_return t_in.a", **wide)
    house.part("vent_sep", "air_vent", 1.9).run("sep.load_flow t_vent.a:b t_l1.a:b t_l2.a", 1.85, **wide)
    house.run("t_vent.branch vent_sep.connection").run("t_r2.b t_r1.a:b sep.load_return", 0.6, **wide)
    small = {"isolating_valves": False, "shut_off_head_m": 2.5, "maximum_flow_lpm": 22}
    for place, name in (("1", "ground"), ("2", "upper")):
        house.part(f"pz_{name}", "pump", 1.8, **small).part(f"cz_{name}", "check_valve", 1.75)
        house.run(f"t_l{place}.branch pz_{name}.in:out cz_{name}.in")
        house.zone(name, f"cz_{name}.out", f"t_r{place}.branch", f"zv_{name}")
        house.control(f"stat_{name}", "room_thermostat", f"zv_{name}", f"pz_{name}")
    house.part("pz_store", "pump", 1.8, **small).part("cz_store", "check_valve", 1.75)
    house.run("t_l2.b pz_store.in:out cz_store.in").coil("cz_store.out", "t_r2.a", "zv_store")
    house.control("stat_store", "store_thermostat", "zv_store", "pz_store")
    valves = [f"{mark}_{name}" for name in ("ground", "upper", "store") for mark in ("zv", "pz")]
    return house.control("programmer", "programmer", *valves)


def radiators() -> House:
    """Five radiators drawn one by one, upstairs and down; the first has no head, in the thermostat's room."""
    house = House().source().main().store().bypass().run("t_by.b t_flow.a", 1.7).run("t_back.b t_rby.a", 0.3)
    house.coil("t_flow.b", "t_back.a", "zv_store").part("zv_rooms", "zone_valve", 1.6)
    house.part("drain_f", "drain", 0.1).part("drain_r", "drain", 0.1).run("t_flow.branch zv_rooms.in")
    house.part("rad0", "radiator", 0.9, thermostatic=False)
    house.run("zv_rooms.out t_f0.a:b t_df.a", 0.2).run("t_dr.b t_r0.a:b t_back.branch", 0.2)
    house.run("t_df.branch drain_f.connection").run("t_dr.branch drain_r.connection")
    house.run("t_f0.branch rad0.flow", size_mm=15).run("rad0.return t_r0.branch", size_mm=15)
    out, back = "t_df.b", "t_dr.a"
    for number, height, tees in ((1, 0.9, 0.2), (2, 0.9, 0.2), (3, 3.6, 2.9)):
        rad, flow, ret = f"rad{number}", f"t_f{number}", f"t_r{number}"
        house.part(rad, "radiator", height).run(f"{out} {flow}.a", tees).run(f"{ret}.b {back}", tees)
        house.run(f"{flow}.branch {rad}.flow", size_mm=15).run(f"{rad}.return {ret}.branch", size_mm=15)
        out, back = f"{flow}.b", f"{ret}.a"
    house.part("rad4", "radiator", 3.6).run(f"{out} rad4.flow", size_mm=15)
    house.run(f"rad4.return {back}", size_mm=15).controlled()
    return house.control("stat_zv_rooms", "room_thermostat", "zv_rooms", rooms=("rad0",))


def secondary_return() -> House:
    """A pumped secondary return with its check valve."""
    house = two_zone_valves()
    del house.pipes[
        next(id for id, pipe in house.pipes.items() if Joint("capped", "connection") in pipe.ends)
    ]
    del house.parts["capped"]
    house.part("ps", "pump", 1.2, shut_off_head_m=1, maximum_flow_lpm=10).part("cs", "check_valve", 1.15)
    return house.run(
        "t_sink.branch ps.in:out cs.in:out store.secondary_return", size_mm=15, insulated=True, length_m=4
    )


def two_sources() -> House:
    """Two heat sources side by side, each with its pump, check valve and safety valve."""
    house = House(system_content_l=110).source(pump=False, minimum_flow_lpm=5).main().store()
    house.part("hs2", "heat_source", 1.0, output_kw=12, minimum_flow_lpm=4).part("sv2", "safety_valve", 1.4)
    house.part("wall2", "discharge_end", 0.2).part("vent_top", "air_vent", 1.9)
    house.run("hs2.flow t_sv2.a", 1.4).run("t_sv2.branch sv2.inlet")
    house.run("sv2.outlet wall2.inlet", size_mm=15, bends=2)
    for number in ("1", "2"):
        house.part(f"pu{number}", "pump", 1.7, isolating_valves=False).part(
            f"ch{number}", "check_valve", 1.75
        )
    house.run("t_out.b pu1.in:out ch1.in:out t_join.a", 1.8).run(
        "t_sv2.b pu2.in:out ch2.in:out t_join.branch"
    )
    (back,) = [id for id, pipe in house.pipes.items() if Joint("hs", "return") in pipe.ends]
    house.pipes[back] = Pipe(
        back, (Joint("t_vessel", "b"), Joint("t_split", "a")), data=house.pipes[back].data
    )
    house.part("t_split", "tee", 1.0).run("t_split.b hs.return").run("t_split.branch hs2.return")
    house.part("bypass", "bypass_valve", 1.6, set_difference_kpa=32)
    house.run("t_join.b t_vent.a:b t_by.a:b t_flow.a", 1.85).run("t_vent.branch vent_top.connection")
    house.run("t_back.b t_rby.a:b t_in.a", 0.3).run("t_by.branch bypass.in:out t_rby.branch")
    house.zone("rooms", "t_flow.branch", "t_back.branch", "zv_rooms", output_kw=9)
    return house.coil("t_flow.b", "t_back.a", "zv_store").controlled()


def _two_floors(house: House) -> House:
    house.bypass().run("t_by.b t_flow.a", 1.7).run("t_back.b t_rby.a", 0.3)
    house.zone("rooms", "t_flow.branch", "t_back.branch", "zv_rooms")
    return house.zone("above", "t_flow.b", "t_back.a", "zv_above").controlled(("zv_rooms", "zv_above"), "")


def store_heated_directly() -> House:
    """A mains-fed store with an immersion heater and nothing on its coil."""
    return _two_floors(House().source().main().store(cut_out=None))


def no_store() -> House:
    """Heating alone, in two zones."""
    return _two_floors(House().source().main().part("tap", "outlet", 1).run("t_main.b tap.cold"))


def floor_heating() -> House:
    """Rooms, a store, and a floor with its own pump behind a blending valve."""
    house = House().source(pump_data={"shut_off_head_m": 5}).main().store().bypass(42)
    house.run("t_by.b t_flow.a:b t_floor.a", 1.7).run("t_floor_back.b t_back.a:b t_rby.a", 0.3)
    house.zone("rooms", "t_flow.branch", "t_back.branch", "zv_rooms")
    house.coil("t_floor.b", "t_floor_back.a", "zv_store").part("drain_floor", "drain", 0.2)
    house.part("zv_floor", "zone_valve", 1.65).part("mixer", "blending_valve", 1.6, set_temperature_c=45)
    house.part("pf", "pump", 1.6, isolating_valves=False, shut_off_head_m=5).part(
        "vent_floor", "air_vent", 1.75
    )
    house.part("slab", "heating_zone", 1.2, maximum_flow_temperature_c=50, resistance_kpa=15, output_kw=4)
    house.run("t_floor.branch zv_floor.in:out mixer.hot").run(
        "mixer.mixed pf.in:out t_vf.a:b slab.flow", 1.65
    )
    house.run("t_vf.branch vent_floor.connection").run(
        "slab.return t_mix.a:b t_df.a:b t_floor_back.branch", 0.3
    )
    house.run("t_mix.branch mixer.cold").run("t_df.branch drain_floor.connection").controlled()
    house.control("programmer", "programmer", "zv_rooms", "zv_store", "zv_floor", "pf")
    return house.control("stat_floor", "room_thermostat", "zv_floor", "pf")


def bypass_radiator() -> House:
    """Heads everywhere but on one radiator without valves, which is the way round."""
    house = House().source(pump_data={"shut_off_head_m": 6, "maximum_flow_lpm": 60}).main().store()
    house.part("towel", "radiator", 2.4, thermostatic=False, valves=False, output_w=500)
    house.run("t_out.b t_by.a:b t_flow.a", 1.7).run("t_back.b t_rby.a:b t_in.a", 0.3)
    house.run("t_by.branch towel.flow").run("towel.return t_rby.branch")
    house.zone("rooms", "t_flow.branch", "t_back.branch", "zv_rooms", output_kw=4, all_thermostatic=True)
    return house.coil("t_flow.b", "t_back.a", "zv_store").controlled()


HOUSES: dict[str, Callable[[], House]] = {
    make.__name__: make
    for make in (
        two_zone_valves, inlet_group, three_port, open_vented, built_in, separator, radiators, secondary_return,
        two_sources, store_heated_directly, no_store, floor_heating, bypass_radiator,
    )
}  # fmt: skip


def house(name: str) -> Drawing:
    """The drawing of one of them."""
    return HOUSES[name]().drawing()

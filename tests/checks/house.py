"""Builds whole houses from a few words, with every number given, so that no check need stay unanswered."""

from __future__ import annotations

import itertools
from collections.abc import Mapping
from typing import Any

from circuitcheck.drawing.value import Component, Control, Drawing, Joint, Pipe
from circuitcheck.parts.catalogue import component_kinds, control_kinds

USUAL: Mapping[str, Mapping[str, Any]] = {
    "heat_source": {
        "output_kw": 18, "water_content_l": 4, "minimum_flow_lpm": 6, "minimum_content_l": 0,
        "pump_overrun_min": 4, "maximum_pressure_bar": 3, "maximum_flow_temperature_c": 82,
        "high_limit": "hand_reset",
    },
    "pump": {"shut_off_head_m": 4, "maximum_flow_lpm": 40},
    "zone_valve": {"serves": "heating", "kv_m3h": 6},
    "three_port_valve": {"rest": "b", "kv_m3h": 6},
    "dirt_separator": {"isolating_valves": False},
    "expansion_vessel": {"volume_l": 18, "precharge_bar": 0.9, "maximum_pressure_bar": 3},
    "safety_valve": {"capacity_kw": 40},
    "radiator": {"output_w": 1500, "water_content_l": 8},
    "heating_zone": {"output_kw": 5, "water_content_l": 30, "all_thermostatic": False, "resistance_kpa": 8},
    "separator": {"water_content_l": 5},
    "unvented_store": {
        "volume_l": 210, "coil_power_kw": 15, "maximum_pressure_bar": 8, "immersion_kw": 3,
        "immersion_cut_out": True, "coil_maximum_pressure_bar": 10, "diameter_mm": 580,
        "empty_weight_kg": 46, "coil_content_l": 5,
    },
    "vented_store": {
        "volume_l": 140, "immersion_kw": 3, "immersion_cut_out": True, "coil_maximum_pressure_bar": 5,
    },
    "temperature_relief_valve": {"set_pressure_bar": 7},
    "expansion_relief_valve": {"set_pressure_bar": 6},
    "pressure_reducing_valve": {"set_pressure_bar": 3},
    "inlet_group": {"set_pressure_bar": 3, "relief_pressure_bar": 6},
    "discharge_end": {"place": "outside_low_level", "clear_of_people": True},
    "cold_main": {"standing_pressure_bar": 4.2, "running_pressure_bar": 2.8, "flow_lpm": 30},
    "outlet": {"fitting": "sink"},
    "blending_valve": {"set_temperature_c": 44},
    "feed_cistern": {"content_l": 18, "serves": "heating"},
    "open_vent": {"height_above_water_mm": 450},
}  # fmt: skip
DESIGN: Mapping[str, Any] = {
    "flow_temperature_c": 75, "return_temperature_c": 60, "fill_temperature_c": 10, "fill_pressure_bar": 1.3,
    "static_height_m": 3.7, "system_content_l": 96, "floor_capacity_kn_m2": 20, "occupants": 4,
    "heat_called_by": "valve_end_switches",
}  # fmt: skip


class House:
    """A house as it grows: parts by their height, runs of pipe from part to part, controls.

    Ids double as labels. In a run, a part called t_... that is not there yet is a tee.
    """

    def __init__(self, **design: Any) -> None:
        self.design: dict[str, Any] = {**DESIGN, **design}
        self.parts: dict[str, Component] = {}
        self.pipes: dict[str, Pipe] = {}
        self.controls: dict[str, Control] = {}
        self._count = 0

    def drawing(self) -> Drawing:
        """The drawing of it."""
        return Drawing(design=self.design, components=self.parts, pipes=self.pipes, controls=self.controls)

    def part(self, id: str, kind: str, height_m: float, **data: Any) -> House:
        """One part, with the usual data of its kind but for what is told."""
        told = {**USUAL.get(kind, {}), "height_m": height_m, **data}
        self.parts[id] = Component(id, component_kinds()[kind], label=id.replace("_", " "), data=told)
        return self

    def run(self, text: str, tees_m: float = 1.5, **data: Any) -> House:
        """Pipes from part to part: `hs.flow t_a.a:b pu.in`. As long as they rise or fall, 150 mm at least."""
        stops = text.split()
        for stop in stops:
            name = stop.partition(".")[0]
            if name not in self.parts:
                assert name.startswith("t_"), name
                self.part(name, "tee", tees_m)
        for start, finish in itertools.pairwise(stops):
            left, _, ports = start.partition(".")
            met, _, doors = finish.partition(".")
            a, b = Joint(left, ports.rpartition(":")[2]), Joint(met, doors.partition(":")[0])
            rise = round(self.parts[met].data["height_m"] - self.parts[left].data["height_m"], 4)
            self._count += 1
            id = f"p{self._count}"
            usual = {"size_mm": 22, "length_m": max(0.15, abs(rise)), "rise_m": rise, "bends": 0}
            self.pipes[id] = Pipe(id, (a, b), data={**usual, **data})
        return self

    def control(self, id: str, kind: str, *acts_on: str, rooms: tuple[str, ...] = ()) -> House:
        """One control."""
        label = id.replace("_", " ")
        self.controls[id] = Control(id, control_kinds()[kind], label, acts_on=acts_on, in_same_room_as=rooms)
        return self

    def controlled(self, rooms: tuple[str, ...] = ("zv_rooms",), store: str = "zv_store") -> House:
        """A programmer on all valves, a thermostat on each."""
        self.control("programmer", "programmer", *rooms, *filter(None, (store,)))
        for valve in rooms:
            self.control(f"stat_{valve}", "room_thermostat", valve)
        return self.control(f"stat_{store}", "store_thermostat", store) if store else self

    def source(self, *, pump: bool = True, pump_data: Mapping[str, Any] | None = None, **data: Any) -> House:
        """A heat source with all its devices, from hs.flow to t_out (b free), from t_in (a free) back."""
        self.part("hs", "heat_source", 1.0, **data)
        self.part("sv", "safety_valve", 1.4).part("wall", "discharge_end", 0.2)
        self.part("gauge", "pressure_gauge", 1.45).part("av", "air_vent", 1.75)
        self.run("hs.flow t_sv.a:b t_gauge.a", 1.4).run("t_sv.branch sv.inlet")
        self.run("sv.outlet wall.inlet", size_mm=15, bends=2).run("t_gauge.branch gauge.connection")
        if pump:
            self.part("pu", "pump", 1.6, **(pump_data or {})).run("t_gauge.b pu.in:out t_out.a", 1.65)
        else:
            self.run("t_gauge.b t_out.a", 1.65)
        self.run("t_out.branch av.connection")
        self.part("filter", "dirt_separator", 0.25).part("drain", "drain", 0.1)
        self.part("vessel", "expansion_vessel", 0.8).part("link", "filling_link", 0.5)
        self.run("t_in.b filter.a:b t_drain.a", 0.25).run("t_drain.b t_vessel.a:b hs.return", 0.7)
        self.run("t_vessel.branch vessel.connection").run("t_drain.branch drain.connection")
        return self.run("t_in.branch link.system")

    def main(self, onto: str = "link.supply") -> House:
        """A cold main and its stop valve, to t_main (b free); its branch leads onto a part."""
        self.part("main", "cold_main", 0.3).part("stop", "isolating_valve", 0.35)
        self.run("main.outlet stop.a:b t_main.a", 0.4)
        if onto == "cap.connection":
            self.part("cap", "cap", 0.4)
        return self.run(f"t_main.branch {onto}")

    def store(self, cut_out: str | None = "zv_store", inlet_group: bool = False) -> House:
        """A mains-fed store, its cold supply, reliefs, discharge, a sink and a bath; its coil is free."""
        self.part("store", "unvented_store", 1.0, energy_cut_out=cut_out)
        self.part("strainer", "strainer", 0.45).part("blend", "blending_valve", 3.2)
        self.part("sves", "expansion_vessel", 0.9, volume_l=24, precharge_bar=3, maximum_pressure_bar=8)
        self.part("tr", "temperature_relief_valve", 1.4).part("tundish", "tundish", 1.1)
        self.part("gully", "discharge_end", -0.1, place="gully_below_grating").part("sdrain", "drain", 0.3)
        if inlet_group:
            self.part("ig", "inlet_group", 1.3).run("t_main.b strainer.in:out ig.in:out t_sves.a", 0.7)
            self.run("ig.relief t_dis.branch", 1.15, size_mm=15, length_m=0.3)
            self.run("ig.balanced_cold blend.cold", length_m=4).run("t_sves.b t_sdrain.a", 0.7)
        else:
            self.part("reducer", "pressure_reducing_valve", 0.5).part("check", "check_valve", 0.6)
            self.part("er", "expansion_relief_valve", 1.3)
            self.run("t_main.b strainer.in:out reducer.in:out t_bal.a:b check.in:out t_sves.a", 0.7)
            self.run("t_sves.b t_er.a:b t_sdrain.a", 0.7).run("t_er.branch er.inlet", size_mm=15)
            self.run("er.outlet t_dis.branch", 1.15, size_mm=15, length_m=0.2)
            self.run("t_bal.branch blend.cold", length_m=4)
        self.run("t_sdrain.b store.cold").run("t_sves.branch sves.connection")
        self.run("t_sdrain.branch sdrain.connection").run("store.relief tr.inlet", size_mm=15)
        self.run("tr.outlet t_dis.a:b tundish.inlet", size_mm=15, length_m=0.25)
        self.run("tundish.outlet gully.inlet", length_m=2.6, bends=2, straight_drop_m=0.4)
        return self.taps("store.hot")

    def taps(self, hot: str) -> House:
        """A sink, and a bath by a blending valve, which stands there already."""
        self.part("sink", "outlet", 1.1).part("bath", "outlet", 3.4, fitting="bath")
        self.run(f"{hot} t_hot.a:b t_sink.a:b sink.hot", 2, length_m=1, insulated=True)
        self.part("capped", "cap", 2).run("t_sink.branch capped.connection")
        self.run("t_hot.branch blend.hot", length_m=3, insulated=True)
        return self.run("blend.mixed bath.hot", length_m=1)

    def zone(self, name: str, out: str, back: str, valve: str = "", **data: Any) -> House:
        """A zone upstairs with its drain, from a port to a port, behind a zone valve if one is named."""
        self.part(name, "heating_zone", 4.0, **data).part(f"drain_{name}", "drain", 1.65)
        if valve:
            self.part(valve, "zone_valve", 1.75).run(f"{out} {valve}.in")
        start = f"{valve}.out" if valve else out
        self.run(f"{start} t_{name}.a:b {name}.flow", 1.75).run(f"t_{name}.branch drain_{name}.connection")
        return self.run(f"{name}.return {back}")

    def coil(self, out: str, back: str, valve: str = "") -> House:
        """The store's coil with its air vent, behind a zone valve if one is named."""
        self.part("vent_coil", "air_vent", 2.0)
        if valve:
            self.part(valve, "zone_valve", 1.8, serves="hot_water").run(f"{out} {valve}.in")
        start = f"{valve}.out" if valve else out
        self.run(f"{start} t_coil.a:b store.coil_flow", 1.9).run("t_coil.branch vent_coil.connection")
        return self.run(f"store.coil_return {back}")

    def bypass(self, set_kpa: float = 34) -> House:
        """An automatic bypass from t_by to t_rby, which are then between t_out and t_in."""
        self.part("bypass", "bypass_valve", 1.6, set_difference_kpa=set_kpa)
        self.run("t_out.b t_by.a", 1.7).run("t_rby.b t_in.a", 0.3)
        return self.run("t_by.branch bypass.in:out t_rby.branch")

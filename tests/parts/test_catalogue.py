"""The catalogue equals the format's table, written out here by hand: kinds, ports in order, defaults."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.parts.catalogue import component_kinds, control_kinds, kinds, shelf
from circuitcheck.parts.kind import FieldType, Group, Way

HEAT_SOURCE: Mapping[str, Any] = {
    "output_kw": None,
    "water_content_l": None,
    "minimum_flow_lpm": None,
    "minimum_content_l": None,
    "pump_overrun_min": 5,
    "maximum_pressure_bar": 3,
    "maximum_flow_temperature_c": None,
    "heat": "switched",
    "high_limit": None,
    "built_in": (),
    "built_in_vessel_l": None,
    "built_in_vessel_precharge_bar": None,
    "built_in_safety_valve_bar": None,
    "combined_feed_and_vent": False,
    "shut_off_head_m": None,
    "maximum_flow_lpm": None,
}

TABLE: dict[str, tuple[str, Mapping[str, Any]]] = {
    "heat_source": ("flow return relief", HEAT_SOURCE),
    "combination_heat_source": ("flow return cold hot relief", {**HEAT_SOURCE, "hot_flow_lpm": None}),
    "pump": ("in out", {"isolating_valves": True, "shut_off_head_m": None, "maximum_flow_lpm": None}),
    "zone_valve": ("in out", {"rest": "shut", "serves": None, "kv_m3h": None}),
    "three_port_valve": ("ab a b", {"action": "divert", "rest": "stays", "kv_m3h": None}),
    "bypass_valve": ("in out", {"set_difference_kpa": None}),
    "isolating_valve": ("a b", {"secured": False}),
    "balancing_valve": ("a b", {"kv_m3h": None}),
    "check_valve": ("in out", {}),
    "pressure_reducing_valve": ("in out", {"set_pressure_bar": None}),
    "strainer": ("in out", {}),
    "dirt_separator": ("a b", {"isolating_valves": True}),
    "expansion_vessel": (
        "connection",
        {"volume_l": None, "precharge_bar": None, "maximum_pressure_bar": None},
    ),
    "safety_valve": ("inlet outlet", {"set_pressure_bar": 3, "outlet_size_mm": 15, "capacity_kw": None}),
    "pressure_gauge": ("connection", {}),
    "air_vent": ("connection", {}),
    "drain": ("connection", {}),
    "filling_link": ("supply system", {"left_connected": False, "double_check": True}),
    "tee": ("a b branch", {}),
    "cap": ("connection", {}),
    "radiator": (
        "flow return",
        {
            "output_w": None,
            "water_content_l": None,
            "thermostatic": True,
            "valves": True,
            "hand_wheel": False,
        },
    ),
    "heating_zone": (
        "flow return",
        {
            "output_kw": None,
            "water_content_l": None,
            "all_thermostatic": True,
            "resistance_kpa": None,
            "maximum_flow_temperature_c": None,
        },
    ),
    "separator": ("source_flow source_return load_flow load_return", {"water_content_l": None}),
    "heat_exchanger": ("primary_in primary_out secondary_in secondary_out", {}),
    "unvented_store": (
        "coil_flow coil_return cold hot relief secondary_return relief_outlet",
        {
            "volume_l": None,
            "coil_power_kw": None,
            "maximum_pressure_bar": None,
            "internal_expansion": False,
            "thermostat_c": 60,
            "energy_cut_out": None,
            "immersion_kw": None,
            "immersion_cut_out": None,
            "coil_maximum_pressure_bar": None,
            "diameter_mm": None,
            "empty_weight_kg": None,
            "coil_content_l": 2,
            "built_in": (),
        },
    ),
    "vented_store": (
        "coil_flow coil_return cold hot",
        {
            "volume_l": None,
            "thermostat_c": 60,
            "immersion_kw": None,
            "immersion_cut_out": None,
            "coil_maximum_pressure_bar": None,
            "coil_content_l": 2,
        },
    ),
    "temperature_relief_valve": (
        "inlet outlet",
        {"set_pressure_bar": None, "set_temperature_c": 90, "outlet_size_mm": 15},
    ),
    "expansion_relief_valve": ("inlet outlet", {"set_pressure_bar": None, "outlet_size_mm": 15}),
    "inlet_group": (
        "in out balanced_cold relief",
        {"set_pressure_bar": None, "relief_pressure_bar": None, "outlet_size_mm": 15},
    ),
    "tundish": ("inlet outlet", {"in_sight": True}),
    "discharge_end": (
        "inlet",
        {"place": "unknown", "in_sight": True, "clear_of_people": None, "conditions_met": None},
    ),
    "cold_main": (
        "outlet",
        {"standing_pressure_bar": None, "running_pressure_bar": None, "flow_lpm": None},
    ),
    "outlet": ("hot cold", {"fitting": None}),
    "blending_valve": ("hot cold mixed", {"set_temperature_c": None}),
    "feed_cistern": (
        "supply feed vent_over warning",
        {"content_l": None, "water_level_m": None, "serves": None},
    ),
    "open_vent": ("connection", {"over": None, "height_above_water_mm": None}),
}

# Needed where the table names a number but no field: a built-in valve's outlet has a size too.
ADDED = {
    "heat_source": {"outlet_size_mm": 15},
    "combination_heat_source": {"outlet_size_mm": 15},
    "unvented_store": {"outlet_size_mm": 15},
}

CHOICES = {
    ("heat_source", "heat"): ("switched", "uncontrolled"),
    ("heat_source", "high_limit"): ("hand_reset", "self_reset"),
    ("heat_source", "built_in"): (
        "pump", "vessel", "safety_valve", "bypass", "gauge", "filling_link", "air_vent", "check_valve",
    ),
    ("zone_valve", "rest"): ("shut", "open", "stays"),
    ("zone_valve", "serves"): ("heating", "hot_water"),
    ("three_port_valve", "action"): ("divert", "share"),
    ("three_port_valve", "rest"): ("a", "b", "stays"),
    ("unvented_store", "built_in"): ("temperature_relief", "expansion_relief", "check_valve"),
    ("discharge_end", "place"): (
        "outside_low_level", "gully_below_grating", "roof_or_high_level", "soil_stack", "inside", "unknown",
    ),
    ("outlet", "fitting"): ("basin", "bath", "shower", "sink", "wc", "other"),
    ("feed_cistern", "serves"): ("heating", "hot_water"),
}  # fmt: skip


def test_the_kinds() -> None:
    assert set(component_kinds()) == set(TABLE)
    assert set(control_kinds()) == {"room_thermostat", "store_thermostat", "programmer"}
    assert set(kinds()) == set(component_kinds()) | set(control_kinds())


@pytest.mark.parametrize("name", TABLE)
def test_ports_in_order(name: str) -> None:
    assert [port.name for port in component_kinds()[name].ports] == TABLE[name][0].split()


@pytest.mark.parametrize("name", TABLE)
def test_fields_and_defaults(name: str) -> None:
    own = {field.name: field.default for field in component_kinds()[name].own_fields}
    assert own == {**TABLE[name][1], **ADDED.get(name, {})}
    every = [field.name for field in component_kinds()[name].fields]
    assert every[-2:] == ["height_m", "note"] and len(every) == len(set(every))


@pytest.mark.parametrize(("kind", "field"), CHOICES)
def test_choices(kind: str, field: str) -> None:
    assert component_kinds()[kind].field(field).choices == CHOICES[kind, field]


def test_no_other_field_is_a_choice() -> None:
    choices = {
        (kind.name, field.name)
        for kind in component_kinds().values()
        for field in kind.own_fields
        if field.type in {FieldType.CHOICE, FieldType.CHOICES} and kind.name != "combination_heat_source"
    }
    assert choices == set(CHOICES)


# How water can go through each kind, its data left out: ports, then the way for circulation, then for pressure.
PASSAGES: dict[str, set[tuple[str, str, str, str]]] = {
    "heat_source": {("return", "flow", "driven", "open")},
    "combination_heat_source": {("return", "flow", "driven", "open"), ("cold", "hot", "open", "open")},
    "pump": {("in", "out", "driven", "hand")},
    "zone_valve": {("in", "out", "motor", "motor")},
    "three_port_valve": {("ab", "a", "motor", "motor"), ("ab", "b", "motor", "motor")},
    "bypass_valve": {("in", "out", "spring", "spring")},
    "isolating_valve": {("a", "b", "hand", "hand")},
    "balancing_valve": {("a", "b", "hand", "hand")},
    "check_valve": {("in", "out", "one-way", "one-way")},
    "pressure_reducing_valve": {("in", "out", "reducing", "reducing")},
    "strainer": {("in", "out", "open", "open")},
    "dirt_separator": {("a", "b", "hand", "hand")},
    "expansion_vessel": set(),
    "safety_valve": set(),
    "pressure_gauge": set(),
    "air_vent": set(),
    "drain": set(),
    "filling_link": set(),
    "tee": {("a", "b", "open", "open"), ("a", "branch", "open", "open")},
    "cap": set(),
    "radiator": {("flow", "return", "thermostat", "thermostat")},
    "heating_zone": {("flow", "return", "thermostat", "hand")},
    "separator": {
        (one, two, "open", "open")
        for one, two in [
            ("source_flow", "source_return"), ("source_flow", "load_flow"), ("source_flow", "load_return"),
            ("source_return", "load_flow"), ("source_return", "load_return"), ("load_flow", "load_return"),
        ]
    },
    "heat_exchanger": {
        ("primary_in", "primary_out", "open", "open"),
        ("secondary_in", "secondary_out", "open", "open"),
    },
    "unvented_store": {
        ("coil_flow", "coil_return", "open", "open"), ("cold", "hot", "open", "open"),
        ("cold", "relief", "open", "open"), ("cold", "secondary_return", "open", "open"),
    },
    "vented_store": {("coil_flow", "coil_return", "open", "open"), ("cold", "hot", "open", "open")},
    "temperature_relief_valve": set(),
    "expansion_relief_valve": set(),
    "inlet_group": {("in", "balanced_cold", "reducing", "reducing"), ("balanced_cold", "out", "one-way", "one-way")},
    "tundish": {("inlet", "outlet", "gap", "gap")},
    "discharge_end": set(),
    "cold_main": set(),
    "outlet": set(),
    "blending_valve": {("hot", "mixed", "one-way", "one-way"), ("cold", "mixed", "one-way", "one-way")},
    "feed_cistern": set(),
    "open_vent": set(),
}  # fmt: skip


def told(kind: str, data: Mapping[str, Any]) -> set[tuple[str, str, str, str]]:
    """The ways through a kind in few words."""
    found = set()
    for passage in component_kinds()[kind].passages(data):
        if passage.gap:
            words = ("gap", "gap")
        else:
            words = ("driven" if passage.driven else passage.way.value, passage.pressure_way.value)
        found.add((passage.a, passage.b, *words))
    return found


@pytest.mark.parametrize("name", TABLE)
def test_passages_by_default(name: str) -> None:
    assert told(name, {}) == PASSAGES[name]


@pytest.mark.parametrize(
    ("kind", "data", "ways"),
    [
        ("pump", {"isolating_valves": False}, {("in", "out", "driven", "open")}),
        ("dirt_separator", {"isolating_valves": False}, {("a", "b", "open", "open")}),
        ("radiator", {"thermostatic": False}, {("flow", "return", "hand", "hand")}),
        ("radiator", {"thermostatic": False, "valves": False}, {("flow", "return", "open", "open")}),
        ("radiator", {"thermostatic": True, "valves": False}, {("flow", "return", "thermostat", "thermostat")}),
        ("heating_zone", {"all_thermostatic": False}, {("flow", "return", "open", "hand")}),
        ("filling_link", {"left_connected": True}, set()),
        (
            "heat_source",
            {"built_in": ["check_valve", "bypass"]},
            {("return", "~inside", "one-way", "one-way"), ("~inside", "flow", "driven", "open"), ("flow", "~inside", "spring", "spring")},
        ),
        (
            "unvented_store",
            {"built_in": ["check_valve"]},
            {
                ("coil_flow", "coil_return", "open", "open"),
                ("cold", "~inside", "one-way", "one-way"),
                *(("~inside", port, "open", "open") for port in ("hot", "relief", "secondary_return")),
            },
        ),
    ],
)  # fmt: skip
def test_passages_by_their_data(
    kind: str, data: dict[str, Any], ways: set[tuple[str, str, str, str]]
) -> None:
    assert told(kind, data) == ways


def test_an_emitter_a_coil_and_an_exchanger_give_heat_and_nothing_else_does() -> None:
    giving = {
        (kind.name, passage.a)
        for kind in component_kinds().values()
        for passage in kind.passages({})
        if passage.gives_heat
    }
    assert giving == {
        ("radiator", "flow"), ("heating_zone", "flow"), ("heat_exchanger", "primary_in"),
        ("heat_exchanger", "secondary_in"), ("unvented_store", "coil_flow"), ("vented_store", "coil_flow"),
    }  # fmt: skip


@pytest.mark.parametrize("name", kinds())
def test_a_kind_is_whole(name: str) -> None:
    kind = kinds()[name]
    assert kind.title and kind.summary.endswith(".") and kind.group in Group
    ports = {port.name for port in kind.ports}
    assert len(ports) == len(kind.ports)
    assert kind.outlets <= ports
    fields = {field.name for field in kind.fields}
    assert set(kind.rests_on) <= fields and set(kind.figure) <= fields
    for passage in kind.passages({}):
        assert {passage.a, passage.b} <= ports and isinstance(passage.way, Way)
    for device in kind.devices({}):
        assert device.port in ports and (not device.other or device.other in ports)


@pytest.mark.parametrize("name", component_kinds())
def test_ports_stand_on_the_footprint_on_whole_squares(name: str) -> None:
    kind = component_kinds()[name]
    width, height = kind.size
    for port in kind.ports:
        x, y = port.at
        assert abs(x) <= width / 2 and abs(y) <= height / 2
        if port.faces is not None:
            assert sum(map(abs, port.faces)) == 1
            # It leaves outwards: one step on lies outside the footprint.
            assert abs(x + port.faces[0]) > width / 2 or abs(y + port.faces[1]) > height / 2
    places = [port.at for port in kind.ports]
    assert name == "tee" or len(set(places)) == len(places)


def test_the_shelf_holds_every_kind_once_under_its_group() -> None:
    shown = [kind.name for _, members in shelf() for kind in members]
    assert sorted(shown) == sorted(kinds())
    assert [group for group, _ in shelf()] == list(Group)
    for group, members in shelf():
        assert members and all(kind.group is group for kind in members)
        assert [kind.title for kind in members] == sorted(kind.title for kind in members)


def test_what_is_unknown_is_refused() -> None:
    with pytest.raises(KeyError):
        component_kinds()["tee"].port("c")
    with pytest.raises(KeyError):
        component_kinds()["tee"].field("size_mm")

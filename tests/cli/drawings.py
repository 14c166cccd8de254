"""Drawing files for the tests of the command line, written as the format says."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

Told = dict[str, Any]


def write(path: Path, told: Told) -> Path:
    """Write a drawing file."""
    path.write_text(json.dumps(told), encoding="utf-8")
    return path


def pipe(id: str, start: str, finish: str, **data: Any) -> Told:
    """A pipe between two ports, `part.port`."""
    return {"id": id, "ends": [start.split("."), finish.split(".")], "data": data}


def part(id: str, kind: str, **data: Any) -> Told:
    """A part of a kind."""
    return {"id": id, "kind": kind, "data": data}


COPPER = {"material": "copper", "size_mm": 15, "length_m": 0.1, "rise_m": 0, "bends": 0}


def tube(id: str, start: str, finish: str, **data: Any) -> Told:
    """A short level copper pipe between two ports."""
    return pipe(id, start, finish, **{**COPPER, **data})


def sound() -> Told:
    """A village hall's heating with nothing to find."""
    level = {"height_m": 0}
    return {
        "wetcircuit": 1,
        "title": "Village hall",
        "design": {
            "flow_temperature_c": 70, "return_temperature_c": 50, "fill_temperature_c": 10,
            "fill_pressure_bar": 1.2, "static_height_m": 1, "system_content_l": 30,
        },
        "components": [
            part("hs1", "heat_source", output_kw=18, minimum_flow_lpm=0, maximum_flow_temperature_c=80,
                 high_limit="hand_reset", water_content_l=3, minimum_content_l=0, **level),
            *(part(f"t{number}", "tee", **level) for number in range(1, 8)),
            part("sv1", "safety_valve", capacity_kw=50, **level),
            part("de1", "discharge_end", place="outside_low_level", clear_of_people=True, height_m=-0.1),
            part("ev1", "expansion_vessel", volume_l=18, precharge_bar=0.8, maximum_pressure_bar=3, **level),
            part("pu1", "pump", shut_off_head_m=2, maximum_flow_lpm=4, **level),
            part("bv1", "bypass_valve", set_difference_kpa=19, **level),
            part("zv1", "zone_valve", kv_m3h=3, **level),
            part("r1", "radiator", output_w=1500, water_content_l=8, height_m=0.5),
            part("g1", "pressure_gauge", **level), part("d1", "drain", **level),
            part("fl1", "filling_link", **level), part("m1", "cold_main", standing_pressure_bar=3, **level),
            part("ds1", "dirt_separator", isolating_valves=False, **level),
        ],
        "pipes": [
            tube("p1", "hs1.flow", "t1.a"), tube("p2", "t1.branch", "sv1.inlet"),
            tube("p3", "sv1.outlet", "de1.inlet", length_m=0.5, rise_m=-0.1),
            tube("p4", "t1.b", "pu1.in"), tube("p5", "pu1.out", "t2.a"), tube("p6", "t2.branch", "bv1.in"),
            tube("p7", "t2.b", "zv1.in"), tube("p8", "zv1.out", "r1.flow", length_m=0.6, rise_m=0.5),
            tube("p9", "r1.return", "t3.a", length_m=0.6, rise_m=-0.5),
            tube("p10", "bv1.out", "t3.branch"), tube("p11", "t3.b", "t4.a"),
            tube("p12", "t4.branch", "ev1.connection"), tube("p13", "t4.b", "t5.a"),
            tube("p20", "t5.branch", "g1.connection"), tube("p21", "t5.b", "t6.a"),
            tube("p22", "t6.branch", "d1.connection"), tube("p23", "t6.b", "t7.a"),
            tube("p24", "t7.branch", "fl1.system"), tube("p25", "fl1.supply", "m1.outlet"),
            tube("p26", "t7.b", "ds1.a"), tube("p27", "ds1.b", "hs1.return"),
        ],
        "controls": [{"id": "rt1", "kind": "room_thermostat", "acts_on": ["zv1"]}],
    }  # fmt: skip


def faulty() -> Told:
    """The hall without its bypass: a fault, no danger."""
    told = sound()
    told["components"] = [each for each in told["components"] if each["id"] != "bv1"]
    told["components"] += [part("k1", "cap", height_m=0), part("k2", "cap", height_m=0)]
    for each in told["pipes"]:
        each["ends"] = [
            {("bv1", "in"): ["k1", "connection"], ("bv1", "out"): ["k2", "connection"]}.get(tuple(end), end)
            for end in each["ends"]
        ]
    return told


def _with_valve(secured: bool) -> Told:
    told = sound()
    told["components"].append(part("iv1", "isolating_valve", secured=secured, height_m=0))
    told["pipes"] = [each for each in told["pipes"] if each["id"] != "p12"]
    told["pipes"] += [tube("p12", "t4.branch", "iv1.a"), tube("p14", "iv1.b", "ev1.connection")]
    return told


def dangerous() -> Told:
    """The hall with a valve in its vessel's pipe."""
    return _with_valve(secured=False)


def advised() -> Told:
    """The hall with a secured valve in its vessel's pipe."""
    return _with_valve(secured=True)


def unanswered() -> Told:
    """The hall with a discharge pipe of unknown size."""
    told = sound()
    for each in told["pipes"]:
        if each["id"] == "p3":
            del each["data"]["size_mm"]
    return told


def accepting(told: Told, check: str, *on: str, until: str | None = None) -> Told:
    """The same with a finding accepted."""
    record = {
        "check": check,
        "on": list(on),
        "reason": "Agreed.",
        "author": "A supervisor",
        "date": "2030-01-01",
    }
    return {**told, "acceptances": [{**record, "until": until}]}

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


def sound() -> Told:
    """A village hall's heating with nothing to find."""
    return {
        "wetcircuit": 1,
        "title": "Village hall",
        "components": [
            part("hs1", "heat_source", output_kw=18),
            part("t1", "tee"), part("t2", "tee"), part("t3", "tee"), part("t4", "tee"),
            part("sv1", "safety_valve"), part("de1", "discharge_end", place="outside_low_level"),
            part("ev1", "expansion_vessel", volume_l=18),
            part("pu1", "pump"), part("bv1", "bypass_valve"), part("zv1", "zone_valve"), part("r1", "radiator"),
        ],
        "pipes": [
            pipe("p1", "hs1.flow", "t1.a"), pipe("p2", "t1.branch", "sv1.inlet"),
            pipe("p3", "sv1.outlet", "de1.inlet", size_mm=15),
            pipe("p4", "t1.b", "pu1.in"), pipe("p5", "pu1.out", "t2.a"), pipe("p6", "t2.branch", "bv1.in"),
            pipe("p7", "t2.b", "zv1.in"), pipe("p8", "zv1.out", "r1.flow"), pipe("p9", "r1.return", "t3.a"),
            pipe("p10", "bv1.out", "t3.branch"), pipe("p11", "t3.b", "t4.a"),
            pipe("p12", "t4.branch", "ev1.connection"), pipe("p13", "t4.b", "hs1.return"),
        ],
    }  # fmt: skip


def faulty() -> Told:
    """The hall without its bypass: a fault, no danger."""
    told = sound()
    told["components"] = [each for each in told["components"] if each["id"] != "bv1"]
    told["components"] += [part("k1", "cap"), part("k2", "cap")]
    for each in told["pipes"]:
        each["ends"] = [
            {("bv1", "in"): ["k1", "connection"], ("bv1", "out"): ["k2", "connection"]}.get(tuple(end), end)
            for end in each["ends"]
        ]
    return told


def _with_valve(secured: bool) -> Told:
    told = sound()
    told["components"].append(part("iv1", "isolating_valve", secured=secured))
    told["pipes"] = [each for each in told["pipes"] if each["id"] != "p12"]
    told["pipes"] += [pipe("p12", "t4.branch", "iv1.a"), pipe("p14", "iv1.b", "ev1.connection")]
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
            each["data"] = {}
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

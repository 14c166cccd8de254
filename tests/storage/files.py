"""A small sound file as JSON data, for tests that change one thing in it."""

from __future__ import annotations

import json
from typing import Any

from circuitcheck.storage.faults import DrawingError, Fault
from circuitcheck.storage.reading import parse

# What may be put where a value stands.
File = dict[str, Any]


def cottage() -> File:
    """The content of a sound file in which every list has something; new each time."""
    return {
        "wetcircuit": 1,
        "title": "Cottage",
        "sheet": {"metres_per_square": 0.25},
        "design": {"flow_temperature_c": 75, "system_content_l": None, "rule_book": "england"},
        "components": [
            {
                "id": "hs1",
                "kind": "heat_source",
                "label": "Heat source",
                "at": [4, 10],
                "turn": 0,
                "mirrored": False,
                "data": {"output_kw": 18, "built_in": ["pump", "gauge"]},
            },
            {"id": "t1", "kind": "tee", "at": [9, 8]},
            {"id": "us1", "kind": "unvented_store", "data": {"energy_cut_out": "zv1"}},
            {"id": "zv1", "kind": "zone_valve", "data": {"rest": None, "note": "behind the panel"}},
        ],
        "pipes": [
            {
                "id": "p1",
                "ends": [["hs1", "flow"], ["t1", "a"]],
                "via": [[8, 6]],
                "data": {"size_mm": 22, "material": "copper", "rise_m": -0.5},
            },
            {"id": "p2", "ends": [["t1", "b"], [20, 8]]},
        ],
        "controls": [
            {"id": "rt1", "kind": "room_thermostat", "acts_on": ["zv1"], "in_same_room_as": [], "set_c": 20}
        ],
        "notes": [
            {
                "id": "n1",
                "on": ["t1", "gone"],
                "author": "The fitter",
                "date": "2026-03-01",
                "text": "Is this tee right?",
                "state": "open",
                "replies": [{"author": "The office", "date": "2026-03-02", "text": "It is."}],
            }
        ],
        "acceptances": [
            {"check": "no-such-check", "on": ["t1"], "reason": "Seen", "author": "A", "until": "2030-01-31"}
        ],
        "reviews": [{"author": "A", "decision": "agreed", "meaning": "00ff", "previous": ""}],
    }


def encoded(file: Any) -> bytes:
    """The bytes of a file with this content."""
    return json.dumps(file).encode()


def faults(data: bytes) -> tuple[Fault, ...]:
    """What is wrong with a file; empty for a sound one."""
    try:
        parse(data, "cottage.wetcircuit")
    except DrawingError as error:
        return error.faults or (Fault("", "", "", "", "an error without a fault"),)
    return ()

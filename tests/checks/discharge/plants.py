"""Discharges that the tests start from: a heating safety valve's, and two stores' into one pipe."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import way
from tests.made import Part, made

Data = Mapping[str, Any]
EUROPEAN = {"rule_book": "european_standards"}


def heating(
    *stops: str,
    pipe_data: Mapping[str, Data] | None = None,
    design: Data | None = None,
    **parts: Part,
) -> Drawing:
    """A heat source's safety valve, its outlet led by these stops to the end `de`; its pipes are p2, p3, ..."""
    return made(
        {"hs": "heat_source", "sv": "safety_valve", "de": "discharge_end", **parts},
        way("hs.flow sv.inlet", " ".join(("sv.outlet", *stops, "de.inlet"))),
        pipe_data=pipe_data,
        design=design,
    )


def two_stores(
    common: Data,
    one: Data | None = None,
    other: Data | None = None,
    *,
    volumes: tuple[float | None, float | None] = (200, 200),
    outlets: tuple[float | None, float | None] = (15, 15),
    design: Data | None = None,
) -> Drawing:
    """Two stores on one main, each with its relief valve and tundish; their pipes `d1` and `d2` meet in a
    tee (d1 straight through, d2 by its branch), and `dc` leads on to the end `de`."""
    stored = [("unvented_store", {"volume_l": volume}) for volume in volumes]
    valves = [("temperature_relief_valve", {"outlet_size_mm": outlet}) for outlet in outlets]
    return made(
        {"cm": "cold_main", "tc": "tee", "s1": stored[0], "s2": stored[1], "r1": valves[0], "r2": valves[1],
         "u1": "tundish", "u2": "tundish", "td": "tee", "de": "discharge_end"},
        way("cm.outlet tc.a:b s1.cold", "tc.branch s2.cold", "s1.relief r1.inlet", "s2.relief r2.inlet",
            "r1.outlet u1.inlet", "r2.outlet u2.inlet")
        + "\nd1: u1.outlet - td.a\nd2: u2.outlet - td.branch\ndc: td.b - de.inlet",
        pipe_data={"d1": one or PIECE, "d2": other or PIECE, "dc": common},
        design=design,
    )  # fmt: skip


PIECE: Data = {"size_mm": 22, "length_m": 1, "bends": 0}

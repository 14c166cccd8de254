"""A pumped plant with all its numbers: rooms and a store behind zone valves, and a bypass before them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import way
from tests.made import Part, made

DESIGN = {"flow_temperature_c": 75, "return_temperature_c": 60}
ZONE_KW = 9 / ((67.5 - 20) / 50) ** 1.3
"""What is stated of a zone, at 50 K, so that it gives 9 kW at the design's temperatures."""
PIPE = {"size_mm": 22, "length_m": 1, "bends": 0}
RING = (
    "hs.flow pu.in:out t1.a:b t3.a:b zv.in:out zone.flow:return t4.a:b t2.a:b hs.return",
    "t1.branch bv.in:out t2.branch",
    "t3.branch zs.in:out us.coil_flow:coil_return t4.branch",
)
Numbers = Mapping[str, Any]


def driven(
    *ways: str,
    design: Numbers | None = None,
    pipe: Numbers | None = None,
    pipes: Mapping[str, Numbers] | None = None,
    parts: Mapping[str, Part] | None = None,
    controls: Mapping[str, tuple[str, tuple[str, ...]]] | None = None,
    **changes: Numbers,
) -> Drawing:
    """The plant, or another by its `ways` and `parts`; `changes` alters the data of a part, `pipe` of all
    pipes, `pipes` of one."""
    usual: dict[str, tuple[str, dict[str, Any]]] = {
        "hs": ("heat_source", {"output_kw": 18, "minimum_flow_lpm": 5}),
        "pu": ("pump", {"shut_off_head_m": 5, "maximum_flow_lpm": 40}),
        "zv": ("zone_valve", {"serves": "heating", "kv_m3h": 5}),
        "zs": ("zone_valve", {"serves": "hot_water", "kv_m3h": 5}),
        "zone": ("heating_zone", {"output_kw": ZONE_KW, "resistance_kpa": 8}),
        "us": ("unvented_store", {"coil_power_kw": 12}),
        "bv": ("bypass_valve", {"set_difference_kpa": 38}),
    }
    text = way(*(ways or RING))
    found: dict[str, Part] = {
        id: (kind, {**data, **changes.get(id, {})}) for id, (kind, data) in usual.items() if f"{id}." in text
    }
    found |= dict.fromkeys((name for name in ("t1", "t2", "t3", "t4") if f"{name}." in text), "tee")
    found |= parts or {}
    lines = text.splitlines()
    data = {f"p{number}": {**PIPE, **(pipe or {})} for number in range(1, len(lines) + 1)}
    data |= {id: {**data[id], **numbers} for id, numbers in (pipes or {}).items()}
    return made(found, text, design={**DESIGN, **(design or {})}, pipe_data=data, controls=controls)

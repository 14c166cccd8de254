"""Sealed houses with every number that the checks of vessels and safety valves ask for."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from circuitcheck.drawing.value import Drawing
from tests.checks.houses import sealed
from tests.made import Part

DESIGN: dict[str, Any] = {
    "flow_temperature_c": 80,
    "fill_temperature_c": 10,
    "fill_pressure_bar": 1.0,
    "static_height_m": 5,
    "system_content_l": 100,
}
SOURCE: dict[str, Any] = {"output_kw": 18, "water_content_l": 3, "height_m": 0}
VESSEL: dict[str, Any] = {"volume_l": 12, "precharge_bar": 0.8, "maximum_pressure_bar": 3, "height_m": 0}
VALVE: dict[str, Any] = {"set_pressure_bar": 3, "capacity_kw": 30, "height_m": 0}


def source(**data: Any) -> Part:
    """A heat source of 18 kW."""
    return ("heat_source", {**SOURCE, **data})


def vessel(**data: Any) -> Part:
    """A vessel of 12 litres charged to 0.8 bar."""
    return ("expansion_vessel", {**VESSEL, **data})


def valve(**data: Any) -> Part:
    """A safety valve of 3 bar and 30 kW."""
    return ("safety_valve", {**VALVE, **data})


def house(
    *ways: str,
    design: Mapping[str, Any] | None = None,
    pipe_data: Mapping[str, Mapping[str, Any]] | None = None,
    vessel_by: str = "t2.branch ev.connection",
    safety_by: str = "t1.branch sv.inlet",
    ring: str = "hs.flow t1.a:b rad.flow:return t2.a:b hs.return",
    **parts: Part,
) -> Drawing:
    """100 litres heated from 10 to 80 °C, 5 m high, filled to 1 bar: a sound house unless told otherwise."""
    usual: dict[str, Part] = {"hs": source(), "rad": ("radiator", {"water_content_l": 10})}
    usual |= {"ev": vessel()} if "ev." in " ".join((vessel_by, *ways)) else {}
    usual |= {"sv": valve()} if "sv." in " ".join((safety_by, *ways)) else {}
    drawing = sealed(*ways, vessel=vessel_by, safety=safety_by, ring=ring, **{**usual, **parts})
    pipes = {
        id: replace(pipe, data={"size_mm": 22, "length_m": 0.3, **(pipe_data or {}).get(id, {})})
        for id, pipe in drawing.pipes.items()
    }
    return replace(drawing, design={**DESIGN, **(design or {})}, pipes=pipes)

"""Two plants with controls that the tests of zones, valves and interlock start from."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from circuitcheck.drawing.value import Drawing
from tests.checks.houses import pumped
from tests.made import Part

Controls = dict[str, tuple[str, tuple[str, ...]]]
ROOM, STORE, PROGRAMMER = "room_thermostat", "store_thermostat", "programmer"
USUAL: Controls = {"rt": (ROOM, ("z1",)), "st": (STORE, ("z2",)), "pr": (PROGRAMMER, ("z1", "z2"))}
PARTS: dict[str, Part] = {
    "z1": "zone_valve",
    "z2": "zone_valve",
    "hz": "heating_zone",
    "us": "unvented_store",
}


def two_valves(
    *ways: str,
    controls: Controls | None = None,
    design: Mapping[str, Any] | None = None,
    **parts: Part,
) -> Drawing:
    """A heating zone and a store, each with its zone valve and its thermostat; a rail may hang on t3."""
    return pumped(
        "hs.flow pu.in:out t3.a:b t1.a:b z1.in:out hz.flow:return t2.a:b t4.a:b hs.return",
        "t1.branch z2.in:out us.coil_flow:coil_return t2.branch",
        *(ways or ("t3.branch rail.flow:return t4.branch",)),
        controls=USUAL if controls is None else controls,
        design=design,
        **{**PARTS, "rail": ("radiator", {"thermostatic": False}), **parts},
    )


def two_pumps(controls: Controls | None = None, **parts: Part) -> Drawing:
    """A heating zone and a store, each with its pump."""
    usual: Controls = {"rt": (ROOM, ("pu",)), "st": (STORE, ("p2",))}
    return pumped(
        "hs.flow t1.a:b pu.in:out c1.in:out hz.flow:return t2.a:b hs.return",
        "t1.branch p2.in:out c2.in:out us.coil_flow:coil_return t2.branch",
        controls=usual if controls is None else controls,
        **{
            "p2": "pump", "c1": "check_valve", "c2": "check_valve", "hz": "heating_zone", "us": "unvented_store",
            **parts,
        },  # type: ignore[arg-type]  # no part is called as a parameter is
    )  # fmt: skip


def three_port(controls: Controls | None = None, **parts: Part) -> Drawing:
    """A heating zone and a store behind a three-port valve."""
    usual: Controls = {"rt": (ROOM, ("tp",)), "st": (STORE, ("tp",))}
    return pumped(
        "hs.flow pu.in:out tp.ab:a hz.flow:return t1.a:b hs.return",
        "tp.b us.coil_flow:coil_return t1.branch",
        controls=usual if controls is None else controls,
        **{"tp": "three_port_valve", "hz": "heating_zone", "us": "unvented_store", **parts},  # type: ignore[arg-type]  # no part is called as a parameter is
    )


def behind_exchanger(controls: Controls | None = None) -> Drawing:
    """A heating zone behind an exchanger; its pump is called p2."""
    return pumped(
        "hs.flow pu.in:out z1.in:out hx.primary_in:primary_out hs.return",
        "hx.secondary_out p2.in:out hz.flow:return hx.secondary_in",
        controls={"rt": (ROOM, ("z1",))} if controls is None else controls,
        hx="heat_exchanger", p2="pump", z1="zone_valve", hz="heating_zone",
    )  # fmt: skip


def radiators(
    controls: Controls | None = None, design: Mapping[str, Any] | None = None, **parts: Part
) -> Drawing:
    """Two radiators with thermostatic heads and one without, on one pump."""
    return pumped(
        "hs.flow pu.in:out t1.a:b t3.a:b r1.flow:return t4.a:b t2.a:b hs.return",
        "t1.branch r2.flow:return t2.branch",
        "t3.branch r3.flow:return t4.branch",
        controls=controls,
        design=design,
        **{"r1": "radiator", "r2": "radiator", "r3": ("radiator", {"thermostatic": False}), **parts},
    )

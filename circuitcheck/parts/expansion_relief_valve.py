"""Expansion relief valve: lets a store out when its pressure climbs too high."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Device,
    Group,
    Kind,
    Port,
    Role,
    devices,
    number,
)

KIND = Kind(
    name="expansion_relief_valve",
    title="Expansion relief valve",
    group=Group.SAFETY,
    size=(2, 2),
    ports=(Port("inlet", (0, 1), (0, 1)), Port("outlet", (1, 0), (1, 0))),
    own_fields=(
        number("set_pressure_bar", "Set pressure", "bar", above=0),
        number("outlet_size_mm", "Outlet", "mm", default=15, above=0),
    ),
    devices=devices(
        Device(Role.RELIEVES_STORE, "inlet", "outlet"),
        Device(Role.RELIEVES_BY_PRESSURE, "inlet", "outlet"),
    ),
    outlets=frozenset({"outlet"}),
    figure=("set_pressure_bar",),
    summary="Lifts on the cold side of a store when its vessel can take no more.",
)

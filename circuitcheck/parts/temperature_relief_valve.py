"""Temperature relief valve: lets a store out before its water can boil."""

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
    name="temperature_relief_valve",
    title="Temperature relief valve",
    group=Group.SAFETY,
    size=(2, 2),
    ports=(Port("inlet", (0, 1), (0, 1)), Port("outlet", (1, 0), (1, 0))),
    own_fields=(
        number("set_pressure_bar", "Set pressure", "bar", above=0),
        number("set_temperature_c", "Set temperature", "°C", default=90, least=0, most=300),
        number("outlet_size_mm", "Outlet", "mm", default=15, above=0),
    ),
    devices=devices(
        Device(Role.RELIEVES_STORE, "inlet", "outlet"),
        Device(Role.RELIEVES_BY_TEMPERATURE, "inlet", "outlet"),
    ),
    outlets=frozenset({"outlet"}),
    figure=("set_pressure_bar", "set_temperature_c"),
    summary="Lifts when a store's water grows too hot.",
)

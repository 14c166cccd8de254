"""Safety valve: lets heating water out before the pressure harms anything."""

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
    name="safety_valve",
    title="Safety valve",
    group=Group.SAFETY,
    size=(2, 2),
    ports=(Port("inlet", (0, 1), (0, 1)), Port("outlet", (1, 0), (1, 0))),
    own_fields=(
        number("set_pressure_bar", "Set pressure", "bar", default=3, above=0),
        number("outlet_size_mm", "Outlet", "mm", default=15, above=0),
        number("capacity_kw", "Capacity", "kW", above=0),
    ),
    devices=devices(Device(Role.RELIEVES_HEATING, "inlet", "outlet")),
    outlets=frozenset({"outlet"}),
    figure=("set_pressure_bar",),
    summary="Lifts at its set pressure and lets heating water out.",
)

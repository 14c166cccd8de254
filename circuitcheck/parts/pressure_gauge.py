"""Pressure gauge: shows the pressure where it stands."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Port, Role, devices

KIND = Kind(
    name="pressure_gauge",
    title="Pressure gauge",
    group=Group.FILLING,
    size=(2, 2),
    ports=(Port("connection", (0, 1), (0, 1)),),
    devices=devices(Device(Role.SHOWS_PRESSURE, "connection")),
    summary="Shows the pressure of the water it stands on.",
)

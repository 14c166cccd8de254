"""Drain: empties the pipework it stands on."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Port, Role, devices

KIND = Kind(
    name="drain",
    title="Drain",
    group=Group.FILLING,
    size=(2, 2),
    ports=(Port("connection", (0, -1), (0, -1)),),
    devices=devices(Device(Role.DRAINS, "connection")),
    summary="Empties the pipework above it.",
)

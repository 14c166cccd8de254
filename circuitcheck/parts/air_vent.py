"""Air vent: lets air out where it gathers."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Port, Role, devices

KIND = Kind(
    name="air_vent",
    title="Air vent",
    group=Group.FILLING,
    size=(2, 2),
    ports=(Port("connection", (0, 1), (0, 1)),),
    devices=devices(Device(Role.LETS_AIR_OUT, "connection")),
    summary="Lets air out at a high point.",
)

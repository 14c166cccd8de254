"""Filling link: fills heating water from the main, and is taken off afterwards."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Port, Role, devices, switch

KIND = Kind(
    name="filling_link",
    title="Filling link",
    group=Group.FILLING,
    size=(4, 2),
    ports=(Port("supply", (-2, 0), (-1, 0)), Port("system", (2, 0), (1, 0))),
    own_fields=(
        switch("left_connected", "Left connected", default=False),
        switch("double_check", "Double check valve", default=True),
    ),
    devices=devices(Device(Role.FILLS, "system", "supply")),
    summary="Joins main and heating for filling only; taken off afterwards.",
)

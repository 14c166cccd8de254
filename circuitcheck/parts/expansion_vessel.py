"""Expansion vessel: a cushion of gas that takes up the swelling water."""

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
    name="expansion_vessel",
    title="Expansion vessel",
    group=Group.SAFETY,
    size=(3, 4),
    ports=(Port("connection", (0, -2), (0, -1)),),
    own_fields=(
        number("volume_l", "Volume", "l", above=0),
        number("precharge_bar", "Precharge", "bar", least=0),
        number("maximum_pressure_bar", "Highest pressure", "bar", above=0),
    ),
    devices=devices(Device(Role.HOLDS_EXPANSION, "connection")),
    figure=("volume_l", "precharge_bar"),
    summary="Takes up the swell of heated water against a cushion of gas.",
)

"""Strainer: catches grit; open, though it can block."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Passage, Port, Role, devices, passages

KIND = Kind(
    name="strainer",
    title="Strainer",
    group=Group.SHUTTING,
    size=(2, 2),
    ports=(Port("in", (-1, 0), (-1, 0)), Port("out", (1, 0), (1, 0))),
    passages=passages(Passage("in", "out")),
    devices=devices(Device(Role.CAN_BLOCK, "in", "out")),
    summary="Catches grit before it reaches the valves behind it.",
)

"""Check valve: lets water through one way only."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Passage, Port, Role, Way, devices, passages

KIND = Kind(
    name="check_valve",
    title="Check valve",
    group=Group.SHUTTING,
    size=(2, 2),
    ports=(Port("in", (-1, 0), (-1, 0)), Port("out", (1, 0), (1, 0))),
    passages=passages(Passage("in", "out", way=Way.ONE_WAY)),
    devices=devices(Device(Role.STOPS_BACKFLOW, "in", "out")),
    summary="Lets water through in the direction of its triangle only.",
)

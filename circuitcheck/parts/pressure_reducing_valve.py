"""Pressure reducing valve: holds the pressure behind it down to its setting."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Passage, Port, Role, Way, devices, number, passages

KIND = Kind(
    name="pressure_reducing_valve",
    title="Pressure reducing valve",
    group=Group.SHUTTING,
    size=(2, 2),
    ports=(Port("in", (-1, 0), (-1, 0)), Port("out", (1, 0), (1, 0))),
    own_fields=(number("set_pressure_bar", "Set pressure", "bar", above=0),),
    passages=passages(Passage("in", "out", way=Way.REDUCING)),
    devices=devices(Device(Role.REDUCES, "in", "out")),
    figure=("set_pressure_bar",),
    summary="Brings the main down to the pressure the store is made for.",
)

"""Bypass valve: opens by itself when the pressure across it passes its setting."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Passage, Port, Role, Way, devices, number, passages

KIND = Kind(
    name="bypass_valve",
    title="Bypass valve",
    group=Group.MOVING,
    size=(2, 2),
    ports=(Port("in", (-1, 0), (-1, 0)), Port("out", (1, 0), (1, 0))),
    own_fields=(number("set_difference_kpa", "Set difference", "kPa", above=0),),
    passages=passages(Passage("in", "out", way=Way.SPRING)),
    devices=devices(Device(Role.BYPASSES, "in", "out")),
    figure=("set_difference_kpa",),
    summary="A spring-loaded valve that gives the pump a way round when the zones shut.",
)

"""Blending valve: mixes hot and cold to a safe temperature."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Passage, Port, Role, Way, devices, number, passages

KIND = Kind(
    name="blending_valve",
    title="Blending valve",
    group=Group.MOVING,
    size=(2, 2),
    ports=(
        Port("hot", (-1, 0), (-1, 0)),
        Port("cold", (0, 1), (0, 1)),
        Port("mixed", (1, 0), (1, 0)),
    ),
    own_fields=(number("set_temperature_c", "Set temperature", "°C", least=0, most=300),),
    passages=passages(Passage("hot", "mixed", way=Way.ONE_WAY), Passage("cold", "mixed", way=Way.ONE_WAY)),
    devices=devices(Device(Role.BLENDS, "hot", "mixed")),
    figure=("set_temperature_c",),
    summary="Mixes hot with cold so that what comes out does not scald.",
)

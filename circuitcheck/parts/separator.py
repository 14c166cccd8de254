"""Separator: joins circuits of different flow without one driving another."""

from __future__ import annotations

from circuitcheck.parts.kind import Device, Group, Kind, Passage, Port, Role, devices, number, passages

# Every pair of ports has its own way, so that a loop may cross the separator twice: out to the
# load and back.
KIND = Kind(
    name="separator",
    title="Separator",
    group=Group.HEAT,
    size=(2, 6),
    ports=(
        Port("source_flow", (-1, -2), (-1, 0)),
        Port("source_return", (-1, 2), (-1, 0)),
        Port("load_flow", (1, -2), (1, 0)),
        Port("load_return", (1, 2), (1, 0)),
    ),
    own_fields=(number("water_content_l", "Water content", "l", least=0),),
    passages=passages(
        Passage("source_flow", "source_return"),
        Passage("source_flow", "load_flow"),
        Passage("source_flow", "load_return"),
        Passage("source_return", "load_flow"),
        Passage("source_return", "load_return"),
        Passage("load_flow", "load_return"),
    ),
    devices=devices(Device(Role.SEPARATES, "source_flow", "load_flow")),
    summary="A wide vessel in which flow and return meet, so that pumps do not fight.",
)

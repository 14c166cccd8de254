"""Radiator: gives heat to a room."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Data,
    Device,
    Group,
    Kind,
    Passage,
    Port,
    Role,
    Way,
    devices,
    is_on,
    number,
    switch,
)


def _passages(data: Data) -> tuple[Passage, ...]:
    if is_on(data, "thermostatic", True):
        way = Way.THERMOSTAT
    else:
        way = Way.HAND if is_on(data, "valves", True) else Way.OPEN
    householder = is_on(data, "hand_wheel", False)
    return (Passage("flow", "return", way=way, gives_heat=True, householder=householder),)


KIND = Kind(
    name="radiator",
    title="Radiator",
    group=Group.EMITTERS,
    size=(5, 4),
    ports=(Port("flow", (-2, 2), (0, 1)), Port("return", (2, 2), (0, 1))),
    own_fields=(
        number("output_w", "Output", "W", least=0),
        number("water_content_l", "Water content", "l", least=0),
        switch("thermostatic", "Thermostatic head", default=True),
        switch("valves", "Valves", default=True),
        switch("hand_wheel", "Hand wheel", default=False, help="The householder can shut it."),
    ),
    passages=_passages,
    devices=devices(Device(Role.EMITS, "flow", "return")),
    rests_on=("thermostatic", "valves", "hand_wheel"),
    figure=("output_w",),
    summary="Gives heat to one room.",
)

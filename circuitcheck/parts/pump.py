"""Pump: drives water from its inlet to its outlet."""

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
    is_on,
    number,
    switch,
)


def _passages(data: Data) -> tuple[Passage, ...]:
    shuttable = is_on(data, "isolating_valves", True)
    return (Passage("in", "out", way=Way.HAND if shuttable else Way.OPEN, driven=True),)


def _devices(data: Data) -> tuple[Device, ...]:
    return (Device(Role.PUMPS, "in", "out"),)


KIND = Kind(
    name="pump",
    title="Pump",
    group=Group.MOVING,
    size=(2, 2),
    ports=(Port("in", (-1, 0), (-1, 0)), Port("out", (1, 0), (1, 0))),
    own_fields=(
        switch("isolating_valves", "Isolating valves", default=True),
        number("shut_off_head_m", "Shut-off head", "m", least=0),
        number("maximum_flow_lpm", "Most flow", "l/min", least=0),
    ),
    passages=_passages,
    devices=_devices,
    rests_on=("isolating_valves",),
    figure=("shut_off_head_m",),
    summary="Drives water in the direction of its triangle.",
)

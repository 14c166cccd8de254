"""Dirt separator: takes sludge and magnetite out of heating water."""

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
    switch,
)


def _passages(data: Data) -> tuple[Passage, ...]:
    shuttable = is_on(data, "isolating_valves", True)
    return (Passage("a", "b", way=Way.HAND if shuttable else Way.OPEN),)


KIND = Kind(
    name="dirt_separator",
    title="Dirt separator",
    group=Group.SHUTTING,
    size=(2, 3),
    ports=(Port("a", (-1, 0), (-1, 0)), Port("b", (1, 0), (1, 0))),
    own_fields=(switch("isolating_valves", "Isolating valves", default=True),),
    passages=_passages,
    devices=devices(Device(Role.FILTERS, "a", "b"), Device(Role.CAN_BLOCK, "a", "b")),
    rests_on=("isolating_valves",),
    summary="Collects what the water carries, so that it can be let out.",
)

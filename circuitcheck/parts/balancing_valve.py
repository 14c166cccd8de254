"""Balancing valve: set by hand to share the flow; it can be shut."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
    Passage,
    Port,
    Way,
    number,
    passages,
)

KIND = Kind(
    name="balancing_valve",
    title="Balancing valve",
    group=Group.SHUTTING,
    size=(2, 2),
    ports=(Port("a", (-1, 0), (-1, 0)), Port("b", (1, 0), (1, 0))),
    own_fields=(number("kv_m3h", "kv", "m³/h", above=0),),
    passages=passages(Passage("a", "b", way=Way.HAND)),
    figure=("kv_m3h",),
    summary="Shares the flow between circuits by its setting.",
)

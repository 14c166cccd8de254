"""Strainer: catches grit; open, though it can block."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
    Passage,
    Port,
    passages,
)

KIND = Kind(
    name="strainer",
    title="Strainer",
    group=Group.SHUTTING,
    size=(2, 2),
    ports=(Port("in", (-1, 0), (-1, 0)), Port("out", (1, 0), (1, 0))),
    passages=passages(Passage("in", "out")),
    summary="Catches grit before it reaches the valves behind it.",
)

"""Air vent: lets air out where it gathers."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
    Port,
)

KIND = Kind(
    name="air_vent",
    title="Air vent",
    group=Group.FILLING,
    size=(2, 2),
    ports=(Port("connection", (0, 1), (0, 1)),),
    summary="Lets air out at a high point.",
)

"""Drain: empties the pipework it stands on."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
    Port,
)

KIND = Kind(
    name="drain",
    title="Drain",
    group=Group.FILLING,
    size=(2, 2),
    ports=(Port("connection", (0, -1), (0, -1)),),
    summary="Empties the pipework above it.",
)

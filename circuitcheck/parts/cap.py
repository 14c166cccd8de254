"""Cap: closes a pipe on purpose."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
    Port,
)

KIND = Kind(
    name="cap",
    title="Cap",
    group=Group.SHUTTING,
    size=(1, 1),
    ports=(Port("connection", (0, 0), None),),
    summary="Closes a port or a pipe on purpose.",
)

"""Tee: joins three pipes."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
    Passage,
    Port,
    passages,
)

KIND = Kind(
    name="tee",
    title="Tee",
    group=Group.SHUTTING,
    size=(0, 0),
    ports=(Port("a", (0, 0), None), Port("b", (0, 0), None), Port("branch", (0, 0), None)),
    passages=passages(Passage("a", "b"), Passage("a", "branch")),
    summary="Joins three pipes; made by ending a pipe on a pipe.",
)

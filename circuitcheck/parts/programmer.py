"""Programmer: says at what times a zone may call."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
)

KIND = Kind(
    name="programmer",
    title="Programmer",
    group=Group.CONTROLS,
    size=(2, 2),
    ports=(),
    summary="Says at what times a zone may call.",
    is_control=True,
)

"""Store thermostat: calls for heat until the store is hot."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
)

KIND = Kind(
    name="store_thermostat",
    title="Store thermostat",
    group=Group.CONTROLS,
    size=(2, 2),
    ports=(),
    summary="Calls for heat until the store is hot.",
    is_control=True,
)

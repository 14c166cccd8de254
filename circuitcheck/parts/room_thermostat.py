"""Room thermostat: calls for heat until its room is warm."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
)

KIND = Kind(
    name="room_thermostat",
    title="Room thermostat",
    group=Group.CONTROLS,
    size=(2, 2),
    ports=(),
    summary="Calls for heat until its room is warm.",
    is_control=True,
)

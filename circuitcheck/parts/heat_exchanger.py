"""Heat exchanger: passes heat from one water to another through a wall."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Data,
    Device,
    Group,
    Kind,
    Passage,
    Port,
    Role,
    devices,
    passages,
)

SIDES = (frozenset({"primary_in", "primary_out"}), frozenset({"secondary_in", "secondary_out"}))


def _may_stay_free(data: Data, joined: frozenset[str]) -> frozenset[str]:
    idle = [side for side in SIDES if not side & joined]
    return frozenset().union(*idle)


KIND = Kind(
    name="heat_exchanger",
    title="Heat exchanger",
    group=Group.HEAT,
    size=(4, 4),
    ports=(
        Port("primary_in", (-2, -1), (-1, 0)),
        Port("primary_out", (-2, 1), (-1, 0)),
        Port("secondary_in", (2, -1), (1, 0)),
        Port("secondary_out", (2, 1), (1, 0)),
    ),
    passages=passages(
        Passage("primary_in", "primary_out", gives_heat=True),
        Passage("secondary_in", "secondary_out", gives_heat=True),
    ),
    devices=devices(
        Device(Role.EXCHANGES, "primary_in", "secondary_in"),
        Device(Role.CAN_BLOCK, "primary_in", "primary_out"),
        Device(Role.CAN_BLOCK, "secondary_in", "secondary_out"),
    ),
    may_stay_free=_may_stay_free,
    summary="Passes heat from one water to another that never meet.",
)

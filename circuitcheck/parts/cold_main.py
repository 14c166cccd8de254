"""Cold main: where mains water comes in."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Device,
    Group,
    Kind,
    Port,
    Role,
    devices,
    number,
)

KIND = Kind(
    name="cold_main",
    title="Cold main",
    group=Group.MAINS,
    size=(2, 2),
    ports=(Port("outlet", (1, 0), (1, 0)),),
    own_fields=(
        number("standing_pressure_bar", "Standing pressure", "bar", least=0),
        number("running_pressure_bar", "Running pressure", "bar", least=0),
        number("flow_lpm", "Flow rate", "l/min", least=0),
    ),
    devices=devices(Device(Role.MAIN, "outlet")),
    figure=("standing_pressure_bar", "flow_lpm"),
    summary="The water supply as it comes into the building.",
)

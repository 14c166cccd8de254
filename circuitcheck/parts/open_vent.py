"""Open vent: a pipe that ends open over a cistern."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    CISTERN,
    Device,
    Group,
    Kind,
    Port,
    Role,
    devices,
    number,
    reference,
)

KIND = Kind(
    name="open_vent",
    title="Open vent",
    group=Group.SAFETY,
    size=(2, 4),
    ports=(Port("connection", (0, 2), (0, 1)),),
    own_fields=(
        reference("over", "Over cistern", to=CISTERN),
        number("height_above_water_mm", "Height above water", "mm", least=0),
    ),
    devices=devices(Device(Role.VENTS, "connection")),
    summary="Ends open over a cistern: steam and swelling water can always get out.",
)

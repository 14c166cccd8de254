"""Inlet group: strainer, reducing valve, check valve and expansion relief in one body."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Device,
    Group,
    Kind,
    Passage,
    Port,
    Role,
    Way,
    devices,
    number,
    passages,
)

KIND = Kind(
    name="inlet_group",
    title="Inlet group",
    group=Group.SAFETY,
    size=(6, 2),
    ports=(
        Port("in", (-3, 0), (-1, 0)),
        Port("out", (3, 0), (1, 0)),
        Port("balanced_cold", (-1, -1), (0, -1)),
        Port("relief", (1, 1), (0, 1)),
    ),
    own_fields=(
        number(
            "set_pressure_bar",
            "Reduces to",
            "bar",
            above=0,
            help="The pressure to which the group's reducing valve brings the main.",
        ),
        number("relief_pressure_bar", "Relief set at", "bar", above=0),
        number(
            "outlet_size_mm",
            "Relief outlet",
            "mm",
            default=15,
            above=0,
            help="The bore of the outlet of the group's relief valve.",
        ),
    ),
    passages=passages(
        Passage("in", "balanced_cold", way=Way.REDUCING),
        Passage("balanced_cold", "out", way=Way.ONE_WAY),
    ),
    devices=devices(
        Device(Role.RELIEVES_STORE, "out", "relief", built_in=True),
        Device(Role.RELIEVES_BY_PRESSURE, "out", "relief", built_in=True),
        Device(Role.REDUCES, "in", "balanced_cold", built_in=True),
        Device(Role.STOPS_BACKFLOW, "balanced_cold", "out", built_in=True),
        Device(Role.CAN_BLOCK, "in", "balanced_cold", built_in=True),
    ),
    outlets=frozenset({"relief"}),
    figure=("set_pressure_bar", "relief_pressure_bar"),
    summary="What stands between the main and a store, in one body.",
)

"""Discharge end: where a discharge pipe ends."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Device,
    Group,
    Kind,
    Port,
    Role,
    choice,
    devices,
    switch,
)

KIND = Kind(
    name="discharge_end",
    title="Discharge end",
    group=Group.SAFETY,
    size=(2, 2),
    ports=(Port("inlet", (0, -1), (0, -1)),),
    own_fields=(
        choice(
            "place",
            "Place",
            (
                "outside_low_level",
                "gully_below_grating",
                "roof_or_high_level",
                "soil_stack",
                "inside",
                "unknown",
            ),
            default="unknown",
        ),
        switch("in_sight", "In sight", default=True),
        switch("clear_of_people", "Clear of people", default=None),
        switch("conditions_met", "Conditions for this place met", default=None),
    ),
    devices=devices(Device(Role.ENDS_DISCHARGE, "inlet")),
    figure=("place",),
    summary="Where hot water or steam may come out at any time.",
)

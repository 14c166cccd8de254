"""Tundish: shows a discharge through an air gap."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Device,
    Group,
    Kind,
    Passage,
    Port,
    Role,
    devices,
    passages,
    switch,
)

KIND = Kind(
    name="tundish",
    title="Tundish",
    group=Group.SAFETY,
    size=(2, 2),
    ports=(Port("inlet", (0, -1), (0, -1)), Port("outlet", (0, 1), (0, 1))),
    own_fields=(switch("in_sight", "In sight", default=True),),
    passages=passages(Passage("inlet", "outlet", driven=True, gap=True)),
    devices=devices(Device(Role.SHOWS_DISCHARGE, "inlet", "outlet")),
    summary="A funnel under a pipe's end: a discharge is seen, and nothing is drawn back.",
)

"""Outlet: where hot or cold water is drawn."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Data,
    Device,
    Group,
    Kind,
    Port,
    Role,
    choice,
    devices,
)


def _may_stay_free(data: Data, joined: frozenset[str]) -> frozenset[str]:
    # One of the two must be joined; where none is, one is asked for.
    return frozenset({"hot", "cold"}) if joined else frozenset({"cold"})


KIND = Kind(
    name="outlet",
    title="Outlet",
    group=Group.MAINS,
    size=(2, 2),
    ports=(Port("hot", (-1, 1), (0, 1)), Port("cold", (1, 1), (0, 1))),
    own_fields=(
        choice("fitting", "Fitting", ("basin", "bath", "shower", "sink", "wc", "other"), default=None),
    ),
    devices=devices(Device(Role.DRAWS, "hot", "cold")),
    may_stay_free=_may_stay_free,
    figure=("fitting",),
    summary="A tap, a shower, a bath or another place where water is drawn.",
)

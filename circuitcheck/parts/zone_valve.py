"""Zone valve: opened and shut by the controls for one zone."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Group,
    Kind,
    Passage,
    Port,
    Way,
    choice,
    number,
    passages,
)

KIND = Kind(
    name="zone_valve",
    title="Zone valve",
    group=Group.MOVING,
    size=(2, 2),
    ports=(Port("in", (-1, 0), (-1, 0)), Port("out", (1, 0), (1, 0))),
    own_fields=(
        choice(
            "rest",
            "At rest",
            ("shut", "open", "stays"),
            default="shut",
            help="Where it goes when its supply fails.",
        ),
        choice("serves", "Serves", ("heating", "hot_water"), default=None),
        number("kv_m3h", "kv", "m³/h", above=0),
    ),
    passages=passages(Passage("in", "out", way=Way.MOTOR)),
    figure=("serves",),
    summary="A motorised valve with two ports: open when its zone calls.",
)

"""Three-port valve: a motorised valve that opens one leg, the other or both."""

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
    name="three_port_valve",
    title="Three-port valve",
    group=Group.MOVING,
    size=(2, 2),
    ports=(Port("ab", (-1, 0), (-1, 0)), Port("a", (1, 0), (1, 0)), Port("b", (0, 1), (0, 1))),
    own_fields=(
        choice(
            "action",
            "Action",
            ("divert", "share"),
            default="divert",
            help="Divert: one leg or the other. Share: both as well.",
        ),
        choice("rest", "At rest", ("a", "b", "stays"), default="stays"),
        number("kv_m3h", "kv", "m³/h", above=0),
    ),
    passages=passages(
        Passage("ab", "a", way=Way.MOTOR, leg="a"),
        Passage("ab", "b", way=Way.MOTOR, leg="b"),
    ),
    summary="A motorised valve whose two legs are never both shut.",
)

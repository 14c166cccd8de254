"""Isolating valve: shut by hand."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Data,
    Group,
    Kind,
    Passage,
    Port,
    Way,
    is_on,
    switch,
)


def _passages(data: Data) -> tuple[Passage, ...]:
    return (Passage("a", "b", way=Way.HAND, secured=is_on(data, "secured", False)),)


KIND = Kind(
    name="isolating_valve",
    title="Isolating valve",
    group=Group.SHUTTING,
    size=(2, 2),
    ports=(Port("a", (-1, 0), (-1, 0)), Port("b", (1, 0), (1, 0))),
    own_fields=(
        switch(
            "secured",
            "Secured",
            default=False,
            help="Locked, sealed or capped against unintended shutting. A screwdriver slot is not secured.",
        ),
    ),
    passages=_passages,
    rests_on=("secured",),
    summary="A valve anybody can shut by hand, unless it is secured.",
)

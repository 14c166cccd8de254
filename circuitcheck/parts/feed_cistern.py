"""Feed cistern: holds water open to air and feeds it by its height."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Device,
    Group,
    Kind,
    Port,
    Role,
    choice,
    devices,
    free,
    number,
)

KIND = Kind(
    name="feed_cistern",
    title="Feed cistern",
    group=Group.FILLING,
    size=(6, 4),
    ports=(
        Port("supply", (-3, -1), (-1, 0)),
        Port("feed", (2, 2), (0, 1)),
        Port("vent_over", (1, -2), (0, -1)),
        Port("warning", (3, -1), (1, 0)),
    ),
    own_fields=(
        number("content_l", "Content", "l", above=0),
        number(
            "water_level_m",
            "Water level",
            "m",
            least=-1000,
            most=1000,
            help="Above the sheet's datum.",
        ),
        choice("serves", "Serves", ("heating", "hot_water"), default=None),
    ),
    devices=devices(Device(Role.FEEDS, "feed"), Device(Role.VENTS, "vent_over")),
    may_stay_free=free("vent_over", "warning"),
    figure=("content_l",),
    summary="Feeds heating or hot water from above, open to air.",
)

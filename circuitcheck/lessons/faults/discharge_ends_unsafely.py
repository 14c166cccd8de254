"""The pipe is ended where it was easy to drill through the wall, over the path, or it never leaves the
cupboard."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from circuitcheck.lessons.discharges import runs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site

ENDS: tuple[tuple[dict[str, Any], str], ...] = (
    ({"place": "inside"}, "{end} is inside the building."),
    ({"place": "outside_low_level", "clear_of_people": False}, "People can stand in the way of {end}."),
    (
        {"place": "roof_or_high_level", "conditions_met": False},
        "{end} is high up, without what the rules ask.",
    ),
)


def plant(site: Site) -> Iterator[Planted]:
    """An end where what comes out does harm."""
    for _, run in runs(site):
        for values, template in site.mixed(ENDS):
            drawing = site.with_values({(run.end, field): value for field, value in values.items()})
            yield Planted(drawing, site.says(template, end=run.end), (run.end,), run.pipes[-1:])

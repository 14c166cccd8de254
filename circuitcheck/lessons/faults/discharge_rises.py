"""The hole through the wall comes out higher than the valve, so the pipe goes up to it."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.discharges import runs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site

BRINGS = frozenset({"no-drop-below-tundish"})


def plant(site: Site) -> Iterator[Planted]:
    """The last pipe of a discharge goes up, and its end stands as high."""
    for discharge, run in runs(site):
        pipe = run.pipes[-1]
        start = site.beyond(run.end, run.steps[-1].came_by)
        height = None if start is None else site.case.heights.of(start.part)
        if height is None:
            continue
        up = site.one(0.1, 0.2)
        sign = 1 if site.drawing.pipes[pipe].ends[0] == start else -1
        drawing = site.with_values(
            {
                (pipe, "rise_m"): sign * up,
                (run.end, "height_m"): round(height + up, 3),
                (pipe, "straight_drop_m"): 0,
            }
        )
        says = site.says("The discharge of {valve} goes up to its end.", valve=discharge.valve.part)
        yield Planted(drawing, says, (run.end, discharge.valve.part), (pipe,), BRINGS)

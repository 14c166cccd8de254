"""Both stores' discharges are run on from the tee in the size in which they come to it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """The pipes that several tundishes share, in the largest size of those that come to them."""
    ways = {run.after_tundish: run.end for each in site.case.discharges for run in each.runs}
    carried = Counter(pipe for way in ways for pipe in way)
    for end in site.mixed(dict.fromkeys(ways.values())):
        pipes = dict.fromkeys(pipe for way, at in ways.items() if at == end for pipe in way)
        size_mm = {pipe: site.drawing.pipes[pipe].data.get("size_mm") or 0 for pipe in pipes}
        shared = tuple(pipe for pipe in pipes if carried[pipe] > 1)
        size = max((size_mm[pipe] for pipe in pipes if pipe not in shared), default=0)
        if not size or not shared or max(size_mm[pipe] for pipe in shared) <= size:
            continue
        drawing = site.with_values({(pipe, "size_mm"): size for pipe in shared})
        says = site.says("The pipe that several tundishes share to {end} is {size} mm.", end=end, size=size)
        yield Planted(drawing, says, (end,), shared)

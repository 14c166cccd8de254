"""The heating is piped in plastic, and the fitter runs it right up to the heat source instead of ending a
metre before it."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import sources
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """The flow or return right at the heat source in plastic."""
    for source in sources(site):
        for port in site.mixed(("flow", "return")):
            pipe = site.pipe_on(source.part, port)
            if pipe is None:
                continue
            size = site.drawing.pipes[pipe].data["size_mm"]
            drawing = site.with_values(
                {(pipe, "material"): "plastic", (pipe, "bore_mm"): round(size * 0.8, 1)}
            )
            says = site.says("The pipe at {source} is plastic.", source=source.part)
            yield Planted(drawing, says, (source.part,), (pipe,))

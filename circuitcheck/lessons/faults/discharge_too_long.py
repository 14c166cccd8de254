"""The store is moved to the loft, and its discharge follows the old route all round the house."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.discharges import runs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """The pipe from the tundish on far longer, with more bends."""
    for discharge, run in runs(site):
        for pipe in site.mixed(run.after_tundish):
            long, bends = site.one(9, 11, 14), site.one(4, 6)
            drawing = site.with_values({(pipe, "length_m"): long, (pipe, "bends"): bends})
            says = site.says(
                "The discharge of {valve} is {long} m long there, with {bends} bends.",
                valve=discharge.valve.part,
                long=long,
                bends=bends,
            )
            yield Planted(drawing, says, (discharge.valve.part,), (pipe,))

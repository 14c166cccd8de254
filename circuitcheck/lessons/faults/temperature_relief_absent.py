"""The new store came without its valve, the old one no longer fitted, and nobody came back."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """The temperature relief valve and its pipes gone."""
    for relief in site.parts("temperature_relief_valve"):
        at = site.beyond(relief.id, "inlet")
        if at is not None:
            says = site.says("{store} has no temperature relief valve.", store=at.part)
            yield Planted(site.without(relief.id), says, (at.part,), brings=frozenset({"open-end"}))

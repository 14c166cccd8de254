"""A rise is written down with the wrong sign."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """The rise of one pipe turned into a fall, or the other way round."""
    for pipe in site.mixed(site.drawing.pipes.values()):
        rise = pipe.data.get("rise_m") or 0
        if abs(rise) < 0.3:
            continue
        ends = tuple(end.part for end in pipe.joints)
        says = site.says(
            "The rise of {pipe} is written as {wrong} m, which its ends do not bear out.",
            pipe=pipe.id,
            wrong=-rise,
        )
        yield Planted(site.with_value(pipe.id, "rise_m", -rise), says, ends, (pipe.id,))

"""The pump is put where there is room for it, between the tees of vent and feed."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.venting import VentAndFeed
from circuitcheck.drawing.value import Drawing
from circuitcheck.lessons.cisterns import pairs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role

BRINGS = frozenset({"pump-over-or-draws-air"})


def plant(site: Site) -> Iterator[Planted]:
    """The pump out of its place and into the pipe between the two tees."""
    for pair in pairs(site):
        for pump in of_the_heating(site, Role.PUMPS):
            with tried():
                drawing, moved = _between(site, pair, pump.part)
                says = site.says(
                    "{pump} stands between {vent} and the feed of {feed}.",
                    drawing,
                    pump=moved,
                    vent=pair.vent.part,
                    feed=pair.feed.part,
                )
                tees = (pair.vent_tap.joint.part, pair.feed_tap.joint.part)
                parts = (moved, pair.vent.part, pair.feed.part, *tees)
                yield Planted(drawing, says, parts, drawing.pipes_of(moved), BRINGS)


def _between(site: Site, pair: VentAndFeed, pump: str) -> tuple[Drawing, str]:
    """The drawing with the pump right before the feed's tee, and the pump. It comes without valves of
    its own: what they could cut off there would be other faults. Raises EditError."""
    known = site.drawing.components[pump]
    data = {**known.data, "isolating_valves": False}
    height = site.case.heights.of(pair.feed_tap.joint.part)
    if height is not None:
        data["height_m"] = height
    work = site.fitting()
    work.take_out(pump)
    between = (end for pipe in pair.pipes_between or () for end in site.drawing.pipes[pipe].joints)
    by = [end for end in between if end.part == pair.feed_tap.joint.part]
    moved = work.cut_in(
        "pump", by[0] if by else pair.feed_tap.joint, port="out", data=data, label=known.label
    )
    return work.drawing, moved

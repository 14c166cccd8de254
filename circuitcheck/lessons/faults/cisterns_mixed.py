"""One cistern in the loft is enough, it is thought, and the small one is saved."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.cisterns import cisterns, pairs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried

BRINGS = frozenset({"cross-connection", "vent-and-feed-apart"})


def plant(site: Site) -> Iterator[Planted]:
    """The heating fed from the hot water's cistern, its own gone and its vent brought over the other."""
    for pair in pairs(site):
        for other in cisterns(site):
            if other.part == pair.feed.part:
                continue
            with tried():
                pipe = pair.feed_tap.pipes[0]
                by = Joint(other.part, other.device.port)
                drawing, tee = site.rejoined(pipe, pair.feed.part, by)
                gone = drawing.pipes_of(pair.feed.part)
                drawing = remove(drawing, (pair.feed.part, *gone))
                drawing = set_field(drawing, pair.vent.part, "over", other.part)
                says = site.says("{cistern} feeds the heating too.", cistern=other.part)
                yield Planted(drawing, says, (other.part, tee), (pipe,), BRINGS)

"""The vent is taken down under a beam and up again, and a drain is put at its lowest point."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.pipework import tapping
from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.cisterns import vents
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """A vent that falls before it rises, with a drain where it is lowest."""
    for vent in vents(site):
        tap = tapping(site.case.circuit, Joint(vent.vent.part, vent.vent.device.port))
        if tap is None:
            continue
        foot = site.drawing.pipes[tap.pipes[-1]]
        by = next((end for end in foot.joints if end.part == tap.joint.part), None)
        rise, length = foot.data.get("rise_m"), foot.data.get("length_m")
        if by is None or rise is None or length is None:
            continue
        down = site.one(0.15, 0.25, 0.4)
        with tried():
            work = site.fitting()
            drain = work.tee_off(
                by,
                "drain",
                "connection",
                pipe_data={"size_mm": 15, "length_m": 0.2, "rise_m": -0.1, "bends": 0},
            )
            here = work.drawing.joined[by]
            tee = next(end.part for end in work.drawing.pipes[here].joints if end != by)
            up = next(
                id for id in work.drawing.pipes_of(tee) if id not in (here, *work.drawing.pipes_of(drain))
            )
            for id, below, climbs, long in (
                (here, by.part, -down, 0.6),
                (up, tee, abs(rise) + down, max(length, abs(rise) + down)),
            ):
                start = work.drawing.pipes[id].ends[0]
                rises = isinstance(start, Joint) and start.part == below
                work.set(id, "rise_m", round(climbs if rises else -climbs, 3))
                work.set(id, "length_m", round(long, 3))
            says = site.says("{vent} falls by {down} m before it rises.", vent=vent.vent.part, down=down)
            yield Planted(work.drawing, says, (vent.vent.part, tee, drain), (here,))

"""Small differences that leave a drawing sound, so that no two exercises look alike."""

from __future__ import annotations

import random
from itertools import islice

from circuitcheck.analysis import analyse
from circuitcheck.drawing.arranging import mirror
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role

MOST_VALVES = 2
PLACES_TRIED = 3
SERVICED = (Role.EMITS, Role.DRAWS, Role.PUMPS, Role.REDUCES)
"""Beside what does these things a valve for service is usual, and most often harmless."""


def varied(drawing: Drawing, chance: random.Random) -> Drawing:
    """A sound drawing, perhaps mirrored, with up to two valves for service more than it had: a valve must
    not be a fault because it is one that was not there yesterday."""
    if chance.random() < 0.5:
        drawing = mirror(drawing, (*drawing.components, *drawing.controls))
    for _ in range(int(chance.random() * (MOST_VALVES + 1))):
        drawing = _with_valve(drawing, chance)
    return drawing


def _with_valve(drawing: Drawing, chance: random.Random) -> Drawing:
    """The drawing with a valve where nothing is said against it, or as it was."""
    site = Site(drawing, chance)
    where = [
        Joint(each.part, port)
        for role in SERVICED
        for each in site.devices(role)
        for port in (each.device.port, each.device.other)
        if port
    ]
    for by in islice(site.mixed(where), PLACES_TRIED):
        with tried():
            after, _ = site.valve_cut_in(by)
            if not analyse(after).findings:
                return after
    return drawing

"""Ends of pipes in a drawing into which faults are put: which hang on one part, and how to let go of them."""

from __future__ import annotations

from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.pipes import join
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role
from circuitcheck.told import worded

HANGING = (Role.SHOWS_PRESSURE, Role.DRAINS, Role.LETS_AIR_OUT)


def hanging(site: Site) -> list[Joint]:
    """Ports whose one pipe leads nowhere else, and those of emitters, in random order."""
    found = [Joint(each.part, each.device.port) for role in HANGING for each in site.devices(role)]
    for each in site.devices(Role.EMITS):
        found += [Joint(each.part, each.device.port), Joint(each.part, each.device.other)]
    return site.mixed(found)


def short_of(site: Site, joint: Joint, by: float = 0.5) -> tuple[Drawing, str]:
    """The drawing with the pipe on a port let go a little before it, and the pipe. Raises EditError."""
    part = site.drawing.components[joint.part]
    at, faces = part.port_at(joint.port), part.port_faces(joint.port)
    pipe = site.drawing.joined.get(joint)
    if at is None or faces is None or pipe is None:
        raise EditError(worded("Nothing is joined to {name} there.", name=part.name))
    which = site.drawing.pipes[pipe].ends.index(joint)
    return join(site.drawing, pipe, which, Point(at.x + by * faces[0], at.y + by * faces[1])), pipe

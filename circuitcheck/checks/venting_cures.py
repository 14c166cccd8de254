"""What would put vents and feeds right: proposals that several checks make."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.valves_out import without_valves
from circuitcheck.checks.venting import end_of
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.pipework import Tapping, tapping
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.finding import Finding, Says
from circuitcheck.told import spoken


def rejoined(case: Case, moved: Tapping, beside: Tapping) -> Iterator[Drawing]:
    """The drawing with one vent's or feed's pipe joined right beside another's tee, on each side of it."""
    for port in case.drawing.components[beside.joint.part].kind.ports:
        by = Joint(beside.joint.part, port.name)
        if by != beside.joint and by in case.drawing.joined:
            after = _moved(case, moved, by)
            if after is not None:
                yield after


def _moved(case: Case, moved: Tapping, by: Joint) -> Drawing | None:
    """The drawing with a vent's or feed's pipe joined right by a port; None where that cannot be."""
    if moved.joint.part == by.part:
        return None
    fitting = Fitting(case.drawing, case.lines)
    try:
        fitting.move_end(moved.pipes[-1], moved.joint.part, by)
    except EditError:
        return None
    return fitting.drawing


def reached_always(
    case: Case, finding: Finding, devices: tuple[Placed, ...], *at: Joint
) -> Iterator[Proposal]:
    """For devices that valves can cut off: the valves taken out, or a device joined right at a port."""
    yield from without_valves(case, finding)
    for device in devices:
        tap = tapping(case.circuit, end_of(device))
        for joint in at:
            after = None if tap is None or joint not in case.drawing.joined else _moved(case, tap, joint)
            if after is not None:
                names = {
                    "device": case.drawing.name(device.part),
                    "port": spoken(joint.port),
                    "part": case.drawing.name(joint.part),
                }
                yield Proposal(Says("Join {device} to the {port} right at {part}.", names), after)

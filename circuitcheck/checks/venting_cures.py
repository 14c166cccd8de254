"""What would put vents and feeds right: proposals that several checks make."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.venting import end_of
from circuitcheck.checks.wording import named
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.pipework import Tapping, tapping
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.finding import Finding, Says
from circuitcheck.parts.kind import Way


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
    yield from _without_valves(case, finding)
    for device in devices:
        tap = tapping(case.circuit, end_of(device))
        for joint in at:
            after = None if tap is None or joint not in case.drawing.joined else _moved(case, tap, joint)
            if after is not None:
                names = {
                    "device": case.drawing.name(device.part),
                    "port": joint.port,
                    "part": case.drawing.name(joint.part),
                }
                yield Proposal(Says("Join {device} to the {port} right at {part}.", names), after)


def _without_valves(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Every valve that does it alone, else those that do it together, taken out of the pipe."""
    witness = finding.witness
    if witness is None:
        return
    parts = tuple(dict.fromkeys(witness.alone or witness.shut))
    if not parts or not all(_only_shuts(case, part) for part in parts):
        return
    fitting = Fitting(case.drawing, case.lines)
    fitting.take_out(*parts)
    says = Says("Take {valves} out of the pipe.", {"valves": named(case.drawing, parts)})
    yield Proposal(says, fitting.drawing)


def _only_shuts(case: Case, entry: str) -> bool:
    """Whether a part is a hand valve in a pipe that does nothing else; no leg of a valve is."""
    plan = case.circuit.plans.get(entry)
    if plan is None or plan.devices or len(plan.passages) != 1:
        return False
    passage = plan.passages[0]
    return passage.way is Way.HAND and not passage.gives_heat

"""What of a drawing a finding concerns: its own circuit keeps its colour, the rest turns quiet. No Qt."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable

from circuitcheck.drawing.value import Component, Drawing, Joint
from circuitcheck.finding import Finding

LEG_STATES = {"a": "shut_a", "b": "shut_b"}


def concerned(drawing: Drawing, finding: Finding) -> frozenset[str]:
    """The ids of parts and pipes that keep their colour: what the finding names, and the water it is on."""
    named = {*finding.components, *finding.pipes, *finding.cut_off_components, *finding.cut_off_pipes}
    if finding.witness is not None:
        named.update(finding.witness.parts)
    return frozenset(named | _on_the_water(drawing, _starts(drawing, finding)))


def shut_states(finding: Finding) -> dict[str, frozenset[str]]:
    """For each valve of the witness the states in which its symbol shows it shut."""
    found: dict[str, set[str]] = defaultdict(set)
    if finding.witness is None:
        return {}
    for shut in finding.witness.shut:
        part, _, leg = shut.partition(":")
        found[part].add(LEG_STATES.get(leg, "shut"))
    return {part: frozenset(states) for part, states in found.items()}


def _starts(drawing: Drawing, finding: Finding) -> list[Joint]:
    """The ports at which the finding's water begins: those of what is cut off, else of what is judged."""
    pipes = finding.cut_off_pipes or finding.pipes
    starts = [end for id in pipes if id in drawing.pipes for end in drawing.pipes[id].joints]
    if starts or not finding.components:
        return starts
    judged = drawing.components.get(finding.components[0])
    return [] if judged is None else [Joint(judged.id, port) for port in _wet_ports(judged)]


def _wet_ports(part: Component) -> Iterable[str]:
    """The ports water goes through; all of them where none does, as at a vessel."""
    names = {port.name for port in part.kind.ports}
    through = {port for way in part.kind.passages(part.data) for port in (way.a, way.b)}
    return sorted(names & through) or sorted(names)


def _on_the_water(drawing: Drawing, starts: Iterable[Joint]) -> set[str]:
    """All parts and pipes that water reaches from these ports, every valve open."""
    found: set[str] = set()
    waiting = list(starts)
    seen = set(waiting)
    while waiting:
        joint = waiting.pop()
        if joint.part not in drawing.components:
            continue
        found.add(joint.part)
        next_joints = [
            Joint(joint.part, port) for port in _reached(drawing.components[joint.part], joint.port)
        ]
        pipe = drawing.joined.get(joint)
        if pipe is not None:
            found.add(pipe)
            next_joints += drawing.pipes[pipe].joints
        for reached in next_joints:
            if reached not in seen:
                seen.add(reached)
                waiting.append(reached)
    return found


def _reached(part: Component, port: str) -> set[str]:
    """The ends of passages, points inside included, that water reaches in one step from a port."""
    ends = set()
    for way in part.kind.passages(part.data):
        if way.a == port:
            ends.add(way.b)
        elif way.b == port:
            ends.add(way.a)
    return ends

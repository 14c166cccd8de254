"""An open vent falls on its way up.

Flags: A pipe that falls anywhere on the way from a heat source's flow, or a store's hot side, up to
    its open vent. A level pipe is no dip, nor is the last turn down over the cistern, above the
    water. Where feed and vent may be one pipe, that pipe is judged.
Why: Air and steam only go up. In a dip they are trapped, water stands in the vent like a plug, and
    when the thermostat fails the steam cannot get out: pressure builds as if the vent were shut.
Remedy: Run the vent so that it rises all the way from the heat source or store to above the cistern.
Source: BS 5449 and BS EN 12828 with its national annex (as taught in trade textbooks): the open
    vent rises continuously.
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.venting import VentPipe, cistern_under, end_of, is_cistern, vent_pipes
from circuitcheck.checks.wording import figure, named, upper
from circuitcheck.circuit.pipework import Cost, Step, along, through, way
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says

NAME = "vent-pipe-dips"

_ROUNDING_M = 1e-9


def judge(case: Case) -> Verdict:
    """One danger for each vent to which every way falls somewhere."""
    findings, sound = [], 0
    for vent in vent_pipes(case):
        last_down = _last_turn_down(case, vent)
        ways = [_best_way(case, vent, start, last_down) for start in vent.starts]
        pipes = [step for found in ways if found is not None for step in found if step.pipe]
        falls = tuple(dict.fromkeys(step.pipe for step in pipes if _falls(case, step, last_down)))
        unknown = tuple(dict.fromkeys(step.pipe for step in pipes if case.heights.rise(step.pipe) is None))
        if falls:
            findings.append(_falling(case, vent, falls))
        elif unknown:
            findings.append(_unanswered(case, vent, unknown))
        else:
            sound += bool(pipes)
    return Verdict(tuple(findings), sound)


def _best_way(case: Case, vent: VentPipe, start: Joint, last_down: str) -> tuple[Step, ...] | None:
    """The way up with fewest falls, then with fewest unknown rises. A vent that stands on the return
    is reached through the heat source; any other is not, since steam leaves at the flow."""

    def cost(step: Step) -> Cost:
        if not step.pipe:
            return (0.0, 0.0, 1.0)
        unknown = case.heights.rise(step.pipe) is None
        return (float(_falls(case, step, last_down)), float(unknown), 1.0)

    goal = end_of(vent.vent)
    found = way(case.circuit, [start], goal.__eq__, lambda step: step.goes_on, cost)
    if found is None:
        found = way(case.circuit, [start], goal.__eq__, lambda step: not step.stores, cost)
    return found


def _falls(case: Case, step: Step, last_down: str) -> bool:
    rise = case.heights.rise(step.pipe) if step.pipe else None
    if rise is None or step.pipe == last_down:
        return False
    return (rise if step.forward else -rise) < -_ROUNDING_M


def _last_turn_down(case: Case, vent: VentPipe) -> str:
    """The last pipe of a vent, where it is a turn down over the cistern; else "".

    It is one where the pipe before it is the vent's own too, and rises, and where it begins no
    lower than the cistern's water as far as both are known.
    """
    circuit = case.circuit
    last = along(circuit, end_of(vent.vent))
    if last is None:
        return ""
    before = []
    for step in through(circuit, last.finish):
        pipe = along(circuit, step.finish)
        if pipe is not None and any(True for _ in through(circuit, pipe.finish)):
            before.append(pipe)
    if len(before) != 1:
        return ""  # it leaves the circuit here: this is the vent's whole pipe
    rise = case.heights.rise(before[0].pipe)
    if rise is None or (rise if not before[0].forward else -rise) <= 0:
        return ""
    top = case.heights.of(last.finish.part)
    water = _water_level_m(case, vent)
    return "" if top is not None and water is not None and top < water else last.pipe


def _water_level_m(case: Case, vent: VentPipe) -> float | None:
    cistern = cistern_under(case, vent.vent)
    if cistern is None or not is_cistern(case, cistern):
        return None
    level = case.value(cistern, "water_level_m")
    return None if level is None else float(level)


def _falling(case: Case, vent: VentPipe, falls: tuple[str, ...]) -> Finding:
    drawing = case.drawing
    rises = {pipe: case.heights.rise(pipe) for pipe in falls}
    says = Says(
        "{vent} does not rise all the way from {things}: {pipes} falls on the way up, by {by} m. Steam and "
        "air cannot pass a dip.",
        {
            "vent": upper(drawing.name(vent.vent.part)),
            "things": named(drawing, vent.serves),
            "pipes": named(drawing, falls),
            "by": figure(sum(abs(rise) for rise in rises.values() if rise is not None)),
        },
    )
    numbers = {f"{pipe}.rise_m": rise for pipe, rise in rises.items() if rise is not None}
    components = (vent.vent.part, *vent.serves)
    return Finding(NAME, Grade.DANGER, says, tuple(dict.fromkeys(components)), falls, numbers=numbers)


def _unanswered(case: Case, vent: VentPipe, unknown: tuple[str, ...]) -> Finding:
    missing = tuple(f"{pipe}.rise_m" for pipe in unknown)
    says = Says(
        "Whether {vent} rises all the way from {things} is not known: {missing}.",
        {
            "vent": case.drawing.name(vent.vent.part),
            "things": named(case.drawing, vent.serves),
            "missing": ", ".join(missing),
        },
    )
    return Finding(
        NAME,
        Grade.UNANSWERED,
        says,
        components=tuple(dict.fromkeys((vent.vent.part, *vent.serves))),
        pipes=unknown,
        missing=missing,
        would_be=Grade.DANGER,
    )

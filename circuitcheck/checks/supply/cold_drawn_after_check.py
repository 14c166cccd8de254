"""Cold water is drawn between the check valve and the store.

Flags: A cold outlet, or the cold of a blending valve, joined to the pipe between a mains-fed store
    and the check valve before it. A store with its check valve built in has no such pipe.
Why: As the store heats up its water swells back into that pipe. What is drawn there comes warm, at
    the temperature legionella likes, and the check valve no longer stands between tap and store:
    when the main fails, an open tap draws the store's own water back through its cold inlet.
Remedy: Join the outlet's cold before the check valve: to the balanced cold connection behind the
    reducing valve.
Source: Common practice, no source: no draw-off between the check valve and a mains-fed store.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.supplying import supplies
from circuitcheck.checks.wording import named
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.circuit.waterways import CameBy, Step, pipes_of
from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "cold-drawn-after-check"


def judge(case: Case) -> Verdict:
    """One fault for each store with a cold outlet between it and its check valve."""
    places = case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
    if not places:
        return Verdict()
    ways = supplies(case)
    unchecked = _unchecked(ways)
    colds = {joint: number for number, joint in enumerate(_colds(case, ways))}
    findings, sound = [], 0
    for place in places:
        behind = _behind_check(case, ways, Joint(place.part, place.device.port), unchecked)
        if behind is None:
            continue
        taps = sorted((joint for joint in behind if joint in colds), key=lambda joint: colds[joint])
        if taps:
            findings.append(_finding(case, ways, place.part, behind, taps))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _unchecked(ways: Supplies) -> CameBy:
    """Every port that mains water reaches through no check valve."""
    return ways.walk(
        ways.mains, lambda step: ways.drawn_outside(step) and not ways.through(step, ways.checks)
    )


def _behind_check(case: Case, ways: Supplies, inlet: Joint, unchecked: CameBy) -> CameBy | None:
    """Every port that can be drawn from the water between a store and its check valve, and how; None
    where no check valve stands before the store."""
    if "check_valve" in (case.value(inlet.part, "built_in") or ()):
        return None

    def both_ways(step: Step) -> bool:
        return not (ways.in_store(step) or ways.in_heater(step)) and not _has_arrow(ways, step)

    between = ways.walk([inlet], both_ways)
    if any(joint in unchecked for joint in between):
        return None
    # No main reaches it but through a check valve, though a reducing valve may stand after that.
    if inlet not in ways.from_mains:
        return None
    return ways.walk([inlet], ways.drawn_outside)


def _has_arrow(ways: Supplies, step: Step) -> bool:
    """Whether a step goes through a passage that lets water through one way only."""
    return step.against or any(
        other.finish == step.start and other.against for other in ways.steps(step.finish)
    )


def _colds(case: Case, ways: Supplies) -> Iterator[Joint]:
    """The cold ports of outlets and of blending valves in drinking water."""
    for place in ways.outlets:
        yield Joint(place.part, place.device.other)
    for place in case.circuit.devices(Role.BLENDS):
        for passage in case.circuit.plans[place.part].passages:
            if passage.b == place.device.other and passage.a != place.device.port:
                yield Joint(place.part, passage.a)


def _finding(case: Case, ways: Supplies, store: str, behind: CameBy, taps: list[Joint]) -> Finding:
    parts = tuple(dict.fromkeys(joint.part for joint in taps))
    steps = [step for joint in taps for step in ways.way(behind, joint)]
    return Finding(
        NAME,
        Grade.FAULT,
        Says(
            "The cold of {taps} is drawn between {thing} and its check valve.",
            {"taps": named(case.drawing, parts), "thing": case.drawing.name(store)},
        ),
        components=(store, *parts),
        pipes=pipes_of(steps),
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Take the cold of every such outlet from before the check valve."""
    store = finding.components[0]
    ways = supplies(case)
    inlet = next(giver.inlet for giver in ways.givers if giver.part == store)
    behind = _behind_check(case, ways, inlet, _unchecked(ways))
    reached = ways.mains_water(ways.mains)
    if behind is None or inlet not in reached:
        return
    checks = [step for step in ways.way(reached, inlet) if ways.through(step, ways.checks)]
    if not checks:
        return
    before = checks[0].start
    fitting = Fitting(case.drawing)
    try:
        for joint in [joint for joint in _colds(case, ways) if joint in behind]:
            fitting.take_out(fitting.pipe_at(joint))
            free = before not in fitting.drawing.joined
            source = before if free else Joint(fitting.tee(before), "branch")
            fitting.pipe(source, joint)
    except EditError:
        return
    says = Says(
        "Take the cold of {taps} from before {check}.",
        {
            "taps": named(case.drawing, finding.components[1:]),
            "check": case.drawing.name(before.part),
        },
    )
    yield Proposal(says, fitting.drawing)

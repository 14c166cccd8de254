"""Heating water has no filter.

Flags: Pumped heating water with no dirt separator (in-line filter) on it. A strainer is no filter: it
    keeps grit from a valve and lets through the fine black sludge. Water that moves by gravity alone
    is not asked for one.
Why: Steel radiators rust a little from within, and the fine magnetic sludge ends where the ways are
    narrowest: the heat source's exchanger, the pump's bearings, the thermostatic valves. A filter
    takes it out of the water, where it can be let off once a year.
Remedy: Cut a dirt separator into the return, close by the heat source, after the last emitter's
    return, with valves by which it can be cleaned.
Source: BS 7593:2019, in-line filters.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.heating_water import fitting_joints, heating_bodies
from circuitcheck.checks.wording import upper
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word, spoken

NAME = "filter-absent"


def judge(case: Case) -> Verdict:
    """One piece of advice for each heat source or exchanger whose pumped water has no filter."""
    circuit, bodies = case.circuit, case.bodies
    heating = heating_bodies(case)
    if not heating:
        return Verdict()
    pumped = {bodies.of(place.node) for place in circuit.devices(Role.PUMPS)}
    filtered = {bodies.of(place.node) for place in circuit.devices(Role.FILTERS)}
    findings, sound = [], 0
    for heated in bodies.heated:
        if heated.body not in heating or heated.body not in pumped:
            continue
        if heated.body in filtered:
            sound += 1
            continue
        says = Says("{thing} has no filter on its water.", {"thing": upper(case.drawing.name(heated.part))})
        findings.append(Finding(NAME, Grade.ADVICE, says, (heated.part,)))
    return Verdict(tuple(findings), sound)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A dirt separator in the return; without valves where valves there would cut something off."""
    part = finding.components[0]
    for joint in fitting_joints(case, part)[:1]:
        for valves in (True, False):
            fitting = Fitting(case.drawing, case.lines)
            fitting.cut_in("dirt_separator", joint, data={"isolating_valves": valves})
            says = Says(
                "Cut a dirt separator {how} into the pipe on {thing}'s {port}.",
                {
                    "how": a_word("with valves") if valves else a_word("without valves"),
                    "thing": case.drawing.name(part),
                    "port": spoken(joint.port),
                },
            )
            yield Proposal(says, fitting.drawing)

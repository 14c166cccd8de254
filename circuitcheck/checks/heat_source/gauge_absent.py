"""Sealed circuit has no pressure gauge.

Flags: Sealed heated water that reaches no pressure gauge, none being built into the heat source.
    Water behind a heat exchanger is a body of its own and needs its own gauge.
Why: The gauge is the only thing that shows whether a sealed circuit is filled, whether it is losing
    water, and whether the vessel still takes up the swell: a needle that swings from low when cold to
    the safety valve's setting when hot tells of a dead vessel. Without one nobody can fill it right.
Remedy: Fit a gauge that covers at least 0 to 4 bar where it can be read from the filling point, best
    at the vessel's connection.
Source: BS 5449, sealed systems; taught in trade textbooks (City & Guilds Textbook: Plumbing, Book 1,
    2019).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.heating_water import fitting_joints, judge_without, sealed_heating_waters
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import spoken

NAME = "gauge-absent"


def judge(case: Case) -> Verdict:
    """One fault for each sealed heated water without a gauge."""
    return judge_without(
        case,
        NAME,
        Grade.FAULT,
        "{thing} has no pressure gauge on its sealed water: nothing shows whether it is filled.",
        [(water, bool(water.reached(Role.SHOWS_PRESSURE))) for water in sealed_heating_waters(case)],
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A gauge teed off by what heats the water, on its return's side first."""
    part = finding.components[0]
    for joint in fitting_joints(case, part):
        fitting = Fitting(case.drawing, case.lines)
        fitting.tee_off(joint, "pressure_gauge", "connection")
        says = Says(
            "Tee in a pressure gauge by {thing}, on its {port}.",
            {"thing": case.drawing.name(part), "port": spoken(joint.port)},
        )
        yield Proposal(says, fitting.drawing)

"""What a bypass should be set to, searched by solving anew, and one fitted where there is none."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import floor

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.circulation_cures import with_bypass
from circuitcheck.checks.solving import NO_FLOW_LPM, calling
from circuitcheck.checks.wording import figure
from circuitcheck.circuit.situations import RUN_ON
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.finding import Says

FIELD = "set_difference_kpa"
NEVER_OPENS_KPA = 1000.0
LEAST_KPA = 1.0
STEPS = 8
"""Halvings of the range in which a setting is looked for: to well under a kilopascal."""
NEW_PIPE_M = 0.5
"""What is reckoned for a new bypass's pipe on either side: common practice, no source."""

Counts = Callable[[Run], bool]


@dataclass(frozen=True, slots=True)
class Setting:
    """A set difference at which the heat source gets its water; `opens`: while heat is called, too."""

    kpa: float
    opens: bool


def at_run_on(run: Run) -> bool:
    """Whether a run is the pump's run-on."""
    return run.situation.name == RUN_ON


def while_pumping(run: Run) -> bool:
    """Whether some pump of its water runs."""
    return bool(set(run.body.pumps) & run.situation.running)


def setting_for(drawing: Drawing, bypass: str, heat: str, counts: Counts) -> Setting | None:
    """The middle between what stands across the bypass while heat is called and the highest setting at
    which the heat source still gets its least flow in the runs that count; that highest setting itself
    where nothing lies between. None where no setting gives it enough, or it can't be solved."""
    shut = _solved(drawing, bypass, NEVER_OPENS_KPA)
    if shut is None:
        return None
    across = [run.difference_kpa(bypass) or 0.0 for run in shut.runs if while_pumping(run)]
    lower = max((run.difference_kpa(bypass) or 0.0 for run in calling(shut)), default=0.0)
    enough, top = LEAST_KPA, max(across, default=0.0)
    if top <= LEAST_KPA or not _is_fed(_solved(drawing, bypass, enough), heat, counts):
        return None
    for _ in range(STEPS):
        middle = (enough + top) / 2
        if _is_fed(_solved(drawing, bypass, middle), heat, counts):
            enough = middle
        else:
            top = middle
    return _chosen(lower, enough)


def _chosen(lower: float, upper: float) -> Setting:
    """A setting that a scale can be read to, between the bounds where anything is."""
    for digits in (0, 1):
        middle = round((lower + upper) / 2, digits)
        if lower < middle <= upper:
            return Setting(middle, opens=False)
    return Setting(float(max(floor(upper), LEAST_KPA)), opens=True)


def _solved(drawing: Drawing, bypass: str, kpa: float) -> SolvedBody | None:
    """The body that the bypass stands in, with it set so; None where that can't be solved."""
    body = body_of(Case(set_field(drawing, bypass, FIELD, kpa)), bypass)
    if body is None or not body.is_known or any(run.failure is not None for run in body.runs):
        return None
    return body


def body_of(case: Case, part: str) -> SolvedBody | None:
    """The solved body that a part stands in."""
    return next((body for body in case.solved.bodies if body.place(part) is not None), None)


def _is_fed(body: SolvedBody | None, heat: str, counts: Counts) -> bool:
    if body is None:
        return False
    least = max(float(body.plant.value(heat, "minimum_flow_lpm") or 0.0), NO_FLOW_LPM)
    return all((run.flow_lpm(heat) or 0.0) >= least for run in body.runs if counts(run))


def with_setting(case: Case, bypass: str, heat: str, counts: Counts) -> Iterator[Proposal]:
    """A bypass set so that the heat source gets its water."""
    setting = setting_for(case.drawing, bypass, heat, counts)
    if setting is None or setting.kpa == case.value(bypass, FIELD):
        return
    template = "Set {bypass} to {set} kPa."
    if setting.opens:
        template = "Set {bypass} to {set} kPa, though it then opens while heat is called as well."
    says = Says(template, {"bypass": case.drawing.name(bypass), "set": figure(setting.kpa)})
    yield Proposal(says, set_field(case.drawing, bypass, FIELD, setting.kpa))


def with_new_bypass(case: Case, pumps: tuple[str, ...], heat: str, counts: Counts) -> Iterator[Proposal]:
    """A bypass beside the heat source and a pump, set so that the heat source gets its water."""
    for fitted in with_bypass(case, pumps, [heat]):
        new = set(fitted.drawing.components) - set(case.drawing.components)
        bypass = next(id for id in sorted(new) if fitted.drawing.components[id].kind.name == "bypass_valve")
        drawing = fitted.drawing
        for pipe in drawing.pipes_of(bypass):
            if drawing.pipes[pipe].data.get("length_m") is None:
                drawing = set_field(drawing, pipe, "length_m", NEW_PIPE_M)
                drawing = set_field(drawing, pipe, "bends", 1)
        setting = setting_for(drawing, bypass, heat, counts)
        if setting is None:
            continue
        template = (
            "Fit an automatic bypass valve from {start} to {finish}, set to {set} kPa, with {metres} m of pipe "
            "on either side of it."
        )
        values = {**fitted.says.values, "set": figure(setting.kpa), "metres": figure(NEW_PIPE_M)}
        yield Proposal(Says(template, values), set_field(drawing, bypass, FIELD, setting.kpa))

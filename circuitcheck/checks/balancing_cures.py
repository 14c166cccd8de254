"""Balancing valves set, or fitted, so that each emitter gets its design flow: settings by the solved network."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from math import floor, log10, sqrt

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.pipe_cures import stretch_of
from circuitcheck.checks.solving import called, has_design, through_lpm
from circuitcheck.checks.wording import figure, listed
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.figures.solved import Run
from circuitcheck.finding import Says
from circuitcheck.told import worded

KIND, FIELD = "balancing_valve", "kv_m3h"


def with_balancing(case: Case, run: Run) -> Iterator[Proposal]:
    """The balancing valves that are there set anew; then one fitted on each way besides that takes more
    than its design flow. What has valves of its own is set by them."""
    takers = [part for part in called(run) if has_design(case, part) and not _has_own_valves(case, part)]
    there = {part: valve for part in takers if (valve := balancing_of(case, part))}
    if there:
        yield from _set(case, case.drawing, there, {})
    work, new = Fitting(case.drawing, case.lines), dict[str, str]()
    for part in takers:
        if part not in there and through_lpm(run, part) > (run.body.design_lpm(part) or 0.0):
            try:
                new[part] = work.cut_in(KIND, outlet_of(case, part))
            except EditError:
                continue
    if new:
        yield from _set(case, work.drawing, there, new)


def outlet_of(case: Case, part: str) -> Joint:
    """The port at which the heating water leaves an emitter or coil."""
    return Joint(part, next(each.b for each in case.circuit.plans[part].passages if each.gives_heat))


def balancing_of(case: Case, taker: str) -> str:
    """The balancing valve in line with an emitter or coil; empty where there is none."""
    ends = {joint for each in case.circuit.plans[taker].passages if each.gives_heat
            for joint in (Joint(taker, each.a), Joint(taker, each.b))}  # fmt: skip
    for end in sorted(ends):
        pipe = case.drawing.joined.get(end)
        for each in () if pipe is None else stretch_of(case, pipe):
            for joint in case.drawing.pipes[each].joints:
                if case.drawing.components[joint.part].kind.name == KIND:
                    return joint.part
    return ""


def _has_own_valves(case: Case, part: str) -> bool:
    fields = {field.name for field in case.drawing.components[part].kind.own_fields}
    return "valves" in fields and bool(case.value(part, "valves"))


def _set(case: Case, drawing: Drawing, there: dict[str, str], new: dict[str, str]) -> Iterator[Proposal]:
    """These valves set to what gives their emitters the design flow."""
    settings = _settings(drawing, (*there.values(), *new.values()))
    if settings is None:
        return
    after, told = drawing, []
    for valve in there.values():
        if settings[valve] != case.value(valve, FIELD):
            told.append(
                worded("set {valve} to kv {kv}", valve=case.drawing.name(valve), kv=figure(settings[valve]))
            )
    for taker, valve in new.items():
        told.append(
            worded(
                "fit a balancing valve in the return of {taker}, set to kv {kv}",
                taker=case.drawing.name(taker),
                kv=figure(settings[valve]),
            )
        )
    for valve, kv in settings.items():
        after = set_field(after, valve, FIELD, kv)
    if told:
        text = listed(told)
        yield Proposal(Says("{steps}.", {"steps": text[0].upper() + text[1:]}), after)


def _settings(drawing: Drawing, valves: Iterable[str]) -> dict[str, float] | None:
    """The kv of each valve that gives its emitter the design flow, to two figures; None where the water
    can't be solved so. A valve without a kv is set by the solver."""
    free = drawing
    for valve in valves:
        free = set_field(free, valve, FIELD, None)
    case, found = Case(free), dict[str, float]()
    for valve in valves:
        body = next((each for each in case.solved.bodies if each.place(valve) is not None), None)
        place = None if body is None else body.place(valve)
        if body is None or place is None or not body.is_known or body.solution.failures:
            return None
        network = body.network.network
        quadratic = 0.0 if network is None else network.links[place].quadratic
        if quadratic <= 0:
            return None
        found[valve] = _two_figures(3600 * sqrt(1e5 / quadratic))
    return found


def _two_figures(value: float) -> float:
    return round(value, 1 - floor(log10(value)))

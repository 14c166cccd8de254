"""What cures of the discharge checks share: larger pipes, and a tundish or an end fitted."""

from __future__ import annotations

from collections.abc import Iterable

from circuitcheck.checks.case import Case
from circuitcheck.checks.discharging import outlet_mm, rules_apply, table
from circuitcheck.circuit.discharge import Discharge, Run
from circuitcheck.drawing.edits import set_field
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.finding import Finding
from circuitcheck.sizing.discharge import rows


def discharge_of(case: Case, finding: Finding) -> Discharge:
    """The discharge that a finding of this case judges by its valve."""
    valve = finding.components[0]
    return next(each for each in case.discharges if each.valve.part == valve)


def d2_least_mm(case: Case, discharge: Discharge) -> float | None:
    """The smallest pipe that the table allows after the tundish; None where it names none."""
    outlet, _ = outlet_mm(case, discharge)
    found = rows(table(case), outlet) if outlet is not None else ()
    return found[0].d2_mm if found else None


def enlarged(case: Case, discharge: Discharge, d2_mm: float | None = None) -> tuple[Drawing, tuple[str, ...]]:
    """Every pipe of a discharge as large as its place asks for, after the tundish at least `d2_mm`, and
    none smaller than one before it. Returns the drawing and the pipes that changed."""
    outlet, _ = outlet_mm(case, discharge)
    tabled = rules_apply(case, discharge)[0]
    least_after = d2_mm or (d2_least_mm(case, discharge) if tabled else outlet)
    sizes: dict[str, float] = {}
    for run in discharge.runs:
        _grow(case, sizes, run.before_tundish, outlet)
        _grow(case, sizes, run.after_tundish, least_after)
    drawing = case.drawing
    changed = []
    for pipe, size in sizes.items():
        if case.pipe_value(pipe, "size_mm") != size:
            drawing = set_field(drawing, pipe, "size_mm", size)
            changed.append(pipe)
    return drawing, tuple(changed)


def _grow(case: Case, sizes: dict[str, float], pipes: Iterable[str], least_mm: float | None) -> None:
    """Put the sizes of a stretch in: what each pipe is, or the least, or the size of the one before."""
    so_far = least_mm or 0.0
    for pipe in pipes:
        so_far = max(so_far, sizes.get(pipe, case.pipe_value(pipe, "size_mm") or 0.0))
        if so_far > 0:
            sizes[pipe] = so_far


def with_tundish(case: Case, discharge: Discharge, run: Run) -> Drawing:
    """A tundish in the pipe on the valve's outlet, and the pipes after it as large as the table asks."""
    fitting = Fitting(case.drawing, case.lines)
    by = Joint(discharge.valve.part, discharge.valve.device.other)
    tundish = fitting.cut_in("tundish", by)
    least = d2_least_mm(case, discharge)
    if least is not None:
        stub, *_ = run.pipes
        below = fitting.drawing.joined[Joint(tundish, "outlet")]
        after = dict.fromkeys((*run.pipes[1:], below, *([stub] if below == stub else [])))
        for pipe in after:
            if (fitting.drawing.pipes[pipe].data.get("size_mm") or 0.0) < least:
                fitting.set(pipe, "size_mm", least)
    return fitting.drawing


def with_end(case: Case, discharge: Discharge) -> Drawing | None:
    """A discharge end, after a tundish for a store's valve, on a free outlet or at the end of the pipe on
    it; None where the pipe goes on through other parts."""
    outlet = Joint(discharge.valve.part, discharge.valve.device.other)
    fitting = Fitting(case.drawing, case.lines)
    pipe = case.drawing.joined.get(outlet)
    if pipe is not None:
        stops = [id for id in discharge.stops_at if id != discharge.valve.part]
        plug = case.drawing.components.get(stops[0]) if len(stops) == 1 else None
        ends = {end.part for end in case.drawing.pipes[pipe].joints}
        if plug is not None and (len(plug.kind.ports) > 1 or plug.id not in ends):
            return None
        if plug is None and stops != [pipe]:
            return None
        fitting.take_out(pipe, *([plug.id] if plug else []))
    size, _ = outlet_mm(case, discharge)
    data = {} if size is None else {"size_mm": size}
    if discharge.for_store and rules_apply(case, discharge)[0]:
        tundish = fitting.hang("tundish", "inlet", outlet, pipe_data=data)
        outlet = Joint(tundish, "outlet")
        least = d2_least_mm(case, discharge)
        data = {} if least is None else {"size_mm": least}
    fitting.hang("discharge_end", "inlet", outlet, pipe_data=data)
    return fitting.drawing

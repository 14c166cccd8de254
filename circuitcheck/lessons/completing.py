"""A remedied drawing with the numbers that a cure leaves open: in a lesson the remedy is to be seen at work."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from circuitcheck.analysis import Analysis, analyse
from circuitcheck.checks.case import Case
from circuitcheck.cures import cures
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Grade
from circuitcheck.parts.kind import Role

ROUNDS = 5
"""What is filled in may be followed by another question."""
SHORT_M, BENDS = 1.0, 2
FIRST_KPA = 20
"""A bypass is set so first; where its check has something to say, as that has it."""
EMITTER_RISE_M = 1.0
"""How high above what heats it a new emitter hangs."""


def completed(drawing: Drawing, before: Drawing) -> Analysis:
    """The drawing with what a cure left open filled in, as one would measure it at a short new pipe, and what
    is new set as its check would have it. What was not known before stays so, and what cannot be filled in."""
    analysis = analyse(drawing)
    for _ in range(ROUNDS):
        filled = _filled(analysis, before)
        if filled is analysis.drawing:
            break
        analysis = analyse(filled)
    return analysis


def _filled(analysis: Analysis, before: Drawing) -> Drawing:
    drawing = analysis.drawing
    case = Case(drawing)
    for finding in analysis.findings:
        for name in finding.missing:
            id, _, field = name.partition(".")
            known = before.pipes.get(id) or before.components.get(id)
            if known is not None and known.data.get(field) is None:
                continue  # it was not known before, and no cure opened it
            value = _FIELDS.get(field, _nothing)(case, id)
            if value is not None:
                try:
                    drawing = set_field(drawing, id, field, value)
                except EditError:
                    continue
    if drawing is not analysis.drawing:
        return drawing
    new = set(drawing.components) - set(before.components)
    for finding in analysis.findings:
        if finding.grade is not Grade.UNANSWERED and finding.components[:1] and finding.components[0] in new:
            for cure in cures(analysis, finding):
                return cure.drawing
    return drawing


def _nothing(case: Case, id: str) -> None:
    """What is not known how to fill in stays open."""


def _size(case: Case, pipe: str) -> Any:
    """As large as the pipes it is joined to."""
    parts = {end.part for end in case.drawing.pipes[pipe].joints}
    beside = (case.drawing.pipes[each] for part in parts for each in case.drawing.pipes_of(part))
    return max((size for each in beside if (size := each.data.get("size_mm"))), default=None)


def _rise(case: Case, pipe: str) -> float:
    """Between the heights of its ends; level where those are not known, but for what gives heat, which hangs
    higher."""
    ends = case.drawing.pipes[pipe].joints
    if len(ends) == 2:
        told = case.heights.difference(ends[0].part, ends[1].part)
        if told is not None:
            return round(told, 3)
        emits = case.circuit.parts_with(Role.EMITS)
        up = [part.part in emits for part in ends]
        if up[0] is not up[1]:
            return EMITTER_RISE_M if up[1] else -EMITTER_RISE_M
    return 0.0


def _length(case: Case, pipe: str) -> float:
    return round(max(SHORT_M, abs(_rise(case, pipe)) + 0.2), 3)


_FIELDS: dict[str, Callable[[Case, str], Any]] = {
    "length_m": _length,
    "bends": lambda case, pipe: BENDS,
    "rise_m": _rise,
    "size_mm": _size,
    "material": lambda case, pipe: "copper",
    "set_difference_kpa": lambda case, part: FIRST_KPA,
}

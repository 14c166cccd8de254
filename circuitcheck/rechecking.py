"""Judges one drawing after another: after an edit only what it can bear on is asked again."""

from __future__ import annotations

import copy
from collections.abc import Mapping
from dataclasses import replace
from functools import cache, lru_cache
from typing import Any

from circuitcheck.analysis import Analysis, analysis_of, answers_of
from circuitcheck.checks.answering import Answer, answer, unknown_ways
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.depending import LAYOUT, MEASURED, circuit_words, words_of, words_of_check
from circuitcheck.drawing.difference import Difference, difference
from circuitcheck.drawing.labelled import carried_on
from circuitcheck.drawing.routing import Routes, routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import NameTuple

LABELS = "label_key"
"""Who says this compares labels with one another; all others only call parts by them."""
OF_HEIGHTS = frozenset({"height_m", "rise_m"})


class Rechecker:
    """What was found of the drawing judged last. It belongs to one thread."""

    def __init__(self) -> None:
        self._case: Case | None = None
        self._answers: dict[str, Answer] = {}
        self._analysis: Analysis | None = None
        self._taken: dict[str, str] | None = None

    def analyse(self, drawing: Drawing, lines: Routes | None = None) -> Analysis:
        """The same as `analysis.analyse`; `lines` are the pipes' lines where they are known already."""
        before, known = self._case, self._analysis
        if before is None or known is None:
            return self._all(drawing, lines)
        change = difference(before.drawing, drawing)
        if change.joins_anew:
            return self._all(drawing, lines, before)
        if change.is_nothing:
            self._case = _carried(before, drawing, change, lines)
            self._analysis = replace(known, drawing=drawing)
            return self._analysis
        return self._some(before, known, drawing, change, lines)

    def _all(self, drawing: Drawing, lines: Routes | None, before: Case | None = None) -> Analysis:
        case = Case(drawing)
        if before is not None:
            _carry_layout(before, case, lines)
        elif lines is not None:
            case.__dict__["lines"] = lines
        self._case, self._answers = case, answers_of(case)
        self._analysis = analysis_of(case, self._answers)
        self._taken = None
        if before is not None:
            before.let_go()
        return self._analysis

    def _some(
        self, before: Case, known: Analysis, drawing: Drawing, change: Difference, lines: Routes | None
    ) -> Analysis:
        case = _carried(before, drawing, change, lines)
        old_names = [before.drawing.name(id) for id in change.renamed]
        measured = change.moved and drawing.sheet.get("metres_per_square") is not None
        touched = _touched(change.fields, moved=change.moved, measured=measured)
        asked = {
            name: answer(check, case)
            for name, check in checks().items()
            if name in touched or _calls(name, check.topic, self._answers[name], old_names)
        }
        self._case = case
        taken = self._taken_now(known, case, drawing, change)
        alike = all(_same(self._answers[name], new) for name, new in asked.items())
        if alike and taken is known.taken and "rule_book" not in change.fields:
            self._analysis = replace(known, drawing=drawing)
            return self._analysis
        self._answers = {**self._answers, **asked}
        self._analysis = analysis_of(case, self._answers, taken)
        return self._analysis

    def _taken_now(self, known: Analysis, case: Case, drawing: Drawing, change: Difference) -> NameTuple:
        """All usual values taken. One that was taken before is still taken, unless it is given now."""
        if self._taken is None:
            self._taken = {_field_in(entry): entry for entry in known.taken}
        taken = self._taken
        gone = [
            field
            for field in change.named_fields
            if field in taken and not _is_left_out(drawing, taken[field])
        ]
        for field in gone:
            del taken[field]
        new = {field: entry for entry in case.taken if taken.get(field := _field_in(entry)) != entry}
        if not gone and not new:
            return known.taken
        taken |= new
        return tuple(sorted(taken.values()))


@cache
def _words(topic: str, name: str) -> frozenset[str]:
    """Every word of a check's code."""
    return words_of_check(f"circuitcheck.checks.{topic}.{name.replace('-', '_')}")


@lru_cache(maxsize=256)
def _touched(fields: frozenset[str], *, moved: bool, measured: bool) -> frozenset[str]:
    """The checks that a change of these data fields can bear on; `moved`: and that something lies elsewhere;
    `measured`: on a sheet that tells lengths. At every step of a drag it is the same few."""
    causes = fields | (LAYOUT if moved else frozenset()) | (MEASURED if measured else frozenset())
    return frozenset(
        name for name, check in checks().items() if not _words(check.topic, name).isdisjoint(causes)
    )


def _calls(name: str, topic: str, was: Answer, old_names: list[str]) -> bool:
    """Whether what a check says may call a part by one of these names."""
    if not old_names:
        return False
    return LABELS in _words(topic, name) or any(_names(was, old) for old in old_names)


def _names(was: Answer, name: str) -> bool:
    """Whether a sentence may call a part by that name. The name may begin with a capital in it, and
    braces are doubled where a sentence is made of pieces."""
    rest = name[1:]
    if not rest or "{" in rest or "}" in rest:
        return bool(was.findings)
    return any(
        rest in finding.says.template
        or any(rest in value for value in finding.says.values.values() if isinstance(value, str))
        for finding in was.findings
    )


def _field_in(entry: str) -> str:
    """The field, as `id.field`, of an entry of those taken."""
    return entry.partition(" = ")[0]


def _same(one: Answer, two: Answer) -> bool:
    return one is two or one == two


def _carried(before: Case, drawing: Drawing, change: Difference, lines: Routes | None) -> Case:
    """A case of the next drawing with what is known of the circuit, which the change does not touch."""
    case = Case(drawing)
    if "heights" in before.__dict__ and change.fields.isdisjoint(OF_HEIGHTS):
        case.__dict__["heights"] = before.heights.carried(case)
    if circuit_words().isdisjoint(change.fields):
        for name in ("circuit", "bodies", "flow"):
            if name in before.__dict__:
                case.__dict__[name] = copy.copy(before.__dict__[name])
        if "circuit" in case.__dict__:
            case.circuit.drawing = drawing
            case.circuit.kept = _still_so(before.circuit.kept, change.fields)
            case.rests_as(before)
            case.kept(
                "unknown ways",
                lambda: before.kept("unknown ways", lambda: unknown_ways(drawing, case.told_parts)),
            )
            if "contents" in before.__dict__ and not change.of_pipes and not change.moved:
                case.__dict__["contents"] = before.contents.carried(case, change.named_fields)
        for name in ("bodies", "flow"):
            if name in case.__dict__:
                case.__dict__[name].circuit = case.circuit
        if not change.of_pipes and not change.moved and "told_pipes" in before.__dict__:
            case.__dict__["told_pipes"] = before.told_pipes
        if "discharges" in before.__dict__:
            case.__dict__["discharges"] = before.discharges
    _carry_layout(before, case, lines)
    return case


def _still_so(kept: Mapping[str, Any], fields: frozenset[str]) -> dict[str, Any]:
    """What was kept of a circuit, without what was worked out by code that names one of these fields."""
    if not fields:
        return dict(kept)
    return {what: each for what, each in kept.items() if words_of(what.partition(" ")[0]).isdisjoint(fields)}


def _carry_layout(before: Case, case: Case, lines: Routes | None) -> None:
    """Carry the lines, and the indexes of the layout and of the labels, on to the next drawing."""
    if "labelled" in before.__dict__:
        index = before.__dict__.pop("labelled")
        case.__dict__["labelled"] = carried_on(index, before.drawing, case.drawing)
    if lines is None and "lines" in before.__dict__:
        lines = routes(case.drawing, before.lines)
    if lines is None:
        return
    case.__dict__["lines"] = lines
    if "lying" in before.__dict__:
        case.__dict__["lying"] = before.__dict__.pop("lying").after(lines)


def _is_left_out(drawing: Drawing, entry: str) -> bool:
    """Whether the field of a `taken` entry is still left out in a drawing that holds its owner."""
    owner, _, field = entry.partition(" = ")[0].rpartition(".")
    if owner == "design":
        return field not in drawing.design
    item = drawing.components.get(owner) or drawing.pipes.get(owner)
    return item is not None and field not in item.data

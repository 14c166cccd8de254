"""Two drawings compared, as text for a person, as JSON, and as a table that is safe in a spreadsheet."""

from __future__ import annotations

import csv
import io
import json
import textwrap
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.parts_list import PartsList
from circuitcheck.finding import Finding
from circuitcheck.report.as_json import escaped
from circuitcheck.report.as_text import MARKS, WIDTH
from circuitcheck.report.parts import Row, list_objects, row_lines, rows
from circuitcheck.report.plain import cell, plain
from circuitcheck.review.comparing import Comparison, Remarks, compare
from circuitcheck.review.findings_between import FindingsBetween, findings_between
from circuitcheck.review.words import called, change_words, field_of, field_words, repiped_words, value_words
from circuitcheck.review.work_lists import Altered, WorkLists, work_lists
from circuitcheck.shipped import version

COLUMNS = (
    "section",
    "what",
    "old_id",
    "new_id",
    "item",
    "field",
    "old",
    "new",
    "count",
    "length_m",
    "details",
)


@dataclass(frozen=True)
class Compared:
    """Two files' drawings and all that differs between them."""

    old_file: str
    new_file: str
    found: Comparison
    findings: FindingsBetween
    work: WorkLists
    not_judged: int = 0

    @property
    def is_nothing(self) -> bool:
        """Whether the drawings hold the same and the same is found in them."""
        between = self.findings
        return self.found.is_nothing and not (between.went or between.came or between.regraded)


def compared(old_file: str, old: Drawing, new_file: str, new: Drawing) -> Compared:
    """Compare two drawings and judge both."""
    found = compare(old, new)
    before, after = analyse(old), analyse(new)
    between = findings_between(found, before.findings, after.findings)
    lacking = len(before.not_judged) + len(after.not_judged)
    return Compared(old_file, new_file, found, between, work_lists(found), lacking)


def as_text(told: Compared) -> str:
    """What differs, for reading."""
    found = told.found
    lines = [f"Old: {plain(told.old_file)}", f"New: {plain(told.new_file)}"]
    if told.is_nothing:
        return "\n".join([*lines, "", "The drawings hold the same, and the same is found in them.", ""])
    for title, said in _sections(found):
        if said:
            lines += ["", title]
            for each in said:
                lines += _wrapped(each, "  ")
    for title, counted in (("Strip out", told.work.strip_out), ("Fit", told.work.fit)):
        lines += ["", title, *(_list_lines(counted) or ["  Nothing."])]
    lines += [line for each in told.work.altered for line in _wrapped(altered_words(each), "  ")]
    lines += ["", "Findings"]
    between = list(finding_lines(told.findings))
    for each in between or ["The same is found in both."]:
        lines += _wrapped(each, "  ")
    return "\n".join(lines) + "\n"


def _sections(found: Comparison) -> Iterator[tuple[str, list[str]]]:
    yield "Removed", [called(found.old, id) for id in found.removed]
    yield "Fitted", [called(found.new, id) for id in found.fitted]
    yield (
        "Re-piped",
        [f"{called(found.new, each.new_id)}: {repiped_words(found, each)}" for each in found.repiped],
    )
    yield (
        "Changed",
        [
            f"{called(found.new, each.new_id) if each.new_id else 'the drawing'}: {change_words(found, each)}"
            for each in found.changed
        ],
    )
    yield "Called by another id", [f"{mine} is now {its}" for mine, its in found.renumbered]
    yield "Moved on the sheet", [called(found.new, its) for _, its in found.moved]
    yield "Said of the drawing", list(_remark_lines(found))


def _remark_lines(found: Comparison) -> Iterator[str]:
    for what, remarks in _remarks(found).items():
        thing = {"notes": "note", "acceptances": "acceptance", "reviews": "review record"}[what]
        for verb, names in (("new", remarks.came), ("gone", remarks.gone), ("changed", remarks.changed)):
            yield from (f"{thing} {verb}: {name}" for name in names)


def altered_words(each: Altered) -> str:
    """A pipe that stays but is cut or made longer, in a sentence."""
    if each.old_m is None or each.new_m is None:
        return f"Pipe {each.new_id} stays and joins something else; its length is not known in both."
    change = each.new_m - each.old_m
    verb = "made longer" if change > 0 else "cut shorter"
    return f"Pipe {each.new_id} stays, {verb} by {abs(change):.2f} m."


def finding_lines(between: FindingsBetween) -> Iterator[str]:
    """What came and went, a line for each; a mark stands for each grade."""
    for finding in between.went:
        yield f"Went: {_finding_words(finding)}"
    for finding in between.came:
        yield f"Came: {_finding_words(finding)}"
    for old, new in between.regraded:
        yield f"Was {old.grade.value}: {_finding_words(new)}"


def _finding_words(finding: Finding) -> str:
    return f"{MARKS[finding.grade]} {finding.grade.value}, {finding.check}: {finding.message}"


def _list_lines(counted: PartsList) -> list[str]:
    return [line for row in rows(counted) for line in row_lines(row)]


def as_json(told: Compared) -> str:
    """One object; the same drawings give the same text."""
    found, between, work = told.found, told.findings, told.work
    whole = {
        "program": f"circuitcheck {version()}",
        "old": {"file": told.old_file, "title": found.old.title},
        "new": {"file": told.new_file, "title": found.new.title},
        "same": told.is_nothing,
        "removed": [_item(found.old, id) for id in found.removed],
        "fitted": [_item(found.new, id) for id in found.fitted],
        "moved": [_pair(*each) for each in found.moved],
        "renumbered": [_pair(*each) for each in found.renumbered],
        "changed": [
            {**_pair(each.old_id, each.new_id), "field": each.field, "old": each.old, "new": each.new}
            for each in found.changed
        ],
        "repiped": [
            {
                **_pair(each.old_id, each.new_id),
                "old_ends": list(each.old_ends),
                "new_ends": list(each.new_ends),
            }
            for each in found.repiped
        ],
        **{name: _remarks_object(each) for name, each in _remarks(found).items()},
        "strip_out": list_objects(work.strip_out),
        "fit": list_objects(work.fit),
        "altered": [
            {**_pair(each.old_id, each.new_id), "old_m": each.old_m, "new_m": each.new_m}
            for each in work.altered
        ],
        "findings": {
            "went": [_finding(each) for each in between.went],
            "came": [_finding(each) for each in between.came],
            "regraded": [{"old": _finding(old), "new": _finding(new)} for old, new in between.regraded],
            "stayed": len(between.stayed),
        },
    }
    return escaped(json.dumps(whole, ensure_ascii=False, indent=1, default=_plain_map) + "\n")


def _plain_map(value: Any) -> Any:
    if isinstance(value, Mapping):
        return dict(value)
    raise TypeError(f"{type(value)} is nothing that a drawing holds")


def _pair(old_id: str, new_id: str) -> dict[str, Any]:
    return {"old_id": old_id or None, "new_id": new_id or None}


def _item(drawing: Drawing, id: str) -> dict[str, Any]:
    return {"id": id, "kind": kind_of(drawing, id), "name": drawing.name(id)}


def kind_of(drawing: Drawing, id: str) -> str:
    """The kind of a part or control as the format names it, or `pipe`."""
    if id in drawing.pipes:
        return "pipe"
    return drawing.components[id].kind.name if id in drawing.components else drawing.controls[id].kind.name


def _remarks(found: Comparison) -> dict[str, Remarks]:
    return {"notes": found.notes, "acceptances": found.acceptances, "reviews": found.reviews}


def _remarks_object(each: Remarks) -> dict[str, list[str]]:
    return {"came": list(each.came), "gone": list(each.gone), "changed": list(each.changed)}


def _finding(finding: Finding) -> dict[str, Any]:
    told = {
        "check": finding.check,
        "grade": finding.grade.value,
        "message": finding.message,
        "components": list(finding.components),
        "pipes": list(finding.pipes),
    }
    return {**told, "would_be": finding.would_be.value} if finding.would_be else told


def as_csv(told: Compared) -> str:
    """A header and one row for each thing that differs, each line of the lists, each finding."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for row in (*_difference_rows(told.found), *_work_rows(told.work), *_finding_rows(told.findings)):
        writer.writerow([cell(str(row.get(name, ""))) for name in COLUMNS])
    return out.getvalue()


def _difference_rows(found: Comparison) -> Iterator[Mapping[str, object]]:
    section = {"section": "difference"}
    for id in found.removed:
        yield {**section, "what": "removed", "old_id": id, "item": found.old.name(id)}
    for id in found.fitted:
        yield {**section, "what": "fitted", "new_id": id, "item": found.new.name(id)}
    for each in found.repiped:
        ids = {"old_id": each.old_id, "new_id": each.new_id, "item": found.new.name(each.new_id)}
        ends = {"old": " ".join(each.old_ends), "new": " ".join(each.new_ends)}
        yield {**section, "what": "re-piped", **ids, **ends}
    for change in found.changed:
        field = field_of(found, change)
        yield {
            **section,
            "what": "changed",
            "old_id": change.old_id,
            "new_id": change.new_id,
            "item": found.new.name(change.new_id) if change.new_id else "",
            "field": change.field,
            "old": value_words(field, change.old),
            "new": value_words(field, change.new),
            "details": field_words(found, change),
        }
    for what, pairs in (("renumbered", found.renumbered), ("moved", found.moved)):
        for mine, its in pairs:
            yield {**section, "what": what, "old_id": mine, "new_id": its, "item": found.new.name(its)}
    for name, remarks in _remarks(found).items():
        for what, names in _remarks_object(remarks).items():
            yield from ({"section": name, "what": what, "item": each} for each in names)


def _work_rows(work: WorkLists) -> Iterator[Mapping[str, object]]:
    for section, counted in (("strip out", work.strip_out), ("fit", work.fit)):
        for row in rows(counted):
            yield {"section": section, "what": row.section, **_row(row)}
    for each in work.altered:
        known = {"old": _metres(each.old_m), "new": _metres(each.new_m)}
        yield {
            "section": "altered",
            "old_id": each.old_id,
            "new_id": each.new_id,
            "field": "length_m",
            **known,
        }


def _row(row: Row) -> dict[str, object]:
    details = "; ".join(each for each in (row.details, row.lacking and f"not known: {row.lacking}") if each)
    return {
        "item": f"{row.item} {row.size}".strip(),
        "count": "" if row.count is None else row.count,
        "length_m": _metres(row.length_m),
        "details": "; ".join(each for each in (details, row.short_of, " ".join(row.ids)) if each),
    }


def _finding_rows(between: FindingsBetween) -> Iterator[Mapping[str, object]]:
    section = {"section": "finding"}
    for what, findings in (("went", between.went), ("came", between.came)):
        for each in findings:
            grade = {"old": each.grade.value} if what == "went" else {"new": each.grade.value}
            yield {**section, "what": what, "item": each.check, **grade, "details": each.message}
    for old, new in between.regraded:
        grades = {"old": old.grade.value, "new": new.grade.value}
        yield {**section, "what": "regraded", "item": new.check, **grades, "details": new.message}


def _metres(value: float | None) -> str:
    return "" if value is None else f"{value:.2f}"


def _wrapped(text: str, indent: str) -> list[str]:
    return textwrap.wrap(plain(text), WIDTH, initial_indent=indent, subsequent_indent=f"{indent}    ")

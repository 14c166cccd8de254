"""Findings and the parts list as one table, safe to open in a spreadsheet."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator

from circuitcheck.report.document.content import Content
from circuitcheck.report.plain import cell

COLUMNS = (
    "section",
    "grade",
    "item",
    "size",
    "count",
    "length_m",
    "bends",
    "says",
    "where",
    "not_known",
    "accepted",
)


def as_csv(content: Content) -> bytes:
    """The file: a header, what the table is of, a row for each finding, each check not judged, each part."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for row in _rows(content):
        writer.writerow([cell(each) for each in row])
    # Without the mark a spreadsheet takes the letters of another alphabet for granted.
    return b"\xef\xbb\xbf" + out.getvalue().encode("utf-8")


def _rows(content: Content) -> Iterator[tuple[str, ...]]:
    blank = ("",) * 4
    for name, text in (
        ("Title", content.title),
        ("File", content.file),
        ("Made on", content.made_on),
        ("Program", content.program),
        ("Rule book", content.rule_book),
        ("Verdict", content.judgement.verdict),
        ("Review", content.review.state),
    ):
        yield ("document", "", name, *blank, text, "", "", "")
    for found in content.findings:
        where, missing = "; ".join(found.where), "; ".join(found.missing)
        yield (
            "finding",
            found.grade_words,
            found.title,
            *blank,
            found.message,
            where,
            missing,
            found.accepted,
        )
    for check, why in content.judgement.not_judged:
        yield ("not judged", "", check, *blank, why, "", "", "")
    for row in content.parts:
        yield (
            row.section,
            "",
            row.item,
            row.size,
            "" if row.count is None else str(row.count),
            "" if row.length_m is None else f"{row.length_m:.2f}",
            "" if row.bends is None else str(row.bends),
            row.details,
            " ".join(row.ids),
            "; ".join(each for each in (row.lacking, row.short_of) if each),
            "",
        )

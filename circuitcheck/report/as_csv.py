"""The answers as a table, one row a finding, safe to open in a spreadsheet."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator, Sequence

from circuitcheck.report.checked import Checked
from circuitcheck.report.plain import cell

COLUMNS = (
    "file",
    "check",
    "grade",
    "would_be",
    "message",
    "components",
    "pipes",
    "shut",
    "alone",
    "missing",
    "accepted",
)


def as_csv(files: Sequence[Checked]) -> str:
    """A header and one row for each finding; a file that can't be read has a row with what is wrong."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for row in _rows(files):
        writer.writerow([cell(text) for text in row])
    return out.getvalue()


def _rows(files: Sequence[Checked]) -> Iterator[tuple[str, ...]]:
    for each in files:
        for error in each.error:
            yield (each.file, "", "error", "", error, "", "", "", "", "", "")
        for told in each.told:
            finding = told.finding
            witness = finding.witness
            yield (
                each.file,
                finding.check,
                finding.grade.value,
                finding.would_be.value if finding.would_be else "",
                finding.message,
                " ".join(finding.components),
                " ".join(finding.pipes),
                " ".join(witness.shut) if witness else "",
                " ".join(witness.alone) if witness else "",
                " ".join(finding.missing),
                "yes" if told.accepted else "no",
            )

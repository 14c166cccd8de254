"""The answers as a table, one row a finding, safe to open in a spreadsheet."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Iterator, Sequence

from circuitcheck.report.as_text import Parts
from circuitcheck.report.checked import Checked, Told
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
    "reason",
    "accepted_by",
    "until",
)

_BLANK = ("", "", "", "", "")


def as_csv(files: Iterable[Checked]) -> str:
    """A header and one row for each finding; a file that can't be read has a row with what is wrong, and
    each review record a row, of the grade `record`, with how it stands."""
    return "".join(whole(lambda: (one(each) for each in files)))


def one(checked: Checked) -> str:
    """The rows of one file."""
    return _written(_rows(checked))


def whole(parts: Parts) -> Iterator[str]:
    """The header, and the parts in their order."""
    yield _written([COLUMNS])
    yield from parts()


def _written(rows: Iterable[Sequence[str]]) -> str:
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    for row in rows:
        writer.writerow([cell(text) for text in row])
    return out.getvalue()


def _rows(each: Checked) -> Iterator[tuple[str, ...]]:
    for error in each.error:
        yield (each.file, "", "error", "", error, *_BLANK, "", "", "", "")
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
            *_acceptance(told),
        )
    for held in each.records:
        from circuitcheck.review.words import held_words, record_title

        text = f"{record_title(held)}. {held_words(held)}"
        yield (each.file, "", "record", "", text, *_BLANK, "", "", "", "")


def _acceptance(told: Told) -> tuple[str, str, str]:
    if told.acceptance is None:
        return "", "", ""
    return told.acceptance.reason, told.acceptance.author, told.acceptance.until or ""

"""The errand of `check`: judge a file, and tell it in the form that is asked for."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from datetime import date
from pathlib import Path

from circuitcheck.folders.errand import Made
from circuitcheck.report import as_csv, as_json, as_sarif, as_text
from circuitcheck.report.checked import Checked, check_content
from circuitcheck.review.acceptances import weight


@dataclass(frozen=True, slots=True)
class File:
    """A file to judge."""

    source: Path


@dataclass(frozen=True, slots=True)
class Answer:
    """One file as it is shown in the form asked for, and what is counted of it.

    `heaviest`: the rank of the heaviest grade that counts, leniently and strictly; None where nothing does.
    """

    shown: str
    rule_book: str | None
    is_unread: bool
    findings: int
    not_judged: int
    crashed: int
    heaviest: tuple[int | None, int | None]


@dataclass(frozen=True, slots=True)
class Checking:
    """Judge on that day. `form` is text, json, csv or sarif."""

    form: str
    today: date
    with_cures: bool = False
    colour: bool = False

    def bound(self) -> Mapping[str, str]:
        """All that an answer depends on beside the file's bytes and the program."""
        return {
            "the command": "check",
            "the date": self.today.isoformat(),
            "--as": self.form,
            "--cures": str(self.with_cures),
            "the use of colour": str(self.colour),
        }

    def made(self, data: bytes, task: File) -> Made:
        """The answer for a file's bytes; one in which the program failed somewhere is not kept."""
        checked = check_content(data, str(task.source), self.today, with_cures=self.with_cures)
        return Made(self._told(checked), is_lasting=not checked.crashed)

    def put(self, made: Made, task: File) -> Made:
        """Nothing to put anywhere."""
        return made

    def refused(self, task: File, reason: str) -> str:
        """The answer for a file that was not judged."""
        return self._told(Checked(str(task.source), "", (reason,), ()))

    def stands(self, answer: str, task: File) -> bool:
        """An answer that was kept tells of the file alone."""
        return True

    def _told(self, checked: Checked) -> str:
        answer = Answer(
            self._shown(checked),
            checked.rule_book,
            bool(checked.error),
            len(checked.told),
            len(checked.not_judged),
            len(checked.crashed),
            (_heaviest(checked, strict=False), _heaviest(checked, strict=True)),
        )
        return json.dumps(asdict(answer))

    def _shown(self, checked: Checked) -> str:
        match self.form:
            case "json":
                return as_json.one(checked)
            case "csv":
                return as_csv.one(checked)
            case "sarif":
                return as_sarif.one(checked)
            case _:
                return as_text.one(checked, colour=self.colour)


def answer_of(text: str) -> Answer:
    """The answer that `Checking` told."""
    told = json.loads(text)
    lenient, strict = told.pop("heaviest")
    return Answer(heaviest=(lenient, strict), **told)


def _heaviest(checked: Checked, *, strict: bool) -> int | None:
    grades = (weight(told.finding, accepted=told.accepted, strict=strict) for told in checked.told)
    return min((grade.rank for grade in grades if grade is not None), default=None)

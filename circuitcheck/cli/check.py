"""`circuitcheck check`: what is wrong with drawings, or with every drawing in a folder."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Iterable, Iterator, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from circuitcheck.cli.options import add_day, add_ways, faultless, ways
from circuitcheck.cli.printing import counted, say, show
from circuitcheck.cli.status import FAILED, FOUND, SOUND
from circuitcheck.cli.walking import drawings

if TYPE_CHECKING:
    from circuitcheck.folders.checking import Answer


def add(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("paths", nargs="+", metavar="PATH", type=Path, help="a drawing or a folder of them")
    parser.add_argument("--as", dest="form", choices=("text", "json", "csv", "sarif"), default="text")
    parser.add_argument(
        "--at-least",
        choices=("danger", "fault", "advice"),
        default="fault",
        help="the least grade that counts against the exit status (fault)",
    )
    parser.add_argument(
        "--strict", action="store_true", help="count unanswered findings as what they would be"
    )
    add_day(parser, "the day acceptances are judged on")
    add_ways(parser)
    parser.add_argument(
        "--cures", action="store_true", help="say which edits would put a finding right, each tried first"
    )
    parser.set_defaults(command=_run)


def _run(parsed: argparse.Namespace) -> int:
    files, faults = drawings(parsed.paths)
    for fault in faults:
        say(fault)
    if not files:
        return FAILED
    return faultless(lambda: _check(parsed, files, is_faulty=bool(faults)))


def _check(parsed: argparse.Namespace, files: Sequence[Path], *, is_faulty: bool) -> int:
    from circuitcheck.finding import Grade
    from circuitcheck.folders.checking import Checking, File, answer_of
    from circuitcheck.folders.running import Run

    is_coloured = parsed.form == "text" and sys.stdout.isatty() and "NO_COLOR" not in os.environ
    errand = Checking(parsed.form, parsed.on or date.today(), parsed.cures, is_coloured)
    tasks = [File(file) for file in files]
    with Run(errand, tasks, ways(parsed, "check", parsed.paths), say) as answers:
        sums = Sums(Grade(parsed.at_least).rank, is_strict=parsed.strict)
        for each in answers:
            sums.add(answer_of(each))
        for text in _whole(parsed.form, lambda: (answer_of(each).shown for each in answers), sums.books):
            show(text)
    say(sums.words)
    if is_faulty or sums.unread or sums.crashed:
        return FAILED
    return FOUND if sums.counts else SOUND


def _whole(form: str, parts: Callable[[], Iterator[str]], books: Iterable[str]) -> Iterator[str]:
    """The output, by parts: never more than one file's in memory."""
    from circuitcheck.report import as_csv, as_json, as_sarif, as_text

    match form:
        case "json":
            return as_json.whole(parts, books)
        case "csv":
            return as_csv.whole(parts)
        case "sarif":
            return as_sarif.whole(parts)
        case _:
            return as_text.whole(parts)


class Sums:
    """What is counted of all files. `counts`: whether a finding of that rank or heavier counts."""

    def __init__(self, least: int, *, is_strict: bool) -> None:
        self._least, self._is_strict = least, is_strict
        self.files = self.findings = self.not_judged = self.unread = self.crashed = 0
        self.counts = False
        self.books: set[str] = set()

    def add(self, answer: Answer) -> None:
        """Count one file."""
        self.files += 1
        self.findings += answer.findings
        self.not_judged += answer.not_judged
        self.unread += answer.is_unread
        self.crashed += answer.crashed
        if answer.rule_book:
            self.books.add(answer.rule_book)
        heaviest = answer.heaviest[self._is_strict]
        self.counts |= heaviest is not None and heaviest <= self._least

    @property
    def words(self) -> str:
        """The counts in a sentence."""
        told = [
            counted(self.files, "drawing"),
            counted(self.findings, "finding"),
            f"{counted(self.not_judged, 'check')} not judged",
        ]
        if self.unread:
            told.append(f"{counted(self.unread, 'file')} not read")
        if self.crashed:
            told.append(f"{counted(self.crashed, 'check')} failed inside the program")
        return ", ".join(told)

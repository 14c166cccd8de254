"""`circuitcheck check`: what is wrong with drawings, or with every drawing in a folder."""

from __future__ import annotations

import argparse
import sys
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from circuitcheck.cli.options import jobs
from circuitcheck.cli.printing import say, show
from circuitcheck.cli.status import FAILED, FOUND, SOUND
from circuitcheck.cli.walking import drawings
from circuitcheck.cli.working import at_once

if TYPE_CHECKING:
    from circuitcheck.report.checked import Checked


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
    parser.add_argument(
        "--on",
        type=date.fromisoformat,
        default=None,
        metavar="DATE",
        help="the day acceptances are judged on",
    )
    parser.add_argument("--jobs", type=jobs, default=1, metavar="N", help="check that many files at a time")
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
    checked = _checked(files, parsed.on or date.today(), parsed.jobs, with_cures=parsed.cures)
    show(_shown(checked, parsed.form))
    say(_summary(checked))
    if faults or any(each.error or each.crashed for each in checked):
        return FAILED
    return FOUND if _counting(checked, parsed.at_least, strict=parsed.strict) else SOUND


def _checked(files: list[Path], today: date, jobs: int, *, with_cures: bool) -> list[Checked]:
    from functools import partial

    from circuitcheck.report.checked import check_file

    return at_once(partial(check_file, today=today, with_cures=with_cures), files, jobs)


def _shown(checked: list[Checked], form: str) -> str:
    if form == "json":
        from circuitcheck.report.as_json import as_json

        return as_json(checked)
    if form == "csv":
        from circuitcheck.report.as_csv import as_csv

        return as_csv(checked)
    if form == "sarif":
        from circuitcheck.report.as_sarif import as_sarif

        return as_sarif(checked)
    import os

    from circuitcheck.report.as_text import as_text

    return as_text(checked, colour=sys.stdout.isatty() and "NO_COLOR" not in os.environ)


def _summary(checked: list[Checked]) -> str:
    unread = sum(bool(each.error) for each in checked)
    not_judged = sum(len(each.not_judged) for each in checked)
    crashed = sum(len(each.crashed) for each in checked)
    found = sum(len(each.told) for each in checked)
    text = f"{len(checked)} drawings, {found} findings, {not_judged} checks not judged"
    if unread:
        text += f", {unread} files not read"
    if crashed:
        text += f", {crashed} checks failed inside the program"
    return text


def _counting(checked: list[Checked], at_least: str, *, strict: bool) -> bool:
    from circuitcheck.finding import Grade
    from circuitcheck.review.acceptances import weight

    limit = Grade(at_least).rank
    for each in checked:
        for told in each.told:
            grade = weight(told.finding, accepted=told.accepted, strict=strict)
            if grade is not None and grade.rank <= limit:
                return True
    return False

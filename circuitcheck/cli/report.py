"""`circuitcheck report`: documents to hand over, of one drawing or of many."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from circuitcheck.cli.options import add_day, add_ways, faultless, ways
from circuitcheck.cli.printing import counted, say, show
from circuitcheck.cli.status import FAILED, SOUND
from circuitcheck.cli.walking import drawings

if TYPE_CHECKING:
    from circuitcheck.report.document.many import Task
    from circuitcheck.report.document.writing import Form


def add(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    forms = ("pdf", "html", "svg", "png", "csv")
    parser.add_argument("paths", nargs="+", metavar="PATH", type=Path, help="a drawing or a folder of them")
    parser.add_argument(
        "-o",
        "--to",
        dest="out",
        required=True,
        metavar="OUT",
        type=Path,
        help="the file to write, whose ending chooses: "
        + ", ".join(f".{form}" for form in forms)
        + "; or a folder",
    )
    parser.add_argument("--as", dest="form", choices=forms, help="the kind of file to write into a folder")
    parser.add_argument("--paper", choices=("a4", "a3"), default="a4", help="the PDF's paper (a4)")
    parser.add_argument(
        "--orientation",
        choices=("portrait", "landscape"),
        help="how the PDF's pages lie; left out, text stands upright and the drawing lies as it is larger",
    )
    parser.add_argument(
        "--language", choices=("en", "de"), default="en", help="the language that documents are told in (en)"
    )
    add_day(parser, "the day the document is made on")
    add_ways(parser)
    parser.set_defaults(command=_run)


def _run(parsed: argparse.Namespace) -> int:
    from circuitcheck.report.document import many
    from circuitcheck.report.document.writing import Form

    files, faults = drawings(parsed.paths)
    for fault in faults:
        say(fault)
    if not files:
        return FAILED
    try:
        tasks, form = many.plan(parsed.paths, files, parsed.out, Form(parsed.form) if parsed.form else None)
    except many.PlanError as error:
        say(str(error))
        return FAILED
    return faultless(lambda: _report(parsed, tasks, form, is_faulty=bool(faults)))


def _report(parsed: argparse.Namespace, tasks: Sequence[Task], form: Form, *, is_faulty: bool) -> int:
    from circuitcheck.folders.documents import Documents, entry_of
    from circuitcheck.folders.listing import write_lists
    from circuitcheck.folders.running import Run
    from circuitcheck.report.document.paper import Orientation, Paper
    from circuitcheck.report.plain import plain
    from circuitcheck.storage.saver import SaveError

    turned = Orientation(parsed.orientation) if parsed.orientation else None
    errand = Documents(form, parsed.on or date.today(), Paper(parsed.paper), turned, parsed.language)
    written = found = not_judged = 0
    lists: tuple[Path, ...] = ()
    with Run(errand, tasks, ways(parsed, "report", [*parsed.paths, parsed.out]), say) as answers:
        for task, entry in zip(tasks, map(entry_of, answers), strict=True):
            for fault in entry.faults:
                say(f"{task.source}: {fault}")
            if entry.is_written:
                written += 1
                found += sum(entry.grades.values())
                not_judged += len(entry.not_judged)
                show(f"{plain(str(task.target))}\n")
        if tasks[0].makes_folder:
            try:
                lists = write_lists(
                    answers, parsed.paths, parsed.out, form, errand.today, errand.paper, errand.tongue
                )
            except SaveError as error:
                say(str(error))
                is_faulty = True
    findings, unjudged = counted(found, "finding"), counted(not_judged, "check")
    say(f"{counted(written, 'document')}, {findings}, {unjudged} not judged")
    if lists:
        say(f"the list of all drawings: {' and '.join(str(each) for each in lists)}")
    return FAILED if is_faulty or written < len(tasks) else SOUND

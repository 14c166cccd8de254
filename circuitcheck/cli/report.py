"""`circuitcheck report`: documents to hand over, of one drawing or of many."""

from __future__ import annotations

import argparse
from datetime import date
from pathlib import Path

from circuitcheck.cli.options import jobs
from circuitcheck.cli.printing import say, show
from circuitcheck.cli.status import FAILED, SOUND
from circuitcheck.cli.walking import drawings
from circuitcheck.cli.working import at_once


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
        "--on", type=date.fromisoformat, default=None, metavar="DATE", help="the day the document is made on"
    )
    parser.add_argument("--jobs", type=jobs, default=1, metavar="N", help="make that many at a time")
    parser.set_defaults(command=_run)


def _run(parsed: argparse.Namespace) -> int:
    from functools import partial

    from circuitcheck.report.document import many
    from circuitcheck.report.document.paper import Orientation, Paper
    from circuitcheck.report.document.writing import Form
    from circuitcheck.report.plain import plain

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
    turned = Orientation(parsed.orientation) if parsed.orientation else None
    orders = many.Orders(form, parsed.on or date.today(), Paper(parsed.paper), turned)
    outcomes = at_once(partial(many.carry_out, orders=orders), tasks, parsed.jobs)
    for each in outcomes:
        for fault in each.faults:
            say(fault)
    written = [each for each in outcomes if not each.faults]
    for each in written:
        show(f"{plain(str(each.task.target))}\n")
    found, not_judged = sum(each.findings for each in written), sum(each.not_judged for each in written)
    documents = "1 document" if len(written) == 1 else f"{len(written)} documents"
    say(f"{documents}, {found} findings, {not_judged} checks not judged")
    return FAILED if faults or len(written) < len(outcomes) else SOUND

"""The command line: what each command does, and the status it ends with."""

from __future__ import annotations

import argparse
import io
import sys
from collections.abc import Callable, Iterator, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

if TYPE_CHECKING:
    from circuitcheck.report.checked import Checked

SOUND, FOUND, FAILED = 0, 1, 2
_Task = TypeVar("_Task")
_Done = TypeVar("_Done")
ENDING = ".wetcircuit"
COMMANDS = ("check", "compare", "explain", "parts", "report", "samples", "sizes")


def run(arguments: Sequence[str]) -> int:
    """Carry out one call. Results go to standard output, messages to standard error.

    Returns 0 where nothing counts, 1 where something does, 2 for what can't be read or a wrong call.
    """
    parsed = _parser().parse_args(arguments)
    command: Callable[[argparse.Namespace], int] = parsed.command
    return command(parsed)


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="circuitcheck",
        description="Draws heating and hot-water circuits and proves them safe. "
        "Without a command it opens the editor, with a file if one is named.",
    )
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)
    _add_check(commands.add_parser("check", help="check drawings, or every drawing in a folder"))
    _add_compare(
        commands.add_parser(
            "compare", help="what was removed, fitted, moved or changed, and which findings came or went"
        )
    )
    explain = commands.add_parser("explain", help="why a check exists and what puts it right")
    explain.add_argument("check", nargs="?", metavar="CHECK", help="a check's name; without it, the list")
    explain.set_defaults(command=_explain)
    _add_parts(commands.add_parser("parts", help="parts list: counts, pipe by size and material, bends"))
    _add_report(commands.add_parser("report", help="a document to hand over: PDF, HTML, SVG, PNG or a table"))
    samples = commands.add_parser("samples", help="list the drawings that ship, or copy them out")
    samples.add_argument("--to", metavar="FOLDER", type=Path, help="copy them into this folder")
    samples.set_defaults(command=_samples)
    sizes = commands.add_parser("sizes", help="the worked figures, each with its formula, inputs and source")
    sizes.add_argument("file", metavar="FILE", type=Path, help="a drawing")
    sizes.add_argument("--as", dest="form", choices=("text", "json", "csv"), default="text")
    sizes.set_defaults(command=_sizes)
    return parser


def _add_check(parser: argparse.ArgumentParser) -> None:
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
    parser.add_argument("--jobs", type=_jobs, default=1, metavar="N", help="check that many files at a time")
    parser.add_argument(
        "--cures", action="store_true", help="say which edits would put a finding right, each tried first"
    )
    parser.set_defaults(command=_check)


def _add_compare(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("old", metavar="OLD", type=Path, help="the earlier drawing")
    parser.add_argument("new", metavar="NEW", type=Path, help="the later drawing")
    parser.add_argument("--as", dest="form", choices=("text", "json", "csv"), default="text")
    parser.set_defaults(command=_compare)


def _add_parts(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("file", metavar="FILE", type=Path, help="a drawing")
    parser.add_argument("--as", dest="form", choices=("text", "json", "csv"), default="text")
    parser.set_defaults(command=_parts)


def _add_report(parser: argparse.ArgumentParser) -> None:
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
    parser.add_argument("--jobs", type=_jobs, default=1, metavar="N", help="make that many at a time")
    parser.set_defaults(command=_report)


def _jobs(text: str) -> int:
    number = int(text)
    if number < 1:
        raise argparse.ArgumentTypeError("at least 1")
    return number


def _check(parsed: argparse.Namespace) -> int:
    files, faults = _drawings(parsed.paths)
    for fault in faults:
        _say(fault)
    if not files:
        return FAILED
    checked = _checked(files, parsed.on or date.today(), parsed.jobs, with_cures=parsed.cures)
    _print(_shown(checked, parsed.form))
    _say(_summary(checked))
    if faults or any(each.error or each.crashed for each in checked):
        return FAILED
    return FOUND if _counting(checked, parsed.at_least, strict=parsed.strict) else SOUND


def _drawings(paths: Sequence[Path]) -> tuple[list[Path], list[str]]:
    """The files to check, folders walked in order, and a sentence for each path that gives none."""
    files: list[Path] = []
    faults: list[str] = []
    for path in paths:
        try:
            if path.is_dir():
                inside = list(_walk(path, faults))
                files += inside
                if not inside:
                    faults.append(f"{path}: no drawing (*{ENDING}) in this folder")
            elif path.exists():
                files.append(path)
            else:
                faults.append(f"{path}: no such file or folder")
        except OSError as error:
            faults.append(f"{path}: {error.strerror or error}")
    return files, faults


def _walk(folder: Path, faults: list[str]) -> Iterator[Path]:
    """Drawings in a folder and below, sorted; links and hidden files are passed over. A folder that
    cannot be looked into is added to the faults."""
    try:
        inside = sorted(folder.iterdir())
    except OSError as error:
        faults.append(f"{folder}: {error.strerror or error}")
        return
    for path in inside:
        if path.name.startswith(".") or path.is_symlink():
            continue
        if path.is_dir():
            yield from _walk(path, faults)
        elif path.suffix == ENDING and path.is_file():
            yield path


def _checked(files: list[Path], today: date, jobs: int, *, with_cures: bool) -> list[Checked]:
    from functools import partial

    from circuitcheck.report.checked import check_file

    return _at_once(partial(check_file, today=today, with_cures=with_cures), files, jobs)


def _at_once(one: Callable[[_Task], _Done], tasks: Sequence[_Task], jobs: int) -> list[_Done]:
    """What becomes of each task, in their order, so many at a time."""
    if jobs == 1 or len(tasks) == 1:
        return list(_with_progress(map(one, tasks), len(tasks)))
    from concurrent.futures import ProcessPoolExecutor

    with ProcessPoolExecutor(min(jobs, len(tasks))) as pool:
        return list(_with_progress(pool.map(one, tasks, chunksize=4), len(tasks)))


def _with_progress(done: Iterator[_Done], total: int) -> Iterator[_Done]:
    """Pass the answers on; on a terminal, a long run shows how far it is."""
    shows = total > 20 and sys.stderr.isatty()
    for number, each in enumerate(done, start=1):
        if shows:
            sys.stderr.write(f"\r{number} of {total}")
            sys.stderr.flush()
        yield each
    if shows:
        sys.stderr.write("\r\x1b[K")


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


def _compare(parsed: argparse.Namespace) -> int:
    """0 where the two hold the same, 1 where they differ, 2 where one cannot be read."""
    from circuitcheck.report import compared as shown
    from circuitcheck.storage.reading import DrawingError, read

    drawings = []
    for path in (parsed.old, parsed.new):
        try:
            drawings.append(read(path))
        except DrawingError as error:
            _say(str(error))
        except OSError as error:
            _say(f"{path}: {error.strerror or error}")
    if len(drawings) < 2:
        return FAILED
    told = shown.compared(str(parsed.old), drawings[0], str(parsed.new), drawings[1])
    forms = {"text": shown.as_text, "json": shown.as_json, "csv": shown.as_csv}
    _print(forms[parsed.form](told))
    if not_judged := told.not_judged:
        _say(f"{not_judged} checks not judged in the two drawings together")
    return SOUND if told.is_nothing else FOUND


def _explain(parsed: argparse.Namespace) -> int:
    from circuitcheck.checks.catalogue import checks
    from circuitcheck.report.explained import explained, listed

    known = checks()
    if parsed.check is None:
        _print(listed(known))
        return SOUND
    if parsed.check not in known:
        _say(f"no check is called {parsed.check!r}; 'circuitcheck explain' lists them")
        return FAILED
    _print(explained(known[parsed.check].lesson))
    return SOUND


def _parts(parsed: argparse.Namespace) -> int:
    from circuitcheck.figures.parts_list import parts_list
    from circuitcheck.report import parts as shown
    from circuitcheck.storage.reading import DrawingError, read

    try:
        found = parts_list(read(parsed.file))
    except DrawingError as error:
        _say(str(error))
        return FAILED
    except OSError as error:
        _say(f"{parsed.file}: {error.strerror or error}")
        return FAILED
    name = str(parsed.file)
    forms = {"csv": lambda: shown.as_csv(found), "json": lambda: shown.as_json(name, found)}
    _print(forms.get(parsed.form, lambda: shown.as_text(name, found))())
    if lacking := len(found.no_length):
        _say(f"the length of {lacking} pipes is not known")
    return SOUND


def _report(parsed: argparse.Namespace) -> int:
    from functools import partial

    from circuitcheck.report.document import many
    from circuitcheck.report.document.paper import Orientation, Paper
    from circuitcheck.report.document.writing import Form
    from circuitcheck.report.plain import plain

    files, faults = _drawings(parsed.paths)
    for fault in faults:
        _say(fault)
    if not files:
        return FAILED
    try:
        tasks, form = many.plan(parsed.paths, files, parsed.out, Form(parsed.form) if parsed.form else None)
    except many.PlanError as error:
        _say(str(error))
        return FAILED
    turned = Orientation(parsed.orientation) if parsed.orientation else None
    orders = many.Orders(form, parsed.on or date.today(), Paper(parsed.paper), turned)
    outcomes = _at_once(partial(many.carry_out, orders=orders), tasks, parsed.jobs)
    for each in outcomes:
        for fault in each.faults:
            _say(fault)
    written = [each for each in outcomes if not each.faults]
    for each in written:
        _print(f"{plain(str(each.task.target))}\n")
    found, not_judged = sum(each.findings for each in written), sum(each.not_judged for each in written)
    documents = "1 document" if len(written) == 1 else f"{len(written)} documents"
    _say(f"{documents}, {found} findings, {not_judged} checks not judged")
    return FAILED if faults or len(written) < len(outcomes) else SOUND


def _samples(parsed: argparse.Namespace) -> int:
    from circuitcheck.report.samples import copy_samples, list_samples

    if parsed.to is None:
        _print(list_samples())
        return SOUND
    try:
        copied = copy_samples(parsed.to)
    except OSError as error:
        _say(f"{parsed.to}: {error.strerror or error}")
        return FAILED
    for path in copied:
        _print(f"{path}\n")
    return SOUND


def _sizes(parsed: argparse.Namespace) -> int:
    from circuitcheck.report import sizes

    found = sizes.size_file(parsed.file)
    shown = {"text": sizes.as_text, "json": sizes.as_json, "csv": sizes.as_csv}
    _print(shown[parsed.form](found))
    if found.error:
        _say(f"{parsed.file}: cannot be read as a drawing")
        return FAILED
    text = f"{len(found.figures)} figures, {found.lacking} refused for want of numbers"
    if found.refused:
        text += f", {found.refused} for another reason"
    if found.crashed:
        text += f", {found.crashed} failed inside the program"
    _say(text)
    return FAILED if found.crashed else SOUND


def _print(text: str) -> None:
    """Write a result. Sent to a file or a pipe it is UTF-8 whatever the machine's habit; a terminal
    that has no such letter shows its code."""
    out = sys.stdout
    if isinstance(out, io.TextIOWrapper):
        encoding = out.encoding if out.isatty() else "utf-8"
        out.reconfigure(encoding=encoding, errors="backslashreplace")
    out.write(text)


def _say(text: str) -> None:
    from circuitcheck.report.plain import plain

    sys.stderr.write(f"circuitcheck: {plain(text)}\n")

"""Documents of one drawing or of many: where each is written, and what became of it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from circuitcheck.report.document.gathering import gather
from circuitcheck.report.document.paper import Orientation, Paper
from circuitcheck.report.document.writing import Form, form_of, made
from circuitcheck.storage.reading import DrawingError, read
from circuitcheck.storage.saver import SaveError, save_bytes

ENDINGS = ", ".join(f".{form}" for form in Form)


class PlanError(ValueError):
    """The call does not say where to write, or asks to write where that can't be; the message says so."""


@dataclass(frozen=True, slots=True)
class Task:
    """One drawing's file and the file its document goes into.

    `makes_folder`: it goes below a folder that was named, and what lies between is made.
    """

    source: Path
    target: Path
    makes_folder: bool = False


@dataclass(frozen=True, slots=True)
class Orders:
    """How documents are made, the same for all of one call."""

    form: Form
    today: date
    paper: Paper = Paper.A4
    orientation: Orientation | None = None


@dataclass(frozen=True, slots=True)
class Outcome:
    """What became of one task. `faults`: why nothing was written; none where it was."""

    task: Task
    faults: tuple[str, ...] = ()
    findings: int = 0
    not_judged: int = 0


def plan(
    paths: Sequence[Path], files: Sequence[Path], out: Path, wanted: Form | None
) -> tuple[list[Task], Form]:
    """Where the document of each file goes, and as what. Raises PlanError.

    `paths` are those of the call, `files` the drawings they gave. One drawing goes into the file `out`,
    whose ending chooses; into a folder go one or many, as `wanted`, below the folders they came from.
    """
    is_many = len(files) != 1 or any(path.is_dir() for path in paths)
    if not is_many and not out.is_dir():
        return [Task(files[0], out)], _form_for(out, wanted)
    if not out.is_dir():
        what = "is no folder" if out.exists() else "there is no such folder"
        raise PlanError(f"{out}: {what}; documents of several drawings go into one")
    if wanted is None:
        raise PlanError("say with --as which kind of file to write into the folder")
    tasks = [Task(file, out / _below(paths, file).with_suffix(f".{wanted}"), True) for file in files]
    _refuse_doubles(tasks)
    return tasks, wanted


def _form_for(out: Path, wanted: Form | None) -> Form:
    found = form_of(out)
    if found is None:
        raise PlanError(f"{out}: the ending chooses the kind of file; there are {ENDINGS}")
    if wanted is not None and wanted is not found:
        raise PlanError(f"{out}: its ending says one kind of file, --as {wanted} another")
    return found


def _below(paths: Iterable[Path], file: Path) -> Path:
    """The file as seen from the folder of the call that it was found in; else its name."""
    folder = next((path for path in paths if path.is_dir() and file.is_relative_to(path)), file.parent)
    return file.relative_to(folder)


def _refuse_doubles(tasks: Iterable[Task]) -> None:
    first: dict[str, Path] = {}
    for task in tasks:
        # A disk may not tell small letters from capitals.
        key = str(task.target).casefold()
        if key in first:
            raise PlanError(f"{first[key]} and {task.source} would both be written to {task.target}")
        first[key] = task.source


def carry_out(task: Task, orders: Orders) -> Outcome:
    """Read one drawing and write its document. Never raises for what a file holds or a disk refuses."""
    try:
        drawing = read(task.source)
    except DrawingError as error:
        return Outcome(task, (str(error),))
    except OSError as error:
        return Outcome(task, (f"{task.source}: {error.strerror or error}",))
    content = gather(drawing, str(task.source), orders.today)
    data = made(content, orders.form, orders.paper, orders.orientation)
    try:
        if task.makes_folder:
            task.target.parent.mkdir(parents=True, exist_ok=True)
        save_bytes(task.target, data)
    except SaveError as error:
        return Outcome(task, (str(error),))
    except OSError as error:
        return Outcome(task, (f"{task.target}: {error.strerror or error}",))
    judgement = content.judgement
    return Outcome(task, (), len(content.findings), len(judgement.not_judged))

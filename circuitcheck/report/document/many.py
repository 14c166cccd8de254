"""Documents of one drawing or of many: where each is written, and as what."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path

from circuitcheck.report.document.writing import Form, form_of

_INDEXES = (Form.HTML, Form.PDF)
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
    _refuse_doubles(tasks, index_files(out, wanted))
    return tasks, wanted


def _form_for(out: Path, wanted: Form | None) -> Form:
    found = form_of(out)
    if found is None:
        raise PlanError(f"{out}: the ending chooses the kind of file; there are {ENDINGS}")
    if wanted is not None and wanted is not found:
        raise PlanError(f"{out}: its ending says one kind of file, --as {wanted} another")
    return found


def index_files(out: Path, form: Form) -> tuple[Path, ...]:
    """The files in a folder of documents that list all of them: always one a browser shows; for paper, a PDF too."""
    return tuple(out / f"index.{each}" for each in dict.fromkeys((Form.HTML, form)) if each in _INDEXES)


def _below(paths: Iterable[Path], file: Path) -> Path:
    """The file as seen from the folder of the call that it was found in; else its name."""
    folder = next((path for path in paths if path.is_dir() and file.is_relative_to(path)), file.parent)
    return file.relative_to(folder)


def _refuse_doubles(tasks: Iterable[Task], taken: Iterable[Path]) -> None:
    first = {str(path).casefold(): Path("the list of all drawings") for path in taken}
    for task in tasks:
        # A disk may not tell small letters from capitals.
        key = str(task.target).casefold()
        if key in first:
            raise PlanError(f"{first[key]} and {task.source} would both be written to {task.target}")
        first[key] = task.source

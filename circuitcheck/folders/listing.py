"""Writes the list of all documents into their folder."""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from datetime import date
from math import inf
from pathlib import Path, PurePath

from circuitcheck.folders.documents import entry_of
from circuitcheck.folders.running import Answers
from circuitcheck.report.document.as_html import html_of
from circuitcheck.report.document.index import Front, Index, Listed
from circuitcheck.report.document.many import Task, index_files
from circuitcheck.report.document.paper import Orientation, Paper
from circuitcheck.report.document.writing import Form
from circuitcheck.shipped import version
from circuitcheck.storage.saver import save_bytes
from circuitcheck.told import ENGLISH, Tongue, a_word, dated, tell

ALL = a_word("All drawings")


def write_lists(
    answers: Answers[Task],
    paths: Sequence[Path],
    out: Path,
    form: Form,
    today: date,
    paper: Paper,
    tongue: Tongue = ENGLISH,
) -> tuple[Path, ...]:
    """Write the list as HTML, and as PDF where the documents are such. Returns the files. Raises SaveError.

    `paths` are those of the call: a drawing is named as seen from the folder it was found in.
    """
    index = Index(_listed(answers, out))
    named = ", ".join(PurePath(os.path.abspath(path)).name for path in paths)
    day, program = today.isoformat(), f"circuitcheck {version()}"
    front = Front(tell(ALL, tongue), named, tell(dated(day), tongue), program, day, tongue)
    sections = index.sections(front)
    files = index_files(out, form)
    for file in files:
        if file.suffix == ".pdf":
            from circuitcheck.report.document.as_pdf import pdf_of

            lies = Orientation.LANDSCAPE
            # Nothing but tables, which want all the width there is.
            save_bytes(file, pdf_of(front, sections, paper, lies, lies, inf))
        else:
            save_bytes(file, html_of(front, sections))
    return files


def _listed(answers: Answers[Task], out: Path) -> Iterator[Listed]:
    for task, answer in zip(answers.tasks, answers, strict=True):
        document = task.target.relative_to(out)
        entry = entry_of(answer)
        # The document lies where the drawing lay, under the same name with another ending.
        ending = "" if entry.is_written else task.source.suffix
        yield Listed(document.with_suffix(ending).as_posix(), document.as_posix(), entry)

"""`circuitcheck parts`: what a drawing takes: counts, pipe by size and material, bends."""

from __future__ import annotations

import argparse
from pathlib import Path

from circuitcheck.cli.printing import say, show
from circuitcheck.cli.status import FAILED, SOUND


def add(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", metavar="FILE", type=Path, help="a drawing")
    parser.add_argument("--as", dest="form", choices=("text", "json", "csv"), default="text")
    parser.set_defaults(command=_run)


def _run(parsed: argparse.Namespace) -> int:
    from circuitcheck.figures.parts_list import parts_list
    from circuitcheck.report import parts as shown
    from circuitcheck.storage.reading import DrawingError, read

    try:
        found = parts_list(read(parsed.file))
    except DrawingError as error:
        say(str(error))
        return FAILED
    except OSError as error:
        say(f"{parsed.file}: {error.strerror or error}")
        return FAILED
    name = str(parsed.file)
    forms = {"csv": lambda: shown.as_csv(found), "json": lambda: shown.as_json(name, found)}
    show(forms.get(parsed.form, lambda: shown.as_text(name, found))())
    if lacking := len(found.no_length):
        say(f"the length of {lacking} pipes is not known")
    return SOUND

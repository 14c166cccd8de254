"""`circuitcheck sizes`: the worked figures of a drawing, each with its working."""

from __future__ import annotations

import argparse
from pathlib import Path

from circuitcheck.cli.printing import counted, say, show
from circuitcheck.cli.status import FAILED, SOUND


def add(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", metavar="FILE", type=Path, help="a drawing")
    parser.add_argument("--as", dest="form", choices=("text", "json", "csv"), default="text")
    parser.set_defaults(command=_run)


def _run(parsed: argparse.Namespace) -> int:
    from circuitcheck.report import sizes

    found = sizes.size_file(parsed.file)
    shown = {"text": sizes.as_text, "json": sizes.as_json, "csv": sizes.as_csv}
    show(shown[parsed.form](found))
    if found.error:
        say(f"{parsed.file}: cannot be read as a drawing")
        return FAILED
    text = f"{counted(len(found.figures), 'figure')}, {found.lacking} refused for want of numbers"
    if found.refused:
        text += f", {found.refused} for another reason"
    if found.crashed:
        text += f", {found.crashed} failed inside the program"
    say(text)
    return FAILED if found.crashed else SOUND

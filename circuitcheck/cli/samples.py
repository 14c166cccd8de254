"""`circuitcheck samples`: the drawings that ship."""

from __future__ import annotations

import argparse
from pathlib import Path

from circuitcheck.cli.printing import say, show
from circuitcheck.cli.status import FAILED, SOUND


def add(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("--to", metavar="FOLDER", type=Path, help="copy them into this folder")
    parser.set_defaults(command=_run)


def _run(parsed: argparse.Namespace) -> int:
    from circuitcheck.report.samples import copy_samples, list_samples

    if parsed.to is None:
        show(list_samples())
        return SOUND
    try:
        copied = copy_samples(parsed.to)
    except OSError as error:
        say(f"{parsed.to}: {error.strerror or error}")
        return FAILED
    for path in copied:
        show(f"{path}\n")
    return SOUND

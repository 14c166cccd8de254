"""`circuitcheck compare`: what differs between two drawings, and which findings came or went."""

from __future__ import annotations

import argparse
from pathlib import Path

from circuitcheck.cli.printing import say, show
from circuitcheck.cli.status import FAILED, FOUND, SOUND


def add(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("old", metavar="OLD", type=Path, help="the earlier drawing")
    parser.add_argument("new", metavar="NEW", type=Path, help="the later drawing")
    parser.add_argument("--as", dest="form", choices=("text", "json", "csv"), default="text")
    parser.set_defaults(command=_run)


def _run(parsed: argparse.Namespace) -> int:
    """0 where the two hold the same, 1 where they differ, 2 where one cannot be read."""
    from circuitcheck.report import compared as shown
    from circuitcheck.storage.reading import DrawingError, read

    drawings = []
    for path in (parsed.old, parsed.new):
        try:
            drawings.append(read(path))
        except DrawingError as error:
            say(str(error))
        except OSError as error:
            say(f"{path}: {error.strerror or error}")
    if len(drawings) < 2:
        return FAILED
    told = shown.compared(str(parsed.old), drawings[0], str(parsed.new), drawings[1])
    forms = {"text": shown.as_text, "json": shown.as_json, "csv": shown.as_csv}
    show(forms[parsed.form](told))
    if not_judged := told.not_judged:
        say(f"{not_judged} checks not judged in the two drawings together")
    return SOUND if told.is_nothing else FOUND

"""`circuitcheck explain`: why a check exists and what puts it right."""

from __future__ import annotations

import argparse

from circuitcheck.cli.printing import say, show
from circuitcheck.cli.status import FAILED, SOUND


def add(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("check", nargs="?", metavar="CHECK", help="a check's name; without it, the list")
    parser.set_defaults(command=_run)


def _run(parsed: argparse.Namespace) -> int:
    from circuitcheck.checks.catalogue import checks
    from circuitcheck.report.explained import explained, listed

    known = checks()
    if parsed.check is None:
        show(listed(known))
        return SOUND
    if parsed.check not in known:
        say(f"no check is called {parsed.check!r}; 'circuitcheck explain' lists them")
        return FAILED
    show(explained(known[parsed.check].lesson))
    return SOUND

"""The command line: one module a command, and what they share."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Sequence

from circuitcheck.cli import check, compare, explain, parts, report, samples, sizes

_COMMANDS: dict[str, tuple[Callable[[argparse.ArgumentParser], None], str]] = {
    "check": (check.add, "check drawings, or every drawing in a folder"),
    "compare": (compare.add, "what was removed, fitted, moved or changed, and which findings came or went"),
    "explain": (explain.add, "why a check exists and what puts it right"),
    "parts": (parts.add, "parts list: counts, pipe by size and material, bends"),
    "report": (report.add, "a document to hand over: PDF, HTML, SVG, PNG or a table"),
    "samples": (samples.add, "list the drawings that ship, or copy them out"),
    "sizes": (sizes.add, "the worked figures, each with its formula, inputs and source"),
}
COMMANDS = tuple(_COMMANDS)


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
    for name, (add, says) in _COMMANDS.items():
        add(commands.add_parser(name, help=says))
    return parser

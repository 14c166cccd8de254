"""Starts the program: a command on the command line, else the editor."""

from __future__ import annotations

import sys


def main() -> int:
    """Run a command, or open the editor with the file named. Returns the exit status."""
    arguments = sys.argv[1:]
    from circuitcheck.cli import COMMANDS, run

    asks_for_text = bool(arguments) and (arguments[0] in COMMANDS or arguments[0].startswith("-"))
    if asks_for_text:
        from circuitcheck.cli.printing import finish

        try:
            return run(arguments)
        finally:
            finish()
    if len(arguments) > 1:
        sys.stderr.write(f"circuitcheck: no command is called {arguments[0]!r}; try 'circuitcheck --help'\n")
        return 2
    return _edit(arguments)


def _edit(arguments: list[str]) -> int:
    from circuitcheck.editor.missing import explain_missing_library
    from circuitcheck.garbage import no_collection

    try:
        # What is read stays until the end: to look through it for garbage costs a fifth of the reading.
        with no_collection():
            from circuitcheck.editor.main import run as edit
    except ImportError as error:
        sys.stderr.write(f"circuitcheck: {explain_missing_library(error)}\n")
        return 2
    return edit(arguments)


if __name__ == "__main__":
    sys.exit(main())

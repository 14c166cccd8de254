"""Results go to standard output, messages for people to standard error."""

from __future__ import annotations

import io
import sys


def show(text: str) -> None:
    """Write a result. Sent to a file or a pipe it is UTF-8 whatever the machine's habit; a terminal
    that has no such letter shows its code."""
    out = sys.stdout
    if isinstance(out, io.TextIOWrapper):
        encoding = out.encoding if out.isatty() else "utf-8"
        out.reconfigure(encoding=encoding, errors="backslashreplace")
    out.write(text)


def say(text: str) -> None:
    """Write one message."""
    from circuitcheck.report.plain import plain

    sys.stderr.write(f"circuitcheck: {plain(text)}\n")


def counted(count: int, one: str, many: str = "") -> str:
    """`1 drawing`, `2 drawings`; `many` where the plural is not the word with an s."""
    return f"{count} {one}" if count == 1 else f"{count} {many or one + 's'}"

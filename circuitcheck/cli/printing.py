"""Results go to standard output, messages for people to standard error."""

from __future__ import annotations

import errno
import io
import os
import sys
from collections.abc import Callable

GONE = (errno.EPIPE, errno.EINVAL) if os.name == "nt" else (errno.EPIPE,)
"""What is told where nobody reads a pipe any more."""


def show(text: str) -> None:
    """Write a result. Sent to a file or a pipe it is UTF-8 whatever the machine's habit; a terminal
    that has no such letter shows its code."""
    out = sys.stdout
    if isinstance(out, io.TextIOWrapper):
        encoding = out.encoding if out.isatty() else "utf-8"
        out.reconfigure(encoding=encoding, errors="backslashreplace")
    _handed_on(lambda: out.write(text))


def finish() -> None:
    """Hand on what was written so far. Whoever read it may have seen enough (`circuitcheck check FILE | head`):
    then the rest goes nowhere, and the status still says what was found."""
    _handed_on(sys.stdout.flush)


def _handed_on(write: Callable[[], object]) -> None:
    try:
        write()
    except OSError as error:
        if error.errno not in GONE:
            raise
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, sys.stdout.fileno())
        os.close(nowhere)


def say(text: str) -> None:
    """Write one message."""
    from circuitcheck.report.plain import plain

    sys.stderr.write(f"circuitcheck: {plain(text)}\n")


def counted(count: int, one: str, many: str = "") -> str:
    """`1 drawing`, `2 drawings`; `many` where the plural is not the word with an s."""
    return f"{count} {one}" if count == 1 else f"{count} {many or one + 's'}"

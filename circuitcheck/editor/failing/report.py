"""The report of a failure: a text that a person may read, shorten and hand on. Nothing sends it."""

from __future__ import annotations

import traceback
from types import TracebackType

from PySide6.QtCore import qVersion

from circuitcheck.editor.failing.log import without_home
from circuitcheck.shipped import version


def report(failure: str, log: str) -> str:
    """What one who mends the program needs: the versions, the failure, the end of the log. No drawing."""
    # Here and not at the top: whoever starts the program waits for what is read there.
    import platform

    program = f"circuitcheck {version()}, Python {platform.python_version()}, Qt {qVersion()}"
    parts = [f"{program}\n{platform.system()} {platform.release()}, {platform.machine()}"]
    if failure:
        parts.append(f"The failure\n{failure.strip()}")
    if log:
        parts.append(f"The end of the log\n{log.strip()}")
    return without_home("\n\n".join(parts)) + "\n"


def trace_of(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> str:
    """Where in the program it failed, and with what words."""
    return "".join(traceback.format_exception(kind, error, trace))

"""Programs with a window in a process of their own, at a home of their own, on a screen that is not there."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path


def environment(home: Path) -> dict[str, str]:
    """What the process finds about it: all that it keeps goes to `home`."""
    homes = {name: str(home) for name in ("HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME")}
    return {**os.environ, **homes, "QT_QPA_PLATFORM": "offscreen"}


def ran(home: Path, *arguments: str, timeout_s: float = 60) -> subprocess.CompletedProcess[str]:
    """This Python with these arguments, once it has ended. Raises TimeoutExpired."""
    return subprocess.run(
        [sys.executable, *arguments],
        env=environment(home),
        capture_output=True,
        text=True,
        timeout=timeout_s,
        check=False,
    )


def faults_said(done: subprocess.CompletedProcess[str]) -> list[str]:
    """The lines on standard error, without what the screen that is not there says of itself."""
    return [line for line in done.stderr.splitlines() if "propagateSizeHints" not in line]

"""Where the answers of a run are until all are there: in memory for a few, else in a file at a usual place."""

from __future__ import annotations

import hashlib
import os
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import Protocol

from circuitcheck.folders.errand import Done


class Store(Protocol):
    """Takes answers in, by file, and tells them again. `path` is where they outlast the run; None for nowhere."""

    path: Path | None

    def put(self, file: str, done: Done) -> None:
        """Take in the answer for one file."""
        ...

    def get(self, file: str) -> Done | None:
        """The answer for one file; None where there is none."""
        ...

    def secure(self) -> None:
        """Have all that came in safe from a kill."""
        ...

    def close(self, *, remove: bool = False) -> None:
        """Let go of the answers; what outlasts the run is removed only if that is asked for."""
        ...


class Remembered:
    """Answers of a few files, in memory."""

    def __init__(self) -> None:
        self.path: Path | None = None
        self._answers: dict[str, Done] = {}

    def put(self, file: str, done: Done) -> None:
        """Take in the answer for one file."""
        self._answers[file] = done

    def get(self, file: str) -> Done | None:
        """The answer for one file; None where there is none."""
        return self._answers.get(file)

    def secure(self) -> None:
        """Memory is as safe as it gets."""

    def close(self, *, remove: bool = False) -> None:
        """Forget the answers."""
        self._answers.clear()


def usual_place(command: str, paths: Sequence[Path]) -> Path:
    """Where the answers of one call are kept: among the user's own files, by the command and its paths."""
    named = "\0".join([command, *(os.path.abspath(path) for path in paths)])
    name = hashlib.sha256(os.fsencode(named)).hexdigest()[:24]
    return _folder() / "circuitcheck" / "folders" / f"{command}-{name}.state"


def _folder() -> Path:
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA") or Path.home() / "AppData" / "Local")
    if sys.platform == "darwin":
        return Path.home() / "Library" / "Application Support"
    return Path(os.environ.get("XDG_STATE_HOME") or Path.home() / ".local" / "state")

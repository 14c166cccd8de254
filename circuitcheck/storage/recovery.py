"""Keeps what is not saved where the next start finds it, should the program be killed or the power fail.

One slot holds one drawing: a file that begins with a line saying where the drawing came from, followed by
the drawing as any file holds it, and beside it a lock that the system lets go of when the program ends,
however it ends. A slot whose lock is free but whose drawing is still there was left behind.
"""

from __future__ import annotations

import json
import os
import time
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from filelock import FileLock, Timeout

from circuitcheck.drawing.value import Drawing
from circuitcheck.storage.faults import DrawingError
from circuitcheck.storage.limits import MOST_BYTES
from circuitcheck.storage.reading import parse
from circuitcheck.storage.saver import save_bytes
from circuitcheck.storage.writing import dump

ENDING: Final = ".recovery"
_LOCK: Final = ".lock"
_HALF_DONE: Final = ".saving"
_LONGEST_HEADER: Final = 64 * 1024
# A slot's lock is there a moment before its drawing: only a lock that is much older was forgotten.
_FORGOTTEN_S: Final = 24 * 3600.0


@dataclass(frozen=True, slots=True)
class Origin:
    """The file a drawing was read from or saved to last, and the SHA-256 of what stood in it then."""

    path: Path | None = None
    digest: str | None = None


@dataclass(frozen=True, slots=True)
class Left:
    """What a program that ended without closing left behind."""

    file: Path
    title: str
    origin: Origin
    kept_at: datetime


class Slot:
    """The place where one open drawing is kept. Held until `close` or `leave`, or until the program ends."""

    def __init__(self, folder: Path, name: str | None = None) -> None:
        """Take a new slot, or the one called `name`. Raises OSError, and Timeout where another program has it."""
        folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        self.file = folder / f"{name or os.urandom(8).hex()}{ENDING}"
        self._lock = FileLock(self.file.with_suffix(_LOCK), thread_local=False)
        self._lock.acquire(blocking=False)

    def keep(self, drawing: Drawing, origin: Origin) -> None:
        """Put the drawing in the slot, whole or not at all. Raises SaveError."""
        header = {
            "circuitcheck_recovery": 1,
            "path": None if origin.path is None else os.fspath(origin.path),
            "digest": origin.digest,
            "kept_at": datetime.now(UTC).isoformat(timespec="milliseconds"),
            "title": drawing.title,
        }
        # Escapes keep the line a line, whatever stands in a name or a title.
        save_bytes(self.file, json.dumps(header).encode("ascii") + b"\n" + dump(drawing))

    def forget(self) -> None:
        """Empty the slot: what it held is saved, or is not wanted."""
        with suppress(FileNotFoundError):
            self.file.unlink()

    def close(self) -> None:
        """Empty the slot and give it back."""
        with suppress(OSError):
            self.forget()
        self.leave()

    def leave(self) -> None:
        """Give the slot back with what it holds, for the next start to offer."""
        self._lock.release()
        if not self.file.exists():
            with suppress(OSError):
                self.file.with_suffix(_LOCK).unlink()


def left_behind(folder: Path) -> list[Left]:
    """What was left in a folder, newest first; slots that a running program holds are not listed.

    A slot that cannot be told from its first line is passed over, and its file stays where it is.
    """
    found = [left for file in _free(folder) if (left := _told(file)) is not None]
    return sorted(found, key=lambda left: left.kept_at, reverse=True)


def take(left: Left) -> tuple[Slot, Drawing]:
    """Take over what was left: its slot, and the drawing in it.

    Raises Timeout where another program took it first, OSError, and DrawingError where it cannot be read; then
    the file stays as it is.
    """
    slot = Slot(left.file.parent, left.file.stem)
    try:
        return slot, parse(_content(left.file)[1], str(left.file))
    except (OSError, DrawingError):
        slot.leave()
        raise


def discard(left: Left) -> None:
    """Throw away what was left. Raises Timeout where another program took it first, and OSError."""
    slot = Slot(left.file.parent, left.file.stem)
    try:
        slot.forget()
    finally:
        slot.leave()


def _free(folder: Path) -> Iterator[Path]:
    """The slots that no running program holds; what kills left half done long ago goes on the way."""
    for file in (*_files(folder, _LOCK), *_files(folder, _HALF_DONE)):
        with suppress(OSError):
            if not file.with_suffix(ENDING).exists() and time.time() - file.stat().st_mtime > _FORGOTTEN_S:
                file.unlink()
    for file in _files(folder, ENDING):
        lock = FileLock(file.with_suffix(_LOCK), thread_local=False)
        try:
            with lock.acquire(blocking=False):
                pass
        except (Timeout, OSError):
            continue
        yield file


def _files(folder: Path, ending: str) -> list[Path]:
    try:
        return sorted(file for file in folder.iterdir() if file.suffix == ending)
    except OSError:
        return []


def _told(file: Path) -> Left | None:
    try:
        header = json.loads(_content(file)[0])
        path, digest = header["path"], header["digest"]
        return Left(
            file,
            str(header["title"]),
            Origin(None if path is None else Path(path), None if digest is None else str(digest)),
            datetime.fromisoformat(header["kept_at"]).astimezone(UTC),
        )
    except (OSError, ValueError, TypeError, KeyError, RecursionError):
        return None


def _content(file: Path) -> tuple[bytes, bytes]:
    """The first line, and the drawing after it."""
    with file.open("rb") as opened:
        header = opened.readline(_LONGEST_HEADER)
        return header, opened.read(MOST_BYTES + 1)

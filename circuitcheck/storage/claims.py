"""Which files a running program of this user has open: told by locks that end with the program, however it ends.

A claim is a file in the program's own folder, named after the drawing's place and locked while it is open. It keeps
nobody from anything. Somebody at another machine makes none that could be seen here: what is saved is compared
with what stood in the file in any case.
"""

from __future__ import annotations

import os
import time
from contextlib import suppress
from hashlib import sha256
from pathlib import Path
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from filelock import FileLock

ENDING: Final = ".open"
# A claim's file is there a moment before its lock: only one that is much older was forgotten.
_FORGOTTEN_S: Final = 24 * 3600.0


class Claim:
    """The claim of one open drawing, on one file at a time. Without a place for it there is none."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._path: Path | None = None
        self._lock: FileLock | None = None

    def follow(self, path: Path | None) -> None:
        """Claim that file and give up the one before; None: none."""
        if path == self._path:
            return
        self.close()
        self._path = path
        if path is None:
            return
        # Here and not at the top: what locks is read once there is something to lock or to ask about.
        from filelock import FileLock, Timeout

        with suppress(OSError):
            self._folder.mkdir(parents=True, exist_ok=True, mode=0o700)
            name = f"{_key(path)}-{os.urandom(8).hex()}{ENDING}"
            lock = FileLock(self._folder / name, thread_local=False)
            with suppress(Timeout):
                # Another program may be looking whether it is free, which takes it a moment.
                lock.acquire(timeout=1.0)
                self._lock = lock

    def close(self) -> None:
        """Give up what is claimed."""
        self._path = None
        if self._lock is not None:
            file = Path(self._lock.lock_file)
            self._lock.release()
            self._lock = None
            with suppress(OSError):
                file.unlink()

    def is_shared(self, path: Path) -> bool:
        """Whether somebody else has claimed a file, in this program or another one."""
        own = None if self._lock is None else Path(self._lock.lock_file).name
        return any(_is_held(file) for file in _files(self._folder, _key(path)) if file.name != own)


def same_file(one: Path, two: Path) -> bool:
    """Whether two paths lead to one place, links followed."""
    return _place(one) == _place(two)


def _place(path: Path) -> str:
    return os.path.normcase(os.path.realpath(path))


def _key(path: Path) -> str:
    return sha256(_place(path).encode("utf-8", "surrogateescape")).hexdigest()[:32]


def _files(folder: Path, key: str) -> list[Path]:
    try:
        return [file for file in folder.iterdir() if file.suffix == ENDING and file.name.startswith(key)]
    except OSError:
        return []


def _is_held(file: Path) -> bool:
    from filelock import FileLock, Timeout

    try:
        with FileLock(file, thread_local=False).acquire(blocking=False):
            pass
    except Timeout:
        return True
    except OSError:
        return False
    with suppress(OSError):
        if time.time() - file.stat().st_mtime > _FORGOTTEN_S:
            file.unlink()
    return False

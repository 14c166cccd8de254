"""Answers kept on the disk as they come, so that work can be gone on with: one SQLite file."""

from __future__ import annotations

import hashlib
import os
import sqlite3
import time
import zlib
from collections.abc import Mapping
from pathlib import Path
from typing import Final, Self

from circuitcheck.folders.errand import Done
from circuitcheck.folders.failing import StateError

OURS: Final = 0x77634653
"""Marks a file as one of these ("wcFS"), so that nothing else is ever written over."""
LAYOUT: Final = 1
EVERY_S: Final = 1.0
"""So long at most what came in waits before it is safe from a kill."""
_TABLES: Final = """
CREATE TABLE IF NOT EXISTS bound (name TEXT PRIMARY KEY, value TEXT NOT NULL);
CREATE TABLE IF NOT EXISTS answers (file BLOB PRIMARY KEY, content TEXT NOT NULL, answer BLOB NOT NULL,
                                    seal BLOB NOT NULL);
"""


class State:
    """Answers on the disk. Every answer is sealed together with its file's name and content, so that a torn
    or altered one is found out and made anew.

    `bound`: all that answers depend on beside the files; kept answers that were bound otherwise are dropped,
    and `dropped` then names in what they differ. A kill at any time leaves what was safe before.
    Raises StateError.
    """

    def __init__(self, path: Path | None, bound: Mapping[str, str]) -> None:
        self.path = path
        self.dropped: tuple[str, ...] = ()
        try:
            self._open(bound)
        except (sqlite3.Error, OSError) as error:
            raise StateError(f"{path}: {_explained(error)}") from error
        self._safe_at = time.monotonic()

    def _open(self, bound: Mapping[str, str]) -> None:
        if self.path is not None:
            self.path.parent.mkdir(parents=True, exist_ok=True)
        # A database without a name is SQLite's own temporary file, gone when it is closed.
        self._base = sqlite3.connect(
            "" if self.path is None else os.fspath(self.path), timeout=0, isolation_level=None
        )
        try:
            self._prepare(bound)
        except BaseException:
            self._base.close()
            raise

    def _prepare(self, bound: Mapping[str, str]) -> None:
        base = self._base
        base.execute("PRAGMA locking_mode = EXCLUSIVE")
        # Takes the file for this process alone, until it ends in whatever way.
        base.execute("BEGIN EXCLUSIVE")
        (ours,) = base.execute("PRAGMA application_id").fetchone()
        (things,) = base.execute("SELECT count(*) FROM sqlite_master").fetchone()
        if things and ours != OURS:
            raise OSError("it is another program's file, and is left as it is")
        (layout,) = base.execute("PRAGMA user_version").fetchone()
        if layout not in (0, LAYOUT):
            raise OSError("it is of another version of this program, and is left as it is")
        base.execute(f"PRAGMA application_id = {OURS}")
        base.execute(f"PRAGMA user_version = {LAYOUT}")
        for statement in _TABLES.split(";"):
            base.execute(statement)
        self._bind(bound)
        base.execute("COMMIT")
        base.execute("BEGIN EXCLUSIVE")

    def _bind(self, bound: Mapping[str, str]) -> None:
        before = dict(self._base.execute("SELECT name, value FROM bound"))
        if before == dict(bound):
            return
        if self._base.execute("SELECT 1 FROM answers LIMIT 1").fetchone():
            names = sorted({*before, *bound})
            self.dropped = tuple(name for name in names if before.get(name) != bound.get(name))
        self._base.execute("DELETE FROM answers")
        self._base.execute("DELETE FROM bound")
        self._base.executemany("INSERT INTO bound VALUES (?, ?)", bound.items())

    def put(self, file: str, done: Done) -> None:
        """Take in the answer for one file; safe from a kill a second later, or after `secure`."""
        name, answer = os.fsencode(file), zlib.compress(done.answer.encode(), 1)
        row = (name, done.content, answer, _seal(name, done.content, answer))
        try:
            self._base.execute("INSERT OR REPLACE INTO answers VALUES (?, ?, ?, ?)", row)
            if time.monotonic() - self._safe_at > EVERY_S:
                self.secure()
        except sqlite3.Error as error:
            raise StateError(f"{self.path or 'temporary file'}: {_explained(error)}") from error

    def secure(self) -> None:
        """Have all that came in on the disk."""
        self._base.execute("COMMIT")
        self._base.execute("BEGIN EXCLUSIVE")
        self._safe_at = time.monotonic()

    def get(self, file: str) -> Done | None:
        """The answer for one file; None where there is none, or one that is no longer as it was put."""
        name = os.fsencode(file)
        try:
            row = self._base.execute(
                "SELECT content, answer, seal FROM answers WHERE file = ?", (name,)
            ).fetchone()
        except sqlite3.Error:
            return None
        if row is None or row[2] != _seal(name, row[0], row[1]):
            return None
        return Done(zlib.decompress(row[1]).decode(), row[0])

    def close(self, *, remove: bool = False) -> None:
        """Let the file go, secured; or away with it."""
        if self._base.in_transaction:
            self._base.execute("COMMIT")
        self._base.close()
        if remove and self.path is not None:
            self.path.unlink(missing_ok=True)

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *error: object) -> None:
        self.close()


def _seal(name: bytes, content: str, answer: bytes) -> bytes:
    said = hashlib.sha256()
    for part in (name, content.encode(), answer):
        said.update(len(part).to_bytes(8, "big") + part)
    return said.digest()


def _explained(error: Exception) -> str:
    code = getattr(error, "sqlite_errorcode", None)
    if code in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
        return "another run is using it"
    if code in (sqlite3.SQLITE_NOTADB, sqlite3.SQLITE_CORRUPT):
        return (
            "it is no state of an earlier run, or is damaged, and is left as it is; name another with --state"
        )
    if code == sqlite3.SQLITE_FULL:
        return "the disk is full"
    return getattr(error, "strerror", None) or str(error)

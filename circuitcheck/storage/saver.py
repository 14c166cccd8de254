"""Puts bytes on the disk whole or not at all: a full disk or a kill leaves the old file as it was."""

from __future__ import annotations

import errno
import os
import stat
import sys
import time
from contextlib import suppress
from pathlib import Path
from typing import Final

from circuitcheck.storage.faults import visible
from circuitcheck.told import a_word, worded

# Another program on Windows (a scanner, a synchroniser) may hold the file open for a moment.
_TRIES: Final = 10
_PAUSE_S: Final = 0.1
# What a disk without permissions or a folder that cannot be flushed answers.
_NOT_OFFERED: Final = frozenset({errno.EINVAL, errno.ENOTSUP, errno.EOPNOTSUPP, errno.ENOSYS, errno.EBADF})

_REASONS: Final = {
    errno.ENOSPC: a_word("the disk is full"),
    errno.EDQUOT: a_word("the space allotted on this disk is used up"),
    errno.EROFS: a_word("the disk is read-only"),
    errno.EACCES: a_word("writing there is not allowed"),
    errno.EPERM: a_word("writing there is not allowed"),
    errno.EIO: a_word("the disk reports an error"),
    errno.ENOENT: a_word("the folder does not exist"),
    errno.ENOTDIR: a_word("the folder does not exist"),
    errno.ENAMETOOLONG: a_word("the name is too long"),
    errno.EFBIG: a_word("the file is too large for this disk"),
    errno.ELOOP: a_word("its link leads in a circle"),
}


class SaveError(OSError):
    """A file was not saved. Its text is one sentence, `reason` the why; the rest is as in OSError."""

    def __init__(self, number: int, sentence: str, filename: str, reason: str = "") -> None:
        super().__init__(number, sentence, filename)
        self.reason = reason

    def __str__(self) -> str:
        return str(self.strerror)


def save_bytes(path: str | os.PathLike[str], data: bytes) -> None:
    """Make `data` the content of the file, all at once; on the disk when this returns.

    A link is followed and stays a link. An existing file keeps its permissions. Whatever happens,
    the path holds the old content or the new, whole, and no other file is left behind (but one
    hidden temporary file where the process is killed). Raises SaveError, also for a file that is
    read-only or no plain file.
    """
    target = Path(os.path.realpath(path))
    try:
        _save(target, data)
    except OSError as error:
        raise _explained(error, Path(path).name, target, a_word("was not saved")) from error
    try:
        _flush_folder(target.parent)
    except OSError as error:
        # It is there to be read, but a power cut might bring the old one back.
        raise _explained(
            error, Path(path).name, target, a_word("is saved, but perhaps not for good")
        ) from error


class _RefusalError(OSError):
    """The target itself forbids to replace it; the text says why."""


def _save(target: Path, data: bytes) -> None:
    before = _state(target)
    temporary = target.parent / f".{os.urandom(8).hex()}.saving"
    # Never wider than the file it replaces, not even for the moment until the mode is set.
    mode = 0o666 if before is None else stat.S_IMODE(before.st_mode) & 0o777
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0) | getattr(os, "O_NOFOLLOW", 0)
    file = os.open(temporary, flags, mode | stat.S_IWUSR)
    try:
        try:
            _write_all(file, data)
            if before is not None:
                _keep_mode(file, stat.S_IMODE(before.st_mode))
            _flush(file)
        finally:
            os.close(file)
        _replace(temporary, target)
    except BaseException:
        with suppress(OSError):
            os.unlink(temporary)
        raise


def _state(target: Path) -> os.stat_result | None:
    """What stands at the target; None for nothing. Raises OSError where it may not be replaced."""
    try:
        state = os.lstat(target)
    except FileNotFoundError:
        return None
    if stat.S_ISLNK(state.st_mode):
        raise OSError(errno.ELOOP, os.strerror(errno.ELOOP))
    if not stat.S_ISREG(state.st_mode):
        raise _RefusalError(errno.EINVAL, "it is no plain file")
    # The owner of a computer may write anything; a file marked read-only is meant to stay.
    if not state.st_mode & (stat.S_IWUSR | stat.S_IWGRP | stat.S_IWOTH) or not os.access(target, os.W_OK):
        raise _RefusalError(errno.EACCES, "the file is read-only")
    return state


def _write_all(file: int, data: bytes) -> None:
    rest = memoryview(data)
    while rest:
        try:
            written = os.write(file, rest)
        except InterruptedError:
            continue
        if written == 0:
            raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
        rest = rest[written:]


def _keep_mode(file: int, mode: int) -> None:
    if sys.platform == "win32":
        return
    try:
        os.fchmod(file, mode)
    except OSError as error:
        # Some disks (FAT, some network folders) know no permissions and so have none to lose.
        if error.errno not in _NOT_OFFERED | {errno.EPERM}:
            raise


def _flush(file: int) -> None:
    """Have the file on the disk itself."""
    while True:
        try:
            if sys.platform == "darwin":
                import fcntl

                # fsync hands the data to the drive, which may keep it in memory; this waits for it.
                with suppress(OSError):
                    fcntl.fcntl(file, fcntl.F_FULLFSYNC)
                    return
            os.fsync(file)
            return
        except InterruptedError:
            continue


def _replace(temporary: Path, target: Path) -> None:
    for tries_left in reversed(range(_TRIES)):
        try:
            os.replace(temporary, target)
            return
        except InterruptedError:
            continue
        except PermissionError:
            if os.name != "nt" or not tries_left:
                raise
            time.sleep(_PAUSE_S)
    raise OSError(errno.EINTR, os.strerror(errno.EINTR))


def _flush_folder(folder: Path) -> None:
    """Have the new name on the disk itself, where the system can do that for a folder."""
    if os.name == "nt":
        return
    try:
        opened = os.open(folder, os.O_RDONLY)
    except PermissionError:
        # A folder may let files in that it does not list.
        return
    try:
        _flush(opened)
    except OSError as error:
        if error.errno not in _NOT_OFFERED:
            raise
    finally:
        os.close(opened)


def _explained(error: OSError, name: str, target: Path, what: str) -> SaveError:
    number = error.errno or errno.EIO
    said = str(error.strerror)
    reason = said if isinstance(error, _RefusalError) else _REASONS.get(number, said)
    sentence = worded("“{name}” {what}: {reason}.", name=visible(name), what=what, reason=reason)
    return SaveError(number, sentence, str(target), reason)

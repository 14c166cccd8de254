"""What is to be done with each of many files, whichever process or machine does it."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol, TypeVar

from circuitcheck.storage.reading import content


class Task(Protocol):
    """One file that is to be worked on."""

    @property
    def source(self) -> Path:
        """The drawing's file."""
        ...


T = TypeVar("T", bound=Task)
T_contra = TypeVar("T_contra", bound=Task, contravariant=True)


@dataclass(frozen=True, slots=True)
class Made:
    """What was made of the bytes of one file: the answer, as text, and a document where one is asked for.

    `is_lasting`: the same bytes give the same answer again, so that it may be kept.
    """

    answer: str
    document: bytes = b""
    is_lasting: bool = True


class Errand(Protocol[T_contra]):
    """An errand is sent to other processes, so it holds plain values only."""

    def bound(self) -> Mapping[str, str]:
        """All that an answer depends on beside the file's bytes and the program, by what a person calls it."""
        ...

    def made(self, data: bytes, task: T_contra) -> Made:
        """What becomes of a file's bytes. Reads and writes nothing else, so any machine can do it."""
        ...

    def put(self, made: Made, task: T_contra) -> Made:
        """Put a document where it belongs, and say so in the answer."""
        ...

    def refused(self, task: T_contra, reason: str) -> str:
        """The answer for a file that nothing could be made of."""
        ...

    def stands(self, answer: str, task: T_contra) -> bool:
        """Whether what an earlier answer tells of still is as it tells."""
        ...


@dataclass(frozen=True, slots=True)
class Done:
    """The answer for one file; `content` is the digest of the bytes it holds for, empty where it holds for now."""

    answer: str
    content: str = ""


def digest(data: bytes) -> str:
    """What tells one file's bytes from another's."""
    return hashlib.sha256(data).hexdigest()


def carry_out(errand: Errand[T], task: T) -> Done:
    """Read one file and do what is to be done. Never raises for what a file holds or a disk refuses."""
    data = read(errand, task)
    if isinstance(data, Done):
        return data
    return finish(errand, task, make(errand, data, task), digest(data))


def read(errand: Errand[T], task: T) -> bytes | Done:
    """A file's bytes, or the answer that it can't be read."""
    try:
        return content(task.source)
    except OSError as error:
        return Done(errand.refused(task, f"cannot be read: {error.strerror or error}"))


def make(errand: Errand[T], data: bytes, task: T) -> Made:
    """What is made of the bytes. One file that the program fails at does not end the work on the others."""
    try:
        return errand.made(data, task)
    except Exception as error:
        return Made(errand.refused(task, failed(error)), is_lasting=False)


def finish(errand: Errand[T], task: T, made: Made, content: str) -> Done:
    """Put what was made where it belongs."""
    put = errand.put(made, task)
    return Done(put.answer, content if put.is_lasting else "")


def failed(error: BaseException) -> str:
    """A failure inside the program as words."""
    return f"the program failed at it: {type(error).__name__}: {error}"

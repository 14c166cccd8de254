"""Work on many files: which way it is done, what is kept of it, what is taken over from an earlier run."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final, Generic

from circuitcheck.folders.errand import Done, Errand, T, carry_out, digest, read
from circuitcheck.folders.failing import InterruptedRunError, StateError
from circuitcheck.folders.keeping import Remembered, Store
from circuitcheck.folders.progress import with_progress

FEW: Final = 64
"""Answers of so few files are kept in memory, and are there again sooner than one asks for them."""
A_PROCESS: Final = 8
"""A process of its own pays from so many files on."""


@dataclass(frozen=True, slots=True)
class Ways:
    """How the work is done. `jobs`: so many at a time, None for what suits; `cluster`: a scheduler's address;
    `resume`: take over what an earlier run did; `state`: where answers are kept, else at the `usual` place."""

    usual: Path
    jobs: int | None = None
    cluster: str = ""
    resume: bool = False
    state: Path | None = None


class Answers(Generic[T]):
    """The answers, in the order of the files, from wherever they are; told anew as often as they are asked for."""

    def __init__(self, errand: Errand[T], tasks: Sequence[T], store: Store) -> None:
        self.tasks = tasks
        self._errand = errand
        self._store = store

    def __iter__(self) -> Iterator[str]:
        for task in self.tasks:
            done = self._store.get(str(task.source))
            yield done.answer if done else self._errand.refused(task, "its answer was lost from the disk")


class Run(Generic[T]):
    """One run over many files; a context that lets go of what is kept when the answers have been told."""

    def __init__(self, errand: Errand[T], tasks: Sequence[T], ways: Ways, say: Callable[[str], None]) -> None:
        self._errand, self._tasks, self._ways, self._say = errand, tasks, ways, say
        self._store: Store = Remembered()

    def __enter__(self) -> Answers[T]:
        """Do the work. Raises StateError, ClusterError and InterruptedRunError, each a sentence."""
        self._store = self._opened()
        done = 0
        try:
            waiting = self._not_yet_done()
            done = len(self._tasks) - len(waiting)
            for place, each in with_progress(self._ways_on(waiting), len(self._tasks), done):
                self._store.put(str(self._tasks[place].source), each)
                done += 1
        except KeyboardInterrupt:
            self._store.close()
            raise InterruptedRunError(self._interrupted(done)) from None
        except BaseException:
            self._store.close()
            raise
        self._store.secure()
        return Answers(self._errand, self._tasks, self._store)

    def __exit__(self, kind: object, *error: object) -> None:
        is_spare = not self._ways.resume and self._ways.state is None
        self._store.close(remove=is_spare and kind is None)

    def _opened(self) -> Store:
        ways = self._ways
        is_asked = ways.resume or ways.state is not None
        if len(self._tasks) <= FEW and not is_asked:
            return Remembered()
        from circuitcheck.folders import fingerprint
        from circuitcheck.folders.state import State

        bound = {"the program": fingerprint.program(), "the rule books": fingerprint.rules()}
        try:
            state = State(ways.state or ways.usual, {**bound, **self._errand.bound()})
        except StateError:
            if is_asked:
                raise
            return State(None, {})
        if state.dropped and ways.resume:
            self._say(f"nothing is taken over: not the same as then: {', '.join(state.dropped)}")
        return state

    def _not_yet_done(self) -> list[tuple[int, T]]:
        """What is to be done, each with its place."""
        if not self._ways.resume:
            return list(enumerate(self._tasks))
        waiting = [(place, task) for place, task in enumerate(self._tasks) if not self._is_done(task)]
        if len(waiting) < len(self._tasks):
            taken = len(self._tasks) - len(waiting)
            self._say(f"{taken:,} of {len(self._tasks):,} files are taken over from an earlier run")
        return waiting

    def _is_done(self, task: T) -> bool:
        kept = self._store.get(str(task.source))
        if kept is None or not kept.content:
            return False
        data = read(self._errand, task)
        is_same = isinstance(data, bytes) and digest(data) == kept.content
        return is_same and self._errand.stands(kept.answer, task)

    def _ways_on(self, waiting: Sequence[tuple[int, T]]) -> Iterable[tuple[int, Done]]:
        if self._ways.cluster and waiting:
            from circuitcheck.folders.cluster import on_cluster

            return on_cluster(self._errand, waiting, self._ways.cluster, self._say)
        jobs = self._ways.jobs or min(cores(), len(waiting) // A_PROCESS)
        if min(jobs, len(waiting)) <= 1:
            return ((place, carry_out(self._errand, task)) for place, task in waiting)
        from circuitcheck.folders.processes import several

        return several(self._errand, waiting, min(jobs, len(waiting)), self._say)

    def _interrupted(self, done: int) -> str:
        said = f"interrupted: {done:,} of {len(self._tasks):,} files are done"
        if self._store.path is not None:
            return f"{said} and kept; the same call with --resume goes on from there"
        return said


def cores() -> int:
    """How many processes can run at the same time here."""
    return len(os.sched_getaffinity(0)) if hasattr(os, "sched_getaffinity") else os.cpu_count() or 1

"""Several files at a time, each in a process of this machine; one that dies takes no other's work with it."""

from __future__ import annotations

import multiprocessing
import os
import signal
import threading
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from itertools import islice
from multiprocessing.connection import wait as wait_for
from typing import Final

from circuitcheck.folders.errand import Done, Errand, T, carry_out

AHEAD: Final = 4
"""So many tasks for each process are handed out before the first is done, and never all of them at once."""
TRIES: Final = 2


def several(
    errand: Errand[T], tasks: Iterable[tuple[int, T]], jobs: int, say: Callable[[str], None]
) -> Iterator[tuple[int, Done]]:
    """The answers as they are ready, each with its task's place. Says so when a process dies."""
    waiting = iter(tasks)
    while True:
        # What a process that died may have held, for which no answer came.
        held: dict[int, T] = {}
        yield from _in_a_pool(errand, waiting, jobs, held)
        if not held:
            return
        files = "a file is" if len(held) == 1 else f"{len(held)} files are"
        say(f"a process ended before its work was done; {files} tried again, one at a time")
        for place, task in held.items():
            yield place, _alone(errand, task)


def _in_a_pool(
    errand: Errand[T], waiting: Iterator[tuple[int, T]], jobs: int, held: dict[int, T]
) -> Iterator[tuple[int, Done]]:
    """Answers until nothing waits, or a process dies: then `held` has the tasks handed out and not answered."""
    pool = _pool(jobs)
    running: dict[Future[Done], int] = {}
    try:
        while True:
            for place, task in islice(waiting, jobs * AHEAD - len(running)):
                held[place] = task
                running[pool.submit(carry_out, errand, task)] = place
            if not running:
                return
            for future in wait(running, return_when=FIRST_COMPLETED).done:
                place = running.pop(future)
                done = future.result()
                del held[place]
                yield place, done
    except BrokenProcessPool:
        return
    finally:
        _end(pool)


def _alone(errand: Errand[T], task: T) -> Done:
    """The answer for a file that may be what a process died of."""
    for _ in range(TRIES):
        pool = _pool(1)
        try:
            return pool.submit(carry_out, errand, task).result()
        except BrokenProcessPool:
            continue
        finally:
            _end(pool)
    reason = f"the process that worked on it ended before it was done, {TRIES + 1} times"
    return Done(errand.refused(task, reason))


def _pool(jobs: int) -> ProcessPoolExecutor:
    # A process that is started afresh holds nothing of this one's threads and open files.
    has_server = "forkserver" in multiprocessing.get_all_start_methods()
    context = multiprocessing.get_context("forkserver" if has_server else "spawn")
    return ProcessPoolExecutor(jobs, mp_context=context, initializer=_begin)


def _end(pool: ProcessPoolExecutor) -> None:
    """Let what runs end, and nothing more begin. Whoever can't wait for that (Ctrl-C again) ends it at once."""
    try:
        pool.shutdown(wait=True, cancel_futures=True)
    except KeyboardInterrupt:
        for child in multiprocessing.active_children():
            child.terminate()
        raise


def _begin() -> None:
    """In a new process: Ctrl-C is the first process's to answer, and without the first there is nothing to do."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    parent = multiprocessing.parent_process()
    if parent is not None:
        threading.Thread(target=_end_with, args=(parent.sentinel,), daemon=True).start()


def _end_with(sentinel: int) -> None:
    wait_for([sentinel])
    os._exit(1)

"""The same work on other machines, on a cluster of Dask: files are sent as bytes, answers come back."""

from __future__ import annotations

import logging
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from itertools import islice
from typing import Any, Final

from circuitcheck.folders import fingerprint
from circuitcheck.folders.errand import Done, Errand, Made, T, digest, finish, make, read
from circuitcheck.folders.failing import ClusterError

AHEAD: Final = 4
CONNECT_S: Final = 20
LOOK_S: Final = 1.0
"""So often it is looked after which workers are there."""
PATIENCE_S: Final = 60.0
"""So long a cluster may be without a worker."""


def on_cluster(
    errand: Errand[T], tasks: Sequence[tuple[int, T]], address: str, say: Callable[[str], None]
) -> Iterator[tuple[int, Done]]:
    """The answers as they are ready, each with its task's place. Raises ClusterError.

    This process reads the files and writes what is to be written; the workers need no common disk. A worker
    that dies is told of; the scheduler gives its files to another, and after some deaths gives a file up.
    """
    client = _client(address)
    try:
        yield from _Work(errand, client, address, say).all(tasks)
    finally:
        client.close(timeout=5)


def made_there(errand: Errand[T], data: bytes, task: T) -> tuple[str, Made]:
    """On a worker: what is made of the bytes, and which program made it."""
    return fingerprint.program(), make(errand, data, task)


def _client(address: str) -> Any:
    """The library's client. The library tells no types of what it does."""
    try:
        import distributed
    except ImportError as error:
        raise ClusterError(
            f"--cluster needs what 'pip install circuitcheck[cluster]' brings along ({error})"
        ) from error
    # What becomes of the cluster is told here, in sentences.
    for name in ("distributed", "distributed.client", "distributed.core"):
        logging.getLogger(name).setLevel(logging.CRITICAL)
    try:
        client: Any = distributed.Client
        return client(address, timeout=CONNECT_S, name="circuitcheck")
    except (OSError, ValueError) as error:
        raise ClusterError(f"{address}: no scheduler answers there ({error})") from error


class _Work:
    """The files that are with the cluster, and its workers as they were last seen."""

    def __init__(self, errand: Errand[T], client: Any, address: str, say: Callable[[str], None]) -> None:
        self._errand: Errand[Any] = errand
        self._client, self._address, self._say = client, address, say
        self._sent: dict[Any, tuple[int, Any, str]] = {}
        self._workers: dict[str, int] = {}
        self._looked_at = self._seen_at = time.monotonic()

    def all(self, tasks: Sequence[tuple[int, T]]) -> Iterator[tuple[int, Done]]:
        from distributed import CancelledError
        from distributed.comm.core import CommClosedError

        waiting = iter(tasks)
        try:
            self._look()
            while True:
                yield from self._send(waiting)
                if not self._sent:
                    # A worker may have gone since, and others were so quick that nobody was told. What is done
                    # stays done though the scheduler be gone by now.
                    with suppress(OSError):
                        self._see()
                    return
                yield from self._ready()
        except (CancelledError, CommClosedError) as error:
            raise ClusterError(f"{self._address}: the scheduler is gone; {_KEPT}") from error
        finally:
            if self._sent and self._client.status == "running":
                self._client.cancel(list(self._sent), force=True)

    def _send(self, waiting: Iterator[tuple[int, T]]) -> Iterator[tuple[int, Done]]:
        """Send so many files that no worker waits for one; answers those that can't be read."""
        room = max(2, sum(self._workers.values())) * AHEAD - len(self._sent)
        for place, task in islice(waiting, max(0, room)):
            data = read(self._errand, task)
            if isinstance(data, Done):
                yield place, data
                continue
            future = self._client.submit(made_there, self._errand, data, task, pure=False)
            self._sent[future] = (place, task, digest(data))

    def _ready(self) -> Iterator[tuple[int, Done]]:
        import distributed

        wait: Any = distributed.wait
        try:
            ready = wait(list(self._sent), timeout=LOOK_S, return_when="FIRST_COMPLETED").done
        except TimeoutError:
            ready = set()
        for future in ready:
            place, task, content = self._sent.pop(future)
            yield place, self._done(future, task, content)
        if time.monotonic() - self._looked_at > LOOK_S:
            self._look()

    def _done(self, future: Any, task: Any, content: str) -> Done:
        from distributed import KilledWorker

        try:
            program, made = future.result()
        except KilledWorker:
            return Done(self._errand.refused(task, "every worker that took it up died before it was done"))
        except (ImportError, AttributeError, TypeError) as error:
            raise ClusterError(
                f"a worker has not this program, or another version of it ({error})"
            ) from error
        if program != fingerprint.program():
            raise ClusterError(
                f"a worker runs another program than this machine: {program} there, {fingerprint.program()} here"
            )
        return finish(self._errand, task, made, content)

    def _see(self) -> None:
        """See which workers are there; say which is gone."""
        now: dict[str, int] = self._client.nthreads()
        for gone in sorted(self._workers.keys() - now.keys()):
            self._say(f"the worker at {gone} is gone; what it had not done is given to another")
        self._workers = now

    def _look(self) -> None:
        """See which workers are there. Raises ClusterError where there is none for long."""
        self._see()
        self._looked_at = time.monotonic()
        if self._workers:
            self._seen_at = self._looked_at
        elif self._looked_at - self._seen_at > PATIENCE_S:
            raise ClusterError(f"{self._address}: no worker for {PATIENCE_S:.0f} s; {_KEPT}")


_KEPT: Final = "what is done is kept, and the same call with --resume goes on from there"

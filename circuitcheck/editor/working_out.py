"""Works something out of the drawing beside the window; an answer to an older question is dropped."""

from __future__ import annotations

import logging
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor
from typing import Any

from PySide6.QtCore import QObject, QTimer, Signal

from circuitcheck.wanted import NoLongerWantedError, while_wanted

Work = Callable[[Any], object]

UNFINISHED = object()
"""In place of what was worked out, where it was given up on the way."""


class WorkingOut(QObject):
    """Signals `found` with the drawing last asked for and what was worked out of it; None where that
    failed inside the program. In place of a drawing any question will do: one is told from another by
    identity.

    While nothing is wanted no thread runs: it starts with the first drawing asked for. Once closed, work ends
    the next time that it asks whether it is wanted (`circuitcheck.wanted`); with `gives_up` it does so too when
    something else is asked or nothing any more. Else it is done to its end: what it found may serve the next.
    """

    found = Signal(object, object)
    _done = Signal(object, object)

    def __init__(
        self,
        work: Work,
        name: str,
        pause_ms: int,
        parent: QObject | None = None,
        *,
        gives_up: bool = False,
    ) -> None:
        super().__init__(parent)
        self._work_out = work
        self._gives_up = gives_up
        self._wanted: object | None = None
        self._running: Future[None] | None = None
        self._closed = False
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix=name)
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(pause_ms)
        self._pause.timeout.connect(self._start)
        self._done.connect(self._finished)

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._wanted is not None

    def ask(self, drawing: object) -> None:
        """Work this drawing out; whatever was asked before is no longer wanted."""
        if not self._closed:
            self._wanted = drawing
            self._pause.start()

    def forget(self) -> None:
        """No answer is wanted any more."""
        self._wanted = None
        self._pause.stop()

    def close(self) -> None:
        """Stop: nothing is signalled any more, and the thread has ended when this returns."""
        self._closed = True
        self.forget()
        self._thread.shutdown(wait=True, cancel_futures=True)

    def _start(self) -> None:
        if self._running is None and self._wanted is not None:
            self._running = self._thread.submit(self._work, self._wanted)

    def _work(self, drawing: object) -> None:
        """In the other thread: the signal is queued and arrives in the window's."""
        try:
            with while_wanted(lambda: self._is_wanted(drawing)):
                result = self._work_out(drawing)
        except NoLongerWantedError:
            result = UNFINISHED
        except Exception:
            logging.getLogger(__name__).exception("Working out the drawing failed")
            result = None
        self._done.emit(drawing, result)

    def _is_wanted(self, drawing: object) -> bool:
        """Asked in the other thread."""
        return not self._closed and (not self._gives_up or drawing is self._wanted)

    def _finished(self, drawing: object, result: object) -> None:
        self._running = None
        if drawing is self._wanted and result is not UNFINISHED:
            self._wanted = None
            self.found.emit(drawing, result)
        elif not self._pause.isActive():
            self._start()

"""Analyses drawings beside the window: one at a time, the newest wins, a failure is never silent."""

from __future__ import annotations

import logging
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.report.finding_text import FAILED

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.rechecking import Rechecker

Analyse = Callable[[Drawing], "Analysis"]
PAUSE_MS = 30
"""How long the drawing must rest before it is analysed: less than one feels, more than one step of a drag."""


class Analyser(QObject):
    """Signals `analysed` with each Analysis that is still of the drawing last asked for."""

    analysed = Signal(object)
    _done = Signal(object)

    def __init__(self, analyse: Analyse | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._analyse = analyse or one_after_another()
        self._wanted: Drawing | None = None
        self._running: Future[None] | None = None
        self._closed = False
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix="analysis")
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(PAUSE_MS)
        self._pause.timeout.connect(self._start)
        self._done.connect(self._finished)

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._wanted is not None

    def ask(self, drawing: Drawing) -> None:
        """Have a drawing analysed; whatever was asked before is no longer wanted."""
        if not self._closed:
            self._wanted = drawing
            self._pause.start()

    def close(self) -> None:
        """Stop: nothing is signalled any more, and the thread has ended when this returns."""
        self._closed = True
        self._pause.stop()
        self._wanted = None
        self._thread.shutdown(wait=True, cancel_futures=True)

    def _start(self) -> None:
        if self._running is None and self._wanted is not None:
            self._running = self._thread.submit(self._work, self._wanted)

    def _work(self, drawing: Drawing) -> None:
        """In the other thread: the signal is queued and arrives in the window's."""
        try:
            result = self._analyse(drawing)
        except Exception as error:
            logging.getLogger(__name__).exception("The analysis failed")
            result = failed(drawing, error)
        self._done.emit(result)

    def _finished(self, result: Analysis) -> None:
        self._running = None
        if result.drawing is self._wanted:
            self._wanted = None
            self.analysed.emit(result)
        elif not self._pause.isActive():
            self._start()


def one_after_another() -> Analyse:
    """Judges the drawings it is given, and after an edit only what that can bear on."""
    checker: Rechecker | None = None

    def analyse(drawing: Drawing) -> Analysis:
        # Here and not at the top: the window shows before the checks are read.
        nonlocal checker
        if checker is None:
            from circuitcheck.rechecking import Rechecker

            checker = Rechecker()
        return checker.analyse(drawing)

    return analyse


def failed(drawing: Drawing, error: Exception) -> Analysis:
    """What stands in the list when the analysis as a whole failed: nothing was judged, and that is said."""
    from circuitcheck.analysis import Analysis
    from circuitcheck.checks.catalogue import checks

    names = tuple(checks())
    finding = Finding(
        FAILED,
        Grade.UNANSWERED,
        Says(
            "The checks failed inside the program and have judged nothing: {error}.",
            {"error": f"{type(error).__name__}: {error}"},
        ),
        would_be=Grade.DANGER,
    )
    return Analysis(
        drawing,
        (finding,),
        judged=(),
        not_applicable=(),
        not_judged=names,
        crashed=names,
        taken=(),
        rule_book="",
        why_not_judged=dict.fromkeys(names, "it failed inside the program"),
    )

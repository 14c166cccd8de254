"""Looks for the cures of a finding beside the window; an answer to an older question is dropped."""

from __future__ import annotations

import logging
from concurrent.futures import ThreadPoolExecutor
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from circuitcheck.finding import Finding

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.cures import Cure


class Curer(QObject):
    """Signals `found` with the finding last asked for and its cures."""

    found = Signal(object, object)
    _done = Signal(object, object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._wanted: Finding | None = None
        self._closed = False
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix="cures")
        self._done.connect(self._finished)

    def ask(self, analysis: Analysis, finding: Finding) -> None:
        """Look for the cures of a finding of that analysis."""
        if not self._closed:
            self._wanted = finding
            self._thread.submit(self._work, analysis, finding)

    def forget(self) -> None:
        """No answer is wanted any more."""
        self._wanted = None

    def close(self) -> None:
        """Stop; the thread has ended when this returns."""
        self._closed = True
        self._wanted = None
        self._thread.shutdown(wait=True, cancel_futures=True)

    def _work(self, analysis: Analysis, finding: Finding) -> None:
        if finding is not self._wanted:
            return
        found: tuple[Cure, ...] = ()
        try:
            from circuitcheck.cures import cures

            found = cures(analysis, finding)
        except Exception:
            # The finding stands without a cure; what went wrong is in the log.
            logging.getLogger(__name__).exception("Looking for cures of %s failed", finding.check)
        self._done.emit(finding, found)

    def _finished(self, finding: Finding, cures: tuple[Cure, ...]) -> None:
        if finding is self._wanted:
            self._wanted = None
            self.found.emit(finding, cures)

"""Takes every exception that nobody caught: a line in the log, a copy of the drawing, one dialog, an end."""

from __future__ import annotations

import logging
import sys
import threading
from collections.abc import Callable
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QStandardPaths
from PySide6.QtWidgets import QApplication

from circuitcheck.editor.failing.log import Log
from circuitcheck.editor.failing.report import report, trace_of

EXIT_STATUS = 70
"""EX_SOFTWARE of BSD's sysexits.h: an internal error."""

Rescue = Callable[[], list[Path]]
"""Keeps what is unsaved for the next start, and returns the files it is kept in."""


def folder() -> Path:
    """Where the log and rescued drawings go; made where it is not there."""
    found = Path(QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppDataLocation))
    found.mkdir(parents=True, exist_ok=True)
    return found


class CrashHook:
    """Takes every exception that nobody caught. Only the first is told; the program then ends."""

    def __init__(self, rescue: Rescue, log: Log) -> None:
        self._rescue, self._log = rescue, log
        self._is_telling = False
        self._before = (sys.excepthook, threading.excepthook)
        self.status = 0

    def install(self) -> None:
        """From now on take exceptions, those of other threads too."""
        sys.excepthook = self.take
        threading.excepthook = self._take_from_thread

    def uninstall(self) -> None:
        """Give the hooks back."""
        sys.excepthook, threading.excepthook = self._before

    def take(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        """Log, rescue, tell once, end with a status that says so."""
        if issubclass(kind, KeyboardInterrupt):
            QApplication.exit(130)
            return
        # The end of the log goes into the report beside the failure: not the same twice.
        noted = self._log.last_lines()
        logging.getLogger("circuitcheck").critical("The program failed", exc_info=(kind, error, trace))
        self.status = EXIT_STATUS
        if self._is_telling:
            return
        self._is_telling = True
        try:
            self._tell(report(trace_of(kind, error, trace), noted), self._rescued())
        except Exception:
            # The log has the failure, the next start the drawing; a second one would hide that.
            logging.getLogger("circuitcheck").exception("The failure could not be shown")
        finally:
            QApplication.exit(EXIT_STATUS)

    def _take_from_thread(self, hook: threading.ExceptHookArgs) -> None:
        if hook.exc_value is None:
            return
        logging.getLogger("circuitcheck").critical(
            "A thread failed", exc_info=(hook.exc_type, hook.exc_value, hook.exc_traceback)
        )
        self.status = EXIT_STATUS

    def _rescued(self) -> list[Path]:
        try:
            return self._rescue()
        except Exception:
            logging.getLogger("circuitcheck").exception("The drawing could not be rescued")
            return []

    def _tell(self, told: str, rescued: list[Path]) -> None:
        from circuitcheck.editor.failing.dialog import failed_dialog

        failed_dialog(QApplication.activeWindow(), told, len(rescued)).exec()

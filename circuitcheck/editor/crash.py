"""What happens when the program itself fails: a log, a copy of the drawing, one plain dialog, an end."""

from __future__ import annotations

import logging
import sys
import threading
from collections.abc import Callable
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QStandardPaths
from PySide6.QtWidgets import QApplication, QMessageBox

from circuitcheck.editor import plain

EXIT_STATUS = 70
"""EX_SOFTWARE of BSD's sysexits.h: an internal error."""

LOG_NAME = "circuitcheck.log"
Rescue = Callable[[], list[Path]]
"""Keeps what is unsaved for the next start, and returns the files it is kept in."""


def folder() -> Path:
    """Where the log and rescued drawings go; made where it is not there."""
    found = Path(QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppDataLocation))
    found.mkdir(parents=True, exist_ok=True)
    return found


class CrashHook:
    """Takes every exception that nobody caught. Only the first is told; the program then ends."""

    def __init__(self, rescue: Rescue) -> None:
        self._rescue = rescue
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
        logging.getLogger("circuitcheck").critical("The program failed", exc_info=(kind, error, trace))
        self.status = EXIT_STATUS
        if self._is_telling:
            return
        self._is_telling = True
        try:
            self._tell(f"{kind.__name__}: {error}", self._rescued())
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

    def _tell(self, what: str, rescued: list[Path]) -> None:
        kept = "What was not saved is kept, and is offered when the program starts again."
        if not rescued:
            kept = "There was no unsaved drawing to keep."
        box = plain.message(
            QApplication.activeWindow(),
            "The program failed and has to close.",
            f"{kept} What happened is written in {folder() / LOG_NAME}.",
            icon=QMessageBox.Icon.Critical,
            details="\n".join([what, *map(str, rescued)]),
        )
        box.exec()


def log_to_file() -> None:
    """Write warnings and worse to the log, beside what goes to standard error."""
    try:
        handler = logging.FileHandler(folder() / LOG_NAME, encoding="utf-8", delay=True)
    except OSError:
        # Without a place for a log the program works all the same.
        return
    handler.setFormatter(logging.Formatter("%(asctime)s %(levelname)s %(message)s"))
    handler.setLevel(logging.WARNING)
    logging.getLogger().addHandler(handler)

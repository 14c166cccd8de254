"""The log on the user's machine: warnings and worse, of bounded size, without the name of whoever is at it."""

from __future__ import annotations

import faulthandler
import logging
from contextlib import suppress
from io import FileIO
from pathlib import Path
from typing import Final

LOG_NAME: Final = "circuitcheck.log"
DEATH_NAME: Final = "circuitcheck.death"
"""Where the system's own fault leaves what each thread was at: of that no Python code comes to tell."""

MOST_BYTES: Final = 256 * 1024
BACKUPS: Final = 1
LAST_LINES: Final = 80
_FORM: Final = "%(asctime)s %(levelname)s %(message)s"


def without_home(text: str) -> str:
    """A text in which the user's own folder is `~`: its path mostly holds a person's name."""
    home = str(Path.home())
    return text.replace(home, "~") if len(home) > 1 else text


class _Nameless(logging.Formatter):
    """Lines of the log, traces and all, without the user's folder."""

    def format(self, record: logging.LogRecord) -> str:
        return without_home(super().format(record))


class _WhenNeeded(logging.Handler):
    """Writes to a file of bounded size. What writes it is read with the first line: most starts note nothing."""

    def __init__(self, file: Path) -> None:
        super().__init__(logging.WARNING)
        self._file = file
        self._writer: logging.Handler | None = None

    def emit(self, record: logging.LogRecord) -> None:
        """Write a line; on a disk that is full, none."""
        if self._writer is None:
            from logging.handlers import RotatingFileHandler

            self._writer = RotatingFileHandler(
                self._file, maxBytes=MOST_BYTES, backupCount=BACKUPS, encoding="utf-8", delay=True
            )
            self._writer.setFormatter(_Nameless(_FORM))
            # It must not print a trace for every line that a disk does not take.
            self._writer.handleError = lambda record: None  # type: ignore[method-assign]
        self._writer.emit(record)

    def close(self) -> None:
        """Let go of the file."""
        if self._writer is not None:
            self._writer.close()
        super().close()


class Log:
    """The two files in the program's folder. Without a place for them the program works all the same."""

    def __init__(self, folder: Path) -> None:
        self.file = folder / LOG_NAME
        self._death = folder / DEATH_NAME
        self._handler: logging.Handler | None = None
        self._open: FileIO | None = None

    def begin(self) -> None:
        """From now on write what is logged, and what the system's own faults leave."""
        self._handler = _WhenNeeded(self.file)
        logging.getLogger().addHandler(self._handler)
        with suppress(OSError):
            self._take_in_death()
            self._open = FileIO(self._death, "a")
            faulthandler.enable(self._open)

    def end(self) -> None:
        """Write no more; a program that ends well leaves nothing of a death."""
        if self._handler is not None:
            logging.getLogger().removeHandler(self._handler)
            self._handler.close()
            self._handler = None
        if self._open is not None:
            faulthandler.disable()
            self._open.close()
            self._open = None
            with suppress(OSError):
                if self._death.stat().st_size == 0:
                    self._death.unlink()

    def last_lines(self) -> str:
        """The end of the log, as it stands; empty where nothing was noted."""
        try:
            with self.file.open("rb") as opened:
                opened.seek(max(0, self.file.stat().st_size - MOST_BYTES))
                text = opened.read().decode("utf-8", "replace")
        except OSError:
            return ""
        return "\n".join(text.splitlines()[-LAST_LINES:])

    def _take_in_death(self) -> None:
        """What an earlier start died of, if so, goes into the log; and is known then."""
        try:
            with self._death.open("rb") as opened:
                told = opened.read(MOST_BYTES // 4).decode("utf-8", "replace").strip()
        except FileNotFoundError:
            return
        if told:
            logging.getLogger("circuitcheck").critical(
                "The program was ended by the system's fault\n%s", told
            )
            self._death.write_bytes(b"")

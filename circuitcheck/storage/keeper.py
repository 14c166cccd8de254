"""Keeps the newest state of a drawing in its slot, in a thread of its own: no step waits for the disk."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path
from typing import Final

from circuitcheck.drawing.value import Drawing
from circuitcheck.storage.recovery import Origin, Slot
from circuitcheck.storage.saver import SaveError

# A step is on the disk well within a second, and a burst of steps does not keep the disk busy.
PAUSE_S: Final = 0.25
# After a refusal (a full disk, say) it is tried again without being asked, but not all the time.
RETRY_S: Final = 2.0

Told = Callable[[str], None]
"""Hears why nothing is kept, from the keeper's thread; an empty text: it is kept again."""


class Keeper:
    """What is asked for last wins. The thread and the slot are there from the first drawing on."""

    def __init__(
        self, folder: Path, told: Told, slot: Slot | None = None, *, pause_s: float = PAUSE_S
    ) -> None:
        self._folder, self._told, self._slot, self._pause_s = folder, told, slot, pause_s
        self._changed = threading.Condition()
        self._wanted: tuple[Drawing, Origin] | None = None
        self._is_due = self._is_writing = self._is_ending = False
        self._failed = ""
        self._thread: threading.Thread | None = None

    @property
    def file(self) -> Path | None:
        """Where the drawing is kept; None before the first."""
        return None if self._slot is None else self._slot.file

    def keep(self, drawing: Drawing, origin: Origin) -> None:
        """Have a drawing kept; returns at once."""
        self._ask((drawing, origin))

    def forget(self) -> None:
        """Have nothing kept: the drawing is saved, or is not wanted; returns at once."""
        if self._thread is not None or self._slot is not None:
            self._ask(None)

    def flush(self, timeout_s: float) -> bool:
        """Wait until what was asked for is done; False where that takes too long or the disk refuses."""
        with self._changed:
            return self._changed.wait_for(self._is_done, timeout_s) and not self._failed

    def _is_done(self) -> bool:
        return not self._is_writing and (not self._is_due or bool(self._failed))

    def close(self) -> None:
        """Keep nothing more and empty the slot; the thread has ended when this returns."""
        self._end()
        if self._slot is not None:
            self._slot.close()
            self._slot = None

    def leave(self, timeout_s: float = 5.0) -> Path | None:
        """End with the drawing still kept, for the next start; returns its file where there is one."""
        self.flush(timeout_s)
        self._end()
        if self._slot is None:
            return None
        slot, self._slot = self._slot, None
        slot.leave()
        return slot.file if slot.file.exists() else None

    def _ask(self, wanted: tuple[Drawing, Origin] | None) -> None:
        with self._changed:
            if self._is_ending:
                return
            self._wanted, self._is_due = wanted, True
            if self._thread is None:
                self._thread = threading.Thread(target=self._work, name="recovery", daemon=True)
                self._thread.start()
            self._changed.notify_all()

    def _end(self) -> None:
        with self._changed:
            self._is_ending, self._is_due = True, False
            self._changed.notify_all()
        if self._thread is not None:
            self._thread.join()
            self._thread = None

    def _work(self) -> None:
        while True:
            with self._changed:
                self._changed.wait_for(lambda: self._is_due or self._is_ending)
                if self._is_ending:
                    return
                wanted, self._is_due, self._is_writing = self._wanted, False, True
            failed = self._put(wanted)
            with self._changed:
                changed, self._failed, self._is_writing = failed != self._failed, failed, False
                self._is_due = self._is_due or bool(failed)
                self._changed.notify_all()
            if changed:
                self._told(failed)
            with self._changed:
                self._changed.wait_for(lambda: self._is_ending, RETRY_S if failed else self._pause_s)

    def _put(self, wanted: tuple[Drawing, Origin] | None) -> str:
        """Do what was asked for; returns why it was not done."""
        try:
            if wanted is None:
                if self._slot is not None:
                    self._slot.forget()
                return ""
            if self._slot is None:
                self._slot = Slot(self._folder)
            self._slot.keep(*wanted)
        except SaveError as error:
            return error.reason
        except OSError as error:
            # A lock that cannot be had is one too.
            return error.strerror or str(error)
        return ""

"""Every dialog and message box of the program one after another, for whatever is to be seen to on each of them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime
from functools import partial
from pathlib import Path

import pytest
from PySide6.QtWidgets import QDialog, QMessageBox, QWidget

from circuitcheck.editor import recovering
from circuitcheck.editor.about import about_box
from circuitcheck.editor.document import FileChangedError
from circuitcheck.editor.failing.dialog import failed_dialog, noted_dialog
from circuitcheck.editor.files import Files
from circuitcheck.editor.hand_over_dialog import HandOverDialog
from circuitcheck.editor.opened_twice import OpenedTwice
from circuitcheck.editor.review.accepting import AcceptDialog
from circuitcheck.editor.window import MainWindow
from circuitcheck.storage.recovery import Left, Origin

Seen = Callable[[str, QWidget], None]
LONG_NAME = Path("a-house-with-a-very-long-name-on-the-corner-of-quarry-terrace.wetcircuit")
KEPT_AT = datetime(2026, 11, 25, 16, 40, tzinfo=UTC)


def dialogs(window: MainWindow, see: Seen) -> None:
    """The dialogs of a window in which a drawing with a finding is shown."""
    drawing, finding = window.document.drawing, window.findings.findings[0]
    shown: tuple[tuple[str, QDialog], ...] = (
        ("hand over", HandOverDialog(window)),
        ("about", about_box(window)),
        ("report", noted_dialog(window, "What was noted", is_anything=True)),
        ("failed", failed_dialog(window, "What was noted", 2)),
        ("accept", AcceptDialog(window, drawing, finding, "", date.today())),
    )
    for name, dialog in shown:
        dialog.show()
        see(name, dialog)
        dialog.close()


def messages(window: MainWindow, folder: Path, monkeypatch: pytest.MonkeyPatch, see: Seen) -> None:
    """The message boxes that ask something; each is left without an answer."""
    left = [
        Left(folder / str(each), LONG_NAME.stem, Origin(folder / LONG_NAME), KEPT_AT) for each in range(2)
    ]
    twice = OpenedTwice(window, folder / "open", lambda: [window])
    broken = folder / LONG_NAME
    broken.write_text('{"format": "wetcircuit"}', encoding="utf-8")
    asked: tuple[tuple[str, Callable[[], object]], ...] = (
        ("unsaved", lambda: Files.ask_unsaved(window.files)),
        ("replace", lambda: window.files.ask_replace(LONG_NAME)),
        (
            "changed meanwhile",
            lambda: window.files.ask_overwrite(FileChangedError(LONG_NAME)),
        ),
        ("cannot be read", lambda: window.files.open_path(broken)),
        ("opened twice", lambda: twice.ask(LONG_NAME, window)),
        ("left behind", lambda: recovering.ask(window, left)),
    )

    for name, ask in asked:
        with monkeypatch.context() as patched:
            patched.setattr(QMessageBox, "exec", _left_after(partial(see, name)))
            ask()
    twice.close()


def _left_after(see: Callable[[QWidget], None]) -> Callable[[QMessageBox], int]:
    def leave(box: QMessageBox) -> int:
        box.show()
        see(box)
        box.close()
        return QMessageBox.StandardButton.Cancel.value

    return leave

"""From the menu: what the program has noted of its own failures, to look at and to hand on."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from circuitcheck.editor.crash import folder
from circuitcheck.editor.failing.dialog import noted_dialog
from circuitcheck.editor.failing.log import Log
from circuitcheck.editor.failing.report import report


def show_noted(window: QWidget) -> None:
    """Show the end of the log."""
    noted = Log(folder()).last_lines()
    noted_dialog(window, report("", noted), is_anything=bool(noted)).exec()

"""Starts the editor: the application, its fonts and colours, one window."""

from __future__ import annotations

import sys
from pathlib import Path
from time import strftime

from PySide6.QtCore import QCoreApplication, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from circuitcheck.editor import remembered
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.crash import CrashHook, folder, log_to_file
from circuitcheck.editor.document import ENDING, Document
from circuitcheck.editor.fonts import use_window_font
from circuitcheck.editor.icons import kind_icon
from circuitcheck.editor.theme import light
from circuitcheck.editor.window import MainWindow

EMBLEM = "heat_source"
"""The kind whose symbol stands for the program."""


def run(argv: list[str]) -> int:
    """Open a window, with the file named first in `argv` if there is one. Returns the exit status."""
    application = QApplication.instance() or QApplication([sys.argv[0]])
    if not isinstance(application, QApplication):
        raise TypeError("A Qt application without windows is running already.")
    QCoreApplication.setOrganizationName("circuitcheck")
    QCoreApplication.setApplicationName("circuitcheck")
    QGuiApplication.setApplicationDisplayName("")
    log_to_file()
    use_window_font(application)
    document = Document()
    hook = CrashHook(lambda: rescue(document))
    hook.install()
    try:
        settings = remembered.settings()
        appearances = Appearances(settings, application)
        appearances.apply()
        application.setWindowIcon(kind_icon(EMBLEM, light()))
        window = MainWindow(document, settings, appearances)
        window.show()
        if argv:
            # Once the window stands, so that a file that cannot be read is told before it.
            QTimer.singleShot(0, window, lambda: window.files.read(Path(argv[0])))
        status = application.exec()
        return hook.status or status
    finally:
        hook.uninstall()
        document.close()


def rescue(document: Document) -> Path | None:
    """Keep what is unsaved beside the log; returns the file, or None where nothing was unsaved."""
    if not document.is_unsaved:
        return None
    from circuitcheck.storage.writing import write

    path = folder() / f"rescued-{strftime('%Y-%m-%d-%H%M%S')}{ENDING}"
    write(document.drawing, path)
    return path

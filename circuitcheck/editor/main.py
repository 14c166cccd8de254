"""Starts the editor: the application, its fonts and colours, one window."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from circuitcheck.editor import remembered
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.collecting import Collecting
from circuitcheck.editor.coming_up import ComingUp
from circuitcheck.editor.crash import CrashHook, folder
from circuitcheck.editor.failing.log import Log
from circuitcheck.editor.giving_way import giving_way
from circuitcheck.editor.windows import Windows
from circuitcheck.garbage import no_collection

RECOVERY_FOLDER = "recovery"
"""What is unsaved is kept there, inside the program's own folder on the user's machine."""
EMBLEM = "heat_source"
"""The kind whose symbol stands for the program."""


def run(argv: list[str]) -> int:
    """Open a window, with the file named first in `argv` if there is one. Returns the exit status."""
    with no_collection():
        return _run(argv)


def _run(argv: list[str]) -> int:
    application = QApplication.instance() or QApplication([sys.argv[0]])
    if not isinstance(application, QApplication):
        raise TypeError("A Qt application without windows is running already.")
    QCoreApplication.setOrganizationName("circuitcheck")
    QCoreApplication.setApplicationName("circuitcheck")
    QGuiApplication.setApplicationDisplayName("")
    log = Log(folder())
    log.begin()
    settings = remembered.settings()
    appearances = Appearances(settings, application)
    windows = Windows(settings, appearances, folder() / RECOVERY_FOLDER)
    hook = CrashHook(windows.keep_all, log)
    hook.install()
    collecting = Collecting(application)
    spoken: list[QTranslator] = []

    def furnish_program() -> None:
        # Here and not at the top: the bare window stands on the screen before these are read.
        from circuitcheck.editor.fonts import use_window_font
        from circuitcheck.editor.icons import kind_icon
        from circuitcheck.editor.language import chosen, speak
        from circuitcheck.editor.theme import light

        appearances.follow()
        use_window_font(application)
        # Before the first text: what is made is made in one language.
        spoken.extend(speak(chosen(settings), application))
        application.setWindowIcon(kind_icon(EMBLEM, light()))

    try:
        appearances.begin()
        coming_up = ComingUp(windows, furnish_program, Path(argv[0]) if argv else None)
        with giving_way():
            status = application.exec()
        coming_up.end()
        return hook.status or status
    finally:
        for translator in spoken:
            application.removeTranslator(translator)
        hook.uninstall()
        windows.close_documents()
        collecting.stop()
        # Here and not at the top: nobody copies before the window stands.
        from circuitcheck.editor import clipboard

        clipboard.let_go()
        log.end()

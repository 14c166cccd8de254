"""Starts the editor: the application, its fonts and colours, one window."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QTimer
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from circuitcheck.editor import remembered
from circuitcheck.editor.after_painting import AfterPainting
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.collecting import Collecting
from circuitcheck.editor.crash import CrashHook, folder
from circuitcheck.editor.failing.log import Log
from circuitcheck.editor.fonts import use_window_font
from circuitcheck.editor.giving_way import giving_way
from circuitcheck.editor.icons import kind_icon
from circuitcheck.editor.language import chosen, speak
from circuitcheck.editor.theme import light
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
    use_window_font(application)
    settings = remembered.settings()
    # Before the first widget: what is made is made in one language.
    spoken = speak(chosen(settings), application)
    appearances = Appearances(settings, application)
    windows = Windows(settings, appearances, folder() / RECOVERY_FOLDER)
    hook = CrashHook(windows.keep_all, log)
    hook.install()
    collecting = Collecting(application)
    try:
        appearances.apply()
        application.setWindowIcon(kind_icon(EMBLEM, light()))
        window = windows.first()
        rest = AfterPainting(window.sheet.viewport(), lambda: windows.furnish(window))

        def begin() -> None:
            if argv:
                window.files.read(Path(argv[0]))
            # What is told of the file is answered before this goes on; the window may be closed by then.
            if windows.open:
                rest.wait(go_on)

        def go_on() -> None:
            if windows.open:
                windows.offer_recovered()
            if len(windows.open) == 1:
                windows.open[0].starting.show_if_empty()

        # Once the window stands, so that what is told is told before it.
        QTimer.singleShot(0, window, begin)
        with giving_way():
            status = application.exec()
        # Ended at once, by a failure: what ends the window asks after all of it.
        rest.now()
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

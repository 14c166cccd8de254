"""Lets the application speak German for a while."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication

from circuitcheck.editor.language import install


@contextmanager
def german(application: QApplication) -> Iterator[None]:
    """The application speaks German, with German numbers."""
    before = QLocale()
    translators = install("de", application)
    QLocale.setDefault(QLocale("de"))
    try:
        assert len(translators) == 2
        yield
    finally:
        for translator in translators:
            application.removeTranslator(translator)
        QLocale.setDefault(before)

"""Analyses drawings beside the window: one at a time, the newest wins, a failure is never silent."""

from __future__ import annotations

import logging
from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.translating import later
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.finding import FAILED, Finding, Grade, Says

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.rechecking import Rechecker

Analyse = Callable[[Drawing], "Analysis"]
PAUSE_MS = 30
"""How long the drawing must rest before it is analysed: less than one feels, more than one step of a drag."""


class Analyser(QObject):
    """Signals `analysed` with each Analysis that is still of the drawing last asked for."""

    analysed = Signal(object)

    def __init__(self, analyse: Analyse | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._analyse = analyse or one_after_another()
        self._out = WorkingOut(self._judge, "analysis", PAUSE_MS, self)
        self._out.found.connect(self._found)

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._out.is_busy

    def ask(self, drawing: Drawing) -> None:
        """Have a drawing analysed; whatever was asked before is no longer wanted."""
        self._out.ask(drawing)

    def close(self) -> None:
        """Stop: nothing is signalled any more, and the thread has ended when this returns."""
        self._out.close()

    def _judge(self, drawing: Drawing) -> Analysis:
        """In the other thread. A failure is an answer too: it is never silent."""
        try:
            return self._analyse(drawing)
        except Exception as error:
            logging.getLogger(__name__).exception("The analysis failed")
            return failed(drawing, error)

    def _found(self, drawing: Drawing, result: Analysis) -> None:
        self.analysed.emit(result)


def one_after_another() -> Analyse:
    """Judges the drawings it is given, and after an edit only what that can bear on."""
    checker: Rechecker | None = None

    def analyse(drawing: Drawing) -> Analysis:
        # Here and not at the top: the window shows before the checks are read.
        nonlocal checker
        if checker is None:
            from circuitcheck.rechecking import Rechecker

            checker = Rechecker()
        return checker.analyse(drawing)

    return analyse


def failed(drawing: Drawing, error: Exception) -> Analysis:
    """What stands in the list when the analysis as a whole failed: nothing was judged, and that is said."""
    from circuitcheck.analysis import Analysis
    from circuitcheck.checks.catalogue import checks

    names = tuple(checks())
    finding = Finding(
        FAILED,
        Grade.UNANSWERED,
        Says(
            later("The checks failed inside the program and have judged nothing: {error}."),
            {"error": f"{type(error).__name__}: {error}"},
        ),
        would_be=Grade.DANGER,
    )
    return Analysis(
        drawing,
        (finding,),
        judged=(),
        not_applicable=(),
        not_judged=names,
        crashed=names,
        taken=(),
        rule_book="",
        why_not_judged=dict.fromkeys(names, later("it failed inside the program")),
    )

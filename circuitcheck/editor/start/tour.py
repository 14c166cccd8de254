"""A tour in the window itself: a drawing with one fault, its proof, and its cure."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QWidget

from circuitcheck.editor.start.tour_card import Frame, TourCard
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.finding import Finding
from circuitcheck.shipped import data_path

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.cures import Cure
    from circuitcheck.editor.window import MainWindow

SAMPLE = "terrace-valve-before-vessel.wetcircuit"


@dataclass(frozen=True)
class Step:
    """One step: what it says, what it frames, what its button says, and what that does for who presses it."""

    title: str
    words: str
    frames: Callable[[], QWidget | None]
    button: str
    does: Callable[[], None]


class Tour(QObject):
    """Leads through six steps; what the card's button would do can be done by hand as well."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._card, self._frame = TourCard(window), Frame(window)
        self._at = -1
        self._opening = False
        self._cures: tuple[Cure, ...] = ()
        self._card.next_wanted.connect(self._press)
        self._card.left.connect(self.leave)
        window.installEventFilter(self)
        window.findings.chosen.connect(self._chosen)
        window.document.analysed.connect(self._analysed)
        window.document.cured.connect(self._cured)
        window.files.opened.connect(self._opened)

    @property
    def step(self) -> int:
        """Which step is shown, from 0; -1 where none is."""
        return self._at

    @property
    def card(self) -> TourCard:
        """The card."""
        return self._card

    def begin(self) -> None:
        """Open the tour's drawing as a copy, if what is unsaved may go, and show the first step."""
        self._opening = True
        try:
            before = self._window.document.drawing
            self._window.files.open_sample(Path(data_path("samples")) / SAMPLE)
        finally:
            self._opening = False
        if self._window.document.drawing is not before:
            self._cures = ()
            self._show(0)

    def leave(self) -> None:
        """End the tour; the drawing stays."""
        self._at = -1
        self._card.hide()
        self._frame.surround(None, self._theme["select"])
        self._window.sheet.setFocus()

    def steps(self) -> tuple[Step, ...]:
        """The steps, in the language of the window."""
        window = self._window
        return (
            Step(
                tr("A drawing with one fault"),
                tr(
                    "Someone fitted a valve between the heat source and its expansion vessel. The program "
                    "judged the drawing as it was opened; the bar counts what it found, the heaviest first."
                ),
                lambda: window.bar,
                tr("Next"),
                lambda: self._show(1),
            ),
            Step(
                tr("Choose the finding"),
                tr("Click it in the list, or press the button below. By keys: F8."),
                lambda: window.findings_section,
                tr("Choose it"),
                window.findings.choose_next,
            ),
            Step(
                tr("The proof stands on the drawing"),
                tr(
                    "With the valves that are shown shut, what is tinted is cut off from the vessel. Water that "
                    "is heated there has nowhere to swell. Every position the valves can take was tried."
                ),
                lambda: window.sheet,
                tr("Next"),
                lambda: self._show(3),
            ),
            Step(
                tr("Why, and what puts it right"),
                tr(
                    "The card says why it matters, what puts it right, and from which source. Each cure it "
                    "offers was tried first on the whole drawing. Press one, or the button below."
                ),
                lambda: window.findings_section,
                tr("Take the first cure"),
                self._cure,
            ),
            Step(
                tr("Sound again, in one step"),
                tr(
                    "Undo would bring the fault back. The list below now says what was judged, what was not, "
                    "and which usual values were taken: silence is never approval."
                ),
                lambda: window.findings_section,
                tr("Next"),
                lambda: self._show(5),
            ),
            Step(
                tr("Where to go on"),
                tr(
                    "Operate shows the water flow and lets you shut any valve. Figures shows each size with its "
                    "working. Hand over writes the document that another person can check. This drawing is a "
                    "copy: change what you like."
                ),
                lambda: None,
                tr("Done"),
                self.leave,
            ),
        )

    @property
    def _theme(self) -> Theme:
        return self._window.theme

    def _show(self, at: int) -> None:
        self._at = at
        steps = self.steps()
        step = steps[at]
        self._card.show_step(at + 1, len(steps), step.title, step.words, step.button)
        self._place()
        self._frame.surround(step.frames(), self._theme["select"])
        self._card.raise_()

    def _place(self) -> None:
        sheet = self._window.sheet
        self._card.stand_in(sheet.rect().translated(sheet.mapTo(self._window, sheet.rect().topLeft())))

    def _press(self) -> None:
        if self._at >= 0:
            self.steps()[self._at].does()

    def _cure(self) -> None:
        if self._cures:
            self._window.findings.cure_wanted.emit(self._cures[0])

    def _cured(self, finding: Finding, cures: tuple[Cure, ...]) -> None:
        self._cures = cures

    def _chosen(self, finding: Finding | None) -> None:
        if self._at == 1 and finding is not None:
            self._show(2)

    def _analysed(self, analysis: Analysis) -> None:
        """However it was put right: it is, once nothing is found any more."""
        if self._at in (2, 3) and not analysis.findings:
            self._show(4)

    def _opened(self) -> None:
        """Another drawing was opened: the tour spoke of the one before."""
        if self._at >= 0 and not self._opening:
            self.leave()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Keep the card in its corner."""
        if watched is self._window and event.type() is QEvent.Type.Resize and self._at >= 0:
            self._place()
        return super().eventFilter(watched, event)

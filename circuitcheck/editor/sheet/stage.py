"""The stage on which gestures play: the drawing, its preview, the selection, and what is told to others."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from PySide6.QtCore import QPoint, QPointF, Qt

from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet import hits
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.finding_marks import FindingMarks
from circuitcheck.editor.sheet.flow_marks import FlowMarks
from circuitcheck.editor.sheet.hits import Hit
from circuitcheck.editor.sheet.overlay import Overlay
from circuitcheck.editor.sheet.review_marks import ReviewMarks
from circuitcheck.editor.translating import of_error, tr
from circuitcheck.geometry import Point
from circuitcheck.sheet.things import things

ADDING = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier

Edit = Callable[[], Drawing]


@dataclass(frozen=True)
class Pointer:
    """Where the pointer is: in px of the sheet, at a square's corner, and in px of the view."""

    place: QPointF
    square: Point
    screen: QPoint
    modifiers: Qt.KeyboardModifier

    @property
    def adds(self) -> bool:
        """Whether a key is held that adds to the selection."""
        return bool(self.modifiers & ADDING)


class Stage:
    """Holds what is drawn and chosen. An edit is announced, not done: its owner sets the new drawing."""

    def __init__(
        self,
        content: Content,
        *,
        edited: Callable[[str, Drawing], None],
        selected: Callable[[frozenset[str]], None],
        hint: Callable[[str], None],
    ) -> None:
        self.content = content
        self.overlay = Overlay(content)
        self.findings = FindingMarks(content)
        self.flows = FlowMarks(content)
        self.review = ReviewMarks(content)
        self.drawing = Drawing()
        self.selection: frozenset[str] = frozenset()
        self.zoom = 1.0
        self.hint = hint
        self.placed: list[str] = []
        self.takes_over: Callable[[Drawing, bool], bool] = lambda drawing, passing: False
        """Whether somebody else shows a drawing, `passing` or not, some time later."""
        self.await_rest: Callable[[], None] = self.at_rest
        """Has `at_rest` called once the hand rests; where nobody waits for that, at once."""
        self.await_services: Callable[[], object] = lambda: None
        """Has it worked out what the pipes carry, where the content waits for that."""
        self._edited = edited
        self._selected = selected

    def set_drawing(self, drawing: Drawing) -> None:
        """Take on a drawing; what is no more in it is no more selected."""
        self.drawing = drawing
        self._show(drawing)
        self.select(self.selection)

    def preview(self, drawing: Drawing, chosen: Iterable[str] = ()) -> None:
        """Show how the drawing would be; `chosen` are shown as about to be placed."""
        self.content.choose(frozenset(chosen))
        self._show(drawing, passing=True, hurried=True)
        if self.content.layout.is_rough:
            self.await_rest()

    def at_rest(self) -> None:
        """The hand rests: show a preview's pipes as they would come to lie, where there was no time for it."""
        if self.content.layout.is_rough:
            self._show(self.content.drawing, passing=True)

    def end_preview(self) -> None:
        """Show the drawing as it is."""
        self.content.choose(frozenset())
        if self.content.drawing is not self.drawing:
            self._show(self.drawing)

    def commit(self, step: str, drawing: Drawing, select: Iterable[str] | None = None) -> None:
        """Announce an edit by its name, then select what it made, where its owner took it on."""
        self.content.choose(frozenset())
        if drawing is not self.drawing:
            self._edited(step, drawing)
        self.end_preview()
        if select is not None:
            self.select(select)

    def tried(self, edit: Edit) -> Drawing | None:
        """The outcome of an edit; None, and its sentence as the hint, where it cannot be done."""
        try:
            return edit()
        except EditError as error:
            self.hint(tr(of_error(error)))
            return None

    def select(self, ids: Iterable[str]) -> None:
        """Select parts, pipes and controls; others are left out."""
        known = things(self.drawing)
        kept = frozenset(id for id in ids if id in known or id in self.drawing.pipes)
        changed = kept != self.selection
        self.selection = kept
        self.overlay.show_selection(kept)
        if changed:
            self._selected(kept)

    def remember_placed(self, kind: str) -> None:
        """Keep which kinds were placed lately, the last one first."""
        self.placed = [kind, *(each for each in self.placed if each != kind)]

    def refresh_flows(self, *, passing: bool = False) -> None:
        """Let the flows and the marks of the review follow what has moved, clear of the findings' marks."""
        self.flows.refresh(passing=passing, avoid=self.findings.taken)
        self.review.refresh(passing=passing, avoid=self.findings.taken)

    def hit(self, place: QPointF) -> Hit | None:
        """What the pointer takes hold of at a place."""
        return hits.found(self.content, place, self.zoom)

    def _show(self, drawing: Drawing, *, passing: bool = False, hurried: bool = False) -> None:
        if not self.takes_over(drawing, passing):
            self.content.show(drawing, passing=passing, hurried=hurried)
            if not passing:
                self.await_services()
        self.follow(passing=passing)

    def follow(self, *, passing: bool = False) -> None:
        """Let all marks follow what lies on the sheet now."""
        self.overlay.refresh()
        self.findings.refresh(passing=passing)
        self.refresh_flows(passing=passing)

"""Findings on the sheet: grade marks, and for a chosen one its ring, its shut valves and what is cut off."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.band import ALONG_PX, ROUND_PX, band
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.editor.sheet.shown_part import edges_of
from circuitcheck.finding import Finding
from circuitcheck.picture.labels import CLEAR, LABEL_EDGE, Rect, grown
from circuitcheck.picture.marks import Fill, Hatch, Mark, Stroke
from circuitcheck.sheet.concern import concerned, shut_states
from circuitcheck.sheet.layout import runs_of
from circuitcheck.sheet.marking import RING_PX, Marking, judged, ring_role

BAND_Z = -10.0
OVER_Z = 30.0
EDGE_CLEAR = 3.0
"""What labels keep clear of a ring or the edge of a band."""


class FindingMarks:
    """The marks of the findings of a drawing, and of the one that is chosen."""

    def __init__(self, content: Content) -> None:
        self._content = content
        self._findings: tuple[Finding, ...] = ()
        self._chosen: Finding | None = None
        self._below = MarksItem((), content.palette, z=BAND_Z)
        self._above = MarksItem((), content.palette, z=OVER_Z)
        self._marking = Marking(content.layout)
        self._focused_on: Drawing | None = None
        self.adopt(content.scene)

    @property
    def chosen(self) -> Finding | None:
        """The finding that is chosen."""
        return self._chosen

    @property
    def taken(self) -> tuple[Rect, ...]:
        """The boxes of marks and pills, which nothing else should stand on."""
        return tuple(self._marking.taken)

    def adopt(self, scene: QGraphicsScene) -> None:
        """Lie on another scene."""
        for item in (self._below, self._above):
            if item.scene() is not scene:
                scene.addItem(item)

    def show_all(self, findings: Sequence[Finding]) -> None:
        """Mark what these findings judge, while none is chosen."""
        self._findings = tuple(findings)
        self.refresh()

    def choose(self, finding: Finding | None) -> None:
        """Show one finding and let the rest of the drawing turn quiet; None: back to all."""
        self._chosen = finding
        self._focus()
        self.refresh()

    def refresh(self, *, passing: bool = False) -> None:
        """Follow what has moved, changed or gone; `passing`: the drawing is only a preview."""
        if not passing and self._focused_on is not self._content.drawing and self._chosen is not None:
            self._focus()
        self._marking = Marking(self._content.layout)
        if self._chosen is None:
            below: list[Mark] = []
            above = self._marking.grades(self._findings)
        else:
            below = self._cut_off(self._chosen)
            above = [
                *self._ring(self._chosen),
                *self._marking.pills(self._chosen),
                *self._marking.words(self._chosen),
            ]
        self._below.show_marks(below, self._content.palette)
        self._above.show_marks(above, self._content.palette)

    def _focus(self) -> None:
        """Let the chosen finding's circuit keep its colour, and its ring and band keep clear of labels."""
        finding, self._focused_on = self._chosen, self._content.drawing
        if finding is None:
            self._content.focus(None, {}, {}, ())
            return
        reach = dict.fromkeys(finding.cut_off_components, ROUND_PX + EDGE_CLEAR)
        boxes = [
            grown(run, ALONG_PX / 2 + 1)
            for id in finding.cut_off_pipes
            for run in runs_of(self._content.layout.lines.get(id, ()), 0)
        ]
        about = judged(finding)
        if about is not None:
            reach[about] = RING_PX + EDGE_CLEAR
        boxes += [grown(edges_of(self._content.box(id)), out) for id, out in reach.items()]
        # What a label keeps clear of its symbol anyhow serves for most of what it keeps clear of the edge.
        around = {id: out + LABEL_EDGE - CLEAR for id, out in reach.items()}
        shut = shut_states(finding)
        self._content.focus(concerned(self._content.drawing, finding), shut, around, boxes)

    def _ring(self, finding: Finding) -> list[Mark]:
        line = self._content.layout.lines.get(judged(finding) or "")
        role = ring_role(finding, is_dark=self._content.theme.is_dark)
        return self._marking.ring(finding, band([line], []) if line else (), role)

    def _cut_off(self, finding: Finding) -> list[Mark]:
        lines = [self._content.layout.lines.get(id, ()) for id in finding.cut_off_pipes]
        lines = [line for line in lines if line]
        boxes = [self._content.box(id) for id in finding.cut_off_components]
        boxes = [box for box in boxes if not box.isNull()]
        if not lines and not boxes:
            return []
        area = band(lines, boxes)
        marks: list[Mark] = [Hatch(area, "danger"), Stroke(area, "danger", 1.5, (6, 4))]
        tint: list[Mark] = [] if self._content.theme.high_contrast else [Fill(area, "danger_tint")]
        return tint + marks

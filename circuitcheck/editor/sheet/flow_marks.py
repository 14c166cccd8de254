"""The flows of one situation on the sheet: arrows along the pipes, a figure beside them, valves told shut."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.picture.labels import Rect
from circuitcheck.sheet.labelling import SMALL_DRAWING

if TYPE_CHECKING:
    from circuitcheck.report.flows import By, SituationFlows

FLOW_Z = 8.0
"""Over the pipes, under the symbols: what stands here keeps clear of them, arrowheads at ports do not."""


class FlowMarks:
    """One item over the pipes; it shows nothing until it is given a situation."""

    def __init__(self, content: Content) -> None:
        self._content = content
        self._situation: SituationFlows | None = None
        self._by: By | None = None
        self._item = MarksItem((), content.palette, z=FLOW_Z)
        self.figures: dict[str, str] = {}
        """What is written, by the pipe it stands beside."""
        self.left_out = 0
        """How many figures found no place clear of symbols and labels."""
        self.adopt(content.scene)

    def adopt(self, scene: QGraphicsScene) -> None:
        """Lie on another scene."""
        if self._item.scene() is not scene:
            scene.addItem(self._item)

    def show(self, situation: SituationFlows | None, by: By) -> None:
        """Show the flows of a situation from the next refresh on; None: none at all."""
        # Here and not at the top: the sheet is painted before anybody asks what flows.
        from circuitcheck.report.flow_picture import shut_states
        from circuitcheck.report.flows import SituationFlows, still

        self._situation, self._by = situation, by
        told = situation or SituationFlows("")
        self._content.show_running(still(self._content.drawing, told.pipes), shut_states(told.shut))

    def refresh(self, *, passing: bool = False, avoid: Iterable[Rect] = ()) -> None:
        """Follow what has moved, changed or gone; `passing`: the drawing is only a preview, in which
        arrows go along and figures wait for its end."""
        self.figures, self.left_out = {}, 0
        situation, content = self._situation, self._content
        if situation is None or self._by is None or (passing and len(content.drawing.pipes) > SMALL_DRAWING):
            self._item.show_marks((), content.palette)
            return
        from circuitcheck.report.flow_picture import Flowing

        # In high contrast there are no tints; the arrows say it.
        found = Flowing(content.layout, content.is_quiet).picture(
            situation, self._by, avoid=avoid, figures=not passing, tints=not content.theme.high_contrast
        )
        self.figures, self.left_out = dict(found.figures), found.left_out
        self._item.show_marks(found.marks, content.palette)

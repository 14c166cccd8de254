"""The flows of one situation on the sheet: arrows along the pipes, a figure beside them, valves told shut."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from itertools import pairwise

from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.picture import flow
from circuitcheck.picture.labels import Rect, overlap
from circuitcheck.picture.marks import Mark
from circuitcheck.report.flows import By, PipeFlow, SituationFlows, captions, still
from circuitcheck.sheet.concern import LEG_STATES
from circuitcheck.sheet.labelling import SMALL_DRAWING

FLOW_Z = 8.0
"""Over the pipes, under the symbols: what stands here keeps clear of them, arrowheads at ports do not."""

NOTHING = SituationFlows("")


class FlowMarks:
    """One item over the pipes; it shows nothing until it is given a situation."""

    def __init__(self, content: Content) -> None:
        self._content = content
        self._situation: SituationFlows | None = None
        self._by = By.FLOW
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
        self._situation, self._by = situation, by
        told = situation or NOTHING
        self._content.show_running(still(self._content.drawing, told.pipes), _shut(told.shut))

    def refresh(self, *, passing: bool = False, avoid: Iterable[Rect] = ()) -> None:
        """Follow what has moved, changed or gone; `passing`: the drawing is only a preview, in which
        arrows go along and figures wait for its end."""
        self.figures, self.left_out = {}, 0
        situation = self._situation
        if situation is None or (passing and len(self._content.drawing.pipes) > SMALL_DRAWING):
            self._item.show_marks((), self._content.palette)
            return
        lines = self._content.layout.lines
        pipes = {id: pipe for id, pipe in situation.pipes.items() if id in lines}
        taken = list(avoid)
        marks: list[Mark] = []
        figures: list[flow.Figure] = []
        if not passing:
            # What a chosen finding does not concern keeps its arrows, but is not read.
            read = {id: each for id, each in pipes.items() if not self._content.is_quiet(id)}
            figures = [*self._shut_words(situation.shut, taken), *self._place(read, taken)]
        for id, pipe in pipes.items():
            if not pipe.is_still:
                marks += self._moving(id, pipe, taken)
        for figure in figures:
            marks += flow.boxed(figure)
        self._item.show_marks(marks, self._content.palette)

    def _moving(self, id: str, pipe: PipeFlow, taken: list[Rect]) -> list[Mark]:
        """The wash and the arrowheads of a pipe in which water moves."""
        layout = self._content.layout
        line, hops = layout.lines[id], layout.hops.get(id, ())
        service = layout.service.get(id, "unknown")
        quiet = self._content.is_quiet(id)
        heads = flow.arrows(
            line,
            service,
            forward=pipe.flow_lpm > 0,
            gap=layout.gaps.get(id),
            hops=hops,
            taken=taken,
            role="quiet" if quiet else "",
        )
        # In high contrast there are no tints; the arrows say it.
        plain = quiet or self._content.theme.high_contrast
        return heads if plain else [flow.wash(line, service, hops), *heads]

    def _place(self, pipes: Mapping[str, PipeFlow], taken: list[Rect]) -> list[flow.Figure]:
        """The boxed figures, those with the least choice first; their boxes are taken then."""
        layout = self._content.layout
        asked = [
            (
                caption.text,
                sorted(((id, layout.lines[id]) for id in caption.pipes), key=lambda e: -_length(e[1])),
            )
            for caption in captions(
                self._content.drawing, pipes, self._by, layout.service, layout.labelling.decimal
            )
        ]
        asked.sort(key=lambda each: sum(_length(line) for _, line in each[1]))
        found = []
        for text, lines in asked:
            at = flow.placed(text, lines, layout.obstacles, taken)
            if at is None:
                self.left_out += 1
                continue
            id, figure = at
            self.figures[id] = text
            taken.append(figure.box)
            found.append(figure)
        return found

    def _shut_words(self, shut: Iterable[str], taken: list[Rect]) -> list[flow.Figure]:
        """The word at each valve that is commanded shut: never told by its fill alone."""
        found = []
        for label in sorted(shut):
            part, _, leg = label.partition(":")
            box = self._content.layout.boxes.get(part)
            if box is None or self._content.is_quiet(part):
                continue
            text = f"{leg} shut" if leg else "shut"
            figure = flow.Figure(text, self._beside(part, box, text, taken))
            taken.append(figure.box)
            found.append(figure)
        return found

    def _beside(self, part: str, box: Rect, text: str, taken: list[Rect]) -> Rect:
        """Below, above, to the right or the left of a valve, or beyond its label: where it covers least."""
        left, top, right, low = box
        x, y = (left + right) / 2, (top + low) / 2
        half, high = flow.word_box(text, 0, 0)[2], flow.BOX_HIGH / 2
        places = [(x, low + 4 + high), (x, top - 4 - high), (right + 4 + half, y), (left - 4 - half, y)]
        label = self._content.layout.labels.get(part)
        if label is not None:
            a, b, c, d = label.box
            places += [((a + c) / 2, d + 2 + high), ((a + c) / 2, b - 2 - high)]
        places += [(right + 2 + half, low + high), (left - 2 - half, low + high)]
        tried = [flow.word_box(text, *place) for place in places]
        return min(tried, key=lambda each: self._covered(each, taken))

    def _covered(self, box: Rect, taken: list[Rect]) -> float:
        return self._content.layout.obstacles.overlap(box) + sum(overlap(box, each) for each in taken)


def _length(line: tuple[tuple[float, float], ...]) -> float:
    return sum(abs(b[0] - a[0]) + abs(b[1] - a[1]) for a, b in pairwise(line))


def _shut(labels: Iterable[str]) -> dict[str, frozenset[str]]:
    """For each valve commanded shut the states in which its symbol shows it so."""
    found: dict[str, frozenset[str]] = {}
    for label in labels:
        part, _, leg = label.partition(":")
        found[part] = found.get(part, frozenset()) | {LEG_STATES.get(leg, "shut")}
    return found

"""What operating shows on a drawing: washes, figures, words at what is shut, and water that is cut off, tinted."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from itertools import pairwise

from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.editor.operating.arrows import Run, runs
from circuitcheck.editor.sheet.band import band
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.editor.sheet.shown_part import edges_of
from circuitcheck.editor.translating import tr
from circuitcheck.operating.cutting import CutOff
from circuitcheck.operating.standing import Standing
from circuitcheck.parts.kind import Role
from circuitcheck.picture.flow import Figure, boxed, word_box
from circuitcheck.picture.labels import Rect, grown
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import Fill, Hatch, Mark, Stroke, TextMark
from circuitcheck.picture.taken import Taken
from circuitcheck.report.flow_picture import Flowing, Places, shut_states
from circuitcheck.report.flows import By, PipeFlow, SituationFlows, still
from circuitcheck.sheet.layout import Layout

BAND_Z, FLOW_Z, OVER_Z = -10.0, 8.0, 30.0
WORDS_PITCH = 15.0
NOTHING = SituationFlows("")


class OperatingMarks:
    """The marks of one standing on a content; it shows nothing until it is given one."""

    def __init__(self, content: Content) -> None:
        self._content = content
        self._below = MarksItem((), content.palette, z=BAND_Z)
        self._along = MarksItem((), content.palette, z=FLOW_Z)
        self._above = MarksItem((), content.palette, z=OVER_Z)
        self.figures: dict[str, str] = {}
        """What is written, by the pipe it stands beside."""
        self.left_out = 0
        """How many figures found no place clear of symbols and labels."""
        self.runs: tuple[Run, ...] = ()
        """Where arrowheads move."""
        self.floating: tuple[Mark, ...] = ()
        """What is read at parts, in boxes: it changes while everything else stands."""
        self._places = Places()
        self._moving: tuple[Mapping[str, PipeFlow], Layout, tuple[Rect, ...]] | None = None
        """What the runs were worked out of."""
        self._boxes: dict[str, Rect] = {}
        self._taken: tuple[Rect, ...] = ()
        self._is_cut = False
        self.adopt(content.scene)

    @property
    def below_is_shown(self) -> bool:
        """Whether water is shown to be cut off."""
        return self._is_cut

    def adopt(self, scene: QGraphicsScene) -> None:
        """Lie on another scene."""
        for item in (self._below, self._along, self._above):
            if item.scene() is not scene:
                scene.addItem(item)

    def show(
        self, standing: Standing | None, by: By, texts: Mapping[str, str] | None, words: Mapping[str, str]
    ) -> None:
        """Show a standing (None: nothing). `texts`, by pipe, in place of what `by` says; `words` stand at
        parts: what a gauge reads, a vessel without its gas."""
        content = self._content
        told = NOTHING if standing is None else standing.flows
        content.show_running(still(content.drawing, told.pipes), _states(standing))
        # The water that is cut off is told by one band for each source, whatever it lacks.
        below, above, taken = self._cut_off(() if standing is None else standing.cut_off)
        self._boxes, self._taken = {}, tuple(taken)
        self.show_words(words)
        layout = content.layout
        found = Flowing(layout, content.is_quiet, self._places).picture(
            told,
            by,
            avoid=[*taken, *self._boxes.values()],
            tints=not content.theme.high_contrast,
            arrows=False,
            texts=texts,
        )
        self.figures, self.left_out = dict(found.figures), found.left_out
        moving = (told.pipes, layout, found.taken)
        if self._moving is None or any(
            new is not old and new != old for new, old in zip(moving, self._moving, strict=True)
        ):
            self.runs = runs(told.pipes, layout.lines, layout.service, layout.gaps, layout.hops, found.taken)
            self._moving = moving
        self._is_cut = bool(below)
        self._below.show_marks(below, content.palette)
        self._taken = found.taken
        self._along.show_marks(found.marks, content.palette)
        self._above.show_marks(above, content.palette)

    def _cut_off(self, cut: Iterable[CutOff]) -> tuple[list[Mark], list[Mark], Taken]:
        """The band under each water that is cut off, the words beside it, and where they stand."""
        below: list[Mark] = []
        above: list[Mark] = []
        taken = Taken()
        lacking: dict[tuple[str, tuple[str, ...]], list[CutOff]] = {}
        for each in cut:
            lacking.setdefault((each.part, each.pipes), []).append(each)
        for alike in lacking.values():
            lines = [self._content.layout.lines.get(id, ()) for id in alike[0].pipes]
            boxes = [self._content.box(id) for id in alike[0].parts]
            lines, boxes = [line for line in lines if line], [box for box in boxes if not box.isNull()]
            if not lines and not boxes:
                continue
            area = band(lines, boxes)
            if not self._content.theme.high_contrast:
                below.append(Fill(area, "danger_tint"))
            below += [Hatch(area, "danger"), Stroke(area, "danger", 1.5, (6, 4))]
            said = (tr("cut off from"), *_the(each.lacks for each in alike))
            placed = self._beside([edges_of(box) for box in boxes], lines, said, taken)
            taken.append(placed)
            left, top, right, _ = placed
            above += [
                TextMark(
                    text, (left + right) / 2, top + 11 + place * WORDS_PITCH, "danger", 13, 600, "middle", 4
                )
                for place, text in enumerate(said)
            ]
        return below, above, taken

    def _beside(
        self,
        boxes: list[Rect],
        lines: list[tuple[tuple[float, float], ...]],
        said: tuple[str, ...],
        taken: Taken,
    ) -> Rect:
        """Where the words cover least."""
        wide, high = max(width(text, 13, 600) for text in said), WORDS_PITCH * len(said)
        boxes = boxes + [
            (min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1]))
            for line in lines
            for a, b in pairwise(line)
        ]
        tried = [place for box in boxes for place in _round(box, wide, high)]
        return min(tried, key=lambda box: self._covered(grown(box, 4), taken))

    def _covered(self, box: Rect, taken: Taken) -> float:
        return self._content.layout.obstacles.overlap(box) + taken.overlap(box)

    def show_words(self, words: Mapping[str, str]) -> None:
        """A boxed word at each of these parts: where it stood, else where it covers least."""
        marks: list[Mark] = []
        boxes: dict[str, Rect] = {}
        taken: Taken | None = None
        for id, text in words.items():
            box = self._content.layout.boxes.get(id)
            if box is None or not text:
                continue
            known = self._boxes.get(id)
            if known is not None:
                boxes[id] = word_box(text, (known[0] + known[2]) / 2, (known[1] + known[3]) / 2)
            else:
                if taken is None:
                    taken = Taken([*self._taken, *boxes.values()])
                boxes[id] = self._placed(id, box, text, taken)
            if taken is not None:
                taken.append(boxes[id])
            marks += boxed(Figure(text, boxes[id]))
        self._boxes, self.floating = boxes, tuple(marks)

    def _placed(self, id: str, box: Rect, text: str, taken: Taken) -> Rect:
        left, top, right, low = box
        x, y = (left + right) / 2, (top + low) / 2
        half = word_box(text, 0, 0)[2]
        places = [(right + 6 + half, y), (left - 6 - half, y), (x, top - 13), (x, low + 13)]
        places += [(right + 6 + half, top), (right + 6 + half, low), (left - 6 - half, top)]
        label = self._content.layout.labels.get(id)
        if label is not None:
            a, b, c, d = label.box
            places += [((a + c) / 2, d + 11), ((a + c) / 2, b - 11), (c + 4 + half, (b + d) / 2)]
        tried = [word_box(text, *place) for place in places]
        return min(tried, key=lambda each: self._covered(each, taken))


def _states(standing: Standing | None) -> dict[str, frozenset[str]]:
    """The states in which symbols show how everything stands."""
    if standing is None:
        return {}
    positions, parts = standing.positions, standing.drawing.components
    found = {id: states for id, states in shut_states(positions.shut).items() if id in parts}
    for id in positions.running:
        found[id] = found.get(id, frozenset()) | {"running"}
    for id, part in parts.items():
        if id not in positions.firing and any(
            device.role is Role.HEATS for device in part.kind.devices(part.data)
        ):
            found[id] = found.get(id, frozenset()) | {"heat_off"}
    return found


def _the(names: Iterable[str]) -> list[str]:
    """The devices as lines: `the expansion vessel`, `and the safety valve`."""
    said = {
        "expansion vessel": tr("the expansion vessel"),
        "safety valve": tr("the safety valve"),
        "open vent": tr("the open vent"),
        "cold feed": tr("the cold feed"),
        "relief valve": tr("the relief valve"),
    }
    found = [said.get(name, name) for name in dict.fromkeys(names)]
    return [text if place == 0 else tr("and {device}", device=text) for place, text in enumerate(found)]


def _round(box: Rect, wide: float, high: float) -> Iterable[Rect]:
    """Places round a box, clear of the band."""
    clear = 22.0
    left, top, right, low = box
    for share in (0.5, 0.25, 0.75):
        x, y = left + share * (right - left), top + share * (low - top)
        yield x - wide / 2, low + clear, x + wide / 2, low + clear + high
        yield x - wide / 2, top - clear - high, x + wide / 2, top - clear
        yield right + clear, y - high / 2, right + clear + wide, y + high / 2
        yield left - clear - wide, y - high / 2, left - clear, y + high / 2

"""Where labels and the letters of pipes stand: clear of symbols, lines and one another. No Qt."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import TypeVar

from circuitcheck.drawing.value import Component, Control, Drawing
from circuitcheck.picture.labels import Label, Obstacles, Rect, grown, inside, placed
from circuitcheck.picture.lettering import ELLIPSIS
from circuitcheck.picture.marks import SQUARE_PX
from circuitcheck.picture.pipes import Gap, Place, caption, gaps
from circuitcheck.sheet import depiction
from circuitcheck.told import ENGLISH, Tongue, tell
from circuitcheck.wanted import go_on

SMALL_DRAWING = 300
"""Up to so many parts all labels are placed anew at each step, so that a picture has no history."""

EDGE_PX = 18.0
"""What a label inside a symbol leaves free of the symbol's width."""

MOST_LINES_INSIDE = 3

_Value = TypeVar("_Value")

Things = Mapping[str, Component | Control]


@dataclass
class Labelling:
    """The labels of parts, and the gap and caption of each pipe; `decimal` is the decimal sign, `tongue` the
    language in which labels are measured and set.

    Obstacles are owned by `part`, `stub`, `pipe`, `label` and `gap`, each with an id behind it.
    """

    decimal: str = "."
    tongue: Tongue = ENGLISH
    labels: dict[str, Label] = field(default_factory=dict)
    gaps: dict[str, Gap] = field(default_factory=dict)
    captions: dict[str, str] = field(default_factory=dict)
    obstacles: Obstacles = field(default_factory=Obstacles)
    _around: Mapping[str, float] = field(default_factory=dict)

    def forget(self, id: str) -> None:
        """A part is gone from the sheet."""
        self.labels.pop(id, None)
        for owner in ("part", "label", "stub"):
            self.obstacles.put(f"{owner} {id}", ())

    def keep_clear(self, around: Mapping[str, float], boxes: Iterable[Rect]) -> set[str]:
        """Keep labels out of these boxes, and those of these parts so many px further off than else.

        Returns the parts whose label is concerned.
        """
        near = {*around, *self._around}
        self._around = dict(around)
        kept = tuple(boxes)
        self.obstacles.put("kept clear", kept)
        for box in kept:
            near |= self._labels_met(box)
        return near

    def carry(self, old: Things, new: Things, parts: Iterable[str]) -> set[str]:
        """Let labels go along with the parts they belong to; a new part's waits for the end.

        Returns the parts whose label moved.
        """
        carried = set()
        for id in parts:
            label = self.labels.get(id)
            was, now = old[id].at if id in old else None, new[id].at
            if label is None or was is None or now is None or was == now:
                continue
            dx, dy = (now.x - was.x) * SQUARE_PX, (now.y - was.y) * SQUARE_PX
            left, top, right, low = label.box
            self._set_label(id, replace(label, box=(left + dx, top + dy, right + dx, low + dy)))
            carried.add(id)
        return carried

    def place(
        self, things: Things, boxes: Mapping[str, Rect], parts: Iterable[str], rerouted: Iterable[str]
    ) -> set[str]:
        """Place labels: all of a small drawing's, else those whose part or surroundings changed.

        Returns the parts whose label is another.
        """
        parts = set(parts)
        if len(things) <= SMALL_DRAWING:
            asked = list(things)
            for id in self.gaps:
                self.obstacles.put(f"gap {id}", ())
        else:
            near = parts | self._crowded(parts, rerouted)
            asked = list(filter(near.__contains__, things))
        for id in asked:
            self.obstacles.put(f"label {id}", ())
        changed = set()
        for id in asked:
            go_on()
            label = self._label(things[id], boxes.get(id))
            if label != self.labels.get(id):
                changed.add(id)
            self._set_label(id, label)
        return changed

    def letter(
        self,
        drawing: Drawing,
        lines: Mapping[str, tuple[Place, ...]],
        hops: Mapping[str, tuple[Place, ...]],
        service: Mapping[str, str],
        pipes: Iterable[str],
    ) -> set[str]:
        """Find each pipe's gap for letter and size: the first on its line that meets nothing. A pipe without a
        line has none any more.

        Returns the pipes whose gap or caption is another.
        """
        changed = set()
        for id in sorted(set(pipes)):
            go_on()
            gap, text = None, ""
            if id in lines:
                text = caption(service.get(id, "unknown"), depiction.bore(drawing.pipes[id]))
                gap = self._gap(id, gaps(lines[id], text, hops.get(id, ())))
            if gap != self.gaps.get(id) or text != self.captions.get(id, ""):
                changed.add(id)
            _set(self.captions, id, text or None)
            _set(self.gaps, id, gap)
            self.obstacles.put(f"gap {id}", () if gap is None else (gap.box,))
        return changed

    def _set_label(self, id: str, label: Label | None) -> None:
        _set(self.labels, id, label)
        self.obstacles.put(f"label {id}", () if label is None else (label.box,))

    def _crowded(self, parts: Iterable[str], rerouted: Iterable[str]) -> set[str]:
        """The parts whose label something that changed has come to lie on."""
        if not self.labels:
            return set()
        owners = [f"{sort} {id}" for id in parts for sort in ("part", "stub")]
        owners += [f"pipe {id}" for id in rerouted]
        met = set()
        for owner in owners:
            for box in self.obstacles.boxes(owner):
                met |= self._labels_met(box)
        return met

    def _labels_met(self, box: Rect) -> set[str]:
        owners = (owner.partition(" ") for owner in self.obstacles.met(box))
        return {id for sort, _, id in owners if sort == "label"}

    def _label(self, thing: Component | Control, box: Rect | None) -> Label | None:
        lines = tuple(tell(line, self.tongue) for line in depiction.label_lines(thing, self.decimal))
        if not lines or box is None:
            return None
        if depiction.carries_label_inside(thing):
            upside_down = isinstance(thing, Component) and thing.turn == 180
            top = box[3] - 60 if upside_down else box[1] + 26
            label = inside(lines, (box[0] + box[2]) / 2, top, box[2] - box[0] - EDGE_PX)
            is_cut = any(line.endswith(ELLIPSIS) for line in label.lines)
            if len(label.lines) <= MOST_LINES_INSIDE and not is_cut:
                return label
        around = grown(box, self._around.get(thing.id, 0.0))
        return placed(lines, around, self.obstacles, frozenset({f"part {thing.id}", f"label {thing.id}"}))

    def _gap(self, id: str, candidates: Iterable[Gap]) -> Gap | None:
        own = frozenset({f"pipe {id}", f"gap {id}"})
        return next((gap for gap in candidates if not self.obstacles.met(gap.box, own)), None)


def _set(items: dict[str, _Value], id: str, value: _Value | None) -> None:
    """Set an item; None takes it out."""
    if value is None:
        items.pop(id, None)
    else:
        items[id] = value

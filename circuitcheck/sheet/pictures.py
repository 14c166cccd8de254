"""Pictures of a drawing as marks in px: the whole of it with its title and key, and the small one of a finding."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from circuitcheck.drawing.value import Component, Control, Drawing
from circuitcheck.finding import Finding
from circuitcheck.geometry import Point
from circuitcheck.picture import paths
from circuitcheck.picture.grades import open_port_mark
from circuitcheck.picture.labels import Rect, grown, marks_of, overlap
from circuitcheck.picture.marks import SQUARE_PX, Fill, Mark, Stroke, moved, recoloured
from circuitcheck.picture.pipes import Place, pipe_marks, pipe_path
from circuitcheck.picture.symbols import symbol
from circuitcheck.picture.title_block import size as title_size
from circuitcheck.picture.title_block import title_block
from circuitcheck.sheet import depiction
from circuitcheck.sheet.concern import concerned, shut_states
from circuitcheck.sheet.labelling import Labelling
from circuitcheck.sheet.layout import Layout, Services
from circuitcheck.sheet.marking import Marking, judged, ring_role
from circuitcheck.sheet.things import things
from circuitcheck.told import ENGLISH, Tongue, a_word, worded_n

UNTITLED = a_word("Drawing without a name")
MARGIN_PX = 24.0
TITLE_CLEAR_PX = 40.0
AROUND_PX = 56.0
"""What a small picture shows round the parts it is about."""
MOST_LACKING = 12
"""Of the things whose numbers are missing so many are shown."""
LEAST_WIDE, LEAST_HIGH = 480.0, 240.0
ALONG_PX, ROUND_PX, ROUND_RADIUS, EDGE_PX = 28.0, 10.0, 16.0, 1.5
"""The band round what is cut off: along pipes, out from parts, its corners, its edge."""
GROUNDS = frozenset({"paper", "body", "grid"})
TINTS = frozenset({"water_tint", "flame_tint", "gas_tint"})
NO_STATES: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Picture:
    """Marks, the box of the sheet that is shown of them (left, top, right, bottom in px), and what it shows."""

    marks: tuple[Mark, ...]
    box: Rect
    words: str

    @property
    def size(self) -> tuple[float, float]:
        """How wide and high it is, in px."""
        left, top, right, low = self.box
        return right - left, low - top


@dataclass(frozen=True, slots=True)
class _Item:
    """A part or pipe: its own marks, those of its label, and the boxes of both."""

    id: str
    is_pipe: bool
    marks: tuple[Mark, ...]
    box: Rect
    label: tuple[Mark, ...] = ()
    label_box: Rect | None = None


class Pictures:
    """Makes pictures of one drawing, which is laid out once for all of them."""

    def __init__(self, drawing: Drawing, services: Services, tongue: Tongue = ENGLISH) -> None:
        self.drawing = drawing
        self.layout = Layout(services, Labelling(tongue.decimal, tongue))
        self.layout.update(drawing)
        self._items = {item.id: item for item in (*self._pipes(), *self._parts())}

    @property
    def is_bare(self) -> bool:
        """Whether nothing of the drawing is placed on a sheet."""
        return not self._items

    def whole(self, findings: Sequence[Finding] = ()) -> Picture:
        """The whole drawing with title, key and a mark on whatever a finding judges."""
        marks = [mark for item in self._items.values() for mark in item.marks]
        marks += [mark for item in self._items.values() for mark in item.label]
        marks += Marking(self.layout).grades(findings)
        title = depiction.one_line(self.drawing.title) or self.layout.tell(UNTITLED)
        block, box = self._title(title)
        words = worded_n(
            "The drawing: {title}, 1 part",
            "The drawing: {title}, {count} parts",
            len(self.drawing.components),
            title=title,
        )
        return Picture((*marks, *block), grown(box, MARGIN_PX), self.layout.tell(words))

    def finding(self, finding: Finding, words: str) -> Picture | None:
        """The parts a finding names, its valves shown shut, the rest of the circuit round them quiet.

        None where nothing that it names is on the sheet.
        """
        cut_off = (*finding.cut_off_components, *finding.cut_off_pipes)
        lacking = (name.rpartition(".")[0] for name in finding.missing[:MOST_LACKING])
        named = dict.fromkeys((*finding.components, *finding.pipes, *cut_off, *lacking))
        if finding.witness is not None:
            named.update(dict.fromkeys(finding.witness.parts))
        box = self._box(id for id in named if id in self._items)
        if box is None:
            return None
        keeps = concerned(self.drawing, finding)
        below = [*self._band(finding), *self._ring_of_pipe(finding)]
        marks = self._seen(box := _roomy(box), below, keeps, shut_states(finding), "danger", frozenset(named))
        marking = Marking(self.layout)
        marks += marking.ring(finding, (), ring_role(finding))
        marks += [*marking.pills(finding), *marking.words(finding)]
        return Picture(tuple(marks), box, self.layout.tell(words))

    def running(
        self,
        keeps: frozenset[str],
        shut: Mapping[str, frozenset[str]],
        over_pipes: Sequence[Mark],
        around: Iterable[str],
        words: str,
    ) -> Picture | None:
        """What runs, with the rest quiet, marks of its flows over the pipes, and valves shown shut.

        None where nothing of what it should show lies on the sheet.
        """
        box = self._box(id for id in around if id in self._items)
        if box is None:
            return None
        box = grown(box, MARGIN_PX)
        marks = tuple(self._seen(box, (), keeps, shut, "ink", keeps, over_pipes))
        return Picture(marks, box, self.layout.tell(words))

    def _seen(
        self,
        box: Rect,
        below: Iterable[Mark],
        keeps: frozenset[str],
        shut: Mapping[str, frozenset[str]],
        shut_role: str,
        named: frozenset[str],
        over_pipes: Iterable[Mark] = (),
    ) -> list[Mark]:
        """What lies in a box: pipes, then parts, then labels; what does not keep its colour is quiet."""
        seen = [item for item in self._items.values() if overlap(grown(item.box, 1), box)]
        marks = list(below)
        for item in sorted(seen, key=lambda each: not each.is_pipe):
            if over_pipes and not item.is_pipe:
                marks += over_pipes
                over_pipes = ()
            marks += self._toned(item, shut.get(item.id), shut_role, quiet=item.id not in keeps)
        for item in seen:
            if item.label_box is not None and (item.id in named or _lies_in(item.label_box, box)):
                quiet = item.id not in keeps
                marks += recoloured(item.label, _roles(item.label, "quiet")) if quiet else item.label
        return marks

    def _box(self, ids: Iterable[str]) -> Rect | None:
        """The box round these parts and pipes and their labels."""
        boxes = []
        for id in ids:
            item = self._items[id]
            boxes.append(item.box)
            if item.label_box is not None:
                boxes.append(item.label_box)
        return _round(boxes)

    def _title(self, title: str) -> tuple[tuple[Mark, ...], Rect]:
        """The title block below what stands over its place, and the box round the drawing and it."""
        box = self.layout.bounds() or (0.0, 0.0, 0.0, 0.0)
        tongue = self.layout.labelling.tongue
        wide, high = title_size(title, tongue)
        left = (box[0] // SQUARE_PX) * SQUARE_PX
        low = self.layout.lowest(left - SQUARE_PX, left + wide + 2 * SQUARE_PX)
        top = (max(low, box[1]) + TITLE_CLEAR_PX) // SQUARE_PX * SQUARE_PX
        subtitle = self.layout.tell(depiction.subtitle(self.drawing))
        block = moved(title_block(title, subtitle, tongue), left, top)
        return block, _round([box, (left, top, left + wide, top + high)]) or box

    def _pipes(self) -> Iterable[_Item]:
        layout = self.layout
        # The layout's own order is that of sets, which differs from run to run.
        lines = ((id, layout.lines[id]) for id in self.drawing.pipes if id in layout.lines)
        for id, line in lines:
            marks: list[Mark] = list(
                pipe_marks(
                    line,
                    layout.service.get(id, "unknown"),
                    hops=layout.hops.get(id, ()),
                    gap=layout.gaps.get(id),
                    text=layout.caption(id),
                )
            )
            for place, end in zip((line[0], line[-1]), self.drawing.pipes[id].ends, strict=True):
                if isinstance(end, Point):
                    marks += open_port_mark(*place, None)
            yield _Item(id, True, tuple(marks), layout.box(id) or (0, 0, 0, 0))

    def _parts(self) -> Iterable[_Item]:
        for id, thing in things(self.drawing).items():
            box, label = self.layout.boxes.get(id), self.layout.labels.get(id)
            if box is None:
                continue
            open_ports = self.layout.open_ports.get(id, ())
            ports = [mark for at, faces in open_ports for mark in open_port_mark(*at, faces)]
            marks = (*self._symbol(thing, NO_STATES), *ports)
            if label is None:
                yield _Item(id, False, marks, box)
            else:
                yield _Item(id, False, marks, box, marks_of(label), label.box)

    def _symbol(self, thing: Component | Control, shut: frozenset[str]) -> tuple[Mark, ...]:
        if thing.at is None:
            return ()
        turn, mirrored = (thing.turn, thing.mirrored) if isinstance(thing, Component) else (0, False)
        marks = symbol(thing.kind.name, depiction.states(thing) | shut, turn, mirrored)
        if thing.kind.name == "tee":
            marks = recoloured(marks, {"ink": self.layout.dot_role(thing)})
        return moved(marks, thing.at.x * SQUARE_PX, thing.at.y * SQUARE_PX)

    def _toned(
        self, item: _Item, shut: frozenset[str] | None, shut_role: str, *, quiet: bool
    ) -> tuple[Mark, ...]:
        """An item's marks: a shut valve in a colour of its own, what is not concerned in one grey."""
        if shut is not None and not item.is_pipe:
            marks = self._symbol(things(self.drawing)[item.id], shut)
            return recoloured(marks, _roles(marks, shut_role))
        return recoloured(item.marks, _roles(item.marks, "quiet")) if quiet else item.marks

    def _band(self, finding: Finding) -> list[Mark]:
        """The ground of what is cut off: first its edge, wider, then its tint over that."""
        lines = [self.layout.lines[id] for id in finding.cut_off_pipes if id in self.layout.lines]
        boxes = [self.layout.boxes[id] for id in finding.cut_off_components if id in self.layout.boxes]
        return [*_ground(lines, boxes, "danger", EDGE_PX), *_ground(lines, boxes, "danger_tint", 0.0)]

    def _ring_of_pipe(self, finding: Finding) -> list[Mark]:
        """The ring round a pipe that is judged: an edge with paper over it, below the pipe."""
        line = self.layout.lines.get(judged(finding) or "")
        if not line:
            return []
        return [*_ground([line], (), ring_role(finding), 2.5), *_ground([line], (), "paper", 0.0)]


def _ground(lines: Iterable[Sequence[Place]], boxes: Iterable[Rect], role: str, out: float) -> Iterable[Mark]:
    for line in lines:
        yield Stroke(pipe_path(_longer(line, out)), role, ALONG_PX + 2 * out)
    for box in boxes:
        left, top, right, low = grown(box, ROUND_PX + out)
        yield Fill(paths.rectangle(left, top, right - left, low - top, ROUND_RADIUS), role)


def _longer(line: Sequence[Place], out: float) -> tuple[Place, ...]:
    """The line with both ends drawn out, so that its flat ends have an edge as well."""
    if not out or len(line) < 2:
        return tuple(line)
    return (_beyond(line[1], line[0], out), *line[1:-1], _beyond(line[-2], line[-1], out))


def _beyond(before: Place, end: Place, out: float) -> Place:
    dx, dy = end[0] - before[0], end[1] - before[1]
    length = (dx * dx + dy * dy) ** 0.5
    return end if length == 0 else (end[0] + dx / length * out, end[1] + dy / length * out)


def _roles(marks: Iterable[Mark], role: str) -> dict[str, str]:
    """Every role of these marks as that one, but for the ground they lie on; tints go."""
    return {mark.role: "body" if mark.role in TINTS else role for mark in marks if mark.role not in GROUNDS}


def _roomy(box: Rect) -> Rect:
    """The box with some room round it, and no smaller than a picture should be."""
    left, top, right, low = grown(box, AROUND_PX)
    wider, higher = max(0.0, LEAST_WIDE - (right - left)) / 2, max(0.0, LEAST_HIGH - (low - top)) / 2
    return left - wider, top - higher, right + wider, low + higher


def _round(boxes: Sequence[Rect]) -> Rect | None:
    if not boxes:
        return None
    lefts, tops, rights, lows = zip(*boxes, strict=True)
    return min(lefts), min(tops), max(rights), max(lows)


def _lies_in(inner: Rect, outer: Rect) -> bool:
    return inner[0] >= outer[0] and inner[1] >= outer[1] and inner[2] <= outer[2] and inner[3] <= outer[3]

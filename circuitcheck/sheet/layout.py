"""Where everything of a drawing comes to lie on the sheet, kept up to date by what changed. No Qt."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Set
from dataclasses import dataclass, field
from itertools import pairwise

from circuitcheck.drawing.difference import changes
from circuitcheck.drawing.routing import Routes, routes
from circuitcheck.drawing.value import Component, Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.picture.crossings import Crossings
from circuitcheck.picture.grades import open_port_mark
from circuitcheck.picture.labels import Label, Obstacles, Rect, grown
from circuitcheck.picture.marks import SQUARE_PX, extent
from circuitcheck.picture.pipes import LINES, Gap, Place, in_px
from circuitcheck.picture.symbols import symbol_extent
from circuitcheck.sheet import depiction
from circuitcheck.sheet.extent import Extent
from circuitcheck.sheet.labelling import SMALL_DRAWING, Labelling
from circuitcheck.sheet.things import Looked, Thing, things
from circuitcheck.told import tell
from circuitcheck.wanted import go_on

PIPE_HALF_PX = 3.0
LINE_HALF_PX = 2.0
MANY_SERVED = 2000
"""To read the services of more pipes takes longer than a frame."""
MANY_ELSEWHERE = 2000
"""Of so many that lie elsewhere at once the box round all is taken anew."""

NOWHERE = routes(Drawing())
"""The lines of an empty sheet."""
PARTS_OWN, PIPES_OWN = frozenset({"part", "label", "stub"}), frozenset({"pipe", "gap"})
"""The sorts of obstacles of a part and of a pipe."""

OpenPort = tuple[Place, tuple[int, int] | None]
"""Where a port that needs a pipe lies, in px, and the step in which its pipe would leave."""

Services = Callable[[Drawing], Mapping[str, str]]


@dataclass(frozen=True, slots=True)
class Changes:
    """The ids whose view is to be made anew, and those that are gone."""

    parts: frozenset[str] = frozenset()
    pipes: frozenset[str] = frozenset()
    gone: frozenset[str] = frozenset()


@dataclass
class Layout:
    """Boxes, lines, hops, services and open ports of one drawing, in px of the sheet, and its labels.

    `read_services` gives each pipe's service by name. Where an update is no longer wanted (`wanted.py`) it ends
    half done: such a layout is of no more use.
    """

    read_services: Services
    labelling: Labelling = field(default_factory=Labelling)
    drawing: Drawing = field(default_factory=Drawing)
    things: Mapping[str, Thing] = field(default_factory=dict)
    lines: dict[str, tuple[Place, ...]] = field(default_factory=dict)
    hops: dict[str, tuple[Place, ...]] = field(default_factory=dict)
    service: Mapping[str, str] = field(default_factory=dict)
    subtitle: str = ""
    """What plant it is, read off its parts; while a gesture lasts on a large drawing, what it was before."""
    asks_elsewhere: bool = False
    """Whether somebody else reads the services of a large drawing that is shown already; see `take_services`."""
    boxes: dict[str, Rect] = field(default_factory=dict)
    open_ports: dict[str, tuple[OpenPort, ...]] = field(default_factory=dict)
    _looked: Looked = field(default_factory=Looked)
    _routes: Routes | None = None
    _settled: Routes | None = None
    _served: Drawing | None = None
    _waits: bool = False
    _crossings: Crossings = field(default_factory=Crossings)
    _line_boxes: dict[str, Rect] = field(default_factory=dict)
    _extent: Extent | None = None

    @property
    def labels(self) -> Mapping[str, Label]:
        """Each part's label."""
        return self.labelling.labels

    @property
    def gaps(self) -> Mapping[str, Gap]:
        """The gap that each pipe's letter and size stand in."""
        return self.labelling.gaps

    @property
    def line_boxes(self) -> Mapping[str, Rect]:
        """The box round each pipe's line, without its width."""
        return self._line_boxes

    def tell(self, text: str) -> str:
        """A text in the language that labels are set in."""
        return tell(text, self.labelling.tongue)

    @property
    def obstacles(self) -> Obstacles:
        """All that a further label or mark should not lie on."""
        return self.labelling.obstacles

    def update(self, drawing: Drawing, *, passing: bool = False, hurried: bool = False) -> Changes:
        """Take on another drawing. `passing`: while a gesture lasts labels go along with their parts.
        `hurried`: the next one comes at once, so lines may be rough; see `is_rough`."""
        before, self.drawing = self.drawing, drawing
        old, new = self.things, things(drawing)
        self.things = new
        parts, gone, pipes, gone_pipes = self._looked.changed(before, drawing, passing=passing)
        rejoined = {end.part for id in pipes | gone_pipes for end in _joints(before, drawing, id)}
        for id in gone:
            self._forget_part(id)
        for id in gone_pipes:
            self._forget_line(id)
            self.obstacles.put(f"pipe {id}", ())
        self._place_symbols(new, parts)
        parts |= self._find_open_ports(parts | rejoined)
        rerouted = self._reroute(parts | rejoined, pipes, passing=passing, hurried=hurried) | gone_pipes
        pipes |= rerouted | self._rehop(rerouted)
        reserved = self._renew_services(passing=passing)
        parts |= rejoined | {end.part for id in reserved for end in drawing.pipes[id].joints}
        parts &= new.keys()
        pipes = (pipes | reserved) & drawing.pipes.keys()
        if passing:
            parts |= self.labelling.carry(old, new, parts)
        else:
            parts |= self.labelling.place(new, self.boxes, parts, rerouted)
        pipes |= self._letter(pipes | gone_pipes, passing=passing) & drawing.pipes.keys()
        self._measure(parts | gone, pipes | gone_pipes)
        return Changes(frozenset(parts), frozenset(pipes), frozenset(gone | gone_pipes))

    def keep_clear(self, around: Mapping[str, float], boxes: Iterable[Rect]) -> None:
        """Keep labels out of these boxes, and those of these parts so many px further off than else."""
        near = self.labelling.keep_clear(around, boxes)
        known = self.things
        self._measure(self.labelling.place(known, self.boxes, near & known.keys(), ()), ())
        self._letter(frozenset(), passing=False)

    @property
    def settled(self) -> Routes | None:
        """Each pipe's line in squares as it was before anything that is on the move; None on an empty sheet."""
        return self._settled

    def go_on_from(self, lines: Routes | None) -> None:
        """Let a layout of nothing lay its first drawing out by these lines: its own, or those of a drawing of which it
        is an edit, where what still does keeps its line."""
        self._settled = lines

    @property
    def routes(self) -> Routes:
        """Each pipe's line in squares; they stay as they are when the layout goes on."""
        return NOWHERE if self._routes is None else self._routes

    @property
    def is_rough(self) -> bool:
        """Whether some lines are simpler than they would be, as there was no time for more."""
        return self.routes.is_rough

    def routed(self, pipe: str) -> tuple[Point, ...]:
        """A pipe's line in squares; empty where it is not placed."""
        return self.routes.get(pipe, ())

    def caption(self, pipe: str) -> str:
        """Letter and size of a pipe."""
        return self.labelling.captions.get(pipe, "")

    def box(self, id: str) -> Rect | None:
        """The box of a part's symbol or a pipe's line, in px; None where it is not placed."""
        if id in self.boxes:
            return self.boxes[id]
        line = self.lines.get(id)
        return _union_of_line(line) if line else None

    def within(self, boxes: Iterable[Rect]) -> tuple[set[str], set[str]]:
        """The parts and the pipes of which anything may lie in any of these boxes: symbol, label or open
        port, line or letter."""
        parts: set[str] = set()
        pipes: set[str] = set()
        for owner in self.obstacles.near(boxes):
            sort, _, id = owner.partition(" ")
            if id in self.boxes and sort in PARTS_OWN:
                parts.add(id)
            elif id in self.lines and sort in PIPES_OWN:
                pipes.add(id)
        return parts, pipes

    def dot_role(self, tee: Thing) -> str:
        """The colour role of a tee's dot: that of the first of its pipes whose service is known."""
        for port in tee.kind.ports:
            pipe = self.drawing.joined.get(Joint(tee.id, port.name))
            service = self.service.get(pipe, "unknown") if pipe else "unknown"
            if service != "unknown":
                return LINES[service].role
        return "ink"

    def bounds(self) -> Rect | None:
        """The box round all symbols, labels and lines; None on an empty sheet."""
        return self._extent_of_all().whole()

    def lowest(self, left: float, right: float) -> float:
        """The lowest edge of all that lies between two uprights, in px; minus infinity for nothing."""
        return self._extent_of_all().lowest(left, right)

    def _extent_of_all(self) -> Extent:
        """All symbols, labels and lines; put together when it is first asked for, and followed from then on."""
        if self._extent is None:
            found = {f"part {id}": box for id, box in self.boxes.items()}
            found |= {f"label {id}": label.box for id, label in self.labels.items()}
            found |= {f"pipe {id}": box for id, box in self._line_boxes.items()}
            self._extent = Extent(found)
        return self._extent

    def _measure(self, parts: Collection[str], pipes: Collection[str]) -> None:
        """These lie elsewhere, or are gone."""
        known = self._extent
        if known is None:
            return
        if len(parts) + len(pipes) > MANY_ELSEWHERE:
            self._extent = None
            return
        for id in parts:
            label = self.labels.get(id)
            known.put(f"part {id}", self.boxes.get(id))
            known.put(f"label {id}", None if label is None else label.box)
        for id in pipes:
            known.put(f"pipe {id}", self._line_boxes.get(id))

    def _forget_line(self, id: str) -> None:
        self.lines.pop(id, None)
        self._line_boxes.pop(id, None)

    def _forget_part(self, id: str) -> None:
        self.boxes.pop(id, None)
        self.open_ports.pop(id, None)
        self.labelling.forget(id)

    def _place_symbols(self, known: Mapping[str, Thing], parts: set[str]) -> None:
        for id in parts:
            go_on()
            box = symbol_box(known[id])
            if box is None:
                self._forget_part(id)
            else:
                self.boxes[id] = box
                self.obstacles.put(f"part {id}", (box,))

    def _find_open_ports(self, parts: set[str]) -> set[str]:
        """Find the ports that need a pipe, and keep labels off their marks. Returns whose are others."""
        changed = set()
        for id in parts & self.drawing.components.keys():
            go_on()
            part = self.drawing.components[id]
            found = tuple(
                ((at.x * SQUARE_PX, at.y * SQUARE_PX), part.port_faces(port))
                for port in depiction.open_ports(self.drawing, part)
                if (at := part.port_at(port)) is not None
            )
            if found != self.open_ports.get(id, ()):
                changed.add(id)
            self.open_ports[id] = found
            self.obstacles.put(f"stub {id}", [extent(open_port_mark(*at, faces)) for at, faces in found])
        return changed

    def _reroute(self, parts: set[str], pipes: set[str], *, passing: bool, hurried: bool) -> set[str]:
        """Route anew, while a gesture lasts always from the lines that were there when it began: a part that
        was moved past a pipe has left no trace on it.

        Returns the pipes whose line is another, those that lost theirs included.
        """
        shown, new = self._routes, routes(self.drawing, self._settled, hurried=hurried)
        self._routes = new
        if not passing:
            self._settled = new
        asked = set(pipes) if shown is None else pipes | new.others_than(shown)
        for id in parts & self.drawing.components.keys():
            asked.update(self.drawing.pipes_of(id))
        changed = set()
        for id in asked:
            go_on()
            line = in_px(new[id]) if id in new else None
            if line == self.lines.get(id):
                continue
            changed.add(id)
            if line is None:
                self._forget_line(id)
            else:
                self.lines[id] = line
                self._line_boxes[id] = _box_of(line)
            self.obstacles.put(f"pipe {id}", () if line is None else runs_of(line, PIPE_HALF_PX))
        return changed

    def _renew_services(self, *, passing: bool) -> set[str]:
        """The pipes whose service is another; read anew only where the circuit is another."""
        if passing and len(self.drawing.pipes) > SMALL_DRAWING:
            return set()
        self._waits = False
        if self._served is not None:
            if same_circuit(self._served, self.drawing):
                return set()
            if self.asks_elsewhere and len(self.drawing.pipes) > MANY_SERVED:
                self._waits = True
                return set()
        return self._serve(self.read_services(self.drawing))

    def _serve(self, new: Mapping[str, str]) -> set[str]:
        changed = {id for id in self.drawing.pipes if self.service.get(id) != new.get(id)}
        self.service, self._served = new, self.drawing
        self.subtitle = depiction.subtitle(self.drawing)
        return changed

    @property
    def waits_for_services(self) -> bool:
        """Whether the services are still those of a circuit before this one."""
        return self._waits

    def take_services(self, services: Mapping[str, str]) -> Changes:
        """What was waited for: the service of each pipe of the drawing as it is."""
        self._waits = False
        pipes = self._serve(services)
        parts = {end.part for id in pipes for end in self.drawing.pipes[id].joints} & self.things.keys()
        pipes |= self._letter(pipes, passing=False) & self.drawing.pipes.keys()
        return Changes(frozenset(parts), frozenset(pipes))

    def _rehop(self, rerouted: set[str]) -> set[str]:
        """The pipes whose hops are others."""
        asked = set(rerouted)
        for id in rerouted:
            go_on()
            line = self.routed(id)
            asked |= self._crossings.put(id, line) if line else self._crossings.remove(id)
        changed = set()
        for id in asked:
            hops = in_px(self._crossings.hops(id))
            if hops != self.hops.pop(id, ()):
                changed.add(id)
            if hops:
                self.hops[id] = hops
        return changed

    def _letter(self, pipes: Set[str], *, passing: bool) -> set[str]:
        small = len(self.drawing.components) <= SMALL_DRAWING and not passing
        asked = self.drawing.pipes.keys() | pipes if small else pipes
        return self.labelling.letter(self.drawing, self.lines, self.hops, self.service, asked)


def symbol_box(thing: Thing) -> Rect | None:
    """The box of a thing's symbol as drawn, in px of the sheet; None where it is not placed."""
    if thing.at is None:
        return None
    turn, mirrored = (thing.turn, thing.mirrored) if isinstance(thing, Component) else (0, False)
    left, top, right, low = symbol_extent(thing.kind.name, depiction.states(thing), turn, mirrored)
    x, y = thing.at.x * SQUARE_PX, thing.at.y * SQUARE_PX
    return x + left, y + top, x + right, y + low


def same_circuit(a: Drawing, b: Drawing) -> bool:
    """Whether the two differ only in where things stand and what they are called; not where parts or pipes stand
    in another order, which is as if others had come."""
    parts, pipes = changes(a, b)
    if parts is None or pipes is None:
        return False
    if any([_where(e) for e in was.ends] != [_where(e) for e in now.ends] for was, now in pipes):
        return False
    return all(was.kind is now.kind and was.data == now.data for was, now in parts)


def _where(end: Joint | Point) -> Joint | None:
    return end if isinstance(end, Joint) else None


def _joints(before: Drawing, after: Drawing, pipe: str) -> Iterator[Joint]:
    for drawing in (before, after):
        if pipe in drawing.pipes:
            yield from drawing.pipes[pipe].joints


def runs_of(line: tuple[Place, ...], h: float) -> list[Rect]:
    """Each run of a line as a box, `h` px to each side of it."""
    return [
        (min(a[0], b[0]) - h, min(a[1], b[1]) - h, max(a[0], b[0]) + h, max(a[1], b[1]) + h)
        for a, b in pairwise(line)
    ]


def _union_of_line(line: tuple[Place, ...]) -> Rect:
    return grown(_box_of(line), LINE_HALF_PX)


def _box_of(line: tuple[Place, ...]) -> Rect:
    xs, ys = [x for x, _ in line], [y for _, y in line]
    return min(xs), min(ys), max(xs), max(ys)

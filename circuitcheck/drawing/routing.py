"""The line of every pipe on the sheet: as a person set it, or square around the parts."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from circuitcheck.drawing.difference import changed_items, changes, lies_elsewhere
from circuitcheck.drawing.earlier import earlier_shapes
from circuitcheck.drawing.ground import CONTACT, TOO_CLOSE_A_SQUARE, Box, Effort, Ground, Surroundings
from circuitcheck.drawing.leaving import Leaving
from circuitcheck.drawing.search import cheapest_line
from circuitcheck.drawing.shapes import Line, own_cost, simple_shapes, straight, way_of
from circuitcheck.drawing.sides import Leave
from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.geometry import Point

MARGIN = 10.0
"""How far beyond its two ends a pipe looks for a way, in squares."""
GOOD_ENOUGH = 7.0
"""A simple line that meets no more than this (two crossings) is taken without a search."""

EFFORT, EFFORT_A_PIPE = 100_000, 100
"""How much a run of the routing may look at, some microseconds each; pipes that are left then, the longest,
take their simplest line. A house needs some hundreds, the pipes of a sound drawing 1 to 15 each."""


class Routes(Mapping[str, Line]):
    """The full line of every pipe whose ends are placed, from its first end to its second.

    An immutable value. It remembers the drawing it belongs to and what lies where, so that the
    routes of the next drawing cost no more than what changed.
    """

    def __init__(
        self, drawing: Drawing, lines: dict[str, Line], boxes: dict[str, Box], ground: Ground
    ) -> None:
        self.drawing = drawing
        self._lines = lines
        self._boxes = boxes
        self._ground = ground

    def __getitem__(self, pipe: str) -> Line:
        return self._lines[pipe]

    def __iter__(self) -> Iterator[str]:
        return iter(self._lines)

    def __len__(self) -> int:
        return len(self._lines)


def routes(drawing: Drawing, before: Routes | None = None) -> Routes:
    """The line of every pipe whose ends are placed, in the order of the drawing.

    The same drawing (and the same routes before it) always gives the same lines. Given the routes
    of an earlier drawing, a pipe keeps its line until one of its ends moves or its corners
    change, and its shape as long as that still does.
    """
    if before is None:
        before = Routes(Drawing(), {}, {}, Ground())
        if not _is_laid_out(drawing):
            return Routes(drawing, {}, {}, Ground())
    if before.drawing is drawing:
        return before
    if _lies_alike(before.drawing, drawing):
        return Routes(drawing, before._lines, before._boxes, before._ground)
    return _Router(drawing, before).routed()


def _lies_alike(before: Drawing, after: Drawing) -> bool:
    """Whether the two differ by nothing that lies elsewhere: by labels and data at most."""
    parts, pipes = changes(before, after)
    if parts is None or pipes is None:
        return False
    if any(old.kind is not new.kind or lies_elsewhere(old, new) for old, new in parts):
        return False
    return all(old.ends == new.ends and old.via == new.via for old, new in pipes)


def _is_laid_out(drawing: Drawing) -> bool:
    """Whether any pipe could have a line: between two parts on the sheet, or two free ends."""
    if any(part.at is not None for part in drawing.components.values()):
        return True
    return any(not isinstance(pipe.ends[0], Joint) for pipe in drawing.pipes.values())


class _Router:
    """One run of the routing; what it holds becomes the Routes."""

    def __init__(self, drawing: Drawing, before: Routes) -> None:
        self.drawing = drawing
        self.before = before
        self.lines = dict(before._lines)
        self.boxes = dict(before._boxes)
        self.ground = before._ground.copy()
        self.old_lines: dict[str, Line] = {}
        self.leaving = Leaving(drawing, self.lines)
        self.effort = Effort()

    def routed(self) -> Routes:
        """Bring boxes and lines up to date, then route what has no line."""
        stale = self._stale_pipes(self._changed_parts())
        for id in stale:
            self._lift(id)
        open_pipes = [id for id in stale if not self._settled(self.drawing.pipes[id])]
        self._route(open_pipes)
        return Routes(self.drawing, self._in_order(stale), self.boxes, self.ground)

    def _in_order(self, stale: Iterable[str]) -> dict[str, Line]:
        """The lines in the order of the drawing. Where every pipe that has one had one before, in the same
        order, those of the stale pipes take the places of the old ones: of many pipes few are stale."""
        earlier = self.before._lines
        if (
            len(self.lines) == len(earlier)
            and changed_items(self.before.drawing.pipes, self.drawing.pipes) is not None
        ):
            ordered = dict(earlier)
            for id in stale:
                if id in self.lines:
                    ordered[id] = self.lines[id]
            if len(ordered) == len(earlier):
                return ordered
        return {id: self.lines[id] for id in self.drawing.pipes if id in self.lines}

    def _changed_parts(self) -> list[str]:
        """The parts that are not what they were, their boxes brought up to date."""
        new, old = self.drawing.components, self.before.drawing.components
        if new is old:
            return []
        pairs = changed_items(old, new)
        if pairs is not None:
            changed, gone = [part.id for _, part in pairs], []
        else:
            changed = [id for id, part in new.items() if old.get(id) is not part]
            gone = [id for id in old if id not in new]
        for id in (*changed, *gone):
            box = self.boxes.pop(id, None)
            if box is not None:
                self.ground.remove_box(id, box)
        for id in changed:
            box = _box(new[id])
            if box is not None:
                self.boxes[id] = box
                self.ground.add_box(id, box)
        return changed

    def _stale_pipes(self, changed: Iterable[str]) -> list[str]:
        """The pipes that are not what they were or end on a changed part, in the order of the drawing."""
        new, old = self.drawing.pipes, self.before.drawing.pipes
        stale = set[str]()
        if new is not old:
            stale = {id for id, pipe in new.items() if old.get(id) is not pipe}
            for id in old:
                if id not in new:
                    self._lift(id)
        if len(stale) < len(new):
            stale.update(id for part in changed for id in self.drawing.pipes_of(part))
        return [id for id in new if id in stale] if stale else []

    def _lift(self, id: str) -> None:
        """Take a pipe's line off the ground, and remember it."""
        line = self.lines.pop(id, None)
        if line is not None:
            self.old_lines[id] = line
            self.ground.remove_line(id, line)

    def _lay(self, id: str, line: Line) -> None:
        self.lines[id] = line
        self.ground.add_line(id, line)

    def _settled(self, pipe: Pipe) -> bool:
        """Lay a pipe that needs no routing: set by a person, unmoved, or with nowhere to lie."""
        start, finish = (self.drawing.end_at(end) for end in pipe.ends)
        if start is None or finish is None:
            return True
        if pipe.via is not None:
            self._lay(pipe.id, (start, *pipe.via, finish))
            return True
        if start == finish:
            self._lay(pipe.id, (start, finish))
            return True
        old, line = self.before.drawing.pipes.get(pipe.id), self.old_lines.get(pipe.id)
        if old is None or old.via is not None or line is None or (line[0], line[-1]) != (start, finish):
            return False
        if not self._leaves_as_it_must(pipe, line):
            return False
        self._lay(pipe.id, line)
        return True

    def _leaves_as_it_must(self, pipe: Pipe, line: Line) -> bool:
        ways = way_of(line[0], line[1]), way_of(line[-1], line[-2])
        faces = (self.leaving.faces(end) for end in pipe.ends)
        return all(face is None or face == way for face, way in zip(faces, ways, strict=True))

    def _route(self, ids: Sequence[str]) -> None:
        """Lay the open pipes, short ones first; then once more those that ran into others."""
        ends = {id: self._ends(self.drawing.pipes[id]) for id in ids}
        places = {id: place for place, id in enumerate(ids)}

        def by_length(id: str) -> tuple[bool, float, int]:
            a, b = ends[id]
            return way_of(a, b) is None, abs(a.x - b.x) + abs(a.y - b.y), places[id]

        self.effort = Effort(EFFORT + EFFORT_A_PIPE * len(ids))
        troubled = []
        for id in sorted(ids, key=by_length):
            if self._lay_best(id, *ends[id]) >= CONTACT:
                troubled.append(id)
        for id in troubled:
            if self.effort.is_spent:
                break
            line = self.lines.pop(id)
            self.ground.remove_line(id, line)
            self.leaving.laid(self.drawing.pipes[id])
            self._lay_best(id, *ends[id])

    def _ends(self, pipe: Pipe) -> tuple[Point, Point]:
        start, finish = (self.drawing.end_at(end) for end in pipe.ends)
        assert start is not None and finish is not None  # the others are settled
        return start, finish

    def _lay_best(self, id: str, start: Point, finish: Point) -> float:
        """Lay the best line there is for a pipe; returns what it meets on its way."""
        pipe = self.drawing.pipes[id]
        leaving, arriving = (self.leaving.ways(pipe, which) for which in (0, 1))
        around = self.ground.around(
            _region(start, finish), (start, finish), id, self._points_of(pipe), self.effort
        )
        stubs = TOO_CLOSE_A_SQUARE * sum(len(ways) == 1 for ways in (leaving, arriving))
        cost, line = _best_line(around, start, leaving, finish, arriving, GOOD_ENOUGH + stubs)
        old_lines = tuple(self.old_lines.values())
        for shape, dearer in earlier_shapes(start, finish, self.old_lines.get(id), old_lines):
            kept = _cost_of(around, shape, leaving, arriving)
            if kept is not None and kept <= cost + dearer:
                cost, line = kept, shape
                break
        self._lay(id, line)
        self.leaving.laid(pipe)
        return cost - own_cost(line) - stubs

    def _points_of(self, pipe: Pipe) -> list[str]:
        """The tees and caps a pipe ends on: it starts inside of what others keep clear of."""
        return [end.part for end in pipe.ends if isinstance(end, Joint) and self.leaving.faces(end) is None]


def _best_line(
    around: Surroundings,
    start: Point,
    leaving: Sequence[Leave],
    finish: Point,
    arriving: Sequence[Leave],
    good_enough: float,
) -> tuple[float, Line]:
    """The cheapest line and its cost: straight, else simple, else searched for."""
    if straight(start, leaving, finish, arriving):
        line = (start, finish)
        met = around.run_cost(start, finish)
        if met <= good_enough:
            return own_cost(line) + met, line
    best: tuple[float, Line] | None = None
    met_least = float("inf")
    for least, shapes in simple_shapes(start, leaving, finish, arriving, *around.tracks(start, finish)):
        if best is not None and (least >= best[0] or around.effort.is_spent):
            break
        for shape in shapes:
            if best is not None and (shape.cost >= best[0] or around.effort.is_spent):
                break
            met = around.line_cost(shape.line)
            if best is None or shape.cost + met < best[0]:
                best = shape.cost + met, shape.line
                met_least = met
    bound = float("inf") if best is None else best[0]
    if met_least > good_enough:
        found = cheapest_line(around, start, leaving, finish, arriving, bound)
        if found is not None:
            return found
    # Nothing leads from one to the other here: then straight over, so that it is seen.
    return best if best is not None else (bound, (start, finish))


def _cost_of(
    around: Surroundings, line: Line, leaving: Sequence[Leave], arriving: Sequence[Leave]
) -> float | None:
    """What a line costs in all; None where it cannot leave its ends so."""
    first, last = way_of(line[0], line[1]), way_of(line[-1], line[-2])
    sides = [
        min((leave.cost for leave in ways if leave.way == way), default=None)
        for ways, way in ((leaving, first), (arriving, last))
    ]
    if sides[0] is None or sides[1] is None:
        return None
    return own_cost(line) + around.line_cost(line) + sides[0] + sides[1]


def _box(part: Component) -> Box | None:
    """The part's box; a tee's is half a square to each side, so that nothing passes as if joined to it."""
    box = part.box()
    if box is None or box[0] < box[2]:
        return box
    left, top, right, bottom = box
    return left - 0.5, top - 0.5, right + 0.5, bottom + 0.5


def _region(start: Point, finish: Point) -> Box:
    return (
        min(start.x, finish.x) - MARGIN,
        min(start.y, finish.y) - MARGIN,
        max(start.x, finish.x) + MARGIN,
        max(start.y, finish.y) + MARGIN,
    )

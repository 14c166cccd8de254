"""The line of every pipe on the sheet: as a person set it, or square around the parts."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping, MutableMapping
from threading import Lock

from circuitcheck.drawing.difference import changes, lies_elsewhere
from circuitcheck.drawing.ground import Ground
from circuitcheck.drawing.layers import carried_on, may_differ
from circuitcheck.drawing.laying import Laying
from circuitcheck.drawing.shapes import Line
from circuitcheck.drawing.surroundings import Box
from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.wanted import holding

EDGE = 0.01
"""So little outside of a part's box a line seems to be on its edge, in squares."""
LINES = "lines"
"""Under this name a drawing keeps the lines that were found for it."""


class Routes(Mapping[str, Line]):
    """The full line of every pipe whose ends are placed, from its first end to its second.

    An immutable value. It remembers the drawing it belongs to and what lies where, so that the
    routes of the next drawing cost no more than what changed. `is_rough`: they were told in a hurry, and
    some are simpler than they would be.
    """

    def __init__(
        self,
        drawing: Drawing,
        lines: MutableMapping[str, Line],
        boxes: MutableMapping[str, Box],
        ground: Ground,
        places: Mapping[str, int] | None = None,
        *,
        is_rough: bool = False,
    ) -> None:
        self.drawing = drawing
        self._lines = lines
        self._boxes = boxes
        self._ground = ground
        self._places = places
        self.is_rough = is_rough

    def __getitem__(self, pipe: str) -> Line:
        return self._lines[pipe]

    def __iter__(self) -> Iterator[str]:
        return iter(self._lines)

    def __len__(self) -> int:
        return len(self._lines)

    def others_than(self, before: Routes) -> set[str]:
        """The pipes whose line is not the one they have in `before`, or that have one in one of the two only."""
        old, new = before._lines, self._lines
        return {id for id in may_differ(old, new) if old.get(id) != new.get(id)}

    @property
    def places(self) -> Mapping[str, int]:
        """The place of each pipe in the order of the drawing."""
        if self._places is None:
            self._places = {id: place for place, id in enumerate(self.drawing.pipes)}
        return self._places


def routes(drawing: Drawing, before: Routes | None = None, *, hurried: bool = False) -> Routes:
    """The line of every pipe whose ends are placed, in the order of the drawing.

    The same drawing (and the same routes before it) always gives the same lines. Given the routes
    of an earlier drawing, a pipe keeps its line until one of its ends moves, its corners change, or
    it would run through a part or seem joined to a pipe that came there; and its shape as long as that
    still does. One and the same Drawing is routed once: however it was come to, and whoever asks, the
    lines are those that were found first, so that what is judged is what is shown, and undone is as it was.
    A run that is no longer wanted (`wanted.py`) leaves nothing behind.

    `hurried`: something is on the move, and the next drawing comes at once. What takes long to find is left
    out then; lines that are rough for it are not those of the drawing, and not kept for it.

    Raises ValueError where the routes before are rough ones: nothing goes on from them.
    """
    if before is not None and before.is_rough:
        raise ValueError("No lines go on from rough ones.")
    if before is not None and before.drawing is drawing:
        return before
    known: MutableMapping[str, Line] | None = drawing.kept(LINES)
    if before is None:
        before = Routes(Drawing(), {}, {}, Ground())
        if not _is_laid_out(drawing):
            return Routes(drawing, {}, {}, Ground())
    if known is None:
        # The sheet and the checks ask at the same time, each in a thread of its own: one of them looks.
        with holding(drawing.keep("routing", Lock())):
            known = drawing.kept(LINES)
            if known is None:
                found = _found(drawing, before, hurried=hurried)
                if not found.is_rough:
                    drawing.keep(LINES, found._lines)
                return found
    return _Router(drawing, before).as_known(known)


def _found(drawing: Drawing, before: Routes, *, hurried: bool) -> Routes:
    if _lies_alike(before.drawing, drawing):
        return Routes(drawing, before._lines, before._boxes, before._ground, before._places)
    return _Router(drawing, before).routed(hurried=hurried)


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
    for part in drawing.components.values():
        if part.at is not None:
            return True
    for pipe in drawing.pipes.values():  # noqa: SIM110 - of thousands, and a plain loop takes a third of the time
        if not isinstance(pipe.ends[0], Joint):
            return True
    return False


class _Router:
    """One run of the routing; what it holds becomes the Routes."""

    def __init__(self, drawing: Drawing, before: Routes) -> None:
        self.drawing = drawing
        self.before = before
        self.changed_parts, self.changed_pipes = changes(before.drawing, drawing)
        self.lines = carried_on(before._lines)
        self.boxes = carried_on(before._boxes)
        self.ground = before._ground.copy()
        self.old_lines: dict[str, Line] = {}
        self.moved_to: list[Box] = []
        self.laying = Laying(drawing, self.lines, self.ground)

    def routed(self, *, hurried: bool) -> Routes:
        """Bring boxes and lines up to date, then route what has no line."""
        stale = self._stale_pipes(self._changed_parts())
        disturbed = self._disturbed(set(stale))
        for id in (*stale, *disturbed):
            self._lift(id)
        open_pipes = [id for id in stale if not self._settled(self.drawing.pipes[id])]
        self.laying.route([*open_pipes, *disturbed], self.old_lines, hurried=hurried)
        return self._routes(self._in_order(sorted(self.laying.laid)))

    def as_known(self, known: MutableMapping[str, Line]) -> Routes:
        """Bring boxes up to date, and lay the lines that are known already."""
        self._changed_parts()
        others = [id for id in may_differ(self.before._lines, known) if self.lines.get(id) != known.get(id)]
        for id in others:
            self.laying.lift(id)
        for id in others:
            if id in known:
                self.laying.lay(id, known[id])
        return self._routes(known)

    def _routes(self, lines: MutableMapping[str, Line]) -> Routes:
        # Where no pipe came, went or changed places, all stand where they stood.
        places = None if self.changed_pipes is None else self.before._places
        rough = self.laying.is_rough
        return Routes(self.drawing, lines, self.boxes, self.ground, places, is_rough=rough)

    def _disturbed(self, stale: Collection[str]) -> list[str]:
        """The other pipes that the program routed and that run through where parts came to stand, or over
        their ports."""
        pipes = self.drawing.pipes
        met = {id for box in self.moved_to for id in self.ground.within(_with_edge(box))}
        return [id for id in sorted(met) if id in pipes and pipes[id].via is None and id not in stale]

    def _in_order(self, laid: Iterable[str]) -> MutableMapping[str, Line]:
        """The lines in the order of the drawing. Where every pipe that has one had one before, in the same
        order, those laid now take the places of the old ones: of many pipes few are laid."""
        earlier = self.before._lines
        if len(self.lines) == len(earlier) and self.changed_pipes is not None:
            ordered = carried_on(earlier)
            for id in laid:
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
        if self.changed_parts is not None:
            changed, gone = [part.id for _, part in self.changed_parts], []
        else:
            changed = [id for id, part in new.items() if old.get(id) is not part]
            gone = [id for id in old if id not in new]
        old_boxes = {id: self.boxes.pop(id) for id in (*changed, *gone) if id in self.boxes}
        for id, old_box in old_boxes.items():
            self.ground.remove_box(id, old_box)
        for id in changed:
            box = _box(new[id])
            if box is not None:
                self.boxes[id] = box
                self.ground.add_box(id, box)
                if box != old_boxes.get(id):
                    self.moved_to.append(box)
        return changed

    def _stale_pipes(self, changed: Iterable[str]) -> list[str]:
        """The pipes that are not what they were or end on a changed part, in the order of the drawing."""
        new, old = self.drawing.pipes, self.before.drawing.pipes
        if self.changed_pipes is not None:
            stale = {pipe.id for _, pipe in self.changed_pipes}
        else:
            stale = {id for id, pipe in new.items() if old.get(id) is not pipe}
            for id in old:
                if id not in new:
                    self._lift(id)
        if len(stale) < len(new):
            stale.update(id for part in changed for id in self.drawing.pipes_of(part))
        if self.changed_pipes is not None and len(stale) < len(new) / 8:
            return sorted(stale, key=self.before.places.__getitem__)
        return [id for id in new if id in stale]

    def _lift(self, id: str) -> None:
        """Take a pipe's line off the ground, and remember it."""
        line = self.laying.lift(id)
        if line is not None:
            self.old_lines[id] = line

    def _settled(self, pipe: Pipe) -> bool:
        """Lay a pipe that needs no routing: set by a person, unmoved, or with nowhere to lie."""
        start, finish = (self.drawing.end_at(end) for end in pipe.ends)
        if start is None or finish is None:
            return True
        if pipe.via is not None:
            self.laying.lay(pipe.id, (start, *pipe.via, finish))
            return True
        if start == finish:
            self.laying.lay(pipe.id, (start, finish))
            return True
        old, line = self.before.drawing.pipes.get(pipe.id), self.old_lines.get(pipe.id)
        if old is None or old.via is not None or line is None or (line[0], line[-1]) != (start, finish):
            return False
        if not self.laying.leaves_as_it_must(pipe, line):
            return False
        self.laying.lay(pipe.id, line)
        return True


def _with_edge(box: Box) -> Box:
    """The box with its edge, on which the ports lie."""
    left, top, right, bottom = box
    return left - EDGE, top - EDGE, right + EDGE, bottom + EDGE


def _box(part: Component) -> Box | None:
    """The part's box; a tee's is half a square to each side, so that nothing passes as if joined to it."""
    box = part.box()
    if box is None or box[0] < box[2]:
        return box
    left, top, right, bottom = box
    return left - 0.5, top - 0.5, right + 0.5, bottom + 0.5

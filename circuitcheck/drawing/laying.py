"""Laying pipes on the ground: the short ones first, then once more those that came to lie on others."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, MutableMapping, Sequence

from circuitcheck.drawing.choosing import Ends, kept_or_best
from circuitcheck.drawing.earlier import earlier_shapes
from circuitcheck.drawing.ground import Ground
from circuitcheck.drawing.leaving import Leaving
from circuitcheck.drawing.shapes import Line, own_cost, way_of
from circuitcheck.drawing.surroundings import CONTACT, TOO_CLOSE_A_SQUARE, Box, Effort, Surroundings
from circuitcheck.drawing.value import Drawing, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.wanted import go_on

MARGIN = 10.0
"""How far beyond its two ends a pipe looks for a way, in squares."""

EFFORT, EFFORT_A_PIPE = 80_000, 40
"""How much a run of the routing may look at, some microseconds each; pipes that are left then, the longest,
take their simplest line. The pipes of a sound drawing need about 20 each, a search where parts stand close
some thousands."""
EFFORT_OF_AN_EDIT, MORE_A_PIPE = 12_000, 4_000
"""The same where few pipes are to be laid, so that one does not wait for them."""
HURRIED, HURRIED_A_PIPE = 240, 10
"""The same at each step while something is on the move, dealt out to the pipes so that none takes all of it."""

ROUNDS = 3
"""How often pipes that lie on one another are laid anew."""
MOST_TOGETHER = 4
"""Of so many pipes at most the lines are tried anew together."""


class Laying:
    """One run of the routing on a ground; `lines` are those laid so far, and grow while this is used.

    `laid` are the pipes that it has laid. `is_rough`: where it was to hurry, some are simpler than they would be.
    """

    def __init__(self, drawing: Drawing, lines: MutableMapping[str, Line], ground: Ground) -> None:
        self.laid: set[str] = set()
        self.is_rough = False
        self._drawing = drawing
        self._lines = lines
        self._ground = ground
        self._leaving = Leaving(drawing, lines)
        self._effort = Effort()
        self._old_lines: dict[str, Line] = {}
        self._open: frozenset[str] = frozenset()
        self._ends_of: dict[str, tuple[Point, Point]] = {}
        self._in_vain: set[tuple[str, ...]] = set()

    def lay(self, id: str, line: Line) -> None:
        """Put a pipe's line on the ground."""
        self._lines[id] = line
        self.laid.add(id)
        self._ground.add_line(id, line)

    def lift(self, id: str) -> Line | None:
        """Take a pipe's line off the ground, where it has one."""
        line = self._lines.pop(id, None)
        if line is not None:
            self._ground.remove_line(id, line)
        return line

    def leaves_as_it_must(self, pipe: Pipe, line: Line) -> bool:
        """Whether a line leaves both ends as their ports face."""
        ways = way_of(line[0], line[1]), way_of(line[-1], line[-2])
        faces = (self._leaving.faces(end) for end in pipe.ends)
        return all(face is None or face == way for face, way in zip(faces, ways, strict=True))

    def route(self, ids: Sequence[str], old_lines: dict[str, Line], *, hurried: bool = False) -> None:
        """Lay these pipes, short ones first; then, unless it is to hurry, once more those that ran into others.

        `old_lines` are the lines that these and other changed pipes had before.
        """
        self._old_lines, self._open = old_lines, frozenset(ids)
        places = {id: place for place, id in enumerate(ids)}

        def by_length(id: str) -> tuple[bool, float, int]:
            a, b = self._ends(id)
            return way_of(a, b) is None, abs(a.x - b.x) + abs(a.y - b.y), places[id]

        in_turn = sorted(ids, key=by_length)
        if hurried:
            self._lay_hurriedly(in_turn)
            return
        self._effort = Effort(_most_effort(len(ids)))
        self._in_vain = {(id,) for id in in_turn[-1:]}
        met = {id: self._lay_best(id) for id in in_turn}
        troubled = [id for id in in_turn if self._is_in_trouble(id, met[id])]
        for _ in range(ROUNDS):
            before = len(troubled)
            troubled = self._untangled(troubled, places)
            if not troubled or self._effort.is_spent or len(troubled) == before:
                break

    def _lay_hurriedly(self, ids: Sequence[str]) -> None:
        """Lay each of these once, with its share of the effort and what those before it left."""
        effort = self._effort = Effort(0)
        for id in ids:
            effort.left = max(effort.left, 0) + HURRIED_A_PIPE + HURRIED / len(ids)
            is_troubled = self._is_in_trouble(id, self._lay_best(id))
            # Asked last: who ran out of effort while looking for trouble has seen none of it.
            self.is_rough = self.is_rough or is_troubled or effort.is_spent

    def _untangled(self, troubled: Iterable[str], open_pipes: Mapping[str, int]) -> list[str]:
        """Lay these anew, and those that they lie on, as long as that makes it better; returns what is
        in trouble still."""
        left = []
        for id in troubled:
            if self._effort.is_spent:
                break
            for together in self._tries(id, open_pipes):
                if together in self._in_vain:
                    continue
                if self._laid_anew(together):
                    self._in_vain = set()
                else:
                    self._in_vain.add(together)
                if not self._is_in_trouble(id, self._meets(id)):
                    break
            else:
                left.append(id)
        return left

    def _is_in_trouble(self, id: str, meets: float) -> bool:
        """Whether a pipe that meets so much on its way runs through a part, or seems joined to another."""
        return meets >= CONTACT or bool(self._met(id))

    def _met(self, id: str) -> list[str]:
        return self._ground.met(id, self._lines[id], self._lines, self._effort)

    def _tries(self, id: str, open_pipes: Mapping[str, int]) -> Iterator[tuple[str, ...]]:
        """Which pipes to lay anew together, one after the other; those that nothing has changed about last."""
        yield (id,)
        met = [each for each in self._met(id) if self._may_be_laid_anew(each)]
        for partners in (
            sorted((each for each in met if each in open_pipes), key=open_pipes.__getitem__),
            sorted(each for each in met if each not in open_pipes),
        ):
            del partners[MOST_TOGETHER - 1 :]
            for partner in partners:
                yield (partner,)
            if partners:
                yield id, *partners
                yield *partners, id

    def _may_be_laid_anew(self, id: str) -> bool:
        """Whether the program routes a pipe, and there is anything to route."""
        line = self._lines[id]
        return self._drawing.pipes[id].via is None and line[0] != line[-1]

    def _laid_anew(self, ids: Sequence[str]) -> bool:
        """Lay these pipes anew in this order; if that is no better they lie as they lay. Returns if it is."""
        before = {id: self._lines[id] for id in ids}
        for id, line in before.items():
            if id not in self._open:  # it lay well until now, and keeps its shape if it can
                self._old_lines.setdefault(id, line)
        self._take_up(ids)
        cost_before = self._put_back(ids, before)
        self._take_up(ids)
        for id in ids:
            self._lay_best(id)
        after = {id: self._lines[id] for id in ids}
        self._take_up(ids)
        if self._put_back(ids, after) < cost_before:
            return True
        self._take_up(ids)
        self._put_back(ids, before)
        return False

    def _take_up(self, ids: Iterable[str]) -> None:
        for id in ids:
            self.lift(id)
            self._leaving.laid(self._drawing.pipes[id])

    def _put_back(self, ids: Iterable[str], lines: Mapping[str, Line]) -> float:
        """Lay these lines one after another; returns what all of it costs."""
        cost = 0.0
        for id in ids:
            line = lines[id]
            cost += own_cost(line) + self._around(id).line_cost(line)
            self.lay(id, line)
            self._leaving.laid(self._drawing.pipes[id])
        return cost

    def _meets(self, id: str) -> float:
        """What a laid pipe meets, without what its ends must come close to."""
        pipe = self._drawing.pipes[id]
        stubs = sum(self._leaving.faces(end) is not None for end in pipe.ends)
        return self._around(id).line_cost(self._lines[id]) - TOO_CLOSE_A_SQUARE * stubs

    def _ends(self, id: str) -> tuple[Point, Point]:
        known = self._ends_of.get(id)
        if known is None:
            start, finish = [self._leaving.place(end) for end in self._drawing.pipes[id].ends]
            assert start is not None and finish is not None  # the others are settled
            known = self._ends_of[id] = start, finish
        return known

    def _around(self, id: str) -> Surroundings:
        ends = self._ends(id)
        return self._ground.around(
            _region(*ends), ends, id, self._points_of(self._drawing.pipes[id]), self._effort
        )

    def _lay_best(self, id: str) -> float:
        """Lay the best line there is for a pipe; returns what it meets on its way."""
        go_on()
        pipe = self._drawing.pipes[id]
        start, finish = self._ends(id)
        leaving, arriving = (self._leaving.ways(pipe, which) for which in (0, 1))
        around = self._around(id)
        stubs = TOO_CLOSE_A_SQUARE * sum(len(ways) == 1 for ways in (leaving, arriving))
        old_lines = tuple(self._old_lines.values())
        earlier = earlier_shapes(start, finish, self._old_lines.get(id), old_lines)
        cost, line = kept_or_best(Ends(around, start, leaving, finish, arriving, stubs), earlier)
        self.lay(id, line)
        self._leaving.laid(pipe)
        return cost - own_cost(line) - stubs

    def _points_of(self, pipe: Pipe) -> list[str]:
        """The tees and caps a pipe ends on: it starts inside of what others keep clear of."""
        return [end.part for end in pipe.ends if isinstance(end, Joint) and self._leaving.faces(end) is None]


def _most_effort(pipes: int) -> float:
    return min(EFFORT, EFFORT_OF_AN_EDIT + MORE_A_PIPE * pipes) + EFFORT_A_PIPE * pipes


def _region(start: Point, finish: Point) -> Box:
    return (
        min(start.x, finish.x) - MARGIN,
        min(start.y, finish.y) - MARGIN,
        max(start.x, finish.x) + MARGIN,
        max(start.y, finish.y) + MARGIN,
    )

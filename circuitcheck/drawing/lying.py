"""What lies where on the sheet: an index of parts and pipes that follows a drawing's changes.

Questions about the layout are asked item by item: the answer for an item is a function of the item
and of what lies within half a square of it. So after a change only the items that changed, and
those beside them, are asked again.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from typing import Any, TypeVar

from circuitcheck.drawing.cells import (
    CELL,
    COARSER,
    Box,
    Cell,
    CrowdedError,
    box_cells,
    line_cells,
    most_cells,
    most_pairs,
    place_cells,
)
from circuitcheck.drawing.difference import changed_or_gone, changes, lies_elsewhere
from circuitcheck.drawing.meeting import EXACT
from circuitcheck.drawing.routing import Routes
from circuitcheck.drawing.value import Component, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point

Told = TypeVar("Told")
Judge = Callable[["Lying", str], Told]

PARTS, PIPES = "parts", "pipes"


class Lying:
    """Where the parts and pipes of one drawing lie, and what was answered about each.

    `after` carries it on to the next drawing in place, so that it is the index of one drawing at a
    time and belongs to one thread.
    """

    def __init__(self, lines: Routes, loose: Iterable[str] | None = None) -> None:
        """`loose`: the pipes with a free end, where they are known already."""
        self.lines = lines
        self._part_cells: dict[Cell, dict[str, None]] = {}
        self._pipe_cells: dict[Cell, dict[str, None]] = {}
        self._cells_of: dict[str, tuple[Cell, ...]] = {}
        self._size = CELL
        self._entries = 0
        self._pairs = 0
        self._line_of: dict[str, tuple[Point, ...]] = {}
        self._bounds_of: dict[str, Box] = {}
        self._answers: dict[Any, _Answers] = {}
        self._parts_placed = 0
        for part in self.drawing.components.values():
            if part.at is not None:
                self._put_part(part)
        pipes: Iterable[Pipe] = self.drawing.pipes.values()
        if not lines:
            if loose is None:
                pipes = [pipe for pipe in pipes if _is_loose(pipe.ends)]
            else:
                pipes = [self.drawing.pipes[id] for id in loose]
        for pipe in pipes:
            self._put_pipe(pipe)

    @property
    def drawing(self) -> Drawing:
        """The drawing whose layout this is."""
        return self.lines.drawing

    @property
    def is_bare(self) -> bool:
        """Whether nothing lies on the sheet."""
        return not self._cells_of

    @property
    def lines_laid(self) -> int:
        """How many pipes have a line."""
        return len(self._line_of)

    @property
    def parts_placed(self) -> int:
        """How many parts lie on the sheet."""
        return self._parts_placed

    def line(self, pipe: str) -> tuple[Point, ...]:
        """A pipe's line; empty where it has none."""
        return self._line_of.get(pipe, ())

    def parts_beside(self, id: str) -> list[str]:
        """The parts that may lie within half a square of a part or pipe, without itself."""
        return self._beside(id, self._part_cells)

    def pipes_beside(self, id: str) -> list[str]:
        """The pipes that may lie within half a square of a part or pipe, without itself."""
        return self._beside(id, self._pipe_cells)

    def pipes_across(self, id: str) -> list[str]:
        """The pipes after this one by their ids whose lines may meet its line, in the order of their ids."""
        bounds = self._bounds_of
        left, top, right, low = bounds[id]
        found = set()
        for cell in self._cells_of[id]:
            for other in self._pipe_cells[cell]:
                if other > id and other in bounds:
                    box = bounds[other]
                    if box[0] <= right and box[2] >= left and box[1] <= low and box[3] >= top:
                        found.add(other)
        return sorted(found)

    def parts_at(self, point: Point) -> set[str]:
        """The parts that may lie within half a square of a place."""
        found: set[str] = set()
        for cell in place_cells(point, self._size):
            found.update(self._part_cells.get(cell, ()))
        return found

    def told(self, judge: Judge[Told], about: str) -> Mapping[str, Told]:
        """What `judge` tells of each part or each pipe (`about`) of which it tells anything, by id.

        `judge` is asked of every item on the sheet once, and then of those that a change may concern. It must
        rest on the item, its line, its joints and what `parts_beside` and `pipes_beside` name.
        Raises CrowdedError where each lies beside so many that to ask would take too long.
        """
        if self._pairs > most_pairs(len(self._cells_of)):
            raise CrowdedError
        known = self._answers.get(judge)
        if known is None:
            items = self.drawing.components if about == PARTS else self.drawing.pipes
            known = self._answers[judge] = _Answers(about, self._cells_of.keys() & items.keys())
        known.ask(self, judge)
        return known.found

    def after(self, lines: Routes) -> Lying:
        """This index carried on to the layout of another drawing; what did not change is not looked at
        again. Items are compared by identity, as edits share what they do not touch."""
        old, new = self.drawing, lines.drawing
        if old is new:
            return self
        of_parts, of_pipes = changes(old, new)
        changed = changed_or_gone(of_parts, old.components, new.components)
        parts = [id for id in changed if not self._only_named_anew(id, lines)]
        pipes = changed_or_gone(of_pipes, old.pipes, new.pipes)
        beside = _joined_to(pipes, old, new)
        moved = (*pipes, *_pipes_on(parts, old, new), *sorted(lines.others_than(self.lines)))
        concerned = dict.fromkeys((*parts, *beside, *moved))
        touched = self._around(concerned)
        self._forget(parts, moved)
        self.lines = lines
        for id in parts:
            if id in new.components:
                self._put_part(new.components[id])
        for id in dict.fromkeys(moved):
            if id in new.pipes:
                self._put_pipe(new.pipes[id])
        touched |= self._around(concerned)
        for known in self._answers.values():
            known.again(touched)
        return self

    def _only_named_anew(self, id: str, lines: Routes) -> bool:
        """Whether a part differs by its label alone."""
        old, new = self.drawing.components.get(id), lines.drawing.components.get(id)
        if old is None or new is None or old.data is not new.data or old.kind is not new.kind:
            return False
        return not lies_elsewhere(old, new)

    def _forget(self, parts: Iterable[str], pipes: Iterable[str]) -> None:
        """Take these out, as they were in the drawing so far."""
        for id in parts:
            if id in self.drawing.components:
                self._parts_placed -= id in self._cells_of
                self._take(id, self._part_cells)
        for id in pipes:
            self._take(id, self._pipe_cells)
            self._line_of.pop(id, None)
            self._bounds_of.pop(id, None)

    def _around(self, ids: Iterable[str]) -> set[str]:
        """These items and all that lie beside them."""
        found = set(ids)
        for id in list(found):
            for cell in self._cells_of.get(id, ()):
                found.update(self._part_cells.get(cell, ()))
                found.update(self._pipe_cells.get(cell, ()))
        return found

    def _beside(self, id: str, buckets: Mapping[Cell, dict[str, None]]) -> list[str]:
        found: dict[str, None] = {}
        for cell in self._cells_of.get(id, ()):
            inside = buckets.get(cell)
            if inside:
                found.update(inside)
        found.pop(id, None)
        return list(found)

    def _put_part(self, part: Component) -> None:
        box = part.box()
        if box is not None:
            self._parts_placed += 1
            self._put(part.id, box_cells(box, self._size), self._part_cells)

    def _put_pipe(self, pipe: Pipe) -> None:
        line = self.lines.get(pipe.id)
        if line is not None:
            self._line_of[pipe.id] = line
            xs, ys = [point[0] for point in line], [point[1] for point in line]
            self._bounds_of[pipe.id] = (min(xs) - EXACT, min(ys) - EXACT, max(xs) + EXACT, max(ys) + EXACT)
            self._put_line(pipe.id, line)
            return
        free = [end for end in pipe.ends if not isinstance(end, Joint)]
        if free:  # it has no line, for its other end is on a part that is not placed
            self._put_line(pipe.id, (free[0], free[0]))

    def _put_line(self, id: str, line: Sequence[Point]) -> None:
        """Put a pipe into the buckets of its line, in larger ones where there would be too many."""
        cells = line_cells(line, self._size, self._room())
        while cells is None:
            self._coarsen()
            cells = line_cells(line, self._size, self._room())
        self._put(id, cells, self._pipe_cells)

    def _room(self) -> int:
        """How many more buckets a line may lie in."""
        return most_cells(len(self._cells_of)) - self._entries

    def _coarsen(self) -> None:
        """Take larger buckets. Each holds what lay in smaller ones inside it, and so perhaps a little more."""
        self._size *= COARSER
        kept, self._entries = self._cells_of, 0
        self._pairs = 0
        self._cells_of, self._part_cells, self._pipe_cells = {}, {}, {}
        for id, cells in kept.items():
            buckets = self._part_cells if id in self.drawing.components else self._pipe_cells
            larger = dict.fromkeys((column // COARSER, row // COARSER) for column, row in cells)
            self._put(id, tuple(larger), buckets)

    def _put(self, id: str, cells: tuple[Cell, ...], buckets: dict[Cell, dict[str, None]]) -> None:
        self._cells_of[id] = cells
        self._entries += len(cells)
        for cell in cells:
            inside = buckets.get(cell)
            if inside is None:
                buckets[cell] = {id: None}
            else:
                self._pairs += len(inside)
                inside[id] = None

    def _take(self, id: str, buckets: dict[Cell, dict[str, None]]) -> None:
        cells = self._cells_of.pop(id, ())
        self._entries -= len(cells)
        for cell in cells:
            inside = buckets[cell]
            inside.pop(id, None)
            self._pairs -= len(inside)


class _Answers:
    """What one judge told so far, and of which items it must be asked."""

    def __init__(self, about: str, to_ask: set[str]) -> None:
        self.about = about
        self.found: dict[str, Any] = {}
        self._to_ask = to_ask

    def again(self, ids: Iterable[str]) -> None:
        self._to_ask.update(ids)

    def ask(self, lying: Lying, judge: Judge[Any]) -> None:
        drawing = lying.drawing
        items: Mapping[str, object] = drawing.components if self.about == PARTS else drawing.pipes
        for id in self._to_ask:
            told = judge(lying, id) if id in items else None
            if told:
                self.found[id] = told
            else:
                self.found.pop(id, None)
        self._to_ask = set()


def _is_loose(ends: tuple[End, End]) -> bool:
    return not (isinstance(ends[0], Joint) and isinstance(ends[1], Joint))


def _joined_to(pipes: Iterable[str], *drawings: Drawing) -> Iterator[str]:
    """The parts that these pipes are joined to: their ports are joined, or free, by them."""
    for id in pipes:
        for drawing in drawings:
            if id in drawing.pipes:
                yield from (end.part for end in drawing.pipes[id].joints)


def _pipes_on(parts: Iterable[str], *drawings: Drawing) -> Iterator[str]:
    """The pipes on these parts: their lines go where the parts go."""
    for id in parts:
        for drawing in drawings:
            if id in drawing.components:
                yield from drawing.pipes_of(id)

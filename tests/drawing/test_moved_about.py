"""Samples with their parts moved about at random, where there is room: every pipe still runs clear and square."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from itertools import combinations, pairwise
from random import Random

import pytest

from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.shapes import Line
from circuitcheck.drawing.value import Component, Drawing
from circuitcheck.geometry import Point
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

NAMES = ("terrace-as-proposed", "guest-house", "cottage", "village-hall", "terrace-as-found")
SEEDS = range(6)
Box = tuple[float, float, float, float]


def free_lines(drawing: Drawing) -> Drawing:
    """The drawing without the corners that a person set."""
    return replace(drawing, pipes={id: replace(pipe, via=None) for id, pipe in drawing.pipes.items()})


def _around(part: Component) -> Box | None:
    box = part.box()
    return None if box is None else (box[0] - 1, box[1] - 1, box[2] + 1, box[3] + 1)


def _clear_of(one: Box, other: Box | None) -> bool:
    return other is None or not (
        one[2] > other[0] and one[0] < other[2] and one[3] > other[1] and one[1] < other[3]
    )


def moved_about(drawing: Drawing, seed: int) -> Drawing:
    """Each part up to four squares from where it stood, two squares clear of any other."""
    chance, parts = Random(seed), dict(drawing.components)
    for id in chance.sample(list(parts), len(parts)):
        at = parts[id].at
        if at is None:
            continue
        moved = replace(parts[id], at=Point(at.x + chance.randint(-4, 4), at.y + chance.randint(-4, 4)))
        around = _around(moved)
        if around and all(each.id == id or _clear_of(around, _around(each)) for each in parts.values()):
            parts[id] = moved
    return free_lines(replace(drawing, components=parts))


def _runs(line: Line) -> Iterator[tuple[Point, Point]]:
    return ((a, b) for a, b in pairwise(line) if a != b)


def _slanted(lines: Mapping[str, Line]) -> list[str]:
    return [id for id, line in lines.items() for a, b in _runs(line) if a.x != b.x and a.y != b.y]


def _through_a_part(drawing: Drawing, lines: Mapping[str, Line]) -> list[tuple[str, str]]:
    """Pipes that lead over the inside of a part, their own too."""
    boxes = {id: box for id, part in drawing.components.items() if (box := part.box()) and box[0] < box[2]}
    return [
        (pipe, part)
        for pipe, line in lines.items()
        for part, (left, top, right, bottom) in boxes.items()
        for a, b in _runs(line)
        if max(a.x, b.x) > left and min(a.x, b.x) < right and max(a.y, b.y) > top and min(a.y, b.y) < bottom
    ]


def _beside(one: Line, other: Line) -> Iterator[float]:
    """How far apart runs of two pipes lie where they run side by side."""
    for a, b in _runs(one):
        for c, d in _runs(other):
            for across, along in ((0, 1), (1, 0)):
                if a[across] == b[across] and c[across] == d[across]:
                    shared = min(max(a[along], b[along]), max(c[along], d[along])) - max(
                        min(a[along], b[along]), min(c[along], d[along])
                    )
                    if shared > 0:
                        yield abs(a[across] - c[across])


def _too_close(lines: Mapping[str, Line]) -> list[tuple[str, str]]:
    return [
        (one, other)
        for (one, first), (other, second) in combinations(lines.items(), 2)
        if any(apart < 1 for apart in _beside(first, second))
    ]


def _sample(name: str) -> Drawing:
    return read(data_path("samples") / f"{name}.wetcircuit")


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("seed", SEEDS)
def test_pipes_run_square_clear_of_parts_and_of_one_another(name: str, seed: int) -> None:
    drawing = moved_about(_sample(name), seed)
    lines = dict(routes(drawing))
    assert set(lines) == set(drawing.pipes)
    assert _slanted(lines) == []
    assert _through_a_part(drawing, lines) == []
    assert _too_close(lines) == []


@pytest.mark.parametrize("name", NAMES)
def test_no_more_bends_than_a_person_took(name: str) -> None:
    def bends(lines: Mapping[str, Line]) -> int:
        return sum(len(line) - 2 for line in lines.values())

    by_hand = _sample(name)
    assert bends(dict(routes(free_lines(by_hand)))) <= bends(dict(routes(by_hand)))


def test_the_measures_see_what_is_wrong() -> None:
    drawing = _sample("village-hall")
    part = next(part for part in drawing.components.values() if (box := part.box()) and box[2] - box[0] > 1)
    left, top, right, bottom = part.box() or (0.0, 0.0, 0.0, 0.0)
    across = (top + bottom) / 2
    over = {"x": (Point(left - 3, across), Point(right + 3, across))}
    assert ("x", part.id) in _through_a_part(drawing, over)
    beside = {**over, "y": (Point(left, across + 0.5), Point(right, across + 0.5))}
    assert _too_close(beside) == [("x", "y")]
    assert _slanted({"z": (Point(0, 0), Point(1, 1))}) == ["z"]

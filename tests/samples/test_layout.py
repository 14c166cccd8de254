"""The samples are drawn clearly: on the squares, nothing over anything else, crossings that no one mistakes."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from itertools import combinations, pairwise

import pytest

from circuitcheck import read
from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.geometry import Point
from circuitcheck.shipped import data_path

FOLDER = data_path("samples")
NAMES = sorted(path.stem for path in FOLDER.glob("*.wetcircuit"))
MOST_CROSSINGS = 4

Box = tuple[float, float, float, float]
Run = tuple[str, Point, Point]


@pytest.fixture(params=NAMES)
def drawing(request: pytest.FixtureRequest) -> Drawing:
    return read(FOLDER / f"{request.param}.wetcircuit")


def boxes(drawing: Drawing) -> dict[str, Box]:
    """The footprint of every part that has one, and of every control."""
    found = {}
    for part in drawing.components.values():
        box = part.box()
        if box is not None and box[0] < box[2]:
            found[part.id] = box
    for control in drawing.controls.values():
        assert control.at is not None
        wide, high = control.kind.size
        x, y = control.at
        found[control.id] = (x - wide / 2, y - high / 2, x + wide / 2, y + high / 2)
    return found


def runs(drawing: Drawing) -> list[Run]:
    return [(id, a, b) for id, line in routes(drawing).items() for a, b in pairwise(line) if a != b]


def crossings(drawing: Drawing) -> Iterator[tuple[Run, Run]]:
    """Level and upright runs of two pipes that meet, where they do not meet in a part of both."""
    parts = {id: {end.part for end in pipe.joints} for id, pipe in drawing.pipes.items()}
    for one, other in combinations(runs(drawing), 2):
        level, upright = (one, other) if one[1].y == one[2].y else (other, one)
        if level[0] == upright[0] or parts[level[0]] & parts[upright[0]]:
            continue
        if level[1].y == level[2].y and upright[1].x == upright[2].x:
            (left, right), (top, low) = spread(level[1].x, level[2].x), spread(upright[1].y, upright[2].y)
            if left <= upright[1].x <= right and top <= level[1].y <= low:
                yield level, upright


def spread(a: float, b: float) -> tuple[float, float]:
    return min(a, b), max(a, b)


def test_parts_stand_on_the_squares_and_clear_of_one_another(drawing: Drawing) -> None:
    for part in drawing.components.values():
        assert part.at is not None
        assert part.at.x == int(part.at.x) and part.at.y == int(part.at.y), part.id
    for (one, a), (other, b) in combinations(boxes(drawing).items(), 2):
        apart = max(a[0] - b[2], b[0] - a[2], a[1] - b[3], b[1] - a[3])
        assert apart >= 1, (one, other)


def test_pipes_run_square_and_through_no_part(drawing: Drawing) -> None:
    for pipe, a, b in runs(drawing):
        assert a.x == b.x or a.y == b.y, pipe
        (left, right), (top, low) = spread(a.x, b.x), spread(a.y, b.y)
        ends = {end.part for end in drawing.pipes[pipe].joints}
        for part, box in boxes(drawing).items():
            # A cap's port is in the middle of its box.
            capped = part in ends and drawing.components[part].kind.name == "cap"
            meets = left < box[2] and box[0] < right
            over = top < box[3] and box[1] < low
            assert capped or not (meets and over), (pipe, part)


def test_no_pipe_lies_along_another(drawing: Drawing) -> None:
    for (one, a, b), (other, c, d) in combinations(runs(drawing), 2):
        for along, across in (("x", "y"), ("y", "x")):
            same = {getattr(point, across) for point in (a, b, c, d)}
            if one == other or len(same) != 1:
                continue
            (low, high), (least, most) = (
                spread(getattr(a, along), getattr(b, along)),
                spread(getattr(c, along), getattr(d, along)),
            )
            assert min(high, most) <= max(low, least), (one, other)


def test_crossings_are_few_and_well_clear_of_bends_and_joints(drawing: Drawing) -> None:
    found = list(crossings(drawing))
    assert len(found) <= MOST_CROSSINGS
    for level, upright in found:
        x, y = upright[1].x, level[1].y
        assert min(abs(x - level[1].x), abs(x - level[2].x)) >= 1, (level, upright)
        assert min(abs(y - upright[1].y), abs(y - upright[2].y)) >= 1, (level, upright)


def test_no_label_is_used_twice(drawing: Drawing) -> None:
    labels = Counter(part.label for part in drawing.components.values())
    labels += Counter(control.label for control in drawing.controls.values())
    del labels[""]
    assert not [label for label, count in labels.items() if count > 1]
    for part in drawing.components.values():
        assert part.label or part.kind.name == "tee", part.id

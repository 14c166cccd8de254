"""Marks: what a picture is made of. Places in px, 16 px to a square, y down; colours by role."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from circuitcheck.geometry import turned

SQUARE_PX = 16.0
"""One square of the sheet at 100 %, in px."""

Step = tuple[str, tuple[float, ...]]
"""One step of a path: `M x y`, `L x y`, `C x1 y1 x2 y2 x y` or `Z`, all absolute."""

Path = tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line along a path. `dash` in px, on and off in turn; `cap` flat or round, `join` round or mitre."""

    path: Path
    role: str
    width: float
    dash: tuple[float, ...] = ()
    cap: str = "flat"
    join: str = "round"
    opacity: float = 1.0


@dataclass(frozen=True, slots=True)
class Fill:
    """The inside of a path."""

    path: Path
    role: str
    opacity: float = 1.0


@dataclass(frozen=True, slots=True)
class Hatch:
    """Lines at 45 degrees over the inside of a path, `pitch` px apart."""

    path: Path
    role: str
    pitch: float = 8.0
    width: float = 1.25
    opacity: float = 0.3


@dataclass(frozen=True, slots=True)
class TextMark:
    """One line of plain text. `x`, `y`: where its baseline is anchored (start, middle or end).

    `halo`: px of paper kept clear around the letters.
    """

    text: str
    x: float
    y: float
    role: str
    size: float
    weight: int = 400
    anchor: str = "middle"
    halo: float = 0.0


Mark = Stroke | Fill | Hatch | TextMark


def moved_path(path: Path, dx: float, dy: float) -> Path:
    """The path shifted by so many px."""
    return tuple(
        (letter, tuple(value + (dy if index % 2 else dx) for index, value in enumerate(values)))
        for letter, values in path
    )


def turned_path(path: Path, turn: int, mirrored: bool) -> Path:
    """The path about 0,0 mirrored left to right, then turned clockwise by 0, 90, 180 or 270 degrees."""
    if turn == 0 and not mirrored:
        return path
    steps = []
    for letter, values in path:
        points = (turned((values[i], values[i + 1]), turn, mirrored) for i in range(0, len(values), 2))
        steps.append((letter, tuple(value for point in points for value in point)))
    return tuple(steps)


def moved(marks: Iterable[Mark], dx: float, dy: float) -> tuple[Mark, ...]:
    """The marks shifted by so many px."""
    return tuple(
        replace(mark, x=mark.x + dx, y=mark.y + dy)
        if isinstance(mark, TextMark)
        else replace(mark, path=moved_path(mark.path, dx, dy))
        for mark in marks
    )


def recoloured(marks: Iterable[Mark], roles: dict[str, str]) -> tuple[Mark, ...]:
    """The marks with some roles exchanged for others."""
    return tuple(replace(mark, role=roles.get(mark.role, mark.role)) for mark in marks)


def extent(marks: Iterable[Mark]) -> tuple[float, float, float, float]:
    """The box round the lines and fills, widths of lines included: left, top, right, bottom in px.

    Control points count, so that it errs to the large side; texts do not. All 0 for no marks.
    """
    left = top = float("inf")
    right = low = float("-inf")
    for mark in marks:
        if isinstance(mark, TextMark):
            continue
        half = mark.width / 2 if isinstance(mark, Stroke) else 0.0
        for _, values in mark.path:
            for x, y in zip(values[::2], values[1::2], strict=True):
                left, right = min(left, x - half), max(right, x + half)
                top, low = min(top, y - half), max(low, y + half)
    return (left, top, right, low) if left <= right else (0.0, 0.0, 0.0, 0.0)

"""Drawings to route: all that ship, with a person's corners and without, shaken about, and parts joined at random."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from random import Random

from circuitcheck.drawing.value import Component, Drawing
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.drawing.making import drawing, part, pipe
from tests.drawing.quality import stands_clear

TRIES = 12
REACH = 4
"""How far a part is shaken from where it stood, in squares."""
APART = 2


def shipped() -> Iterator[tuple[str, Drawing]]:
    """Every sample and every arrangement, by name."""
    for folder in ("samples", "arrangements"):
        for path in sorted(data_path(folder).glob("*.wetcircuit")):
            yield path.stem, read(path)


def without_corners(drawn: Drawing) -> Drawing:
    """The same with every pipe left to the program."""
    return replace(drawn, pipes={id: replace(each, via=None) for id, each in drawn.pipes.items()})


def shaken(drawn: Drawing, seed: int) -> Drawing:
    """The same with its parts a few squares from where they stood, clear of one another, all pipes routed."""
    chance, parts = Random(seed), dict(drawn.components)
    for id, each in drawn.components.items():
        if each.at is None:
            continue
        for _ in range(TRIES):
            at = Point(each.at.x + chance.randint(-REACH, REACH), each.at.y + chance.randint(-REACH, REACH))
            moved = replace(each, at=at)
            if stands_clear(moved, parts.values(), APART):
                parts[id] = moved
                break
    return without_corners(replace(drawn, components=parts))


def at_random(seed: int, columns: int = 4, rows: int = 4, pitch: int = 14) -> Drawing:
    """Parts of all kinds in rows with room between them, turned and joined at random."""
    chance = Random(seed)
    names = sorted(name for name, kind in component_kinds().items() if kind.size[0] > 1)
    parts: list[Component] = []
    for column in range(columns):
        for row in range(rows):
            where = (
                column * pitch + chance.randint(0, 3),
                row * pitch + chance.randint(0, 3),
                chance.choice((0, 90, 180, 270)),
            )
            parts.append(part(f"k{column}{row}", chance.choice(names), where))
    ports = [f"{each.id}.{port.name}" for each in parts for port in each.kind.ports]
    chance.shuffle(ports)
    pairs = list(zip(ports[::2], ports[1::2], strict=False))[: columns * rows]
    return drawing(parts, [pipe(f"p{n}", pair) for n, pair in enumerate(pairs)])

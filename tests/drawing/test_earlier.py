"""Pieces of lines that were there before."""

from __future__ import annotations

from circuitcheck.drawing.earlier import piece_of
from circuitcheck.geometry import Point

LINE = (Point(0, 0), Point(4, 0), Point(4, 4))
ROUND = (Point(2, 0), Point(6, 0), Point(6, 4), Point(4, 4), Point(4, -2), Point(2, -2), Point(2, 0))


def test_a_piece_goes_along_the_line_either_way() -> None:
    there = piece_of(LINE, Point(1, 0), Point(4, 3))
    assert there == (Point(1, 0), Point(4, 0), Point(4, 3))
    assert piece_of(LINE, Point(4, 3), Point(1, 0)) == there[::-1]


def test_of_a_line_that_comes_by_a_place_twice_there_is_a_piece_too() -> None:
    # Both ways along it the start is come by first later than the finish.
    for start in ROUND:
        for finish in ROUND:
            piece = piece_of(ROUND, start, finish)
            assert piece is None or (piece[0], piece[-1]) == (start, finish)

"""Asks one worked figure about a drawing, and tells its results by their names."""

from __future__ import annotations

from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.catalogue import figures, worked
from circuitcheck.figures.figure import Figure
from circuitcheck.figures.plant import Plant


def told(name: str, drawing: Drawing) -> tuple[Figure, ...]:
    """The figure for each of its subjects. A figure that crashed fails the test."""
    found = worked(figures()[name], Plant(drawing))
    assert not any(each.crashed for each in found), found
    return found


def one(name: str, drawing: Drawing) -> Figure:
    """The figure's only subject."""
    (figure,) = told(name, drawing)
    return figure


def values(figure: Figure) -> dict[str, float | str]:
    """Results by their names; none where it was refused."""
    return {result.name: result.value for result in figure.results}


def number(figure: Figure, name: str) -> float:
    """One result that is a number."""
    value = values(figure)[name]
    assert isinstance(value, float | int)
    return float(value)

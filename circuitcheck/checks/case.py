"""One drawing as the checks see it."""

from __future__ import annotations

from circuitcheck.figures.plant import Plant


class Case(Plant):
    """A drawing under judgement: its circuit, its data, its figures and its rule book."""

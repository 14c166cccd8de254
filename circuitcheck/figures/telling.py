"""How a figure is told for each of its subjects: what is the same for all of them, said once."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.told import a_word, strung

MISSING = a_word("Numbers are missing.")


@dataclass(frozen=True, slots=True)
class Telling:
    """A figure's name, title, formula, source and limits."""

    name: str
    title: str
    formula: str
    source: str
    limits: str

    def worked(
        self,
        told: Gathering,
        subject: Iterable[str],
        results: Iterable[Result],
        *,
        more_limits: str = "",
        moves: Iterable[Moves] = (),
    ) -> Figure:
        """The figure with its results. `more_limits` goes on from the limits that all subjects have."""
        limits = strung((a_word(self.limits), more_limits), " ") if more_limits else self.limits
        return Figure(
            self.name,
            self.title,
            tuple(subject),
            tuple(results),
            self.formula,
            told.inputs,
            self.source,
            limits,
            moves=tuple(moves),
        )

    def lacking(self, told: Gathering, subject: Iterable[str]) -> Figure:
        """The figure refused for what was asked for and is not known."""
        return self._refused(told, subject, MISSING, told.missing)

    def refused(self, told: Gathering, subject: Iterable[str], why: str) -> Figure:
        """The figure refused because the numbers that there are do not serve."""
        return self._refused(told, subject, why, ())

    def _refused(self, told: Gathering, subject: Iterable[str], why: str, missing: tuple[str, ...]) -> Figure:
        return Figure(
            self.name,
            self.title,
            tuple(subject),
            (),
            self.formula,
            told.inputs,
            self.source,
            self.limits,
            refused=why,
            missing=missing,
        )

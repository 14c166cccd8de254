"""What a check says: a finding, its grade, and the valve positions that prove it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum


class Grade(StrEnum):
    """How much a finding weighs, heaviest first."""

    DANGER = "danger"
    FAULT = "fault"
    ADVICE = "advice"
    UNANSWERED = "unanswered"

    @property
    def rank(self) -> int:
        """0 for danger, 3 for unanswered: the order in which findings are listed."""
        return _RANK[self]


_RANK = {grade: rank for rank, grade in enumerate(Grade)}


@dataclass(frozen=True, slots=True)
class Says:
    """One sentence of a finding: an English template and the values put into it.

    The template is the translation key, so that a text can be shown in another language
    without the check knowing. Values are plain texts and numbers, never markup.
    """

    template: str
    values: Mapping[str, str | float] = field(default_factory=dict)

    def __str__(self) -> str:
        return self.template.format_map(self.values)


@dataclass(frozen=True, slots=True)
class Witness:
    """The valve positions that prove a finding.

    `shut` is a smallest set of component ids whose closing proves it (`id:a` or `id:b` for the
    leg of a three-port valve); `alone` is every single one that proves it by itself;
    `parts` are the component ids in `shut`, without the legs.
    """

    shut: tuple[str, ...] = ()
    alone: tuple[str, ...] = ()
    parts: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing a check found, in ids of the drawing; never widgets or nodes of a graph.

    `components` begins with the thing judged, then the witness, then what is cut off.
    `cut_off_*` is the part of the circuit that the witness separates, for the drawing of it.
    """

    check: str
    grade: Grade
    says: Says
    components: tuple[str, ...] = ()
    pipes: tuple[str, ...] = ()
    witness: Witness | None = None
    numbers: Mapping[str, float] = field(default_factory=dict)
    missing: tuple[str, ...] = ()
    would_be: Grade | None = None
    cut_off_components: tuple[str, ...] = ()
    cut_off_pipes: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if (self.grade is Grade.UNANSWERED) != (self.would_be is not None):
            raise ValueError(f"{self.check}: an unanswered finding, and only that, says what it would be")

    @property
    def message(self) -> str:
        """The finding's sentence in English."""
        return str(self.says)

    @property
    def order(self) -> tuple[int, str, str, tuple[str, ...], tuple[str, ...]]:
        """Sort key: grade, check, first component, then the rest so that two runs agree."""
        first = self.components[0] if self.components else ""
        return (self.grade.rank, self.check, first, self.components, self.pipes)

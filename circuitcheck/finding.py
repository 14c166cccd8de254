"""What a check says: a finding, its grade, and the valve positions that prove it."""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from itertools import chain, islice
from typing import SupportsIndex, overload

from circuitcheck.told import Told, worded_of

FAILED = "analysis"
"""What stands in place of a check's name in the finding that says the analysis itself failed."""


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


Piece = tuple[Sequence[str], tuple[str, ...]]
"""What some names begin with, and all the endings that each of these has."""


class Names(Sequence[str]):
    """A tuple of names that is made when it is read: `p1.size_mm`, `p1.length_m`, `p2.size_mm`, ...

    Of a large plant tens of thousands of fields are not known, and of most findings only the first few
    are ever told. It compares, hashes, reads and pickles as the tuple; `is_sorted`: from the first of the
    alphabet on. What it is made of must not change.
    """

    __slots__ = ("_among", "_count", "_made", "is_sorted", "pieces")

    def __init__(self, *pieces: Piece, is_sorted: bool = False) -> None:
        self.pieces = pieces
        self.is_sorted = is_sorted
        self._count = sum(len(begin) * len(endings) for begin, endings in pieces)
        self._made: tuple[str, ...] | None = None
        self._among: dict[int, frozenset[str]] = {}

    def _each(self) -> Iterator[str]:
        for begin, endings in self.pieces:
            if len(endings) == 1:
                (ending,) = endings
                yield from [name + ending for name in begin] if ending else begin
            else:
                for name in begin:
                    for ending in endings:
                        yield name + ending

    @property
    def whole(self) -> tuple[str, ...]:
        """The tuple."""
        if self._made is None:
            self._made = tuple(sorted(self._each()) if self.is_sorted else self._each())
        return self._made

    def _first(self, count: int) -> tuple[str, ...]:
        few = ((begin[:count], endings) for begin, endings in self.pieces)
        return tuple(islice(Names(*few)._each(), count))

    def __len__(self) -> int:
        return self._count

    @overload
    def __getitem__(self, place: SupportsIndex) -> str: ...

    @overload
    def __getitem__(self, place: slice) -> tuple[str, ...]: ...

    def __getitem__(self, place: SupportsIndex | slice) -> str | tuple[str, ...]:
        if self._made is None and not self.is_sorted and isinstance(place, slice):
            start, stop, step = place.indices(self._count)
            if (start, step) == (0, 1):
                return self._first(stop)
        return self.whole[place]

    def __iter__(self) -> Iterator[str]:
        return iter(self.whole)

    def __contains__(self, name: object) -> bool:
        if not isinstance(name, str):
            return False
        return any(
            name.endswith(ending) and name[: len(name) - len(ending)] in self._begin(place)
            for place, (_, endings) in enumerate(self.pieces)
            for ending in endings
        )

    def _begin(self, place: int) -> Container[str]:
        """What the names of a piece begin with, for looking one up: who asks for one asks for more."""
        begin = self.pieces[place][0]
        if len(begin) < MANY:
            return begin
        if place not in self._among:
            self._among[place] = frozenset(begin)
        return self._among[place]

    def __eq__(self, other: object) -> bool:
        if isinstance(other, Names):
            alike = self.is_sorted == other.is_sorted and self.pieces == other.pieces
            return alike or (self._count == other._count and self.whole == other.whole)
        return isinstance(other, tuple) and self._count == len(other) and self.whole == other

    def __hash__(self) -> int:
        return hash(self.whole)

    def __add__(self, other: NameTuple) -> NameTuple:
        return joined(self, other)

    def __radd__(self, other: tuple[str, ...]) -> NameTuple:
        return joined(other, self)

    def __repr__(self) -> str:
        return repr(self.whole)

    def __reduce__(self) -> tuple[type[tuple[str, ...]], tuple[tuple[str, ...]]]:
        return tuple, (self.whole,)


NameTuple = tuple[str, ...] | Names


MANY = 500
"""So many names are made only when they are read; fewer are a plain tuple, as nothing is won by waiting."""


def names(*pieces: Piece) -> NameTuple:
    """The names that these pieces tell, one after another."""
    found = Names(*pieces)
    return found if len(found) >= MANY else found.whole


def sorted_names(*pieces: Piece) -> NameTuple:
    """The names that these pieces tell, from the first of the alphabet on."""
    found = Names(*pieces, is_sorted=True)
    return found if len(found) >= MANY else found.whole


def joined(*lists: NameTuple) -> NameTuple:
    """These names one after another."""
    if not any(isinstance(each, Names) for each in lists):
        return tuple(chain.from_iterable(lists))
    pieces: list[Piece] = []
    for each in lists:
        if isinstance(each, Names) and not each.is_sorted:
            pieces += each.pieces
        else:
            pieces.append((tuple(each), ("",)))
    return names(*pieces)


@dataclass(frozen=True, slots=True)
class Says:
    """One sentence of a finding: an English template and the values put into it.

    The template is the translation key, so that a text can be shown in another language
    without the check knowing. Values are plain texts and numbers, never markup.
    """

    template: str
    values: Mapping[str, str | float] = field(default_factory=dict)

    def __str__(self) -> str:
        return str(self.told)

    @property
    def told(self) -> Told:
        """The sentence in English, which can be told in another language."""
        return worded_of(self.template, self.values)


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
    missing: NameTuple = ()
    would_be: Grade | None = None
    cut_off_components: tuple[str, ...] = ()
    cut_off_pipes: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        if (self.grade is Grade.UNANSWERED) != (self.would_be is not None):
            raise ValueError(f"{self.check}: an unanswered finding, and only that, says what it would be")

    @property
    def message(self) -> str:
        """The finding's sentence in English."""
        return self.says.told

    @property
    def order(self) -> tuple[int, str, str, tuple[str, ...], tuple[str, ...]]:
        """Sort key: grade, check, first component, then the rest so that two runs agree."""
        first = self.components[0] if self.components else ""
        return (self.grade.rank, self.check, first, self.components, self.pipes)

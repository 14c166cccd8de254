"""How findings name parts in a sentence."""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Sequence
from operator import is_not, itemgetter

from circuitcheck.checks.case import Case
from circuitcheck.drawing.value import Component, Drawing, english_names
from circuitcheck.finding import MANY, Names, NameTuple, joined
from circuitcheck.told import Told, in_tongue, listed, spoken, strung, told_number, upper, worded

__all__ = [
    "each_once",
    "figure",
    "listed",
    "named",
    "named_again",
    "part_of",
    "shortened",
    "upper",
    "valve",
    "valves",
]


def named(drawing: Drawing, ids: Iterable[str]) -> str:
    """These parts and pipes by name, as a list in a sentence."""
    return listed(drawing.names(tuple(ids)))


def named_again(case: Case, parts: tuple[str, ...]) -> str:
    """The same, of thousands of parts that stay alike while their labels are edited: what was said last is
    kept with the circuit, and only what is another part object by now is called anew."""
    components = case.drawing.components
    if len(parts) < MANY:
        return named(case.drawing, parts)
    kept: dict[tuple[str, ...], tuple[list[Component], list[str]]] = case.circuit.keep(__name__, dict)
    now = itemgetter(*parts)(components)
    if parts not in kept:
        kept[parts] = list(now), english_names(now)
    were, texts = kept[parts]
    for place in itertools.compress(range(len(now)), map(is_not, were, now)):
        were[place], (texts[place],) = now[place], english_names((now[place],))
    return Told(listed(texts), lambda tongue: str(in_tongue(listed(part.name for part in now), tongue)))


def valve(drawing: Drawing, entry: str) -> str:
    """A witness entry by name: a part, or the leg of a three-port valve."""
    if entry in drawing.components:
        return drawing.name(entry)
    part, _, leg = entry.rpartition(":")
    return worded("{valve} (leg {leg})", valve=drawing.name(part), leg=spoken(leg))


def valves(drawing: Drawing, entries: Iterable[str]) -> str:
    """Witness entries by name, as a list in a sentence."""
    return listed(valve(drawing, entry) for entry in entries)


def part_of(drawing: Drawing, entry: str) -> str:
    """The part that a witness entry stands for."""
    return entry if entry in drawing.components else entry.rpartition(":")[0]


SHOWN_AT_MOST = 6
"""Fields named in one sentence; `Finding.missing` has them all."""


def shortened(fields: Sequence[str]) -> str:
    """Missing fields in a sentence: the first few, and how many more there are."""
    more = len(fields) - SHOWN_AT_MOST
    shown = strung(fields[:SHOWN_AT_MOST])
    return worded("{these} and {more} more", these=shown, more=more) if more > 0 else shown


def each_once(few: Iterable[str], *lists: NameTuple) -> NameTuple:
    """These fields and those of the lists, each named once. No list names a field twice by itself: a single
    long one is looked through for those few only."""
    first = dict.fromkeys(few)
    if len(lists) == 1:
        (long,) = lists
        if isinstance(long, Names):
            if not any(name in long for name in first):
                return joined(tuple(first), long)
        elif first.keys().isdisjoint(long):
            return (*first, *long)
    return tuple(dict.fromkeys((*first, *itertools.chain.from_iterable(lists))))


def figure(value: float) -> str:
    """A number in a sentence: at most four significant figures, no trailing zeros."""
    return told_number(f"{value:.4g}")

"""Exercises by seed: a sound drawing, made a little different each time, with faults put in.

Every exercise is proved as it is made: the checks find each fault that was put in, and say nothing else.
"""

from __future__ import annotations

import random
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from itertools import islice

from circuitcheck.analysis import analyse
from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding
from circuitcheck.lessons.catalogue import faults, planted
from circuitcheck.lessons.fault import Planted, exactly
from circuitcheck.lessons.site import Site
from circuitcheck.lessons.varying import varied

MOST_FAULTS = 5
PLACES_TRIED = 3
"""Places at which a kind of fault is tried before another kind is."""


class NoExerciseError(LookupError):
    """No arrangement takes so many faults of these kinds."""


@dataclass(frozen=True, slots=True)
class Exercise:
    """A drawing with faults in it: what was put in, in that order, and what the checks say of it.

    The same seed, kinds, count and arrangement make the same exercise in every process, as long as
    the kinds of fault and the arrangements are the same.
    """

    seed: int
    arrangement: str
    drawing: Drawing
    planted: tuple[Planted, ...]
    findings: tuple[Finding, ...]


def exercise(
    seed: int, kinds: Collection[str] | None = None, count: int = 1, arrangement: str | None = None
) -> Exercise:
    """An exercise with `count` faults, 1 to 5, each of another of these kinds (names of checks; None: all).

    Raises NoExerciseError where no arrangement, or not this one, takes so many; ValueError for a count
    out of range, and KeyError for a kind or an arrangement there is not.
    """
    if not 1 <= count <= MOST_FAULTS:
        raise ValueError(f"between 1 and {MOST_FAULTS} faults, not {count}")
    chosen = sorted(faults() if kinds is None else {faults()[kind].check for kind in kinds})
    places = tuple(arrangements()) if arrangement is None else (arrangements()[arrangement].name,)
    chance = random.Random(f"{seed}")
    # The first fault's kind comes first, so that no kind is rarer for being at home in few arrangements.
    for first in _mixed(chance, chosen):
        for place in _mixed(chance, places):
            made = _on(seed, place, first, [kind for kind in chosen if kind != first], count, chance)
            if made is not None:
                return made
    raise NoExerciseError


def _on(
    seed: int, place: str, first: str, others: Sequence[str], count: int, chance: random.Random
) -> Exercise | None:
    """The exercise on one arrangement that begins with one kind; None where it takes too few."""
    plain = arrangements()[place].drawing
    if next(planted(first, Site(plain, chance)), None) is None:
        return None
    # What was varied may be in the way of a fault that has but one place.
    for drawing in (varied(plain, chance), plain):
        step = _step(drawing, first, (), (), chance)
        if step is not None:
            break
    if step is None:
        return None
    put, found = [step[0]], step[1]
    for kind in () if count == 1 else _mixed(chance, others):
        step = _step(put[-1].drawing, kind, put, found, chance)
        if step is not None:
            put.append(step[0])
            found = step[1]
        if len(put) == count:
            break
    return Exercise(seed, place, put[-1].drawing, tuple(put), found) if len(put) == count else None


def _step(
    drawing: Drawing, kind: str, put: Sequence[Planted], before: tuple[Finding, ...], chance: random.Random
) -> tuple[Planted, tuple[Finding, ...]] | None:
    """One more fault, at a place where all that are in are found for what they are, and nothing else is;
    what is said anew is said of this one."""
    said = {finding.check for finding in before}
    for each in islice(planted(kind, Site(drawing, chance)), PLACES_TRIED):
        if any(each.check in other.brings or other.check in each.brings for other in put):
            continue
        findings = analyse(each.drawing).findings
        new = {finding.check for finding in findings} - said
        if new <= each.checks and exactly([*put, each], findings):
            return each, findings
    return None


def _mixed(chance: random.Random, things: Sequence[str]) -> list[str]:
    keyed = [(chance.random(), thing) for thing in things]
    return [thing for _, thing in sorted(keyed)]

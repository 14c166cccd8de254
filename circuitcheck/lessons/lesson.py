"""A lesson for a check: its text, a small drawing with its fault to operate, what comes of it, and the remedy."""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import islice

import circuitcheck.checks.check as texts
from circuitcheck.analysis import Analysis, analyse
from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.checks.catalogue import checks
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Says
from circuitcheck.lessons.catalogue import faults, planted
from circuitcheck.lessons.completing import completed
from circuitcheck.lessons.consequence import Scene, scene
from circuitcheck.lessons.fault import HEAVY, Planted, exactly
from circuitcheck.lessons.site import Site

PLACES_TRIED = 12
STILL = ("discharge", "drawing_itself", "open_vented", "store", "supply")
"""Topics of which no flow, pressure or heat of the heating water can tell: the first position is looked at."""


class NoLessonError(ValueError):
    """No arrangement takes the fault of that check."""


@dataclass(frozen=True, slots=True)
class Remedy:
    """What puts the fault right, in one sentence, and the drawing after it."""

    says: Says
    drawing: Drawing


@dataclass(frozen=True, slots=True)
class Lesson:
    """One check's lesson on one drawing.

    `text` is the check's own. `drawing` has the fault, `finding` is what the check says of it, `happens` how
    such a slip happens on site. `scene` is how everything must stand for the consequence to be seen, with
    what is worked out then; in the remedied drawing the same can be tried.
    """

    check: str
    topic: str
    text: texts.Lesson
    happens: str
    arrangement: str
    planted: Planted
    finding: Finding
    remedy: Remedy
    scene: Scene

    @property
    def drawing(self) -> Drawing:
        """The drawing with the fault."""
        return self.planted.drawing


def subjects(*, live: bool) -> tuple[str, ...]:
    """The checks that have a lesson with a drawing; or those that have only their text. Sorted by topic."""
    known = sorted(checks().values(), key=lambda check: (check.topic, check.name))
    return tuple(check.name for check in known if (check.name in faults()) is live)


def lesson(
    check: str,
    is_wanted: Callable[[], bool] = lambda: True,
    begun: Callable[[Planted, Finding], None] = lambda put, finding: None,
    remedied: Callable[[Remedy], None] = lambda remedy: None,
) -> Lesson:
    """The lesson of a check that has a maker of its fault: the same at every call and on every machine.

    What comes of it takes a second, or several, so whoever shows it keeps it; `begun` is told the drawing with
    the fault and `remedied` the remedy as soon as each is known, which is long before. Raises KeyError for a
    check without one, NoLessonError where no arrangement takes its fault, or where it is no longer wanted
    before it is made.
    """
    fault = faults()[check]
    for name, put, analysis, finding in _made(check):
        if not is_wanted():
            break
        begun(put, finding)
        remedy = _remedy(analysis, finding, arrangements()[name].drawing)
        remedied(remedy)
        in_time = fault.topic not in STILL
        seen = scene(put.drawing, remedy.drawing, finding, is_wanted, in_time=in_time)
        if not is_wanted():
            break
        return Lesson(
            check, fault.topic, checks()[check].lesson, fault.happens, name, put, finding, remedy, seen
        )
    raise NoLessonError(check)


def _made(check: str) -> Iterator[tuple[str, Planted, Analysis, Finding]]:
    """The fault in one arrangement after another, the smallest first, where it is found for what it is."""
    by_size = sorted(arrangements().values(), key=lambda each: (len(each.drawing.components), each.name))
    for arrangement in by_size:
        site = Site(arrangement.drawing, random.Random(f"lesson {check}"))
        for put in islice(planted(check, site), PLACES_TRIED):
            analysis = analyse(put.drawing)
            if exactly([put], analysis.findings):
                own = (each for each in analysis.findings if each.check == check and each.grade in HEAVY)
                yield arrangement.name, put, analysis, next(each for each in own if put.is_told_by(each))


def _remedy(analysis: Analysis, finding: Finding, sound: Drawing) -> Remedy:
    """The first cure after which the check is silent and nothing is dangerous or faulty; where none does
    all of that, the drawing as it was before the slip."""
    for cure in cures(analysis, finding):
        for left in (completed(cure.drawing, analysis.drawing), analyse(cure.drawing)):
            if not any(each.grade in HEAVY or each.check == finding.check for each in left.findings):
                return Remedy(cure.says, left.drawing)
    return Remedy(Says("Build it as it was before the slip."), sound)

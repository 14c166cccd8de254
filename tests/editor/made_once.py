"""Lessons and courses made once in a run, for the tests of what shows them: each takes seconds, and is always the same.

What is made first is made by the program, in its window's own thread; how it is made is for `tests/lessons/` and
`tests/operating/`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping

from circuitcheck.finding import Finding
from circuitcheck.lessons import lesson as lessons
from circuitcheck.lessons.fault import Planted
from circuitcheck.operating import course as courses
from circuitcheck.operating.positions import Positions
from circuitcheck.operating.running import Model
from circuitcheck.operating.state import State
from circuitcheck.report.flows import PipeFlow
from circuitcheck.storage.writing import dump

MAKE, CARRY_ON = lessons.lesson, courses.course
_LESSONS: dict[str, lessons.Lesson] = {}
_COURSES: dict[tuple[bytes, Positions], courses.Course] = {}


def lesson(
    check: str,
    is_wanted: Callable[[], bool] = lambda: True,
    begun: Callable[[Planted, Finding], None] = lambda put, finding: None,
    remedied: Callable[[lessons.Remedy], None] = lambda remedy: None,
) -> lessons.Lesson:
    """The lesson of a check; whoever wants it is told of its drawing and its remedy as when it is made."""
    if check not in _LESSONS:
        _LESSONS[check] = MAKE(check, is_wanted, begun, remedied)
        return _LESSONS[check]
    known = _LESSONS[check]
    begun(known.planted, known.finding)
    remedied(known.remedy)
    return known


def course(
    model: Model,
    positions: Positions,
    flows: Mapping[str, PipeFlow],
    state: State | None = None,
    long_s: float = courses.LONG_S,
    is_wanted: Callable[[], bool] = lambda: True,
) -> courses.Course:
    """The course of a drawing that stands so, with the flows that belong to it; one that goes on from a state is made
    every time."""
    if state is not None or long_s != courses.LONG_S:
        return CARRY_ON(model, positions, flows, state, long_s, is_wanted)
    key = (dump(model.plant.drawing), positions)
    if key not in _COURSES:
        made = CARRY_ON(model, positions, flows, is_wanted=is_wanted)
        if not is_wanted():
            return made
        _COURSES[key] = made
    return _COURSES[key]

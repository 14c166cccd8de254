"""What is worked out beside the window for a drawing at work: its positions solved, one after the other."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.drawing.value import Drawing

if TYPE_CHECKING:
    from circuitcheck.operating.course import Course
    from circuitcheck.operating.positions import Positions
    from circuitcheck.operating.running import Model
    from circuitcheck.operating.standing import Operated, Standing
    from circuitcheck.operating.state import State


@dataclass(frozen=True, eq=False, slots=True)
class Question:
    """A drawing and how everything in it is to stand: `positions`, else the situation of that name (empty:
    the first), with these passages shut as a proof has them."""

    drawing: Drawing
    positions: Positions | None = None
    situation: str = ""
    shut: tuple[str, ...] = ()


@dataclass(frozen=True, eq=False, slots=True)
class Answer:
    """How everything stands, solved; the drawing's situations; and what can be asked of it further."""

    operated: Operated
    situations: tuple[Positions, ...]
    standing: Standing


class Worker:
    """Answers questions in a thread of its own; the drawing last asked about is kept."""

    def __init__(self) -> None:
        self._operated: Operated | None = None

    def __call__(self, asked: Question) -> Answer:
        """The answer to one question."""
        # Here and not at the top: the window shows before the solver is read.
        from circuitcheck.operating.standing import Operated

        if self._operated is None or self._operated.drawing is not asked.drawing:
            self._operated = Operated(asked.drawing)
        operated = self._operated
        positions = asked.positions or first_positions(operated, asked.situation, asked.shut)
        return Answer(operated, operated.situations, operated.standing(positions))


@dataclass(frozen=True, eq=False, slots=True)
class CourseQuestion:
    """A standing, and the state that time goes on from; None: from the beginning. `goes_on`: the same
    standing a little further, its course to be joined to the one before."""

    standing: Standing
    state: State | None = None
    goes_on: bool = False


@dataclass(frozen=True, eq=False, slots=True)
class CourseAnswer:
    """The course, and the model that it is of; None where numbers are missing, it is refused, or what flows
    is not known: water whose flow cannot be told does not stand still."""

    model: Model
    course: Course | None


class CourseWorker:
    """Works courses out in a thread of its own; the drawing last asked about is kept. `wanted`: the question
    that is still to be answered; one that is not is given up."""

    def __init__(self) -> None:
        self.wanted: CourseQuestion | None = None
        self._model: Model | None = None

    def __call__(self, asked: CourseQuestion) -> CourseAnswer:
        """The answer to one question."""
        from circuitcheck.figures.plant import Plant
        from circuitcheck.operating.course import course
        from circuitcheck.operating.running import Model

        standing = asked.standing
        if self._model is None or self._model.plant.drawing is not standing.drawing:
            self._model = Model(Plant(standing.drawing))
        model = self._model
        if not model.can_run or not standing.is_known:
            return CourseAnswer(model, None)
        positions, pipes = standing.positions, standing.flows.pipes
        found = course(model, positions, pipes, asked.state, is_wanted=lambda: self.wanted is asked)
        return CourseAnswer(model, found)


def first_positions(operated: Operated, situation: str, shut: Iterable[str]) -> Positions:
    """The situation of that name with these passages shut; without a name, as a proof has them."""
    from circuitcheck.operating.positions import named, proving, shut_by_hand

    labels = tuple(shut)
    if not situation and labels:
        return proving(operated.situations, operated.plant.circuit, labels)
    base = named(operated.situations, situation) or operated.situations[0]
    return shut_by_hand(operated.plant.circuit, base, labels)

"""All that has been seen in time of a drawing at work: one course after another, each cut where the next began."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from circuitcheck.operating.course import Course, Event
from circuitcheck.operating.running import Row

if TYPE_CHECKING:
    from circuitcheck.operating.state import State


@dataclass(frozen=True, slots=True)
class Track:
    """Courses in order of time; each holds until the next begins. Never changed: `add` and `cut` make another."""

    courses: tuple[Course, ...] = ()

    @property
    def is_empty(self) -> bool:
        """Whether nothing is known yet."""
        return not self.courses

    @property
    def ends_s(self) -> float:
        """How far it is worked out."""
        return self.courses[-1].ends_s if self.courses else 0.0

    @property
    def sources(self) -> tuple[str, ...]:
        """The heat sources that the rows tell of."""
        return self.courses[-1].sources if self.courses else ()

    @property
    def stores(self) -> tuple[str, ...]:
        """The stores that the rows tell of."""
        return self.courses[-1].stores if self.courses else ()

    @property
    def is_over(self) -> bool:
        """Whether it ends because nothing can be told any further."""
        return bool(self.courses) and self.courses[-1].over is not None

    def add(self, course: Course) -> Track:
        """With another course from where it begins on."""
        return Track((*self._before(course.begins_s), course))

    def cut(self, seconds: float) -> Track:
        """What lies before that time."""
        return Track(tuple(self._before(seconds)))

    def _before(self, seconds: float) -> Iterator[Course]:
        for each in self.courses:
            if each.begins_s < seconds - 1e-9:
                yield replace(
                    each,
                    rows=tuple(row for row in each.rows if row.seconds <= seconds + 1e-9),
                    states=tuple(state for state in each.states if state.seconds <= seconds + 1e-9),
                    events=tuple(event for event in each.events if event.seconds <= seconds + 1e-9),
                    over=None,
                )

    @property
    def rows(self) -> tuple[Row, ...]:
        """All rows."""
        return tuple(row for each in self.courses for row in each.rows)

    @property
    def events(self) -> tuple[Event, ...]:
        """All that happens."""
        return tuple(event for each in self.courses for event in each.events)

    def row_at(self, seconds: float) -> Row | None:
        """The last row no later than that."""
        course = self._at(seconds)
        return None if course is None else course.row_at(seconds)

    def state_at(self, seconds: float) -> State | None:
        """The last state no later than that, to go on from."""
        course = self._at(seconds)
        return None if course is None else course.state_at(seconds)

    def event_at(self, seconds: float) -> Event | None:
        """The last thing that has happened by then."""
        return next((each for each in reversed(self.events) if each.seconds <= seconds + 1e-9), None)

    def _at(self, seconds: float) -> Course | None:
        found = None
        for each in self.courses:
            if each.begins_s <= seconds + 1e-9 or found is None:
                found = each
        return found

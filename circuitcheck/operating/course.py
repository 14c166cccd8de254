"""The course of pressure and temperature from one standing on: rows in time, what happens, and how to go on."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

from circuitcheck.operating.positions import Positions
from circuitcheck.operating.running import Model, Row, Run
from circuitcheck.report.flows import PipeFlow

if TYPE_CHECKING:
    from circuitcheck.operating.state import State

LONG_S = 1800.0
"""How far a course is worked out at once."""
EVERY_S, EVERY_BAR = 5.0, 0.1
"""A row so often, and whenever the pressure has moved so far."""
STIFF_S, STIFF_BAR = 0.1, 0.5
"""The same where nothing gives way: each degree is worth several bar."""
MOST_KEPT = 400_000
"""Cells times states that are kept to go on from."""


class Happens(Enum):
    """What can happen in a course."""

    LIFTS = "the safety valve lifts"
    TRIPS = "the overheat cut-out trips"
    STOPS = "the pump stops: its run-on is over"
    WARM = "the store is as warm as its thermostat is set"
    OVER = "the pressure passes what the heat source is made for"
    EMPTY = "the pressure is gone: air can be drawn in"
    TOO_HOT = "hotter than the formulas reach: it is about to boil"
    BURSTS = "the pressure passes 100 bar: something has burst long before"


@dataclass(frozen=True, slots=True)
class Event:
    """Something that happens, when, and the part that it happens to."""

    seconds: float
    what: Happens
    part: str


@dataclass(frozen=True, slots=True)
class Course:
    """Rows in order of time, what happens, and states to go on from: each with its seconds.

    `over` says why it ends early, where it does. `sources` and `stores` name what the rows tell of.
    """

    rows: tuple[Row, ...]
    events: tuple[Event, ...]
    states: tuple[State, ...]
    sources: tuple[str, ...]
    stores: tuple[str, ...]
    over: Happens | None = None

    @property
    def begins_s(self) -> float:
        """Its first moment."""
        return self.rows[0].seconds

    @property
    def ends_s(self) -> float:
        """Its last moment."""
        return self.rows[-1].seconds

    def row_at(self, seconds: float) -> Row:
        """The last row no later than that."""
        place = bisect_right(self.rows, seconds + 1e-9, key=lambda row: row.seconds) - 1
        return self.rows[max(0, place)]

    def state_at(self, seconds: float) -> State:
        """The last state no later than that."""
        place = bisect_right(self.states, seconds + 1e-9, key=lambda state: state.seconds) - 1
        return self.states[max(0, place)]


def course(
    model: Model,
    positions: Positions,
    flows: Mapping[str, PipeFlow],
    state: State | None = None,
    long_s: float = LONG_S,
    is_wanted: Callable[[], bool] = lambda: True,
) -> Course:
    """From a state on (None: cold where heat is called, else as hot as it then is), with the water flowing so.

    Needs a model that can run. It ends where it stands as soon as it is no longer wanted.
    """
    begun = state if state is not None else model.cold() if positions.firing else model.hot(positions)
    run = Run(model, positions, flows, begun)
    every_state = max(1, round(len(model.cells.cells) * long_s / EVERY_S / MOST_KEPT))
    rows, states, events = [run.row()], [run.state()], list[Event]()
    end = begun.seconds + long_s
    while rows[-1].seconds < end - 1e-9 and not run.why_over and is_wanted():
        run.carry_on(min(_ahead(run, rows), end - rows[-1].seconds))
        rows.append(run.row())
        events += _events(model, rows[-2], rows[-1])
        if len(rows) % every_state == 0 or run.why_over:
            states.append(run.state())
    over = {"hot": Happens.TOO_HOT, "bar": Happens.BURSTS}.get(run.why_over)
    if over is not None:
        part = model.heat.sources[0].id if model.heat.sources else ""
        events.append(Event(rows[-1].seconds, over, part))
    return Course(
        tuple(rows),
        tuple(events),
        tuple(states),
        tuple(each.id for each in model.heat.sources),
        tuple(each.id for each in model.heat.coils),
        over,
    )


def _ahead(run: Run, rows: list[Row]) -> float:
    """How long until the next row: less while the pressure moves fast."""
    least, each_bar = (STIFF_S, STIFF_BAR) if run.is_stiff else (1.0, EVERY_BAR)
    if len(rows) < 2:
        return least
    before, now = rows[-2], rows[-1]
    took = now.seconds - before.seconds
    moved = max((abs(a - b) for a, b in zip(now.bar, before.bar, strict=True)), default=0.0)
    if moved <= 0:
        return EVERY_S
    return min(EVERY_S, max(least, took * each_bar / moved))


def _events(model: Model, before: Row, now: Row) -> Iterator[Event]:
    """What has happened between two rows."""
    for part in sorted(now.lifted - before.lifted):
        yield Event(now.seconds, Happens.LIFTS, part)
    for part in sorted(now.tripped - before.tripped):
        yield Event(now.seconds, Happens.TRIPS, part)
    if before.is_driven and not now.is_driven:
        yield Event(now.seconds, Happens.STOPS, "")
    for coil, was, celsius in zip(model.heat.coils, before.store_c, now.store_c, strict=True):
        if was < coil.thermostat_c <= celsius:
            yield Event(now.seconds, Happens.WARM, coil.id)
    for source, was, bar in zip(model.heat.sources, before.bar, now.bar, strict=True):
        if was <= source.most_bar + 1e-9 < bar - 1e-6 and source.most_bar:
            yield Event(now.seconds, Happens.OVER, source.id)
        if bar < 0 <= was:
            yield Event(now.seconds, Happens.EMPTY, source.id)

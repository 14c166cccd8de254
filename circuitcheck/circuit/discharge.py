"""Where each relief and safety valve discharges: from its outlet, part by part, to the end."""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.joining import Circuit, Placed
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role, Way

SEARCH_BOUND = 20_000

NOT_AGAINST_THE_ARROW = frozenset({Way.ONE_WAY, Way.SPRING, Way.REDUCING})


@dataclass(frozen=True, slots=True)
class Step:
    """One part a discharge goes through: in by one port, out by another (empty at the end)."""

    part: str
    came_by: str
    left_by: str


@dataclass(frozen=True, slots=True)
class Run:
    """One way from a valve's outlet to a discharge end.

    `pipes[i]` leads to `steps[i]`; the last step is the discharge end. `tundish` is the place in
    `steps` of the first tundish, or None.
    """

    pipes: tuple[str, ...]
    steps: tuple[Step, ...]
    tundish: int | None

    @property
    def end(self) -> str:
        """The discharge end's id."""
        return self.steps[-1].part

    @property
    def before_tundish(self) -> tuple[str, ...]:
        """D1: the pipes from the valve to the tundish; all of them where there is none."""
        return self.pipes if self.tundish is None else self.pipes[: self.tundish + 1]

    @property
    def after_tundish(self) -> tuple[str, ...]:
        """D2: the pipes from the tundish to the end; none where there is no tundish."""
        return () if self.tundish is None else self.pipes[self.tundish + 1 :]

    @property
    def branches_after_tundish(self) -> int:
        """Tees of D2 entered or left by their branch; each counts as one bend."""
        if self.tundish is None:
            return 0
        return sum("branch" in (step.came_by, step.left_by) for step in self.steps[self.tundish + 1 :])


@dataclass(frozen=True, slots=True)
class Discharge:
    """A relief or safety valve's outlet and every way from it to a discharge end, shortest first.

    `stops_at` names what the discharge reaches where it reaches no end: parts, then pipes.
    """

    valve: Placed
    for_store: bool
    runs: tuple[Run, ...]
    stops_at: tuple[str, ...]


def discharges(circuit: Circuit) -> tuple[Discharge, ...]:
    """Every relief and safety valve's discharge, in the order of the drawing."""
    valves = [
        (valve, role is Role.RELIEVES_STORE)
        for role in (Role.RELIEVES_HEATING, Role.RELIEVES_STORE)
        for valve in circuit.devices(role)
    ]
    place = circuit.ports.place
    valves.sort(key=lambda each: place[each[0].part])
    return tuple(_trace(circuit, valve, for_store) for valve, for_store in valves)


def _trace(circuit: Circuit, valve: Placed, for_store: bool) -> Discharge:
    """Every way from the outlet to an end that enters no port twice: water takes them all, so one
    that passes no tundish counts beside one that does. Raises TooLargeError beyond the bound."""
    search = _Search(circuit)
    search.follow(Joint(valve.part, valve.device.other), (), ())
    runs = sorted(search.runs, key=lambda run: len(run.steps))
    return Discharge(valve, for_store, tuple(runs), () if runs else tuple(dict.fromkeys(search.stops)))


class _Search:
    """Depth first from one outlet, with what was found on the way."""

    def __init__(self, circuit: Circuit) -> None:
        self.circuit = circuit
        self.runs: list[Run] = []
        self.stops: list[str] = []
        self.taken = 0

    def follow(self, leaving: Joint, pipes: tuple[str, ...], steps: tuple[Step, ...]) -> None:
        """Go on from a port, having come by these pipes and parts; longer ways wait in a list."""
        todo = [(leaving, pipes, steps)]
        while todo:
            leaving, pipes, steps = todo.pop()
            self.taken += 1
            if self.taken > SEARCH_BOUND:
                raise TooLargeError
            todo += reversed(self._onward(leaving, pipes, steps))

    def _onward(
        self, leaving: Joint, pipes: tuple[str, ...], steps: tuple[Step, ...]
    ) -> list[tuple[Joint, tuple[str, ...], tuple[Step, ...]]]:
        drawing = self.circuit.drawing
        pipe = drawing.joined.get(leaving)
        if pipe is None:
            self.stops.append(leaving.part)
            return []
        entered = next((end for end in drawing.pipes[pipe].joints if end != leaving), None)
        if entered is None:
            self.stops.append(pipe)
            return []
        used = {port for step in steps if step.part == entered.part for port in (step.came_by, step.left_by)}
        if entered.port in used:
            return []
        came = (*pipes, pipe)
        if any(device.role is Role.ENDS_DISCHARGE for device in self.circuit.plans[entered.part].devices):
            self.runs.append(_run(self.circuit, came, (*steps, Step(entered.part, entered.port, ""))))
            return []
        ways = [port for port in _ways_on(self.circuit, entered) if port not in used]
        if not ways:
            self.stops.append(entered.part)
        return [
            (Joint(entered.part, port), came, (*steps, Step(entered.part, entered.port, port)))
            for port in ways
        ]


def _ways_on(circuit: Circuit, entered: Joint) -> list[str]:
    """The ports a discharge that enters here can leave by, through whatever passages the part has."""
    reached = {entered.port}
    todo = [entered.port]
    while todo:
        here = todo.pop()
        for passage in circuit.plans[entered.part].passages:
            ends = [(passage.a, passage.b)]
            if passage.way not in NOT_AGAINST_THE_ARROW and not passage.gap:
                ends.append((passage.b, passage.a))
            for start, finish in ends:
                if start == here and finish not in reached:
                    reached.add(finish)
                    todo.append(finish)
    names = [port.name for port in circuit.drawing.components[entered.part].kind.ports]
    return [name for name in names if name in reached and name != entered.port]


def _run(circuit: Circuit, pipes: tuple[str, ...], steps: tuple[Step, ...]) -> Run:
    tundish = next(
        (
            place
            for place, step in enumerate(steps)
            if any(device.role is Role.SHOWS_DISCHARGE for device in circuit.plans[step.part].devices)
        ),
        None,
    )
    return Run(pipes, steps, tundish)

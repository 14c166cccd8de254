"""What flows in every pipe in each situation, and what is written beside it; where nothing is, why."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from enum import Enum
from typing import TYPE_CHECKING

from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.drawing.value import Drawing
from circuitcheck.rules.book import NoRuleError
from circuitcheck.sizing.water import OutsideLimitsError
from circuitcheck.told import a_word, strung, worded

if TYPE_CHECKING:
    from circuitcheck.circuit.situations import Situation
    from circuitcheck.figures.plant import Plant
    from circuitcheck.figures.solved import Run, SolvedBody

STILL_LPM = 0.005
"""Less than this is no flow: it would be written as 0.0."""
NO_WATER = a_word("No pump drives heating water in this drawing.")
TOO_MANY = a_word("The ways of this circuit are too many to follow.")


class By(Enum):
    """What stands by the pipes."""

    NOTHING = "Arrows only"
    FLOW = "Flow, l/min"
    VELOCITY = "Velocity, m/s"
    LOSS = "Pressure loss"


@dataclass(frozen=True, slots=True)
class PipeFlow:
    """One pipe in one situation. `flow_lpm` runs from its first end to its second, below 0 the other
    way. `circulates`: water can go round through it; else it is a branch in which it never moves."""

    flow_lpm: float
    velocity_m_s: float | None = None
    loss_kpa: float | None = None
    circulates: bool = True

    @property
    def is_still(self) -> bool:
        """Whether no water moves in it."""
        return abs(self.flow_lpm) < STILL_LPM


@dataclass(frozen=True, slots=True)
class SituationFlows:
    """The pipes in one situation by id; those that nothing is known of are left out.

    `shut` are the motor passages commanded shut (`zv1`, `tv1:a`), `running` the parts that drive
    water. `fault` says in one sentence why some or all pipes are left out.
    """

    name: str
    pipes: Mapping[str, PipeFlow] = field(default_factory=dict)
    shut: frozenset[str] = frozenset()
    running: tuple[str, ...] = ()
    fault: str = ""


@dataclass(frozen=True, slots=True)
class Flows:
    """Every situation of a drawing, in order, each by a name of its own.

    `missing` names the fields, as `id.field`, without which some or all flows cannot be told;
    `fault` says in one sentence why none can be whatever is told.
    """

    drawing: Drawing
    situations: tuple[SituationFlows, ...] = ()
    missing: tuple[str, ...] = ()
    fault: str = ""

    def named(self, name: str) -> SituationFlows | None:
        """The situation of that name."""
        return next((each for each in self.situations if each.name == name), None)


def flows(drawing: Drawing) -> Flows:
    """What flows in a drawing. Never raises for what a drawing holds."""
    from circuitcheck.figures.plant import Plant

    with Plant(drawing) as plant:
        return _flows(plant)


def _flows(plant: Plant) -> Flows:
    drawing = plant.drawing
    try:
        bodies = plant.solved.bodies
        situations = plant.situations.all if bodies else ()
        told = [_told(drawing, bodies, row, each) for row, each in enumerate(situations)]
    except TooLargeError:
        return Flows(drawing, fault=TOO_MANY)
    except (NoRuleError, OutsideLimitsError) as error:
        return Flows(drawing, fault=worded("Flows cannot be worked out: {error}.", error=error))
    if not bodies:
        return Flows(drawing, fault=NO_WATER)
    missing = [*plant.solved.missing, *(name for each in situations for name in each.missing)]
    refused = next((body.refused for body in bodies if body.refused), "")
    fault = worded("Flows cannot be worked out: {refused}.", refused=refused) if refused else ""
    return Flows(drawing, tuple(_apart(drawing, told)), tuple(dict.fromkeys(missing)), fault)


def _told(drawing: Drawing, bodies: Iterable[SolvedBody], row: int, situation: Situation) -> SituationFlows:
    pipes: dict[str, PipeFlow] = {}
    faults: dict[str, None] = {}
    for body in bodies:
        if situation.missing or row >= len(body.runs):
            continue
        run = body.runs[row]
        if run.failure is not None:
            faults[failure_words(drawing, run)] = None
            continue
        pipes |= pipe_flows(body, run)
    running = tuple(id for id in drawing.components if id in situation.running)
    return SituationFlows(situation.name, pipes, situation.shut, running, " ".join(faults))


def failure_words(drawing: Drawing, run: Run) -> str:
    """Where and why a run could not be solved, as a sentence; empty where it was."""
    if run.failure is None:
        return ""
    where = strung(drawing.name(each) for each in run.failed_at[:3])
    at = worded(" (at {where})", where=where) if where else ""
    return worded("Not solved{at}: {why}.", at=at, why=a_word(run.failure.why.rstrip(".")))


def pipe_flows(body: SolvedBody, run: Run) -> Iterator[tuple[str, PipeFlow]]:
    """What flows in each pipe of a body in one run, by the pipe's id; nothing of those not to be told."""
    on_loops = frozenset(body.pipes)
    for strand in body.network.strands:
        if strand.passage is not None:
            continue
        flow = run.flow_lpm(strand.id)
        if flow is None:
            continue
        if strand.id not in on_loops:
            yield strand.id, PipeFlow(flow, circulates=False)
            continue
        lost = run.difference_kpa(strand.id)
        loss = None if lost is None else abs(lost)
        yield strand.id, PipeFlow(flow, run.velocity_m_s(strand.id), loss)


def _apart(drawing: Drawing, told: list[SituationFlows]) -> Iterator[SituationFlows]:
    names = apart(drawing, [(each.name, each.shut) for each in told])
    for name, each in zip(names, told, strict=True):
        yield SituationFlows(name, each.pipes, each.shut, each.running, each.fault)


def apart(drawing: Drawing, told: Sequence[tuple[str, frozenset[str]]]) -> Iterator[str]:
    """Names of situations, each with what is shut in it; those of one name told apart by how their
    valves stand."""
    names = [name for name, _ in told]
    for name, shut in told:
        if names.count(name) < 2:
            yield name
            continue
        alike = [other for each, other in told if each == name]
        moving = frozenset.union(*alike) - frozenset.intersection(*alike)
        stands = strung((_stand(drawing, label, label in shut) for label in sorted(moving)), "; ")
        yield worded("{situation}: {stands}", situation=name, stands=stands)


def _stand(drawing: Drawing, label: str, shut: bool) -> str:
    part, _, leg = label.partition(":")
    name = drawing.name(part)
    if leg:
        name = worded("{valve} to {leg}", valve=name, leg=leg)
    return worded("{valve} {state}", valve=name, state=a_word("shut") if shut else a_word("open"))


# What is written beside a pipe.


def text(pipe: PipeFlow, by: By, decimal: str = ".") -> str:
    """What is written beside a pipe: `26.8 l/min`, `0.54 m/s`, `35 Pa`; empty for nothing."""
    if pipe.is_still:
        return ""
    match by:
        case By.FLOW:
            flow = abs(pipe.flow_lpm)
            said = f"{flow:.0f} l/min" if flow >= 99.95 else f"{flow:.1f} l/min"
        case By.VELOCITY if pipe.velocity_m_s is not None:
            said = f"{pipe.velocity_m_s:.2f} m/s"
        case By.LOSS if pipe.loss_kpa is not None:
            said = _pressure(pipe.loss_kpa)
        case _:
            return ""
    return said.replace(".", decimal)


def _pressure(kpa: float) -> str:
    """In Pa below 1 kPa, so that short pipes are not all 0.0."""
    pascals = kpa * 1000
    if pascals < 0.95:
        return a_word("under 1 Pa")
    if pascals < 999.5:
        return f"{pascals:.0f} Pa"
    return f"{kpa:.1f} kPa" if kpa >= 9.95 else f"{kpa:.2f} kPa"


@dataclass(frozen=True, slots=True)
class Caption:
    """One text, and the pipes that it may stand beside: any one of them says it for all."""

    text: str
    pipes: tuple[str, ...]


def captions(
    drawing: Drawing,
    pipes: Mapping[str, PipeFlow],
    by: By,
    service: Mapping[str, str],
    decimal: str = ".",
    texts: Mapping[str, str] | None = None,
) -> tuple[Caption, ...]:
    """What is to be written on the sheet. Flow and velocity are written once along pipes that follow
    one another with nothing branching off that moves; a loss belongs to its one pipe. `texts`, by pipe,
    stand in place of what `by` says, and are written once where neighbours agree."""
    if texts is not None:
        said = {id: texts[id] for id in pipes if texts.get(id)}
    else:
        said = {id: words for id, pipe in pipes.items() if (words := text(pipe, by, decimal))}
    if by is By.LOSS and texts is None:
        return tuple(Caption(words, (id,)) for id, words in said.items())
    stretches = _Stretches(said)
    for first, second in _in_series(drawing, said):
        if said[first] == said[second] and service.get(first) == service.get(second):
            stretches.join(first, second)
    return tuple(Caption(said[group[0]], group) for group in stretches.groups())


def still(drawing: Drawing, pipes: Mapping[str, PipeFlow]) -> frozenset[str]:
    """The pipes in which no water moves, and the tees that stand between such pipes only."""
    found = {id for id, pipe in pipes.items() if pipe.is_still}
    tees = {
        id
        for id, part in drawing.components.items()
        if part.kind.name == "tee" and (joined := drawing.pipes_of(id)) and found.issuperset(joined)
    }
    return frozenset(found | tees)


def pipe_words(drawing: Drawing, id: str, situation: SituationFlows, decimal: str = ".") -> str:
    """All that is known of one pipe, as a line: for who cannot see the sheet, or wants it exactly."""
    pipe = situation.pipes.get(id)
    if pipe is None:
        return a_word("Nothing is known of the flow in this pipe.")
    if pipe.is_still:
        return (
            a_word("No flow in this pipe.")
            if pipe.circulates
            else a_word("No flow: nothing goes round through this pipe.")
        )
    end = drawing.pipes[id].ends[1 if pipe.flow_lpm > 0 else 0]
    part = getattr(end, "part", None)
    said = [words for by in By if (words := text(pipe, by, decimal))]
    if isinstance(part, str):
        said[0] = worded("{flow} towards {part}", flow=said[0], part=drawing.name(part))
    return strung(said, " · ")


def position_words(drawing: Drawing, situation: SituationFlows) -> str:
    """Which valves are commanded shut and what runs, as a line."""
    shut = []
    for label in sorted(situation.shut):
        part, _, leg = label.partition(":")
        shut.append(
            worded("{valve} to {leg}", valve=drawing.name(part), leg=leg) if leg else drawing.name(part)
        )
    running = [drawing.name(id) for id in situation.running]
    said = [worded("Shut: {shut}.", shut=strung(shut)) if shut else a_word("No motor valve is shut.")]
    said.append(
        worded("Running: {running}.", running=strung(running)) if running else a_word("Nothing runs.")
    )
    return strung(said, " ")


def _in_series(drawing: Drawing, moving: Mapping[str, object]) -> Iterator[tuple[str, str]]:
    """Pairs of pipes that meet at a part at which no third one carries water."""
    for id in drawing.components:
        joined = [pipe for pipe in drawing.pipes_of(id) if pipe in moving]
        if len(joined) == 2 and joined[0] != joined[1]:
            yield joined[0], joined[1]


class _Stretches:
    """Pipes gathered into stretches, each pipe in one."""

    def __init__(self, pipes: Iterable[str]) -> None:
        self._head = {id: id for id in pipes}

    def join(self, first: str, second: str) -> None:
        """The two belong to one stretch."""
        self._head[self._top(second)] = self._top(first)

    def groups(self) -> tuple[tuple[str, ...], ...]:
        """Every stretch, its pipes in the order they were given."""
        found: dict[str, list[str]] = {}
        for id in self._head:
            found.setdefault(self._top(id), []).append(id)
        return tuple(tuple(group) for group in found.values())

    def _top(self, id: str) -> str:
        while self._head[id] != id:
            id = self._head[id]
        return id

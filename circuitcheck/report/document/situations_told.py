"""Each situation of the plant for whoever stands before it: what opens, what runs, gets warm, and how fast."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.situations import BOTH, Situation
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.driven import TOGETHER
from circuitcheck.figures.figure import Figure
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role
from circuitcheck.report.document.content import Running
from circuitcheck.report.flow_picture import Flowing, shut_states
from circuitcheck.report.flows import By, Flows, SituationFlows
from circuitcheck.report.wording import missing_words, upper
from circuitcheck.rules.book import NoRuleError
from circuitcheck.sheet.pictures import Picture, Pictures
from circuitcheck.sizing.water import OutsideLimitsError

READS = " reads, "
COLD_AT_REST, COLD_RUNNING, HOT_RUNNING = "cold, at rest", "cold, pumps running", "hot, pumps running"
MOST_PICTURES, MOST_PIPES = 8, 250
"""So many situations get a picture, and only where it can be read: a plant of so many pipes at most."""
NOT_SHOWN = frozenset({"tee", "cap"})
MOST_NAMED = 24
NO_GAUGE = "no gauge is drawn"


def situations_told(
    plant: Plant, figures: Sequence[Figure], flows: Flows, pictures: Pictures
) -> tuple[Running, ...]:
    """Every situation in order; none where the drawing has no heating water or its ways are too many."""
    try:
        known = plant.situations.all
    except TooLargeError:
        return ()
    flowing = flows.situations or tuple(SituationFlows(each.name, {}, each.shut) for each in known)
    gauge = _gauge_readings(figures)
    shown = _Shown(pictures)
    return tuple(
        _running(plant, situation, told, flows, gauge, shown)
        for situation, told in zip(known, flowing, strict=False)
    )


def _running(
    plant: Plant,
    situation: Situation,
    told: SituationFlows,
    flows: Flows,
    gauge: Sequence[tuple[str, str, str]],
    shown: _Shown,
) -> Running:
    drawing = plant.drawing
    opened, shut = _valves(plant, situation)
    warm, cold = _warm_and_cold(plant, situation, told)
    return Running(
        name=upper(told.name.replace(BOTH, TOGETHER, 1) if situation.name == BOTH else told.name),
        open=opened,
        shut=shut,
        runs=tuple(upper(drawing.name(id)) for id in drawing.components if id in situation.running),
        warm=warm,
        cold=cold,
        flows=tuple(_flows(plant, situation)),
        gauge=_gauge_words(gauge, is_driven=bool(situation.running), is_hot=situation.heat_on)
        or (
            "not told: see the figure for pressures"
            if plant.circuit.devices(Role.SHOWS_PRESSURE)
            else NO_GAUGE
        ),
        fault=_why_no_flows(drawing, situation, told, flows),
        picture=shown.picture(told),
    )


def _valves(plant: Plant, situation: Situation) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """The motor valves that stand open, and those that are shut; a three-port valve by its legs."""
    drawing, found = plant.drawing, plant.situations
    opened, shut = list[str](), list[str]()
    for valve in found.two_port:
        (shut if valve in situation.shut else opened).append(upper(drawing.name(valve)))
    for valve in found.three_port:
        for leg in ("a", "b"):
            side = shut if f"{valve}:{leg}" in situation.shut else opened
            side.append(f"{upper(drawing.name(valve))} to {leg}")
    return tuple(opened), tuple(shut)


def _warm_and_cold(plant: Plant, situation: Situation, told: SituationFlows) -> tuple[str, str]:
    drawing, takers = plant.drawing, plant.situations.takers
    try:
        fed = [id for id in drawing.components if id in takers.fed]
    except TooLargeError:
        fed = []
    names = {id: upper(drawing.name(id)) for id in fed}
    if not told.pipes and situation.running:
        called = [names[id] for id in fed if id in situation.called]
        return (f"Meant to: {', '.join(called)}" if called else "Not told"), ""
    moving = _moving_parts(drawing, told)
    passed = [upper(drawing.name(id)) for id in drawing.components if id in moving and _is_shown(drawing, id)]
    cold = [names[id] for id in fed if id not in moving]
    if not passed:
        return "Nothing: no water is driven", ", ".join(cold)
    more = f" and {len(passed) - MOST_NAMED} more" if len(passed) > MOST_NAMED else ""
    through = f"{', '.join(passed[:MOST_NAMED])}{more}"
    return (through if situation.heat_on else f"Only what is left in it: {through}"), ", ".join(cold)


def _moving_parts(drawing: Drawing, told: SituationFlows) -> set[str]:
    """The parts through which water moves: one pipe that brings it, and one that takes it on."""
    pipes = [id for id, pipe in told.pipes.items() if not pipe.is_still]
    return {end.part for id in pipes for end in drawing.pipes[id].joints}


def _is_shown(drawing: Drawing, id: str) -> bool:
    part = drawing.components[id]
    return part.kind.name not in NOT_SHOWN or bool(part.label)


def _flows(plant: Plant, situation: Situation) -> Iterator[tuple[str, str]]:
    """Litres a minute through what gives heat, what drives water and what takes heat."""
    try:
        runs = [
            (body, run) for body in plant.solved.bodies for run in body.runs if run.situation == situation
        ]
    except (TooLargeError, NoRuleError, OutsideLimitsError):
        return
    for body, run in runs:
        if run.failure is not None:
            continue
        wanted = {*body.pumps, *body.takers, *plant.situations.takers.heats}
        for id in plant.drawing.components:
            flow = run.flow_lpm(id) if id in wanted else None
            if flow is not None and abs(flow) >= 0.05:
                yield upper(plant.drawing.name(id)), f"{abs(flow):.1f}"


def _why_no_flows(drawing: Drawing, situation: Situation, told: SituationFlows, flows: Flows) -> str:
    """Why the flows of this situation are not told; empty where they are, or where nothing is driven."""
    if told.fault or flows.fault:
        return told.fault or flows.fault
    missing = situation.missing or (flows.missing if situation.running and not told.pipes else ())
    if not missing:
        return ""
    named = "; ".join(missing_words(drawing, each) for each in missing[:6])
    more = f"; and {len(missing) - 6} more" if len(missing) > 6 else ""
    return f"Flows are not told, since numbers are missing: {named}{more}."


def _gauge_readings(figures: Iterable[Figure]) -> list[tuple[str, str, str]]:
    """What each gauge should read: its name, when, and the reading, from the map of pressures."""
    found = []
    for figure in figures:
        if figure.name not in ("pressure-map", "static-pressure"):
            continue
        for result in figure.results:
            name, parted, when = result.name.partition(READS)
            if parted:
                value = result.value if isinstance(result.value, str) else f"{result.value:.2f}"
                low, _, high = value.partition(" to ")
                found.append((name, when, f"{low if low == high else value} {result.unit}"))
    return found


def gauge_cold(figures: Iterable[Figure]) -> tuple[tuple[str, str], ...]:
    """What each gauge should read cold and at rest."""
    readings = _gauge_readings(figures)
    found = {upper(name): value for name, when, value in readings if when in (COLD_AT_REST, "cold")}
    return tuple(found.items())


def _gauge_words(readings: Sequence[tuple[str, str, str]], *, is_driven: bool, is_hot: bool) -> str:
    """What the gauges should read in a situation: `Gauge: 1.26 bar cold, 1.93 bar hot`."""
    wanted = (COLD_RUNNING, HOT_RUNNING) if is_driven else (COLD_AT_REST,)
    said: dict[str, dict[str, None]] = {}
    for name, when, value in readings:
        if when in wanted and (when != HOT_RUNNING or is_hot):
            said.setdefault(upper(name), {})[f"{value} {when.partition(',')[0]}"] = None
    return "; ".join(f"{name}: {', '.join(values)}" for name, values in said.items())


class _Shown:
    """Makes the pictures of situations, while there are not yet too many."""

    def __init__(self, pictures: Pictures) -> None:
        self._pictures = pictures
        self._left = MOST_PICTURES

    def picture(self, told: SituationFlows) -> Picture | None:
        """What runs in a situation; None where nothing does."""
        drawing = self._pictures.drawing
        moving = {id for id, pipe in told.pipes.items() if not pipe.is_still}
        if not moving or not self._left or len(told.pipes) > MOST_PIPES:
            return None
        shut = shut_states(told.shut)
        keeps = frozenset(moving | _moving_parts(drawing, told) | shut.keys())
        marks = Flowing(self._pictures.layout, lambda id: id not in keeps).picture(told, By.FLOW).marks
        around = {end.part for id in told.pipes for end in drawing.pipes[id].joints}
        words = f"{upper(told.name)}: where water moves, in litres a minute"
        picture = self._pictures.running(keeps, shut, marks, (*told.pipes, *around), words)
        self._left -= picture is not None
        return picture

"""Each situation of the plant for whoever stands before it: what opens, what runs, gets warm, and how fast."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.situations import BOTH, Situation
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.driven import TOGETHER
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role
from circuitcheck.report.document.asked_of import value_in
from circuitcheck.report.document.content import Running
from circuitcheck.report.flow_picture import Flowing, shut_states
from circuitcheck.report.flows import By, Flows, SituationFlows
from circuitcheck.report.wording import missing_words, upper
from circuitcheck.rules.book import NoRuleError
from circuitcheck.sheet.pictures import Picture, Pictures
from circuitcheck.sizing.water import OutsideLimitsError
from circuitcheck.told import a_word, strung, told_number, worded

READS = " reads, "
COLD_AT_REST, COLD_RUNNING, HOT_RUNNING = "cold, at rest", "cold, pumps running", "hot, pumps running"
COLD, HOT = a_word("cold"), a_word("hot")
MOST_PICTURES, MOST_PIPES = 8, 250
"""So many situations get a picture, and only where it can be read: a plant of so many pipes at most."""
NOT_SHOWN = frozenset({"tee", "cap"})
MOST_NAMED, MOST_MISSING = 24, 6
NO_GAUGE = a_word("no gauge is drawn")


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
        name=upper(_name(situation, told.name)),
        open=opened,
        shut=shut,
        runs=tuple(upper(drawing.name(id)) for id in drawing.components if id in situation.running),
        warm=warm,
        cold=cold,
        flows=tuple(_flows(plant, situation)),
        gauge=_gauge_words(gauge, is_driven=bool(situation.running), is_hot=situation.heat_on)
        or (
            a_word("not told: see the figure for pressures")
            if plant.circuit.devices(Role.SHOWS_PRESSURE)
            else NO_GAUGE
        ),
        fault=_why_no_flows(drawing, situation, told, flows),
        picture=shown.picture(told),
    )


def _name(situation: Situation, told: str) -> str:
    """What a situation is called where it is not chosen from a list: what "both" are must be said then."""
    if situation.name != BOTH:
        return told
    stands = value_in(told, "stands") if told != BOTH else ""
    return worded("{situation}: {stands}", situation=TOGETHER, stands=stands) if stands else TOGETHER


def _valves(plant: Plant, situation: Situation) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """The motor valves that stand open, and those that are shut; a three-port valve by its legs."""
    drawing, found = plant.drawing, plant.situations
    opened, shut = list[str](), list[str]()
    for valve in found.two_port:
        (shut if valve in situation.shut else opened).append(upper(drawing.name(valve)))
    for valve in found.three_port:
        for leg in ("a", "b"):
            side = shut if f"{valve}:{leg}" in situation.shut else opened
            side.append(worded("{valve} to {leg}", valve=upper(drawing.name(valve)), leg=leg))
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
        meant = worded("Meant to: {parts}", parts=strung(called)) if called else a_word("Not told")
        return meant, ""
    moving = _moving_parts(drawing, told)
    passed = [upper(drawing.name(id)) for id in drawing.components if id in moving and _is_shown(drawing, id)]
    cold = [names[id] for id in fed if id not in moving]
    if not passed:
        return a_word("Nothing: no water is driven"), strung(cold)
    through = strung(passed[:MOST_NAMED])
    if len(passed) > MOST_NAMED:
        through = worded("{these} and {count} more", these=through, count=len(passed) - MOST_NAMED)
    left = worded("Only what is left in it: {parts}", parts=through)
    return (through if situation.heat_on else left), strung(cold)


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
                yield upper(plant.drawing.name(id)), told_number(f"{abs(flow):.1f}")


def _why_no_flows(drawing: Drawing, situation: Situation, told: SituationFlows, flows: Flows) -> str:
    """Why the flows of this situation are not told; empty where they are, or where nothing is driven."""
    if told.fault or flows.fault:
        return told.fault or flows.fault
    missing = situation.missing or (flows.missing if situation.running and not told.pipes else ())
    if not missing:
        return ""
    named = [missing_words(drawing, each) for each in missing[:MOST_MISSING]]
    if len(missing) > MOST_MISSING:
        named.append(worded("and {count} more", count=len(missing) - MOST_MISSING))
    return worded("Flows are not told, since numbers are missing: {named}.", named=strung(named, "; "))


def _gauge_readings(figures: Iterable[Figure]) -> list[tuple[str, str, str]]:
    """What each gauge should read: its name, when, and the reading, from the map of pressures."""
    found = []
    for figure in figures:
        if figure.name not in ("pressure-map", "static-pressure"):
            continue
        for result in figure.results:
            _, parted, when = result.name.partition(READS)
            if parted:
                found.append((value_in(result.name, "of", "name", "part"), when, _reading(result)))
    return found


def _reading(result: Result) -> str:
    """A reading with its unit; a range that is none when rounded is one number."""
    value: str = result.value if isinstance(result.value, str) else told_number(f"{result.value:.2f}")
    low, _, high = value.partition(" to ")
    if low == high:
        value = told_number(low)
    return worded("{value} {unit}", value=value, unit=a_word(result.unit)) if result.unit else value


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
            reading = worded("{value} {when}", value=value, when=HOT if when == HOT_RUNNING else COLD)
            said.setdefault(upper(name), {})[reading] = None
    return strung(
        (worded("{gauge}: {readings}", gauge=name, readings=strung(values)) for name, values in said.items()),
        "; ",
    )


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
        words = worded("{situation}: where water moves, in litres a minute", situation=upper(told.name))
        picture = self._pictures.running(keeps, shut, marks, (*told.pipes, *around), words)
        self._left -= picture is not None
        return picture

"""What the figures of pumped water share: when it can be told, what each situation is called, what it rests on."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator

from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.situations import BOTH
from circuitcheck.figures.figure import Figure, Moves
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.resistance import LITRES_A_MINUTE
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.figures.telling import Telling
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.pipe import GRAVITY_M_S2
from circuitcheck.told import a_word, listed, strung, worded

USUAL = a_word("resistances that the drawing does not give")
SOURCE = (
    "Network: Todini and Pilati, 1988; friction: Darcy-Weisbach and Colebrook-White; fittings: loss factors of "
    "Perry's Chemical Engineers' Handbook. Resistances not given: common practice, no source."
)
LIMITS = (
    "Forced flow only; all thermostatic heads open; water without glycol at the design's mean temperature. "
    "An emitter's stated output is the nominal one, at 50 K (EN 442); its design flow carries what that comes to "
    "at the design's temperatures."
)
LEAST_FLOW_LPM = 0.1
"""Less is taken for no flow: common practice, no source."""

TOGETHER = a_word("heating and hot water together")
LITTLE = 0.0005
"""A share that a result moves by and that is not worth telling."""


def barred(body: SolvedBody) -> tuple[tuple[str, ...], str] | None:
    """What keeps a body from being solved: the fields, or why where nothing is missing; None where it is."""
    if body.missing:
        return body.missing, ""
    if body.refused:
        return (), body.refused
    # Where no pump runs no water is driven, however the valves rest.
    pumped = (run for run in body.runs if run.situation.running.intersection(body.pumps))
    unsure = tuple(dict.fromkeys(name for run in pumped for name in run.situation.missing))
    if unsure:
        return unsure, ""
    for run in body.runs:
        if run.failure is not None:
            where = strung(body.plant.drawing.name(id) for id in run.failed_at) or a_word("the whole circuit")
            return (), worded(
                "{name}, at {where}: {why}", name=run.situation.name, where=where, why=run.failure.why
            )
    return None


def refusing(telling: Telling, body: SolvedBody, subject: tuple[str, ...]) -> Figure | None:
    """The figure refused where the body can't be solved, else None."""
    bar = barred(body)
    if bar is None:
        return None
    told = Gathering(body.plant)
    told.lacks(*bar[0])
    return telling.refused(told, subject, bar[1]) if bar[1] else telling.lacking(told, subject)


def driven(body: SolvedBody) -> tuple[Run, ...]:
    """The runs in which some pump of the body runs."""
    pumps = set(body.pumps)
    return tuple(run for run in body.runs if pumps & run.situation.running)


def calling(body: SolvedBody) -> tuple[Run, ...]:
    """The runs in which something on the body is called."""
    takers = set(body.takers)
    return tuple(run for run in driven(body) if run.situation.heat_on and takers & run.situation.called)


def sources(body: SolvedBody) -> tuple[str, ...]:
    """The heat sources on the body."""
    return tuple(place.part for place in on(body, Role.HEATS))


def on(body: SolvedBody, role: Role) -> Iterator[Placed]:
    """The devices of a role that stand on the body."""
    plant = body.plant
    return (place for place in plant.circuit.devices(role) if plant.solved.at(place) is body)


def called(run: Run) -> str:
    """What a situation is called; by what is shut, where several of the body share one name."""
    names = Counter(each.situation.name for each in run.body.runs)
    own = run.situation.name
    name = TOGETHER if own == BOTH else own
    if names[own] < 2:
        return name
    same = [each.situation.shut for each in run.body.runs if each.situation.name == own]
    differs = frozenset[str]().union(*same) - frozenset.intersection(*same)
    shut = sorted(run.situation.shut & differs)
    return (
        worded(
            "{name}, {valves} shut",
            name=name,
            valves=listed(_valve(run.body.plant, each) for each in shut),
        )
        if shut
        else name
    )


def _valve(plant: Plant, label: str) -> str:
    part, _, leg = label.partition(":")
    name = plant.drawing.name(part)
    return worded("{valve} to {leg}", valve=name, leg=leg) if leg else name


def take_water(told: Gathering) -> None:
    """The temperatures that water's properties are taken at."""
    told.design("flow_temperature_c", "Tf", "Flow")
    told.design("return_temperature_c", "Tr", "Return")


def take_curves(told: Gathering, body: SolvedBody, pumps: Iterable[str] = (), *, usual: bool = False) -> None:
    """The curves of these pumps, else of all; with `usual`, every resistance that is a default too, else
    how many there are and that the figure of the flows names them."""
    for pump in tuple(pumps) or body.pumps:
        name = told.plant.drawing.name(pump)
        told.part(pump, "shut_off_head_m", f"H0 {pump}", worded("Shut-off head of {name}", name=name))
        told.part(pump, "maximum_flow_lpm", f"Q0 {pump}", worded("Most flow of {name}", name=name))
    if usual:
        for text in body.taken:
            _take_usual(told, text)
    else:
        count_usual(told, body)


def count_usual(told: Gathering, body: SolvedBody) -> None:
    """How many resistances are defaults; the figure of the flows names each."""
    if body.taken:
        name = a_word("Resistances taken as usual, each named there")
        told.add(a_word("usual"), name, float(len(body.taken)), "", "figure flows")


_KV = "kv_m3h"


def _take_usual(told: Gathering, text: str) -> None:
    """One default of the network, as it is noted there: `hs: across it = 10 kPa (its source)`."""
    what, _, rest = text.removesuffix(")").partition(" = ")
    if not rest:
        what, _, source = what.rpartition(" (")
        part, _, gives = what.partition(" is set to give ")
        whose = gives.removesuffix("its design flow").strip()
        sets: str = worded("{part} is set to give its design flow", part=part)
        if whose:
            sets = worded("{part} is set to give {other} its design flow", part=part, other=whose)
        told.add(a_word("usual"), sets, a_word("as set"), "", f"usual value, {source}")
        return
    value, _, source = rest.rpartition(" (")
    said, _, as_what = value.partition(" (")
    number, _, unit = said.partition(" ")
    if what.endswith(f".{_KV}"):
        part, unit, how = what.removesuffix(f".{_KV}"), "m³/h", ""
    else:
        part, _, how = what.partition(": ")
    owner = part.removesuffix(".bends")
    known = owner in told.plant.drawing.components or owner in told.plant.drawing.pipes
    name = told.plant.drawing.name(owner) if known else part
    if how:
        name = worded("{part}: {how}", part=name, how=a_word(how))
    elif what.endswith(f".{_KV}"):
        name = worded("{part}: kv as {what}", part=name, what=a_word(as_what.removesuffix(")")))
    if part.endswith(".bends"):
        name = worded("{name}: its bends, not counted, as so much more pipe", name=name)
        number, unit = said.removesuffix(" of its length").removesuffix(" %"), a_word("% of its length")
    told.add(worded("usual {owner}", owner=owner), name, float(number), unit, f"usual value, {source}")


def usual_moves(body: SolvedBody, run: Run, of: Callable[[Run], float | None], what: str) -> Iterator[Moves]:
    """How far a result moves with every resistance that is a default halved, and doubled."""
    own = of(run)
    if not own or not body.taken:
        return
    for other, by in zip(body.least_and_most, (a_word("half as much"), a_word("twice as much")), strict=True):
        moved = of(other.runs[run.row])
        share = 0.0 if moved is None else moved / own - 1
        if abs(share) >= LITTLE:
            yield Moves(worded("{usual} ({what})", usual=USUAL, what=what), by, share)


def head_m(body: SolvedBody, pascals: float) -> float:
    """Metres of the body's own water."""
    water = body.network.water
    return pascals / (GRAVITY_M_S2 * (1000.0 if water is None else water.density_kg_m3))


def lpm(flow_m3_s: float) -> float:
    """Litres a minute."""
    return flow_m3_s * LITRES_A_MINUTE


def place_of(body: SolvedBody, part: str) -> int | None:
    """The link of a part that its flow can be told by: not a wide way inside it, where it has another."""
    network = body.network.network
    places = body.network.place.get(part, ())
    if network is not None:
        for place in places:
            if not network.links[place].lossless:
                return place
    return places[0] if places else None


def flow_lpm(run: Run, part: str) -> float | None:
    """The flow through a part, as it is written; a built-in pump's heat source has several ways inside."""
    place = place_of(run.body, part)
    flow = None if place is None else run.body.solution.flow_m3_s(run.row, place)
    return None if flow is None else lpm(flow)


def across_pa(run: Run, part: str) -> float | None:
    """The pressure at a part's beginning less that at its end, by the same link."""
    place = place_of(run.body, part)
    return None if place is None else run.body.solution.difference_pa(run.row, place)

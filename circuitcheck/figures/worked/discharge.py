"""Discharge pipe of a mains-fed store.

The size that a store's relief valve asks of its discharge pipe after the tundish (D2), how much longer it
may be with the bends it has, what the pipe before the tundish (D1) must be, and how far it must fall. A
pipe too small or too long backs near-boiling water up out of the tundish, indoors.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import inf

from circuitcheck.circuit.discharge import Discharge, Run
from circuitcheck.circuit.served_stores import stores_beside
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import WANTING
from circuitcheck.parts.kind import Role
from circuitcheck.sizing import discharge as sizing
from circuitcheck.told import a_word, strung, worded

NAME, TITLE = "discharge", "Discharge pipe of a mains-fed store"
FORMULA = (
    "R = L + n × allowance of the size, at most the size's limit\n"
    "longest straight length with the bends drawn = limit − n × allowance\n"
    "fall = 1 in 200 of the length after the straight drop"
)
SOURCE = (
    "Approved Document G (England), Table 3.1 and 3.50 to 3.58, 2010 edition and the 2015 edition with 2016 "
    "amendments; beyond the printed rows one size more for each further 9 m (3.58), worked anew with each "
    "size's own allowance for a bend. D1 within 600 mm: 3.54; older editions and leaflets print 500 mm. A tee "
    "entered or left by its branch counts as one bend: common practice, no source."
)
LIMITS = "Copper; valve outlets G 1/2, G 3/4 and G 1; the limit itself passes."
COMMON_TITLE = "Discharge pipe that several stores share"
COMMON_FORMULA = "common size = so many sizes above the largest D2 that one of the stores needs alone"
COMMON_SOURCE = "Approved Document G (England) 3.59, with Table 3.1 and 3.58 for each store's own size."


@dataclass(frozen=True, slots=True)
class _Way:
    """One way from a valve through its tundish to an end, and the smallest D2 that carries it."""

    discharge: Discharge
    run: Run
    stores: tuple[str, ...]
    needs: sizing.Row | None
    missing: tuple[str, ...]


CHECKS = (
    "discharge-bore-too-small",
    "discharge-too-long",
    "shared-discharge-too-small",
    "tundish-too-far",
    "no-drop-below-tundish",
)
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each way from a store's relief valve to an end, then one for each end that stores share."""
    figures: list[Figure] = []
    ways: list[_Way] = []
    for discharge in plant.discharges:
        if not discharge.for_store or _is_exempt(plant, discharge):
            continue
        if not discharge.runs:
            figures.append(_refused(discharge, a_word("the discharge comes to no end in the drawing")))
        for run in discharge.runs:
            if run.tundish is None:
                why = a_word(
                    "no tundish stands on the way, so the pipe before it and after it cannot be told apart"
                )
                figures.append(_refused(discharge, why))
                continue
            figure, way = _one(plant, discharge, run)
            figures.append(figure)
            ways.append(way)
    return (*figures, *_common(plant, ways))


def _refused(discharge: Discharge, why: str) -> Figure:
    return Figure(NAME, TITLE, (discharge.valve.part,), (), FORMULA, (), SOURCE, LIMITS, refused=why)


def _stores(plant: Plant, discharge: Discharge) -> tuple[str, ...]:
    """The mains-fed stores that the valve relieves: those nothing keeps from it, else all on its water."""
    beside = stores_beside(plant.circuit, discharge.valve)
    body = plant.bodies.of(discharge.valve.node)
    stores = plant.circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
    return beside or tuple(store.part for store in stores if plant.bodies.of(store.node) == body)


def _is_exempt(plant: Plant, discharge: Discharge) -> bool:
    """Whether every store it relieves is too small for these rules. Raises NoRuleError."""
    most = plant.limit("discharge.exempt_store_l").value
    volumes = [plant.value(store, "volume_l") for store in _stores(plant, discharge)]
    return bool(volumes) and all(volume is not None and volume <= most for volume in volumes)


def _table(plant: Plant) -> sizing.Table:
    return sizing.table_of(
        plant.limit("discharge.table").value, plant.limit("discharge.length_a_size_m").value
    )


def _one(plant: Plant, discharge: Discharge, run: Run) -> tuple[Figure, _Way]:
    gathering, valve = Gathering(plant), discharge.valve.part
    subject = (valve, run.end)
    stores = _stores(plant, discharge)
    outlet = gathering.part(valve, "outlet_size_mm", "G", a_word("Valve's outlet, by the tube that fits it"))
    tabled = sizing.rows(_table(plant), float(outlet)) if outlet is not None else ()
    length, count = _length(gathering, run), _bends(gathering, run)
    why = _why(plant, run, known=outlet is not None, tabled=bool(tabled))
    for pipe in run.after_tundish:
        gathering.pipe(
            pipe, "material", worded("material {pipe}", pipe=pipe), a_word("Material after the tundish")
        )
    sizes = _sizes(gathering, run)
    if why or gathering.missing or length is None or count is None or not tabled:
        way = _Way(discharge, run, stores, None, (why,) if why else gathering.missing)
        return _unworked(subject, gathering, why), way
    needs = sizing.smallest_d2(tabled, tabled[0].outlet_mm, length, count)
    results = (
        *_needed(plant, tabled, needs, length, count),
        *_drawn(tabled, min(sizes.values(), default=None), length, count),
        *_before(gathering, run, tabled[0]),
        *_fall(gathering, run, length),
    )
    moves = tuple(_moves(gathering, valve, run, needs, (length, count)))
    figure = Figure(NAME, TITLE, subject, results, FORMULA, gathering.inputs, SOURCE, LIMITS, moves=moves)
    return figure, _Way(discharge, run, stores, needs, ())


def _moves(
    gathering: Gathering, valve: str, run: Run, needs: sizing.Row | None, drawn: tuple[float, float]
) -> Iterator[Moves]:
    """What the smallest D2 owes to a usual outlet and a usual material."""
    table, field = _table(gathering.plant), f"{valve}.outlet_size_mm"
    if gathering.is_default(field) and needs is not None:
        own = needs.outlet_mm
        larger = min((each.outlet_mm for each in table if each.outlet_mm > own), default=own)
        other = sizing.smallest_d2(table, larger, *drawn)
        by = worded("{larger:g} mm instead of {own:g} mm", larger=larger, own=own)
        yield Moves(field, by, inf if other is None else other.d2_mm / needs.d2_mm - 1)
    for pipe in run.after_tundish:
        if gathering.is_default(f"{pipe}.material"):
            yield Moves(f"{pipe}.material", a_word("plastic instead of copper"), inf)


def _unworked(subject: tuple[str, ...], gathering: Gathering, why: str) -> Figure:
    return Figure(
        NAME,
        TITLE,
        subject,
        (),
        FORMULA,
        gathering.inputs,
        SOURCE,
        LIMITS,
        refused=why or WANTING,
        missing=() if why else gathering.missing,
    )


def _why(plant: Plant, run: Run, *, known: bool, tabled: bool) -> str:
    if known and not tabled:
        return a_word("the table has no valve outlet of that size")
    materials = {pipe: plant.pipe_value(pipe, "material") for pipe in run.after_tundish}
    other = [pipe for pipe, material in materials.items() if material not in ("copper", None)]
    if other:
        names = strung(
            worded("{pipe} is {materials}", pipe=plant.drawing.name(pipe), materials=materials[pipe])
            for pipe in other
        )
        return worded("the table holds for copper, and {names}", names=names)
    return ""


def _length(gathering: Gathering, run: Run) -> float | None:
    found = [
        gathering.length_m(pipe, f"L {pipe}", a_word("Length after the tundish"))
        for pipe in run.after_tundish
    ]
    return None if None in found else sum(each for each in found if each is not None)


def _bends(gathering: Gathering, run: Run) -> float | None:
    found = [
        gathering.bends(pipe, f"n {pipe}", a_word("Bends after the tundish")) for pipe in run.after_tundish
    ]
    branches = run.branches_after_tundish
    if branches:
        gathering.add(
            a_word("n tees"),
            a_word("Tees entered or left by their branch"),
            float(branches),
            "",
            a_word("counted in the drawing"),
        )
    return None if None in found else sum(each for each in found if each is not None) + branches


def _sizes(gathering: Gathering, run: Run) -> dict[str, float]:
    found = {pipe: gathering.pipe(pipe, "size_mm", f"D2 {pipe}", needed=False) for pipe in run.after_tundish}
    return {pipe: float(size) for pipe, size in found.items() if size is not None}


def _needed(
    plant: Plant, tabled: sizing.Table, needs: sizing.Row | None, length: float, count: float
) -> Iterator[Result]:
    yield Result(a_word("Length after the tundish"), length, "m")
    yield Result(a_word("Bends after the tundish"), count, "")
    if needs is None:
        longest = tabled[-1]
        yield Result(a_word("Smallest size after the tundish (D2)"), a_word("none: shorten it"), "")
        yield Result(
            worded("Allowed in {d2_mm:g} mm", d2_mm=longest.d2_mm),
            longest.limit_m - count * longest.bend_m,
            "m",
        )
        return
    yield Result(a_word("Smallest size after the tundish (D2)"), needs.d2_mm, "mm")
    if not needs.printed:
        yield Result(a_word("That size is"), a_word("beyond the printed table, by its rule"), "")
    yield from _carries(needs, length, count)


def _carries(row: sizing.Row, length: float, count: float) -> Iterator[Result]:
    """What a size counts the pipe as, and how much longer it may still be."""
    resistance = sizing.resistance_m(length, count, row.bend_m)
    size = worded("{d2_mm:g} mm", d2_mm=row.d2_mm)
    yield Result(worded("In {size} it counts as", size=size), resistance, "m")
    yield Result(worded("Limit of {size}", size=size), row.limit_m, "m")
    yield Result(
        worded("Longest straight length in {size} with these bends", size=size),
        row.limit_m - count * row.bend_m,
        "m",
    )
    left = row.limit_m - resistance
    yield Result(
        worded("It may still grow in {size} by", size=size)
        if left >= 0
        else worded("Too long for {size} by", size=size),
        abs(left),
        "m",
    )


def _drawn(tabled: sizing.Table, size: float | None, length: float, count: float) -> Iterator[Result]:
    """The size as drawn, the smallest on the way."""
    if size is None:
        yield Result(a_word("Size as drawn"), a_word("not known"), "")
        return
    yield Result(a_word("Size as drawn, the smallest on the way"), size, "mm")
    row = sizing.row(tabled, tabled[0].outlet_mm, size)
    if row is None:
        word = (
            a_word("smaller than any for this valve")
            if size < tabled[0].d2_mm
            else a_word("not in the table")
        )
        yield Result(a_word("The size as drawn is"), word, "")
        return
    needs = sizing.smallest_d2(tabled, tabled[0].outlet_mm, length, count)
    if needs is None or needs.d2_mm != size:
        yield from _carries(row, length, count)


def _before(gathering: Gathering, run: Run, row: sizing.Row) -> Iterator[Result]:
    """What the table and the rules ask of the pipe before the tundish."""
    yield Result(a_word("Smallest size before the tundish (D1)"), row.d1_least_mm, "mm")
    most = gathering.limit(
        "discharge.tundish_within_m", a_word("D1 most"), a_word("Longest pipe before the tundish")
    )
    found = [
        gathering.length_m(pipe, f"D1 {pipe}", a_word("Length before the tundish"), needed=False)
        for pipe in run.before_tundish
    ]
    if None in found:
        yield Result(
            a_word("Length before the tundish"), worded("not known; at most {most:g} m", most=most), ""
        )
    else:
        yield Result(
            worded("Length before the tundish, at most {most:g} m", most=most),
            sum(each or 0.0 for each in found),
            "m",
        )


def _fall(gathering: Gathering, run: Run, length: float) -> Iterator[Result]:
    """How far the pipe must fall: its straight drop, then the least fall over the rest."""
    least = gathering.limit("discharge.least_fall_m_a_m", a_word("fall"), a_word("Least fall"))
    drop = gathering.limit(
        "discharge.straight_drop_m", a_word("drop"), a_word("Straight down below the tundish")
    )
    rest = max(0.0, length - drop)
    yield Result(a_word("Straight drop below the tundish, at least"), 1000 * drop, "mm")
    yield Result(a_word("Fall over the rest, at least"), 1000 * least * rest, "mm")


def _common(plant: Plant, ways: list[_Way]) -> Iterator[Figure]:
    """One for each end at which ways of stores that have nothing to do with each other come together."""
    for end in dict.fromkeys(way.run.end for way in ways):
        here = [way for way in ways if way.run.end == end]
        shared = _shared(here)
        if shared:
            yield _of_common(
                plant, end, [way for way in here if set(way.run.after_tundish) & set(shared)], shared
            )


def _shared(ways: list[_Way]) -> tuple[str, ...]:
    """The pipes after the tundish that carry the water of stores apart from one another."""
    pipes = dict.fromkeys(pipe for way in ways for pipe in way.run.after_tundish)
    found = []
    for pipe in pipes:
        sets = [frozenset(way.stores) for way in ways if pipe in way.run.after_tundish and way.stores]
        if any(one.isdisjoint(other) for one in sets for other in sets):
            found.append(pipe)
    return tuple(found)


def _of_common(plant: Plant, end: str, ways: list[_Way], shared: tuple[str, ...]) -> Figure:
    gathering = Gathering(plant)
    above = gathering.limit(
        "discharge.sizes_above_the_largest", "k", a_word("Sizes above the largest single one")
    )
    for way in ways:
        if way.needs is not None:
            name = worded("Size that {part} needs alone", part=plant.drawing.name(way.discharge.valve.part))
            gathering.add(f"D2 {way.discharge.valve.part}", name, way.needs.d2_mm, "mm", "figure discharge")
    subject = (end, *dict.fromkeys(store for way in ways for store in way.stores))
    lacking = [way for way in ways if way.needs is None]
    if lacking:
        missing = tuple(dict.fromkeys(field for way in lacking for field in way.missing if "." in field))
        why = "" if missing else a_word("the size that one of the stores needs alone cannot be told")
        return Figure(
            NAME, COMMON_TITLE, subject, (), COMMON_FORMULA, gathering.inputs, COMMON_SOURCE, LIMITS,
            refused=why or WANTING, missing=missing,
        )  # fmt: skip
    size: float | None = max(way.needs.d2_mm for way in ways if way.needs is not None)
    table = _table(plant)
    for _ in range(int(above)):
        size = None if size is None else sizing.size_above(table, size)
    drawn = [
        gathering.pipe(pipe, "size_mm", f"D {pipe}", a_word("Size as drawn"), needed=False) for pipe in shared
    ]
    known = [float(each) for each in drawn if each is not None]
    results = [
        Result(
            a_word("Smallest size of the common pipe"),
            a_word("none is large enough: lead each to its own end"),
            "",
        )
    ]
    if size is not None:
        results = [Result(a_word("Smallest size of the common pipe"), size, "mm")]
    if known:
        results.append(Result(a_word("As drawn, the smallest of it"), min(known), "mm"))
    return Figure(
        NAME, COMMON_TITLE, subject, tuple(results), COMMON_FORMULA, gathering.inputs, COMMON_SOURCE, LIMITS
    )

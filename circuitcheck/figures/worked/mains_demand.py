"""What the main must give.

A mains-fed store gives no more than the main does, and every outlet pulls on it. The outlets' loading units
are added and turned into the flow that is to be expected, since not all are open at once; that is set
against the flow and the running pressure measured at the main. Have them measured before a store is ordered.
"""

from __future__ import annotations

from circuitcheck.drawing.value import Joint
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_water import limit_or_none, supplies, units_of
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.demand import design_flow_l_s, l_min, total_units
from circuitcheck.sizing.vessel import static_bar
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "mains-demand",
    a_word("What the main must give"),
    a_word(
        "LU = sum of the outlets' loading units\nq from LU and the largest single outlet (EN 806-3, Annex B)\n"
        "left at the highest outlet = running pressure − 0.0981 bar for each metre of height"
    ),
    a_word(
        "EN 806-3:2006, Table 2 (units) and Annex B (curve, from memory); NHBC Standards 8.1.5 (1.5 bar); "
        "20 l/min for a mains-fed store: common practice, no source."
    ),
    a_word(
        "Losses in the pipes, valves and the store come on top and are not counted. Units of EN 806-3 only: those "
        "of the older BS 6700 are other units and must not be mixed with them."
    ),
)

CHECKS = ("main-too-weak",)
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each main that feeds an outlet or a store."""
    found = (_main(plant, main) for main in supplies(plant).mains)
    return tuple(figure for figure in found if figure is not None)


def _main(plant: Plant, main: Joint) -> Figure | None:
    ways = supplies(plant)
    reached = ways.mains_water([main])
    outlets = [
        place.part
        for place in ways.outlets
        if not reached.keys().isdisjoint(
            Joint(place.part, port) for port in (place.device.port, place.device.other)
        )
    ]
    stores = [
        place.part
        for place in plant.circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
        if Joint(place.part, place.device.port) in reached
    ]
    if not outlets and not stores:
        return None
    told = Gathering(plant)
    results = [*_flow(told, main.part, outlets, stores), *_pressure(told, main.part, outlets, stores)]
    if not results:
        return TELLING.lacking(told, (main.part,))
    more = worded("Not known: {missing}.", missing=", ".join(told.missing)) if told.missing else ""
    return TELLING.worked(told, (main.part,), results, more_limits=more)


def _flow(told: Gathering, main: str, outlets: list[str], stores: list[str]) -> list[Result]:
    plant = told.plant
    units = [found for outlet in outlets if (found := units_of(told, outlet)) is not None]
    results = []
    needed = 0.0
    if units:
        total = total_units(units)
        needed = l_min(design_flow_l_s(total, max(units)))
        least = "" if len(units) == len(outlets) else a_word(", at the least")
        results += [
            Result(worded("Loading units{least}", least=least), total, ""),
            Result(worded("Flow to design for{least}", least=least), needed, "l/min"),
        ]
    for_store = limit_or_none(plant, "supply.store_flow_lpm") if stores else None
    if for_store is not None:
        told.limit("supply.store_flow_lpm", "qm", a_word("Least flow for a mains-fed store"))
        results.append(Result(a_word("Least flow for a mains-fed store"), for_store, "l/min"))
        needed = max(needed, for_store)
    flow = told.part(main, "flow_lpm", "q", a_word("Flow the main gives"))
    if flow is not None and needed:
        results += [
            Result(a_word("The main gives"), float(flow), "l/min"),
            Result(a_word("To spare"), float(flow) - needed, "l/min"),
        ]
    return results


def _pressure(told: Gathering, main: str, outlets: list[str], stores: list[str]) -> list[Result]:
    plant = told.plant
    running = told.part(main, "running_pressure_bar", "p")
    if running is None:
        return []
    results = [Result(a_word("Running pressure at the main"), float(running), "bar")]
    for_store = limit_or_none(plant, "supply.store_running_pressure_bar") if stores else None
    if for_store is not None:
        told.limit(
            "supply.store_running_pressure_bar", "pm", a_word("Least running pressure for a mains-fed store")
        )
        results.append(Result(a_word("Least for a mains-fed store"), for_store, "bar"))
    rises = {outlet: plant.heights.difference(main, outlet) for outlet in outlets}
    unknown = [outlet for outlet, rise in rises.items() if rise is None]
    if unknown:
        told.lacks(*plant.heights.missing_for([main, *unknown]))
    known = {outlet: rise for outlet, rise in rises.items() if rise is not None}
    if known:
        highest = max(known, key=lambda outlet: known[outlet])
        name = plant.drawing.name(highest)
        told.add(
            "h",
            worded("Height of {name} above the main", name=name),
            known[highest],
            "m",
            a_word("worked out from the heights"),
        )
        left = float(running) - static_bar(known[highest])
        results.append(Result(worded("Left at {name}, the highest", name=name), left, "bar"))
        least = limit_or_none(plant, "supply.least_draw_off_pressure_bar")
        if least is not None:
            told.limit(
                "supply.least_draw_off_pressure_bar", "pl", a_word("Least running pressure at an outlet")
            )
            results.append(Result(a_word("Least at an outlet"), least, "bar"))
    return results

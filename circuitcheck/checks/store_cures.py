"""What would put a mains-fed store's fittings right: proposals that several checks make."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from typing import Any

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.sealed_cures import branch_of
from circuitcheck.checks.store_swell import Shared, shared_waters
from circuitcheck.checks.store_water import RELIEF_PORT, StoreWater, store_waters
from circuitcheck.checks.wording import figure, named
from circuitcheck.circuit.walking import walk
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.pipes import join
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.finding import Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.store_vessel import next_size_l, vessel_for

D1: dict[str, Any] = {"size_mm": 15, "material": "copper"}
D2: dict[str, Any] = {"size_mm": 22, "material": "copper"}


def fitting(case: Case) -> Fitting:
    """The case's drawing, ready to fit parts into."""
    return Fitting(case.drawing, case.lines)


def water_of(case: Case, store: str) -> StoreWater:
    """The water of one mains-fed store."""
    return next(water for water in store_waters(case) if water.store == store)


def with_temperature_relief(case: Case, store: str) -> Iterator[Proposal]:
    """A temperature relief valve on the store's relief port, its discharge through a tundish."""
    work = fitting(case)
    limit = case.value(store, "maximum_pressure_bar")
    data = {"set_temperature_c": 90, **({} if limit is None else {"set_pressure_bar": limit})}
    port = Joint(store, RELIEF_PORT)
    on = Joint(work.tee(port), "branch") if port in case.drawing.joined else port
    valve = work.hang("temperature_relief_valve", "inlet", on, data=data)
    lead_away(case, work, store, Joint(valve, "outlet"))
    says = Says(
        "Fit a temperature relief valve on the relief port of {store}, through a tundish.",
        {"store": case.drawing.name(store)},
    )
    yield Proposal(says, work.drawing)


def with_expansion_relief(case: Case, store: str) -> Iterator[Proposal]:
    """An expansion relief valve teed off right at the store's cold port, through a tundish."""
    work = fitting(case)
    limit = case.value(store, "maximum_pressure_bar")
    data = {} if limit is None else {"set_pressure_bar": limit}
    valve = work.tee_off(Joint(store, "cold"), "expansion_relief_valve", "inlet", data=data)
    lead_away(case, work, store, Joint(valve, "outlet"))
    says = Says(
        "Fit an expansion relief valve on the cold feed right at {store}, through a tundish.",
        {"store": case.drawing.name(store)},
    )
    yield Proposal(says, work.drawing)


def lead_away(case: Case, work: Fitting, store: str, outlet: Joint) -> None:
    """A relief valve's outlet into the tundish of that store's other valves; else into a new one and
    on to a discharge end, whose place is still to be said."""
    tundish = _tundish_of(case, store)
    if tundish:
        work.pipe(outlet, Joint(work.tee(Joint(tundish, "inlet")), "branch"), data=D1)
        return
    tundish = work.hang("tundish", "inlet", outlet, pipe_data=D1)
    work.hang("discharge_end", "inlet", Joint(tundish, "outlet"), pipe_data=D2)


def _tundish_of(case: Case, store: str) -> str:
    reach = water_of(case, store).reach
    for discharge in case.discharges:
        on_it = case.circuit.water(discharge.valve.node) in reach
        if discharge.for_store and on_it and discharge.runs and discharge.runs[0].tundish is not None:
            return discharge.runs[0].steps[discharge.runs[0].tundish].part
    return ""


def moved_to_relief_port(case: Case, valve: str, store: str) -> Iterator[Proposal]:
    """The pipe of a temperature relief valve moved to the store's relief port."""
    work = fitting(case)
    pipe = work.pipe_at(Joint(valve, "inlet"))
    ends = case.drawing.pipes[pipe].ends
    port = Joint(store, RELIEF_PORT)
    far = next((n for n, end in enumerate(ends) if end != Joint(valve, "inlet")), None)
    if far is None:
        return
    if port not in case.drawing.joined:
        drawing: Drawing = join(case.drawing, pipe, far, port)
    else:
        other = ends[far]
        if not isinstance(other, Joint):
            return
        work.move_end(pipe, other.part, port)
        drawing = work.drawing
    names = {"valve": case.drawing.name(valve), "store": case.drawing.name(store)}
    yield Proposal(Says("Move {valve} to the relief port of {store}.", names), drawing)


def with_check_valve(case: Case, store: str) -> Iterator[Proposal]:
    """A check valve in the cold feed, as near to the store as leaves it all that it needs."""
    before = _kept(case, store)
    found = walk(case.circuit, [Joint(store, "cold")], lambda part, passage, forward: part != store)
    mains = [Joint(place.part, place.device.port) for place in case.circuit.devices(Role.MAIN)]
    reached = [main for main in mains if main in found.steps]
    if not reached:
        return
    way = found.way_to(min(reached, key=lambda main: found.steps[main]))
    for near, far in itertools.pairwise(way):
        if near.part == far.part:
            continue
        work = fitting(case)
        work.cut_in("check_valve", near, port="out")
        if _kept(Case(work.drawing), store) == before:
            says = Says(
                "Fit a check valve in the cold feed of {store}, on the main's side of all that it needs.",
                {"store": case.drawing.name(store)},
            )
            yield Proposal(says, work.drawing)
            return


def _kept(case: Case, store: str) -> frozenset[str]:
    """The vessels and relief valves that a store reaches."""
    water = water_of(case, store)
    roles = (Role.HOLDS_EXPANSION, Role.RELIEVES_BY_PRESSURE, Role.RELIEVES_BY_TEMPERATURE)
    return frozenset(place.part for role in roles for place in water.reached(role))


def with_vessel(case: Case, store: str, vessel: str = "") -> Iterator[Proposal]:
    """A vessel at the store's cold port; first the one that stands where it cannot serve, moved there."""
    branch = branch_of(case, vessel, Role.HOLDS_EXPANSION) if vessel else None
    if branch is not None:
        work = fitting(case)
        work.take_out(*branch.between)
        pipe = work.pipe_at(branch.port)
        others = [joint for joint in work.drawing.pipes[pipe].joints if joint.part != vessel]
        if others:
            work.move_end(pipe, others[0].part, Joint(store, "cold"))
            template = "Move {vessel} to the cold feed right at {store}"
            template += ", with nothing between: take out {between}." if branch.between else "."
            names = {
                "vessel": case.drawing.name(vessel),
                "store": case.drawing.name(store),
                "between": named(case.drawing, branch.between),
            }
            yield Proposal(Says(template, names), work.drawing)
    work = fitting(case)
    shared = next(shared for shared in shared_waters(case) if store in shared.stores)
    data, size = _vessel_data(case, shared)
    work.tee_off(Joint(store, "cold"), "expansion_vessel", "connection", data=data)
    values: dict[str, str | float] = {"store": case.drawing.name(store)}
    template = "Fit an expansion vessel for drinking water on the cold feed right at {store}."
    if size is not None:
        template = "Fit an expansion vessel for drinking water of {size} l on the cold feed right at {store}."
        values["size"] = figure(size)
    yield Proposal(Says(template, values), work.drawing)


def _vessel_data(case: Case, shared: Shared) -> tuple[dict[str, Any], float | None]:
    """What a new vessel must be, as far as the drawing tells."""
    fill, relief, swell = shared.fill, shared.relief, shared.swell.most
    limit = case.value(shared.stores[0], "maximum_pressure_bar")
    data = {} if limit is None else {"maximum_pressure_bar": limit}
    if fill is None or fill.bar is None:
        return data, None
    data["precharge_bar"] = fill.bar
    if relief is None or relief.bar is None or relief.missing or swell is None:
        return data, None
    final = case.limit("store.vessel_final_share_of_relief").value * relief.bar
    needed = vessel_for(swell, fill.bar, fill.bar, final).volume_l
    size = None if needed is None else next_size_l(needed)
    return (data if size is None else {**data, "volume_l": size}), size


def with_larger_vessel(case: Case, store: str) -> Iterator[Proposal]:
    """The one vessel charged as it should be; then, a size that will do."""
    shared = next(shared for shared in shared_waters(case) if store in shared.stores)
    data, size = _vessel_data(case, shared)
    if len(shared.vessels) != 1 or "precharge_bar" not in data:
        return
    vessel = shared.vessels[0]
    names: dict[str, str | float] = {
        "vessel": case.drawing.name(vessel),
        "bar": figure(data["precharge_bar"]),
    }
    work = fitting(case)
    work.set(vessel, "precharge_bar", data["precharge_bar"])
    yield Proposal(Says("Charge {vessel} at {bar} bar, as the reducing valve is set.", names), work.drawing)
    own = case.value(vessel, "volume_l")
    if size is not None and (own is None or size > own):
        work.set(vessel, "volume_l", size)
        names["size"] = figure(size)
        says = Says("Fit a vessel of {size} l, charged at {bar} bar, in place of {vessel}.", names)
        yield Proposal(says, work.drawing)

"""Filled store is heavier than the floor is stated to carry.

Flags: A store whose weight when filled, over the round footprint it stands on, is more than the floor
    is stated to carry (`design.floor_capacity_kn_m2`). Always advice: the program reckons with one
    stated number and knows nothing of joists, spans, or what else stands there. A vented store's
    drawing data hold no diameter and no weight: it is not judged.
Why: A litre of water weighs a kilogram. A store of 210 litres weighs a quarter of a tonne, on a circle
    of 55 cm: some 10 kN on each square metre of it, while floors of dwellings are usually
    reckoned for 1.5. A floor that gives way takes the pipes with it.
Remedy: Spread the load with a base that rests on several joists, stand the store over a load-bearing
    wall, or choose another place; have a competent person confirm the structure in any case.
Source: weight of water: City & Guilds Textbook: Plumbing, Book 1, 2019; what floors are reckoned for:
    national annex to BS EN 1991-1-1, category A1 (from memory).
"""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.wording import figure, upper
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.floor import filled_weight_kg, load_kn_m2, round_footprint_m2
from circuitcheck.told import a_word

NAME = "floor-load"

CAPACITY = "floor_capacity_kn_m2"
CONFIRM = "A competent person must confirm the structure."

_ROUNDING = 1e-9


def judge(case: Case) -> Verdict:
    """One finding for each store that the floor is not shown to carry."""
    findings, sound = [], 0
    for part in _stores(case):
        finding = _judge(case, part)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _stores(case: Case) -> list[str]:
    """The stores whose kind has a weight and a footprint at all."""
    places = (*case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE), *case.circuit.devices(Role.STORES_OPEN))
    needed = {"diameter_mm", "empty_weight_kg"}
    components = case.drawing.components
    return [
        place.part
        for place in places
        if needed <= {field.name for field in components[place.part].kind.own_fields}
    ]


@dataclass(frozen=True, slots=True)
class _Load:
    """What is known of a store's weight and footprint; `known_kg` is without what is missing."""

    known_kg: float
    diameter_mm: float | None
    capacity_kn_m2: float | None
    missing: tuple[str, ...]

    @property
    def least_kn_m2(self) -> float | None:
        """The load of what is known; None where the footprint is not."""
        if self.diameter_mm is None:
            return None
        return load_kn_m2(self.known_kg, round_footprint_m2(self.diameter_mm))


def _load(case: Case, part: str) -> _Load:
    fields = ("empty_weight_kg", "volume_l", "coil_content_l", "diameter_mm")
    known = {field: case.value(part, field) for field in fields}
    capacity = case.design(CAPACITY)
    missing = tuple(f"{part}.{field}" for field in fields if known[field] is None)
    if capacity is None:
        missing += (f"design.{CAPACITY}",)
    water_l = (known["volume_l"] or 0.0) + (known["coil_content_l"] or 0.0)
    return _Load(
        filled_weight_kg(known["empty_weight_kg"] or 0.0, water_l),
        known["diameter_mm"],
        capacity,
        missing,
    )


def _judge(case: Case, part: str) -> Finding | None:
    load = _load(case, part)
    least, capacity = load.least_kn_m2, load.capacity_kn_m2
    too_much = least is not None and capacity is not None and least > capacity * (1 + _ROUNDING)
    if not too_much and not load.missing:
        return None
    values: dict[str, str | float] = {"store": upper(case.drawing.name(part))}
    numbers: dict[str, float] = {}
    if not load.missing or too_much:
        numbers["filled_weight_kg"] = load.known_kg
    if least is not None:
        numbers["load_kn_m2"] = least
    if capacity is not None:
        numbers["capacity_kn_m2"] = capacity
    if not too_much:
        values["missing"] = ", ".join(load.missing)
        template = "Whether the floor carries {store} filled rests on what is not known: {missing}."
        values["store"] = case.drawing.name(part)
        says = Says(f"{template} {CONFIRM}", values)
        return Finding(
            NAME,
            Grade.UNANSWERED,
            says,
            (part,),
            numbers=numbers,
            missing=load.missing,
            would_be=Grade.ADVICE,
        )
    assert least is not None and capacity is not None
    values |= {
        "weight": figure(load.known_kg),
        "load": figure(least),
        "capacity": figure(capacity),
        "least": a_word("at least ") if load.missing else "",
    }
    says = Says(
        "{store} weighs {least}{weight} kg filled and loads the floor under it with {load} kN/m², more than the "
        "{capacity} kN/m² it is stated to carry. " + CONFIRM,
        values,
    )
    return Finding(NAME, Grade.ADVICE, says, (part,), numbers=numbers)

"""Load of the filled store on the floor.

Water weighs a kilogram a litre: a filled store is as heavy as three or four people standing on one spot. The
figure is always advice: it knows nothing of joists, spans and what else stands there, and the structure must
be confirmed by a competent person whatever it says.
"""

from __future__ import annotations

from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_water import stores
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.sizing.floor import (
    GRAVITY_M_S2,
    filled_weight_kg,
    load_kn_m2,
    round_footprint_m2,
    round_height_mm,
)
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "floor",
    a_word("Load of the filled store on the floor"),
    a_word("m = m0 + 1 kg/l × (V + Vc)\nA = π d² / 4\nq = m g / A"),
    a_word(
        "Weight of water: City & Guilds Textbook: Plumbing, Book 1, 2019. What floors of dwellings are reckoned "
        "for, 1.5 kN/m²: national annex to BS EN 1991-1-1, category A1 (from memory)."
    ),
    a_word(
        "Always advice: a competent person must confirm the structure. The store stands on a round footprint as "
        "wide as itself; a base that spreads the load lowers it, feet raise it."
    ),
)
NEEDED = frozenset({"diameter_mm", "empty_weight_kg"})

CHECKS = ("floor-load",)
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each store whose kind has a weight and a diameter."""
    components = plant.drawing.components
    return tuple(
        _store(plant, giver.part)
        for giver in stores(plant)
        if {field.name for field in components[giver.part].kind.own_fields} >= NEEDED
    )


def _store(plant: Plant, store: str) -> Figure:
    told = Gathering(plant)
    empty = told.part(store, "empty_weight_kg", "m0")
    volume = told.part(store, "volume_l", "V")
    coil = told.part(store, "coil_content_l", "Vc")
    diameter = told.part(store, "diameter_mm", "d")
    if empty is None or volume is None or coil is None:
        return TELLING.lacking(told, (store,))
    weight = filled_weight_kg(float(empty), float(volume) + float(coil))
    results = [
        Result(a_word("Filled weight"), weight, "kg"),
        Result("Load", weight * GRAVITY_M_S2 / 1000, "kN"),
    ]
    more = ""
    if diameter is None:
        more = worded(
            "The load on each square metre is not told for want of {store}.diameter_mm.", store=store
        )
    else:
        footprint = round_footprint_m2(float(diameter))
        load = load_kn_m2(weight, footprint)
        results += [
            Result("Footprint", footprint, "m²"),
            Result(a_word("Load on the footprint"), load, "kN/m²"),
            Result(
                a_word("Height of its water, at the least"),
                round_height_mm(float(volume), float(diameter)),
                "mm",
            ),
        ]
        capacity = told.design(
            "floor_capacity_kn_m2", "qf", a_word("What the floor is stated to carry"), needed=False
        )
        if capacity is not None and capacity > 0:
            results.append(
                Result(a_word("Share of what the floor is stated to carry"), 100 * load / capacity, "%")
            )
    moves = []
    field = f"{store}.coil_content_l"
    if field in told.defaults:
        moves.append(Moves(field, "+2 l", filled_weight_kg(float(empty), volume + coil + 2) / weight - 1))
    return TELLING.worked(told, (store,), results, more_limits=more, moves=moves)

"""Every formula just inside each of its limits, where it answers, and just outside, where it says why not."""

from __future__ import annotations

from collections.abc import Callable
from math import inf, isfinite, isinf
from typing import Any

import pytest

from circuitcheck.rules.book import book
from circuitcheck.sizing import (
    boiling,
    demand,
    discharge,
    emitter,
    heating_up,
    mixing,
    pipe,
    store_vessel,
    vessel,
    waiting,
    water,
)
from circuitcheck.sizing import pressure_in_time as in_time
from circuitcheck.sizing.glycol import propylene_freezing_c
from circuitcheck.sizing.tube import bore_mm

Asked = Callable[[float], Any]
FULL_BAR = boiling.vapour_absolute_bar(200) - boiling.STANDARD_BAR
EMPTY_BAR = boiling.vapour_absolute_bar(0) - boiling.STANDARD_BAR
WATER: dict[str, Any] = {"density_kg_m3": 980, "viscosity_pa_s": 4e-4}


def drop(**numbers: float) -> float:
    return pipe.pressure_drop(**{"flow_l_s": 0.1, "bore_mm": 20, "length_m": 1, **WATER, **numbers}).drop_pa


REFUSED: tuple[tuple[str, Asked, float, float, str], ...] = (
    ("density, cold", water.density_kg_m3, 0, -0.01, "0 to 110 °C"),
    ("density, hot", water.density_kg_m3, 110, 110.01, "0 to 110 °C"),
    ("heat capacity, cold", water.heat_capacity_j_kgk, 0, -0.01, "0 to 110 °C"),
    ("heat capacity, hot", water.heat_capacity_j_kgk, 110, 110.01, "0 to 110 °C"),
    ("viscosity, cold", water.viscosity_pa_s, 0, -0.01, "0 to 110 °C"),
    ("viscosity, hot", water.viscosity_pa_s, 110, 110.01, "0 to 110 °C"),
    ("swell from", lambda at: water.expansion(at, 60), 0, -0.01, "0 to 110 °C"),
    ("swell to", lambda at: water.expansion(10, at), 110, 110.01, "0 to 110 °C"),
    ("a store's swell", lambda at: store_vessel.swell_l(100, 10, at), 110, 110.01, "0 to 110 °C"),
    ("heat into water", lambda at: heating_up.heat_kwh(1, 10, at), 110, 110.01, "0 to 110 °C"),
    ("compressibility, cold", in_time.compressibility_per_bar, 0, -0.01, "0 to 110 °C"),
    ("compressibility, hot", in_time.compressibility_per_bar, 110, 110.01, "0 to 110 °C"),
    ("vapour, cold", boiling.vapour_absolute_bar, 0, -0.01, "0 to 200 °C"),
    ("vapour, hot", boiling.vapour_absolute_bar, 200, 200.01, "0 to 200 °C"),
    ("boiling, thin", boiling.boils_at_c, EMPTY_BAR, EMPTY_BAR - 1e-6, "0 to 200 °C"),
    ("boiling, under pressure", boiling.boils_at_c, FULL_BAR, FULL_BAR + 1e-6, "0 to 200 °C"),
    ("little glycol", propylene_freezing_c, 25, 24.99, "25 to 40 %"),
    ("much glycol", propylene_freezing_c, 40, 40.01, "25 to 40 %"),
    ("mix, too cool", lambda at: mixing.hot_share(at, 10), 40, 39.99, "no mix"),
    ("mix, too warm", lambda at: mixing.hot_share(60, at), 40, 40.01, "no mix"),
    ("mix of cold water alone", lambda at: mixing.mixed_l(100, 60, at), 39.99, 40, "no hot water"),
    ("flow heated", lambda at: heating_up.flow_heated_l_min(10, 10, at), 10.01, 10, "higher temperature"),
    ("time to heat", lambda kw: heating_up.minutes(1, kw), 1e-6, 0, "no power"),
    ("waiting", lambda flow: waiting.wait_s(1, flow), 1e-6, 0, "without a flow"),
    ("largest outlet", lambda units: demand.design_flow_l_s(3, units), 3, 3.01, "not within the sum"),
    ("no outlet", lambda units: demand.design_flow_l_s(3, units), 1e-3, 0, "not within the sum"),
    ("logarithmic mean, return", lambda at: emitter.logarithmic_excess_k(70, at, 20), 20.01, 20, "above the room"),
    ("logarithmic mean, flow", lambda at: emitter.logarithmic_excess_k(at, 50, 20), 50, 49.99, "not below"),
    ("bore", lambda mm: drop(bore_mm=mm), 1, 0, "bore above 0"),
    ("length", lambda metres: drop(length_m=metres), 0, -0.01, "length of 0 or more"),
    ("flow", lambda flow: drop(flow_l_s=flow), 100, inf, "finite numbers"),
    ("gradient", lambda gradient: pipe.flow_at_gradient_l_s(gradient, bore_mm=20, **WATER), 1e-3, 0, "above 0"),
    ("difference of temperature", lambda kelvin: pipe.design_flow_l_s(
        1, kelvin, capacity_j_kgk=4190, density_kg_m3=980), 0.01, 0, "hotter than the return"),
    ("water shut in: content", lambda litres: in_time.Heated(litres, 10, 1, 10).mass_kg, 1e-3, 0, "needs water"),
    ("water shut in: power", lambda kw: in_time.Heated(100, 10, 1, kw).mass_kg, 1e-3, 0, "needs water"),
    ("water shut in: gas", lambda litres: in_time.Heated(100, 10, 1, 10, gas_l=litres).mass_kg, 0, -0.01, "no gas"),
    ("water shut in: vacuum", lambda bar: in_time.Heated(100, 10, bar, 10).mass_kg, -0.99, -1, "vacuum"),
    ("water shut in: hottest", lambda at: len(in_time.rise(in_time.Heated(100, 10, 1, 10), at).rows),
        10.01, 10, "become hotter"),
)  # fmt: skip


@pytest.mark.parametrize(
    ("name", "ask", "inside", "outside", "why"), REFUSED, ids=[row[0] for row in REFUSED]
)
def test_refused_just_outside(name: str, ask: Asked, inside: float, outside: float, why: str) -> None:
    assert isfinite(ask(inside))
    with pytest.raises(ValueError, match=why):
        ask(outside)


TABLE = discharge.table_of(
    book("england").limit("discharge.table").value, book("england").limit("discharge.length_a_size_m").value
)
LAST = discharge.rows(TABLE, 15)[-1]

NONE: tuple[tuple[str, Asked, float, float], ...] = (
    ("a discharge at the last size's limit", lambda metres: discharge.smallest_d2(TABLE, 15, metres, 0),
        LAST.limit_m, LAST.limit_m + 0.01),
    ("a valve's outlet", lambda mm: discharge.rows(TABLE, mm) or None, 28, 35),
    ("a size above", lambda mm: discharge.size_above(TABLE, mm), LAST.d2_mm - 1, LAST.d2_mm),
    ("the largest heating vessel made", vessel.next_made_l, vessel.MADE_L[-1], vessel.MADE_L[-1] + 0.01),
    ("the largest store vessel made", store_vessel.next_size_l, store_vessel.SIZES_MADE_L[-1],
        store_vessel.SIZES_MADE_L[-1] + 0.01),
    ("a store vessel with room", lambda bar: store_vessel.vessel_for(5, 3, 3, bar).volume_l, 3.01, 3),
    ("standard copper", lambda mm: bore_mm("copper", mm), 54, 55),
    ("standard steel", lambda mm: bore_mm("steel", mm), 80, 81),
)  # fmt: skip


@pytest.mark.parametrize(("name", "ask", "inside", "outside"), NONE, ids=[row[0] for row in NONE])
def test_none_just_outside(name: str, ask: Asked, inside: float, outside: float) -> None:
    assert ask(inside) is not None
    assert ask(outside) is None


WITHOUT_END: tuple[tuple[str, Asked, float, float], ...] = (
    ("a heating vessel with room", lambda bar: vessel.least_volume_l(5, 100, vessel.room_share(1, bar)), 1.01, 1),
    ("the same by BS 7074-1", lambda bar: vessel.bs_volume_l(100, 1, bar, 90), 1.36, 1.35),
    ("a vessel that is not full", lambda litres: vessel.pressure_after_bar(18, 1, litres), 17.99, 18),
    ("vessels that hold the reserve", lambda litres: vessel.least_fill_bar([(18, 1)], litres), 17.99, 18),
    ("a small vessel's reserve", lambda litres: vessel.cold_fill(litres, 800, 1, 1, 2).least_bar, 16, 0),
)  # fmt: skip


@pytest.mark.parametrize(
    ("name", "ask", "inside", "outside"), WITHOUT_END, ids=[row[0] for row in WITHOUT_END]
)
def test_no_size_is_enough_just_outside(name: str, ask: Asked, inside: float, outside: float) -> None:
    assert isfinite(ask(inside))
    assert isinf(ask(outside))


@pytest.mark.parametrize(
    ("reynolds", "law"),
    [
        (2000, pipe.Law.LAMINAR),
        (2000.1, pipe.Law.TRANSITION),
        (3999.9, pipe.Law.TRANSITION),
        (4000, pipe.Law.TURBULENT),
    ],
)
def test_between_laminar_and_turbulent_it_says_so(reynolds: float, law: pipe.Law) -> None:
    factor, told = pipe.friction_factor(reynolds, 1e-4)
    assert told is law and 0.02 < factor < 0.05

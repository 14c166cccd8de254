"""Published numbers of hot water: heating up, mixing, waiting, what stores and pipes lose, what floors bear.

What says "worked by hand" applies a published formula to numbers of its own.
"""

from __future__ import annotations

import pytest

from circuitcheck.rules.book import book
from circuitcheck.sizing.demand import UNIT_L_S, design_flow_l_s, total_units
from circuitcheck.sizing.floor import (
    filled_weight_kg,
    load_kn_m2,
    round_footprint_m2,
    round_height_mm,
)
from circuitcheck.sizing.heating_up import (
    JOULES_A_KWH,
    flow_heated_l_min,
    heat_kwh,
    heating_power,
    minutes,
)
from circuitcheck.sizing.mixing import hot_share, mixed_l
from circuitcheck.sizing.open_vent import LEAST_CISTERN_L, cistern_l, least_height_by_gravity_m
from circuitcheck.sizing.standing_loss import (
    MOST_INSULATED_W_M,
    TEMPERATURE_FACTOR,
    bare_pipe_w_m,
    insulated_pipe_w_m,
    store_kwh_day,
)
from circuitcheck.sizing.tube import bore_mm, content_l_m
from circuitcheck.sizing.waiting import HSE_S, WFR_S, wait_s


@pytest.mark.parametrize(
    ("litres", "from_c", "to_c", "kwh", "within"),
    [
        # A classroom example: 20 l from 20 to 100 °C, c = 4.2 kJ/(kg K).
        (20, 20, 100, 1.867, 0.006),
        # 10 l from 25 to 70 °C, c = 4.2 kJ/(kg K): worked by hand.
        (10, 25, 70, 0.525, 0.01),
        # 200 l by 50 K, c = 4.186 kJ/(kg K): worked by hand.
        (200, 10, 60, 11.63, 0.003),
    ],
)
def test_heat_into_water(litres: float, from_c: float, to_c: float, kwh: float, within: float) -> None:
    """kWh = 4.2 × l × K / 3600, a litre taken as a kilogram; the program takes true densities."""
    assert heat_kwh(litres, from_c, to_c) == pytest.approx(kwh, rel=within)


@pytest.mark.parametrize(
    ("kwh", "kw", "expected_min", "within"),
    [
        # A classroom example: 1.867 kWh at 3.6 kW take 0.52 h.
        (1.867, 3.6, 31.2, 0.01),
        # Worked by hand: 0.525 kWh at 4.5 kW.
        (0.525, 4.5, 7.0, 0.001),
        # Worked by hand: 200 l by 50 K at 20 kW.
        (11.63, 20, 34.9, 0.001),
        # Worked by hand: 150 l by 50 K at 3 kW.
        (150 * 4.186 * 50 / 3600, 3, 174, 0.003),
    ],
)
def test_time_to_heat(kwh: float, kw: float, expected_min: float, within: float) -> None:
    assert minutes(kwh, kw) == pytest.approx(expected_min, rel=within)


def test_the_smaller_of_source_and_coil_counts() -> None:
    """Two limits apply to an indirect store, the heat source's output and the coil's power."""
    assert (heating_power(18, 15).kw, heating_power(18, 15).limited_by) == (15, "coil")
    assert (heating_power(12, 15).kw, heating_power(12, 15).limited_by) == (12, "source")


def test_flow_that_a_combination_heat_source_gives() -> None:
    """Makers' rule for a rise of 35 K, from memory: 24 kW give 9.8 l/min, 30 kW give 12.3."""
    assert flow_heated_l_min(24, 10, 45) == pytest.approx(9.8, rel=0.01)
    assert flow_heated_l_min(30, 10, 45) == pytest.approx(12.3, rel=0.01)


@pytest.mark.parametrize(
    ("stored_l", "hot_c", "cold_c", "litres"), [(200, 60, 10, 333), (150, 60, 10, 250), (150, 65, 15, 300)]
)
def test_mixed_water_at_40(stored_l: float, hot_c: float, cold_c: float, litres: float) -> None:
    """The ideal of V40 (Commission Regulation (EU) 814/2013, from memory), worked by hand."""
    assert mixed_l(stored_l, hot_c, cold_c) == pytest.approx(litres, abs=0.5)


def test_share_of_hot_in_a_bath() -> None:
    """A bath of 40 °C from 60 and 10 °C is three fifths hot: a heat balance, worked by hand."""
    assert hot_share(60, 10, 40) == pytest.approx(0.6)
    assert hot_share(60, 10, 60) == 1 and hot_share(60, 10, 10) == 0


def test_a_cylinder_by_its_size() -> None:
    """City & Guilds Textbook: Plumbing, Book 1, 2019: 500 mm wide and 1000 mm tall holds 196.375 l (π as
    3.142)."""
    assert round_height_mm(196.375, 500) == pytest.approx(1000, rel=3e-4)
    assert round_footprint_m2(500) * 1000 == pytest.approx(196.375, rel=3e-4)


def test_a_store_on_the_floor() -> None:
    """A store of 210 l, about 255 kg filled, on a circle of 550 mm: worked by hand, 2.5 kN and 10.5 kN/m²,
    against 1.5 kN/m² for dwellings (national annex to BS EN 1991-1-1, from memory)."""
    weight = filled_weight_kg(45, 210)
    assert weight == 255
    assert weight * 9.80665 / 1000 == pytest.approx(2.5, abs=0.05)
    assert load_kn_m2(weight, round_footprint_m2(550)) == pytest.approx(10.5, abs=0.05)


@pytest.mark.parametrize(
    ("units", "flow_l_s"), [(1, 0.1), (2, 0.2), (3, 0.3), (4, 0.4), (5, 0.5), (8, 0.8), (15, 1.5)]
)
def test_draw_off_flow_of_a_loading_unit(units: float, flow_l_s: float) -> None:
    """EN 806-3:2006, Table 2: loading units and draw-off flow QA side by side."""
    assert units * UNIT_L_S == pytest.approx(flow_l_s)
    assert design_flow_l_s(units, units) == pytest.approx(flow_l_s)


def test_units_of_a_house_by_en_806_3() -> None:
    """EN 806-3:2006, Table 2: bath 4, shower 2, basins 1 each, sink 2, WC 1."""
    table = book("england").limit("supply.loading_units").value
    assert [table[each] for each in ("bath", "shower", "basin", "sink", "wc")] == [4, 2, 1, 2, 1]
    assert total_units([4, 2, 1, 1, 2, 1]) == 11


@pytest.mark.parametrize(
    ("size_mm", "most_m", "litres"),
    [(12, 20, 1.83), (15, 12, 1.74), (22, 12, 3.85), (28, 8, 4.31), (35, 3, 2.50)],
)
def test_water_in_the_longest_dead_legs(size_mm: float, most_m: float, litres: float) -> None:
    """WFR guidance, Table 8.1 (lengths), in tube to BS EN 1057: worked by hand."""
    bore = bore_mm("copper", size_mm)
    assert bore is not None
    assert content_l_m(bore) * most_m == pytest.approx(litres, rel=0.005)


@pytest.mark.parametrize(("size_mm", "metres"), [(15, 69), (22, 31), (28, 18.5)])
def test_metres_that_hold_ten_litres(size_mm: float, metres: float) -> None:
    """Ten litres in a secondary circuit: 31 m of 22 mm and 18 m of 28 mm. Trade notes print 77, 26 and
    18 m; their 22 mm (0.38 l/m) and 15 mm (0.13 l/m) disagree with tube to BS EN 1057."""
    bore = bore_mm("copper", size_mm)
    assert bore is not None
    assert 10 / content_l_m(bore) == pytest.approx(metres, rel=0.01)


def test_waiting_for_hot_water() -> None:
    """Worked by hand: 12 m of 15 mm at a basin's 0.1 l/s takes 17 s, 12 m of 22 mm takes 38 s: longer than
    30 s (WFR guidance, G18.4), within a minute (HSG274 part 2, BS 8558)."""
    assert (WFR_S, HSE_S) == (30, 60)
    assert wait_s(1.74, 6) == pytest.approx(17.4)
    assert WFR_S < wait_s(3.85, 6) < HSE_S


def test_standing_loss_of_210_litres() -> None:
    """SAP 10.2, Tables 2, 2a and 2b: 50 mm of factory insulation, L = 0.0152, VF = 0.830: worked by hand
    2.65 kWh a day, 1.59 with the temperature factor of 0.60."""
    assert store_kwh_day(210, 50) == pytest.approx(2.65, abs=0.005)
    assert store_kwh_day(210, 50) * TEMPERATURE_FACTOR == pytest.approx(1.59, abs=0.005)


@pytest.mark.parametrize(("thickness_mm", "factor"), [(25, 0.0240), (35, 0.0191), (50, 0.0152), (80, 0.0115)])
def test_standing_loss_factor(thickness_mm: float, factor: float) -> None:
    """SAP, Table 2, factory insulation, kWh a litre and day, as printed (from memory); at 120 l the volume
    factor is 1."""
    assert store_kwh_day(120, thickness_mm) / 120 == pytest.approx(factor, abs=6e-5)


@pytest.mark.parametrize(("thickness_mm", "factor"), [(25, 0.0516), (80, 0.0240)])
def test_standing_loss_factor_of_a_loose_jacket(thickness_mm: float, factor: float) -> None:
    """The same table, loose jacket (from memory)."""
    assert store_kwh_day(120, thickness_mm, jacket=True) / 120 == pytest.approx(factor, abs=6e-5)


@pytest.mark.parametrize(("size_mm", "w_m"), [(15, 45), (22, 60), (28, 76), (35, 89), (42, 104), (54, 131)])
def test_bare_copper_55_k_above_the_room(size_mm: float, w_m: float) -> None:
    """A published table of heat losses of uninsulated copper tube, W/m, at a difference of 55 K; its
    example: 54 mm, 75 °C in a room of 20 °C, 131 W/m. At smaller differences the same table loses more than
    EN ISO 12241 gives for thin tube: for 15 mm about 50 % more at 22 K, and 18 % more at 38 K."""
    assert bare_pipe_w_m(size_mm, 75, 20) == pytest.approx(w_m, rel=0.065)


@pytest.mark.parametrize(("size_mm", "w_m"), [(15, 7.89), (22, 9.12), (28, 10.07)])
def test_insulated_pipe(size_mm: float, w_m: float) -> None:
    """Domestic Building Services Compliance Guide: the most that pipe at 60 °C may lose in air of 15 °C
    (from memory). A tenth to a fifth of bare pipe."""
    assert MOST_INSULATED_W_M[int(size_mm)] == w_m
    assert insulated_pipe_w_m(size_mm, 60, 15) == pytest.approx(w_m)
    assert insulated_pipe_w_m(size_mm, 60, 15) < 0.26 * bare_pipe_w_m(size_mm, 60, 15)


def test_feed_cistern() -> None:
    """BS 5449 as taught in City & Guilds Textbook: Plumbing, Book 1, 2019: 4 % of 150 l are 6 l; others take
    5 % (from memory), 7.5 l; the smallest is 18 l."""
    assert cistern_l(150) == pytest.approx(6.0)
    assert cistern_l(150, 0.05) == pytest.approx(7.5)
    assert LEAST_CISTERN_L == 18


@pytest.mark.parametrize(("water_above_m", "height_m"), [(5, 0.35), (2, 0.23), (3, 0.27)])
def test_height_of_a_vent(water_above_m: float, height_m: float) -> None:
    """WFR guidance to Schedule 2, G20.3: its example is 5 m and 0.35 m; the others worked by hand."""
    assert least_height_by_gravity_m(water_above_m) == pytest.approx(height_m)


def test_units_of_energy() -> None:
    """A kilowatt hour is 3.6 MJ: the SI brochure."""
    assert JOULES_A_KWH == 3.6e6

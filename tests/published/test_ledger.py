"""The ledger: printed numbers, and what printed rules come to, beside ours: one a row, each with its source.

At least forty numbers of at least eight sources. The other files of this folder hold whole tables, and
whatever cannot be told in a row. "From memory": the source is cited from memory, not from a copy.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

import pytest

from circuitcheck.circuit.solver.network import kv_quadratic
from circuitcheck.rules.book import book
from circuitcheck.sizing import (
    boiling,
    discharge,
    emitter,
    floor,
    heating_up,
    open_vent,
    pipe,
    pressure_in_time,
    standing_loss,
    vessel,
    water,
)
from circuitcheck.sizing.demand import design_flow_l_s
from circuitcheck.sizing.glycol import PUBLISHED_SWELLS, propylene_freezing_c
from circuitcheck.sizing.tube import bore_mm, content_l_m

ADG = "Approved Document G (England), 2015 edition with 2016 amendments, Table 3.1 and its worked example"
GUIDE_C = "CIBSE Guide C, copper at 75 °C, as in worked examples on its table"
BS_7074 = "BS 5449 and BS 7074-1, table of vessel volumes"
EN_12828 = "BS EN 12828, Annex D (from memory)"
EN_806 = "EN 806-3:2006, Table 2"
EN_442 = "EN 442-1, EN 442-2 and the conversion table after them (table from memory)"
IAPWS_97 = "IAPWS R7-97(2012), tables 35 and 36 (from memory)"
IAPWS_TABLE = "IAPWS-IF97 and the IAPWS viscosity, tabled at 0.101325 MPa"
CRC = "CRC Handbook of Chemistry and Physics, properties of water (from memory)"
LANGE = "Lange's Handbook of Chemistry, Table 5.13"
ASHRAE = "ASHRAE Fundamentals, densities of glycol solutions"
TUBE = "Heating and Air-conditioning of Buildings, Table 6.4 (BS EN 1057, BS 1387)"
TEXTBOOK = "City & Guilds Textbook: Plumbing, Book 1, 2019"
SAP = "SAP 10.2, Tables 2, 2a and 2b"
SERVICES = "Building Services Engineering, 5th edition, examples 4.2 and before 6.3"
WFR = "Guidance to the Water Supply (Water Fittings) Regulations 1999, G20.3 and Table 8.1"
COMPLIANCE = "Domestic Building Services Compliance Guide, pipe insulation (from memory)"
BS_EN_60534 = "BS EN 60534-2-1: definition of kv"

RULED = discharge.table_of(
    book("england").limit("discharge.table").value,
    book("england").limit("discharge.length_a_size_m").value,
)


class Row(NamedTuple):
    """What is printed, where, and ours; `within` is a share of the printed number."""

    source: str
    what: str
    printed: float
    ours: Callable[[], float]
    within: float = 0.005


def litres_a_metre(material: str, size: float) -> float:
    bore = bore_mm(material, size)
    assert bore is not None
    return content_l_m(bore)


def pascals_a_metre(size: float, kg_s: float) -> float:
    bore = bore_mm("copper", size)
    assert bore is not None
    density = water.density_kg_m3(75)
    found = pipe.pressure_drop(
        kg_s * 1000 / density,
        bore_mm=bore,
        length_m=1,
        density_kg_m3=density,
        viscosity_pa_s=water.viscosity_pa_s(75),
    )
    return found.gradient_pa_m


def allowed_m(size: float, bends: float) -> float:
    found = discharge.row(RULED, 15, size)
    assert found is not None
    return found.limit_m - bends * found.bend_m


def d2_mm(outlet: float, length: float, bends: float) -> float:
    found = discharge.smallest_d2(RULED, outlet, length, bends)
    assert found is not None
    return found.d2_mm


LEDGER = (
    Row(ADG, "22 mm with four elbows, m", 5.8, lambda: allowed_m(22, 4)),
    Row(ADG, "28 mm with four elbows, m", 14, lambda: allowed_m(28, 4)),
    Row(ADG, "D2 for G 1/2, 7 m and four elbows, mm", 28, lambda: d2_mm(15, 7, 4)),
    Row(ADG, "D2 for G 1/2 at its limit of 9 m, mm", 22, lambda: d2_mm(15, 9, 0)),
    Row(ADG, "D2 for G 3/4 at its limit of 9 m, mm", 28, lambda: d2_mm(22, 9, 0)),
    Row(ADG, "D2 for G 1 at its limit of 9 m, mm", 35, lambda: d2_mm(28, 9, 0)),
    Row(TEXTBOOK, "6 m and six elbows in 22 mm, m", 10.8, lambda: discharge.resistance_m(6, 6, 0.8)),
    Row(TEXTBOOK, "a cylinder 500 mm wide, 196.375 l, tall, mm", 1000,
        lambda: floor.round_height_mm(196.375, 500)),
    Row(TEXTBOOK, "cistern for 150 l, l", 6, lambda: open_vent.cistern_l(150)),
    Row(GUIDE_C, "22 mm, 0.400 kg/s, Pa/m", 790, lambda: pascals_a_metre(22, 0.400), 0.02),
    Row(GUIDE_C, "28 mm, 0.400 kg/s, Pa/m", 230, lambda: pascals_a_metre(28, 0.400), 0.02),
    Row(GUIDE_C, "35 mm, 0.760 kg/s, Pa/m", 250, lambda: pascals_a_metre(35, 0.760), 0.02),
    Row(GUIDE_C, "42 mm, 1.000 kg/s, Pa/m", 160, lambda: pascals_a_metre(42, 1.000), 0.02),
    Row(GUIDE_C, "15 mm, 0.038 kg/s, Pa/m", 80, lambda: pascals_a_metre(15, 0.038), 0.02),
    Row(SERVICES, "15 mm at 653.8 Pa/m, kg/s", 653.8, lambda: pascals_a_metre(15, 0.126), 0.04),
    Row(BS_7074, "100 l, 3 bar, charged to 0.5 bar, l", 8.3, lambda: vessel.bs_volume_l(100, 0.5, 3, 90), 0.01),
    Row(BS_7074, "100 l, 3 bar, charged to 1.0 bar, l", 10.9, lambda: vessel.bs_volume_l(100, 1, 3, 90), 0.01),
    Row(BS_7074, "300 l, 3 bar, charged to 1.5 bar, l", 46.8, lambda: vessel.bs_volume_l(300, 1.5, 3, 90), 0.01),
    Row(BS_7074, "200 l, 2.5 bar, charged to 1.0 bar, l", 26.8,
        lambda: vessel.bs_volume_l(200, 1, 2.5, 90), 0.01),
    Row(BS_7074, "300 l, 2 bar, charged to 1.0 bar, l", 60, lambda: vessel.bs_volume_l(300, 1, 2, 90), 0.01),
    Row(EN_12828, "swell to 80 °C, %", 2.81, lambda: 100 * water.expansion(4, 80), 0.05),
    Row(EN_12828, "swell to 100 °C, %", 4.21, lambda: 100 * water.expansion(4, 100), 0.05),
    Row(EN_12828, "final pressure under 3 bar, bar", 2.5, lambda: vessel.final_bar(3)),
    Row(EN_12828, "final pressure under 10 bar, bar", 9, lambda: vessel.final_bar(10)),
    Row(EN_12828, "reserve for 800 l, l", 4, lambda: vessel.large_reserve_l(800)),
    Row(IAPWS_97, "vapour at 300 K, bar", 0.0353658941, lambda: boiling.vapour_absolute_bar(300 - 273.15), 1e-8),
    Row(IAPWS_97, "boiling at 0.1 MPa, K", 372.755919,
        lambda: boiling.boils_at_c(1 - boiling.STANDARD_BAR) + 273.15, 1e-8),
    Row(IAPWS_TABLE, "viscosity at 20 °C, mPa s", 1.002, lambda: 1000 * water.viscosity_pa_s(20), 0.01),
    Row(IAPWS_TABLE, "viscosity at 75 °C, mPa s", 0.377, lambda: 1000 * water.viscosity_pa_s(75), 0.01),
    Row(IAPWS_TABLE, "heat capacity at 75 °C, kJ/(kg K)", 4.192,
        lambda: water.heat_capacity_j_kgk(75) / 1000, 0.002),
    Row(IAPWS_TABLE, "swell from 10 to 80 °C, %", 2.87, lambda: 100 * water.expansion(10, 80)),
    Row(CRC, "compressibility at 20 °C, 1/GPa", 0.4589,
        lambda: 1e4 * pressure_in_time.compressibility_per_bar(20)),
    Row(CRC, "compressibility at 50 °C, 1/GPa", 0.4417,
        lambda: 1e4 * pressure_in_time.compressibility_per_bar(50)),
    Row(LANGE, "30 % of propylene glycol freezes at, °C", -12.8, lambda: propylene_freezing_c(30)),
    Row(LANGE, "40 % of propylene glycol freezes at, °C", -20.6, lambda: propylene_freezing_c(40)),
    Row(ASHRAE, "30 % of ethylene glycol, 10 to 82 °C, swell, %", 100 * (65.55 / 63.28 - 1),
        lambda: 100 * PUBLISHED_SWELLS[0].swell),
    Row(ASHRAE, "30 % of propylene glycol, 10 to 45 °C, swell, %", 100 * (1032.6 / 1015.6 - 1),
        lambda: 100 * PUBLISHED_SWELLS[1].swell),
    Row(EN_442, "60 K: share of the nominal output", 1.267, lambda: emitter.output_share(60)),
    Row(EN_442, "40 K: share of the nominal output", 0.748, lambda: emitter.output_share(40)),
    Row(EN_442, "30 K: share of the nominal output", 0.515, lambda: emitter.output_share(30)),
    Row(EN_442, "75/65/20 °C: excess, K", 50, lambda: emitter.excess_k(75, 65, 20)),
    Row(EN_806, "a bath of 4 units, l/s", 0.4, lambda: design_flow_l_s(4, 4)),
    Row(EN_806, "a shower of 2 units, l/s", 0.2, lambda: design_flow_l_s(2, 2)),
    Row(TUBE, "copper 15 mm, l/m", 0.145, lambda: litres_a_metre("copper", 15)),
    Row(TUBE, "copper 22 mm, l/m", 0.321, lambda: litres_a_metre("copper", 22)),
    Row(TUBE, "copper 54 mm, l/m", 2.095, lambda: litres_a_metre("copper", 54)),
    Row(TUBE, "steel 20 mm, l/m", 0.367, lambda: litres_a_metre("steel", 20), 0.01),
    Row(TUBE, "steel 50 mm, l/m", 2.205, lambda: litres_a_metre("steel", 50), 0.01),
    Row(SAP, "50 mm of factory insulation, kWh a litre and day", 0.0152,
        lambda: standing_loss.store_kwh_day(120, 50) / 120),
    Row(SAP, "25 mm of factory insulation, kWh a litre and day", 0.0240,
        lambda: standing_loss.store_kwh_day(120, 25) / 120),
    Row(COMPLIANCE, "22 mm insulated, W/m", 9.12, lambda: standing_loss.insulated_pipe_w_m(22, 60, 15)),
    Row(WFR, "vent above water for 5 m, m", 0.35, lambda: open_vent.least_height_by_gravity_m(5)),
    Row(BS_EN_60534, "kv 1 at 1 m³/h, bar", 1, lambda: kv_quadratic(1) / 3600**2 / 1e5),
    Row("A classroom example, no document", "20 l from 20 to 100 °C, kWh", 1.867,
        lambda: heating_up.heat_kwh(20, 20, 100), 0.006),
)  # fmt: skip


@pytest.mark.parametrize("row", LEDGER, ids=lambda row: f"{row.source.split(',')[0]}: {row.what}")
def test_ours_is_what_is_printed(row: Row) -> None:
    assert row.ours() == pytest.approx(row.printed, rel=row.within)


def test_the_ledger_holds_forty_numbers_of_eight_sources() -> None:
    documents = [row for row in LEDGER if "no document" not in row.source]
    assert len({(row.source, row.what) for row in documents}) >= 40
    assert len({row.source for row in documents}) >= 8
    assert len({row.source for row in documents if "from memory" not in row.source}) >= 8

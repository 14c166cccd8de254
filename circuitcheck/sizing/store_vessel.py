"""Size of a mains-fed store's expansion vessel, by the gas law.

The vessel's gas is charged at `charge_bar` with no water in it. Before heating, the water stands at
the reducing valve's set pressure; when hot, at the highest pressure the expansion relief valve bears
without weeping. Between the two the vessel must take up the swell.

Source: Boyle's law on absolute pressures; the form V = e C / (1 - (charge + 1) / (final + 1)) is common
practice, no source; the charge from 0.2 bar below the reducing valve's setting to equal likewise.
"""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.sizing.water import expansion

ATMOSPHERE_BAR = 1.0
FORMULA = "V = swell / ((charge + 1) / (fill + 1) - (charge + 1) / (final + 1))"

SIZES_MADE_L = (2, 5, 8, 12, 18, 24, 35, 50, 60, 80, 100, 150, 200, 300, 500)
"""Vessels for drinking water as commonly made, in litres (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class StoreVessel:
    """The smallest vessel for a store, with what it was worked from. Litres and bar (gauge).

    `volume_l` None: at these pressures no vessel takes up any water.
    """

    swell_l: float
    charge_bar: float
    fill_bar: float
    final_bar: float
    volume_l: float | None
    formula: str = FORMULA


def swell_l(content_l: float, cold_c: float, hot_c: float) -> float:
    """Litres by which water swells; nothing where it is not heated. Raises OutsideLimitsError."""
    return max(0.0, content_l * expansion(cold_c, hot_c))


def share_taken(charge_bar: float, fill_bar: float, final_bar: float) -> float:
    """The share of a vessel's volume that takes up water from cold to hot: 0 to 1.

    A charge above the fill pressure holds water out until the pressure has climbed to it.
    """
    charge, final = charge_bar + ATMOSPHERE_BAR, final_bar + ATMOSPHERE_BAR
    before = max(charge, fill_bar + ATMOSPHERE_BAR)
    return max(0.0, charge / before - charge / final)


def taken_l(volume_l: float, charge_bar: float, fill_bar: float, final_bar: float) -> float:
    """Litres that a vessel takes up from the fill pressure to the final one."""
    return volume_l * share_taken(charge_bar, fill_bar, final_bar)


def vessel_for(swell: float, charge_bar: float, fill_bar: float, final_bar: float) -> StoreVessel:
    """The smallest vessel that takes up a swell in litres."""
    share = share_taken(charge_bar, fill_bar, final_bar)
    volume = swell / share if share > 0 else (0.0 if swell <= 0 else None)
    return StoreVessel(swell, charge_bar, fill_bar, final_bar, volume)


def next_size_l(volume_l: float) -> float | None:
    """The smallest vessel made of at least that volume; None beyond the largest."""
    return next((float(size) for size in SIZES_MADE_L if size >= volume_l), None)

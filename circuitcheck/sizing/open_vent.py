"""How high an open vent must end above the water of its cistern, and what a pump does to that water.

Heights are in metres of water: a pump's head lifts or lowers the water in a vent by as many metres.
"""

from __future__ import annotations

LEAST_PUMPED_M = 0.45
"""A fully pumped circuit's vent ends about 450 mm above the water at least.

Source: BS 5449 (as taught in trade textbooks; seen there, not in the standard).
"""

GRAVITY_A_METRE = 0.04
GRAVITY_MORE_M = 0.15

CISTERN_SHARE = 0.04
"""The cistern of an open-vented circuit takes up 4 % of the circuit's water as it swells.

Source: BS 5449; WFR guidance to Schedule 2 (as taught in trade textbooks).
"""

CISTERN_SHARE_OTHERWISE = 0.05
"""Others take 5 % (from memory): sources disagree."""

LEAST_CISTERN_L = 18.0
"""The smallest feed and expansion cistern, 18 l (BS 5449 as taught in the trade)."""


def cistern_l(circuit_l: float, share: float = CISTERN_SHARE) -> float:
    """What a feed cistern must take up as the circuit's water swells, in litres: a share of the content."""
    return circuit_l * share


def least_height_by_gravity_m(water_above_m: float, induced_head_m: float = 0.0) -> float:
    """V = 0.04 H + 0.15: the least height in metres of a vent's end above the water.

    H (`water_above_m`): from the cistern's water down to where the cold water comes in, the lowest
    point of the column of hot water under the vent. Hot water is lighter and stands higher in the
    vent than cold water in the cistern. What a pump adds to that, `induced_head_m`, is added.

    Source: guidance to Schedule 2 of the Water Supply (Water Fittings) Regulations 1999, G20.3; it is
    written for the vent of a hot water store.
    """
    return GRAVITY_A_METRE * water_above_m + GRAVITY_MORE_M + induced_head_m


def pumps_over(head_towards_vent_m: float, height_above_water_m: float) -> bool:
    """Whether a pump that drives water from the feed's tee to the vent's lifts it out of the vent.

    With the cistern's feed the fixed point of the pressure, water stands in the vent as much higher
    than in the cistern as the pressure at the vent's tee is above that at the feed's: hydrostatics.
    A vent that is just as high as the head runs over at the least swing, so it must be higher.
    """
    return head_towards_vent_m > 0 and head_towards_vent_m >= height_above_water_m


def draws_air(head_away_m: float, water_above_m: float) -> bool:
    """Whether a pump that sucks with that head on a point of the circuit lowers its pressure below
    that of the air: where it may suck the whole height of water that stands above the point."""
    return head_away_m > 0 and head_away_m >= water_above_m


def head_m(pressure_kpa: float) -> float:
    """The height of water, in metres, that a pressure holds up: cold water, 1,000 kg a cubic metre, at
    standard gravity (9.80665 m/s²)."""
    return pressure_kpa / 9.80665

"""Hot water mixed down with cold: how much a store gives, and what share of it is hot."""

from __future__ import annotations

MIXED_C = 40.0
"""The temperature that mixed water is told at.

Source: Commission Regulation (EU) 814/2013: mixed water at 40 °C, V40 (from memory).
"""


def hot_share(hot_c: float, cold_c: float, mixed_c: float = MIXED_C) -> float:
    """The share of hot water in a mix of that temperature: (mixed − cold) / (hot − cold), 0 to 1.

    A heat balance; density and heat capacity are taken as the same for both. Raises ValueError where
    no mix of the two has that temperature.
    """
    if not cold_c <= mixed_c <= hot_c or hot_c == cold_c:
        raise ValueError(f"no mix of {hot_c:g} °C and {cold_c:g} °C has {mixed_c:g} °C")
    return (mixed_c - cold_c) / (hot_c - cold_c)


def mixed_l(stored_l: float, hot_c: float, cold_c: float, mixed_c: float = MIXED_C) -> float:
    """Litres of mixed water that a store gives: V40 = V (hot − cold) / (40 − cold).

    The ideal: every litre leaves as hot as it was stored. A real store mixes some cold into the rest
    and gives less (BS EN 12897 has the test). Raises ValueError as `hot_share` does, and where the
    cold water is as warm as the mix, which needs no hot water at all.
    """
    share = hot_share(hot_c, cold_c, mixed_c)
    if share == 0:
        raise ValueError(f"cold water of {cold_c:g} °C needs no hot water for {mixed_c:g} °C")
    return stored_l / share

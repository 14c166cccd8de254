"""How long one waits for hot water: the cold water that stands in the pipe runs out first."""

from __future__ import annotations

WFR_S = 30.0
"""Seconds within which water of 50 °C must come: WFR guidance, G18.4."""

HSE_S = 60.0
"""The same by HSG274 part 2 and BS 8558: a minute."""


def wait_s(litres: float, flow_l_min: float) -> float:
    """Seconds until water that stands in a pipe has run out at a flow.

    By the definition of both. The hot water also warms the tube and mixes a little with what it
    pushes: the real wait is longer. Raises ValueError for no flow.
    """
    if flow_l_min <= 0:
        raise ValueError("without a flow nothing runs out")
    return 60 * litres / flow_l_min

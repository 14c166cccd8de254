"""At which pressure water boils at a temperature, and at which temperature under a pressure."""

from __future__ import annotations

from math import sqrt

from circuitcheck.sizing.water import OutsideLimitsError

STANDARD_BAR = 1.01325
BAR_A_MPA = 10.0
KELVIN = 273.15
LEAST_C, MOST_C = 0.0, 200.0
N = (
    0.11670521452767e4,
    -0.72421316703206e6,
    -0.17073846940092e2,
    0.12020824702470e5,
    -0.32325550322333e7,
    0.14915108613530e2,
    -0.48232657361591e4,
    0.40511340542057e6,
    -0.23855557567849,
    0.65017534844798e3,
)
"""Coefficients of the saturation line, IAPWS-IF97, region 4 (from memory; checked against IAPWS-95 in the tests)."""


def vapour_absolute_bar(temperature_c: float) -> float:
    """The absolute pressure of water's vapour, in bar.

    Source: IAPWS-IF97, equation 30. Raises OutsideLimitsError outside 0 to 200 °C.
    """
    if not LEAST_C <= temperature_c <= MOST_C:
        raise OutsideLimitsError(
            f"vapour at {temperature_c:g} °C: taken from {LEAST_C:g} to {MOST_C:g} °C here"
        )
    kelvin = temperature_c + KELVIN
    t = kelvin + N[8] / (kelvin - N[9])
    a = t * t + N[0] * t + N[1]
    b = N[2] * t * t + N[3] * t + N[4]
    c = N[5] * t * t + N[6] * t + N[7]
    root: float = 2 * c / (-b + sqrt(b * b - 4 * a * c))
    return BAR_A_MPA * root**4


def boils_at_c(gauge_bar: float) -> float:
    """The temperature at which water boils under that gauge pressure, above standard atmosphere.

    Source: IAPWS-IF97, equation 31. Raises OutsideLimitsError where it comes to less than 0 or more than 200 °C.
    """
    absolute = gauge_bar + STANDARD_BAR
    if not vapour_absolute_bar(LEAST_C) <= absolute <= vapour_absolute_bar(MOST_C):
        raise OutsideLimitsError(
            f"boiling under {gauge_bar:g} bar: taken from {LEAST_C:g} to {MOST_C:g} °C here"
        )
    beta: float = (absolute / BAR_A_MPA) ** 0.25
    e = beta * beta + N[2] * beta + N[5]
    f = N[0] * beta * beta + N[3] * beta + N[6]
    g = N[1] * beta * beta + N[4] * beta + N[7]
    d = 2 * g / (-f - sqrt(f * f - 4 * e * g))
    total = N[9] + d
    return (total - sqrt(total * total - 4 * (N[8] + N[9] * d))) / 2 - KELVIN

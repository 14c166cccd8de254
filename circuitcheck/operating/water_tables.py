"""Heat content and volume of water by temperature, as tables for many cells at once."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, NamedTuple

from circuitcheck.sizing.pressure_in_time import compressibility_per_bar
from circuitcheck.sizing.water import LEAST_C, MOST_C, density_kg_m3, heat_capacity_j_kgk

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

KNOTS_A_K = 2


class Tables(NamedTuple):
    """By temperature in °C: heat content in J/kg above 0 °C, litres a kilogram, compressibility a bar.
    Between the knots, half a kelvin apart, straight lines."""

    c: Floats
    j_kg: Floats
    l_kg: Floats
    per_bar: Floats


@cache
def tables() -> Tables:
    """The tables, from the formulas that figures use."""
    import numpy as np

    count = int((MOST_C - LEAST_C) * KNOTS_A_K) + 1
    at = np.linspace(LEAST_C, MOST_C, count)
    capacity = np.array([heat_capacity_j_kgk(float(each)) for each in at])
    steps = (capacity[1:] + capacity[:-1]) / 2 * np.diff(at)
    return Tables(
        at,
        np.concatenate(([0.0], np.cumsum(steps))),
        np.array([1000 / density_kg_m3(float(each)) for each in at]),
        np.array([compressibility_per_bar(float(each)) for each in at]),
    )


def heat_at(celsius: Floats | float) -> Floats:
    """Heat content in J/kg."""
    import numpy as np

    known = tables()
    found: Floats = np.interp(np.asarray(celsius), known.c, known.j_kg)
    return found


def celsius_of(j_kg: Floats) -> Floats:
    """The temperature of so much heat content; the ends of the range beyond them."""
    import numpy as np

    known = tables()
    found: Floats = np.interp(j_kg, known.j_kg, known.c)
    return found


def litres_at(celsius: Floats | float) -> Floats:
    """Litres a kilogram, at atmospheric pressure."""
    import numpy as np

    known = tables()
    found: Floats = np.interp(np.asarray(celsius), known.c, known.l_kg)
    return found


def compressed_at(celsius: Floats | float) -> Floats:
    """Compressibility a bar."""
    import numpy as np

    known = tables()
    found: Floats = np.interp(np.asarray(celsius), known.c, known.per_bar)
    return found

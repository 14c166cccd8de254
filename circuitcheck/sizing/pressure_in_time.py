"""How pressure rises while heat is put into water: shut in, with a vessel, with a flooded one, at the safety valve.

Water that is heated swells. Where a cushion of gas gives way the pressure follows Boyle's law; where
nothing does, only the water's own compressibility and the stretch of the tube are left, and a degree
is worth several bar. Both are one equation here: what the water swells by goes into the gas, into the
water pressed together and into the tube pressed wider,

    V e = V k (p − p0) + G (1 − (p0 + 1)/(p + 1)),

with `e` the swell less what the tube grows by warmth, `k` compressibility and stretch together, and
`G` the litres of gas at the beginning. It is a quadratic in the pressure, solved in closed form; no gas
leaves the first term alone, much gas the second.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from circuitcheck.sizing.vessel import ATMOSPHERE_BAR
from circuitcheck.sizing.water import (
    LEAST_C,
    MOST_C,
    OutsideLimitsError,
    density_kg_m3,
    expansion,
    heat_capacity_j_kgk,
)

COPPER_GPA = 120.0
"""Young's modulus of copper: from memory (110 to 130)."""

COPPER_PER_K = 16.8e-6
"""Growth in length of copper by warmth, 1/K: from memory (BS EN 1057 tube; handbooks 16.5 to 17)."""

STRETCH_PER_BAR = 20.2 / (0.9 * COPPER_GPA * 1e4)
"""Growth in content of copper tube of 22 mm, bore 20.2 and wall 0.9 mm: d/(E s) a bar, as in the theory of
water hammer (Korteweg, 1878; from memory)."""

MOST_BAR = 100.0
"""The compressibility is that at atmospheric pressure: 100 bar on, it is 3 % less."""

KNOTS_C = tuple(range(int(LEAST_C), int(MOST_C) + 1, 10))


def compressibility_per_bar(temperature_c: float) -> float:
    """The share by which a bar presses water together, at atmospheric pressure and constant temperature.

    Source: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, from memory; checked against IAPWS-95 in the
    tests. Raises OutsideLimitsError outside 0 to 110 °C.
    """
    t = temperature_c
    if not LEAST_C <= t <= MOST_C:
        raise OutsideLimitsError(f"water at {t:g} °C: the formula holds from {LEAST_C:g} to {MOST_C:g} °C")
    above = 50.88496 + t * (
        0.6163813 + t * (1.459187e-3 + t * (20.08438e-6 + t * (-58.47727e-9 + t * 410.4110e-12)))
    )
    return 1e-6 * above / (1 + 19.67348e-3 * t)


@dataclass(frozen=True, slots=True)
class Heated:
    """Water that is heated with nothing taken from it: its litres at the beginning, temperature and gauge
    pressure then, the heat put in, and the litres of gas above it. Growth of the tube: by warmth in
    length, 1/K, and by pressure in content, a bar."""

    content_l: float
    from_c: float
    from_bar: float
    power_kw: float
    gas_l: float = 0.0
    stretch_per_bar: float = STRETCH_PER_BAR
    growth_per_k: float = COPPER_PER_K

    def __post_init__(self) -> None:
        if self.content_l <= 0 or self.power_kw <= 0 or self.gas_l < 0 or self.from_bar <= -ATMOSPHERE_BAR:
            raise ValueError("it needs water, heat, a pressure above vacuum and no less than no gas")

    @property
    def mass_kg(self) -> float:
        """The water that is heated."""
        return self.content_l * density_kg_m3(self.from_c) / 1000

    def swell_share(self, to_c: float) -> float:
        """The water's swell less the tube's growth by warmth, as a share of the content."""
        return expansion(self.from_c, to_c) - 3 * self.growth_per_k * (to_c - self.from_c)

    def gives_per_bar(self, to_c: float) -> float:
        """Compressibility, mean of the beginning's and that temperature's, and stretch."""
        water = (compressibility_per_bar(self.from_c) + compressibility_per_bar(to_c)) / 2
        return water + self.stretch_per_bar

    def seconds(self, to_c: float) -> float:
        """How long it takes to heat it: the integral of m c/P, exact where heat capacity is a straight line."""
        low, high = sorted((self.from_c, to_c))
        steps = [low, *(each for each in KNOTS_C if low < each < high), high]
        joules = sum(
            (heat_capacity_j_kgk(a) + heat_capacity_j_kgk(b)) / 2 * (b - a) for a, b in pairwise(steps)
        )
        return self.mass_kg * joules / (self.power_kw * 1000) * (1 if to_c >= self.from_c else -1)

    def pressure_bar(self, to_c: float) -> float:
        """The gauge pressure at that temperature, nothing let out: within 2 % of what an integrator finds.

        It falls at first in water below some 8 °C, which swells less than the tube grows.
        """
        start = self.from_bar + ATMOSPHERE_BAR
        give = self.content_l * self.gives_per_bar(to_c)
        swell = self.content_l * self.swell_share(to_c)
        half = (self.gas_l - give * start - swell) / 2
        root = hypot(half, (give * self.gas_l * start) ** 0.5)
        # Of the two forms of the positive root, the one that does not subtract like from like.
        absolute = self.gas_l * start / (half + root) if half > 0 else (root - half) / give
        return absolute - ATMOSPHERE_BAR

    def temperature_at_bar(self, bar: float, hottest_c: float) -> float | None:
        """The temperature at which it comes to that pressure; None where it does not by `hottest_c`.
        By halving, to a millionth of a degree: it is crossed once, after any fall at the beginning."""
        if self.pressure_bar(hottest_c) < bar:
            return None
        low, high = self.from_c, hottest_c
        if self.pressure_bar(low) >= bar:
            return low
        while high - low > 1e-6:
            middle = (low + high) / 2
            low, high = (middle, high) if self.pressure_bar(middle) < bar else (low, middle)
        return high


@dataclass(frozen=True, slots=True)
class Moment:
    """One row of a rise: seconds from the start, the water's temperature and gauge pressure, and the
    litres (as swollen) that the safety valve has let out by then."""

    seconds: float
    temperature_c: float
    bar: float
    let_out_l: float = 0.0


@dataclass(frozen=True, slots=True)
class Rise:
    """Temperature and pressure in time, in order. `lifts`: the moment at which the safety valve opens."""

    rows: tuple[Moment, ...]
    lifts: Moment | None = None

    @property
    def end(self) -> Moment:
        """The last row."""
        return self.rows[-1]


def rise(heated: Heated, hottest_c: float, *, valve_bar: float | None = None, rows: int = 25) -> Rise:
    """The rise to `hottest_c`, in so many rows of one temperature step each, and a third as many more up to
    where the valve lifts. With a safety valve the pressure stays at its setting once it has lifted, and
    what swells further goes out; without one it ends at 100 bar.

    A valve needs up to a tenth more than its setting for its full lift; swelling water asks for little
    of it. Raises OutsideLimitsError outside 0 to 110 °C, ValueError where the water is that hot already.
    """
    if hottest_c <= heated.from_c or rows < 3:
        raise ValueError("it has to become hotter, in three rows at the least")
    most = MOST_BAR if valve_bar is None else valve_bar
    reached = heated.temperature_at_bar(most, hottest_c)
    lifts = None
    if valve_bar is not None and reached is not None:
        lifts = Moment(heated.seconds(reached), reached, max(valve_bar, heated.from_bar))
    last = hottest_c if valve_bar is not None or reached is None else reached
    steps = {*_steps(heated.from_c, last, rows - 1)}
    if lifts is not None:
        steps |= {*_steps(heated.from_c, lifts.temperature_c, rows // 3)}
    return Rise(tuple(_moments(heated, sorted(steps), lifts)), lifts)


def _steps(start: float, end: float, count: int) -> Iterator[float]:
    """Equal steps with both ends exactly."""
    for place in range(count):
        yield start + (end - start) * place / count
    yield end


def _moments(heated: Heated, temperatures: Iterable[float], lifts: Moment | None) -> Iterator[Moment]:
    for each in temperatures:
        if lifts is None or each <= lifts.temperature_c:
            bar = heated.pressure_bar(each)
            yield Moment(heated.seconds(each), each, bar if lifts is None else min(bar, lifts.bar))
        else:
            out = let_out_l(heated, lifts.temperature_c, each)
            yield Moment(heated.seconds(each), each, lifts.bar, out)


def let_out_l(heated: Heated, lifted_c: float, to_c: float) -> float:
    """What a safety valve has let out from the temperature at which it lifted, at constant pressure."""
    return heated.content_l * max(0.0, heated.swell_share(to_c) - heated.swell_share(lifted_c))


def bar_per_k(heated: Heated, at_c: float) -> float:
    """How fast the pressure of water shut in rises: (thermal expansion − tube's) / (compressibility + stretch)."""
    half = 0.05
    low, high = max(LEAST_C, at_c - half), min(MOST_C, at_c + half)
    water = expansion(low, high) / (high - low)
    give = compressibility_per_bar(at_c) + heated.stretch_per_bar
    return (water - 3 * heated.growth_per_k) / give


def after_cooling_bar(heated: Heated, lost_kg: float) -> float | None:
    """The pressure at the beginning's temperature once so much water is lost, by Boyle's law in the gas;
    None where there is no gas: the pressure is then gone altogether."""
    if heated.gas_l <= 0:
        return None if lost_kg > 0 else heated.from_bar
    litres = lost_kg / density_kg_m3(heated.from_c) * 1000
    absolute = (heated.from_bar + ATMOSPHERE_BAR) * heated.gas_l / (heated.gas_l + litres)
    return absolute - ATMOSPHERE_BAR


def gas_left_l(vessels: Iterable[tuple[float, float]], bar: float) -> float:
    """The litres of gas in vessels, each told by its volume and charge, at a pressure: Boyle's law."""
    start = bar + ATMOSPHERE_BAR
    return sum(
        min(volume, volume * (charge + ATMOSPHERE_BAR) / start) if volume > 0 else 0.0
        for volume, charge in vessels
    )

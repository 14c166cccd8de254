"""Pressure in time.

How fast the pressure rises while a heat source heats and nothing takes its heat away: with the vessel as
drawn, with the vessel full of water, and with the heat source's own water shut in by valves. The first is a
matter of minutes, the last of seconds: why no valve may ever part a heat source from its safety valve.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.rising import Asked, SourceRise, rises
from circuitcheck.figures.telling import Telling
from circuitcheck.sizing.pressure_in_time import Heated, Rise, after_cooling_bar, bar_per_k
from circuitcheck.sizing.water import density_kg_m3
from circuitcheck.told import a_word, worded

SHOWN_ROWS = 6
TELLING = Telling(
    "pressure-in-time",
    a_word("Pressure in time"),
    a_word(
        "P dt = m c dT\n"
        "V (e − 3 g ΔT) = V k (p − pstart) + G (1 − (pstart + 1)/(p + 1))\n"
        "k = compressibility of water + d/(E s) of the tube; g = growth of the tube by warmth\n"
        "G = gas in the vessel, none where it is full of water\n"
        "safety valve: p stays at psv, what swells further goes out"
    ),
    a_word(
        "A heat balance; Boyle's law; density and compressibility of water: Kell, 1975 (from memory; within 0.1 % of "
        "IAPWS-95); stretch of the tube as in the theory of water hammer, copper of 22 mm (from memory)."
    ),
    a_word(
        "Full output from the fill temperature on, no heat taken away, all the water alike; 0 to 110 °C, 100 bar. "
        "Pressed steel gives more than tube and slows the rise; air in the water slows it much. The valve is taken "
        "to hold its setting, level with the vessel; its full lift needs up to a tenth more."
    ),
)


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each heat source on sealed heating water."""
    return tuple(_one(asked) for asked in rises(plant))


def _one(asked: Asked) -> Figure:
    subject = (asked.source,)
    if asked.why:
        return TELLING.refused(asked.told, subject, asked.why)
    if asked.found is None:
        return TELLING.lacking(asked.told, subject)
    return TELLING.worked(asked.told, subject, _results(asked.found), moves=_moves(asked.found))


def _results(found: SourceRise) -> Iterator[Result]:
    if found.with_vessel is not None:
        yield from _told(a_word("with the vessel"), found.with_vessel, found.valve_bar)
    yield from _told(
        a_word("with the vessel full of water") if found.with_vessel else a_word("as drawn"),
        found.flooded,
        found.valve_bar,
    )
    yield from _lost(found)
    if found.shut_in is not None and found.shut_in_water is not None:
        yield from _shut_in(found.shut_in, found.shut_in_water)


def _told(how: str, risen: Rise, valve_bar: float | None) -> Iterator[Result]:
    if risen.lifts is not None:
        yield Result(worded("{how}: safety valve lifts after", how=how), risen.lifts.seconds, "s")
        yield Result(worded("{how}: it lifts at", how=how), risen.lifts.temperature_c, "°C")
        yield Result(
            worded(
                "{how}: it has let out by {temperature_c:.4g} °C",
                how=how,
                temperature_c=risen.end.temperature_c,
            ),
            risen.end.let_out_l,
            "l",
        )
    elif valve_bar is not None:
        yield Result(worded("{how}: below the safety valve by", how=how), valve_bar - risen.end.bar, "bar")
    yield from _rows(how, risen)


def _rows(how: str, risen: Rise) -> Iterator[Result]:
    """A few rows of the table, the first and the last among them."""
    last = len(risen.rows) - 1
    for place in dict.fromkeys(round(last * each / (SHOWN_ROWS - 1)) for each in range(SHOWN_ROWS)):
        row = risen.rows[place]
        yield Result(
            worded(
                "{how}: after {seconds}, at {temperature_c:.3g} °C",
                how=how,
                seconds=_time(row.seconds),
                temperature_c=row.temperature_c,
            ),
            row.bar,
            "bar",
        )


def _time(seconds: float) -> str:
    if seconds < 100:
        return worded("{seconds:.3g} s", seconds=seconds)
    return worded("{seconds:.3g} min", seconds=seconds / 60)


def _lost(found: SourceRise) -> Iterator[Result]:
    """What the pressure falls to, cold again, once the flooded circuit has lost what swelled."""
    out = found.flooded.end.let_out_l
    if out <= 0:
        return
    kilograms = out * density_kg_m3(found.flooded.end.temperature_c) / 1000
    cold = after_cooling_bar(found.flooded_water, kilograms)
    said = a_word("none: the top draws in air") if cold is None else worded("{cold:.3g} bar", cold=cold)
    yield Result(a_word("with the vessel full of water: pressure cold again"), said, "")


def _shut_in(risen: Rise, water: Heated) -> Iterator[Result]:
    how = a_word("shut in by valves, no safety valve")
    for at in (water.from_c + 5, 60.0):
        if water.from_c < at <= risen.end.temperature_c:
            yield Result(
                worded("{how}: each degree at {at:.3g} °C", how=how, at=at), bar_per_k(water, at), "bar"
            )
    yield from _rows(how, risen)


def _moves(found: SourceRise) -> Iterator[Moves]:
    """What the rise of the water shut in owes to the stretch that is taken for granted."""
    water = found.shut_in_water
    if water is None or found.shut_in is None:
        return
    to_c = found.shut_in.end.temperature_c
    own = water.pressure_bar(to_c)
    for by, share in (("none", 0.0), (a_word("twice as much"), 2.0)):
        moved = replace(water, stretch_per_bar=share * water.stretch_per_bar).pressure_bar(to_c)
        yield Moves(worded("stretch of the tube (shut in, at {to_c:.3g} °C)", to_c=to_c), by, moved / own - 1)

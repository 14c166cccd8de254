"""Expansion vessel of the heating water.

The smallest vessel that takes up the swell and still holds a reserve when all is cold, the charge it
must have, and between what pressures a vessel that is drawn may be filled cold. Too small a vessel makes
the safety valve weep at every heating-up; charged too high it leaves the top radiators short of water.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import isfinite

from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.expansion import Bounds, Expansion, Vessel, safety_valve_field, vessel_fields
from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heated_water import HeatedWater, sealed_waters
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import (
    content_moves,
    refusal,
    setting_origin,
    static_above,
    take_content,
    take_temperatures,
    why_not_reckoned,
)
from circuitcheck.parts.kind import Role
from circuitcheck.sizing import vessel as sizing
from circuitcheck.sizing.water import expansion as swell_of
from circuitcheck.told import a_word, worded

NAME, TITLE = "heating-vessel", "Expansion vessel of the heating water"
FORMULA = (
    "Ve = e × V\n"
    "Vwr = max(0.005 × V, 3 l); a vessel up to 15 l: a fifth of itself\n"
    "p0 = 0.0981 × h + pv + margin\n"
    "pe = psv − 0.5 up to 5 bar, else 0.9 × psv; less height and pump head between valve and vessel\n"
    "Vexp = (Ve + Vwr) × (pe + 1) / (pe − p0)\n"
    "least fill = Vn × (p0 + 1) / (Vn − Vwr) − 1\n"
    "highest fill = Vn × (p0 + 1) / (Vn × (p0 + 1) / (pe + 1) + Ve) − 1\n"
    "cross-check: 0.0491 × V / (1 − (p0 + 1) / (psv − 0.35 + 1)), × 0.8 below 88 °C"
)
SOURCE = (
    "BS EN 12828:2012, Annex D (method and numbers from memory); Boyle's law for the highest fill; "
    "cross-check: the formula that gives the table of BS 5449 and BS 7074-1. The two disagree: final pressure "
    "0.5 or 0.35 bar under the safety valve, swell by density or 4.91 %. Sizes made: common practice, no source."
)
ROUNDING = 1e-9
LIMITS = (
    "Gauge pressures in bar, 1 bar of atmosphere; water without glycol, 0 to 110 °C; pressures at the vessel. "
    "Several vessels: as one, with the highest least charge and the lowest final pressure of theirs."
)


@dataclass(frozen=True, slots=True)
class _Asked:
    """All numbers that the size rests on. Pressures at the vessel."""

    content_l: float
    fraction: float
    charge_bar: float
    final_bar: float
    valve_bar: float
    hottest_c: float

    @property
    def demand(self) -> sizing.Demand:
        return sizing.demand(
            self.content_l,
            self.fraction,
            self.charge_bar,
            self.final_bar,
            safety_valve_bar=self.valve_bar,
            temperature_c=self.hottest_c,
        )

    @property
    def needed_l(self) -> float:
        """The larger of the two methods."""
        demand = self.demand
        return max(demand.least_l, demand.bs_l)


CHECKS = ("vessel-too-small", "vessel-precharge-wrong", "fill-pressure-below-reserve")
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each sealed heating water."""
    return tuple(_one(plant, water) for water in sealed_waters(plant))


def _one(plant: Plant, water: HeatedWater) -> Figure:
    gathering, expansion = Gathering(plant), water.expansion
    subject = (*water.parts, *(each for each in _vessel_parts(water) if each not in water.parts))
    why = why_not_reckoned(expansion)
    if not why and not expansion.safety_valves:
        why = a_word("no safety valve stands on this water, so nothing sets its highest pressure")
    asked = None if why else _gathered(gathering, water)
    if asked is None:
        return refusal(
            NAME, TITLE, subject, gathering, formula=FORMULA, source=SOURCE, limits=LIMITS, why=why
        )
    demand = asked.demand
    gathering.add("e", a_word("Share by which the water swells"), asked.fraction, "", "figure swell")
    results = [*_needed(asked, demand)]
    for place in water.reached(Role.HOLDS_EXPANSION):
        results += _given(gathering, place, water, asked)
    return Figure(
        NAME,
        TITLE,
        subject,
        tuple(results),
        FORMULA,
        gathering.inputs,
        SOURCE,
        LIMITS,
        moves=tuple(_moves(plant, water, asked)),
    )


def _vessel_parts(water: HeatedWater) -> tuple[str, ...]:
    return tuple(place.part for place in water.reached(Role.HOLDS_EXPANSION))


def _gathered(gathering: Gathering, water: HeatedWater) -> _Asked | None:
    """Every number, each an input; None where one is missing."""
    expansion = water.expansion
    content = take_content(gathering, water.body)
    cold, hot = take_temperatures(gathering, expansion)
    charge = _charge(gathering, water, hot)
    valve = _lowest_setting(gathering, expansion)
    final = _final(gathering, expansion, valve)
    if content is None or cold is None or hot is None or charge is None or valve is None or final is None:
        return None
    return _Asked(content, max(0.0, swell_of(cold, hot)), charge, final, valve, hot)


def _charge(gathering: Gathering, water: HeatedWater, hot: float | None) -> float | None:
    """The highest of the vessels' least charges; of one beside the heat source where none is drawn."""
    places = _vessel_parts(water) or water.parts[:1]
    margin = gathering.design("safety_margin_bar", a_word("margin"), a_word("Margin over the static height"))
    statics = [static_above(water.expansion, part) for part in places]
    highest = max(statics, key=lambda each: each.high)
    for each in statics:
        gathering.lacks(*each.missing)
    if margin is None or hot is None or any(not each.known for each in statics):
        return None
    _add_static(gathering, highest)
    vapour = sizing.vapour_bar(hot)
    if vapour:
        gathering.add(
            "pv",
            a_word("Vapour pressure over atmospheric"),
            vapour,
            "bar",
            a_word("steam tables (from memory)"),
        )
    charge = sizing.least_precharge_bar(highest.low, hot, margin)
    gathering.add("p0", a_word("Least charge"), charge, "bar", a_word("worked: 0.0981 × h + pv + margin"))
    return charge


def _add_static(gathering: Gathering, static: Bounds) -> None:
    stated = gathering.plant.design("static_height_m") is not None
    origin = "given design.static_height_m" if stated else a_word("given heights and rises of the parts")
    gathering.add("h", a_word("Top of the water above the vessel"), static.low, "m", origin)


def _lowest_setting(gathering: Gathering, expansion: Expansion) -> float | None:
    """The lowest setting of the safety valves; None where one is not known."""
    settings = {}
    for valve in expansion.safety_valves:
        setting = expansion.setting_bar(valve)
        if setting is None:
            gathering.lacks(safety_valve_field(valve))
        else:
            settings[valve] = setting
    if len(settings) < len(expansion.safety_valves):
        return None
    lowest = min(settings, key=lambda valve: settings[valve])
    gathering.add(
        "psv", a_word("Safety valve set at"), settings[lowest], "bar", setting_origin(gathering.plant, lowest)
    )
    return settings[lowest]


def _final(gathering: Gathering, expansion: Expansion, valve: float | None) -> float | None:
    """The lowest of the highest pressures at the vessels; under the valve alone where none is drawn."""
    finals = [each.final_bar for each in expansion.vessels]
    for each in finals:
        gathering.lacks(*each.missing)
    for vessel in expansion.vessels if valve is None else ():
        for each_valve in expansion.safety_valves:
            if gathering.plant.heights.difference(vessel.part, each_valve.part) is None:
                gathering.lacks(*gathering.plant.heights.missing_for((vessel.part, each_valve.part)))
    if valve is None or any(not each.known for each in finals):
        return None
    final = min((each.low for each in finals), default=sizing.final_bar(valve))
    less = sizing.final_bar(valve) - final
    how = (
        a_word("worked from psv")
        if abs(less) < 1e-9
        else a_word("worked from psv, height and pump between valve and vessel")
    )
    gathering.add("pe", a_word("Highest pressure at the vessel"), final, "bar", how)
    return final


def _needed(asked: _Asked, demand: sizing.Demand) -> Iterator[Result]:
    yield Result("Swell", demand.swell_l, "l")
    yield Result(a_word("Charge, at least"), demand.precharge_bar, "bar")
    if not isfinite(demand.least_l):
        yield Result(
            a_word("Smallest vessel by BS EN 12828"),
            a_word("none serves: the charge is no lower than pe"),
            "",
        )
        return
    yield Result(a_word("Smallest vessel by BS EN 12828"), demand.least_l, "l")
    yield Result(a_word("Its reserve when cold"), sizing.reserve_l(demand.least_l, asked.content_l), "l")
    if not isfinite(demand.bs_l):
        yield Result(a_word("By the form of BS 5449 and BS 7074-1"), a_word("none serves"), "")
        return
    yield Result(a_word("By the form of BS 5449 and BS 7074-1"), demand.bs_l, "l")
    made = sizing.next_made_l(asked.needed_l)
    if made is None:
        yield Result(
            a_word("Next size made for the larger of the two"),
            a_word("none is made so large: fit several"),
            "",
        )
        return
    yield Result(a_word("Next size made for the larger of the two"), made, "l")
    fill = sizing.cold_fill(made, asked.content_l, demand.swell_l, asked.charge_bar, asked.final_bar)
    yield Result(a_word("That size filled cold, from"), fill.least_bar, "bar")
    yield Result(a_word("That size filled cold, to"), fill.most_bar, "bar")


def _given(gathering: Gathering, place: Placed, water: HeatedWater, asked: _Asked) -> Iterator[Result]:
    """What a vessel that is drawn can do; of several, only what they hold."""
    part, fields = place.part, vessel_fields(place)
    volume = gathering.part(part, fields[0], f"Vn {part}", a_word("Vessel as drawn"), needed=False)
    charge = gathering.part(part, fields[1], f"p0 {part}", a_word("Charge as drawn"), needed=False)
    name = gathering.plant.drawing.name(part)
    name = worded("Vessel in {name}", name=name) if place.device.built_in else name
    if volume is None:
        yield Result(worded("{name} as drawn", name=name), a_word("volume not known"), "")
        return
    yield Result(worded("{name} as drawn", name=name), float(volume), "l")
    if len(water.expansion.vessels) > 1:
        return
    vessel = water.expansion.vessels[0]
    designed = gathering.design(
        "fill_pressure_bar", "pfill", a_word("Fill pressure as designed"), needed=False
    )
    yield from _range(name, float(volume), charge, vessel, asked, designed)


def _range(
    name: str,
    volume: float,
    charge: float | None,
    vessel: Vessel,
    asked: _Asked,
    designed: float | None,
) -> Iterator[Result]:
    """The cold-fill range of a vessel, with its charge as drawn, else with the least one."""
    taken = vessel.least_bar.low if charge is None else float(charge)
    how = a_word("with the least charge") if charge is None else a_word("charged as drawn")
    fill = sizing.cold_fill(volume, asked.content_l, asked.demand.swell_l, taken, vessel.final_bar.low)
    if fill.least_bar > fill.most_bar:
        why = a_word("none: too small, or charged too high")
        yield Result(worded("{name} {how}, cold-fill range", name=name, how=how), why, "")
        return
    yield Result(worded("{name} {how}, filled cold from", name=name, how=how), fill.least_bar, "bar")
    yield Result(worded("{name} {how}, filled cold to", name=name, how=how), fill.most_bar, "bar")
    if designed is not None:
        where = a_word("within that")
        if not fill.least_bar - ROUNDING <= designed <= fill.most_bar + ROUNDING:
            where = a_word("below that") if designed < fill.least_bar else a_word("above that")
        yield Result(worded("Fill pressure as designed ({where})", where=where), float(designed), "bar")


def _moves(plant: Plant, water: HeatedWater, asked: _Asked) -> Iterator[Moves]:
    """How far the size needed moves with each default it rests on."""

    def share(other: _Asked) -> float:
        return other.needed_l / asked.needed_l - 1

    if not isfinite(asked.needed_l) or asked.needed_l <= 0:
        return
    for each in content_moves(plant, water.body):
        moved = replace(asked, content_l=asked.content_l * (1 + each.share))
        yield Moves(each.field, each.by, share(moved))
    if "safety_margin_bar" not in plant.drawing.design:
        yield Moves(
            "design.safety_margin_bar",
            a_word("0.2 bar instead of 0.3 (smallest vessel)"),
            share(replace(asked, charge_bar=asked.charge_bar - 0.1)),
        )
    for valve in water.expansion.safety_valves:
        own = plant.drawing.components[valve.part].data
        if not valve.device.built_in and "set_pressure_bar" not in own and asked.valve_bar == 3:
            moved = replace(asked, final_bar=asked.final_bar - 0.5, valve_bar=asked.valve_bar - 0.5)
            yield Moves(
                f"{valve.part}.set_pressure_bar",
                a_word("2.5 bar instead of 3 (smallest vessel)"),
                share(moved),
            )

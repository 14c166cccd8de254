"""What one body of heated water asks of its expansion vessels, and what they can take up.

Each number that is not known has its bounds, and the fields that would tell it: where even the worst
of them serves, or even the best does not, the answer stands without it.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from math import inf

from circuitcheck.circuit.bodies import Heated
from circuitcheck.circuit.isolation import reaches
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.pump_sides import PumpSides, pump_sides
from circuitcheck.figures.content import Content
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role
from circuitcheck.sizing import vessel as sizing
from circuitcheck.sizing.water import MOST_C, expansion

DENSEST_C = 4.0
PRECHARGE_TOLERANCE_BAR = 0.1
"""A charge this much under what it should be still passes (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Bounds:
    """A number between two bounds, and the fields that would have to be known for it to be one number."""

    low: float
    high: float
    missing: tuple[str, ...] = ()

    @property
    def known(self) -> bool:
        """Whether it is one number."""
        return not self.missing


def exactly(value: float) -> Bounds:
    """A number that is known."""
    return Bounds(value, value)


@dataclass(frozen=True, slots=True)
class Vessel:
    """One vessel as it stands: its volume, its charge as set and as sizing takes it, and the highest
    pressure there. `set_bar` None: the charge is not known."""

    part: str
    water: int
    volume_l: Bounds
    set_bar: float | None
    charge_bar: Bounds
    least_bar: Bounds
    final_bar: Bounds


@dataclass(frozen=True, slots=True)
class Reckoned:
    """Demand and vessels in numbers, all at their best or all at their worst.

    `needed_l` is the smallest volume that serves with the charges and pressures there are, infinite
    where none does; `by_fill` says that the fill pressure asks for more than the reserve does.
    """

    content_l: float
    swell_l: float
    reserve_l: float
    volume_l: float
    needed_l: float
    charge_bar: float
    final_bar: float
    by_fill: bool

    @property
    def serves(self) -> bool:
        """Whether the vessels are large enough; exactly large enough is."""
        return (
            self.volume_l >= self.needed_l - 1e-9 * max(1.0, self.needed_l) if self.needed_l < inf else False
        )


class Expansion:
    """The vessels of one body of heated water and what is asked of them."""

    def __init__(self, plant: Plant, heated: Heated) -> None:
        self.plant = plant
        self.heated = heated

    @cached_property
    def reach(self) -> frozenset[int]:
        """Every water joined by ways that pressure passes both ways, with all valves open."""
        return reaches(self.plant.circuit, self.heated.water)

    def _reached(self, role: Role) -> tuple[Placed, ...]:
        circuit = self.plant.circuit
        return tuple(place for place in circuit.devices(role) if circuit.water(place.node) in self.reach)

    @cached_property
    def safety_valves(self) -> tuple[Placed, ...]:
        """The safety valves within reach."""
        return self._reached(Role.RELIEVES_HEATING)

    @cached_property
    def hottest_c(self) -> Bounds:
        """The highest temperature: of the design, or the limit of a heat source that states one."""
        plant, body = self.plant, self.heated.body
        sources = plant.circuit.devices(Role.HEATS)
        own = [place.part for place in sources if plant.bodies.of(place.other) == body]
        parts = own or [place.part for place in sources]
        limits = [plant.value(part, "maximum_flow_temperature_c") for part in parts]
        known = [each for each in (plant.design("flow_temperature_c"), *limits) if each is not None]
        if known:
            return exactly(float(max(known)))
        return Bounds(-inf, inf, ("design.flow_temperature_c",))

    @cached_property
    def glycol(self) -> bool:
        """Whether there is glycol in the water: it swells more than water, by how much is not reckoned."""
        return bool(self.plant.design("glycol_percent"))

    @cached_property
    def beyond_tables(self) -> bool:
        """Whether the water becomes hotter or colder than the formulas reach."""
        cold = self.plant.design("fill_temperature_c")
        hot = self.hottest_c.high
        return (hot < inf and not 0 <= hot <= MOST_C) or (cold is not None and not 0 <= cold <= MOST_C)

    @cached_property
    def swell(self) -> Bounds:
        """The fraction by which the water swells from fill to hottest."""
        cold = self.plant.design("fill_temperature_c")
        missing = self.hottest_c.missing + (() if cold is not None else ("design.fill_temperature_c",))
        if self.beyond_tables:
            return Bounds(0, inf, missing)
        hot = self.hottest_c.high if self.hottest_c.known else None
        low = 0.0 if cold is None or hot is None else max(0.0, expansion(cold, hot))
        if hot is None or self.glycol:
            return Bounds(low, inf, missing)
        return Bounds(
            low, low if cold is not None else max(0.0, expansion(min(DENSEST_C, hot), hot)), missing
        )

    @property
    def refused(self) -> bool:
        """Whether a number is beyond what is reckoned here, though the drawing states all of them."""
        return self.glycol or self.beyond_tables

    @cached_property
    def vessels(self) -> tuple[Vessel, ...]:
        """The vessels within reach, those built in among them."""
        return tuple(self._vessel(place) for place in self._reached(Role.HOLDS_EXPANSION))

    def _vessel(self, place: Placed) -> Vessel:
        plant = self.plant
        volume_field, charge_field = vessel_fields(place)
        volume = plant.value(place.part, volume_field)
        stated = plant.value(place.part, charge_field)
        least = self._least_charge(place.part)
        return Vessel(
            place.part,
            plant.circuit.water(place.node),
            exactly(volume) if volume is not None else Bounds(0, inf, (f"{place.part}.{volume_field}",)),
            stated,
            self._charge(stated, least, f"{place.part}.{charge_field}"),
            least,
            self._final(place),
        )

    def _charge(self, stated: float | None, least: Bounds, field: str) -> Bounds:
        """The charge that sizing takes: as set where that is right, else as it must be set."""
        fill = self.plant.design("fill_pressure_bar")
        most = inf if fill is None else max(fill, least.high)
        if stated is None:
            return Bounds(least.low, most, (field, *least.missing))
        if stated > most:
            return least
        if least.known:
            right = stated >= least.low - PRECHARGE_TOLERANCE_BAR - 1e-9
            return exactly(stated if right else least.low)
        return Bounds(min(stated, least.low), max(stated, least.high), least.missing)

    def _least_charge(self, part: str) -> Bounds:
        """The least charge of a vessel: the static height over it, vapour and a margin."""
        static, margin = self.static_m(part), self.plant.design("safety_margin_bar")
        hot = self.hottest_c
        low_hot, high_hot = (hot.low, hot.high) if hot.known else (0.0, MOST_C)
        missing = static.missing + (() if margin is not None else ("design.safety_margin_bar",))
        low = sizing.least_precharge_bar(static.low, low_hot, margin or 0.0)
        high = sizing.least_precharge_bar(static.high, high_hot, inf if margin is None else margin)
        return Bounds(low, high, missing + (() if low == high else hot.missing))

    def static_m(self, part: str) -> Bounds:
        """How far the top of the system stands above a vessel.

        The design states it for the lowest vessel. Where it does not, the highest part does, if the
        height of every part on this water is known.
        """
        plant = self.plant
        stated, own = plant.design("static_height_m"), plant.heights.of(part)
        if stated is not None:
            parts = {place.part for place in self._reached(Role.HOLDS_EXPANSION)}
            known = [height for each in parts if (height := plant.heights.of(each)) is not None]
            all_known = own is not None and len(known) == len(parts)
            above_lowest = own - min(known, default=own) if own is not None and all_known else 0.0
            return exactly(max(0.0, stated - above_lowest))
        if own is None:
            return Bounds(0.0, inf, ("design.static_height_m",))
        heights = [plant.heights.of(each) for each in plant.circuit.parts_in(self.reach)]
        if None in heights:
            known = [height for height in heights if height is not None]
            return Bounds(max(known, default=own) - own, inf, ("design.static_height_m",))
        return exactly(max((height for height in heights if height is not None), default=own) - own)

    def _final(self, vessel: Placed) -> Bounds:
        """The highest pressure at a vessel: of the safety valve that allows it least.

        Less what the vessel stands above the valve, and less the shut-off head of a pump that drives
        from the vessel's side to the valve's, since that is what the valve sees when the valves shut; one
        that drives round a separator never sees them shut.
        """
        each = [self._under(vessel, valve) for valve in self.safety_valves]
        if not each:
            return Bounds(0.0, inf)  # nothing limits it
        missing = dict.fromkeys(name for bounds in each for name in bounds.missing)
        low, high = min(bounds.low for bounds in each), min(bounds.high for bounds in each)
        return Bounds(low, high, tuple(missing) if low != high else ())

    def setting_bar(self, valve: Placed) -> float | None:
        """What a safety valve is set at; None where it is not known."""
        return safety_valve_set_bar(self.plant, valve)

    def _under(self, vessel: Placed, valve: Placed) -> Bounds:
        setting = self.setting_bar(valve)
        if setting is None:
            return Bounds(-inf, inf, (safety_valve_field(valve),))
        final = sizing.final_bar(setting)
        low, high = final, final
        missing: list[str] = []
        above = self.plant.heights.difference(vessel.part, valve.part)
        if above is not None:
            low, high = low + sizing.static_bar(above), high + sizing.static_bar(above)
        else:
            missing += self.plant.heights.missing_for((vessel.part, valve.part))
            low, high = -inf, high + sizing.static_bar(self.static_m(vessel.part).high)
        heads = []
        for sides in self._pump_sides:
            apart = sides.delivers_to(valve.node) and not sides.delivers_to(vessel.node)
            if apart and not sides.eased:
                head = self.plant.value(sides.pump.part, "shut_off_head_m")
                heads.append(head)
                missing += [f"{sides.pump.part}.shut_off_head_m"] if head is None else []
        known = max((head for head in heads if head is not None), default=0.0)
        low = -inf if None in heads else low - sizing.static_bar(known)
        return Bounds(low, high - sizing.static_bar(known), tuple(missing))

    @cached_property
    def _pump_sides(self) -> tuple[PumpSides, ...]:
        return tuple(
            sides_of(self.plant, pump)
            for pump in self.plant.circuit.devices(Role.PUMPS)
            if self.plant.bodies.of(pump.node) == self.heated.body
        )

    def reckoned(self, content: Content, vessels: Iterable[Vessel], *, best: bool) -> Reckoned:
        """What that content asks of these vessels, every unknown at its best or at its worst."""
        chosen = tuple(vessels)
        most = content.litres if not content.missing else content.most_litres
        litres = content.litres if best else (inf if most is None else most)
        fraction = self.swell.low if best else self.swell.high
        swell = 0.0 if 0 in (fraction, litres) else fraction * litres
        volumes = [each.volume_l.high if best else each.volume_l.low for each in chosen]
        charges = [each.charge_bar.low if best else each.charge_bar.high for each in chosen]
        finals = [each.final_bar.high if best else each.final_bar.low for each in chosen]
        fill = self.plant.design("fill_pressure_bar")
        total = sum(volumes)
        weights = (
            [1 / len(volumes)] * len(volumes) if total in (0, inf) else [each / total for each in volumes]
        )
        share = above = 0.0
        for weight, charge, final in zip(weights, charges, finals, strict=True):
            share += weight * _share(charge, final)
            above += weight * (
                _share(charge, final) - (0 if fill is None else _share(charge, min(fill, final)))
            )
        by_reserve = sizing.least_volume_l(swell, litres, share) if swell < inf else inf
        by_fill = (swell / above if above > 0 else inf) if swell else 0.0
        charge = sum(weight * each for weight, each in zip(weights, charges, strict=True))
        return Reckoned(
            content_l=litres,
            swell_l=swell,
            reserve_l=sizing.reserve_l(total, litres),
            volume_l=total,
            needed_l=max(by_reserve, by_fill),
            charge_bar=charge,
            final_bar=min(finals),
            by_fill=by_fill > by_reserve,
        )


def expansion_of(plant: Plant, heated: Heated) -> Expansion:
    """The vessels of a body of heated water; worked once for a plant."""
    return plant.kept(f"expansion {heated.part} {heated.water}", lambda: Expansion(plant, heated))


def sides_of(plant: Plant, pump: Placed) -> PumpSides:
    """The two sides of a pump; walked once for a plant."""
    return plant.kept(f"pump sides {pump.part}", lambda: pump_sides(plant.circuit, pump))


def _share(charge_bar: float, final_bar: float) -> float:
    if charge_bar == inf or final_bar == -inf:
        return 0.0
    return 1.0 if final_bar == inf else sizing.room_share(charge_bar, final_bar)


def vessel_fields(place: Placed) -> tuple[str, str]:
    """The fields that hold a vessel's volume and its charge."""
    if place.device.built_in:
        return "built_in_vessel_l", "built_in_vessel_precharge_bar"
    return "volume_l", "precharge_bar"


def safety_valve_field(valve: Placed) -> str:
    """The field, as `id.field`, that holds a safety valve's setting."""
    return f"{valve.part}.{'built_in_safety_valve_bar' if valve.device.built_in else 'set_pressure_bar'}"


def safety_valve_set_bar(plant: Plant, valve: Placed) -> float | None:
    """What a safety valve is set at in bar; None where it is not known.

    One that is built in and states none is set at what its heat source is made for.
    """
    if not valve.device.built_in:
        stated = plant.value(valve.part, "set_pressure_bar")
    else:
        stated = plant.value(valve.part, "built_in_safety_valve_bar")
        if stated is None:
            stated = plant.value(valve.part, "maximum_pressure_bar")
    return None if stated is None else float(stated)

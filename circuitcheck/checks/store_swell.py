"""How much a mains-fed store's water swells, and between what pressures its vessel must take that up."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

from circuitcheck.checks.case import Case
from circuitcheck.checks.store_feed import Feed, feeds
from circuitcheck.checks.store_water import StoreWater, store_waters
from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.hot_water import secondary_pipes
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.store_vessel import swell_l
from circuitcheck.sizing.water import LEAST_C, MOST_C

FILL_TEMPERATURE = "fill_temperature_c"


@dataclass(frozen=True, slots=True)
class Known:
    """A number between `least` and `most` (None: nothing says so), and what is missing to know it."""

    least: float
    most: float | None
    missing: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Pressure:
    """A pressure in bar (None: not known), the part it is set at, and what is missing to know it."""

    bar: float | None
    part: str = ""
    missing: tuple[str, ...] = ()


def relief_field(case: Case, part: str) -> str:
    """The field in which an expansion relief valve's setting stands."""
    names = {field.name for field in case.drawing.components[part].kind.own_fields}
    return "relief_pressure_bar" if "relief_pressure_bar" in names else "set_pressure_bar"


def is_set_in_the_store(valve: Placed) -> bool:
    """Whether a relief valve is built into a store, so that its setting is in no drawing."""
    return valve.device.built_in and valve.device.port == "relief"


@dataclass(frozen=True)
class Shared:
    """The mains-fed stores whose water is one, by ways that pressure passes both ways."""

    case: Case
    waters: tuple[StoreWater, ...]

    @property
    def stores(self) -> tuple[str, ...]:
        """Their ids, in the order of the drawing."""
        return tuple(water.store for water in self.waters)

    @cached_property
    def vessels(self) -> tuple[str, ...]:
        """The expansion vessels that they share."""
        places = self.waters[0].reached(Role.HOLDS_EXPANSION)
        return tuple(place.part for place in places if not place.device.built_in)

    @cached_property
    def fill(self) -> Pressure | None:
        """The pressure they stand at cold: what the feed is reduced to, else the main's standing
        pressure; the highest of several. None where nothing feeds them."""
        found = [
            pressure for feed in feeds(self.case) if feed.water in self.waters for pressure in self._fed(feed)
        ]
        if not found:
            return None
        missing = tuple(dict.fromkeys(name for pressure in found for name in pressure.missing))
        if missing:
            return Pressure(None, missing=missing)
        return max(found, key=lambda pressure: pressure.bar or 0.0)

    @property
    def reduced(self) -> Pressure | None:
        """What reducing valves hold them to; None where some way in has none, or nothing feeds them."""
        own = [feed for feed in feeds(self.case) if feed.water in self.waters]
        return self.fill if all(feed.reduced is not None for feed in own) else None

    def _fed(self, feed: Feed) -> Iterator[Pressure]:
        if feed.reduced is not None:
            yield Pressure(feed.reduced.bar, feed.reduced.part, feed.reduced.missing)
            return
        for main in feed.mains:
            bar = self.case.value(main, "standing_pressure_bar")
            missing = () if bar is not None else (f"{main}.standing_pressure_bar",)
            yield Pressure(bar, main, missing)

    @cached_property
    def relief(self) -> Pressure | None:
        """The lowest setting of the expansion relief valves on that water. None where there is none.

        One built into a store opens at the store's highest pressure at the latest: then `bar` is
        that, and `missing` says that it is not known.
        """
        places = self.waters[0].reached(Role.RELIEVES_BY_PRESSURE)
        found = [self._opens(place) for place in places]
        if not found:
            return None
        known = [pressure for pressure in found if pressure.bar is not None]
        missing = tuple(dict.fromkeys(name for pressure in found for name in pressure.missing))
        lowest = min(known, key=lambda pressure: pressure.bar or 0.0, default=Pressure(None))
        return Pressure(lowest.bar, lowest.part, missing)

    def _opens(self, valve: Placed) -> Pressure:
        if is_set_in_the_store(valve):
            bar = self.case.value(valve.part, "maximum_pressure_bar")
            field = "built_in" if bar is not None else "maximum_pressure_bar"
            return Pressure(bar, valve.part, (f"{valve.part}.{field}",))
        field = relief_field(self.case, valve.part)
        bar = self.case.value(valve.part, field)
        return Pressure(bar, valve.part, () if bar is not None else (f"{valve.part}.{field}",))

    @cached_property
    def swell(self) -> Known:
        """Litres by which the water of the stores, and of their secondary circuits, swells."""
        least, most, missing = 0.0, 0.0, list[str]()
        unbounded = False
        for water in self.waters:
            share = self._of_store(water.store)
            least += share.least
            most += share.most or 0.0
            unbounded |= share.most is None
            missing += share.missing
        return Known(least, None if unbounded else most, tuple(dict.fromkeys(missing)))

    def _of_store(self, store: str) -> Known:
        internal = self.case.value(store, "internal_expansion")
        if internal:
            return Known(0.0, 0.0)
        cold, hot = self.case.design(FILL_TEMPERATURE), self.case.value(store, "thermostat_c")
        missing = [f"{store}.internal_expansion"] if internal is None else []
        missing += [] if _in_range(cold) else [f"design.{FILL_TEMPERATURE}"]
        missing += [] if _in_range(hot) else [f"{store}.thermostat_c"]
        volume = self.case.value(store, "volume_l")
        missing += [] if volume is not None else [f"{store}.volume_l"]
        round_ = self._secondary(store)
        missing += round_.missing
        if not (_in_range(cold) and _in_range(hot)):
            return Known(0.0, None, tuple(missing))
        least = swell_l((volume or 0.0) + round_.least, cold, hot)
        most = None
        if volume is not None and round_.most is not None:
            most = swell_l(volume + round_.most, cold, hot)
        return Known(0.0 if internal is None else least, most, tuple(missing))

    def _secondary(self, store: str) -> Known:
        """Litres in a store's secondary circuit, where that is more than the stated content."""
        pipes = secondary_pipes(self.case, store)
        if not pipes:
            return Known(0.0, 0.0)
        limit = self.case.limit("store.secondary_content_l").value
        litres = [self.case.contents.pipe_litres(pipe) for pipe in pipes]
        known = sum(each for each, _ in litres if each is not None)
        missing = tuple(name for _, names in litres for name in names)
        least = known if known > limit else 0.0
        return Known(least, None if missing else least, missing)


def _in_range(temperature_c: float | None) -> bool:
    return temperature_c is not None and LEAST_C <= temperature_c <= MOST_C


def shared_waters(case: Case) -> tuple[Shared, ...]:
    """The mains-fed stores by the water they share, in the order of the drawing."""
    groups: dict[frozenset[int], list[StoreWater]] = {}
    for water in store_waters(case):
        groups.setdefault(water.reach, []).append(water)
    return tuple(Shared(case, tuple(waters)) for waters in groups.values())

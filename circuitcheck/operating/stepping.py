"""One standing in time: how heat is carried, put in and taken out, step by step (Runge and Kutta's fourth order)."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from circuitcheck.operating.heat import BAND_K, RESETS_BELOW_K, TRIPS_C, Heat
from circuitcheck.operating.state import State
from circuitcheck.operating.streams import Streams
from circuitcheck.operating.water_tables import celsius_of
from circuitcheck.sizing.emitter import EXPONENT

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

STEP_S = 2.0
STABLE = 0.9
"""The longest step, as a share of the shortest stay of water in a group."""


class Stepper:
    """Carries the heat of one standing on. Water stays where it is; what it swells is `Settling`'s."""

    def __init__(self, heat: Heat, streams: Streams, firing: frozenset[str], step_s: float = STEP_S) -> None:
        import numpy as np

        self._np = np
        self.heat, self.streams = heat, streams
        self._firing = firing
        count = streams.count
        self._sources = np.array([streams.group[each.cell] for each in heat.sources], dtype=np.intp)
        self._emitters = np.array([streams.group[each.cell] for each in heat.emitters], dtype=np.intp)
        self._coils = np.array([streams.group[each.cell] for each in heat.coils], dtype=np.intp)
        self._source_in = self._inlets((each.cell for each in heat.sources), count)
        self._emitter_in = self._inlets((each.cell for each in heat.emitters), count)
        self._coil_in = self._inlets((each.cell for each in heat.coils), count)
        self._source_groups: list[int] = self._sources.tolist()
        self._emitted = np.array([each.watts for each in heat.emitters])
        self._room = np.array([each.room_c for each in heat.emitters])
        self._excess = np.array([each.excess_k for each in heat.emitters])
        self._most = np.array([1.0 if each.is_limited else np.inf for each in heat.emitters])
        self._coil_w_k = np.array([each.w_k for each in heat.coils])
        self._store_kg = np.array([max(each.store_kg, 1e-9) for each in heat.coils])
        self._walls = [
            (int(streams.group[each.one]), int(streams.group[each.other]), each.w_k)
            for each in heat.exchangers
        ]
        self.step_s = step_s
        self.kg: Floats = np.zeros(count)
        self.y: Floats = np.zeros(count)
        # Where heat is carried, for what goes out and what comes in at one go.
        self._from = np.concatenate((streams.start, streams.start))
        self._to = np.concatenate((streams.end, streams.start + count))
        self._carries = np.concatenate((streams.kg_s, streams.kg_s))
        self._share: Floats = np.zeros(0)
        self._celsius: Floats | None = None

    def _inlets(self, cells: Iterable[int], count: int) -> Floats:
        """By row a device, the shares of groups in what flows into it; its own group where nothing does."""
        np, streams = self._np, self.streams
        rows = []
        for cell in cells:
            row = np.zeros(count)
            for group, share in streams.inlet.get(cell, ((int(streams.group[cell]), 1.0),)):
                row[group] += share
            rows.append(row)
        found: Floats = np.array(rows).reshape(len(rows), count)
        return found

    def begin(self, state: State) -> None:
        """Take the water of a state into groups."""
        np, streams = self._np, self.streams
        count = streams.count
        self.kg = np.bincount(streams.group, weights=state.kg, minlength=count)
        self._share = state.kg / self.kg[streams.group]
        joules = np.bincount(streams.group, weights=state.joules, minlength=count)
        self._celsius = None
        # The heat, then two accounts: what was fired and what was given.
        self.y = np.concatenate((joules, state.metal_j, state.store_j, [state.fired_j, state.given_j]))
        flow = np.bincount(streams.end, weights=streams.kg_s, minlength=count)
        stays = self.kg[flow > 0] / flow[flow > 0]
        if len(stays):
            self.step_s = min(self.step_s, STABLE * float(stays.min()))

    @property
    def joules(self) -> Floats:
        """The heat of each group; to be changed in place."""
        return self.y[: self.streams.count]

    @property
    def celsius(self) -> Floats:
        """The temperature of each group; what moves between groups within a step changes it with the next."""
        if self._celsius is None:
            self._celsius = celsius_of(self.joules / self.kg)
        return self._celsius

    @property
    def outlets_c(self) -> Floats:
        """By heat source, its water's temperature."""
        found: Floats = self.celsius[self._sources]
        return found

    @property
    def returns_c(self) -> Floats:
        """By heat source, what flows into it."""
        found: Floats = self._source_in @ self.celsius
        return found

    @property
    def stores_c(self) -> Floats:
        """By store, its temperature."""
        start = self.streams.count + len(self._sources)
        return celsius_of(self.y[start : start + len(self._coils)] / self._store_kg)

    def end(self, state: State) -> None:
        """Give the water of the groups back to a state's cells, each its share."""
        count, sources = self.streams.count, len(self._sources)
        state.kg = self._share * self.kg[self.streams.group]
        state.joules = self._share * self.joules[self.streams.group]
        state.metal_j = self.y[count : count + sources].copy()
        state.store_j = self.y[count + sources : -2].copy()
        state.fired_j, state.given_j = float(self.y[-2]), float(self.y[-1])

    def step(self, seconds: float, tripped: frozenset[str]) -> None:
        """Carry on by so many seconds."""
        on = self._on(tripped)
        y, dt = self.y, seconds
        k1 = self._change(y, on)
        k2 = self._change(y + dt / 2 * k1, on)
        k3 = self._change(y + dt / 2 * k2, on)
        k4 = self._change(y + dt * k3, on)
        self.y = y + dt / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
        self._celsius = None

    def _on(self, tripped: frozenset[str]) -> list[bool]:
        """By heat source, whether it burns."""
        return [each.id in self._firing and each.id not in tripped for each in self.heat.sources]

    def _change(self, y: Floats, on: Sequence[bool]) -> Floats:
        np, streams = self._np, self.streams
        count, sources, coils = streams.count, len(self._sources), len(self._coils)
        j_kg = y[:count] / self.kg
        celsius = celsius_of(j_kg)
        moved = np.bincount(self._to, self._carries * j_kg[self._from], 2 * count)
        change: Floats = np.zeros(len(y))
        np.subtract(moved[:count], moved[count:], out=change[:count])
        if sources:
            fired, passed = self._fired(celsius, y[count : count + sources], on)
            for place, (group, burns, gives) in enumerate(
                zip(self._source_groups, fired, passed, strict=True)
            ):
                change[group] += gives
                change[count + place] = burns - gives
            change[-2] = sum(fired)
        if len(self._emitters):
            given = self._given(celsius)
            np.add.at(change, self._emitters, -given)
            change[-1] = np.add.reduce(given)
        if coils:
            store = y[count + sources : count + sources + coils]
            mean = (celsius[self._coils] + self._coil_in @ celsius) / 2
            through = self._coil_w_k * (mean - celsius_of(store / self._store_kg))
            np.add.at(change, self._coils, -through)
            change[count + sources : count + sources + coils] = through
        for one, other, w_k in self._walls:
            through = w_k * (celsius[one] - celsius[other])
            change[one] -= through
            change[other] += through
        return change

    def _fired(self, celsius: Floats, metal_j: Floats, on: Sequence[bool]) -> tuple[list[float], list[float]]:
        """By heat source: what burns, and what passes into its water. Of so few, numbers are quicker than arrays."""
        fired: list[float] = []
        passed: list[float] = []
        for source, group, held_j, is_on in zip(
            self.heat.sources, self._source_groups, metal_j.tolist(), on, strict=True
        ):
            outlet = float(celsius[group])
            throttle = 1.0
            if source.is_controlled:
                throttle = min(max((source.set_c + BAND_K / 2 - outlet) / BAND_K, 0.0), 1.0)
            burns = source.watts * throttle if is_on else 0.0
            fired.append(burns)
            if source.metal_j_k > 0:
                burns = source.metal_w_k * (held_j / source.metal_j_k - outlet)
            passed.append(burns)
        return fired, passed

    def _given(self, celsius: Floats) -> Floats:
        """By emitter: what it gives to its room."""
        np = self._np
        mean = (celsius[self._emitters] + self._emitter_in @ celsius) / 2
        share = (np.maximum(mean - self._room, 0.0) / self._excess) ** EXPONENT
        found: Floats = self._emitted * np.minimum(share, self._most)
        return found

    def powers_kw(self, tripped: frozenset[str]) -> tuple[float, float]:
        """What burns and what emitters give, at this moment."""
        celsius, count = self.celsius, self.streams.count
        fired = 0.0
        if len(self._sources):
            metal = self.y[count : count + len(self._sources)]
            fired = sum(self._fired(celsius, metal, self._on(tripped))[0])
        given = float(self._given(celsius).sum()) if len(self._emitters) else 0.0
        return fired / 1000, given / 1000


def trips(heat: Heat, outlets_c: Floats, tripped: frozenset[str]) -> frozenset[str]:
    """The sources whose overheat cut-out has tripped by now. One without a stated limit has none."""
    found = set(tripped)
    for source, celsius in zip(heat.sources, outlets_c, strict=True):
        if source.high_limit and source.is_controlled and celsius >= TRIPS_C:
            found.add(source.id)
        elif source.high_limit == "self_reset" and celsius <= TRIPS_C - RESETS_BELOW_K:
            found.discard(source.id)
    return frozenset(found)

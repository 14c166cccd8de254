"""What swelling does to each joined water: its pressure, what goes into vessels, what a safety valve lets out."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.operating.cells import Cell
from circuitcheck.operating.cushion import Balance, Cushion, Holding, Joined, Relief
from circuitcheck.operating.state import State
from circuitcheck.operating.stepping import Stepper
from circuitcheck.operating.water_tables import compressed_at, heat_at, litres_at
from circuitcheck.sizing.pressure_in_time import COPPER_PER_K, STRETCH_PER_BAR

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]
    Places = NDArray[np.intp]

DROP_KG = 5e-5


@dataclass(slots=True)
class _Water:
    """One joined water in numbers: its groups and their litres when filled, its cells, cushions and safety
    valves; what its tube grows for each kelvin, and its room beyond that so that its pressure goes on."""

    groups: Places
    litres: Floats
    cells: Places
    cushions: tuple[int, ...]
    is_open: bool
    reliefs: tuple[Relief, ...]
    bar: float = 0.0
    growth_per_k: float = 0.0
    more_l: float = 0.0
    give: Floats | None = None
    give_of: Floats | None = None


class Settling:
    """Settles the joined waters of one standing. Whatever moves keeps its mass and heat; what swells into a
    vessel counts as warm as the circuit on the whole, as its size is reckoned."""

    def __init__(
        self,
        cells: tuple[Cell, ...],
        held: Holding,
        waters: tuple[Joined, ...],
        stepper: Stepper,
        cold_c: float,
    ) -> None:
        import numpy as np

        self._np, self._held, self._stepper, self._cold_c = np, held, stepper, cold_c
        self._cold_l_kg = float(litres_at(cold_c))
        self._cold_j_kg = float(heat_at(cold_c))
        self._cold_per_bar = float(compressed_at(cold_c))
        group = stepper.streams.group
        litres = np.array([each.litres for each in cells])
        self._waters: list[_Water] = []
        self._volumes: Floats | None = None
        self._of: Floats | None = None
        for each in waters:
            places = np.array(each.cells, dtype=np.intp)
            groups = np.unique(group[places])
            room: Floats = np.zeros(stepper.streams.count)
            np.add.at(room, group[places], litres[places])
            reliefs = tuple(held.reliefs[place] for place in each.reliefs)
            is_open = any(held.cushions[place].is_open for place in each.cushions)
            self._waters.append(_Water(groups, room[groups], places, each.cushions, is_open, reliefs))

    def begin(self, state: State) -> None:
        """Take over the pressures there were: where valves have joined or parted waters, each goes on from
        that of its gas, else from the mean."""
        for water in self._waters:
            gas = self._gas(water, state)
            # The tube's growth counts where nothing but that gives way; a vessel is sized without it.
            water.growth_per_k = 0.0 if gas or water.is_open else 3 * COPPER_PER_K
            water.bar = self._bar_before(water, state)
            water.more_l = 0.0
            if not water.is_open:
                water.more_l = self._balance(water, state).over_l(water.bar)
            self._tell(water, state)

    def _gas(self, water: _Water, state: State) -> tuple[Cushion, ...]:
        """The vessels on it that have their gas."""
        cushions = (self._held.cushions[place] for place in water.cushions)
        return tuple(each for each in cushions if not each.is_open and each.part not in state.flooded)

    def is_stiff(self, cell: int, state: State) -> bool:
        """Whether nothing gives way to a cell's water: neither gas nor an open end nor a safety valve."""
        water = next(each for each in self._waters if cell in each.cells)
        opens = any(not each.is_plugged for each in water.reliefs)
        return not (water.is_open or opens or self._gas(water, state))

    def _bar_before(self, water: _Water, state: State) -> float:
        gas = self._gas(water, state)
        for place in water.cushions:
            cushion = self._held.cushions[place]
            if cushion.is_open:
                return cushion.open_bar
        for place in water.cushions:
            if self._held.cushions[place] in gas:
                return float(state.cushion_bar[place])
        kg = state.kg[water.cells]
        return float((state.bar[water.cells] * kg).sum() / kg.sum())

    def _tell(self, water: _Water, state: State) -> None:
        state.bar[water.cells] = water.bar
        for place in water.cushions:
            state.cushion_bar[place] = water.bar

    def _balance(self, water: _Water, state: State) -> Balance:
        total, stepper = self._np.add.reduce, self._stepper
        kg, celsius = stepper.kg[water.groups], stepper.celsius[water.groups]
        volumes = kg * self._l_kg[water.groups]
        mean = float(total(volumes) / total(kg))
        places = list(water.cushions)
        in_kg, fill_kg = float(state.in_kg[places].sum()), float(state.fill_kg[places].sum())
        flooded = sum(
            self._held.cushions[place].litres
            for place in places
            if self._held.cushions[place].part in state.flooded
        )
        room = water.litres * (1 + water.growth_per_k * (celsius - self._cold_c))
        return Balance(
            float(total(volumes)) + in_kg * mean + fill_kg * self._cold_l_kg,
            float(total(room)) + flooded + water.more_l,
            float(total(self._give(water))),
            self._gas(water, state),
            self._held.fill_bar,
        )

    def settle(self, state: State) -> None:
        """Bring every water to its pressure; let out what a safety valve lets out."""
        lifted = set[str]()
        for water in self._waters:
            out_kg = 0.0
            if not water.is_open:
                balance = self._balance(water, state)
                water.bar = balance.bar(water.bar)
                opens = min(
                    (each for each in water.reliefs if not each.is_plugged), key=_set_bar, default=None
                )
                if opens is not None and water.bar > opens.set_bar:
                    water.bar = opens.set_bar
                    out_kg = max(0.0, balance.over_l(opens.set_bar)) / self._mean_l_kg(water)
                    # Of less than a drop nobody would say that it lifts.
                    lifted |= {opens.part} if out_kg > DROP_KG else set()
            if water.cushions:
                self._share_out(water, state, out_kg)
            elif out_kg:
                self._let_out(water, state, out_kg)
            self._tell(water, state)
        state.lifted = frozenset(lifted)

    @property
    def _l_kg(self) -> Floats:
        """Litres a kilogram, by group; worked out once a step."""
        celsius = self._stepper.celsius
        if self._volumes is None or self._of is not celsius:
            self._of, self._volumes = celsius, litres_at(celsius)
        return self._volumes

    def _give(self, water: _Water) -> Floats:
        """What each group gives for each bar, its tube and itself; worked out once a step."""
        celsius = self._stepper.celsius
        if water.give is None or water.give_of is not celsius:
            mean = (self._cold_per_bar + compressed_at(celsius[water.groups])) / 2
            water.give_of, water.give = celsius, water.litres * (mean + STRETCH_PER_BAR)
        return water.give

    def _mean_l_kg(self, water: _Water) -> float:
        kg = self._stepper.kg[water.groups]
        return float((kg * self._l_kg[water.groups]).sum() / kg.sum())

    def _let_out(self, water: _Water, state: State, out_kg: float) -> None:
        """Out of water that nothing else gives way to: of all of it alike."""
        stepper, groups = self._stepper, water.groups
        share = out_kg / float(stepper.kg[groups].sum())
        state.out_l += out_kg * self._mean_l_kg(water)
        state.out_kg += out_kg
        state.out_j += share * float(stepper.joules[groups].sum())
        stepper.kg[groups] *= 1 - share
        stepper.joules[groups] *= 1 - share

    def _share_out(self, water: _Water, state: State, out_kg: float) -> None:
        """Every group keeps what it has room for; the rest goes into the vessels, and out."""
        np, stepper, groups = self._np, self._stepper, water.groups
        kg, volume, mean = stepper.kg[groups], self._l_kg[groups], self._mean_l_kg(water)
        give = self._give(water) * (water.bar - self._held.fill_bar)
        room = water.litres * (1 + water.more_l / water.litres.sum()) + give
        leaves = kg - room / volume
        heat = stepper.joules[groups] / kg
        pool_kg, pool_j = float(leaves[leaves > 0].sum()), float((leaves * heat)[leaves > 0].sum())
        wanted = self._wanted(water, state, mean)
        places = list(water.cushions)
        # What they take is what is left over, to the last drop; each its part of it.
        change = float(leaves.sum()) - out_kg
        asked = wanted - state.in_kg[places]
        takes = asked + (change - asked.sum()) / len(places)
        for place, more in zip(places, takes.tolist(), strict=True):
            if more < 0:
                held = state.in_kg[place]
                j_kg = state.in_j[place] / held if held > -more else self._cold_j_kg
                state.in_j[place] += more * j_kg
                pool_kg, pool_j = pool_kg - more, pool_j - more * j_kg
            state.in_kg[place] += more
        j_kg = pool_j / pool_kg if pool_kg > 0 else 0.0
        for place, more in zip(places, takes.tolist(), strict=True):
            if more > 0:
                state.in_j[place] += more * j_kg
        stepper.kg[groups] = kg - leaves
        stepper.joules[groups] -= np.where(leaves > 0, leaves * heat, leaves * j_kg)
        state.out_kg += out_kg
        state.out_j += out_kg * j_kg
        state.out_l += out_kg * mean

    def _wanted(self, water: _Water, state: State, mean: float) -> Floats:
        """What has swelled into each vessel at the pressure that it has."""
        np = self._np
        found: list[float] = []
        for place in water.cushions:
            cushion = self._held.cushions[place]
            if cushion.is_open:
                found.append(float(state.in_kg[place]))
                continue
            held = cushion.litres if cushion.part in state.flooded else cushion.holds_l(water.bar)
            found.append((held - float(state.fill_kg[place]) * self._cold_l_kg) / mean)
        wanted: Floats = np.array(found)
        return wanted

    def set_flooded(self, state: State, flooded: frozenset[str]) -> None:
        """Let vessels lose their gas, or have it back: filled up from the main, or let down, so that the
        pressure stays as it was."""
        for water in self._waters:
            mean = self._mean_l_kg(water)
            for place in water.cushions:
                cushion = self._held.cushions[place]
                if cushion.is_open or (cushion.part in flooded) is (cushion.part in state.flooded):
                    continue
                bar = float(state.cushion_bar[place])
                held = cushion.litres if cushion.part in flooded else cushion.holds_l(bar)
                fill_kg = (held - state.in_kg[place] * mean) / self._cold_l_kg
                state.filled_kg += fill_kg - float(state.fill_kg[place])
                state.fill_kg[place] = fill_kg
        state.flooded = flooded


def _set_bar(relief: Relief) -> float:
    return relief.set_bar

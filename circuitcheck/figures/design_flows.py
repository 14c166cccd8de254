"""What pumps are needed for: each emitter and coil held at its design flow, and what is left over on its way.

Every taker gets a valve that lets its design flow through and takes up all the pressure that is too
much, and each pump more head than any circuit wants. What the valve of a taker then holds back, the
pump need not give for its sake; the taker that holds back least has the index circuit.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cached_property

from circuitcheck.circuit.solver.network import Link, State
from circuitcheck.figures.driven import calling, on, place_of, sources
from circuitcheck.figures.held_flows import Held, Loss
from circuitcheck.figures.resistance import Resistances
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word

PLENTY_PA = 1e6
"""More than any circuit of a house wants: 100 m of water."""

OTHER_WAYS_WITHIN = 0.02
"""A pump that carries more than this beyond what it serves drives water another way round."""

NO_WAY = a_word("no way that can carry its design flow leads there")
IN_SERIES = a_word("another pump drives the same water in series, and how they share its head is not settled")
OTHER_WAY = a_word("water goes another way round that has no design flow of its own")
NO_DESIGN = a_word("nothing that it serves has a design flow")


@dataclass(frozen=True, slots=True)
class Needed:
    """What a pump is needed for in one run: the flow and the pressure, and the taker (or heat source)
    whose circuit decides. `why`: it can't be told."""

    run: Run
    pump: str
    flow_m3_s: float = 0.0
    pressure_pa: float = 0.0
    decides: str = ""
    why: str = ""


class DesignFlows:
    """The body with every taker held at its design flow, in each run that calls something."""

    def __init__(self, body: SolvedBody) -> None:
        self.body = body
        self.runs = calling(body)
        _ = body.solution  # the network is not complete before it is solved

    @cached_property
    def missing(self) -> tuple[str, ...]:
        """The fields that would have to be known for the design flows."""
        wanted = [part for run in self.runs for part in self._called(run)]
        return self.body.design_missing(dict.fromkeys((*wanted, *self._open_sources)))

    def _called(self, run: Run) -> tuple[str, ...]:
        return tuple(part for part in self.body.takers if part in run.situation.called)

    @cached_property
    def _open_sources(self) -> tuple[str, ...]:
        """The heat sources whose flow the takers do not settle: those before a separator, and all where
        a coil has no number for what it wants."""
        has_separator = any(True for _ in on(self.body, Role.SEPARATES))
        return sources(self.body) if has_separator or self._unnumbered else ()

    @cached_property
    def _unnumbered(self) -> frozenset[str]:
        """The takers that have no field for what they want: a vented store's coil."""
        parts = self.body.plant.drawing.components
        return frozenset(
            part
            for part in self.body.takers
            if not {field.name for field in parts[part].kind.own_fields}
            & {"output_kw", "output_w", "coil_power_kw"}
        )

    def held(self, run: Run) -> dict[str, float]:
        """By taker that is called, and by heat source before a separator: the flow it is held at.

        Where the called want more than the heat sources give, all are cut alike. A coil without a
        number takes what the others leave of the heat sources' flow.
        """
        return self._held[run.row]

    @cached_property
    def _held(self) -> dict[int, dict[str, float]]:
        return {run.row: self._holding(run) for run in self.runs}

    def _holding(self, run: Run) -> dict[str, float]:
        body = self.body
        meant = {part: self._meant(part) for part in self._called(run) if part not in self._unnumbered}
        gives = sum(self._meant(part) for part in sources(body))
        wants = sum(meant.values())
        without = [part for part in self._called(run) if part in self._unnumbered]
        if without and gives > wants:
            meant |= dict.fromkeys(without, (gives - wants) / len(without))
            wants = gives
        share = min(1.0, gives / wants) if wants > 0 and gives > 0 else 1.0
        held = {part: share * flow for part, flow in meant.items() if flow > 0}
        if self._open_sources and any(True for _ in on(body, Role.SEPARATES)) and gives > 0:
            total = min(gives, wants)
            held |= {part: total * self._meant(part) / gives for part in self._open_sources}
        return {part: flow for part, flow in held.items() if flow > 0}

    def _meant(self, part: str) -> float:
        return self.body.network.design_flow_m3_s(part) or 0.0

    @cached_property
    def _plain(self) -> tuple[Link, ...]:
        """The links with valves that are set to a flow wide open, and pumps with plenty of head."""
        network, body = self.body.network.network, self.body.network
        assert network is not None
        usual = Resistances(self.body.plant)
        links = list(network.links)
        for place in body.set_by_flow:
            strand = body.strands[place]
            if strand.passage is not None:
                links[place] = usual.passage(strand.id, strand.passage, strand.a, strand.b) or links[place]
        return tuple(replace(link, head_pa=PLENTY_PA) if link.head_pa else link for link in links)

    @cached_property
    def _solved(self) -> dict[int, Held]:
        """By row; runs whose held flows agree are solved in one go."""
        groups: dict[tuple[tuple[str, float], ...], list[Run]] = {}
        for run in self.runs:
            held = self.held(run)
            like = next((key for key in groups if _agree(dict(key), held)), ())
            key = tuple(sorted({**dict(like), **held}.items()))
            groups[key] = [*groups.pop(like, ()), run]
        return {
            run.row: solved for key, runs in groups.items() for run, solved in self._solve(dict(key), runs)
        }

    def _solve(self, held: dict[str, float], runs: list[Run]) -> Iterator[tuple[Run, Held]]:
        from circuitcheck.circuit.solver.solve import solve

        links = list(self._plain)
        places = {part: place for part in held if (place := place_of(self.body, part)) is not None}
        for part, place in places.items():
            links[place] = replace(links[place], limit_m3_s=held[part])
        network = self.body.network.network
        assert network is not None
        solution = solve(replace(network, links=tuple(links)), [self._state(run) for run in runs])
        for row, run in enumerate(runs):
            yield run, Held(self.body, solution, row, places, self._plain)

    def _state(self, run: Run) -> State:
        state = self.body.network.state(run.situation)
        springs = {place for place, link in enumerate(self._plain) if link.opens_at_pa}
        return replace(state, shut=state.shut | springs)

    def spare_pa(self, run: Run, part: str) -> float | None:
        """What a part's valve would have to hold back with plenty of head at each pump."""
        return self._solved[run.row].spare_pa(part, self.held(run)[part])

    def needed(self, run: Run, pump: str) -> Needed | None:
        """What a pump is needed for in a run; None where it stands still then."""
        if pump not in run.situation.running:
            return None
        held, solved = self.held(run), self._solved[run.row]
        served = self.served(run, pump)
        if not served:
            return Needed(run, pump, why=NO_DESIGN)
        if any(part in self.served(run, each) for each in self._others(run, pump) for part in served):
            return Needed(run, pump, why=IN_SERIES)
        # What holds a pump to its flow has taken the rest of its head already.
        spare = {part: 0.0 if part == pump else solved.spare_pa(part, held[part]) for part in served}
        flow, head = solved.flow_m3_s(pump), solved.head_pa(pump)
        if flow is None or head is None or any(each is None for each in spare.values()):
            return Needed(run, pump, why=NO_WAY)
        if flow > (1 + OTHER_WAYS_WITHIN) * sum(held[part] for part in served):
            return Needed(run, pump, why=OTHER_WAY)
        decides = min(served, key=lambda part: spare[part] or 0.0)
        return Needed(run, pump, flow, head - (spare[decides] or 0.0), decides)

    def _others(self, run: Run, pump: str) -> Iterator[str]:
        return (each for each in self.body.pumps if each != pump and each in run.situation.running)

    def served(self, run: Run, pump: str) -> tuple[str, ...]:
        """What is held and gets its water through the pump, before or behind it; before a separator, the
        heat sources."""
        return self._served(run)[pump]

    def _served(self, run: Run) -> dict[str, tuple[str, ...]]:
        if run.row not in self._kept:
            running = [each for each in self.body.pumps if each in run.situation.running]
            self._kept[run.row] = {pump: self._serves(run, pump, len(running) == 1) for pump in running}
        return self._kept[run.row]

    @cached_property
    def _kept(self) -> dict[int, dict[str, tuple[str, ...]]]:
        return {}

    def _serves(self, run: Run, pump: str, alone: bool) -> tuple[str, ...]:
        held = self.held(run)
        if pump in held:
            return (pump,)
        if alone:
            return tuple(part for part in held if part not in self._open_sources)
        solved = self._solved[run.row]
        before, behind = (solved.reached(pump, forth=forth) for forth in (False, True))
        return tuple(part for part in held if part in (before & behind or before | behind))

    def surplus_pa(self, need: Needed) -> float:
        """What the pump raises at the needed flow beyond what is needed; below 0 where it is too weak."""
        network, place = self.body.network.network, place_of(self.body, need.pump)
        assert network is not None and place is not None
        link = network.links[place]
        return link.head_pa - link.pump_quadratic * need.flow_m3_s**2 - need.pressure_pa

    def less_pa(self, need: Needed) -> dict[str, float]:
        """By what else the pump serves: how much less its circuit loses than the one that decides."""
        spare = {part: self.spare_pa(need.run, part) for part in self.served(need.run, need.pump)}
        least = spare.pop(need.decides) or 0.0
        return {part: found - least for part, found in spare.items() if found is not None}

    @cached_property
    def usual(self) -> frozenset[str]:
        """The parts whose resistance is a default, none of their own being given."""
        other = self.body.least_and_most[0].network
        if other.network is None:
            return frozenset()
        pairs = zip(self.body.network.strands, self._plain, other.network.links, strict=True)
        return frozenset(strand.id for strand, own, less in pairs if less.quadratic < own.quadratic)

    def own_loss_pa(self, place: int, flow_m3_s: float) -> float:
        """What a link loses by itself at a flow, its valve open."""
        return self._plain[place].quadratic * flow_m3_s**2

    def usual_loss_pa(self, run: Run, part: str) -> float:
        """What of the losses on the way round to a part, from the pump that serves it, rests on defaults."""
        for pump in self._served(run):
            if part in self.served(run, pump):
                losses = self._solved[run.row].circuit(pump, part)
                return sum(loss.pascals for loss in losses if loss.id in self.usual)
        return 0.0

    def circuit(self, needed: Needed) -> tuple[Loss, ...]:
        """The way round from the pump through what decides and back, and what each step of it loses."""
        return self._solved[needed.run.row].circuit(needed.pump, needed.decides)


def _agree(some: dict[str, float], others: dict[str, float]) -> bool:
    return all(some.get(part, flow) == flow for part, flow in others.items())


def design_flows(body: SolvedBody) -> DesignFlows:
    """A body at its design flows; worked once for a plant."""
    return body.plant.kept(f"design flows {body.network.number}", lambda: DesignFlows(body))

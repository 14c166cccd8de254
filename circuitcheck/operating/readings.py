"""What is read off a drawing at work: pressure by pipe and at each gauge, and what stands still once pumps stop."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from circuitcheck.circuit.isolation import reaches
from circuitcheck.circuit.situations import RUN_ON
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.plant import Plant
from circuitcheck.operating.standing import Standing
from circuitcheck.parts.kind import Role
from circuitcheck.report.flows import PipeFlow
from circuitcheck.sizing.vessel import static_bar

PASCALS_A_BAR = 1e5


class Readings:
    """The pressures of one standing. Where the water's cushion is (a vessel, an open end, else the heat
    source) the pressure is given; from there it falls with height and by what the solved network says."""

    def __init__(self, plant: Plant, standing: Standing) -> None:
        self._plant, self._standing = plant, standing
        self._nodes: dict[tuple[str, str], tuple[int, int]] = {}
        for place, run in enumerate(standing.runs):
            for strand in run.body.network.strands:
                if strand.passage is None:
                    ends = plant.drawing.pipes[strand.id].joints
                    for end, node in zip(ends, (strand.a, strand.b), strict=True):
                        self._nodes[(end.part, end.port)] = (place, node)
        self._fixed: dict[int, Joint] = {}
        circuit = plant.circuit
        roles = (Role.HEATS, Role.FEEDS, Role.VENTS, Role.HOLDS_EXPANSION)
        for role in roles:  # what holds the pressure best is told last, and stands
            for device in circuit.devices(role):
                port = device.device.other if role is Role.HEATS else device.device.port
                for water in reaches(
                    circuit, circuit.water(circuit.node(device.part, port)), standing.positions.shut
                ):
                    self._fixed[water] = Joint(device.part, port)

    def at(self, joint: Joint, fixed_bar: float) -> float | None:
        """The pressure at a port, told the one at the fixed point of its water; None where heights are told
        and not this one's."""
        plant = self._plant
        fixed = self._fixed.get(plant.circuit.water(plant.circuit.node(joint.part, joint.port)))
        if fixed is None:
            return None
        above, driven = self._above_m(fixed, joint), self._driven_bar(fixed, joint)
        return None if above is None else fixed_bar - static_bar(above) + driven

    def _above_m(self, fixed: Joint, joint: Joint) -> float | None:
        heights = self._plant.heights
        found = heights.difference(fixed.part, joint.part)
        return found if found is not None or heights.is_told else 0.0

    def _driven_bar(self, fixed: Joint, joint: Joint) -> float:
        one, other = (self._nodes.get((each.part, each.port)) for each in (joint, fixed))
        if one is None or other is None or one[0] != other[0]:
            return 0.0
        run = self._standing.runs[one[0]]
        found = run.body.solution.between_pa(run.row, one[1], other[1])
        # Shut in with nothing to drive it, water stands still: the solver has nothing to say of it.
        return 0.0 if found is None else found / PASCALS_A_BAR

    def by_pipe(self, fixed_bar: Mapping[str, float]) -> dict[str, float]:
        """The pressure in each pipe, midway between its ends; told, by pipe, that of its water's fixed point."""
        found: dict[str, float] = {}
        for id, bar in fixed_bar.items():
            pipe = self._plant.drawing.pipes.get(id)
            if pipe is None:
                continue
            ends = [value for joint in pipe.joints if (value := self.at(joint, bar)) is not None]
            if ends:
                found[id] = sum(ends) / len(ends)
        return found

    def gauges(self, fixed_bar: Mapping[str, float]) -> dict[str, float]:
        """What each gauge reads, by its part."""
        found: dict[str, float] = {}
        for device in self._plant.circuit.devices(Role.SHOWS_PRESSURE):
            joint = Joint(device.part, device.device.port)
            pipe = self._plant.drawing.joined.get(joint)
            if pipe is not None and pipe in fixed_bar:
                value = self.at(joint, fixed_bar[pipe])
                if value is not None:
                    found[device.part] = value
        return found


def stopped(standing: Standing) -> Standing:
    """The same once the pumps have stopped: all water stands still."""
    pipes = {
        id: PipeFlow(0.0, 0.0 if pipe.velocity_m_s is not None else None, None, pipe.circulates)
        for id, pipe in standing.flows.pipes.items()
    }
    return replace(
        standing,
        positions=replace(standing.positions, running=frozenset()),
        flows=replace(standing.flows, pipes=pipes, running=()),
        through=dict.fromkeys(standing.through, 0.0),
        across_kpa={},
        runs=(),
    )


def runs_on(standing: Standing) -> bool:
    """Whether its pumps run only for a while."""
    positions = standing.positions
    return positions.name.partition(":")[0] == RUN_ON and not positions.firing

"""Where the water of each cell goes: the solved flows as a network of cells that mix, for heat to ride on."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.figures.plant import Plant
from circuitcheck.operating.cells import Cell, Side, Sides, joint_of
from circuitcheck.report.flows import PipeFlow

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]
    Places = NDArray[np.intp]

LEAST_STAY_S = 4.0
"""Water stays in a cell so long at the least: smaller cells that flow are taken as one with the next."""


@dataclass(frozen=True, slots=True)
class Streams:
    """`group` numbers each cell's mixed water. Heat is carried from group `start[i]` to group `end[i]` by
    `kg_s[i]`; into a group flows as much as out of it. `inlet`: by cell of a part, the shares of groups in
    what flows into it, empty where nothing does; `through`: by the same cell, the kilograms a second."""

    group: Places
    count: int
    start: Places
    end: Places
    kg_s: Floats
    inlet: Mapping[int, tuple[tuple[int, float], ...]]
    through: Mapping[int, float]


def streams(
    plant: Plant, sides: Sides, cells: tuple[Cell, ...], flows: Mapping[str, PipeFlow], kg_a_litre: float
) -> Streams:
    """The streams of one standing. `flows` by pipe, as solved."""
    place = {(each.side or each.id): number for number, each in enumerate(cells)}
    into: dict[Side, dict[int, float]] = {}
    out: dict[Side, dict[int, float]] = {}
    for id, pipe in flows.items():
        if id not in place or pipe.is_still:
            continue
        ends = (joint_of(plant, id, 0), joint_of(plant, id, 1))
        first, last = ends if pipe.flow_lpm > 0 else ends[::-1]
        if first is None or last is None:
            continue
        kg_s = abs(pipe.flow_lpm) / 60 * kg_a_litre
        out.setdefault(sides.of(*first), {})[place[id]] = kg_s
        into.setdefault(sides.of(*last), {})[place[id]] = kg_s
    links: list[tuple[int, int, float]] = []
    inlet: dict[int, tuple[tuple[int, float], ...]] = {}
    through: dict[int, float] = {}
    for side, arriving in into.items():
        leaving = out.get(side, {})
        total, total_out = sum(arriving.values()), sum(leaving.values())
        if not total or not total_out:
            continue
        own = place.get(side)
        if own is not None:
            links += [(cell, own, kg_s) for cell, kg_s in arriving.items()]
            # As much as comes goes, to the last bit.
            links += [(own, cell, kg_s * total / total_out) for cell, kg_s in leaving.items()]
            inlet[own] = tuple((cell, kg_s / total) for cell, kg_s in arriving.items())
            through[own] = total
        else:
            for cell, kg_s in arriving.items():
                links += [(cell, other, kg_s * share / total_out) for other, share in leaving.items()]
    return _grouped(cells, links, inlet, through)


def _grouped(
    cells: tuple[Cell, ...],
    links: list[tuple[int, int, float]],
    inlet: Mapping[int, tuple[tuple[int, float], ...]],
    through: dict[int, float],
) -> Streams:
    import numpy as np

    head = _merged(cells, links)
    numbers: dict[int, int] = {}
    group = [numbers.setdefault(head[cell], len(numbers)) for cell in range(len(cells))]
    summed: dict[tuple[int, int], float] = {}
    for a, b, kg_s in links:
        if group[a] != group[b]:
            summed[group[a], group[b]] = summed.get((group[a], group[b]), 0.0) + kg_s
    ends = list(summed)
    return Streams(
        np.array(group, dtype=np.intp),
        len(numbers),
        np.array([a for a, _ in ends], dtype=np.intp),
        np.array([b for _, b in ends], dtype=np.intp),
        np.array([summed[each] for each in ends]),
        {own: tuple((group[cell], share) for cell, share in shares) for own, shares in inlet.items()},
        through,
    )


def _merged(cells: tuple[Cell, ...], links: Iterable[tuple[int, int, float]]) -> list[int]:
    """For each cell the one that stands for its group: a small one that flows is joined to a pipe beside it,
    rather than to what heats or emits."""
    head = list(range(len(cells)))

    def find(cell: int) -> int:
        while head[cell] != cell:
            head[cell] = cell = head[head[cell]]
        return cell

    litres = [each.litres for each in cells]
    is_part = [each.side is not None for each in cells]
    beside: list[dict[int, float]] = [{} for _ in cells]
    flow_in = [0.0] * len(cells)
    for a, b, kg_s in links:
        flow_in[b] += kg_s
        for one, other in ((a, b), (b, a)):
            beside[one][other] = beside[one].get(other, 0.0) + kg_s
    waiting = sorted((cell for cell in range(len(cells)) if flow_in[cell]), key=lambda cell: litres[cell])
    for start in waiting:
        cell = find(start)
        while litres[cell] < LEAST_STAY_S * flow_in[cell]:
            near: dict[int, float] = {}
            for other, kg_s in beside[cell].items():
                if find(other) != cell:
                    near[find(other)] = near.get(find(other), 0.0) + kg_s
            if not near:
                break
            to = min(near, key=lambda other: (is_part[other] or is_part[cell], -near[other], other))
            head[cell] = to
            litres[to] += litres[cell]
            # What goes from one to the other stays inside by now; half of it each way, as it goes round.
            flow_in[to] = max(0.0, flow_in[to] + flow_in[cell] - near[to])
            is_part[to] = is_part[to] or is_part[cell]
            for other, kg_s in beside[cell].items():
                beside[to][other] = beside[to].get(other, 0.0) + kg_s
            cell = to
    return [find(cell) for cell in range(len(cells))]

"""Which of a network's states differ at all in what flows, as rows to be solved at once."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from circuitcheck.circuit.solver.chains import Reduced, Sums
from circuitcheck.circuit.solver.network import State


@dataclass(frozen=True, slots=True)
class Row:
    """Which chains are open, and what each loses (below 0: is driven by) in still water, in pascals."""

    open: tuple[bool, ...]
    offset_pa: tuple[float, ...]
    driven: bool
    """Whether a running pump stands in an open chain."""


@dataclass(frozen=True, slots=True)
class Rows:
    """The rows, and for each state its row."""

    rows: tuple[Row, ...]
    of_state: tuple[int, ...]


def rows(reduced: Reduced, sums: Sequence[Sums], states: Sequence[State]) -> Rows:
    """A row for all states that shut the same chains and drive the same ones."""
    column = {place: number for number, chain in enumerate(reduced.chains) for place, _ in chain.steps}
    heads = {place: head for each in sums for place, head in each.pumps}
    number: dict[tuple[frozenset[int], frozenset[int]], int] = {}
    found: list[Row] = []
    of_state = []
    for state in states:
        shut = frozenset(column[place] for place in state.shut if place in column)
        running = frozenset(
            place for place in heads if place not in state.stopped and column[place] not in shut
        )
        key = (shut, running)
        if key not in number:
            number[key] = len(found)
            offset = [each.opens_at_pa for each in sums]
            for place in running:
                offset[column[place]] -= heads[place]
            is_open = tuple(place not in shut and not each.never for place, each in enumerate(sums))
            found.append(Row(is_open, tuple(offset), bool(running)))
        of_state.append(number[key])
    return Rows(tuple(found), tuple(of_state))


def pieces_by_row(
    nodes: int, ends: Sequence[tuple[int, int]], is_open: Sequence[Sequence[bool]]
) -> list[tuple[int, ...]]:
    """For each row, each node's piece: what open chains join has one number."""
    if not is_open:
        return []
    always = [all(each) for each in zip(*is_open, strict=True)]
    base = _joined(range(nodes), (end for end, every in zip(ends, always, strict=True) if every))
    changing = [
        (column, base[a], base[b])
        for column, (a, b) in enumerate(ends)
        if not always[column] and base[a] != base[b]
    ]
    found = []
    for row in is_open:
        now = _joined(set(base), ((a, b) for column, a, b in changing if row[column]))
        found.append(tuple(now[each] for each in base.values()))
    return found


def _joined(nodes: Iterable[int], ends: Iterable[tuple[int, int]]) -> dict[int, int]:
    """By node, the one that stands for all it is joined with."""
    parent = {node: node for node in nodes}

    def find(node: int) -> int:
        while parent[node] != node:
            parent[node] = node = parent[parent[node]]
        return node

    for a, b in ends:
        parent[find(a)] = find(b)
    return {node: find(node) for node in parent}

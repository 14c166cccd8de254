"""Where water of two services meets in one stretch: divided at the fewest and narrowest places."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

MOST_WIDTH = 600
"""A stretch that would have to be divided over more width than this in all is not divided here."""

Links = Mapping[int, list[tuple[int, int]]]
"""By node: the nodes joined to it, and how wide each joint is."""


def divided(links: Links, first: Iterable[int], second: Iterable[int]) -> set[int] | None:
    """The nodes on the first side of a narrowest cut between two sets of nodes.

    A node in both sets counts as the first's. Widths are whole numbers; the cut that is narrowest
    in all is found by augmenting paths, and of several the one nearest the first side. None where
    it is wider than MOST_WIDTH.
    """
    sources = dict.fromkeys(first)
    targets = {node for node in second if node not in sources}
    used: dict[tuple[int, int], int] = {}
    total = 0
    while total <= MOST_WIDTH:
        came_from, target = _search(links, sources, targets, used)
        if target is None:
            return set(came_from)
        total += _augment(links, came_from, target, used)
    return None


def _search(
    links: Links, sources: Iterable[int], targets: set[int], used: dict[tuple[int, int], int]
) -> tuple[dict[int, int], int | None]:
    """Breadth first along joints with width left: where each node was reached from, and a target."""
    came_from = {node: node for node in sources}
    todo = list(came_from)
    for here in todo:
        for there, width in links.get(here, ()):
            if there not in came_from and used.get((here, there), 0) < width:
                came_from[there] = here
                if there in targets:
                    return came_from, there
                todo.append(there)
    return came_from, None


def _augment(links: Links, came_from: dict[int, int], target: int, used: dict[tuple[int, int], int]) -> int:
    """Use up the width of the way to the target; returns how wide it was."""
    way = []
    there = target
    while came_from[there] != there:
        way.append((came_from[there], there))
        there = came_from[there]
    widths = (_width(links, here, there) - used.get((here, there), 0) for here, there in way)
    least = min(widths)
    for here, there in way:
        used[here, there] = used.get((here, there), 0) + least
        used[there, here] = used.get((there, here), 0) - least
    return least


def _width(links: Links, here: int, there: int) -> int:
    return max(width for node, width in links[here] if node == there)

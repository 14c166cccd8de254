"""Where the ports of every part stand in one flat row, and the node at each.

A part's ports follow one another, then the points inside it that its passages meet at. So whoever goes
over all parts reads plain ints side by side, and looks nothing up by name.
"""

from __future__ import annotations

from circuitcheck.circuit.plan import Plan


class Ports:
    """The row: `first` is where each part's ports begin, by its place in `ids`; `at` is the node at each
    port, -1 where nothing is on it. A `slot` is a place in `at`. `sides` are the places of the parts at the
    two ends of each pipe, pipe by pipe; -1 for a free end, or one on a part that is not there."""

    def __init__(self, plans: dict[str, Plan]) -> None:
        self.ids = list(plans)
        self.place = {id: place for place, id in enumerate(self.ids)}
        self.plans = list(plans.values())
        self.first: list[int] = []
        slot = 0
        for plan in self.plans:
            self.first.append(slot)
            slot += plan.width
        self.at = [-1] * slot
        self.sides: list[int] = []
        self.others: dict[tuple[str, str], int] = {}
        """The nodes at what is no port of the part's kind, where somebody asked for one."""

    def slot(self, part: str, port: str) -> int:
        """The slot of a port, or of a point inside a part; -1 where there is none of that name."""
        place = self.place.get(part, -1)
        if place < 0:
            return -1
        offset = self.plans[place].slots.get(port, -1)
        return self.first[place] + offset if offset >= 0 else -1

    def node(self, part: str, port: str) -> int:
        """The node at a port; -1 where nothing is on it."""
        slot = self.slot(part, port)
        return self.at[slot] if slot >= 0 else self.others.get((part, port), -1)

    def put(self, part: str, port: str, node: int) -> None:
        """Say what node a port is at."""
        slot = self.slot(part, port)
        if slot >= 0:
            self.at[slot] = node
        else:
            self.others[part, port] = node

    def nodes(self, place: int) -> list[int]:
        """The nodes at a part's ports, in the order of its kind; -1 where nothing is on one."""
        first = self.first[place]
        return self.at[first : first + self.plans[place].port_count]

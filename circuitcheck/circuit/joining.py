"""Joins a Drawing's ports by its pipes into one graph of water, built once and asked many times."""

from __future__ import annotations

import itertools
from bisect import bisect_right
from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from functools import cached_property
from typing import Any, NamedTuple, TypeVar

from circuitcheck.circuit.plan import INSIDE as INSIDE
from circuitcheck.circuit.plan import Plan, plan_of
from circuitcheck.circuit.ports import Ports
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.parts.kind import Device, Kind, Role

Kept = TypeVar("Kept")


class Placed(NamedTuple):
    """A device of a part, with the water at its port and at its other port (-1 for none)."""

    part: str
    device: Device
    node: int
    other: int


class ShutEdge(NamedTuple):
    """A passage that can be shut, between two waters of the contracted graph."""

    a: int
    b: int
    label: str
    part: str
    leg: str
    secured: bool


def _places_of(value: int, row: Sequence[int]) -> Iterator[int]:
    """Where in a row a number stands; found without looking at each in turn, as it stands in few places."""
    place = -1
    try:
        while True:
            place = row.index(value, place + 1)
            yield place
    except ValueError:
        return


def join_slots(parent: list[int], at: Sequence[int], bases: Iterable[int], group: Sequence[int]) -> None:
    """Join the nodes at a group of slots, counted from each of these bases; the lowest stands for all."""
    for base in bases:
        lowest = -1
        for offset in group:
            node = at[base + offset]
            while parent[node] != node:
                parent[node] = node = parent[parent[node]]
            if lowest < 0:
                lowest = node
            elif node < lowest:
                parent[lowest] = node
                lowest = node
            elif lowest < node:
                parent[node] = lowest


def lowest_joined(count: int, pairs: Iterable[tuple[int, int]]) -> list[int]:
    """For each of so many waters the lowest of those that these pairs join it to, which stands for all of them."""
    parent = list(range(count))
    for one, two in pairs:
        while parent[one] != one:
            parent[one] = one = parent[parent[one]]
        while parent[two] != two:
            parent[two] = two = parent[parent[two]]
        if one < two:
            parent[two] = one
        elif two < one:
            parent[one] = two
    # None stands for another unless it is lower: those before are told already.
    for water, up in enumerate(parent):
        if up != water:
            parent[water] = parent[up]
    return parent


class Circuit:
    """The graph behind one Drawing.

    A *node* is the water in one pipe (its place in `drawing.pipes`), or at a port without a pipe.
    A *water* is a node of the contracted graph: all nodes joined by ways that pressure always
    passes, which nothing can shut. `edges` are the passages between waters that can be shut.
    """

    def __init__(self, drawing: Drawing) -> None:
        self.drawing = drawing
        self.kept: dict[str, Any] = {}
        """What modules worked out of this circuit alone, by the module's name and what more tells it."""
        self.plans: dict[str, Plan] = {}
        self._placed: dict[Role, tuple[Placed, ...]] = {}
        # What parts alike have in common is looked up once for each kind, where they have no data.
        bare: dict[Kind, Plan] = {}
        plans = self.plans
        for id, part in drawing.components.items():
            plan = bare.get(part.kind) if not part.data else None
            if plan is None:
                plan = plan_of(part)
                if not part.data:
                    bare[part.kind] = plan
            plans[id] = plan
        self.ports = Ports(plans)
        self.loose_pipes: tuple[str, ...] = ()
        """The pipes with a free end, in the order of the drawing."""
        self._lay_pipes()
        self._parent = list(range(len(drawing.pipes)))
        self._shut: list[tuple[int, int, str, str, bool]] = []
        self._one_way: list[tuple[int, int]] = []
        self.partly_joined: tuple[str, ...] = ()
        """The parts with a port that no pipe is on, in the order of the drawing."""
        self._pass_parts()

    def _lay_pipes(self) -> None:
        """Each pipe's water, its number, at the ports that it joins."""
        ports = self.ports
        at, place, first, sides = ports.at, ports.place, ports.first, ports.sides
        slots = [plan.slots for plan in ports.plans]
        loose = []
        for number, pipe in enumerate(self.drawing.pipes.values()):
            start, finish = pipe.ends
            try:
                one, two = place[start[0]], place[finish[0]]  # type: ignore[index]
                at[first[one] + slots[one][start[1]]] = number  # type: ignore[index]
                at[first[two] + slots[two][finish[1]]] = number  # type: ignore[index]
                sides.append(one)
                sides.append(two)
            except KeyError:
                # A free end is a point: its numbers name no part. Nor need every joint, in a drawing half made.
                if len(pipe.joints) < 2:
                    loose.append(pipe.id)
                for end in pipe.ends:
                    sides.append(place.get(end.part, -1) if isinstance(end, Joint) else -1)
                for joint in pipe.joints:
                    ports.put(joint.part, joint.port, number)
        self.loose_pipes = tuple(loose)

    def _pass_parts(self) -> None:
        """Join what each part leaves open, and note what can be shut in it."""
        # The hot path of every check: plain loops over ints, nothing called that can be avoided, and what
        # parts alike have in common looked up once for all of them.
        self._number_free()
        parent, shut, one_way = self._parent, self._shut, self._one_way
        ports = self.ports
        at, first = ports.at, ports.first
        for plan, alike in self.by_plan.items():
            for group in plan.open_slots:
                join_slots(parent, at, [first[place] for place in alike], group)
        for place in self.in_order([plan for plan in self.by_plan if plan.has_pairs]):
            base, plan = first[place], ports.plans[place]
            for a, b, leg, secured in plan.shut_slots:
                shut.append((at[base + a], at[base + b], ports.ids[place], leg, secured))
            for a, b in plan.other_slots:
                one_way.append((at[base + a], at[base + b]))

    def _number_free(self) -> None:
        """Give each port and inner point that a passage leads to, and no pipe, a node of its own."""
        parent, ports = self._parent, self.ports
        at = ports.at
        partly: list[str] = []
        last = -1
        for slot in _places_of(-1, at):
            place = bisect_right(ports.first, slot) - 1
            if place == last:
                continue
            last = place
            base, plan = ports.first[place], ports.plans[place]
            if -1 in at[base : base + plan.port_count]:
                partly.append(ports.ids[place])
            for offset in plan.joined_slots:
                if at[base + offset] < 0:
                    at[base + offset] = len(parent)
                    parent.append(len(parent))
        self.partly_joined = tuple(partly)

    def keep(self, what: str, make: Callable[[], Kept]) -> Kept:
        """What a module works out of a circuit: made when first asked for, then kept with it. `what` is
        the module's name, or begins with it: it rests on no data that the module does not name."""
        if what not in self.kept:
            self.kept[what] = make()
        found: Kept = self.kept[what]
        return found

    def shut_apart(self) -> list[tuple[int, int]]:
        """The waters that meet by a way that can be shut, as pairs."""
        water_of = self.waters
        return [(water_of[u], water_of[v]) for u, v, _, _, _ in self._shut]

    def ways_across(self) -> list[tuple[int, int]]:
        """The waters that meet by a way that can be shut or that goes one way only, as pairs."""
        water_of = self.waters
        return self.shut_apart() + [(water_of[u], water_of[v]) for u, v in self._one_way]

    def node(self, part: str, port: str) -> int:
        """The node at a port; one of its own where no pipe joins it."""
        ports = self.ports
        found = ports.node(part, port)
        if found < 0:
            found = len(self._parent)
            self._parent.append(found)
            ports.put(part, port, found)
        return found

    def water(self, node: int) -> int:
        """The water that a node belongs to."""
        parent = self._parent
        while parent[node] != node:
            parent[node] = node = parent[parent[node]]
        return node

    @cached_property
    def edges(self) -> tuple[ShutEdge, ...]:
        """The passages that can be shut, in the order of the drawing, those that join two waters."""
        water_of = self.waters
        return tuple(
            [
                ShutEdge(a, b, f"{part}:{leg}" if leg else part, part, leg, secured)
                for u, v, part, leg, secured in self._shut
                if (a := water_of[u]) != (b := water_of[v])
            ]
        )

    @cached_property
    def edges_at(self) -> Mapping[int, list[int]]:
        """The edges on each water, as places in `edges`."""
        found: defaultdict[int, list[int]] = defaultdict(list)
        for place, edge in enumerate(self.edges):
            found[edge.a].append(place)
            found[edge.b].append(place)
        found.default_factory = None  # to ask after a water that has none makes none
        return found

    @cached_property
    def by_plan(self) -> Mapping[Plan, list[int]]:
        """The parts that share a plan, as places in `ids`: what a plan tells is asked of it once, and not
        of each part."""
        found: dict[Plan, list[int]] = {}
        for place, plan in enumerate(self.ports.plans):
            alike = found.get(plan)
            if alike is None:
                alike = found[plan] = []
            alike.append(place)
        return found

    @property
    def ids(self) -> list[str]:
        """The parts' ids, in the order of the drawing."""
        return self.ports.ids

    def in_order(self, plans: Iterable[Plan]) -> list[int]:
        """The parts with one of these plans, as places in `ids`, in the order of the drawing."""
        alike = [self.by_plan[plan] for plan in plans]
        return alike[0] if len(alike) == 1 else sorted(itertools.chain.from_iterable(alike))

    @cached_property
    def _with_role(self) -> Mapping[Role, dict[Plan, list[Device]]]:
        for part in self.partly_joined:
            # Where a device stands on a port that nothing is on, its node is made now, whoever asks first.
            for device in self.plans[part].devices:
                self.node(part, device.port)
                if device.other:
                    self.node(part, device.other)
        found: dict[Role, dict[Plan, list[Device]]] = {}
        for plan in self.by_plan:
            for device in plan.devices:
                found.setdefault(device.role, {}).setdefault(plan, []).append(device)
        return found

    def devices(self, role: Role) -> tuple[Placed, ...]:
        """Every device with that role, in the order of the drawing."""
        found = self._placed.get(role)
        if found is None:
            found = self._placed[role] = tuple(self._place(role))
        return found

    def parts_with(self, *roles: Role) -> frozenset[str]:
        """The parts with a device of any of these roles."""
        ids, by_plan = self.ids, self.by_plan
        plans = dict.fromkeys(plan for role in roles for plan in self._with_role.get(role, ()))
        return frozenset([ids[place] for plan in plans for place in by_plan[plan]])

    def _place(self, role: Role) -> Iterator[Placed]:
        of_plan = self._with_role.get(role)
        if not of_plan:
            return
        ports = self.ports
        ids, first, at, plans = ports.ids, ports.first, ports.at, ports.plans
        for place in self.in_order(of_plan):
            base, plan = first[place], plans[place]
            slots = plan.slots
            for device in of_plan[plan]:
                other = at[base + slots[device.other]] if device.other else -1
                yield Placed(ids[place], device, at[base + slots[device.port]], other)

    @property
    def waters(self) -> list[int]:
        """The water of each node, for loops over many nodes."""
        found: list[int] = self.keep(f"{__name__} waters", list)
        if len(found) < len(self._parent):
            # A node stands for no other unless it is lower: those before are told already.
            parent = self._parent
            for node in range(len(found), len(parent)):
                up = parent[node]
                found.append(node if up == node else found[up])
        return found

    def pipes_in(self, waters: frozenset[int]) -> tuple[str, ...]:
        """The pipes whose water is one of these, in the order of the drawing."""
        return tuple(
            id for id, water in zip(self.drawing.pipes, self.waters, strict=False) if water in waters
        )

    def parts_in(self, waters: frozenset[int]) -> tuple[str, ...]:
        """The parts with a joined port in one of these waters, in the order of the drawing."""
        water_of, ports = self.waters, self.ports
        return tuple(
            id
            for place, id in enumerate(ports.ids)
            if any(water_of[node] in waters for node in ports.nodes(place) if node >= 0)
        )

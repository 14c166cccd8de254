"""The same network in a compiled general-purpose hydraulic engine, with that engine's constants and law.

The engine reckons in feet: its gravity is 32.2 ft/s², its litre a second 1/28.317 ft³/s, its water's
viscosity a multiple of 1.1e-5 ft²/s, its loss factors count 0.02517 instead of 8/(32.2 π²), and a valve
that stops water lets 1e-8 ft³/s through a foot of head. For turbulent flow it has Swamee and Jain's
explicit formula, between Reynolds 2,000 and 4,000 a cubic. These constants and `friction` put the same
on our side.
"""

from __future__ import annotations

import os
import warnings
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from math import pi
from typing import TYPE_CHECKING, Any

import numpy as np
from epanet import toolkit  # type: ignore[import-untyped]  # ships no types

from circuitcheck.circuit.solver.friction import TWO_OVER_LN_10, Law
from circuitcheck.circuit.solver.network import Link, Network, pipe

if TYPE_CHECKING:
    from circuitcheck.circuit.solver.friction import Floats

FOOT = 0.3048
DENSITY = 1000.0
GRAVITY = 32.2 * FOOT
PA_PER_M = DENSITY * GRAVITY
M3_S_PER_LPS = FOOT**3 / 28.317
LOSS_FACTOR_AS_ENGINE = 0.02517 / (8 / (pi**2 * 32.2))
BARRED_PA_S_M3 = 1e8 * FOOT * PA_PER_M / FOOT**3
VISCOSITY_SHARE = 0.4
VISCOSITY_PA_S = DENSITY * VISCOSITY_SHARE * 1.1e-5 * FOOT**2


@dataclass(frozen=True)
class Tube:
    """A pipe of the made-up network: ends, length, bore, roughness, loss factor, check valve or not."""

    a: int
    b: int
    length_m: float
    bore_mm: float
    roughness_mm: float
    loss_factor: float = 0.0
    check: bool = False


@dataclass(frozen=True)
class Driver:
    """A pump of the made-up network, by shut-off head and most flow."""

    a: int
    b: int
    head_m: float
    most_lps: float


@dataclass(frozen=True)
class Plan:
    """A made-up network. Node 0 holds a given head; others draw their demand."""

    demands_lps: tuple[float, ...]
    tubes: tuple[Tube, ...]
    drivers: tuple[Driver, ...] = ()
    heads_m: Mapping[int, float] = None  # type: ignore[assignment]  # set below

    def __post_init__(self) -> None:
        if self.heads_m is None:
            object.__setattr__(self, "heads_m", {0: 50.0})


class EngineLaw(Law):
    """The engine's law of friction."""

    def __init__(self, relative_roughness: Floats) -> None:
        self._rough = relative_roughness / 3.7
        ab = 5.74 / 4000**0.9
        y2 = self._rough + ab
        y3 = -TWO_OVER_LN_10 * np.log(y2)
        fa = 1 / (y3 * y3)
        fb = (2 - 1.8 * TWO_OVER_LN_10 * ab / (y2 * y3)) * fa
        self._cubic = (
            7 * fa - fb,
            0.128 - 17 * fa + 2.5 * fb,
            -0.128 + 13 * fa - 2 * fb,
            0.032 - 3 * fa + 0.5 * fb,
        )

    def forget(self) -> None:
        """It is explicit, and remembers nothing."""

    def __call__(self, reynolds: Floats) -> tuple[Floats, Floats]:
        fast = np.maximum(reynolds, 4000.0)
        y1 = 5.74 / fast**0.9
        y2 = self._rough + y1
        y3 = -TWO_OVER_LN_10 * np.log(y2)
        factor = 1 / (y3 * y3)
        product = factor * fast
        slope = product * (1 - 1.8 * TWO_OVER_LN_10 * y1 / (y2 * y3))
        slow = np.flatnonzero(reynolds < 4000)
        if slow.size:
            few = np.maximum(reynolds.take(slow), 2000.0)
            x1, x2, x3, x4 = (each.take(slow) for each in self._cubic)
            r = few / 2000
            cubic = x1 + r * (x2 + r * (x3 + r * x4))
            rises = r * (x2 + r * (2 * x3 + r * 3 * x4))
            product.put(slow, few * cubic)
            slope.put(slow, few * (cubic + rises) * (few > 2000))
        return product, slope


def friction(relative_roughness: Floats) -> Law:
    """The engine's law of friction."""
    return EngineLaw(relative_roughness)


def ours(plan: Plan) -> Network:
    """The network as our solver takes it, with the engine's constants."""
    links = []
    for tube in plan.tubes:
        link = pipe(
            tube.a,
            tube.b,
            length_m=tube.length_m,
            diameter_m=tube.bore_mm / 1000,
            density_kg_m3=DENSITY,
            roughness_m=tube.roughness_mm / 1000,
            loss_factor=tube.loss_factor * LOSS_FACTOR_AS_ENGINE,
        )
        links.append(link.between(tube.a, tube.b, one_way=True) if tube.check else link)
    for driver in plan.drivers:
        head = driver.head_m * PA_PER_M
        most = driver.most_lps * M3_S_PER_LPS
        links.append(Link(driver.a, driver.b, head_pa=head, pump_quadratic=head / most**2, one_way=True))
    return Network(
        len(plan.demands_lps),
        tuple(links),
        DENSITY,
        VISCOSITY_PA_S,
        {node: head * PA_PER_M for node, head in plan.heads_m.items()},
        {
            node: demand * M3_S_PER_LPS
            for node, demand in enumerate(plan.demands_lps)
            if node not in plan.heads_m
        },
    )


class Engine:
    """The network loaded into the engine, ready to be solved as often as asked."""

    def __init__(self, plan: Plan, accuracy: float = 1e-8) -> None:
        self.plan = plan
        self.project: Any = toolkit.createproject()
        toolkit.init(self.project, os.devnull, "", toolkit.LPS, toolkit.DW)
        for node, demand in enumerate(plan.demands_lps):
            self._node(node, demand)
        # Only now: the engine numbers junctions first, so that adding one moves the rest.
        self.nodes = [toolkit.getnodeindex(self.project, f"n{node}") for node in range(len(plan.demands_lps))]
        self.links = [self._tube(place, tube) for place, tube in enumerate(plan.tubes)]
        self.links += [self._driver(place, driver) for place, driver in enumerate(plan.drivers)]
        for option, value in (
            (toolkit.SP_VISCOS, VISCOSITY_SHARE),
            (toolkit.ACCURACY, accuracy),
            (toolkit.TRIALS, 400),
        ):
            toolkit.setoption(self.project, option, value)
        toolkit.openH(self.project)

    def _node(self, node: int, demand: float) -> None:
        if node in self.plan.heads_m:
            index: int = toolkit.addnode(self.project, f"n{node}", toolkit.RESERVOIR)
            toolkit.setnodevalue(self.project, index, toolkit.ELEVATION, self.plan.heads_m[node])
        else:
            index = toolkit.addnode(self.project, f"n{node}", toolkit.JUNCTION)
            toolkit.setjuncdata(self.project, index, 0.0, demand, "")

    def _tube(self, place: int, tube: Tube) -> int:
        kind = toolkit.CVPIPE if tube.check else toolkit.PIPE
        index: int = toolkit.addlink(self.project, f"l{place}", kind, f"n{tube.a}", f"n{tube.b}")
        toolkit.setpipedata(
            self.project, index, tube.length_m, tube.bore_mm, tube.roughness_mm, tube.loss_factor
        )
        return index

    def _driver(self, place: int, driver: Driver) -> int:
        index: int = toolkit.addlink(self.project, f"d{place}", toolkit.PUMP, f"n{driver.a}", f"n{driver.b}")
        toolkit.addcurve(self.project, f"c{place}")
        curve = toolkit.getcurveindex(self.project, f"c{place}")
        points = ((0.0, 1.0), (0.5, 0.75), (1.0, 0.0))
        for number, (flow, head) in enumerate(points, start=1):
            toolkit.setcurvevalue(self.project, curve, number, flow * driver.most_lps, head * driver.head_m)
        toolkit.setheadcurveindex(self.project, index, curve)
        return index

    def run(self) -> None:
        """Solve from fresh starting flows."""
        with warnings.catch_warnings():
            # It warns of a pump that runs past its most flow, where the curve goes on below no head.
            warnings.simplefilter("ignore")
            self.solve()

    def solve(self) -> None:
        """The same with nothing about it; what the engine has to say against it comes as a warning."""
        toolkit.initH(self.project, toolkit.INITFLOW)
        toolkit.runH(self.project)

    def shut(self, tubes: Iterable[int], *, is_open: bool = False) -> None:
        """Shut these tubes, by place, or open them again."""
        for place in tubes:
            toolkit.setlinkvalue(self.project, self.links[place], toolkit.INITSTATUS, float(is_open))

    def flows_lps(self) -> list[float]:
        """Flow along every tube, then every pump."""
        return [toolkit.getlinkvalue(self.project, index, toolkit.FLOW) for index in self.links]

    def heads_m(self) -> list[float]:
        """Head at every node."""
        return [toolkit.getnodevalue(self.project, index, toolkit.HEAD) for index in self.nodes]

    def close(self) -> None:
        """Give the project back."""
        toolkit.closeH(self.project)
        toolkit.close(self.project)
        toolkit.deleteproject(self.project)


def grid(count: int, random: np.random.Generator) -> Plan:
    """A looped network of about `count` pipes: a grid of nodes, every mesh a loop."""
    side = max(2, round((count / 2) ** 0.5 + 0.5))
    tubes = []
    for row in range(side):
        for column in range(side):
            node = row * side + column
            if column + 1 < side:
                tubes.append((node, node + 1))
            if row + 1 < side:
                tubes.append((node, node + side))
    return _dressed(side * side, tubes, random)


def house(radiators: int, random: np.random.Generator) -> tuple[Plan, tuple[int, ...]]:
    """A house in two-pipe: a pump, a heat source, mains with two lengths from tee to tee, and to each
    radiator two pipes. Seven tubes a radiator; and which tubes stand for the radiators."""
    tubes = [Tube(1, 2, 1.0, 20.2, 0.0015, 25.0)]
    nodes, flow, back = 3, 2, 0
    stand_for = []
    for _ in range(radiators):
        bends, tees = (nodes, nodes + 1), (nodes + 2, nodes + 3)
        inlet, outlet = nodes + 4, nodes + 5
        nodes += 6
        bore = float(random.choice([13.6, 20.2]))
        for a, b in ((flow, bends[0]), (bends[0], tees[0]), (tees[1], bends[1]), (bends[1], back)):
            tubes.append(Tube(a, b, float(random.uniform(0.5, 6)), bore, 0.0015, 0.9))
        flow, back = tees
        tubes.append(Tube(flow, inlet, float(random.uniform(0.5, 4)), 13.6, 0.0015, 1.5))
        stand_for.append(len(tubes))
        tubes.append(Tube(inlet, outlet, 0.5, 13.6, 0.0015, float(random.uniform(80, 900))))
        tubes.append(Tube(outlet, back, float(random.uniform(0.5, 4)), 13.6, 0.0015, 1.5))
    drivers = (Driver(0, 1, 5.0, 0.7),)
    return Plan((0.0,) * nodes, tuple(tubes), drivers), tuple(stand_for)


def _dressed(nodes: int, pairs: Sequence[tuple[int, int]], random: np.random.Generator) -> Plan:
    bores = np.array([13.6, 20.2, 26.2, 32.6, 39.6, 51.6])
    tubes = tuple(
        Tube(
            *((a, b) if random.random() < 0.5 else (b, a)),
            length_m=float(random.uniform(1, 60)),
            bore_mm=float(random.choice(bores)),
            roughness_mm=float(random.choice([0.0015, 0.007, 0.046])),
            loss_factor=float(random.choice([0.0, 0.75, 4.0])),
        )
        for a, b in pairs
    )
    demands = random.uniform(0, 0.6 / nodes**0.5, nodes)
    demands[random.random(nodes) < 0.3] = 0.0
    return Plan(tuple(float(each) for each in demands), tubes)


def looped(random: np.random.Generator) -> Plan:
    """A random network with loops; some pipes hold a check valve, and some networks have two given heads
    and pumps."""
    nodes = int(random.integers(4, 24))
    pairs = [(int(random.integers(0, node)), node) for node in range(1, nodes)]
    for _ in range(int(random.integers(2, nodes + 2))):
        a, b = (int(each) for each in random.choice(nodes, 2, replace=False))
        pairs.append((a, b))
    plan = _dressed(nodes, pairs, random)
    # Only pipes beyond the tree hold a check valve: every node must be supplied whatever it does.
    tubes = tuple(
        Tube(**{**tube.__dict__, "check": place >= nodes - 1 and random.random() < 0.3})
        for place, tube in enumerate(plan.tubes)
    )
    heads, drivers = {0: 50.0}, []
    if random.random() < 0.5:
        heads[nodes - 1] = float(random.uniform(47, 53))
    for _ in range(int(random.integers(0, 3))):
        a, b = (int(each) for each in random.choice(nodes, 2, replace=False))
        drivers.append(Driver(a, b, float(random.uniform(1, 6)), float(random.uniform(0.3, 1.5))))
    demands = tuple(0.0 if node in heads else demand for node, demand in enumerate(plan.demands_lps))
    return Plan(demands, tubes, tuple(drivers), heads)

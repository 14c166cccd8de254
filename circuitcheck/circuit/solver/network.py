"""A hydraulic network as plain numbers: links between nodes, and the states it is solved for. SI units."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from math import inf, pi


@dataclass(frozen=True, slots=True)
class Link:
    """One way for water from node `a` to node `b`; pressure falls along it by, for a flow Q from a to b,

    `opens_at_pa` − `head_pa` + friction(Q) + (`quadratic` + `pump_quadratic`) · Q|Q|.

    Friction is that of a pipe where `length_m` is above 0. `head_pa`, with `pump_quadratic`, is a pump's
    curve, from its shut-off head down; standing still, it has the second alone. `one_way`: no flow
    from b to a, and none at all while the pressure difference is below `opens_at_pa`. `limit_m3_s`:
    a valve that takes up whatever pressure would drive more than that through.
    """

    a: int
    b: int
    length_m: float = 0.0
    diameter_m: float = 0.0
    roughness_m: float = 0.0
    quadratic: float = 0.0
    head_pa: float = 0.0
    pump_quadratic: float = 0.0
    one_way: bool = False
    opens_at_pa: float = 0.0
    limit_m3_s: float = inf

    def between(self, a: int, b: int, *, one_way: bool | None = None) -> Link:
        """The same way between other nodes; `dataclasses.replace` takes three times as long."""
        return Link(
            a,
            b,
            self.length_m,
            self.diameter_m,
            self.roughness_m,
            self.quadratic,
            self.head_pa,
            self.pump_quadratic,
            self.one_way if one_way is None else one_way,
            self.opens_at_pa,
            self.limit_m3_s,
        )

    @property
    def lossless(self) -> bool:
        """Whether it is nothing but a wide way both ways."""
        return not (
            self.length_m
            or self.quadratic
            or self.pump_quadratic
            or self.head_pa
            or self.one_way
            or self.limit_m3_s < inf
        )


@dataclass(frozen=True, slots=True)
class State:
    """One position of everything: the links that are shut, and the pumps that stand still, by place."""

    shut: frozenset[int] = frozenset()
    stopped: frozenset[int] = frozenset()


@dataclass(frozen=True, slots=True)
class Network:
    """Nodes 0 to `nodes` − 1 and the links between them, filled with one water.

    `fixed_pa` holds nodes whose pressure is given, `drawn_m3_s` what is drawn at nodes. A closed
    circuit has neither; its pressures are then differences to a node of its own.
    """

    nodes: int
    links: tuple[Link, ...]
    density_kg_m3: float
    viscosity_pa_s: float
    fixed_pa: Mapping[int, float] = field(default_factory=dict)
    drawn_m3_s: Mapping[int, float] = field(default_factory=dict)

    def check(self) -> None:
        """Raises ValueError, naming the link, for numbers that no network can have."""
        if not (self.density_kg_m3 > 0 and self.viscosity_pa_s > 0):
            raise ValueError("water needs a density and a viscosity above 0")
        for place, link in enumerate(self.links):
            if not (
                0 <= link.length_m < inf
                and 0 <= link.diameter_m < inf
                and 0 <= link.roughness_m < inf
                and 0 <= link.quadratic < inf
                and 0 <= link.head_pa < inf
                and 0 <= link.opens_at_pa < inf
            ):
                raise ValueError(f"link {place}: a length, width, roughness, loss or head below 0, or none")
            if link.length_m and not link.diameter_m:
                raise ValueError(f"link {place}: a pipe of no width")
            if not (0 <= link.a < self.nodes and 0 <= link.b < self.nodes):
                raise ValueError(f"link {place}: ends at no node")
            if link.opens_at_pa and not link.one_way:
                raise ValueError(f"link {place}: a spring in a way that is open both ways")
            if not (link.limit_m3_s > 0 and 0 <= link.pump_quadratic < inf):
                raise ValueError(f"link {place}: a limit or a pump that lets nothing through")


def pipe(
    a: int,
    b: int,
    *,
    length_m: float,
    diameter_m: float,
    density_kg_m3: float,
    roughness_m: float = 0.0,
    loss_factor: float = 0.0,
) -> Link:
    """A pipe with the loss factors of its fittings added up."""
    fittings = 0.0
    if loss_factor:
        fittings = loss_factor * density_kg_m3 / 2 / (pi * diameter_m**2 / 4) ** 2
    return Link(a, b, length_m, diameter_m, roughness_m, fittings)


LEAST_KV_M3H = 1e-9
"""A valve that lets less through is shut for all that can be measured; the square of far less is no number."""


def kv_quadratic(kv_m3h: float) -> float:
    """Pa/(m³/s)² of a passage of that kv: 1 bar drives kv cubic metres an hour."""
    return 1e5 / (max(kv_m3h, LEAST_KV_M3H) / 3600) ** 2


def pump(a: int, b: int, *, shut_off_pa: float, maximum_flow_m3_s: float) -> Link:
    """A pump from its inlet a to its outlet b, by the parabola through its shut-off head and its most flow."""
    return Link(a, b, head_pa=shut_off_pa, pump_quadratic=shut_off_pa / maximum_flow_m3_s**2)

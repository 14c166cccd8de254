"""Whether a part that lets water through one way only stands against the only way water can go.

It does if no loop takes it in its direction, and one would if it were turned round. What gives the
direction is the heat source (or the exchanger that heats the water), the main on its way to a tap,
and the store that a secondary return comes back to; only where there is none of these, the pump.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import Enum

from circuitcheck.circuit.flowways import WayEdge, Ways, reduced
from circuitcheck.circuit.rounds import AIR, AIR_VERTEX, RETURNS, Body


class Sort(Enum):
    """What sort of part is asked about."""

    PUMP = "pump"
    BYPASS = "bypass"
    BLEND = "blending valve"
    OTHER = "other"


def stands_backwards(body: Body, key: str, sort: Sort) -> bool:
    """Whether the part with that key does. Raises TooLargeError beyond the search bound.

    Others are taken as they are drawn; where that does not tell, because several parts stand the
    wrong way, all but the heat source are taken as open both ways.
    """
    if body.surely_together(key, lambda: _anchors(body, sort)):
        return False
    if _goes_forward(body, body.ways, key, sort):
        return False
    # Turned round, a blending valve would let water into a store's hot side, which may seem a way round
    # where it is the store's cold feed that is blocked: so what blocks it is asked about first.
    if sort is not Sort.BLEND and _would_go(body, Ways(reduced(_turned(body.in_rings, key))), key, sort):
        return True
    if not body.warms and sort is not Sort.BLEND:
        return False
    free = _freed(body, key)
    if _goes_forward(body, Ways(reduced(free)), key, sort):
        return False
    if sort is Sort.BLEND and _would_go(body, Ways(reduced(_turned(body.in_rings, key))), key, sort):
        return True
    if not body.warms:
        return False
    return _would_go(body, Ways(reduced(_turned(free, key))), key, sort)


Ports = tuple[int, int, int, int]
"""The vertices of a separator's load flow, load return, source flow and source return."""


def ways_by_separators(body: Body, separators: Iterable[Ports]) -> Ways:
    """The ways as drawn, but through each separator only out by its load's flow and in by its return."""
    return Ways(reduced(_marked(edge, separators) for edge in body.in_rings))


def by_separators(body: Body, key: str, ways: Ways, separators: Iterable[Ports]) -> bool | None:
    """Whether a part stands against the way that separators give the water (`ways`); None where they do not
    tell. Raises TooLargeError beyond the search bound.

    Water can go either way through a separator; but its hot water stands at the load's flow. What else
    stands the wrong way round beside the part is taken as open both ways.
    """
    if any(body.loop_through(ways, key, heat) for heat in body.warms):
        return False
    fixed = frozenset((key, *body.warms))
    free = [
        _marked(
            edge if edge.pumps & fixed or not edge.pumps else edge._replace(forward=True, back=True),
            separators,
        )
        for edge in body.in_rings
    ]
    for wrong, edges in ((False, free), (True, _turned(free, key))):
        freed = Ways(reduced(edges))
        if any(body.loop_through(freed, key, heat) for heat in body.warms):
            return wrong
    return None


def _marked(edge: WayEdge, separators: Iterable[Ports]) -> WayEdge:
    """A way inside a separator, out by its load's flow and in by its load's return only."""
    for outlet, inlet, *others in separators:
        ends = {edge.a, edge.b}
        if ends <= {outlet, inlet, *others} and len(ends) == 2:
            forward = edge.a != outlet and edge.b != inlet
            back = edge.b != outlet and edge.a != inlet
            return edge._replace(forward=edge.forward and forward, back=edge.back and back)
    return edge


def _guides(body: Body) -> tuple[str, ...]:
    """What a ring is known by: what heats the water, or the store it comes back to."""
    return (*body.warms, *((RETURNS,) if body.strands.comes_back else ()))


def _one_way(body: Body, key: str) -> bool:
    """Whether that key stands on this water, and lets water through one way only."""
    return any(key in edge.pumps and not (edge.forward and edge.back) for edge in body.as_drawn)


def _goes_forward(body: Body, ways: Ways, key: str, sort: Sort) -> bool:
    """Whether some loop takes the part in its direction."""
    if not ways.driven(key):  # on no loop at all: of thousands of pumps in a row none is asked about each
        return False
    return any(body.loop_through(ways, key, anchor) for anchor in _anchors(body, sort))


def _anchors(body: Body, sort: Sort) -> list[str]:
    """What a loop must take in beside the part. A bypass may lead round the pump alone."""
    anchors = [*_guides(body), *((AIR,) if body.open_to_air else ())]
    if not anchors or sort is Sort.BYPASS:
        anchors += body.drives
    return anchors


def _would_go(body: Body, turned: Ways, key: str, sort: Sort) -> bool:
    """Whether a driven loop takes the part once it is turned round."""
    guides = _guides(body)
    if sort is Sort.PUMP:
        # An exchanger lets water through both ways: it can't say which way a pump should drive.
        guides = tuple(guide for guide in guides if _one_way(body, guide))
    pumps = body.drives or (key,)
    if any(body.loop_through(turned, key, guide, pump) for guide in guides for pump in pumps):
        return True
    # Without a guide there is no telling which of two pumps stands wrong: only what is none can.
    unguided = body.drives if not guides and sort is not Sort.PUMP else ()
    if any(body.loop_through(turned, key, pump) for pump in unguided):
        return True
    if not body.open_to_air or (sort is Sort.PUMP and _in_a_ring(body, key)):
        return False
    return not body.loop_through(body.ways, key) and bool(body.loop_through(turned, key, AIR))


def _in_a_ring(body: Body, pump: str) -> bool:
    """Whether pipes lead round from the pump's outlet to its inlet, whichever way water can go."""
    edges = [
        edge if pump in edge.pumps else edge._replace(forward=True, back=True)
        for edge in body.in_rings
        if AIR_VERTEX not in (edge.a, edge.b)
    ]
    return bool(body.loop_through(Ways(reduced(edges)), pump))


def _turned(edges: Iterable[WayEdge], key: str) -> list[WayEdge]:
    """The same ways with the part turned round."""
    return [edge._replace(a=edge.b, b=edge.a) if key in edge.pumps else edge for edge in edges]


def _freed(body: Body, key: str) -> list[WayEdge]:
    """The same ways, all open both ways but the part itself, what gives the direction and the air."""
    fixed = {key, AIR, *_guides(body)}
    return [
        edge if edge.pumps & fixed or not edge.pumps else edge._replace(forward=True, back=True)
        for edge in body.in_rings
    ]

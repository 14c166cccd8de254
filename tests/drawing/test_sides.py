"""The sides of a tee are dealt out as a look at all ways to deal them tells."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.drawing.sides import WAYS, Seen, Way, fewest_bends, opposite, side_costs, wanted
from circuitcheck.geometry import Point

HERE = Point(0.0, 0.0)
PORTS = ("a", "b", "branch")
PLACES = st.builds(Point, st.integers(-6, 6).map(float), st.integers(-6, 6).map(float))
FACES = st.none() | st.sampled_from(WAYS)


@given(PLACES)
def test_an_end_that_may_be_met_from_any_side_takes_the_fewest_bends_of_all(at: Point) -> None:
    for way in WAYS:
        each = [fewest_bends(HERE, way, Seen(at, side)) for side in WAYS]
        assert fewest_bends(HERE, way, Seen(at, None)) == min(each)


def wants(way: Way, far: Seen) -> float:
    """What a side costs its own port: a bend is four squares, to turn one's back on the far end another."""
    dx, dy = far.at.x, far.at.y
    size = abs(dx) + abs(dy)
    ahead = (dx * way[0] + dy * way[1]) / size if size else 1.0
    return 4.0 * fewest_bends(HERE, way, far) + (4.0 if ahead < 0 else 0.0) + (1 - ahead) / 2


def dealt(settled: Mapping[str, Way], waiting: Mapping[str, Seen]) -> dict[str, dict[Way, float]]:
    """What each side of each waiting port costs the others: all ways to deal the sides, one by one."""
    found: dict[str, dict[Way, float]] = {name: {} for name in waiting}
    for sides in permutations([way for way in WAYS if way not in settled.values()], len(waiting)):
        taken = {**settled, **dict(zip(waiting, sides, strict=True))}
        aside = 1.5 if "a" in taken and "b" in taken and taken["a"] != opposite(taken["b"]) else 0.0
        for name, side in zip(waiting, sides, strict=True):
            rest = sum(wants(taken[other], far) for other, far in waiting.items() if other != name)
            found[name][side] = min(found[name].get(side, rest + aside), rest + aside)
    return {
        name: {way: cost - min(costs.values()) for way, cost in costs.items()}
        for name, costs in found.items()
    }


@given(st.data())
def test_sides_are_dealt_as_all_ways_to_deal_them_tell(data: st.DataObject) -> None:
    settled, waiting = {}, {}
    for port, way in zip(PORTS, data.draw(st.permutations(WAYS)), strict=False):
        match data.draw(st.sampled_from(("settled", "waiting", "free"))):
            case "settled":
                settled[port] = way
            case "waiting":
                waiting[port] = Seen(data.draw(PLACES), data.draw(FACES))
    rows = {port: wanted(HERE, far) for port, far in waiting.items()}
    for port, far in waiting.items():
        assert rows[port] == pytest.approx([wants(way, far) for way in WAYS])
    for port, costs in dealt(settled, waiting).items():
        assert side_costs(port, settled, rows, ("a", "b")) == pytest.approx(costs)

"""A vent that falls on its way up, and what is no dip."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.houses import sealed
from tests.checks.open_vented.plants import pumped_vented, vented_store, with_data

NAME = "vent-pipe-dips"


def numbered(ways: str) -> str:
    """Those ways as pipes p1, p2, ..."""
    return "\n".join(f"p{number}: {line}" for number, line in enumerate(way(ways).splitlines(), 1))


IN_TWO = "vent: tv.branch - x.in\nlast: x.out - ov.connection"


def in_two(first: float | None, last: float | None, **parts: Any) -> Drawing:
    """The vent in two pieces with a coupling between."""
    data = {"vent": {"rise_m": first}, "last": {"rise_m": last}}
    return pumped_vented(IN_TWO, without="vent", data=data, x="strainer", **parts)


SOUND: dict[str, Drawing] = {
    "rises all the way": pumped_vented(),
    "level is no dip": pumped_vented(data={"flow": {"rise_m": 0}}),
    "last turn down over the cistern": in_two(2.8, -0.2),
    "drawn from the top": pumped_vented("vent: ov.connection - tv.branch", without="vent",
                                        data={"vent": {"rise_m": -2.5}}),
    "a dip elsewhere": pumped_vented(data={"push": {"rise_m": -9}}),
    "a store's vent": vented_store(),
    "rise told by two heights": pumped_vented(data={"vent": {"rise_m": None}}, **with_data("ov", height_m=6)),
    "an air vent beside the last turn down": pumped_vented(
        "vent: tv.branch - x.a\nlast: x.b - ov.connection\nair: x.branch - av.connection",
        without="vent", data={"vent": {"rise_m": 3}, "last": {"rise_m": -0.1}}, x="tee", av="air_vent",
    ),
    "combined with the feed, which rises": pumped_vented(
        without="vent", hs=("heat_source", {"combined_feed_and_vent": True}),
    ),
}  # fmt: skip

FIRES: dict[str, tuple[Drawing, tuple[str, ...], tuple[str, ...]]] = {
    "the vent's own pipe": (pumped_vented(data={"vent": {"rise_m": -0.01}}), ("ov", "hs"), ("vent",)),
    "the flow to its tee": (pumped_vented(data={"flow": {"rise_m": -0.2}}), ("ov", "hs"), ("flow",)),
    "first piece down": (in_two(-0.2, 2.7), ("ov", "hs"), ("vent",)),
    "down twice": (in_two(-0.2, -0.1), ("ov", "hs"), ("vent", "last")),
    "last down from below the water": (
        in_two(1.0, -0.2, **with_data("ov", height_m=4.3)), ("ov", "hs"), ("last",),
    ),
    "one fall is known, another pipe is not": (in_two(-0.2, None), ("ov", "hs"), ("vent",)),
    "a store's vent": (vented_store(data={"hot": {"rise_m": -0.1}}), ("sv", "st"), ("hot",)),
    "combined with the feed": (
        pumped_vented(
            without="vent", data={"feed": {"rise_m": 0.1}}, hs=("heat_source", {"combined_feed_and_vent": True}),
        ),
        ("fc", "hs"), ("feed",),
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "components", "pipes"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, components: tuple[str, ...], pipes: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components, finding.pipes) == ("danger", components, pipes)


@pytest.mark.parametrize("high", ["x.branch y.branch", "x.branch s1.in:out s2.in:out y.branch"])
def test_a_known_way_that_rises_outweighs_another_that_falls(high: str) -> None:
    """However many parts it leads through."""
    level = {pipe: {"rise_m": 0} for pipe in ("p1", "p2", "p3")}
    drawing = pumped_vented(
        f"flow: hs.flow - x.a\nlow: x.b - y.b\non: y.a - tv.a\n{numbered(high)}", without="flow",
        data={**level, "flow": {"rise_m": 0}, "low": {"rise_m": -1}, "on": {"rise_m": 2}},
        x="tee", y="tee", s1="strainer", s2="strainer",
    )  # fmt: skip
    assert found(NAME, drawing) == ()


def test_unknown_rises_are_all_named() -> None:
    unknown = {pipe: {"rise_m": None} for pipe in ("vent", "flow", "back")}
    finding = only(NAME, pumped_vented(data=unknown))
    assert finding.missing == ("flow.rise_m", "vent.rise_m")
    assert finding.would_be is not None and finding.would_be.value == "danger"


def test_a_rise_that_the_rest_of_its_loop_tells_is_known() -> None:
    assert found(NAME, pumped_vented(data={"flow": {"rise_m": None}})) == ()
    drawing = pumped_vented(data={"flow": {"rise_m": None}, "back": {"rise_m": 1.5}})
    assert only(NAME, drawing).pipes == ("flow",)


def test_sealed_is_not_applicable() -> None:
    assert asked(NAME, sealed()).status == "not applicable"

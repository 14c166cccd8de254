"""What a loop feeds, and what falls off when a valve shuts, proved against listing every loop."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.keyed import rounds_of
from circuitcheck.circuit.labels import shown
from circuitcheck.circuit.rounds import Body
from circuitcheck.drawing.value import Drawing
from tests.benchmarks.synthetic import plant
from tests.checks.houses import pumped
from tests.circuit.brute_rounds import Ring, rings
from tests.circuit.random_circuits import circuits, plants


def fed(all_rings: list[Ring]) -> frozenset[str]:
    """Every emitter on a ring with a pump and a heat source."""
    return frozenset[str]().union(*(ring.emitters for ring in all_rings if ring.pumps and ring.heats))


@given(st.one_of(circuits(), plants()))
def test_what_is_fed(drawing: Drawing) -> None:
    bodies = rounds_of(Circuit(drawing)).bodies
    assert frozenset[str]().union(*(body.fed for body in bodies)) == fed(rings(drawing))


@given(st.one_of(circuits(), plants()))
def test_what_falls_off(drawing: Drawing) -> None:
    all_rings = rings(drawing)
    usual = fed(all_rings)
    for body in rounds_of(Circuit(drawing)).bodies:
        here = usual & set(body.takes)
        for label in {label for edge in body.edges for label in edge.labels}:
            left = [ring for ring in all_rings if shown(label) not in ring.entries]
            assert body.behind(label) == here - fed(left)
        for pump in body.drives:
            left = [ring for ring in all_rings if pump not in ring.pumps]
            assert body.behind(pump) == here - fed(left)


def body_of(drawing: Drawing, key: str) -> Body:
    body = rounds_of(Circuit(drawing)).of(key)
    assert body is not None
    return body


def test_a_walk_that_meets_itself_is_no_loop() -> None:
    """The radiator hangs between two tees in one branch: out and back lead through the same tee."""
    drawing = pumped(
        "hs.flow pu.in:out t1.a:b r1.flow:return hs.return",
        "t1.branch t2.a:b r2.flow:return t2.branch",
        r1="radiator", r2="radiator",
    )  # fmt: skip
    assert body_of(drawing, "r2").fed == {"r1"}


def test_through_an_exchanger() -> None:
    drawing = pumped(
        "hs.flow pu.in:out hx.primary_in:primary_out hs.return",
        "hx.secondary_out p2.in:out rad.flow:return hx.secondary_in",
        hx="heat_exchanger", p2="pump", rad="radiator",
    )  # fmt: skip
    assert body_of(drawing, "rad").fed == {"rad"}
    assert {shown(key) for key in body_of(drawing, "hs").fed} == {"hx:primary_in"}


@pytest.mark.parametrize("behind_a_separator", ["pump", "strainer"])
def test_across_a_separator(behind_a_separator: str) -> None:
    drawing = pumped(
        "hs.flow pu.in:out se.source_flow:source_return hs.return",
        "se.load_flow p2.in:out rad.flow:return se.load_return",
        se="separator", p2=behind_a_separator, rad="radiator",
    )  # fmt: skip
    assert body_of(drawing, "rad").fed == {"rad"}


@pytest.mark.parametrize(
    ("heat", "vented", "coil", "radiator"),
    [("switched", False, False, False), ("switched", True, True, False), ("uncontrolled", False, True, True)],
)
def test_by_gravity(heat: str, vented: bool, coil: bool, radiator: bool) -> None:
    vessel = "fc.feed t3.branch" if vented else "ev.connection t3.branch"
    held: dict[str, Any] = {vessel[:2]: "feed_cistern" if vented else "expansion_vessel"}
    drawing = pumped(
        "hs.flow t1.a:b vs.coil_flow:coil_return t2.a:b t3.a:b hs.return",
        "t1.branch rad.flow:return t2.branch",
        vessel,
        hs=("heat_source", {"heat": heat}), vs="vented_store", rad="radiator",
        **held,
    )  # fmt: skip
    expected = {id for id, served in (("vs", coil), ("rad", radiator)) if served}
    assert body_of(drawing, "vs").fed == expected


@pytest.mark.parametrize("relief", ["", "t6.branch bv.in:out t5.branch"], ids=["alone", "bypassed pump"])
def test_what_a_zone_valve_takes_with_it_beside_an_open_bypass(relief: str) -> None:
    """With the zone's pipe gone, its radiators still hang on the rest by one end; what is in one of
    two side by side stands without the other."""
    drawing = pumped(
        "hs.flow t5.a:b pu.in:out t6.a:b t1.a:b zv.in:out t3.a:b z1.in:out r1.flow:return t4.a:b t2.a:b hs.return",
        "t1.branch t2.branch", "t3.branch z2.in:out r2.flow:return t4.branch", relief,
        zv="zone_valve", z1="zone_valve", z2="zone_valve", r1="radiator", r2="radiator", bv="bypass_valve",
    )  # fmt: skip
    body = body_of(drawing, "hs")
    assert [body.behind(valve) for valve in ("zv", "z1", "z2")] == [{"r1", "r2"}, {"r1"}, {"r2"}]


def test_a_large_plant_is_seen_at_once() -> None:
    """Every radiator proved in one pass, and what falls off a valve seen nearby: no search each."""
    drawing = plant(2_000)
    body = body_of(drawing, "c0")
    assert body.fed == set(body.takes)
    valves = [id for id, part in drawing.components.items() if part.kind.name == "zone_valve"]
    assert all(len(body.behind(valve)) == 1 for valve in valves)

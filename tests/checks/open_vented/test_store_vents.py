"""A vented store without its open vent, and valves that can part the two."""

from __future__ import annotations

from typing import Any

import networkx as nx
import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, danger, found, only, told
from tests.checks.houses import SECURED, sealed
from tests.checks.open_vented.plants import pumped_vented, vented_store, with_data
from tests.made import Part, made

ABSENT = "store-vent-absent"
CUT_OFF = "store-vent-can-be-cut-off"

IN_VENT = "up: th.b - v.a\nu2: v.b - sv.connection"
BEFORE_TEE = "hot: st.hot - v.a\nh2: v.b - th.a"


def test_sound() -> None:
    for check in (ABSENT, CUT_OFF):
        assert (found(check, vented_store()), asked(check, vented_store()).status) == ((), "judged")


def test_a_valve_in_the_cold_feed_is_usual() -> None:
    assert "iv" in vented_store().components
    assert found(CUT_OFF, vented_store()) == ()


@pytest.mark.parametrize(
    "drawing",
    [
        vented_store(without="up"),
        vented_store("up: th.b - sv.inlet", without="up", sv="safety_valve"),
        vented_store(
            "cold: iv.b - x.a\nc2: x.b - st.cold\nup: x.branch - sv.connection", without="cold up", x="tee"
        ),
    ],
    ids=["none", "a safety valve instead", "on the cold feed"],
)
def test_absent(drawing: Drawing) -> None:
    finding = only(ABSENT, drawing)
    assert (finding.grade.value, finding.components) == ("danger", ("st",))
    assert found(CUT_OFF, drawing) == ()


def test_a_check_valve_in_the_vent_is_named() -> None:
    drawing = vented_store("up: th.b - v.in\nu2: v.out - sv.connection", without="up", v="check_valve")
    assert only(ABSENT, drawing).components == ("st", "v", "sv")


@pytest.mark.parametrize("valve", ["isolating_valve", SECURED, "balancing_valve"], ids=str)
@pytest.mark.parametrize(("more", "gone"), [(IN_VENT, "up"), (BEFORE_TEE, "hot")])
def test_cut_off(valve: Part, more: str, gone: str) -> None:
    drawing = vented_store(more, without=gone, v=valve)
    assert told(CUT_OFF, drawing) == [danger("st", "v", "v")]


def test_two_vents_need_two_valves() -> None:
    more = (
        "up: th.b - x.a\na1: x.b - v.a\na2: v.b - sv.connection\nb1: x.branch - w.a\nb2: w.b - s2.connection"
    )
    parts: dict[str, Any] = {"x": "tee", "s2": "open_vent", "v": "isolating_valve", "w": "isolating_valve"}
    assert told(CUT_OFF, vented_store(more, without="up", **parts)) == [danger("st", "v w")]


def test_heating_vent_is_not_the_stores() -> None:
    drawing = pumped_vented("hot: st.hot - bath.hot", st="vented_store", bath="outlet")
    assert only(ABSENT, drawing).components == ("st",)


def test_without_a_vented_store_neither_applies() -> None:
    assert {asked(check, sealed()).status for check in (ABSENT, CUT_OFF)} == {"not applicable"}


def test_cured_by_taking_the_valve_out() -> None:
    drawing = vented_store(IN_VENT, without="up", v=SECURED)
    cure = cures(analyse(drawing), only(CUT_OFF, drawing))[0]
    assert "v" not in cure.drawing.components


@pytest.mark.parametrize("check", ["open-vent-can-be-cut-off", "cold-feed-can-be-cut-off"])
def test_heatings_own_cures(check: str) -> None:
    drawing = {
        "open-vent-can-be-cut-off": pumped_vented(
            "vent: tv.branch - v.a\nlast: v.b - ov.connection", without="vent", v="isolating_valve"
        ),
        "cold-feed-can-be-cut-off": pumped_vented(
            "feed: fc.feed - v.a\nlast: v.b - tf.branch", without="feed", v="isolating_valve"
        ),
    }[check]
    proposed = cures(analyse(drawing), only(check, drawing))
    assert "v" not in proposed[0].drawing.components
    assert all(found(check, cure.drawing) == () for cure in proposed)


def test_a_pump_before_the_vent_is_not_taken_out_but_the_vent_moved() -> None:
    drawing = pumped_vented(
        "a: hs.flow - pu.in\nb: pu.out - tv.a\ngap: tv.b - tf.a\nc: tf.b - rad.flow\nd: rad.return - hs.return",
        without="flow gap suck push back",
        **with_data("pu", shut_off_head_m=1, height_m=1.1),
        rad=("radiator", {"thermostatic": False}),
    )
    check = "open-vent-can-be-cut-off"
    proposed = cures(analyse(drawing), only(check, drawing))
    assert all("pu" in cure.drawing.components for cure in proposed)
    assert all(found(check, cure.drawing) == () for cure in proposed)


JOINTS = ["st.hot", "st.cold", "v1.connection", "v2.connection"]
JOINTS += [f"t{n}.{port}" for n in range(3) for port in ("a", "b", "branch")]
JOINTS += [f"i{n}.{port}" for n in range(3) for port in ("a", "b")]


@given(st.permutations(JOINTS))
def test_both_against_every_position(order: list[str]) -> None:
    """A store, two vents, three tees and three valves joined at random; told anew with networkx."""
    pairs = list(zip(order[::2], order[1::2], strict=False))
    parts: dict[str, Part] = {"st": "vented_store", "v1": "open_vent", "v2": "open_vent"}
    parts |= {f"t{n}": "tee" for n in range(3)}
    parts |= {f"i{n}": "isolating_valve" for n in range(3)}
    drawing = made(parts, "\n".join(f"{a} - {b}" for a, b in pairs))

    def vents(shut: frozenset[str], *, through_store: bool) -> set[str]:
        graph: nx.Graph[str] = nx.Graph(pairs)
        graph.add_node("st.hot")
        for n in range(3):
            graph.add_edges_from([(f"t{n}.a", f"t{n}.b"), (f"t{n}.a", f"t{n}.branch")])
            if f"i{n}" not in shut:
                graph.add_edge(f"i{n}.a", f"i{n}.b")
        if through_store:
            graph.add_edge("st.hot", "st.cold")
        reached = nx.node_connected_component(graph, "st.hot")
        return {vent for vent in ("v1", "v2") if f"{vent}.connection" in reached}

    hot_vents = vents(frozenset(), through_store=False)
    assert bool(found(ABSENT, drawing)) == (not hot_vents)
    valves = ["i0", "i1", "i2"]
    sets = [frozenset(v for k, v in enumerate(valves) if bits >> k & 1) for bits in range(8)]
    cutting = [shut for shut in sets if not vents(shut, through_store=True) & hot_vents]
    findings = found(CUT_OFF, drawing)
    assert bool(findings) == bool(hot_vents and cutting)
    if findings and findings[0].witness is not None:
        assert len(findings[0].witness.shut) == min(map(len, cutting))
        assert set(findings[0].witness.alone) == {v for shut in cutting if len(shut) == 1 for v in shut}

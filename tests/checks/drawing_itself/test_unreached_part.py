"""Pieces of a drawing that no heat source, store or main is joined to."""

from __future__ import annotations

import networkx as nx
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only, way
from tests.checks.houses import sealed, store_discharge, vented
from tests.made import Part, made

NAME = "unreached-part"

REACHED: dict[str, Drawing] = {
    "a sealed circuit": sealed(),
    "an open-vented circuit": vented(),
    "a discharge, beyond its valve": store_discharge(),
    "through shut ways": made(
        {"cm": "cold_main", "fl": "filling_link", "ev": "expansion_vessel"}, way("cm.outlet fl.supply:system ev.connection")
    ),
    "the other side of an exchanger": made(
        {"hs": "heat_source", "hx": "heat_exchanger", "rad": "radiator"},
        way("hs.flow hx.primary_in", "hx.secondary_out rad.flow"),
    ),
    "a vented store's": made({"vs": "vented_store", "ol": "outlet"}, way("vs.hot ol.hot")),
    "a combination's": made({"ch": "combination_heat_source", "ol": "outlet"}, way("ch.hot ol.hot")),
    "a part that stands alone": made({"hs": "heat_source", "rad": "radiator", "pu": "pump"}, way("hs.flow rad.flow")),
}  # fmt: skip
UNREACHED: dict[str, tuple[Drawing, tuple[str, ...], tuple[str, ...]]] = {
    "two radiators": (made({"r1": "radiator", "r2": "radiator"}, way("r1.flow r2.return")), ("r1", "r2"), ("p1",)),
    "beside a circuit": (sealed("v1.b v2.a", v1="isolating_valve", v2="isolating_valve"), ("v1", "v2"), ("p7",)),
    "only a pipe that leads nowhere": (made({"pu": "pump"}, "p1: pu.out - 4,4"), ("pu",), ("p1",)),
    "a cistern alone is no main": (made({"fc": "feed_cistern", "k": "cap"}, way("fc.feed k.connection")), ("fc", "k"), ("p1",)),
    "on itself": (made({"t": "tee"}, way("t.a:a t.b")), ("t",), ("p1",)),
}  # fmt: skip


@pytest.mark.parametrize("drawing", REACHED.values(), ids=REACHED.keys())
def test_reached(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "parts", "pipes"), UNREACHED.values(), ids=UNREACHED.keys())
def test_unreached(drawing: Drawing, parts: tuple[str, ...], pipes: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components, finding.pipes) == ("advice", parts, pipes)


@pytest.mark.parametrize("drawing", [Drawing(), made({"hs": "heat_source", "pu": "pump"}, "")])
def test_without_pipes_it_does_not_apply(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_many_parts_are_not_all_named() -> None:
    tees: dict[str, Part] = {f"t{number}": "tee" for number in range(9)}
    drawing = made(tees, "\n".join(f"t{number}.b - t{number + 1}.a" for number in range(8)))
    assert only(NAME, drawing).message.endswith("tee t3 and 5 more parts.")


@settings(max_examples=100, deadline=None)
@given(st.data())
def test_against_a_graph_library(data: st.DataObject) -> None:
    kinds = data.draw(
        st.lists(
            st.sampled_from(["tee", "tee", "tee", "heat_source", "cold_main", "vented_store"]), max_size=9
        )
    )
    parts: dict[str, Part] = {f"x{number}": kind for number, kind in enumerate(kinds)}
    ports = {
        "tee": ["a", "b", "branch"],
        "heat_source": ["flow", "return"],
        "cold_main": ["outlet"],
        "vented_store": ["cold", "hot"],
    }
    free = [f"x{number}.{port}" for number, kind in enumerate(kinds) for port in ports[kind]]
    order = data.draw(st.permutations(free))
    pairs = list(zip(order[::2], order[1::2], strict=False))[: data.draw(st.integers(0, 8))]
    graph: nx.Graph[str] = nx.Graph()
    graph.add_edges_from((a.split(".")[0], b.split(".")[0]) for a, b in pairs)
    wanted = {
        frozenset(piece)
        for piece in nx.connected_components(graph)
        if all(parts[part] == "tee" for part in piece)
    }
    drawing = made(parts, "\n".join(f"{a} - {b}" for a, b in pairs))
    assert {frozenset(finding.components) for finding in found(NAME, drawing)} == wanted

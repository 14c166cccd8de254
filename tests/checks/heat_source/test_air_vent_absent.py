"""High points of heating water, with and without something that lets air out."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.made import Part, made

NAME = "air-vent-absent"


def ring(
    heights: Mapping[str, float | None],
    *more: str,
    pipe_data: Mapping[str, Mapping[str, Any]] | None = None,
    **parts: Part,
) -> Drawing:
    """hs, a tee `top` in the flow, a store's coil, a tee `low` in the return; `top` has a branch."""
    usual: dict[str, Part] = {"hs": "heat_source", "top": "tee", "vs": "vented_store", "low": "tee", **parts}
    told: dict[str, Part] = {}
    for id, part in usual.items():
        kind, data = (part, {}) if isinstance(part, str) else part
        height = {"height_m": heights[id]} if id in heights else {}
        told[id] = (kind, {**data, **height})
    pipes = "\n".join(
        (
            "p1: hs.flow - top.a",
            "p2: top.b - vs.coil_flow",
            "p3: vs.coil_return - low.a",
            "p4: low.b - hs.return",
            *more,
        )
    )
    return made(told, pipes, pipe_data=pipe_data)


BASE = {"hs": 1.0, "top": 2.5, "vs": 1.5, "low": 0.3}
BRANCH = "p5: top.branch - xx.{}"


def test_fires() -> None:
    finding = only(NAME, ring(BASE))
    assert (finding.grade, finding.components, finding.numbers) == ("advice", ("top",), {"height_m": 2.5})


LETS_OUT = [
    ("air_vent", "connection"),
    ("radiator", "flow"),
    ("heating_zone", "flow"),
    ("open_vent", "connection"),
]


@pytest.mark.parametrize(("kind", "port"), [*LETS_OUT, ("feed_cistern", "feed")])
@pytest.mark.parametrize(("height_m", "fires"), [(2.6, False), (2.5, False), (2.496, False), (2.49, True)])
def test_what_lets_air_out_must_not_hang_below(kind: str, port: str, height_m: float, fires: bool) -> None:
    drawing = ring({**BASE, "xx": height_m}, BRANCH.format(port), xx=kind)
    assert [finding.components for finding in found(NAME, drawing)] == ([("top",)] if fires else [])
    assert asked(NAME, drawing).status == "judged"


@pytest.mark.parametrize(
    ("kind", "port"),
    [
        ("pressure_gauge", "connection"),
        ("safety_valve", "inlet"),
        ("expansion_vessel", "connection"),
        ("drain", "connection"),
        ("filling_link", "system"),
    ],
)
@pytest.mark.parametrize("branch", [BRANCH, "p5: xx.{} - top.branch"], ids=["to it", "from it"])
def test_what_stands_on_its_own_pipe_is_no_high_point_and_vents_none(
    kind: str, port: str, branch: str
) -> None:
    drawing = ring({**BASE, "xx": 3.0}, branch.format(port), xx=kind)
    assert [finding.components for finding in found(NAME, drawing)] == [("top",)]


@pytest.mark.parametrize("height_m", [2.4, 2.5, 3.0])
def test_a_capped_stub_lets_nothing_out(height_m: float) -> None:
    drawing = ring({**BASE, "xx": height_m}, BRANCH.format("connection"), xx="cap")
    assert [finding.components[0] for finding in found(NAME, drawing)] == ["top"]


def test_a_vent_in_the_heat_source_lets_out_what_is_there() -> None:
    low = {"hs": 3.0, "top": 2.5, "vs": 1.5, "low": 0.3}
    built_in: Part = ("heat_source", {"built_in": ["air_vent"]})
    assert found(NAME, ring(low, hs=built_in)) == ()
    assert [each.components for each in found(NAME, ring(low))] == [("hs",)]
    assert [each.components for each in found(NAME, ring(BASE, hs=built_in))] == [("top",)]


def test_level_parts_are_one_high_point() -> None:
    heights = {"hs": 1.0, "top": 2.5, "vs": 2.5, "low": 0.3}
    assert only(NAME, ring(heights)).components == ("top", "vs")
    vented = ring({**heights, "xx": 2.5}, "p5: low.branch - xx.connection", xx="air_vent")
    assert only(NAME, vented).components == ("top", "vs")


def test_two_high_points_are_two_findings() -> None:
    drawing = ring({"hs": 1.0, "top": 2.5, "vs": 1.5, "low": 2.0})
    assert {each.components for each in found(NAME, drawing)} == {("low",), ("top",)}


def test_rises_alone_are_enough() -> None:
    rises = {"p1": 1.5, "p2": -1.0, "p3": -1.2, "p4": 0.7}
    drawing = ring({}, pipe_data={id: {"rise_m": rise} for id, rise in rises.items()})
    finding = only(NAME, drawing)
    assert (finding.components, finding.numbers) == (("top",), {})


def test_heights_missing() -> None:
    finding = only(NAME, ring({"hs": 1.0, "top": 2.5, "low": 0.3}))
    assert (finding.grade, finding.would_be, finding.components) == ("unanswered", "advice", ("hs",))
    assert len(finding.missing) == 1 and finding.missing[0] in ("vs.height_m", "p2.rise_m", "p3.rise_m")


def test_what_is_known_settles_it() -> None:
    vented = ring({"xx": 2.5, "top": 2.5, "hs": 1.0}, BRANCH.format("connection"), xx="air_vent")
    finding = only(NAME, vented)
    assert "top.height_m" not in finding.missing


def test_a_drawing_without_heights_has_one_finding() -> None:
    finding = only(NAME, ring({}))
    assert finding.grade == "unanswered"
    assert set(finding.missing) == {f"{id}.height_m" for id in ("hs", "top", "vs", "low")}


def test_only_heating_water() -> None:
    parts: dict[str, Part] = {
        "cm": ("cold_main", {"height_m": 0.0}),
        "t": ("tee", {"height_m": 3.0}),
        "ol": ("outlet", {"height_m": 1.0}),
    }
    assert asked(NAME, made(parts, "cm.outlet - t.a\nt.b - ol.cold")).status == "not applicable"


VESSEL = ("p5: low.branch - xx.a", "p6: xx.b - ev.connection")


def test_what_stands_on_the_way_to_a_vessel_is_no_high_point() -> None:
    heights = {**BASE, "xx": 0.8, "ev": 0.6, "av": 2.5}
    vented = ring(
        heights,
        *VESSEL,
        "p7: top.branch - av.connection",
        xx="isolating_valve",
        ev="expansion_vessel",
        av="air_vent",
    )
    assert asked(NAME, vented).status == "judged" and not found(NAME, vented)
    unvented = ring(
        heights,
        *VESSEL,
        "p7: top.branch - cc.connection",
        xx="isolating_valve",
        ev="expansion_vessel",
        cc="cap",
    )
    assert [finding.components for finding in found(NAME, unvented)] == [("top",)]


def test_a_hump_in_a_cold_feed_is_a_high_point() -> None:
    heights = {**BASE, "xx": 3.2, "fc": 3.0, "av": 2.5}
    drawing = ring(
        heights, "p5: low.branch - xx.a", "p6: xx.b - fc.feed", "p7: top.branch - av.connection",
        xx="isolating_valve", fc="feed_cistern", av="air_vent",
    )  # fmt: skip
    assert [finding.components for finding in found(NAME, drawing)] == [("xx",)]

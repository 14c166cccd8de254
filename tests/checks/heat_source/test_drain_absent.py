"""Stretches of heating pipework that can or cannot be drained."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.finding import Finding
from circuitcheck.parts.catalogue import component_kinds
from tests.checks.asking import asked, found, only, way
from tests.made import Part, made

NAME = "drain-absent"


def plant(
    *,
    behind: Mapping[str, Any] | None = None,
    valve: Part = "isolating_valve",
    ports: str = "a b",
    heights: Mapping[str, float] | None = None,
    **parts: Part,
) -> Drawing:
    """A heat source whose radiator's flow stands behind a valve and has a drain `d2` there; its return
    has a drain `d1`. Every pipe is 0.6 m long; `behind` are other data of the pipe from tee `t2`."""
    into, out = ports.split()
    usual: dict[str, Part] = {
        "hs": "heat_source",
        "iv": valve,
        "t1": "tee",
        "t2": "tee",
        "d1": "drain",
        "d2": "drain",
        "rad": "radiator",
    }
    usual |= parts
    told = {"hs": 1.0, "iv": 2.0, "t2": 1.5, "d2": 1.5, "rad": 1.8, "t1": 0.5, "d1": 0.5}
    told |= heights or {}
    made_parts: dict[str, Part] = {}
    for id, part in usual.items():
        kind, data = (part, {}) if isinstance(part, str) else part
        made_parts[id] = (kind, {**({"height_m": told[id]} if id in told else {}), **data})
    pipes = f"""
        p1: hs.flow - iv.{into}
        p2: iv.{out} - t2.a
        p3: t2.b - rad.flow
        p4: t2.branch - d2.connection
        p5: rad.return - t1.a
        p6: t1.b - hs.return
        p7: t1.branch - d1.connection
    """
    data = {f"p{n}": {"length_m": 0.6} for n in range(1, 8)}
    data["p3"] = {**data["p3"], **(behind or {})}
    return made(made_parts, pipes, pipe_data=data)


def bare(length_m: float | None, before_m: float = 0.2, **parts: Any) -> Drawing:
    """As `plant`, with a gauge where the drain behind the valve was and a stretch of those lengths."""
    drawing = plant(d2="pressure_gauge", **parts)
    pipes = dict(drawing.pipes)
    for id, length in {"p2": before_m, "p3": length_m, "p4": 0.0}.items():
        data = {"length_m": length} if length is not None else {}
        pipes[id] = Pipe(id, pipes[id].ends, data=data)
    return Drawing(components=drawing.components, pipes=pipes, design=drawing.design)


def shape(findings: tuple[Finding, ...]) -> list[tuple[str, tuple[str, ...]]]:
    return [(finding.grade.value, finding.pipes) for finding in findings]


BEHIND = ("p2", "p3", "p4")


def test_sound() -> None:
    answer = asked(NAME, plant())
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(
    ("valve", "ports"),
    [
        ("isolating_valve", "a b"),
        (("isolating_valve", {"secured": True}), "a b"),
        ("zone_valve", "in out"),
        ("pump", "in out"),
        ("three_port_valve", "ab a"),
        ("dirt_separator", "a b"),
    ],
)
@pytest.mark.parametrize(("length_m", "fires"), [(0.79, False), (0.8, False), (0.81, True)])
def test_more_than_a_metre_without_a_drain(valve: Part, ports: str, length_m: float, fires: bool) -> None:
    findings = found(NAME, bare(length_m, valve=valve, ports=ports))
    assert shape(findings) == ([("advice", BEHIND)] if fires else [])
    if fires:
        assert findings[0].numbers["length_m"] == pytest.approx(1.01)
        assert "1.01 m" in findings[0].message


def test_a_length_behind_one_valve_is_told_as_such() -> None:
    drawing = made(
        {"hs": "heat_source", "t1": "tee", "t2": "tee", "dr": "drain", "iv": "isolating_valve", "cp": "cap"},
        way("hs.flow t1.a:b t2.a:b hs.return", "t2.branch dr.connection", "t1.branch iv.a:b cp.connection"),
        pipe_data={f"p{n}": {"length_m": 1.5} for n in range(1, 7)},
    )
    (finding,) = (each for each in found(NAME, drawing) if each.grade.value == "advice")
    assert finding.message == "The pipework behind isolating valve iv (1.5 m) has no drain."


@pytest.mark.parametrize("height", [{}, {"height_m": 2.0}])
def test_the_drain_of_the_cure_stands_as_high_as_the_part_it_is_by(height: dict[str, float]) -> None:
    drawing = bare(0.81)
    parts = {id: Component(id, part.kind, data=height) for id, part in drawing.components.items()}
    drawing = Drawing(components=parts, pipes=drawing.pipes)
    (finding,) = (each for each in found(NAME, drawing) if each.pipes == BEHIND)
    (proposal,) = checks()[NAME].propose(Case(drawing), finding)
    (drain,) = (
        part
        for id, part in proposal.drawing.components.items()
        if id not in parts and part.kind.name == "drain"
    )
    assert drain.data == height


@pytest.mark.parametrize(
    ("valve", "ports"),
    [
        ("check_valve", "in out"),
        ("bypass_valve", "in out"),
        ("strainer", "in out"),
        (("pump", {"isolating_valves": False}), "in out"),
    ],
)
def test_what_cannot_be_shut_parts_no_stretch(valve: Part, ports: str) -> None:
    assert found(NAME, bare(9, valve=valve, ports=ports)) == ()


@pytest.mark.parametrize(("rad_m", "fires"), [(1.5, False), (1.4, False), (1.39, True), (0.0, True)])
def test_the_drain_must_stand_at_the_low_point(rad_m: float, fires: bool) -> None:
    findings = found(NAME, plant(heights={"rad": rad_m, "t1": -0.5, "d1": -0.5}))
    assert shape(findings) == ([("advice", BEHIND)] if fires else [])
    if fires:
        assert findings[0].numbers["below_m"] == pytest.approx(1.5 - rad_m)
        assert "rad lies" in findings[0].message


def test_the_lowest_of_several_drains_counts() -> None:
    drawing = plant(heights={"t1": 0.0, "d1": 0.5, "d2": 0.1})
    assert shape(found(NAME, drawing)) == [("advice", ("p1", "p5", "p6", "p7"))]
    assert found(NAME, plant(heights={"t1": 0.0, "d1": 0.0, "d2": 0.1})) == ()


def test_what_hangs_at_the_end_of_a_pipe_is_no_low_point() -> None:
    drawing = plant()
    parts = {
        **drawing.components,
        "t3": Component("t3", component_kinds()["tee"], data={"height_m": 1.0}),
        "ev": Component("ev", component_kinds()["expansion_vessel"], data={"height_m": -3.0}),
    }
    ends = {
        "p1": (Joint("hs", "flow"), Joint("t3", "a")),
        "p8": (Joint("t3", "b"), Joint("iv", "a")),
        "p9": (Joint("t3", "branch"), Joint("ev", "connection")),
    }
    pipes = {id: Pipe(id, each, data={"length_m": 0.6}) for id, each in ends.items()}
    assert found(NAME, Drawing(components=parts, pipes={**drawing.pipes, **pipes})) == ()


def test_without_a_height_one_finding_names_all_that_is_missing() -> None:
    drawing = plant(t2=("tee", {"height_m": None}), t1=("tee", {"height_m": None}))
    finding = only(NAME, drawing)
    assert (finding.grade, finding.would_be, finding.components) == ("unanswered", "advice", ("hs",))
    # The rise of one pipe tells as much as the height of the tee.
    assert len(finding.missing) == 2
    assert {name.partition(".")[2] for name in finding.missing} <= {"height_m", "rise_m"}


def test_a_known_low_point_settles_it_though_other_heights_are_missing() -> None:
    drawing = plant(heights={"rad": 0.0, "t1": -0.5, "d1": -0.5}, t2=("tee", {"height_m": None}))
    assert shape(found(NAME, drawing)) == [("advice", BEHIND)]


def test_lengths_missing() -> None:
    finding = only(NAME, bare(None))
    assert (finding.grade, finding.missing, finding.pipes) == ("unanswered", ("p3.length_m",), BEHIND)
    assert shape(found(NAME, bare(None, before_m=1.2))) == [("advice", BEHIND)]


def test_a_drawing_without_any_number_has_one_finding() -> None:
    drawing = plant()
    pipes = {id: Pipe(id, pipe.ends) for id, pipe in drawing.pipes.items()}
    parts = {id: Component(id, part.kind, data={}) for id, part in drawing.components.items()}
    finding = only(NAME, Drawing(components=parts, pipes=pipes))
    assert finding.grade == "unanswered"
    assert {"p1.length_m", "p2.length_m"} <= set(finding.missing)


def test_only_heating_water_is_asked() -> None:
    parts: dict[str, Part] = {"cm": "cold_main", "iv": "isolating_valve", "ol": "outlet"}
    pipes = "a: cm.outlet - iv.a\nb: iv.b - ol.cold"
    lengths = {id: {"length_m": 9} for id in "ab"}
    assert asked(NAME, made(parts, pipes, pipe_data=lengths)).status == "not applicable"


@pytest.mark.parametrize(("end", "port"), [("open_vent", "connection"), ("feed_cistern", "feed")])
def test_a_valve_in_a_vent_is_another_checks_matter(end: str, port: str) -> None:
    parts: dict[str, Part] = {"hs": "heat_source", "iv": "isolating_valve", "ov": end}
    drawing = made(parts, f"a: hs.flow - iv.a\nb: iv.b - ov.{port}", pipe_data={"b": {"length_m": 9}})
    assert all("b" not in finding.pipes for finding in found(NAME, drawing))

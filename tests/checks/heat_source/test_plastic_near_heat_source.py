"""Plastic by the heat source: how near, by which way, and what is not known."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.made import Part, made

NAME = "plastic-near-heat-source"
PLASTIC = {"material": "plastic"}
UNKNOWN = {"material": None}


def ring(
    data: Mapping[str, Mapping[str, Any]], *, heat: str | None = "switched", tee: Part = "tee"
) -> Drawing:
    """f1, f2: from the flow over a tee to a radiator; r1: its return; b1: the tee's branch to a cap."""
    parts: dict[str, Part] = {
        "hs": ("heat_source", {"heat": heat}),
        "t": tee,
        "rad": "radiator",
        "cp": "cap",
    }
    pipes = """
        f1: hs.flow - t.a
        f2: t.b - rad.flow
        r1: hs.return - rad.return
        b1: t.branch - cp.connection
    """
    usual: dict[str, dict[str, Any]] = {id: {"length_m": 3} for id in ("f1", "f2", "r1", "b1")}
    return made(parts, pipes, pipe_data={id: {**usual[id], **data.get(id, {})} for id in usual})


@pytest.mark.parametrize(("length_m", "fires"), [(0.0, True), (0.99, True), (1.0, False), (1.01, False)])
@pytest.mark.parametrize(("plastic", "before"), [("f2", "f1"), ("b1", "f1")])
def test_within_a_metre(plastic: str, before: str, length_m: float, fires: bool) -> None:
    drawing = ring({before: {"length_m": length_m}, plastic: PLASTIC})
    findings = found(NAME, drawing)
    assert [(each.grade.value, each.components, each.pipes) for each in findings] == (
        [("fault", ("hs",), (plastic,))] if fires else []
    )
    if fires:
        assert findings[0].numbers == {"from_m": length_m, "limit_m": 1}
        assert f"plastic, {length_m:g} m from heat source hs along the pipe" in findings[0].message


@pytest.mark.parametrize("pipe", ["f1", "r1"])
@pytest.mark.parametrize(("heat", "grade"), [("switched", "fault"), ("uncontrolled", "danger")])
def test_joined_to_the_heat_source(pipe: str, heat: str, grade: str) -> None:
    finding = only(NAME, ring({pipe: PLASTIC}, heat=heat))
    assert (finding.grade, finding.pipes, finding.numbers["from_m"]) == (grade, (pipe,), 0)
    assert "plastic and joined to heat source hs" in finding.message


@pytest.mark.parametrize(("length_m", "grades"), [(0.5, ["fault"]), (1, [])])
def test_uncontrolled_with_metal_between(length_m: float, grades: list[str]) -> None:
    drawing = ring({"f1": {"length_m": length_m}, "f2": PLASTIC}, heat="uncontrolled")
    assert [finding.grade for finding in found(NAME, drawing)] == grades


@pytest.mark.parametrize("data", [{"f1": PLASTIC, "r1": UNKNOWN}, {"f1": PLASTIC, "f2": UNKNOWN}])
def test_another_pipe_that_is_not_known_does_not_unsettle_it(data: Mapping[str, Mapping[str, Any]]) -> None:
    short = {id: {"length_m": 0.4, **told} for id, told in data.items()}
    finding = only(NAME, ring(short, heat="uncontrolled"))
    assert (finding.grade, finding.pipes) == ("danger", ("f1",))


def test_one_that_is_not_known_may_lie_between() -> None:
    drawing = ring({"f1": {"length_m": 0.4, **UNKNOWN}, "f2": PLASTIC}, heat="uncontrolled")
    finding = only(NAME, drawing)
    assert (finding.grade, finding.missing, finding.would_be) == ("unanswered", ("f1.material",), "danger")


def test_beyond_an_emitter_nothing_is_measured() -> None:
    assert found(NAME, ring({"f1": {"length_m": 0.1}, "f2": {"length_m": 0.1}, "r1": {"length_m": 3}})) == ()
    parts: dict[str, Part] = {"hs": "heat_source", "rad": "radiator", "r2": "radiator"}
    pipes = "a: hs.flow - rad.flow\nb: rad.return - r2.flow\nc: r2.return - hs.return"
    data: dict[str, dict[str, Any]] = {
        "a": {"length_m": 0.1},
        "b": {"length_m": 1, **PLASTIC},
        "c": {"length_m": 1},
    }
    assert found(NAME, made(parts, pipes, pipe_data=data)) == ()


def test_the_shorter_of_two_ways_counts() -> None:
    parts: dict[str, Part] = {"hs": "heat_source", "t": "tee", "t2": "tee", "rad": "radiator"}
    pipes = "a: hs.flow - t.a\nb: t.b - t2.a\nc: t.branch - t2.b\nd: t2.branch - rad.flow\ne: rad.return - hs.return"
    data: dict[str, dict[str, Any]] = {id: {"length_m": 0.3} for id in "ace"}
    data |= {"b": {"length_m": 5}, "d": {"length_m": 1, **PLASTIC}}
    finding = only(NAME, made(parts, pipes, pipe_data=data))
    assert finding.numbers["from_m"] == pytest.approx(0.6)


@pytest.mark.parametrize(
    ("data", "heat", "missing", "would_be"),
    [
        ({"f1": {"length_m": None}, "f2": PLASTIC}, "switched", ("f1.length_m",), "fault"),
        ({"f1": {"material": None}}, "switched", ("f1.material",), "fault"),
        ({"f1": {"material": None}}, "uncontrolled", ("f1.material",), "danger"),
        ({"f1": PLASTIC}, None, ("hs.heat",), "danger"),
        ({"f1": {"material": None}}, None, ("f1.material", "hs.heat"), "danger"),
        (
            {"f1": {"length_m": None}, "f2": {"length_m": None}, "b1": PLASTIC},
            "switched",
            ("f1.length_m",),
            "fault",
        ),
    ],
)
def test_not_known(
    data: Mapping[str, Mapping[str, Any]], heat: str | None, missing: tuple[str, ...], would_be: str
) -> None:
    finding = only(NAME, ring(data, heat=heat))
    assert (finding.grade, finding.missing, finding.would_be) == ("unanswered", missing, would_be)


@pytest.mark.parametrize("heat", [None, "switched", "uncontrolled"])
def test_what_is_known_settles_it(heat: str | None) -> None:
    drawing = ring({"f1": {"length_m": 0.5}, "f2": PLASTIC, "r1": {"length_m": None}}, heat=heat)
    assert [finding.grade for finding in found(NAME, drawing)] == ["fault"]
    far = ring({"f1": {"length_m": 1}, "f2": PLASTIC, "r1": {"length_m": None}}, heat=heat)
    assert found(NAME, far) == ()


def test_without_plastic_no_length_is_asked() -> None:
    answer = asked(NAME, ring({id: {"length_m": None} for id in ("f1", "f2", "r1", "b1")}))
    assert (answer.findings, answer.status) == ((), "judged")


def test_does_not_apply_without_a_pipe_on_a_heat_source() -> None:
    assert asked(NAME, made({"hs": "heat_source"}, "")).status == "not applicable"
    assert asked(NAME, made({"rad": "radiator"}, "")).status == "not applicable"

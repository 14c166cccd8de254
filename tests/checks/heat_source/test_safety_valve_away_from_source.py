"""How far a safety valve stands from the flow of its heat source, and what may block the way."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, asked, fault, only, told
from tests.checks.houses import vented
from tests.checks.sized import house, source, valve
from tests.made import Part

NAME = "safety-valve-away-from-source"
# p1: heat source to t1; the last pipe: t1 to the valve.
ON_RETURN = {"safety_by": "t2.branch t3.a:b sv.inlet", "vessel_by": "t3.branch ev.connection"}


def far(first_m: float | None, last_m: float | None) -> Drawing:
    """A valve by the flow, over two pipes of these lengths."""
    return house(pipe_data={"p1": {"length_m": first_m}, "p6": {"length_m": last_m}})


def in_line(kind: Part, *ports: str) -> Drawing:
    """A part in the flow between heat source and safety valve."""
    ring = f"hs.flow xx.{':'.join(ports)} t1.a:b rad.flow:return t2.a:b hs.return"
    return house(ring=ring, xx=kind)


CASES: dict[str, tuple[Drawing, list[Told]]] = {
    "close by": (house(), []),
    "a metre": (far(0.6, 0.4), []),
    "a centimetre more": (far(0.6, 0.41), [fault("hs")]),
    "beyond a metre already, the rest not known": (far(1.1, None), [fault("hs")]),
    "built in": (house(safety_by="", hs=source(built_in=["safety_valve"])), []),
    "on the return": (house(t3="tee", **ON_RETURN), [fault("hs")]),  # type: ignore[arg-type]
    "beyond a strainer": (in_line("strainer", "in", "out"), [fault("hs")]),
    "beyond a dirt separator": (in_line("dirt_separator", "a", "b"), [fault("hs")]),
    "beyond a plate": (in_line("heat_exchanger", "primary_in", "primary_out"), [fault("hs")]),
    "beyond an emitter": (in_line(("radiator", {"thermostatic": False, "valves": False}), "flow", "return"), [fault("hs")]),
    "beyond a pump": (in_line("pump", "in", "out"), []),
    "beyond a valve, which another check speaks of": (in_line("isolating_valve", "a", "b"), []),
    "a strainer in its own branch": (house(safety_by="t1.branch st.in:out sv.inlet", st="strainer"), [fault("hs")]),
    "round a strainer by a clear pipe": (
        house("t3.branch t4.branch", ring="hs.flow t3.a:b st.in:out t4.a:b t1.a:b rad.flow:return t2.a:b hs.return",
              t3="tee", t4="tee", st="strainer", pipe_data={"p1": {"length_m": 0.1}}),
        [],
    ),
    "each heat source needs its own": (
        house("h2.flow t3.a:b t5.branch", "t4.branch h2.return", "t3.branch s2.inlet",
              ring="hs.flow t1.a:b t5.a:b rad.flow:return t2.a:b t4.a:b hs.return",
              h2=source(), s2=valve(), t3="tee", t4="tee", t5="tee",
              pipe_data={"p11": {"length_m": 5}}),
        [],
    ),
    "the other heat source's valve is too far": (
        house("h2.flow t3.branch", "t4.branch h2.return",
              ring="hs.flow t1.a:b t3.a:b rad.flow:return t2.a:b t4.a:b hs.return", h2=source(), t3="tee", t4="tee",
              pipe_data={"p9": {"length_m": 5}}),
        [fault("h2")],
    ),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "expected"), CASES.values(), ids=CASES)
def test_distance(drawing: Drawing, expected: list[Told]) -> None:
    assert told(NAME, drawing) == expected
    assert asked(NAME, drawing).status == "judged"


def test_what_blocks_is_named() -> None:
    finding = only(NAME, in_line("strainer", "in", "out"))
    assert finding.components == ("hs", "xx", "sv")
    assert "block" in finding.message


def test_the_length_and_the_limit_are_told() -> None:
    finding = only(NAME, far(2, 0.5))
    assert finding.numbers == {"limit_m": 1, "length_m": 2.5}


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [(far(None, 0.4), {"p1.length_m"}), (far(None, None), {"p1.length_m", "p6.length_m"})],
)
def test_unanswered(drawing: Drawing, missing: set[str]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, set(finding.missing)) == ("unanswered", missing)


def test_water_behind_a_plate_is_judged_from_the_plate() -> None:
    plate = house(
        "hx.secondary_out t3.a:b r2.flow:return t4.a:b hx.secondary_in", "t4.branch s2.inlet",
        ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return", rad="cap", hx="heat_exchanger",
        r2="radiator", t3="tee", t4="tee", s2=valve(),
    )  # fmt: skip
    # Its flow is the secondary outlet; the valve stands by the inlet, beyond an emitter.
    assert told(NAME, plate) == [fault("hx")]


@pytest.mark.parametrize("drawing", [vented(), house(safety_by="")], ids=["open-vented", "no valve"])
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize("case", ["beyond a strainer", "a strainer in its own branch", "a centimetre more"])
def test_the_cure_moves_it_to_the_flow(case: str) -> None:
    analysis = analyse(CASES[case][0])
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    assert cures(analysis, finding)

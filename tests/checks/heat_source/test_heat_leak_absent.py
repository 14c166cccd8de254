"""A heat leak: every way to have one, and everything that looks like one and is none."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import OPEN_RADIATOR, SECURED, TIGHT_PUMP, vented
from tests.made import Part

NAME = "heat-leak-absent"
FIRE: Part = ("heat_source", {"heat": "uncontrolled"})
STORE: Part = "vented_store"
RING = "hs.flow t1.a:b {} t2.a:b hs.return"


def fire(middle: str, *ways: str, **parts: Part) -> Drawing:
    """An open-vented fire whose flow and return are joined by these parts in a row."""
    usual: dict[str, Any] = {"rad": OPEN_RADIATOR, "hs": FIRE, **parts}
    return vented(*ways, ring=RING.format(middle), **usual)


LEAKS: dict[str, Drawing] = {
    "an emitter without valves": fire("rad.flow:return"),
    "turned round": fire("rad.return:flow"),
    "a store's coil": fire("vs.coil_flow:coil_return", vs=STORE),
    "a mains-fed store's coil": fire("us.coil_flow:coil_return", us="unvented_store"),
    "through a strainer": fire("st.in:out rad.flow:return", st="strainer"),
    "beside pumped zones with every valve": fire(
        "t3.a:b rad.flow:return t4.a:b",
        "t3.branch pu.in:out zv.in:out r2.flow:return t4.branch",
        t3="tee",
        t4="tee",
        pu="pump",
        zv="zone_valve",
        r2="radiator",
    ),
    "through a separator": fire(
        "se.source_flow:load_flow rad.flow:return se.load_return:source_return", se="separator"
    ),
    "both legs of a three-port valve": fire(
        "tp.ab:a rad.flow:return t3.a:b",
        "tp.b r2.flow:return t3.branch",
        tp="three_port_valve",
        t3="tee",
        r2=OPEN_RADIATOR,
    ),
    "legs that meet again before the emitter": fire(
        "tp.ab:a t3.a:b rad.flow:return", "tp.b t3.branch", tp="three_port_valve", t3="tee"
    ),
    "through another heat source": fire("h2.return:flow rad.flow:return", h2="heat_source"),
}


@pytest.mark.parametrize("drawing", LEAKS.values(), ids=LEAKS)
def test_a_heat_leak(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


NONE: dict[str, tuple[Drawing, str]] = {
    "a thermostatic head": (fire("rad.flow:return", rad="radiator"), "rad"),
    "a hand valve on the emitter": (
        fire("rad.flow:return", rad=("radiator", {"thermostatic": False})),
        "rad",
    ),
    "a hand wheel": (
        fire(
            "rad.flow:return",
            rad=("radiator", {"thermostatic": False, "valves": False, "hand_wheel": True}),
        ),
        "rad",
    ),
    "a zone, whose emitters have valves": (
        fire("rad.flow:return", rad=("heating_zone", {"all_thermostatic": False})),
        "rad",
    ),
    "an isolating valve": (fire("iv.a:b rad.flow:return", iv="isolating_valve"), "iv"),
    "a secured valve": (fire("iv.a:b rad.flow:return", iv=SECURED), "iv"),
    "a balancing valve": (fire("iv.a:b rad.flow:return", iv="balancing_valve"), "iv"),
    "a zone valve that rests open": (
        fire("zv.in:out rad.flow:return", zv=("zone_valve", {"rest": "open"})),
        "zv",
    ),
    "one leg of a three-port valve, a plain pipe on the other": (
        fire("tp.ab:a rad.flow:return t3.a:b", "tp.b t3.branch", tp="three_port_valve", t3="tee"),
        "tp:a",
    ),
    "a pump with valves": (fire("pu.in:out rad.flow:return", pu="pump"), ""),
    "a pump without valves": (fire("pu.in:out rad.flow:return", pu=TIGHT_PUMP), ""),
    "a pump in the heat source": (
        fire("rad.flow:return", hs=("heat_source", {"heat": "uncontrolled", "built_in": ["pump"]})),
        "",
    ),
    "a check valve": (fire("cv.in:out rad.flow:return", cv="check_valve"), ""),
    "a check valve in the heat source": (
        fire("rad.flow:return", hs=("heat_source", {"heat": "uncontrolled", "built_in": ["check_valve"]})),
        "",
    ),
    "a plain pipe": (fire("st.in:out", st="strainer"), ""),
    "an exchanger, beyond which heat may stay": (
        fire("hx.primary_in:primary_out", hx="heat_exchanger"),
        "",
    ),
    "an emitter on a dead leg": (fire("t3.a:b", "t3.branch rad.flow", t3="tee"), ""),
    "reached both ways, but only by passing one tee twice": (
        fire(
            "t3.a:b",
            "t3.branch t4.a",
            "t4.b rad.flow:return t4.branch",
            t3="tee",
            t4="tee",
        ),
        "",
    ),
    "another heat source the wrong way round": (fire("h2.flow:return rad.flow:return", h2="heat_source"), ""),
}


@pytest.mark.parametrize(("drawing", "shut"), NONE.values(), ids=NONE)
def test_no_heat_leak(drawing: Drawing, shut: str) -> None:
    finding = only(NAME, drawing)
    assert finding.grade == "danger"
    assert finding.components[0] == "hs"
    assert finding.witness is not None
    assert finding.witness.shut == finding.witness.alone == ((shut,) if shut else ())


def test_two_leaks_need_two_closings() -> None:
    drawing = fire(
        "t3.a:b rad.flow:return t4.a:b",
        "t3.branch r2.flow:return t4.branch",
        t3="tee",
        t4="tee",
        rad="radiator",
        r2="radiator",
    )
    finding = only(NAME, drawing)
    assert finding.witness is not None
    assert (finding.witness.shut, finding.witness.alone) == (("r2", "rad"), ())
    assert finding.components == ("hs", "r2", "rad")


@pytest.mark.parametrize("data", [{}, {"heat": "switched"}])
def test_switched_heat_needs_none(data: dict[str, Any]) -> None:
    assert asked(NAME, vented(hs=("heat_source", data))).status == "not applicable"


def test_heat_not_known() -> None:
    finding = only(NAME, vented(hs=("heat_source", {"heat": None})))
    assert (finding.grade, finding.would_be, finding.missing) == ("unanswered", "danger", ("hs.heat",))
    assert found(NAME, fire("rad.flow:return", hs=("heat_source", {"heat": None}))) == ()


def test_valves_of_the_emitter_not_known() -> None:
    finding = only(NAME, fire("rad.flow:return", rad=("radiator", {"thermostatic": False, "valves": None})))
    assert (finding.grade, finding.missing) == ("unanswered", ("rad.valves",))


def test_a_row_of_three_port_valves_is_soon_answered() -> None:
    row = " ".join(f"tp{n}.ab:a x{n}.a:b" for n in range(25))
    legs = [f"tp{n}.b x{n}.branch" for n in range(25)]
    parts: dict[str, Part] = {f"tp{n}": "three_port_valve" for n in range(25)}
    parts |= {f"x{n}": "tee" for n in range(25)}
    assert found(NAME, fire(f"{row} rad.flow:return", *legs, **parts)) == ()


def test_many_shut_emitters_are_soon_answered() -> None:
    rungs = 80
    flow = " ".join(f"f{n}.a:b" for n in range(rungs))
    back = " ".join(f"b{n}.a:b" for n in range(rungs))
    parts: dict[str, Part] = {f"{mark}{n}": "tee" for mark in "fb" for n in range(rungs)}
    parts |= {f"r{n}": "radiator" for n in range(rungs)}
    ways = [f"f{n}.branch r{n}.flow:return b{n}.branch" for n in range(rungs)]
    finding = only(NAME, fire(f"{flow} {back}", *ways, **parts))
    assert finding.grade == "danger"
    assert finding.witness is not None and not finding.witness.shut

"""Whether parts with an arrow stand the way water can go."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks.case import Case
from circuitcheck.checks.circulation.fitted_backwards import propose
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.checks.asking import asked, fault, found, told
from tests.checks.houses import pumped
from tests.made import Part

NAME = "fitted-backwards"
RAD: Part = "radiator"
CHECK: Part = "check_valve"
BYPASS: Part = "bypass_valve"
BLEND: Part = "blending_valve"
STORE: Part = "unvented_store"
RING = "hs.flow pu.in:out t1.a:b zv.in:out r1.flow:return t2.a:b hs.return"
SECONDARY = "us.hot t1.a:b t2.a:b ou.hot"
MAIN = "cm.outlet t3.a:b c1.in:out us.cold"


def heating(*ways: str, **parts: Part) -> Drawing:
    usual: dict[str, Part] = {"zv": "zone_valve", "r1": RAD}
    return pumped(*ways, **{**usual, **parts})  # type: ignore[arg-type]  # no part is called as a parameter is


def water(*ways: str, **parts: Part) -> Drawing:
    usual: dict[str, Part] = {"cm": "cold_main", "us": STORE, "ou": "outlet", "c1": CHECK}
    text = " ".join(ways)
    usual = {id: kind for id, kind in usual.items() if f"{id}." in text}
    return pumped(*ways, **{**usual, **parts})  # type: ignore[arg-type]  # no part is called as a parameter is


FLOOR = "hs.flow t1.a:b bl.hot:mixed pu.in:out r1.flow:return t2.a:b t4.a:b hs.return"

CLOSE_TEES = (
    "hs.flow pu.in:out t1.a:b t2.a:b hs.return", "t1.branch t3.a:b p2.in:out r1.flow:return t4.a:b t2.branch",
    "t3.branch p3.in:out r2.flow:return t4.branch",
)  # fmt: skip
SEPARATED = (
    "hs.flow pu.in:out se.source_flow:source_return hs.return",
    "se.load_flow t3.a:b p2.in:out r1.flow:return t4.a:b se.load_return", "t3.branch p3.in:out r2.flow:return t4.branch",
)  # fmt: skip

SOUND: dict[str, Drawing] = {
    "pump and bypass": heating(RING, "t1.branch bv.in:out t2.branch", bv=BYPASS),
    "bypass round the pump alone": heating(
        "hs.flow t3.a:b pu.in:out t1.a:b zv.in:out r1.flow:return hs.return", "t1.branch bv.in:out t3.branch",
        bv=BYPASS,
    ),
    "bypass round the pump alone, with zone pumps beyond": heating(
        "hs.flow t3.a:b pu.in:out t1.a:b p2.in:out r1.flow:return hs.return", "t1.branch bv.in:out t3.branch",
        bv=BYPASS, p2="pump",
    ),
    "a pump and a check valve for each zone": heating(
        "hs.flow t1.a:b pu.in:out cv.in:out r1.flow:return t2.a:b hs.return",
        "t1.branch p2.in:out c2.in:out r2.flow:return t2.branch", p2="pump", cv=CHECK, c2=CHECK, r2=RAD,
    ),
    "pump behind a separator": heating(
        "hs.flow pu.in:out se.source_flow:source_return hs.return",
        "se.load_flow p2.in:out r1.flow:return se.load_return", se="separator", p2="pump",
    ),
    "pump behind a separator, in its return": heating(
        "hs.flow pu.in:out se.source_flow:source_return hs.return",
        "se.load_flow r1.flow:return p2.in:out se.load_return", se="separator", p2="pump",
    ),
    "separator the other way round, its pump too": heating(
        "hs.flow pu.in:out se.load_flow:load_return hs.return",
        "se.source_flow p2.in:out r1.flow:return se.source_return", se="separator", p2="pump",
    ),
    "pumps behind closely spaced tees": heating(*CLOSE_TEES, p2="pump", p3="pump", r2=RAD),
    "blending valve before floor heating": heating(FLOOR, "t2.branch bl.cold", "t1.branch r2.flow:return t4.branch",
                                                   bl=BLEND, r2=RAD),
    "built-in check valve and bypass": heating(
        "hs.flow r1.flow:return hs.return", hs=("heat_source", {"built_in": ["pump", "bypass", "check_valve"]}),
        cv=CHECK,
    ),
    "behind an exchanger": heating(
        "hs.flow pu.in:out hx.primary_in:primary_out hs.return", "hx.secondary_out p2.in:out r1.flow:return hx.secondary_in",
        hx="heat_exchanger", p2="pump",
    ),
    "two heat sources, each with a pump and a check valve": heating(
        "hs.flow pu.in:out cv.in:out t1.a:b r1.flow:return t2.a:b hs.return",
        "h2.flow p2.in:out c2.in:out t1.branch", "t2.branch h2.return", h2="heat_source", p2="pump", cv=CHECK, c2=CHECK,
    ),
    "main to a store to a tap": water(MAIN, "us.hot ou.hot", "t3.branch ou.cold"),
    "reducing valve and inlet group": water(
        "cm.outlet pr.in:out ig.in:out us.cold", "us.hot ou.hot", pr="pressure_reducing_valve", ig="inlet_group"
    ),
    "blending valve at a bath": water(
        MAIN, "us.hot bl.hot:mixed ou.hot", "t3.branch bl.cold", bl=BLEND
    ),
    "secondary return": water(
        MAIN, SECONDARY, "t2.branch pu.in:out cv.in:out us.secondary_return", "t1.branch o2.hot", cv=CHECK, o2="outlet"
    ),
    "secondary return without a pump yet": water(
        MAIN, SECONDARY, "t2.branch cv.in:out us.secondary_return", "t1.branch o2.hot", cv=CHECK, o2="outlet"
    ),
    "secondary return into the cold pipe": water(
        "cm.outlet c1.in:out t3.a:b us.cold", SECONDARY, "t2.branch pu.in:out cv.in:out t3.branch",
        "t1.branch o2.hot", cv=CHECK, o2="outlet",
    ),
    "booster": water("cm.outlet pu.in:out t1.a:b ou.cold", "t1.branch o2.cold", o2="outlet"),
    "store heated directly": water(
        "cm.outlet c1.in:out t3.a:b us.cold", "us.hot t1.a:b ou.hot", "t3.branch hs.return", "hs.flow pu.in:out t1.branch"
    ),
    "a check valve in a dead end": heating(RING, "t1.branch cv.out:in ca.connection", "t2.branch c2.connection",
                                           cv=CHECK, ca="cap", c2="cap"),
}  # fmt: skip

FIRES: dict[str, tuple[Drawing, list[str]]] = {
    "bypass": (heating(RING, "t2.branch bv.in:out t1.branch", bv=BYPASS), ["bv"]),
    "pump": (heating("hs.flow pu.out:in r1.flow:return hs.return"), ["pu"]),
    "pump of one zone": (
        heating(
            "hs.flow t1.a:b pu.out:in r1.flow:return t2.a:b hs.return", "t1.branch p2.in:out r2.flow:return t2.branch",
            p2="pump", r2=RAD,
        ), ["pu"],
    ),
    "check valve": (heating("hs.flow pu.in:out cv.out:in r1.flow:return hs.return", cv=CHECK), ["cv"]),
    "check valve of one zone, where another pump would drive it back": (
        heating(
            "hs.flow t1.a:b pu.in:out r1.flow:return t2.a:b hs.return",
            "t1.branch t3.a:b cv.out:in r2.flow:return t4.a:b t2.branch", "t3.branch p2.in:out r3.flow:return t4.branch",
            p2="pump", r2=RAD, r3=RAD, cv=CHECK,
        ), [],  # turned round it would have no pump either: which way it should face is not to be told
    ),
    "check valve of one zone, beyond the pump": (
        heating(
            "hs.flow pu.in:out t1.a:b r1.flow:return t2.a:b hs.return", "t1.branch cv.out:in r2.flow:return t2.branch",
            r2=RAD, cv=CHECK,
        ), ["cv"],
    ),
    "pump and check valve together": (
        heating("hs.flow pu.out:in cv.out:in r1.flow:return hs.return", cv=CHECK), ["pu", "cv"]
    ),
    "blending valve": (
        heating(
            "hs.flow t1.a:b bl.mixed:hot pu.in:out r1.flow:return t2.a:b t4.a:b hs.return", "t2.branch bl.cold",
            "t1.branch r2.flow:return t4.branch", bl=BLEND, r2=RAD,
        ), ["bl"],
    ),
    "behind an exchanger, against the pump": (
        heating(
            "hs.flow pu.in:out hx.primary_in:primary_out hs.return",
            "hx.secondary_out p2.in:out cv.out:in r1.flow:return hx.secondary_in",
            hx="heat_exchanger", p2="pump", cv=CHECK,
        ), ["cv"],
    ),
    "check valve of one of two mains": (
        water(
            "cm.outlet c1.in:out t1.a:b ou.cold", "m2.outlet c2.out:in t1.branch", m2="cold_main", c2=CHECK
        ), ["c2"],  # no water goes back into a main, so that the other main does not drive it either
    ),
    "check valve in the main": (water("cm.outlet c1.out:in us.cold", "us.hot ou.hot"), ["c1"]),
    "reducing valve": (
        water("cm.outlet pr.out:in us.cold", "us.hot ou.hot", pr="pressure_reducing_valve"), ["pr"]
    ),
    "inlet group": (water("cm.outlet ig.out:in us.cold", "us.hot ou.hot", ig="inlet_group"), ["ig"]),
    "booster": (water("cm.outlet pu.out:in ou.cold"), ["pu"]),
    "check valve of a secondary return": (
        water(MAIN, SECONDARY, "t2.branch pu.in:out cv.out:in us.secondary_return", "t1.branch o2.hot",
              cv=CHECK, o2="outlet"), ["cv"],
    ),
    "pump of a secondary return": (
        water(MAIN, SECONDARY, "t2.branch pu.out:in cv.in:out us.secondary_return", "t1.branch o2.hot",
              cv=CHECK, o2="outlet"), ["pu"],
    ),
    "pump behind a separator": (
        heating("hs.flow pu.in:out se.source_flow:source_return hs.return",
                "se.load_flow p2.out:in r1.flow:return se.load_return", se="separator", p2="pump"), ["p2"]
    ),
    "one of two pumps behind a separator": (
        heating(*SEPARATED[:2], "t3.branch p3.out:in r2.flow:return t4.branch",
                se="separator", p2="pump", p3="pump", r2=RAD), ["p3"]
    ),
    "a check valve behind a separator": (
        heating(*SEPARATED[:2], "t3.branch p3.in:out cv.out:in r2.flow:return t4.branch",
                se="separator", p2="pump", p3="pump", r2=RAD, cv=CHECK), ["cv"]
    ),
    "a pump behind a separator, its check valve right": (
        heating(*SEPARATED[:2], "t3.branch p3.out:in cv.in:out r2.flow:return t4.branch",
                se="separator", p2="pump", p3="pump", r2=RAD, cv=CHECK), ["p3"]
    ),
    "one of two pumps behind closely spaced tees": (
        heating(*CLOSE_TEES[:2], "t3.branch p3.out:in r2.flow:return t4.branch", p2="pump", p3="pump", r2=RAD), ["p3"]
    ),
    "the pump before closely spaced tees": (
        heating("hs.flow pu.out:in t1.a:b t2.a:b hs.return", *CLOSE_TEES[1:], p2="pump", p3="pump", r2=RAD), ["pu"]
    ),
    "check valve before a store, a blending valve beside it": (
        water("cm.outlet t3.a:b c1.out:in us.cold", "us.hot t1.a:b ou.hot", "t1.branch bl.hot:mixed o2.hot",
              "t3.branch bl.cold", bl=BLEND, o2="outlet"), ["c1"]
    ),
    "blending valve at a bath": (
        water(MAIN, "us.hot bl.mixed:hot ou.hot", "t3.branch bl.cold", bl=BLEND), ["bl"]
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "subjects"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, subjects: list[str]) -> None:
    assert told(NAME, drawing) == [fault(subject) for subject in subjects]


def test_not_applicable() -> None:
    assert asked(NAME, pumped("hs.flow r1.flow:return hs.return", r1=RAD)).status == "not applicable"


@pytest.mark.parametrize("case", FIRES)
def test_turned_round_it_is_right(case: str) -> None:
    drawing, subjects = FIRES[case]
    for finding in found(NAME, drawing):
        (proposal,) = propose(Case(drawing), finding)
        assert "round" in str(proposal.says)
        assert told(NAME, proposal.drawing) == [
            fault(each) for each in subjects if each != finding.components[0]
        ]


def test_the_cure_of_a_sample() -> None:
    analysis = analyse(read(data_path("samples") / "terrace-bypass-backwards.wetcircuit"))
    finding = next(each for each in analysis.findings if each.check == NAME)
    (cure,) = cures(analysis, finding)
    assert cure.message == "Turn Bypass round."

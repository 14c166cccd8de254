"""Whether two connections of a part are changed over."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks.case import Case
from circuitcheck.checks.circulation.connections_changed_over import propose
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Grade
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.checks.asking import Told, advice, asked, fault, found, only, told
from tests.checks.houses import pumped
from tests.drawing.changing_over import changed_over
from tests.made import Part

NAME = "connections-changed-over"
PUMP_IN: Part = ("heat_source", {"built_in": ["pump"]})
KINDS: dict[str, Part] = {
    "r1": "radiator", "r2": "radiator", "hz": "heating_zone", "h2": PUMP_IN, "us": "unvented_store",
    "u2": "unvented_store", "vs": "vented_store", "se": "separator", "hx": "heat_exchanger", "cm": "cold_main",
    "fc": "feed_cistern", "ou": "outlet", "o2": "outlet", "bl": "blending_valve", "cv": "check_valve",
    "c2": "check_valve", "p2": "pump", "bv": "bypass_valve", "iv": "isolating_valve", "cb": "combination_heat_source",
    "tr": "temperature_relief_valve", "ca": "cap", "zv": "zone_valve",
}  # fmt: skip


def water(*ways: str, **parts: Part) -> Drawing:
    text = " ".join(ways)
    usual = {id: kind for id, kind in KINDS.items() if f"{id}." in text}
    return pumped(*ways, **{**usual, **parts})  # type: ignore[arg-type]  # no part is called as a parameter is


def inside(*ways: str, **parts: Part) -> Drawing:
    """A plant whose heat source has its pump inside."""
    return water(*ways, **{"hs": PUMP_IN, **parts})


FEED = "cm.outlet cv.in:out us.cold"
TAP = "us.hot ou.hot"
ROUND = "us.hot t1.a:b ou.hot"
BACK = "t1.branch pu.in:out c2.in:out"
TWO = ("t1.branch r2.flow:return t2.branch",)
SHARED = ("hs.flow t1.a", "h2.flow t1.branch", "t2.b hs.return", "t2.branch h2.return")

SOUND: dict[str, Drawing] = {
    "a store": water(FEED, TAP),
    "with a secondary return": water(FEED, ROUND, f"{BACK} us.secondary_return"),
    "led back into the cold feed": water("cm.outlet cv.in:out t2.a:b us.cold", ROUND, f"{BACK} t2.branch"),
    "a store that nothing feeds yet": water("ca.connection us.cold", TAP),
    "one of which nothing is drawn yet": water(FEED, "us.hot ca.connection"),
    "one with its cold left open": water("cm.outlet us.hot"),
    "one with its hot left open": water(FEED, "us.relief ou.hot"),
    "fed by the main beside a hot pipe that it reaches by a valve": water(
        "cm.outlet t1.a:b us.cold", "t1.branch iv.a:b t2.branch", "us.hot t2.a:b ou.hot"
    ),
    "the second of two in line, the hot pipe of both beside a way past them": water(
        "cm.outlet t1.a:b us.cold", "us.hot u2.cold", "u2.hot t2.a:b ou.hot", "t1.branch iv.a:b t2.branch"
    ),
    "two in parallel": water(
        "cm.outlet t1.a:b us.cold", "t1.branch u2.cold", "us.hot t2.a:b ou.hot", "u2.hot t2.branch"
    ),
    "a relief valve misplaced, which is told": water("cm.outlet us.relief", TAP, "us.cold tr.inlet"),
    "the other one": water(FEED, "us.relief ou.hot", "us.hot tr.inlet"),
    "a combination after a store, with valves past each": water(
        "cm.outlet t1.a:b us.cold", "us.hot t2.a:b cb.cold", "cb.hot t3.a:b t4.a:b ou.hot",
        "t1.branch iv.a:b t3.branch", "t2.branch i2.a:b t4.branch", i2="isolating_valve",
    ),
    "a cold tap that hot water strays to": water(
        "cm.outlet t2.a:b t3.a:b us.cold", ROUND, f"{BACK} t3.branch", "t2.branch o2.cold"
    ),
    "a vented store": water("fc.feed vs.cold", "vs.hot ou.hot"),
    "heated directly": water("cm.outlet t1.a:b us.cold", "us.hot t2.a:b ou.hot", "t1.branch hs.return", "hs.flow pu.in:out t2.branch"),
    "a combination": water("cm.outlet cb.cold", "cb.hot ou.hot"),
    "a mixer's two": water("cm.outlet t1.a:b us.cold", TAP, "t1.branch ou.cold"),
    "a bath that is blended": water("cm.outlet t1.a:b us.cold", "us.hot bl.hot:mixed ou.hot", "t1.branch t3.a:b bl.cold", "t3.branch ou.cold"),
    "a plate that heats drinking water, either way": inside(
        "hs.flow hx.primary_in:primary_out hs.return", "cm.outlet hx.secondary_out:secondary_in ou.hot"
    ),
    "two radiators": inside("hs.flow t1.a:b r1.flow:return t2.a:b hs.return", *TWO),
    "one of two turned": inside("hs.flow t1.a:b r1.return:flow t2.a:b hs.return", *TWO),
    "both turned, and a pump says where water goes": water(
        "hs.flow pu.in:out t1.a:b r1.return:flow t2.a:b hs.return", "t1.branch r2.return:flow t2.branch"
    ),
    "the pump against the heat source, which is found as that": water("hs.flow pu.out:in t1.a:b r1.flow:return t2.a:b hs.return", *TWO),
    "on a ring of one pipe": inside(
        "hs.flow t1.a:b t2.a:b t3.a:b t4.a:b hs.return", "t1.branch r1.return:flow t2.branch", "t3.branch r2.return:flow t4.branch"
    ),
    "flow and return joined by an open way": inside(
        "hs.flow t3.a:b t1.a:b r1.return:flow t2.a:b t4.a:b hs.return", "t1.branch r2.return:flow t2.branch", "t3.branch iv.a:b t4.branch"
    ),
    "a coil": inside("hs.flow us.coil_flow:coil_return hs.return"),
    "a separator, taken from the other side": inside("hs.flow se.load_flow:load_return hs.return", "se.source_flow pu.in:out r1.flow:return se.source_return"),
    "crosswise, both of its upper ends as a flow": inside("hs.flow se.load_flow", "se.source_return hs.return", "se.source_flow pu.in:out r1.flow:return se.load_return"),
    "behind an exchanger": inside(
        "hs.flow hx.primary_in:primary_out hs.return", "hx.secondary_out pu.in:out us.coil_flow:coil_return hx.secondary_in"
    ),
    "two heat sources": inside(*SHARED, "t1.b r1.flow:return t2.a"),
}  # fmt: skip

FIRES: dict[str, tuple[Drawing, list[Told]]] = {
    "a store's cold and hot": (water("cm.outlet cv.in:out us.hot", "us.cold ou.hot"), [fault("us")]),
    "without a check valve, beside a mixer": (
        water("cm.outlet t1.a:b us.hot", "us.cold bl.hot:mixed ou.hot", "t1.branch bl.cold"), [fault("us")],
    ),
    "with no main drawn": (water("us.hot ca.connection", "us.cold ou.hot"), [fault("us")]),
    "its cold and secondary return": (
        water("cm.outlet cv.in:out us.secondary_return", ROUND, f"{BACK} us.cold"), [fault("us")],
    ),
    "its hot and secondary return": (
        water(FEED, "us.secondary_return t1.a:b ou.hot", f"{BACK} us.hot"), [fault("us")],
    ),
    "its relief for its secondary return": (water(FEED, ROUND, f"{BACK} us.relief"), [fault("us")]),
    "its relief outlet, where no relief is inside": (water(FEED, ROUND, f"{BACK} us.relief_outlet"), [fault("us")]),
    "one of two in parallel": (
        water("cm.outlet t1.a:b us.cold", "t1.branch u2.hot", "us.hot t2.a:b ou.hot", "u2.cold t2.branch"), [fault("u2")],
    ),
    "the second of two in line": (
        water("cm.outlet us.cold", "us.hot u2.hot", "u2.cold ou.hot"), [fault("u2")],
    ),
    "one that is heated directly": (
        water("cm.outlet t1.a:b us.hot", "us.cold t2.a:b ou.hot", "t1.branch hs.return", "hs.flow pu.in:out t2.branch"), [fault("us")],
    ),
    "a vented store": (water("fc.feed vs.hot", "vs.cold ou.hot"), [fault("vs")]),
    "a combination, though all its taps then have hot on cold": (
        water("cm.outlet t1.a:b cb.hot", "cb.cold ou.hot", "t1.branch ou.cold"), [fault("cb")],
    ),
    "a mixer's hot and cold": (water("cm.outlet t1.a:b us.cold", "us.hot ou.cold", "t1.branch ou.hot"), [fault("ou")]),
    "a tap's only pipe": (water(FEED, "us.hot ou.cold"), [fault("ou")]),
    "a bath's only pipe, blended": (
        water("cm.outlet t1.a:b us.cold", "us.hot bl.hot:mixed ou.cold", "t1.branch bl.cold"), [fault("ou")],
    ),
    "a blending valve's hot and cold": (
        water("cm.outlet t1.a:b us.cold", "us.hot bl.cold", "bl.mixed ou.hot", "t1.branch bl.hot"), [fault("bl")],
    ),
    "its cold and mixed": (
        water("fc.feed t1.a:b vs.cold", "vs.hot bl.hot", "t1.branch bl.mixed", "bl.cold ou.hot"), [fault("bl")],
    ),
    "a heat source's, before two radiators": (
        inside("hs.return t1.a:b r1.flow:return t2.a:b hs.flow", *TWO), [fault("hs")],
    ),
    "before one radiator: which of the two": (inside("hs.flow r1.return:flow hs.return"), [advice("hs")]),
    "or before one coil": (inside("hs.flow us.coil_return:coil_flow hs.return"), [fault("hs")]),
    "a coil's, where a pump tells": (water("hs.flow pu.in:out us.coil_return:coil_flow hs.return"), [advice("us")]),
    "a coil's, where a zone tells": (
        inside("hs.flow t1.a:b hz.flow:return t2.a:b hs.return", "t1.branch us.coil_return:coil_flow t2.branch"), [advice("us")],
    ),
    "a coil's behind a separator": (
        inside("hs.flow se.source_flow:source_return hs.return", "se.load_flow pu.in:out us.coil_return:coil_flow se.load_return"),
        [advice("us")],
    ),
    "a coil's behind an exchanger": (
        inside("hs.flow hx.primary_in:primary_out hs.return", "hx.secondary_out pu.in:out us.coil_return:coil_flow hx.secondary_in"),
        [advice("us")],
    ),
    "an exchanger's, where a pump tells": (water("hs.flow pu.in:out hx.primary_out:primary_in hs.return", "cm.outlet hx.secondary_in:secondary_out ou.hot"), [advice("hx")]),
    "a separator's, where a pump tells": (
        water("hs.flow pu.in:out se.source_return:source_flow hs.return", "se.load_flow p2.in:out r1.flow:return se.load_return"), [fault("se")],
    ),
    "its source's flow and load's return": (
        inside("hs.flow se.load_return", "se.source_return hs.return", "se.load_flow pu.in:out r1.flow:return se.source_flow"), [fault("se")],
    ),
    "its source's return and load's flow": (
        inside("hs.flow se.source_flow", "se.load_flow hs.return", "se.source_return pu.in:out r1.flow:return se.load_return"), [fault("se")],
    ),
    "one of two heat sources": (
        inside("hs.flow t1.a", "h2.return t1.branch", "t2.b hs.return", "t2.branch h2.flow", "t1.b r1.flow:return t2.a"), [fault("h2")],
    ),
    "both, or both of what they feed": (
        inside(*SHARED, "t1.b t3.a:b r1.return:flow t4.a:b t2.a", "t3.branch r2.return:flow t4.branch"), [fault("hs")],
    ),
    "what two heat sources feed alone": (
        inside(*SHARED, "t1.b se.source_return:source_flow t2.a", "se.load_flow pu.in:out r1.flow:return se.load_return"), [fault("se")],
    ),
}  # fmt: skip


@pytest.mark.parametrize("name", SOUND)
def test_nothing_is_said(name: str) -> None:
    assert [each.message for each in found(NAME, SOUND[name])] == []


@pytest.mark.parametrize("name", FIRES)
def test_it_is_found(name: str) -> None:
    drawing, expected = FIRES[name]
    assert told(NAME, drawing) == expected, [each.message for each in found(NAME, drawing)]


@pytest.mark.parametrize("name", FIRES)
def test_what_is_changed_back_is_silent(name: str) -> None:
    drawing, _ = FIRES[name]
    (finding,) = found(NAME, drawing)
    proposals = list(propose(Case(drawing), finding))
    assert proposals
    for each in proposals:
        assert [left for left in found(NAME, each.drawing) if left.grade is Grade.FAULT] == []


SAYS = {
    "a store's cold and hot": "The connections cold and hot of unvented store us are changed over: cold water comes to the hot.",
    "its hot and secondary return": (
        "The connections hot and secondary return of unvented store us are changed over: water is drawn from the "
        "secondary return, and the hot leads to no tap."
    ),
    "its relief for its secondary return": (
        "The connections secondary return and relief of unvented store us are changed over: the water of the secondary "
        "circuit comes back by the relief."
    ),
    "a mixer's hot and cold": (
        "The connections hot and cold of outlet ou are changed over: hot water comes to the cold, and none to the hot."
    ),
    "a heat source's, before two radiators": (
        "Either the flow and the return of heat source hs are changed over, or those of all that is fed from there: the "
        "flow leads to the return of radiator r1."
    ),
    "before one radiator: which of the two": (
        "Either the flow and the return of heat source hs are changed over, or those of radiator r1: the flow of the one "
        "leads to the return of the other."
    ),
    "one of two heat sources": (
        "The flow and the return of heat source h2 are changed over: its flow leads to the return of radiator r1, which "
        "is right for the other heat source."
    ),
    "a coil's, where a pump tells": (
        "The flow and the return of the coil in unvented store us are changed over: it heats slower and less evenly."
    ),
    "an exchanger's, where a pump tells": (
        "The flow and the return of one side of heat exchanger hx are changed over: hot water enters it where it should "
        "leave, and less heat goes over."
    ),
    "its source's flow and load's return": (
        "The connections source flow and load return of separator se are changed over: the heat source's water has to "
        "come in above and to leave below."
    ),
}


@pytest.mark.parametrize("name", SAYS)
def test_it_says_which(name: str) -> None:
    assert [each.message for each in found(NAME, FIRES[name][0])] == [SAYS[name]]


def test_it_names_the_pipes_and_what_else_it_can_be() -> None:
    store = only(NAME, FIRES["a store's cold and hot"][0])
    assert (store.components, store.pipes) == (("us",), ("p3", "p2"))
    heat = only(NAME, FIRES["a heat source's, before two radiators"][0])
    assert (heat.components, heat.pipes) == (("hs", "r1"), ("p4", "p1"))


def test_both_ways_out_are_proposed_where_it_may_be_either() -> None:
    drawing = FIRES["a heat source's, before two radiators"][0]
    says = [each.says.told for each in propose(Case(drawing), only(NAME, drawing))]
    assert says == [
        "Change over the pipes on flow and return of heat source hs.",
        "Change over the pipes on flow and return of radiator r1 and radiator r2.",
    ]


def test_a_check_valve_inside_that_is_not_known_is_answered_for_both() -> None:
    drawing = water("cm.outlet us.hot", "us.cold ou.hot", us=("unvented_store", {"built_in": None}))
    assert told(NAME, drawing) == [fault("us")]


def test_what_is_judged_is_counted() -> None:
    assert asked(NAME, water(FEED)).status == "judged"
    assert asked(NAME, water("cm.outlet ou.cold")).status == "not applicable"


@pytest.mark.parametrize(
    ("sample", "part", "one", "other"),
    [
        ("cottage", "store", "cold", "hot"),
        ("guest-house", "store", "hot", "secondary_return"),
        ("guest-house", "source_2", "flow", "return"),
        ("guest-house", "separator", "source_flow", "load_return"),
        ("flat-over-workshop", "source", "cold", "hot"),
        ("terrace-as-found", "store", "cold", "hot"),
    ],
)
def test_in_a_sample_the_first_cure_is_what_it_was(sample: str, part: str, one: str, other: str) -> None:
    drawing = read(data_path("samples") / f"{sample}.wetcircuit")
    wrong = changed_over(drawing, part, one, other)
    analysis = analyse(wrong)
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    ends = {id: pipe.ends for id, pipe in cures(analysis, finding)[0].drawing.pipes.items()}
    assert ends == {id: pipe.ends for id, pipe in drawing.pipes.items()}

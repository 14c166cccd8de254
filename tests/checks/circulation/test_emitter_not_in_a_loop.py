"""Whether every emitter, coil and exchanger is on a loop with a pump and a heat source."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.analysis import analyse
from circuitcheck.checks.circulation.emitter_not_in_a_loop import ACROSS, ACROSS_NOT_KNOWN, BY_BYPASS
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, fault, found, only, told
from tests.checks.houses import pumped
from tests.circuit.brute_rounds import rings
from tests.circuit.random_circuits import circuits, plants
from tests.made import Part

NAME = "emitter-not-in-a-loop"
RAD: Part = "radiator"
COIL = "vs.coil_flow:coil_return"

SOUND: dict[str, Drawing] = {
    "two radiators side by side": pumped(
        "hs.flow pu.in:out t1.a:b r1.flow:return t2.a:b hs.return", "t1.branch r2.return:flow t2.branch",
        r1=RAD, r2=RAD,
    ),
    "one after the other": pumped("hs.flow pu.in:out r1.flow:return r2.flow:return hs.return", r1=RAD, r2=RAD),
    "behind a valve that is shut when nothing calls": pumped(
        "hs.flow pu.in:out zv.in:out iv.a:b r1.flow:return hs.return",
        zv="zone_valve", iv="isolating_valve", r1=RAD,
    ),
    "three-port valve": pumped(
        "hs.flow pu.in:out tp.ab:a r1.flow:return t1.a:b hs.return", f"tp.b {COIL} t1.branch",
        tp="three_port_valve", r1=RAD, vs="vented_store",
    ),
    "behind a separator, each side with its pump": pumped(
        "hs.flow pu.in:out se.source_flow:source_return hs.return",
        "se.load_flow p2.in:out t1.a:b r1.flow:return t2.a:b se.load_return", "t1.branch r2.flow:return t2.branch",
        se="separator", p2="pump", r1=RAD, r2=RAD,
    ),
    "behind an exchanger, each side with its pump": pumped(
        "hs.flow pu.in:out hx.primary_in:primary_out hs.return",
        "hx.secondary_out p2.in:out r1.flow:return hx.secondary_in",
        hx="heat_exchanger", p2="pump", r1=RAD,
    ),
    "a pump for each zone": pumped(
        "hs.flow t1.a:b pu.in:out r1.flow:return t2.a:b hs.return", "t1.branch p2.in:out cv.in:out r2.flow:return t2.branch",
        p2="pump", cv="check_valve", r1=RAD, r2=RAD,
    ),
    "through both legs of a valve that opens both": pumped(
        f"hs.flow pu.in:out tp.a:ab {COIL} t1.a:b hs.return", "tp.b r1.flow:return t1.branch",
        tp=("three_port_valve", {"action": "share"}), r1=RAD, vs="vented_store",
    ),
    "two heat sources": pumped(
        "hs.flow t1.a:b pu.in:out r1.flow:return t2.a:b hs.return", "h2.flow t1.branch", "t2.branch h2.return",
        h2="heat_source", r1=RAD,
    ),
    "beside a bypass, and beyond it on the way back": pumped(
        "hs.flow pu.in:out t1.a:b r1.flow:return t2.a:b r2.flow:return hs.return", "t1.branch bv.in:out t2.branch",
        bv="bypass_valve", r1=RAD, r2=RAD,
    ),
    "fed by a plain pipe beside a bypass": pumped(
        "hs.flow pu.in:out t1.a:b bv.in:out t2.a:b r1.flow:return hs.return", "t1.branch iv.a:b t2.branch",
        bv="bypass_valve", iv="isolating_valve", r1=RAD,
    ),
    "built-in pump": pumped(
        "hs.flow r1.flow:return hs.return", hs=("heat_source", {"built_in": ["pump", "check_valve"]}), r1=RAD
    ),
    "uncontrolled heat, by gravity": pumped(
        "hs.flow r1.flow:return hs.return", hs=("heat_source", {"heat": "uncontrolled"}), r1=RAD
    ),
    "the coil of an old vented house, by gravity": pumped(
        f"hs.flow t1.a:b t4.a:b {COIL} t2.a:b t3.a:b hs.return", "t1.branch pu.in:out r1.flow:return t2.branch",
        "fc.feed t3.branch", "t4.branch ov.connection",
        vs="vented_store", r1=RAD, fc="feed_cistern", ov="open_vent",
    ),
    "a store heated by its immersion heater alone, beside heating": pumped(
        "hs.flow pu.in:out r1.flow:return hs.return", "cm.outlet us.cold", cm="cold_main", us="unvented_store", r1=RAD
    ),
}  # fmt: skip

FIRES: dict[str, tuple[Drawing, str, str]] = {
    "hung by both its pipes on one branch": (
        pumped(
            "hs.flow pu.in:out t1.a:b r1.flow:return hs.return", "t1.branch t2.a:b r2.flow:return t2.branch",
            r1=RAD, r2=RAD,
        ), "r2", "no loop leads from",
    ),
    "between flow and flow": (
        pumped(
            "hs.flow pu.in:out t1.a:b t2.a:b cv.in:out t3.a:b r1.flow:return hs.return",
            "t3.branch cw.in:out r2.flow:return ca.connection", "t1.branch c2.connection", "t2.branch c3.connection",
            cv="check_valve", cw="check_valve", ca="cap", c2="cap", c3="cap", r1=RAD, r2=RAD,
        ), "r2", "no loop leads from",
    ),
    "check valve in its return the wrong way round": (
        pumped(
            "hs.flow pu.in:out t1.a:b r1.flow:return t2.a:b hs.return", "t1.branch r2.flow:return cv.out:in t2.branch",
            r1=RAD, r2=RAD, cv="check_valve",
        ), "r2", "no loop leads from",
    ),
    "its pipe ends free": (
        pumped("hs.flow pu.in:out t1.a:b r1.flow:return hs.return", "t1.branch r2.flow", r1=RAD, r2=RAD),
        "r2", "no loop leads from",
    ),
    "behind a bypass valve": (
        pumped(
            "hs.flow pu.in:out t1.a:b r1.flow:return t2.a:b hs.return", "t1.branch bv.in:out r2.flow:return t2.branch",
            bv="bypass_valve", r1=RAD, r2=RAD,
        ), "r2", "stays shut until other ways are",
    ),
    "behind two bypass valves side by side": (
        pumped(
            "hs.flow pu.in:out t1.a:b r1.flow:return t2.a:b hs.return",
            "t1.branch t3.a:b bv.in:out t4.a:b r2.flow:return t2.branch", "t3.branch bw.in:out t4.branch",
            bv="bypass_valve", bw="bypass_valve", r1=RAD, r2=RAD,
        ), "r2", "stays shut until other ways are",
    ),
    "no pump": (pumped("hs.flow r1.flow:return hs.return", r1=RAD), "r1", "nothing drives water"),
    "pump in the other rung only": (
        pumped(
            "hs.flow t1.a:b pu.in:out r1.flow:return t2.a:b hs.return", "t1.branch r2.flow:return t2.branch",
            r1=RAD, r2=RAD,
        ), "r2", "no loop leads from",
    ),
    "a ring of its own with a pump and no heat": (
        pumped("pu.out r1.flow:return pu.in", "hs.flow p2.in:out r2.flow:return hs.return", p2="pump", r1=RAD, r2=RAD),
        "r1", "no heat source",
    ),
    "a sealed store's coil without a pump": (
        pumped("hs.flow us.coil_flow:coil_return hs.return", us="unvented_store"), "us", "nothing drives water",
    ),
    "exchanger's far side without a pump": (
        pumped(
            "hs.flow pu.in:out hx.primary_in:primary_out hs.return", "hx.secondary_out r1.flow:return hx.secondary_in",
            hx="heat_exchanger", r1=RAD,
        ), "r1", "nothing drives water",
    ),
    "exchanger on a dead end": (
        pumped(
            "hs.flow pu.in:out t1.a:b r2.flow:return hs.return", "t1.branch hx.primary_in",
            "hx.secondary_out p2.in:out r1.flow:return hx.secondary_in", "hx.primary_out ca.connection",
            hx="heat_exchanger", p2="pump", r1=RAD, r2=RAD, ca="cap",
        ), "hx", "no loop leads from",
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "subject", "words"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, subject: str, words: str) -> None:
    assert told(NAME, drawing) == [fault(subject)]
    assert words in only(NAME, drawing).message


@pytest.mark.parametrize(
    "ways",
    [("hs.flow pu.in:out hs.return",), ("cm.outlet us.cold", "us.hot ou.hot")],
    ids=["no emitter", "no heat"],
)
def test_not_applicable(ways: tuple[str, ...]) -> None:
    more: dict[str, Any] = (
        {"cm": "cold_main", "us": "unvented_store", "ou": "outlet"} if "us." in ways[0] else {}
    )
    answer = asked(NAME, pumped(*ways, **more))
    assert (answer.findings, answer.status) == ((), "not applicable")


def test_unanswered_where_gravity_would_do() -> None:
    drawing = pumped("hs.flow r1.flow:return hs.return", hs=("heat_source", {"heat": None}), r1=RAD)
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", ("hs.heat",))
    assert "hs.heat" in finding.message


def test_whether_heat_is_controlled_is_told_as_taken() -> None:
    assert "hs.heat = switched" in analyse(pumped("hs.flow r1.flow:return hs.return", r1=RAD)).taken


def test_twenty_five_three_port_valves_in_a_row() -> None:
    ways, here, back = list[str](), "hs.flow pu.in:out", "hs.return"
    parts: dict[str, Part] = {"rx": RAD}
    for number in range(25):
        parts |= {f"v{number}": "three_port_valve", f"r{number}": RAD}
        ways += [f"v{number}.b r{number}.flow:return t{number}.branch", f"t{number}.a {back}"]
        here, back = f"{here} v{number}.ab:a", f"t{number}.b"
    sound = pumped(*ways, f"{here} rx.flow:return {back}", **parts)  # type: ignore[arg-type]  # no part is called as a parameter is
    assert asked(NAME, sound).findings == ()
    broken = pumped(
        *ways, f"{here} t90.a:b rx.flow:return t91.a:b {back}", "t90.branch ry.flow:return cv.out:in t91.branch",
        **{**parts, "ry": RAD, "cv": "check_valve"},  # type: ignore[arg-type]  # no part is called as a parameter is
    )  # fmt: skip
    assert told(NAME, broken) == [fault("ry")]


@pytest.mark.parametrize(("action", "grade"), [("divert", "fault"), (None, "unanswered"), ("share", "")])
def test_from_leg_to_leg_of_a_diverting_valve_no_water_goes(action: str | None, grade: str) -> None:
    drawing = pumped(
        f"hs.flow pu.in:out tp.a:ab {COIL} t1.a:b hs.return", "tp.b r1.flow:return t1.branch",
        tp=("three_port_valve", {"action": action}), r1=RAD, vs="vented_store",
    )  # fmt: skip
    findings = found(NAME, drawing)
    assert [(finding.components, finding.grade.value) for finding in findings] == (
        [(("r1", "tp"), grade)] if grade else []
    )
    if grade == "unanswered":
        assert findings[0].missing == ("tp.action",)


@given(st.one_of(circuits(), plants()))
def test_what_is_fed_by_bypasses_alone(drawing: Drawing) -> None:
    """Against listing every loop: those on loops with pump and heat source, all of which pass a bypass valve."""
    bypasses = {id for id, part in drawing.components.items() if part.kind.name == "bypass_valve"}
    driven = [ring for ring in rings(drawing) if ring.pumps and ring.heats]
    fed = frozenset[str]().union(*(ring.emitters for ring in driven))
    free = frozenset[str]().union(*(ring.emitters for ring in driven if not ring.parts & bypasses))
    findings = asked(NAME, drawing).findings
    crossing = {each.components[0] for each in findings if each.says.template in (ACROSS, ACROSS_NOT_KNOWN)}
    said = {each.components[0] for each in findings if each.says.template == BY_BYPASS}
    assert said == fed - free - crossing

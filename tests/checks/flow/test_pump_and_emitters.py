"""Whether pumps are strong enough, emitters get their water, pipes stay quiet, and heat stays where it is called."""

from __future__ import annotations

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Grade
from tests.checks.asking import asked, found, only
from tests.checks.flow.driven import RING, driven
from tests.made import Part

WEAK, STARVED, FAST, STRAYS = "pump-too-weak", "emitter-starved", "pipe-too-fast", "heat-strays"
ALL = (WEAK, STARVED, FAST, STRAYS)
PUMP: Part = ("pump", {"shut_off_head_m": 5, "maximum_flow_lpm": 40})
TWO_PUMPS = (
    "hs.flow t1.a:b pu.in:out zone.flow:return t2.a:b hs.return",
    "t1.branch pump_store.in:out us.coil_flow:coil_return t2.branch",
)
CHECKED = (
    "hs.flow t1.a:b pu.in:out cv.in:out zone.flow:return t2.a:b hs.return",
    "t1.branch pump_store.in:out cw.in:out us.coil_flow:coil_return t2.branch",
)
CONTROLS = {"rt": ("room_thermostat", ("pu",)), "st": ("store_thermostat", ("pump_store",))}
RADIATORS = (
    "hs.flow pu.in:out t1.a:b r1.flow:return t2.a:b hs.return",
    "t1.branch r2.flow:return t2.branch",
)


def two_pumps(*ways: str, **parts: Part) -> Drawing:
    return driven(*(ways or TWO_PUMPS), parts={"pump_store": PUMP, **parts}, controls=CONTROLS)


def radiators(head_m: float = 2, **changes: object) -> Drawing:
    """Two radiators with their valves set: one by the pump, one behind forty metres of tube."""
    data = {"output_w": 1500, **changes}
    return driven(
        *RADIATORS, parts={"r1": ("radiator", data), "r2": ("radiator", data)},
        pu={"shut_off_head_m": head_m, "maximum_flow_lpm": 30},
        pipe={"size_mm": 15}, pipes={"p6": {"length_m": 40}},
    )  # fmt: skip


@pytest.mark.parametrize("check", ALL)
def test_a_sound_plant(check: str) -> None:
    answer = asked(check, driven())
    assert answer.status == "judged" and not answer.findings


def test_a_weak_pump_starves_all_it_serves() -> None:
    drawing = driven(pu={"shut_off_head_m": 1})
    weak = only(WEAK, drawing)
    assert weak.components == ("pu",) and weak.numbers["flow_lpm"] < 0.9 * weak.numbers["design_flow_lpm"]
    assert [finding.components for finding in found(STARVED, drawing)] == [("zone",), ("us",)]


def test_of_the_situations_that_with_the_least_share_is_told_and_how_sure_it_is() -> None:
    weak = only(WEAK, driven(pu={"shut_off_head_m": 1}))
    assert weak.message.startswith("Pump pu brings 11.78 l/min in heating and hot water together,")
    assert "(Between 9.39 and 14.14 l/min if " in weak.message
    heating_is_shorter = only(WEAK, driven(pu={"shut_off_head_m": 1}, us={"coil_power_kw": 5}))
    assert heating_is_shorter.message.startswith("Pump pu brings 7.455 l/min in heating only,")


def test_what_is_called_may_ask_for_no_more_than_the_heat_source_gives() -> None:
    # 9 and 12 kW of 10.5: in both together half is enough.
    assert found(STARVED, driven(hs={"output_kw": 30}, pu={"shut_off_head_m": 1.8}))
    assert not found(STARVED, driven(hs={"output_kw": 10.5}, pu={"shut_off_head_m": 1.8}))


def test_an_emitter_beside_one_that_takes_the_water() -> None:
    drawing = driven(zone={"resistance_kpa": 25}, hs={"output_kw": 30}, pu={"shut_off_head_m": 4})
    assert not found(WEAK, drawing)
    (starved,) = found(STARVED, drawing)
    assert starved.components == ("zone",) and starved.grade == "fault"


def test_a_balancing_valve_without_a_number_is_set_to_the_design_flow() -> None:
    drawing = driven(
        *RING[:2], "t3.branch zs.in:out ba.a:b us.coil_flow:coil_return t4.branch",
        parts={"ba": "balancing_valve"}, hs={"output_kw": 30}, zone={"resistance_kpa": 20},
    )  # fmt: skip
    (run,) = [run for run in Case(drawing).solved.bodies[0].runs if run.situation.name == "both"]
    assert run.flow_lpm("us") == pytest.approx(run.body.design_lpm("us"), rel=1e-4)
    assert any("is set to give unvented store us its design flow" in text for text in run.body.taken)


def test_one_that_serves_several_must_tell_its_kv() -> None:
    drawing = driven("hs.flow pu.in:out ba.a:b t1.a:b r1.flow:return t2.a:b hs.return", RADIATORS[1],
                     parts={"ba": "balancing_valve", **dict.fromkeys(("r1", "r2"), ("radiator", {"output_w": 900}))})  # fmt: skip
    assert only(WEAK, drawing).missing == ("ba.kv_m3h",)


def test_radiators_are_set_to_their_design_flow() -> None:
    drawing = radiators()
    run = Case(drawing).solved.bodies[0].runs[0]
    for radiator in ("r1", "r2"):
        assert run.flow_lpm(radiator) == pytest.approx(run.body.design_lpm(radiator), rel=1e-4)
    assert not found(STARVED, drawing)
    assert {finding.components[0] for finding in found(STARVED, radiators(0.3))} >= {"r2"}


def test_radiators_without_valves_share_as_they_will() -> None:
    run = Case(radiators(valves=False, thermostatic=False)).solved.bodies[0].runs[0]
    near, far = run.flow_lpm("r1"), run.flow_lpm("r2")
    assert near is not None and far is not None and near > 1.5 * far


def test_a_coil_without_a_power_is_not_judged_beside_others() -> None:
    ways = (*RING[:2], "t3.branch zs.in:out vs.coil_flow:coil_return t4.branch")
    vented = driven(
        *ways, parts={"vs": "vented_store"}, zone={"resistance_kpa": 60}, pu={"shut_off_head_m": 3}
    )
    assert all("together" not in finding.message for finding in found(STARVED, vented))


FAST_PIPE = driven(pipes={"p2": {"size_mm": 15}})


def test_a_narrow_pipe_is_heard() -> None:
    finding = only(FAST, FAST_PIPE)
    assert finding.grade == "advice" and finding.pipes == ("p2",)
    assert finding.numbers["velocity_m_s"] > finding.numbers["highest_velocity_m_s"] == 1.5


def test_exactly_the_limit_is_quiet() -> None:
    speed = only(FAST, FAST_PIPE).numbers["velocity_m_s"]
    run = max(Case(FAST_PIPE).solved.bodies[0].runs, key=lambda run: run.velocity_m_s("p2") or 0.0)
    assert run.velocity_m_s("p2") == speed
    assert run.flow_lpm("p2") == pytest.approx(speed * 3.14159 * 0.0136**2 / 4 * 60_000, rel=1e-4)


def test_a_book_without_the_limit_judges_nothing() -> None:
    answer = asked(FAST, driven(design={"rule_book": "european_standards"}))
    assert answer.status == "not judged" and "highest velocity" in answer.why


def test_pumps_without_check_valves_push_water_back_through_each_other() -> None:
    findings = {finding.components[0]: finding for finding in found(STRAYS, two_pumps())}
    assert set(findings) == {"zone", "us"}
    assert all(finding.grade == "fault" and finding.numbers["flow_lpm"] < 0 for finding in findings.values())
    assert "backward" in findings["us"].message


@pytest.mark.parametrize("strays", ["us", "zone"])
def test_a_check_valve_wherever_one_is_proposed_stops_it(strays: str) -> None:
    (finding,) = (each for each in found(STRAYS, two_pumps()) if each.components == (strays,))
    proposals = list(checks()[STRAYS].propose(Case(two_pumps()), finding))
    assert len(proposals) == 2
    for each in proposals:
        assert strays not in {left.components[0] for left in found(STRAYS, each.drawing)}


def test_check_valves_stop_it() -> None:
    answer = asked(STRAYS, two_pumps(*CHECKED, cv="check_valve", cw="check_valve"))
    assert answer.status == "judged" and not answer.findings


def test_one_emitter_alone_can_stray_nowhere() -> None:
    ring = driven("hs.flow pu.in:out zv.in:out zone.flow:return hs.return", pu={"shut_off_head_m": None})
    assert asked(STRAYS, ring).status == "not applicable"


@pytest.mark.parametrize("check", ALL)
@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (driven(pu={"shut_off_head_m": None, "maximum_flow_lpm": None}), {"pu.shut_off_head_m", "pu.maximum_flow_lpm"}),
        (driven(pipes={"p9": {"length_m": None, "size_mm": None}}), {"p9.length_m", "p9.size_mm"}),
        (driven(zone={"output_kw": None}), {"zone.output_kw"}),
        (driven(zv={"serves": None}, controls={}), set()),
    ],
)  # fmt: skip
def test_one_finding_where_the_water_cannot_be_solved(
    check: str, drawing: Drawing, missing: set[str]
) -> None:
    findings = found(check, drawing)
    assert {name for finding in findings for name in finding.missing} == missing
    if missing:
        assert [finding.components for finding in findings] == [("pu",)]
        assert findings[0].grade == "unanswered"


def test_a_coil_without_its_power_is_named() -> None:
    drawing = driven(us={"coil_power_kw": None})
    for check in (STARVED, WEAK):
        assert {name for finding in found(check, drawing) for name in finding.missing} == {"us.coil_power_kw"}
        assert {finding.would_be for finding in found(check, drawing)} == {Grade.FAULT}


@pytest.mark.parametrize("check", ALL)
def test_no_pump_does_not_apply(check: str) -> None:
    assert asked(check, driven("hs.flow zone.flow:return hs.return")).status == "not applicable"


SEPARATED = (
    "hs.flow pu.in:out se.source_flow:source_return hs.return",
    "se.load_flow t1.a:b pz.in:out zone.flow:return t2.a:b se.load_return",
    "t1.branch ps.in:out us.coil_flow:coil_return t2.branch",
)
ZONE_PUMPS = {"rt": ("room_thermostat", ("pz",)), "st": ("store_thermostat", ("ps",))}
STRONG: Part = ("pump", {"shut_off_head_m": 3, "maximum_flow_lpm": 40})
FEEBLE: Part = ("pump", {"shut_off_head_m": 0.3, "maximum_flow_lpm": 40})


def separated(*ways: str, **parts: Part) -> Drawing:
    pumps: dict[str, Part] = {"se": "separator", "pz": STRONG, "ps": STRONG}
    return driven(*(ways or SEPARATED), parts={**pumps, **parts}, controls=ZONE_PUMPS)


@pytest.mark.parametrize(("weak", "emitter"), [("pz", "zone"), ("ps", "us")])
def test_a_weak_zone_pump_behind_a_separator_is_named_and_no_other(weak: str, emitter: str) -> None:
    assert not found(WEAK, separated())
    drawing = separated(**{weak: FEEBLE})
    assert [finding.components[0] for finding in found(WEAK, drawing)] == [weak]
    assert [finding.components[0] for finding in found(STARVED, drawing)] == [emitter]


def test_what_a_bypass_takes_is_not_the_pumps_weakness() -> None:
    drawing = driven(bv={"set_difference_kpa": 0.1})
    assert found(STARVED, drawing) and not found(WEAK, drawing)


@pytest.mark.parametrize(
    ("turned", "ways"),
    [
        ("zone", tuple(way.replace("zone.flow:return", "zone.return:flow") for way in RING)),
        ("us", tuple(way.replace("us.coil_flow:coil_return", "us.coil_return:coil_flow") for way in RING)),
    ],
)
def test_an_emitter_or_coil_piped_the_other_way_round_gets_its_water(
    turned: str, ways: tuple[str, ...]
) -> None:
    drawing = driven(*ways)
    assert any((run.flow_lpm(turned) or 0.0) < 0 for run in Case(drawing).solved.bodies[0].runs)
    for check in (WEAK, STARVED, STRAYS):
        answer = asked(check, drawing)
        assert (answer.findings, answer.status) == ((), "judged")


def test_a_radiator_piped_the_other_way_round_is_set_to_its_design_flow() -> None:
    data = {"output_w": 1500}
    drawing = driven(
        RADIATORS[0], "t1.branch r2.return:flow t2.branch",
        parts={"r1": ("radiator", data), "r2": ("radiator", data)}, pu={"shut_off_head_m": 2}, pipe={"size_mm": 15},
    )  # fmt: skip
    run = Case(drawing).solved.bodies[0].runs[0]
    assert run.flow_lpm("r2") == pytest.approx(-(run.body.design_lpm("r2") or 0.0), rel=1e-4)
    assert not found(STARVED, drawing) and not found(WEAK, drawing)


@pytest.mark.parametrize("check", ALL)
def test_how_a_valve_rests_when_its_supply_fails_is_not_asked(check: str) -> None:
    answer = asked(check, driven(zs={"rest": None}))
    assert (answer.findings, answer.status) == ((), "judged")

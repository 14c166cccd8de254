"""What the checks of solved flows propose: settings, valves and pipes found by solving anew."""

from __future__ import annotations

from dataclasses import replace

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks.bypass_cures import at_run_on, setting_for, while_pumping
from circuitcheck.checks.case import Case
from circuitcheck.checks.pipe_cures import stretch_of, way_round
from circuitcheck.cures import cures
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked
from tests.checks.flow.driven import RING, driven
from tests.checks.flow.test_pump_and_emitters import CHECKED, FAST_PIPE, radiators, two_pumps

BYPASS, SOURCE, WEAK = "bypass-set-wrong", "source-flow-below-minimum", "pump-too-weak"
STARVED, FAST, STRAYS = "emitter-starved", "pipe-too-fast", "heat-strays"
NO_BYPASS = driven(RING[0].replace("t1.a:b ", "").replace("t2.a:b ", ""), RING[2])
BALANCED = driven(
    *RING[:2], "t3.branch zs.in:out ba.a:b us.coil_flow:coil_return t4.branch",
    parts={"ba": ("balancing_valve", {"kv_m3h": 1.1})}, hs={"output_kw": 30},
)  # fmt: skip
TAKES_ALL = driven(zone={"resistance_kpa": 25}, hs={"output_kw": 30}, pu={"shut_off_head_m": 4})
NARROW = driven(pu={"shut_off_head_m": 3.5}, pipe={"size_mm": 15}, bv={"set_difference_kpa": 33})

CURED: dict[str, tuple[str, Drawing, str]] = {
    "a bypass set too high": (BYPASS, driven(bv={"set_difference_kpa": 60}), "Set bypass valve bv to 38 kPa."),
    "a bypass set too low": (BYPASS, driven(bv={"set_difference_kpa": 20}), "Set bypass valve bv to 38 kPa."),
    "a bypass that hardly opens": (SOURCE, driven(bv={"set_difference_kpa": 47}), "Set bypass valve bv to 38 kPa."),
    "one that must open while heat is called": (
        SOURCE, driven(hs={"minimum_flow_lpm": 16}),
        "Set bypass valve bv to 23 kPa, though it then opens while heat is called as well.",
    ),
    "no bypass": (
        SOURCE, NO_BYPASS,
        (
            "Fit an automatic bypass valve from the outlet of pump pu to the return of heat source hs, set to 39 kPa, "
            "with 0.5 m of pipe on either side of it."
        ),
    ),
    "narrow pipes on the way that loses most": (
        WEAK, NARROW, "Run the way to unvented store us and back in larger pipe: 22 mm in place of 15 mm.",
    ),
    "a far radiator": (
        STARVED, radiators(0.3), "Run the way to radiator r2 and back in larger pipe: 22 mm in place of 15 mm.",
    ),
    "one beside it that takes the water": (
        STARVED, TAKES_ALL, "Fit a balancing valve in the return of unvented store us, set to kv 1.9.",
    ),
    "a balancing valve set too tight": (STARVED, BALANCED, "Set balancing valve ba to kv 2.2."),
    "a narrow pipe": (FAST, FAST_PIPE, "Run pipe p2 in 22 mm."),
    "water pushed back through a pump that stands": (
        STRAYS, two_pumps(), "Fit a check valve at the outlet of pump pump_store, letting water out of it only.",
    ),
}  # fmt: skip

BEYOND: dict[str, tuple[str, Drawing]] = {
    "a pump far too weak": (WEAK, driven(pu={"shut_off_head_m": 1})),
    "a heat source that asks for more than the pump brings": (SOURCE, driven(hs={"minimum_flow_lpm": 60})),
    "a pipe whose bore is told": (FAST, driven(pipes={"p2": {"bore_mm": 12}})),
}


@pytest.mark.parametrize("name", CURED)
def test_offered_and_safe(name: str) -> None:
    check, drawing, says = CURED[name]
    analysis = analyse(drawing)
    offered = [
        cure.message
        for finding in analysis.findings
        if finding.check == check
        for cure in cures(analysis, finding)
    ]
    assert says in offered, offered


@pytest.mark.parametrize("name", BEYOND)
def test_nothing_is_offered_where_nothing_would_do(name: str) -> None:
    check, drawing = BEYOND[name]
    analysis = analyse(drawing)
    findings = [finding for finding in analysis.findings if finding.check == check]
    assert findings and all(cures(analysis, finding) == () for finding in findings)


@pytest.mark.parametrize("least", [2, 5, 8])
def test_a_setting_lies_between_heating_and_run_on(least: float) -> None:
    drawing = driven(hs={"minimum_flow_lpm": least})
    setting = setting_for(drawing, "bv", "hs", at_run_on)
    assert setting is not None and not setting.opens
    sound = asked(BYPASS, set_field(drawing, "bv", "set_difference_kpa", setting.kpa))
    assert sound.status == "judged" and not sound.findings


def test_no_setting_for_water_that_cannot_be_solved() -> None:
    assert setting_for(driven(pu={"shut_off_head_m": None}), "bv", "hs", while_pumping) is None


def turned(drawing: Drawing) -> Drawing:
    """The same with every pipe drawn from its other end."""
    pipes = {pipe.id: replace(pipe, ends=pipe.ends[::-1]) for pipe in drawing.pipes.values()}
    return replace(drawing, pipes=pipes)


@pytest.mark.parametrize("drawing", [radiators(), turned(radiators())], ids=["as it flows", "turned"])
def test_the_way_round_goes_through_the_pump_and_back(drawing: Drawing) -> None:
    run = Case(drawing).solved.bodies[0].runs[0]
    assert set(way_round(run, "r2")) == set(drawing.pipes) - {"p3", "p4"}
    assert set(way_round(run, "r1")) == set(drawing.pipes) - {"p6", "p7"}


def test_a_stretch_ends_at_tees_and_at_what_heats() -> None:
    case = Case(driven())
    assert stretch_of(case, "p2") == stretch_of(case, "p1") == ("p1", "p2")
    assert stretch_of(case, "p4") == stretch_of(case, "p5") == ("p4", "p5")


def test_check_valves_that_are_there_leave_nothing_to_cure() -> None:
    assert not asked(STRAYS, two_pumps(*CHECKED, cv="check_valve", cw="check_valve")).findings

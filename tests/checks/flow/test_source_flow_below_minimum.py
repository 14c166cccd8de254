"""Whether each heat source always gets its least flow."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, only
from tests.checks.flow.driven import driven

NAME = "source-flow-below-minimum"
OWN_PUMP = {"built_in": ["pump"], "shut_off_head_m": 5, "maximum_flow_lpm": 30}
OWN_RING = ("hs.flow t1.a:b zv.in:out zone.flow:return t2.a:b hs.return", "t1.branch bv.in:out t2.branch")

SOUND: dict[str, Drawing] = {
    "a bypass that opens": driven(),
    "exactly enough is not asked of a heat source without a least flow": driven(
        hs={"minimum_flow_lpm": 0}, bv={"set_difference_kpa": 60}
    ),
    "a bypass of its own": driven(hs={"built_in": ["bypass"], "minimum_flow_lpm": 100}),
    "no run-on, and enough while anything is called": driven(
        hs={"pump_overrun_min": 0}, bv={"set_difference_kpa": 60}
    ),
    "a pump of its own": driven(*OWN_RING, hs=OWN_PUMP),
}

SHORT: dict[str, tuple[Drawing, str]] = {
    "a bypass that stays shut": (driven(bv={"set_difference_kpa": 60}), "gets 0 l/min in pump run-on and needs 5"),
    "a bypass that hardly opens": (driven(bv={"set_difference_kpa": 47}), "in pump run-on and needs 5"),
    "a pump too weak": (driven(hs={"minimum_flow_lpm": 16}), "10.23 l/min in pump run-on and needs 16"),
    "short in heating only": (
        driven(hs={"minimum_flow_lpm": 16, "pump_overrun_min": 0}), "15.71 l/min in heating only and needs 16"
    ),
    "a pump of its own": (driven(*OWN_RING, hs={**OWN_PUMP, "minimum_flow_lpm": 29}), "needs 29"),
}  # fmt: skip


@pytest.mark.parametrize("name", SOUND)
def test_sound(name: str) -> None:
    answer = asked(NAME, SOUND[name])
    assert answer.status == "judged" and not answer.findings


@pytest.mark.parametrize("name", SHORT)
def test_short_of_flow(name: str) -> None:
    drawing, says = SHORT[name]
    finding = only(NAME, drawing)
    assert finding.grade == "fault" and finding.components[0] == "hs"
    assert says in finding.message
    assert finding.numbers["flow_lpm"] < finding.numbers["minimum_flow_lpm"]


def test_exactly_its_least_flow_is_enough() -> None:
    (finding,) = asked(NAME, driven(hs={"minimum_flow_lpm": 16})).findings
    flow = finding.numbers["flow_lpm"]
    assert not asked(NAME, driven(hs={"minimum_flow_lpm": flow})).findings
    assert asked(NAME, driven(hs={"minimum_flow_lpm": flow * 1.001})).findings


def test_what_rests_on_usual_resistances_is_told_with_its_range() -> None:
    assert "Between" in only(NAME, driven(hs={"minimum_flow_lpm": 16})).message


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (driven(hs={"minimum_flow_lpm": None}), ("hs.minimum_flow_lpm",)),
        (
            driven(hs={"minimum_flow_lpm": None}, pu={"shut_off_head_m": None, "maximum_flow_lpm": None}),
            ("hs.minimum_flow_lpm", "pu.shut_off_head_m", "pu.maximum_flow_lpm"),
        ),
        (driven(pipes={"p3": {"length_m": None}, "p5": {"size_mm": None}}), ("p5.size_mm", "p3.length_m")),
        (driven(pipe={"material": "plastic"}, pipes={f"p{n}": {"bore_mm": 20} for n in range(2, 14)}), ("p1.bore_mm",)),
        (driven(design={"flow_temperature_c": None}), ("design.flow_temperature_c",)),
        (driven(bv={"set_difference_kpa": None}), ("bv.set_difference_kpa",)),
        (driven(zone={"resistance_kpa": None}, hs={"output_kw": None}), ("hs.output_kw", "zone.resistance_kpa")),
    ],
)  # fmt: skip
def test_unanswered_names_all_that_is_missing(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert finding.grade == "unanswered" and finding.would_be == "fault" and finding.components == ("hs",)
    assert set(finding.missing) == set(missing)


def test_glycol_is_refused_with_the_reason() -> None:
    finding = only(NAME, driven(design={"glycol_percent": 30}))
    assert finding.grade == "unanswered" and "glycol" in finding.message


def test_dead_ends_need_no_length() -> None:
    drawing = driven(
        "hs.flow pu.in:out t1.a:b zone.flow:return hs.return", "t1.branch pg.connection",
        parts={"pg": "pressure_gauge"}, pipes={"p5": {"length_m": None}},
    )  # fmt: skip
    assert asked(NAME, drawing).status == "judged"


def test_no_pump_does_not_apply() -> None:
    assert asked(NAME, driven("hs.flow zone.flow:return hs.return")).status == "not applicable"


def test_water_that_runs_backward_is_told_as_such() -> None:
    ways = ("hs.flow pu.out:in t1.a:b t2.a:b hs.return", "t1.branch zone.flow:return t2.branch")
    finding = only("source-flow-below-minimum", driven(*ways))
    assert "backward" in finding.message and "gets" not in finding.message

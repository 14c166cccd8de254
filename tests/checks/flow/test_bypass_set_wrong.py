"""Whether a bypass opens at run-on and stays shut otherwise."""

from __future__ import annotations

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, only
from tests.checks.flow.driven import RING, driven

NAME = "bypass-set-wrong"

SOUND: dict[str, Drawing] = {
    "between": driven(),
    "just above what stands across it in heating": driven(bv={"set_difference_kpa": 31.4}),
    "the wrong way round is another check's business": driven(RING[0], "t2.branch bv.in:out t1.branch", RING[2]),
    "it stays shut, but the rooms are always open": driven(
        "hs.flow pu.in:out t1.a:b zone.flow:return t2.a:b hs.return", "t1.branch bv.in:out t2.branch",
        bv={"set_difference_kpa": 60},
    ),
    "no run-on": driven(hs={"pump_overrun_min": 0}, bv={"set_difference_kpa": 60}),
}  # fmt: skip


@pytest.mark.parametrize("name", SOUND)
def test_sound(name: str) -> None:
    answer = asked(NAME, SOUND[name])
    assert answer.status == "judged" and not answer.findings


def test_it_stays_shut_at_run_on() -> None:
    finding = only(NAME, driven(bv={"set_difference_kpa": 60}))
    assert finding.grade == "fault" and finding.components == ("bv", "hs")
    assert "opens at 60 kPa, the pump raises 48.01 kPa" in finding.message


def test_it_opens_in_normal_running() -> None:
    finding = only(NAME, driven(bv={"set_difference_kpa": 20}))
    assert finding.grade == "advice" and finding.components == ("bv",)
    assert "heating only" in finding.message and "20 kPa, 21.09 kPa stand across it" in finding.message
    assert finding.numbers == pytest.approx(
        {"set_difference_kpa": 20, "difference_kpa": 21.09, "flow_lpm": 6.971}, abs=0.01
    )


def test_just_below_what_stands_across_it_opens() -> None:
    assert only(NAME, driven(bv={"set_difference_kpa": 30.5})).grade == "advice"


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (driven(bv={"set_difference_kpa": None}), {"bv.set_difference_kpa"}),
        (driven(pu={"maximum_flow_lpm": None}), {"pu.maximum_flow_lpm"}),
    ],
)
def test_unanswered(drawing: Drawing, missing: set[str]) -> None:
    finding = only(NAME, drawing)
    assert finding.grade == "unanswered" and set(finding.missing) == missing and finding.components == ("bv",)


def test_no_bypass_does_not_apply() -> None:
    assert asked(NAME, driven("hs.flow pu.in:out zone.flow:return hs.return")).status == "not applicable"

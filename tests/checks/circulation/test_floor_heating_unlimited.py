"""Whether water too hot for a zone can reach it."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, fault, only, told
from tests.checks.houses import pumped
from tests.made import Part

NAME = "floor-heating-unlimited"
PLAIN = ("hs.flow pu.in:out hz.flow:return hs.return",)
BLENDED = ("hs.flow t1.a:b bl.hot:mixed pu.in:out hz.flow:return t2.a:b t3.a:b hs.return",
           "t2.branch bl.cold", "t1.branch p2.in:out r2.flow:return t3.branch")  # fmt: skip
ROUND_IT = ("hs.flow t1.a:b bl.hot:mixed t4.a:b pu.in:out hz.flow:return t2.a:b t3.a:b hs.return",
            "t2.branch bl.cold", "t1.branch iv.a:b t4.branch")  # fmt: skip
EXCHANGER = ("hs.flow p2.in:out {before}hx.primary_in:primary_out {after}hs.return",
             "hx.secondary_out pu.in:out hz.flow:return hx.secondary_in")  # fmt: skip


def floor(
    *ways: str, limit: Any = 45, flow: Any = 70, setting: Any = 45, source: Any = None, **parts: Part
) -> Drawing:
    usual: dict[str, Part] = {
        "hz": ("heating_zone", {"maximum_flow_temperature_c": limit}),
        "bl": ("blending_valve", {"set_temperature_c": setting}),
        "p2": "pump",
        "r2": "radiator",
        "iv": "isolating_valve",
        "hx": "heat_exchanger",
    }
    text = " ".join(ways)
    hs: Part = ("heat_source", {"maximum_flow_temperature_c": source})
    used = {id: kind for id, kind in usual.items() if f"{id}." in text}
    return pumped(*ways, design={"flow_temperature_c": flow}, **{**used, "hs": hs, **parts})  # type: ignore[arg-type]  # no part is called as a parameter is


BEHIND = tuple(way.format(before="", after="") for way in EXCHANGER)
BLENDED_BEHIND = (
    "hs.flow bl.hot:mixed p2.in:out hx.primary_in:primary_out t2.a:b hs.return", "t2.branch bl.cold",
    EXCHANGER[1],
)  # fmt: skip

SOUND = {
    "the flow is no hotter": floor(*PLAIN, flow=45),
    "blended": floor(*BLENDED),
    "blended lower": floor(*BLENDED, setting=40),
    "blended, whatever the flow": floor(*BLENDED, flow=None),
    "the heat source gives no more": floor(*PLAIN, flow=None, source=45),
    "blended before the exchanger": floor(*BLENDED_BEHIND),
}
FIRES = {
    "no valve": floor(*PLAIN),
    "a degree over": floor(*PLAIN, flow=46),
    "set too high": floor(*BLENDED, setting=46),
    "a way round the valve": floor(*ROUND_IT),
    "another zone's valve": floor(
        "hs.flow t1.a:b pu.in:out hz.flow:return t3.a:b hs.return",
        "t1.branch bl.hot:mixed p2.in:out r2.flow:return t2.a:b t3.branch", "t2.branch bl.cold",
    ),
    "behind an exchanger": floor(*BEHIND),
    "the heat source gives more": floor(*PLAIN, flow=None, source=60),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize("drawing", FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing) -> None:
    assert told(NAME, drawing) == [fault("hz")]


def test_the_numbers() -> None:
    finding = only(NAME, FIRES["no valve"])
    assert finding.numbers == {"maximum_flow_temperature_c": 45, "flow_temperature_c": 70}
    assert "45 °C" in finding.message and "70 °C" in finding.message


@pytest.mark.parametrize(
    "drawing",
    [
        floor(*PLAIN, limit=None),
        floor("hs.flow pu.in:out r2.flow:return hs.return"),
        floor("pu.out hz.flow:return pu.in"),
    ],
    ids=["no limit stated", "no zone", "no heat"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (floor(*PLAIN, flow=None), ("design.flow_temperature_c",)),
        (floor(*BLENDED, setting=None), ("bl.set_temperature_c",)),
        (floor(*BLENDED, flow=None, setting=None), ("design.flow_temperature_c", "bl.set_temperature_c")),
        (floor(*ROUND_IT, flow=None, setting=None), ("design.flow_temperature_c",)),
    ],
)
def test_unanswered(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert all(name in finding.message for name in missing)


def test_a_way_round_settles_it_though_the_setting_is_not_known() -> None:
    assert told(NAME, floor(*ROUND_IT, setting=None)) == [fault("hz")]

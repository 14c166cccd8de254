"""Vent and feed more than 150 mm apart on a pumped circuit."""

from __future__ import annotations

from dataclasses import replace

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.houses import vented
from tests.checks.open_vented.plants import pumped_vented, with_data

NAME = "vent-and-feed-apart"

FEED_ON_RETURN = """
    flow: hs.flow - tv.a
    gap: tv.b - pu.in
    push: pu.out - rad.flow
    back: rad.return - tf.a
    home: tf.b - hs.return
"""
"""The vent on the flow, the feed on the return."""


def gravity(
    pump_on: str = "flow",
    *,
    head: float | None = 4,
    length: float | None = 2,
    height: float | None = 450,
    water: float | None = 5.5,
) -> Drawing:
    """Gravity hot water, vent on its flow and feed on its return, beside a pumped radiator; with every
    number that its flows are solved from."""
    rooms = {
        "flow": "o1: to.branch - pu.in\no2: pu.out - rad.flow\no3: rad.return - tr.branch",
        "return": "o1: to.branch - rad.flow\no2: rad.return - pu.in\no3: pu.out - tr.branch",
        "both": "o1: to.branch - rad.flow\no2: rad.return - tr.branch",
    }[pump_on]
    home = "f6: tr.b - pu.in\nf7: pu.out - hs.return" if pump_on == "both" else "f6: tr.b - hs.return"
    pipe = {"size_mm": 22, "length_m": length, "bends": 2}
    drawing = pumped_vented(
        "flow: hs.flow - to.a\nf2: to.b - tv.a\nf3: tv.b - st.coil_flow\n"
        f"f4: st.coil_return - tf.a\nf5: tf.b - tr.a\n{home}\n{rooms}",
        without="flow gap suck push back", to="tee", tr="tee", st="vented_store",
        data={**dict.fromkeys(("f3", "f4", "f5", "f6", "f7", "o1", "o2", "o3"), pipe),
              "flow": {**pipe, "rise_m": 1}, "f2": {**pipe, "rise_m": 1}, "feed": {"rise_m": None}},
        hs=("heat_source", {"height_m": 1, "output_kw": 15}),
        pu=("pump", {"shut_off_head_m": head, "maximum_flow_lpm": 60}),
        rad=("radiator", {"output_w": 9000, "thermostatic": False}),
        **with_data("ov", height_above_water_mm=height), **with_data("fc", water_level_m=water),
    )  # fmt: skip
    return replace(drawing, design={"flow_temperature_c": 75, "return_temperature_c": 60})


SOUND: dict[str, Drawing] = {
    "exactly 150 mm": pumped_vented(),
    "one tee for both": pumped_vented(
        "flow: hs.flow - x.a\ntrunk: x.branch - tv.a\nvent: tv.b - ov.connection\n"
        "feed: fc.feed - tv.branch\ngap: x.b - pu.in",
        without="flow gap suck vent feed", x="tee",
    ),
    "one way of known length is near enough": pumped_vented(
        "gap: tv.b - x.a\nnear: x.b - y.a\nround: x.branch - y.branch\non: y.b - tf.a", without="gap",
        data={"gap": {"length_m": 0.1}, "near": {"length_m": 0.04}, "on": {"length_m": 0.01}}, x="tee", y="tee",
    ),
    "a drain tee between": pumped_vented(
        "gap: tv.b - x.a\non: x.b - tf.a\ndr: x.branch - dr.connection", without="gap",
        data={"gap": {"length_m": 0.1}, "on": {"length_m": 0.05}, "dr": {"length_m": 9}},
        x="tee", dr="drain",
    ),
    "gravity hot water beside a pumped radiator": gravity(),
    "the same with the pump on the return": gravity("return"),
}  # fmt: skip

APART: dict[str, Drawing] = {
    "151 mm": pumped_vented(data={"gap": {"length_m": 0.151}}),
    "a drain tee between": pumped_vented(
        "gap: tv.b - x.a\non: x.b - tf.a\ndr: x.branch - dr.connection", without="gap",
        data={"gap": {"length_m": 0.1}, "on": {"length_m": 0.06}}, x="tee", dr="drain",
    ),
    "too long already, whatever the rest": pumped_vented(
        "gap: tv.b - x.in\non: x.out - tf.a", without="gap", data={"gap": {"length_m": 0.2}}, x="strainer",
    ),
    "feed on the return": pumped_vented(FEED_ON_RETURN, without="flow gap suck push back"),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize("drawing", APART.values(), ids=APART.keys())
def test_fires(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components[:2]) == ("fault", ("ov", "fc"))
    assert finding.numbers["most_apart_m"] == 0.15


def test_the_length_and_the_pipes_between_are_told() -> None:
    finding = only(NAME, APART["151 mm"])
    assert finding.pipes == ("gap",)
    assert finding.numbers["apart_m"] == pytest.approx(0.151)
    assert "151 mm" in finding.message


def test_unknown_lengths_are_all_named() -> None:
    drawing = pumped_vented(
        "gap: tv.b - x.in\non: x.out - tf.a", without="gap", data={"gap": {"length_m": None}}, x="strainer"
    )
    finding = only(NAME, drawing)
    assert finding.grade.value == "unanswered" and set(finding.missing) == {"gap.length_m", "on.length_m"}


def test_without_a_pump_it_does_not_apply() -> None:
    assert asked(NAME, vented()).status == "not applicable"


def test_the_book_that_sets_no_distance_judges_nothing() -> None:
    drawing = replace(pumped_vented(), design={"rule_book": "european_standards"})
    assert asked(NAME, drawing).status == "not judged"


def test_the_feed_is_moved_beside_the_vent() -> None:
    drawing = pumped_vented(data={"gap": {"length_m": 2}})
    proposed = cures(analyse(drawing), only(NAME, drawing))
    assert proposed
    assert all(found(NAME, cure.drawing) == () for cure in proposed)


def test_beside_gravity_hot_water_a_pump_between_is_a_fault() -> None:
    drawing = pumped_vented(
        "flow: hs.flow - tv.a\nf3: tv.b - st.coil_flow\nf4: st.coil_return - tr.a\nf6: tr.b - hs.return\n"
        "o0: tv2.branch - rad.flow\no1: rad.return - tf.a\no2: tf.b - pu.in\no3: pu.out - tr.branch\n"
        "flow: hs.flow - tv2.a\nf2: tv2.b - tv.a",
        without="flow gap suck push back", tv2="tee", tr="tee", st="vented_store",
    )  # fmt: skip
    finding = only(NAME, drawing)
    assert (finding.grade.value, "apart_m" in finding.numbers) == ("fault", False)


def test_beside_gravity_hot_water_the_solved_pressure_is_judged() -> None:
    """The pumped water falls in pressure from the feed's tee to the vent's: with little water above
    the vent's tee, at 3 m, air is drawn in."""
    finding = only(NAME, gravity(water=3.02, length=12))
    assert finding.grade.value == "fault"
    assert finding.numbers["lowered_m"] > 0.02 and finding.numbers["lifted_m"] == 0


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [(gravity(head=None), "pu.shut_off_head_m"), (gravity(length=None), "f5.length_m"),
     (gravity(water=None), "fc.water_level_m")],
)  # fmt: skip
def test_beside_gravity_hot_water_what_the_flows_lack_is_named(drawing: Drawing, missing: str) -> None:
    finding = only(NAME, drawing)
    assert finding.grade.value == "unanswered" and missing in finding.missing

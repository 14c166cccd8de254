"""Whether each running pump always has a loop to drive water round."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, advice, asked, fault, found, only, told
from tests.checks.houses import OPEN_RADIATOR, pumped
from tests.made import Part

NAME = "pump-against-shut-valves"
HAND = "isolating_valve"
ZONE = "zone_valve"
NO_RUN_ON: Part = ("heat_source", {"pump_overrun_min": 0, "minimum_flow_lpm": 0})
RING = "hs.flow t3.a:b pu.in:out t1.a:b zv.in:out rad.flow:return t2.a:b hs.return"
Controls = dict[str, tuple[str, tuple[str, ...]]]


def zone(*ways: str, ring: str = RING, controls: Controls | None = None, **parts: Part) -> Drawing:
    """One zone with a zone valve and a radiator without valves, a tee before the pump, and more."""
    return pumped(ring, *ways, controls=controls, **{"zv": ZONE, "rad": OPEN_RADIATOR, **parts})  # type: ignore[arg-type]  # no part is called as a parameter is


def two_pumps(controls: Controls, **parts: Part) -> Drawing:
    """Two zones, each with a pump, a zone valve and a radiator."""
    usual: dict[str, Part] = {"z1": ZONE, "z2": ZONE, "r1": OPEN_RADIATOR, "r2": OPEN_RADIATOR, "p2": "pump"}
    return pumped(
        "hs.flow t1.a:b pu.in:out z1.in:out r1.flow:return t2.a:b hs.return",
        "t1.branch p2.in:out z2.in:out r2.flow:return t2.branch",
        controls=controls,
        **{**usual, **parts},  # type: ignore[arg-type]  # no part is called as a parameter is
    )


SOUND: dict[str, Drawing] = {
    "bypass": zone("t1.branch bv.in:out t2.branch", bv="bypass_valve"),
    "bypass round the pump alone": zone("t1.branch bv.in:out t3.branch", bv="bypass_valve"),
    "bypass behind a hand valve: hand valves stand open": zone(
        "t1.branch iv.a:b bv.in:out t2.branch", bv="bypass_valve", iv=HAND
    ),
    "no valve in the zone": pumped("hs.flow pu.in:out rad.flow:return hs.return", rad=OPEN_RADIATOR),
    "a radiator with hand valves": pumped(
        "hs.flow pu.in:out rad.flow:return hs.return", rad=("radiator", {"thermostatic": False})
    ),
    "its control holds the zone valve open": zone(
        controls={"rt": ("room_thermostat", ("pu", "zv"))}
    ),
    "two pumps, each with its control and its zone": two_pumps(
        {"c1": ("room_thermostat", ("pu", "z1")), "c2": ("room_thermostat", ("p2", "z2"))}
    ),
    "separator": pumped(
        "hs.flow pu.in:out se.source_flow:source_return hs.return",
        "se.load_flow rad.flow:return se.load_return",
        se="separator", rad="radiator",
    ),
    "drinking water, round the store": pumped(
        "us.hot pu.in:out us.secondary_return", "cm.outlet us.cold", us="unvented_store", cm="cold_main"
    ),
    "drinking water, through a check valve": pumped(
        "us.hot pu.in:out cv.in:out us.secondary_return", us="unvented_store", cv="check_valve"
    ),
    "three-port valve": pumped(
        "hs.flow pu.in:out tp.ab:a rad.flow:return t1.a:b hs.return", "tp.b us.coil_flow:coil_return t1.branch",
        tp="three_port_valve", rad=OPEN_RADIATOR, us="unvented_store",
    ),
    "built-in pump and bypass": pumped(
        "hs.flow zv.in:out rad.flow:return hs.return",
        hs=("heat_source", {"built_in": ["pump", "bypass"]}), zv=ZONE, rad="radiator",
    ),
}  # fmt: skip

FIRES: dict[str, tuple[Drawing, Told]] = {
    "no bypass": (zone(), fault("pu", "zv", "zv")),
    "bypass backwards": (zone("t2.branch bv.in:out t1.branch", bv="bypass_valve"), fault("pu", "zv", "zv")),
    "bypass beyond the zone valve": (
        zone(
            "t1.branch bv.in:out t2.branch",
            ring="hs.flow pu.in:out zv.in:out t1.a:b rad.flow:return t2.a:b hs.return",
            bv="bypass_valve",
        ),
        fault("pu", "zv", "zv"),
    ),
    "built-in pump": (
        pumped(
            "hs.flow zv.in:out rad.flow:return hs.return",
            hs=("heat_source", {"built_in": ["pump"]}), zv=ZONE, rad=OPEN_RADIATOR,
        ),
        fault("hs", "zv", "zv"),
    ),
    "thermostatic head": (
        pumped("hs.flow pu.in:out rad.flow:return hs.return", rad="radiator"),
        fault("pu", "rad", "rad"),
    ),
    "its control holds the zone valve open, but not the head": (
        zone(rad="radiator", controls={"rt": ("room_thermostat", ("pu", "zv"))}),
        fault("pu", "rad", "rad"),
    ),
    "its control acts on no valve": (
        zone(controls={"rt": ("room_thermostat", ("pu",))}),
        fault("pu", "zv", "zv"),
    ),
    "a control that acts on the valve and not on the pump": (
        zone(controls={"rt": ("room_thermostat", ("zv",))}),
        fault("pu", "zv", "zv"),
    ),
    "one of two controls leaves the valve shut": (
        zone(controls={"rt": ("room_thermostat", ("pu", "zv")), "st": ("store_thermostat", ("pu",))}),
        fault("pu", "zv", "zv"),
    ),
    "no loop": (
        pumped("hs.flow pu.in:out cv.out:in rad.flow:return hs.return", cv="check_valve", rad=OPEN_RADIATOR),
        fault("pu"),
    ),
    "drinking water, check valve backwards": (
        pumped("us.hot pu.in:out cv.out:in us.secondary_return", us="unvented_store", cv="check_valve"),
        fault("pu"),
    ),
    "drinking water, a motor valve": (
        pumped("us.hot pu.in:out zv.in:out us.secondary_return", us="unvented_store", zv=ZONE),
        fault("pu", "zv", "zv"),
    ),
    "one leg of a three-port valve, the other to a head": (
        pumped(
            "hs.flow pu.in:out tp.ab:a rad.flow:return t1.a:b hs.return", "tp.b r2.flow:return t1.branch",
            tp="three_port_valve", rad="radiator", r2=OPEN_RADIATOR,
        ),
        fault("pu", "tp:b rad"),
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "expected"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, expected: Told) -> None:
    assert told(NAME, drawing) == [expected]


@pytest.mark.parametrize(
    ("case", "words"),
    [
        ("no loop", "has no loop to drive water round, however the valves stand."),
        ("no bypass", "has nowhere to drive water with zone valve zv shut."),
    ],
)
def test_what_it_says(case: str, words: str) -> None:
    assert only(NAME, FIRES[case][0]).message == f"Pump pu {words}"


def test_each_pump_by_itself() -> None:
    drawing = two_pumps({"c1": ("room_thermostat", ("pu", "z1"))})
    assert told(NAME, drawing) == [fault("p2", "z2", "z2")]


@pytest.mark.parametrize("check", ["t5.branch cv.in:out t6.branch", "t6.branch cv.out:in t5.branch"])
@pytest.mark.parametrize("second", ["t1.branch p2.in:out t3.branch", "t3.branch p2.out:in t1.branch"])
def test_what_stands_side_by_side_with_a_pump_is_no_way_back(second: str, check: str) -> None:
    """Through no pump and no check valve, whichever end of it the pipes are drawn from."""
    drawing = pumped(
        "hs.flow t1.a:b t5.a:b pu.in:out t6.a:b t3.a:b zv.in:out rad.flow:return hs.return", second, check,
        zv=ZONE, rad=OPEN_RADIATOR, p2="pump", cv="check_valve",
    )  # fmt: skip
    assert told(NAME, drawing) == [fault("pu", "zv", "zv"), fault("p2", "zv", "zv")]


def test_a_control_that_runs_both_pumps_and_opens_one_valve() -> None:
    drawing = two_pumps({"c1": ("room_thermostat", ("pu", "p2", "z1"))})
    assert told(NAME, drawing) == [fault("p2", "z2", "z2")]


def test_not_applicable_without_a_pump() -> None:
    assert asked(NAME, pumped("hs.flow rad.flow:return hs.return", rad="radiator")).status == "not applicable"


class TestExcuse:
    """As the run-on is excused: no run-on, no least flow, end switches that stop the pump."""

    def test_excused(self) -> None:
        answer = asked(NAME, zone(hs=NO_RUN_ON))
        assert (answer.findings, answer.status) == ((), "judged")

    def test_a_head_is_advice_then(self) -> None:
        assert told(NAME, zone(hs=NO_RUN_ON, rad="radiator")) == [advice("pu", "rad", "rad")]

    def test_not_excused_in_drinking_water(self) -> None:
        drawing = pumped("us.hot pu.in:out zv.in:out us.secondary_return", us="unvented_store", zv=ZONE)
        assert told(NAME, drawing) == [fault("pu", "zv", "zv")]

    @pytest.mark.parametrize(
        ("data", "missing"),
        [
            ({"pump_overrun_min": 0}, ("hs.minimum_flow_lpm",)),
            ({"pump_overrun_min": None, "minimum_flow_lpm": 0}, ("hs.pump_overrun_min",)),
        ],
    )
    def test_unanswered_naming_what_is_missing(self, data: dict[str, Any], missing: tuple[str, ...]) -> None:
        finding = only(NAME, zone(hs=("heat_source", data)))
        assert (finding.grade.value, finding.components[0], finding.missing) == ("unanswered", "pu", missing)
        assert finding.would_be is not None and finding.would_be.value == "fault"
        for name in missing:
            assert name in finding.message

    def test_every_heat_source_on_its_water_must_be_excused(self) -> None:
        drawing = pumped(
            "hs.flow t1.a:b pu.in:out zv.in:out rad.flow:return t2.a:b hs.return",
            "h2.flow t1.branch",
            "t2.branch h2.return",
            hs=NO_RUN_ON, h2="heat_source", zv=ZONE, rad=OPEN_RADIATOR,
        )  # fmt: skip
        assert told(NAME, drawing) == [fault("pu", "zv", "zv")]
        assert found(NAME, pumped(*(RING,), hs=NO_RUN_ON, zv=ZONE, rad=OPEN_RADIATOR)) == ()

"""Whether a heat source always has a way round: bypasses that count and those that do not."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, asked, fault, only, told
from tests.checks.houses import OPEN_RADIATOR, pumped
from tests.made import Part

NAME = "no-way-round-when-zones-shut"
HAND = "isolating_valve"
ZONE = "zone_valve"
RAIL: Part = ("radiator", {"thermostatic": False})
RAIL_WITH_WHEEL: Part = ("radiator", {"thermostatic": False, "hand_wheel": True})
NO_RUN_ON: Part = ("heat_source", {"pump_overrun_min": 0, "minimum_flow_lpm": 0})

# Heat source, pump, and between the tees t1 and t2 one zone: its valve and an emitter.
RING = "hs.flow pu.in:out t1.a:b zv.in:out rad.flow:return t2.a:b hs.return"


def zone(*ways: str, ring: str = RING, design: dict[str, Any] | None = None, **parts: Part) -> Drawing:
    """One zone with a zone valve and a radiator without valves, and what else there is."""
    return pumped(ring, *ways, design=design, **{"zv": ZONE, "rad": OPEN_RADIATOR, **parts})  # type: ignore[arg-type]  # no part is called as a parameter is


SOUND: dict[str, Drawing] = {
    "bypass before the zone valve": zone("t1.branch bv.in:out t2.branch", bv="bypass_valve"),
    "bypass, and hand valves that are on every loop": zone(
        "t1.branch bv.in:out t2.branch",
        ring="hs.flow v1.a:b pu.in:out t1.a:b zv.in:out rad.flow:return t2.a:b v2.a:b hs.return",
        bv="bypass_valve", v1=HAND, v2=HAND,
    ),
    "an open pipe as bypass": zone("t1.branch t2.branch"),
    "a towel rail with hand valves": zone("t1.branch tr.flow:return t2.branch", tr=RAIL),
    "a towel rail behind an isolating valve": zone("t1.branch iv.a:b tr.flow:return t2.branch", tr=RAIL, iv=HAND),
    "a zone that is never all thermostatic": zone(
        "t1.branch hz.flow:return t2.branch", hz=("heating_zone", {"all_thermostatic": False})
    ),
    "a store's coil without a valve": zone("t1.branch us.coil_flow:coil_return t2.branch", us="unvented_store"),
    "an exchanger without a valve": zone("t1.branch hx.primary_in:primary_out t2.branch", hx="heat_exchanger"),
    "no valve in the zone": zone(ring="hs.flow pu.in:out rad.flow:return hs.return"),
    "a three-port valve, whose legs are never both shut": pumped(
        "hs.flow pu.in:out tp.ab:a rad.flow:return t1.a:b hs.return",
        "tp.b us.coil_flow:coil_return t1.branch",
        tp="three_port_valve", rad=OPEN_RADIATOR, us="unvented_store",
    ),
    "a three-port valve that collects": pumped(
        "hs.flow pu.in:out t1.a:b rad.flow:return tp.a:ab hs.return",
        "t1.branch us.coil_flow:coil_return tp.b",
        tp="three_port_valve", rad=OPEN_RADIATOR, us="unvented_store",
    ),
    "built-in pump and bypass": pumped(
        "hs.flow zv.in:out rad.flow:return hs.return",
        hs=("heat_source", {"built_in": ["pump", "bypass"]}), zv=ZONE, rad="radiator",
    ),
    "built-in check valve, pump and bypass": pumped(
        "hs.flow zv.in:out rad.flow:return hs.return",
        hs=("heat_source", {"built_in": ["pump", "bypass", "check_valve"]}), zv=ZONE, rad="radiator",
    ),
    "built-in pump, bypass outside": pumped(
        "hs.flow t1.a:b zv.in:out rad.flow:return t2.a:b hs.return", "t1.branch bv.in:out t2.branch",
        hs=("combination_heat_source", {"built_in": ["pump"]}), zv=ZONE, rad="radiator", bv="bypass_valve",
    ),
    "separator, pump on its source's side": pumped(
        "hs.flow pu.in:out se.source_flow:source_return hs.return",
        "se.load_flow p2.in:out zv.in:out rad.flow:return se.load_return",
        se="separator", p2="pump", zv=ZONE, rad="radiator",
    ),
    "separator crossed twice": pumped(
        "hs.flow se.source_flow", "se.source_return hs.return",
        "se.load_flow pu.in:out rad.flow:return se.load_return",
        se="separator", rad=OPEN_RADIATOR,
    ),
    "each of two pumps with a zone of its own, one zone always open": pumped(
        "hs.flow t1.a:b pu.in:out zv.in:out r1.flow:return t2.a:b hs.return",
        "t1.branch p2.in:out r2.flow:return t2.branch",
        p2="pump", zv=ZONE, r1="radiator", r2=OPEN_RADIATOR,
    ),
    "pump on the return": pumped(
        "hs.flow t1.a:b zv.in:out rad.flow:return t2.a:b pu.in:out hs.return", "t1.branch bv.in:out t2.branch",
        zv=ZONE, rad="radiator", bv="bypass_valve",
    ),
    "a check valve the right way round": zone(
        "t1.branch t2.branch", ring="hs.flow pu.in:out cv.in:out t1.a:b zv.in:out rad.flow:return t2.a:b hs.return",
        cv="check_valve",
    ),
    "bypass round a bypass": zone(
        "t1.branch t3.a:b b1.in:out t4.a:b t2.branch", "t3.branch b2.out:in t4.branch",
        b1="bypass_valve", b2="bypass_valve",
    ),
}  # fmt: skip

FIRES: dict[str, tuple[Drawing, Told]] = {
    "no bypass": (zone(), fault("hs", "zv", "zv")),
    "no bypass, and a thermostatic head": (zone(rad="radiator"), fault("hs", "zv", "zv rad")),
    "two zones": (
        zone("t1.branch z2.in:out r2.flow:return t2.branch", z2=ZONE, r2=OPEN_RADIATOR),
        fault("hs", "zv z2"),
    ),
    "thermostatic heads only": (
        pumped("hs.flow pu.in:out rad.flow:return hs.return", rad="radiator"),
        fault("hs", "rad", "rad"),
    ),
    "a zone of thermostatic heads": (
        pumped("hs.flow pu.in:out hz.flow:return hs.return", hz="heating_zone"),
        fault("hs", "hz", "hz"),
    ),
    "bypass backwards": (zone("t2.branch bv.in:out t1.branch", bv="bypass_valve"), fault("hs", "zv", "zv")),
    "bypass behind a hand valve": (
        zone("t1.branch iv.a:b bv.in:out t2.branch", bv="bypass_valve", iv=HAND),
        fault("hs", "zv", "zv"),
    ),
    "bypass behind a secured valve": (
        zone("t1.branch iv.a:b bv.in:out t2.branch", bv="bypass_valve", iv=("isolating_valve", {"secured": True})),
        fault("hs", "zv", "zv"),
    ),
    "a balancing valve as bypass": (
        zone("t1.branch bl.a:b t2.branch", bl="balancing_valve"),
        fault("hs", "zv", "zv"),
    ),
    "an isolating valve as bypass": (zone("t1.branch iv.a:b t2.branch", iv=HAND), fault("hs", "zv", "zv")),
    "a dirt separator with valves in the bypass": (
        zone("t1.branch ds.a:b bv.in:out t2.branch", bv="bypass_valve", ds="dirt_separator"),
        fault("hs", "zv", "zv"),
    ),
    "bypass beyond the zone valve": (
        zone(
            "t1.branch bv.in:out t2.branch",
            ring="hs.flow pu.in:out zv.in:out t1.a:b rad.flow:return t2.a:b hs.return",
            bv="bypass_valve",
        ),
        fault("hs", "zv", "zv"),
    ),
    "bypass round the pump alone": (
        zone(
            "t1.branch bv.in:out t3.branch",
            ring="hs.flow t3.a:b pu.in:out t1.a:b zv.in:out rad.flow:return t2.a:b hs.return",
            bv="bypass_valve",
        ),
        fault("hs", "zv", "zv"),
    ),
    "a towel rail that the householder shuts": (
        zone("t1.branch tr.flow:return t2.branch", tr=RAIL_WITH_WHEEL),
        fault("hs", "zv", "zv"),
    ),
    "a towel rail behind a zone valve": (
        zone("t1.branch z2.in:out tr.flow:return t2.branch", tr=RAIL, z2=ZONE),
        fault("hs", "zv z2"),
    ),
    "a thermostatic rail": (
        zone("t1.branch tr.flow:return t2.branch", tr="radiator"),
        fault("hs", "zv tr"),
    ),
    "one leg of a three-port valve, the other to a thermostatic head": (
        pumped(
            "hs.flow pu.in:out tp.ab:a rad.flow:return t1.a:b hs.return",
            "tp.b us.coil_flow:coil_return t1.branch",
            tp="three_port_valve", rad="radiator", us="unvented_store",
        ),
        fault("hs", "tp:b rad"),
    ),
    "a three-port valve with one leg capped": (
        pumped("hs.flow pu.in:out tp.ab:a rad.flow:return hs.return", "tp.b k.connection",
            tp="three_port_valve", rad=OPEN_RADIATOR, k="cap"),
        fault("hs", "tp:a", "tp:a"),
    ),
    "built-in bypass, pump outside": (
        zone(ring="hs.flow pu.in:out zv.in:out rad.flow:return hs.return", hs=("heat_source", {"built_in": ["bypass"]})),
        fault("hs", "zv", "zv"),
    ),
    "built-in pump": (
        pumped("hs.flow zv.in:out rad.flow:return hs.return",
            hs=("heat_source", {"built_in": ["pump"]}), zv=ZONE, rad=OPEN_RADIATOR),
        fault("hs", "zv", "zv"),
    ),
    "pump outside the loop": (
        pumped(
            "hs.flow t1.a:b rad.flow:return t2.a:b hs.return",
            "t1.branch t3.a:b pu.in:out t4.a:b k.connection", "t3.branch t4.branch",
            rad=OPEN_RADIATOR, k="cap",
        ),
        fault("hs"),
    ),
    "a check valve backwards": (
        pumped("hs.flow pu.in:out cv.out:in rad.flow:return hs.return", cv="check_valve", rad=OPEN_RADIATOR),
        fault("hs"),
    ),
    "pump backwards against a check valve": (
        pumped("hs.flow pu.out:in cv.in:out rad.flow:return hs.return", cv="check_valve", rad=OPEN_RADIATOR),
        fault("hs"),
    ),
    "separator crossed twice, the zone shut": (
        pumped(
            "hs.flow se.source_flow", "se.source_return hs.return",
            "se.load_flow pu.in:out zv.in:out rad.flow:return se.load_return",
            se="separator", zv=ZONE, rad=OPEN_RADIATOR,
        ),
        fault("hs", "zv", "zv"),
    ),
    "each of two pumps with its own zone": (
        pumped(
            "hs.flow t1.a:b pu.in:out z1.in:out r1.flow:return t2.a:b hs.return",
            "t1.branch p2.in:out z2.in:out r2.flow:return t2.branch",
            p2="pump", z1=ZONE, z2=ZONE, r1=OPEN_RADIATOR, r2=OPEN_RADIATOR,
        ),
        fault("hs", "z1 z2"),
    ),
}  # fmt: skip


@pytest.mark.parametrize("drawing", SOUND.values(), ids=SOUND.keys())
def test_does_not_fire(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "expected"), FIRES.values(), ids=FIRES.keys())
def test_fires(drawing: Drawing, expected: Told) -> None:
    (answer,) = told(NAME, drawing)
    if len(expected.shut) == 1 and len(expected.alone) > 1:
        # Which of several smallest sets is named is not promised.
        assert len(answer.shut) == 1 and answer.shut <= expected.alone
        expected = Told(expected.subject, expected.grade, answer.shut, expected.alone)
    assert answer == expected


@pytest.mark.parametrize(
    ("case", "part", "reason"),
    [
        ("bypass backwards", "bypass valve bv", "wrong way round"),
        ("bypass behind a hand valve", "isolating valve iv", "shut by hand"),
        ("a balancing valve as bypass", "balancing valve bl", "shut by hand"),
        ("bypass beyond the zone valve", "bypass valve bv", "beyond the valves"),
        ("bypass round the pump alone", "bypass valve bv", "round the pump alone"),
        ("a towel rail that the householder shuts", "radiator tr", "householder"),
    ],
)
def test_says_why_a_bypass_does_not_count(case: str, part: str, reason: str) -> None:
    message = only(NAME, FIRES[case][0]).message
    (sentence,) = [each for each in message.split(". ") if "does not count" in each]
    assert part in sentence.lower()
    assert reason in sentence


@pytest.mark.parametrize("case", ["no bypass", "a thermostatic rail", "pump outside the loop"])
def test_says_nothing_of_a_bypass_that_is_not_there(case: str) -> None:
    assert "does not count" not in only(NAME, FIRES[case][0]).message


def test_says_so_where_no_position_is_to_blame() -> None:
    assert "however the valves stand" in only(NAME, FIRES["pump outside the loop"][0]).message


def test_ids_are_the_heat_source_then_the_witness_then_the_pumps() -> None:
    assert only(NAME, zone()).components == ("hs", "zv", "pu")


def test_several_heat_sources_one_sound_one_not() -> None:
    drawing = zone(
        "t1.branch bv.in:out t2.branch",
        "h2.flow p2.in:out z2.in:out r2.flow:return h2.return",
        bv="bypass_valve", h2="heat_source", p2="pump", z2=ZONE, r2=OPEN_RADIATOR,
    )  # fmt: skip
    assert told(NAME, drawing) == [fault("h2", "z2", "z2")]


def test_two_heat_sources_on_one_water_one_beyond_a_zone_valve() -> None:
    drawing = pumped(
        "hs.flow t1.a:b pu.in:out rad.flow:return t2.a:b hs.return",
        "h2.flow zv.in:out t1.branch",
        "t2.branch h2.return",
        h2="heat_source", zv=ZONE, rad=OPEN_RADIATOR,
    )  # fmt: skip
    assert told(NAME, drawing) == [fault("h2", "zv", "zv")]


def test_gravity_is_not_judged_by_it() -> None:
    assert asked(NAME, pumped("hs.flow rad.flow:return hs.return", rad="radiator")).status == "not applicable"


def test_a_pump_in_drinking_water_is_not_judged_by_it() -> None:
    drawing = pumped(
        "us.hot t1.a:b pu.in:out zv.in:out us.secondary_return",
        "cm.outlet us.cold",
        us="unvented_store", zv=ZONE, cm="cold_main",
    )  # fmt: skip
    assert asked(NAME, drawing).status == "not applicable"


def test_a_drinking_water_pump_beside_gravity_heating_is_not_judged_by_it() -> None:
    drawing = pumped(
        "hs.flow us.coil_flow:coil_return hs.return",
        "us.hot pu.in:out us.secondary_return",
        us="unvented_store",
    )
    assert asked(NAME, drawing).status == "not applicable"


def test_twenty_five_three_port_valves_in_a_row_are_answered() -> None:
    ring = ["hs.flow pu.in:out tp1.ab"]
    parts: dict[str, Part] = {}
    for number in range(1, 26):
        parts[f"tp{number}"] = "three_port_valve"
        parts[f"r{number}"] = OPEN_RADIATOR
        following = f"tp{number + 1}.ab" if number < 25 else "t25.b"
        ring += [
            f"tp{number}.a r{number}.flow:return t{number}.a",
            f"tp{number}.b t{number}.branch",
            f"t{number}.b {following}" if number < 25 else "",
        ]
    ring.append("t25.b hs.return")
    assert told(NAME, pumped(*ring, **parts)) == []  # type: ignore[arg-type]  # no part is called as a parameter is

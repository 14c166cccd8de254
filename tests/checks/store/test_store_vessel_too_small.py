"""The vessel against the swell of the store's water."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.sizing.store_vessel import swell_l, vessel_for
from tests.checks.asking import asked, found, only
from tests.checks.store.fed import COLD, GROUP, SOUND, fed, store
from tests.made import Part

NAME = "store-vessel-too-small"

SWELL = swell_l(200, 10, 60)
NEEDED = vessel_for(SWELL, 3, 3, 4.8).volume_l or 0.0


def ev(volume: float | None, charge: float | None = 3) -> Part:
    return ("expansion_vessel", {"volume_l": volume, "precharge_bar": charge})


def test_what_a_usual_store_needs() -> None:
    assert pytest.approx(10.8, abs=0.1) == NEEDED


@pytest.mark.parametrize(
    ("volume", "fires"), [(NEEDED, False), (NEEDED * 0.999, True), (24, False), (8, True)]
)
def test_size(volume: float, fires: bool) -> None:
    findings = found(NAME, fed(ev=ev(volume)))
    assert [(each.grade.value, each.components) for each in findings] == (
        [("fault", ("us", "ev"))] if fires else []
    )


def test_numbers_are_told() -> None:
    finding = only(NAME, fed(ev=ev(8)))
    assert finding.numbers["swell_l"] == pytest.approx(SWELL)
    assert finding.numbers["needed_l"] == pytest.approx(NEEDED)
    assert finding.numbers["final_pressure_bar"] == pytest.approx(4.8)
    assert finding.numbers["precharge_bar"] == 3
    assert (finding.numbers["fill_temperature_c"], finding.numbers["hot_temperature_c"]) == (10, 60)
    for text in ("3 bar", "4.8 bar", "10 °C", "60 °C", "12 l is the next size"):
        assert text in finding.message


FOR_CHARGE = vessel_for(SWELL, 2.8, 3, 4.8).volume_l or 0.0


@pytest.mark.parametrize(
    ("vessel", "fires"),
    [
        (ev(FOR_CHARGE * 1.001, 2.8), False),
        (ev(FOR_CHARGE * 0.999, 2.8), True),
        (ev(24, 1), False),
        (ev(20, 1), True),
        (ev(25, 4), False),
        (ev(24, 4), True),
        (ev(24, 4.5), True),
        (ev(1000, 4.8), True),
        (ev(24, 0), True),
    ],
)
def test_the_charge_counts_as_it_is(vessel: Part, fires: bool) -> None:
    assert bool(found(NAME, fed(ev=vessel))) is fires


@pytest.mark.parametrize(
    ("parts", "design", "missing"),
    [
        ({"ev": ev(None)}, None, ("ev.volume_l",)),
        ({"ev": ev(24, None)}, None, ("ev.precharge_bar",)),
        ({"us": store(volume_l=None)}, None, ("us.volume_l",)),
        ({"us": store(thermostat_c=None)}, None, ("us.thermostat_c",)),
        ({"us": store(internal_expansion=None), "ev": ev(8)}, None, ("us.internal_expansion",)),
        ({}, {}, ("design.fill_temperature_c",)),
        ({"rv": "pressure_reducing_valve"}, None, ("rv.set_pressure_bar",)),
        ({"er": "expansion_relief_valve"}, None, ("er.set_pressure_bar",)),
        (
            {"ev": "expansion_vessel", "rv": "pressure_reducing_valve", "er": "expansion_relief_valve"},
            {},
            ("design.fill_temperature_c", "rv.set_pressure_bar", "er.set_pressure_bar", "ev.volume_l", "ev.precharge_bar"),
        ),
    ],
)  # fmt: skip
def test_unanswered(parts: dict[str, Any], design: dict[str, Any] | None, missing: tuple[str, ...]) -> None:
    finding = only(NAME, fed(design=design, **parts))
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "fault"


def test_too_small_at_any_charge_is_answered() -> None:
    assert only(NAME, fed(ev=ev(8, None))).grade.value == "fault"


def test_of_two_relief_valves_the_one_that_is_known_may_settle_it() -> None:
    def two(volume: float) -> Drawing:
        cold = COLD.replace("t1.a:b", "t1.a:b t5.a:b")
        return fed("t5.branch e2.inlet", cold=cold, e2="expansion_relief_valve", ev=ev(volume))

    assert only(NAME, two(8)).grade.value == "fault"  # the other could only let water out earlier
    assert only(NAME, two(24)).missing == ("e2.set_pressure_bar",)


def test_without_a_reducing_valve_the_main_stands_in_the_vessel() -> None:
    no_reducer = COLD.replace(" rv.in:out", "")
    assert found(NAME, fed(cold=no_reducer, ev=ev(40, 4))) == ()
    assert only(NAME, fed(cold=no_reducer, ev=ev(20, 4))).numbers["fill_pressure_bar"] == 4


@pytest.mark.parametrize(
    ("drawing", "fires"),
    [
        (fed("t5.branch e2.connection", cold=COLD.replace("t1.a:b", "t1.a:b t5.a:b"), ev=ev(8), e2=ev(8)), False),
        (fed("t5.branch e2.connection", cold=COLD.replace("t1.a:b", "t1.a:b t5.a:b"), ev=ev(5), e2=ev(5)), True),
        (fed(cold="cm.outlet ig.in:out t1.a:b us.cold", expansion="", ig=GROUP, ev=ev(11)), False),
        (fed(cold="cm.outlet ig.in:out t1.a:b us.cold", expansion="", ig=GROUP, ev=ev(10)), True),
    ],
)  # fmt: skip
def test_several_vessels_and_a_group(drawing: Drawing, fires: bool) -> None:
    assert bool(found(NAME, drawing)) is fires


def test_stores_that_share_a_vessel() -> None:
    def two(volume: float, **data: Any) -> Drawing:
        return fed(
            "t5.branch u2.cold",
            cold=COLD.replace(" us.cold", " t5.a:b us.cold"),
            u2=store(**data),
            ev=ev(volume),
        )

    assert only(NAME, two(2 * NEEDED * 0.99)).components == ("us", "u2", "ev")
    assert found(NAME, two(2 * NEEDED * 1.01)) == ()
    assert found(NAME, two(NEEDED * 1.01, internal_expansion=True)) == ()


def secondary(length: float | None, vessel: Part) -> Drawing:
    return fed(
        "t6.branch p2.in:out c2.in:out us.secondary_return", "t9.branch o2.hot",
        hot="us.hot t9.a:b t6.a:b ou.hot", p2="pump", c2="check_valve", o2="outlet", ev=vessel,
        pipe={"size_mm": 22, "length_m": length},
    )  # fmt: skip


LOOP_PIPES = 5
PER_METRE = 0.3205


@pytest.mark.parametrize(
    ("litres", "counts"), [(9.9, False), (10.1, True)], ids=["under ten litres", "over ten litres"]
)
def test_a_secondary_circuit(litres: float, counts: bool) -> None:
    """Dead legs to outlets are no part of it."""
    drawing = secondary(litres / PER_METRE / LOOP_PIPES, ev(NEEDED * 1.01))
    assert bool(found(NAME, drawing)) is counts
    if counts:
        assert only(NAME, drawing).numbers["swell_l"] == pytest.approx(
            swell_l(200 + litres, 10, 60), rel=1e-3
        )


def test_a_secondary_circuit_of_unknown_length() -> None:
    finding = only(NAME, secondary(None, ev(24)))
    assert finding.grade.value == "unanswered"
    assert len(finding.missing) == LOOP_PIPES and all(name.endswith(".length_m") for name in finding.missing)
    assert only(NAME, secondary(None, ev(8))).grade.value == "fault"


def test_a_relief_valve_built_into_the_store_opens_at_its_highest_pressure_at_the_latest() -> None:
    def built_in(volume: float) -> Drawing:
        return fed(
            expansion="",
            cold=COLD.replace(" t2.a:b", ""),
            us=store(built_in=["expansion_relief"]),
            ev=ev(volume),
        )

    assert only(NAME, built_in(5)).grade.value == "fault"
    finding = only(NAME, built_in(100))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("us.built_in",))


@pytest.mark.parametrize(
    "drawing",
    [
        fed(vessel="", cold=COLD.replace(" t1.a:b", "")),
        fed(us=store(internal_expansion=True), ev=ev(1)),
        fed(expansion="", cold=COLD.replace(" t2.a:b", "")),
        fed(cold="t1.b t2.a:b us.cold"),
    ],
    ids=["no vessel", "internal expansion", "no expansion relief", "no feed"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_a_thermostat_beyond_the_formula_is_unanswered() -> None:
    assert only(NAME, fed(us=store(thermostat_c=150))).missing == ("us.thermostat_c",)


@pytest.mark.parametrize("name", [name for name in SOUND if name.startswith(("two", "heated", "beside"))])
def test_sound(name: str) -> None:
    assert asked(NAME, SOUND[name]).status == "judged"


def test_pressures_that_are_the_same_but_for_rounding_leave_nothing_to_work_between() -> None:
    # 0.8 of 6 bar is 4.800000000000001.
    finding = only(NAME, fed(rv=("pressure_reducing_valve", {"set_pressure_bar": 4.8})))
    assert (
        finding.numbers["taken_l"] == 0 and "needed_l" not in finding.numbers and "e+" not in finding.message
    )

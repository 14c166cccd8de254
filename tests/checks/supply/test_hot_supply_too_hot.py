"""Water above 80 °C is blended to 60 °C or less before every outlet."""

from __future__ import annotations

from dataclasses import replace

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.supply.hot_supply_too_hot import propose
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import FED, blended, plumbed, store

NAME = "hot-supply-too-hot"
HOT = store(thermostat_c=85)
COIL = "hs.flow z1.in:out us.coil_flow:coil_return hs.return"
STAT = {"st": ("store_thermostat", ("z1",))}


def grades(drawing: Drawing) -> list[str]:
    return [each.grade.value for each in found(NAME, drawing)]


@pytest.mark.parametrize(("setting", "fires"), [(60, False), (80, False), (80.1, True), (90, True)])
def test_the_thermostat(setting: float, fires: bool) -> None:
    findings = found(NAME, plumbed(FED, "us.hot sink.hot", us=store(thermostat_c=setting)))
    assert [each.components for each in findings] == [("us", "sink")] * fires


@pytest.mark.parametrize(("setting", "fires"), [(44, False), (60, False), (60.5, True)])
def test_the_blending(setting: float, fires: bool) -> None:
    ways = (FED, "us.hot b1.hot:mixed t2.a:b sink.hot", "t2.branch bath.hot", "t1.branch b1.cold")
    assert bool(found(NAME, plumbed(*ways, us=HOT, b1=blended(setting)))) is fires


def test_before_every_outlet() -> None:
    ways = (FED, "us.hot t2.a:b b1.hot:mixed bath.hot", "t1.branch b1.cold", "t2.branch sink.hot")
    assert only(NAME, plumbed(*ways, us=HOT, b1=blended(44))).components == ("us", "sink")


def test_it_comes_through_another_store() -> None:
    drawing = plumbed(FED, "us.hot u2.cold:hot sink.hot", us=HOT, u2=store(thermostat_c=60))
    assert only(NAME, drawing).components == ("us", "sink")


@pytest.mark.parametrize(
    ("heat", "controls", "grade"),
    [
        ({"heat": "uncontrolled"}, {}, ["danger"]),
        ({"heat": "uncontrolled"}, STAT, []),  # the thermostat's valve stops it
        ({"maximum_flow_temperature_c": 82}, {}, ["danger"]),
        ({"maximum_flow_temperature_c": 80}, {}, []),
        ({"maximum_flow_temperature_c": 82}, STAT, []),
        ({}, STAT, []),
        ({}, {}, ["unanswered"]),
        ({"heat": None}, STAT, []),
    ],
)
def test_heat_that_nothing_stops(
    heat: dict[str, object], controls: dict[str, tuple[str, tuple[str, ...]]], grade: list[str]
) -> None:
    drawing = plumbed(FED, COIL, "us.hot sink.hot", hs=("heat_source", heat), controls=controls)
    assert grades(drawing) == grade


@pytest.mark.parametrize(
    ("heat", "controls", "grade"),
    [
        ({"heat": "uncontrolled"}, {}, ["danger"]),
        ({"heat": "uncontrolled"}, STAT, []),
        ({"maximum_flow_temperature_c": 80}, {}, []),
    ],
)
def test_heat_that_comes_through_a_plate(
    heat: dict[str, object], controls: dict[str, tuple[str, tuple[str, ...]]], grade: list[str]
) -> None:
    plate = (
        "hs.flow hx.primary_in:primary_out hs.return",
        "hx.secondary_out z1.in:out us.coil_flow:coil_return hx.secondary_in",
    )
    drawing = plumbed(FED, *plate, "us.hot sink.hot", hs=("heat_source", heat), controls=controls)
    assert grades(drawing) == grade


def test_a_valve_of_another_branch_stops_nothing() -> None:
    ways = (
        "hs.flow t5.a:b us.coil_flow:coil_return t6.a:b hs.return",
        "t5.branch z1.in:out rad.flow:return t6.branch",
    )
    drawing = plumbed(
        FED, *ways, "us.hot sink.hot", hs=("heat_source", {"heat": "uncontrolled"}), controls=STAT
    )
    assert grades(drawing) == ["danger"]


def test_a_heat_source_straight_on_the_stores_water() -> None:
    ways = (FED, "us.hot t5.a:b sink.hot", "t5.branch hs.return:flow us.secondary_return")
    assert grades(plumbed(*ways, hs=("heat_source", {"heat": "uncontrolled"}))) == ["danger"]


def test_unknown_names_all() -> None:
    ways = (FED, COIL, "us.hot b1.hot:mixed sink.hot", "t1.branch b1.cold")
    unknown = only(NAME, plumbed(*ways, us=store(thermostat_c=None), b1=blended(None), hs="heat_source"))
    assert unknown.missing == ("us.thermostat_c", "hs.maximum_flow_temperature_c", "b1.set_temperature_c")
    assert grades(plumbed(*ways, us=store(thermostat_c=None), b1=blended(50))) == []
    assert asked(NAME, plumbed(*ways, us=store(thermostat_c=None), b1=blended(None))).status == "not judged"


def test_no_store_or_no_outlet() -> None:
    assert asked(NAME, plumbed("cm.outlet ch.cold", "ch.hot sink.hot")).status == "not applicable"
    assert asked(NAME, plumbed(FED, us=HOT)).status == "not applicable"


def test_a_thermostat_control_set_too_high() -> None:
    drawing = plumbed(FED, COIL, "us.hot sink.hot", controls=STAT)
    drawing = replace(drawing, controls={"st": replace(drawing.controls["st"], set_c=85)})
    assert grades(drawing) == ["danger"]
    (first, *_) = propose(Case(drawing), only(NAME, drawing))
    assert grades(first.drawing) == []
    assert first.drawing.controls["st"].set_c == 60


def test_the_cures_cure() -> None:
    drawing = plumbed(FED, "us.hot t2.a:b sink.hot", "t2.branch bath.hot", us=HOT)
    proposals = list(propose(Case(drawing), only(NAME, drawing)))
    assert len(proposals) == 2
    for proposal in proposals:
        assert grades(proposal.drawing) == []
        assert found("cold-drawn-after-check", proposal.drawing) == ()

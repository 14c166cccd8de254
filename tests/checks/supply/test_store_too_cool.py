"""A store below 60 °C breeds legionella."""

from __future__ import annotations

from dataclasses import replace

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.supply.store_too_cool import propose
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import FED, plumbed, store

NAME = "store-too-cool"
HEATED = (FED, "us.hot sink.hot", "hs.flow z1.in:out us.coil_flow:coil_return hs.return")


def with_thermostat(drawing: Drawing, set_c: float | None, acts_on: tuple[str, ...] = ("z1",)) -> Drawing:
    control = replace(drawing.controls["st"], set_c=set_c, acts_on=acts_on)
    return replace(drawing, controls={"st": control})


def heated(thermostat_c: float | None, set_c: float | None, acts_on: tuple[str, ...] = ("z1",)) -> Drawing:
    drawing = plumbed(
        *HEATED, us=store(thermostat_c=thermostat_c), controls={"st": ("store_thermostat", acts_on)}
    )
    return with_thermostat(drawing, set_c, acts_on)


@pytest.mark.parametrize("kind", ["unvented_store", "vented_store"])
@pytest.mark.parametrize(("setting", "fires"), [(60, False), (59.9, True), (65, False), (20, True)])
def test_the_limit(kind: str, setting: float, fires: bool) -> None:
    drawing = plumbed("us.hot sink.hot", us=store(kind, thermostat_c=setting))
    assert [each.grade.value for each in found(NAME, drawing)] == ["advice"] * fires


def test_the_default_of_60_passes_and_is_told() -> None:
    case = Case(plumbed("us.hot sink.hot"))
    from circuitcheck.checks.supply.store_too_cool import judge

    assert judge(case).sound == 1
    assert "us.thermostat_c = 60" in case.taken


def test_unknown() -> None:
    finding = only(NAME, plumbed("us.hot sink.hot", us=store(thermostat_c=None)))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("us.thermostat_c",))


@pytest.mark.parametrize(
    ("thermostat", "set_c", "acts_on", "grades"),
    [
        (60, 60, ("z1",), []),
        (60, 55, ("z1",), ["advice"]),  # the lower of the two
        (55, 60, ("z1",), ["advice"]),
        (60, None, ("z1",), []),
        (60, 55, ("sink",), []),  # a thermostat that does not stop this coil is another store's
        (None, 55, ("z1",), ["advice"]),  # settled by what is known
        (None, 65, ("z1",), ["unanswered"]),
    ],
)
def test_the_control_that_stops_the_coil(
    thermostat: float | None, set_c: float | None, acts_on: tuple[str, ...], grades: list[str]
) -> None:
    assert [each.grade.value for each in found(NAME, heated(thermostat, set_c, acts_on))] == grades


def test_no_store() -> None:
    assert asked(NAME, plumbed("cm.outlet sink.cold")).status == "not applicable"


def test_both_rule_books_set_it() -> None:
    drawing = plumbed(
        "us.hot sink.hot", us=store(thermostat_c=50), design={"rule_book": "european_standards"}
    )
    assert only(NAME, drawing).numbers == {"setting_c": 50, "least_c": 60}


def test_the_cure() -> None:
    drawing = heated(50, 55)
    (proposal,) = propose(Case(drawing), only(NAME, drawing))
    assert found(NAME, proposal.drawing) == ()

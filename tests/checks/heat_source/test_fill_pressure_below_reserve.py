"""The water that vessels hold when all is cold, against the reserve they should hold."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from circuitcheck.sizing.vessel import cold_fill, least_fill_bar, room_share
from tests.checks.asking import Told, advice, asked, only, told
from tests.checks.houses import vented
from tests.checks.sized import house, source, valve, vessel

NAME = "fill-pressure-below-reserve"
LEAST = 12 * 1.8 / (12 - 0.2 * 12) - 1


def filled(bar: float | None, **more: Any) -> Drawing:
    """100 litres, 12 litres of vessel charged to 0.8 bar, filled cold to that."""
    design = {"fill_pressure_bar": bar, **more.pop("design", {})}
    return house(design=design, **more)


LARGE = {"volume_l": 24, "precharge_bar": 0.8}
UNKNOWN = ("radiator", {"water_content_l": None})
TWO = ("t1.branch t3.a:b sv.inlet", "t3.branch e2.connection")


def test_the_limit() -> None:
    assert pytest.approx(1.25) == LEAST


@pytest.mark.parametrize(
    ("drawing", "expected"),
    [
        (filled(LEAST), []),
        (filled(LEAST - 0.001), [advice("hs")]),
        # Above 15 litres: 0.5 % of the content, and 3 litres at least.
        (filled(24 * 1.8 / 21 - 1, ev=vessel(**LARGE)), []),
        (filled(24 * 1.8 / 21 - 1.001, ev=vessel(**LARGE)), [advice("hs")]),
        (filled(1.1, ev=vessel(volume_l=80, precharge_bar=0.8), design={"system_content_l": 800}), []),
        # The check of the charge speaks of these.
        (filled(0.8), []),
        (filled(0.7), []),
        # The check of the size speaks of this.
        (filled(1.0, ev=vessel(volume_l=4)), []),
        # Built in.
        (
            filled(
                1.0,
                vessel_by="",
                hs=source(built_in=["vessel"], built_in_vessel_l=12, built_in_vessel_precharge_bar=0.8),
            ),
            [advice("hs")],
        ),
        (filled(1.05, ev=vessel(**LARGE), design={"system_content_l": None}, rad=UNKNOWN), [advice("hs")]),
    ],
)
def test_the_fill(drawing: Drawing, expected: list[Told]) -> None:
    assert told(NAME, drawing) == expected


@pytest.mark.parametrize(("bar", "fires"), [(1.058, False), (1.056, True)])
def test_two_vessels_share_the_reserve(bar: float, fires: bool) -> None:
    """24 litres together hold 3 litres: 24 × 1.8 / 21 − 1."""
    drawing = house(*TWO, safety_by="", sv=valve(), t3="tee", e2=vessel(), design={"fill_pressure_bar": bar})
    assert bool(told(NAME, drawing)) is fires
    if fires:
        assert only(NAME, drawing).components == ("hs", "ev", "e2")


@pytest.mark.parametrize("bar", [0.7, 0.8])
def test_filled_no_higher_than_the_charge_is_for_another_check(bar: float) -> None:
    assert asked(NAME, filled(bar)).status == "not applicable"


def test_the_numbers() -> None:
    finding = only(NAME, filled(1.0))
    assert finding.numbers == {
        "fill_pressure_bar": 1.0,
        "held_l": pytest.approx(1.2),
        "reserve_l": pytest.approx(2.4),
        "least_fill_pressure_bar": pytest.approx(1.25),
    }
    assert "1.25 bar" in finding.message


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (filled(None), {"design.fill_pressure_bar"}),
        (filled(1.3, ev=vessel(volume_l=None)), {"ev.volume_l"}),
        (filled(1.3, ev=vessel(precharge_bar=None)), {"ev.precharge_bar"}),
        (
            filled(None, ev=("expansion_vessel", {})),
            {"design.fill_pressure_bar", "ev.volume_l", "ev.precharge_bar"},
        ),
    ],
)
def test_unanswered(drawing: Drawing, missing: set[str]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, set(finding.missing)) == ("unanswered", missing)


def test_a_content_that_is_not_known_matters_for_a_large_vessel_only() -> None:
    unknown: dict[str, Any] = {"design": {"system_content_l": None}, "rad": UNKNOWN}
    assert told(NAME, filled(1.25, **unknown)) == []
    finding = only(NAME, filled(1.2, ev=vessel(**LARGE), **unknown))
    assert (finding.grade.value, finding.missing) == ("unanswered", ("rad.water_content_l",))


@pytest.mark.parametrize("drawing", [vented(), house(vessel_by="")], ids=["open-vented", "no vessel"])
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_the_cure_fills_to_what_serves() -> None:
    analysis = analyse(filled(1.0))
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    (cure,) = cures(analysis, finding)
    assert cure.drawing.design["fill_pressure_bar"] == 1.25


@pytest.mark.parametrize("charge", [0.5, 0.8, 1.4])
@pytest.mark.parametrize("volume", [8, 24, 80])
def test_one_vessel_is_filled_as_the_standard_tells(volume: float, charge: float) -> None:
    held = cold_fill(volume, 300, 6, charge, 2.5)
    assert least_fill_bar([(volume, charge)], 0.2 * 8 if volume == 8 else 3) == pytest.approx(held.least_bar)


@pytest.mark.parametrize("water", [0.5, 2, 5, 9, 20])
def test_several_vessels_hold_that_much(water: float) -> None:
    vessels = [(12.0, 1.0), (8.0, 0.5), (18.0, 2.0)]
    fill = least_fill_bar(vessels, water)
    assert sum(litres * room_share(charge, fill) for litres, charge in vessels) == pytest.approx(water)


def test_vessels_never_hold_more_than_their_volume() -> None:
    assert least_fill_bar([(8.0, 0.5)], 8) == float("inf")

"""The pressure map and the pressure in time, of drawings worked by hand and of every sample."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.catalogue import figures, worked
from circuitcheck.figures.heated_water import heated_waters
from circuitcheck.figures.lowest_pressure import lowest_pressure
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.rising import rises
from circuitcheck.parts.kind import Role
from circuitcheck.shipped import data_path
from circuitcheck.sizing.pressure_in_time import STRETCH_PER_BAR, compressibility_per_bar
from circuitcheck.sizing.vessel import pressure_after_bar
from circuitcheck.sizing.water import expansion
from circuitcheck.storage.reading import read
from tests.checks.asking import way
from tests.checks.flow.driven import driven
from tests.figures.worked.asking import number, one, told, values

SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))
RING = (
    "hs.flow t1.a:b pu.in:out zone.flow:return t2.a:b hs.return",
    "t2.branch ev.connection",
    "t1.branch sv.inlet",
)
DESIGN: dict[str, Any] = {"fill_temperature_c": 10, "fill_pressure_bar": 1.2, "system_content_l": 96}
SEALED: dict[str, Any] = {
    "ev": ("expansion_vessel", {"volume_l": 18, "precharge_bar": 0.9, "height_m": 1}),
    "sv": ("safety_valve", {"set_pressure_bar": 3, "height_m": 1}),
}


def sealed(*ways: str, design: Any = None, parts: Any = None, **changes: Any) -> Drawing:
    """A pump behind the heat source, a vessel in the return, a zone 4 m above it; pipes of no length."""
    heights = {"zone": {"height_m": 5}, "hs": {"height_m": 1, "water_content_l": 4}, "pu": {"height_m": 1}}
    told_of = {id: {**heights.get(id, {}), **changes.get(id, {})} for id in {*heights, *changes} - {"pipe"}}
    return driven(
        *(ways or RING),
        parts={**SEALED, **(parts or {})},
        design={**DESIGN, **(design or {})},
        pipe={"length_m": 0},
        **told_of,
    )


def test_a_ring_by_hand() -> None:
    drawing = sealed(hs={"output_kw": 18})
    plant = Plant(drawing)
    (body,) = plant.solved.bodies
    run = next(each for each in body.runs if each.situation.name == "heating only")
    results = values(one("pressure-map", drawing))
    top, across = 1.2 - 0.0981 * 4, (run.difference_kpa("zone") or 0.0) / 100
    lowest, highest = (float(each) for each in str(results["heating zone zone"]).split(" to "))
    assert lowest == pytest.approx(top, rel=5e-3)
    swollen = pressure_after_bar(18, 0.9, 18 * (1 - 1.9 / 2.2) + 96 * expansion(10, 75))
    assert highest == pytest.approx(swollen - 0.0981 * 4 + across, rel=5e-3)
    # Before the pump pressure falls by what the heat source loses, behind it by that less its head.
    low, high = (float(each) for each in str(results["pump pu"]).split(" to "))
    assert low == pytest.approx(1.2 - (run.difference_kpa("hs") or 0.0) / 100, abs=0.01)
    assert high == pytest.approx(swollen + across, abs=0.01)


def test_the_pump_on_the_wrong_side_draws_air() -> None:
    """The vessel on the pump's delivery: all the rest of the circuit runs below it."""
    wrong = (
        "hs.flow pu.in:out t2.a:b zone.flow:return t1.a:b hs.return",
        "t2.branch ev.connection",
        "t1.branch sv.inlet",
    )
    right, other = (
        one("pressure-map", sealed(*ways, design={"fill_pressure_bar": 0.6})) for ways in (RING, wrong)
    )
    assert any(name.startswith("Above drawing in air") for name in values(right))
    assert number(other, "Draws in air, at the lowest, by") > 0


def test_boiling_and_gauge() -> None:
    gauge = {"pg": ("pressure_gauge", {"height_m": 3})}
    drawing = sealed(*RING[:2], "t1.branch pg.connection", parts=gauge)
    results = values(one("pressure-map", drawing))
    assert results["pressure gauge pg reads, cold, at rest"] == pytest.approx(1.2 - 0.0981 * 2)
    assert float(results["Water boils there at"]) > 100
    above = {name: value for name, value in results.items() if name.startswith("Above boiling at 75 °C")}
    assert len(above) == 1


def test_more_than_a_part_is_made_for_is_named() -> None:
    results = values(one("pressure-map", sealed(hs={"maximum_pressure_bar": 1.3})))
    assert any(name.startswith("heat source hs would see more") for name in results)
    assert not any("would see more" in name for name in values(one("pressure-map", sealed())))


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (sealed(design={"fill_pressure_bar": None}), {"design.fill_pressure_bar"}),
        (sealed(pu={"shut_off_head_m": None}), {"pu.shut_off_head_m"}),
        (sealed(parts={"ev": ("expansion_vessel", {"volume_l": 18, "height_m": 1})}), {"ev.precharge_bar"}),
    ],
)
def test_what_the_map_lacks(drawing: Drawing, missing: set[str]) -> None:
    assert set(one("pressure-map", drawing).missing) == missing


def test_no_map_without_a_fixed_point() -> None:
    without = sealed(RING[0], RING[2], parts={"t2": "tee"})
    assert "nothing holds its pressure" in one("pressure-map", without).refused


def test_under_an_open_cistern() -> None:
    plant = Plant(read(data_path("samples") / "terrace-as-found.wetcircuit"))
    (figure,) = figures()["pressure-map"].work(plant)
    level = plant.value("feed_cistern", "water_level_m")
    least = float(str(values(figure)["Heat source"]).split(" to ")[0])
    assert least == pytest.approx(0.0981 * (level - (plant.heights.of("source") or 0.0)), abs=0.02)


@pytest.mark.parametrize("sample", SAMPLES, ids=lambda path: path.stem)
def test_the_map_is_never_above_the_lowest_that_the_checks_know(sample: Any) -> None:
    plant = Plant(read(sample))
    for water, figure in zip(heated_waters(plant), worked(figures()["pressure-map"], plant), strict=True):
        if figure.refused or water.is_open_vented:
            continue
        vessels = water.reached(Role.HOLDS_EXPANSION)
        fill = plant.design("fill_pressure_bar")
        found = lowest_pressure(plant, vessels[0], float(fill))
        assert found is not None
        lowest = min(
            float(str(each.value).split(" to ")[0])
            for each in figure.results
            if isinstance(each.value, str) and " to " in each.value and "reads" not in each.name
        )
        assert lowest <= found.bar + 5e-3


def test_pressure_in_time_by_hand() -> None:
    drawing = sealed()
    figure = one("pressure-in-time", drawing)
    (asked,) = rises(Plant(drawing))
    found = asked.found
    assert found is not None and found.with_vessel is not None and found.shut_in is not None
    # 96 l of water by 65 K at 18 kW: 4.19 kJ/kg K and 0.9997 kg/l.
    assert found.with_vessel.end.seconds == pytest.approx(96 * 0.9997 * 4.186 * 65 / 18, rel=2e-3)
    assert found.with_vessel.lifts is None and found.with_vessel.end.bar < 2
    assert found.flooded.lifts is not None and found.flooded.lifts.seconds < 120
    assert found.shut_in.end.bar == pytest.approx(100, abs=0.01)
    early = next(row for row in found.shut_in.rows if row.bar > 3)
    give = compressibility_per_bar(12) + STRETCH_PER_BAR
    share = expansion(10, early.temperature_c) - 3 * 16.8e-6 * (early.temperature_c - 10)
    assert early.bar == pytest.approx(1.2 + share / give, rel=0.01)
    assert (
        values(figure)["with the vessel full of water: pressure cold again"] == "none: the top draws in air"
    )
    assert {each.by for each in figure.moves} == {"none", "twice as much"}


def test_without_a_vessel_the_drawing_itself_is_full_of_water() -> None:
    figure = one("pressure-in-time", sealed(RING[0], RING[2], parts={"t2": "tee"}))
    names = [each.name for each in figure.results]
    assert any(name.startswith("as drawn: safety valve lifts") for name in names)
    assert not any("with the vessel" in name and "full" not in name for name in names)


@pytest.mark.parametrize(
    ("changes", "missing"),
    [
        ({"hs": {"output_kw": None}}, {"hs.output_kw"}),
        ({"design": {"fill_pressure_bar": None}}, {"design.fill_pressure_bar"}),
    ],
)
def test_what_pressure_in_time_lacks(changes: Any, missing: set[str]) -> None:
    assert set(one("pressure-in-time", sealed(**changes)).missing) == missing


def test_what_pressure_in_time_is_refused_for() -> None:
    assert one("pressure-in-time", sealed(hs={"output_kw": 0})).refused == "it gives no heat"
    assert "glycol" in one("pressure-in-time", sealed(design={"glycol_percent": 25})).refused
    assert "hotter" in one("pressure-in-time", sealed(design={"fill_temperature_c": 75})).refused


def test_open_water_is_not_asked() -> None:
    parts = {"ov": ("open_vent", {"over": "fc"}), "fc": ("feed_cistern", {"water_level_m": 6})}
    ways = (
        RING[0],
        "t1.branch ov.connection",
        way("fc.feed t2.branch").partition(": ")[2].replace(" - ", " "),
    )
    assert told("pressure-in-time", sealed(*ways, parts=parts)) == ()

"""Static pressure, safety valves, the water, its test and treatment, and what must circulate."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import way
from tests.checks.houses import sealed, vented
from tests.figures.worked.asking import number, one, told, values
from tests.made import Part, made

DESIGN = {"flow_temperature_c": 70, "return_temperature_c": 50, "fill_temperature_c": 10, "fill_pressure_bar": 1.2,
          "static_height_m": 5, "system_content_l": 100}  # fmt: skip


def gauged(design: dict[str, Any] = DESIGN, gauge: float | None = 2.0) -> Drawing:
    parts: dict[str, Part] = {
        "ev": ("expansion_vessel", {"height_m": 0}),
        "pg": ("pressure_gauge", {} if gauge is None else {"height_m": gauge}),
        "t3": "tee",
    }
    ring = "hs.flow t1.a:b rad.flow:return t3.a:b t2.a:b hs.return"
    return replace(
        sealed("t3.branch pg.connection", ring=ring, ev=parts["ev"], pg=parts["pg"], t3=parts["t3"]),
        design=design,
    )


def test_static_pressure_and_the_gauge() -> None:
    found = values(one("static-pressure", gauged()))
    assert found["Static pressure"] == pytest.approx(0.4905)
    assert found["Left at the top, cold"] == pytest.approx(1.2 - 0.4905)
    assert found["Least fill pressure: static and margin"] == pytest.approx(0.7905)
    assert found["pressure gauge pg reads, cold"] == pytest.approx(1.2 - 0.1962)


def test_a_gauge_of_unknown_height_is_told_level() -> None:
    found = values(one("static-pressure", gauged(gauge=None)))
    assert found["pressure gauge pg reads, cold"] == "1.2 bar if level with expansion vessel ev"


def test_what_static_pressure_lacks() -> None:
    figure = one("static-pressure", gauged({}))
    assert set(figure.missing) == {"design.static_height_m", "design.fill_pressure_bar"}


def test_a_cistern_sets_the_pressure_of_open_water() -> None:
    drawing = vented(fc=("feed_cistern", {"water_level_m": 6}), hs=("heat_source", {"height_m": 1}))
    assert number(one("static-pressure", drawing), "Pressure at heat source hs") == pytest.approx(5 * 0.0981)
    bare = one("static-pressure", vented())
    assert set(bare.missing) == {"fc.water_level_m", "hs.height_m"}


@pytest.mark.parametrize(
    ("output", "capacity", "name", "by"),
    [(18, 30, "To spare", 12), (18, 18, "To spare", 0), (18, 17, "Short by", 1)],
)
def test_safety_valve_against_output(output: float, capacity: float, name: str, by: float) -> None:
    drawing = sealed(
        hs=("heat_source", {"output_kw": output}), sv=("safety_valve", {"capacity_kw": capacity})
    )
    assert number(one("safety-valve", drawing), name) == by
    found = checks()["safety-valve-too-small"].judge(Case(drawing)).findings
    assert bool(found) == (name == "Short by")


def test_what_a_safety_valve_lacks_and_where_it_does_not_apply() -> None:
    assert set(one("safety-valve", sealed()).missing) == {"hs.output_kw", "sv.capacity_kw"}
    assert told("safety-valve", sealed(hs=("heat_source", {"built_in": ["safety_valve"]}))) == ()
    assert told("safety-valve", vented()) == ()


def test_water_at_the_temperatures_of_the_design() -> None:
    found = values(one("water-properties", gauged()))
    assert found["Density at 60 °C"] == pytest.approx(983.2, abs=0.1)
    assert found["Viscosity at 10 °C"] == pytest.approx(1.306, rel=0.01)
    assert found["Swell from fill at 70 °C"] == pytest.approx(2.24, abs=0.01)
    assert found["Heat capacity at 50 °C"] == pytest.approx(4.180, rel=0.002)


@pytest.mark.parametrize(("percent", "freezes"), [(30, -12.8), (35, -16.7), (20, None)])
def test_glycol_is_refused_with_what_is_published(percent: float, freezes: float | None) -> None:
    figure = one("water-properties", gauged(DESIGN | {"glycol_percent": percent}))
    assert "glycol" in figure.refused and not figure.missing
    found = values(figure)
    assert found["30 % ethylene glycol, swell 10 to 82 °C"] == pytest.approx(3.59)
    name = f"{percent:g} %, if propylene glycol, freezes at"
    assert (name in found) is (freezes is not None)
    if freezes is not None:
        assert found[name] == pytest.approx(freezes)


def test_temperatures_that_lack_or_lie_outside() -> None:
    expected = {"design.flow_temperature_c", "design.return_temperature_c", "design.fill_temperature_c"}
    assert set(one("water-properties", gauged({})).missing) == expected
    assert "0 to 110" in one("water-properties", gauged(DESIGN | {"flow_temperature_c": 130})).refused
    assert told("water-properties", made({"ou": "outlet"}, "")) == ()


def test_test_pressure_by_both_sources_and_the_dose() -> None:
    found = values(one("test-and-treatment", gauged()))
    assert found["Test pressure (1.5 times, used)"] == pytest.approx(4.5)
    assert found["By the other source (1.3 times)"] == pytest.approx(3.9)
    assert found["heat source hs is made for less and is left out"] == 3
    assert found["Water to treat"] == 100 and found["Inhibitor at one litre for 100"] == pytest.approx(1)


def test_open_water_is_tested_by_its_height() -> None:
    drawing = vented(fc=("feed_cistern", {"water_level_m": 6}), hs=("heat_source", {"height_m": 1}))
    found = values(one("test-and-treatment", replace(drawing, design={"system_content_l": 100})))
    assert found["Test pressure (1.5 times, used)"] == pytest.approx(1.5 * 5 * 0.0981)


def test_what_treatment_lacks() -> None:
    figure = one("test-and-treatment", gauged(DESIGN | {"system_content_l": None}))
    assert "hs.water_content_l" in figure.missing
    assert "Test pressure (1.5 times, used)" in values(figure)


# Content that always circulates: a ring through an emitter with a head, beside a way round that is never shut.


def zoned(least: float | None = 5, **pipe: Any) -> Drawing:
    parts: dict[str, Part] = {
        "hs": ("heat_source", {"minimum_content_l": least, "water_content_l": 3}),
        "pu": "pump", "t1": "tee", "t2": "tee", "bv": "bypass_valve", "rad": ("radiator", {"water_content_l": 8}),
    }  # fmt: skip
    lines = way("hs.flow pu.in:out t1.a:b rad.flow:return t2.a:b hs.return", "t1.branch bv.in:out t2.branch")
    usual = {"size_mm": 22, "length_m": 1}
    return made(parts, lines, pipe_data={f"p{number}": usual | pipe for number in range(1, 8)})


def test_what_heads_shut_off_does_not_circulate() -> None:
    """Five pipes of a metre, and the heat source; not the radiator and its two pipes."""
    found = values(one("least-content", zoned()))
    assert found["Least that goes round"] == pytest.approx(5 * 0.320474 + 3, rel=1e-4)
    assert found["Short by"] == pytest.approx(5 - 5 * 0.320474 - 3, rel=1e-3)
    assert found["That is in the situation"]


def test_all_the_water_being_too_little_settles_it() -> None:
    drawing = replace(zoned(50, length_m=None), design={"system_content_l": 40})
    figure = one("least-content", drawing)
    assert number(figure, "Short of what must circulate by, at least") == 10


def test_what_circulating_content_lacks() -> None:
    assert one("least-content", zoned(None)).missing == ("hs.minimum_content_l",)
    missing = one("least-content", zoned(length_m=None)).missing
    assert set(missing) == {f"p{number}.length_m" for number in (1, 2, 5, 6, 7)}
    assert told("least-content", zoned(0)) == ()


def test_without_a_pump_nothing_says_what_circulates() -> None:
    drawing = sealed(hs=("heat_source", {"minimum_content_l": 5}))
    assert "no pump" in one("least-content", drawing).refused

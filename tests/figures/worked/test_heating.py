"""The figures of heating: emitters at the design's temperatures, and the heat source against them."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import way
from tests.figures.worked.asking import number, one, told, values
from tests.made import made

RING = "hs.flow rad.flow:return hs.return"


def heated(
    flow_c: float | None = 75,
    return_c: float | None = 65,
    *,
    source: dict[str, Any] | None = None,
    rad: Any = ("radiator", {"output_w": 2000}),
    room_c: float | None = None,
) -> Drawing:
    """A heat source and one emitter; `room_c`: what the thermostat in its room is set to."""
    design = {"flow_temperature_c": flow_c, "return_temperature_c": return_c}
    parts: dict[str, Any] = {
        "hs": ("heat_source", {"output_kw": 10} if source is None else source),
        "rad": rad,
    }
    controls = {"rt": ("room_thermostat", ("rad",))}
    drawing = made(parts, way(RING), design=design, controls=controls if room_c is not None else None)
    if room_c is None:
        return drawing
    thermostat = replace(drawing.controls["rt"], in_same_room_as=("rad",), set_c=room_c)
    return replace(drawing, controls={"rt": thermostat})


@pytest.mark.parametrize(
    ("flow_c", "return_c", "room_c", "share"),
    [
        (75, 65, None, 1.0),
        (75, 65, 20, 1.0),
        (80, 60, None, 1.0),
        (55, 45, None, 0.515),
        (90, 70, None, 1.267),
        (75, 65, 24, 0.897),
    ],
)
def test_output_at_real_temperatures(
    flow_c: float, return_c: float, room_c: float | None, share: float
) -> None:
    figure = one("emitter-output", heated(flow_c, return_c, room_c=room_c))
    assert number(figure, "Output") == pytest.approx(2000 * share, rel=1e-3)


def test_what_the_output_rests_on() -> None:
    figure = one("emitter-output", heated(55, 45))
    moves = {each.field: each.share for each in figure.moves}
    assert moves["room temperature"] == pytest.approx((29 / 30) ** 1.3 - 1)
    assert moves["exponent"] == pytest.approx((30 / 50) ** -0.1 - 1)
    assert [each.field for each in one("emitter-output", heated()).moves] == ["room temperature"]


@pytest.mark.parametrize(("return_c", "cools"), [(55, False), (54.9, True), (40, True)])
def test_the_logarithmic_mean_stands_beside_where_the_water_cools_far(return_c: float, cools: bool) -> None:
    results = values(one("emitter-output", heated(70, return_c)))
    name = "By the logarithmic mean, since the water cools far"
    assert (name in results) is cools
    if cools:
        assert float(results[name]) < float(results["Output"])


def test_a_zone_is_told_in_its_own_unit() -> None:
    zone = ("heating_zone", {"output_kw": 6})
    assert number(one("emitter-output", heated(rad=zone)), "Output") == pytest.approx(6000)


def test_floor_heating_has_another_law() -> None:
    zone = ("heating_zone", {"output_kw": 6, "maximum_flow_temperature_c": 45})
    figure = one("emitter-output", heated(rad=zone))
    assert "limited to 45 °C" in figure.refused and figure.missing == ()
    balance = one("heat-balance", heated(rad=zone))
    assert number(balance, "Emitters at the design's temperatures") == 6
    high = ("heating_zone", {"output_kw": 6, "maximum_flow_temperature_c": 75})
    assert not one("emitter-output", heated(rad=high)).refused


def test_emitters_that_cannot_be_told() -> None:
    figure = one("emitter-output", heated(None, None, rad="radiator"))
    assert set(figure.missing) == {
        "design.flow_temperature_c",
        "design.return_temperature_c",
        "rad.output_w",
    }
    assert "does not warm" in one("emitter-output", heated(20, 15)).refused


def test_heat_source_against_its_emitters() -> None:
    figure = one("heat-balance", heated(55, 45))
    assert number(figure, "Emitters at 50 K") == 2
    assert number(figure, "To spare, heating alone") == pytest.approx(10 - 2 * 0.6**1.3)
    assert figure.subject == ("hs",)
    assert one("heat-balance", heated(source={})).missing == ("hs.output_kw",)


def test_heat_source_against_emitters_and_coil() -> None:
    drawing = made(
        {
            "hs": ("heat_source", {"output_kw": 18}),
            "us": ("unvented_store", {"coil_power_kw": 15}),
            "vs": "vented_store",
            "rad": ("radiator", {"output_w": 9000}),
            **{f"t{n}": "tee" for n in range(1, 5)},
        },
        way(
            "hs.flow t1.a:b t2.a:b rad.flow:return t3.a:b t4.a:b hs.return",
            "t1.branch us.coil_flow:coil_return t4.branch",
            "t2.branch vs.coil_flow:coil_return t3.branch",
        ),
        design={"flow_temperature_c": 75, "return_temperature_c": 65},
    )
    figure = one("heat-balance", drawing)
    assert number(figure, "To spare, heating and hot water at once") == pytest.approx(-6)
    assert number(figure, "To spare, hot water alone") == 3
    assert number(figure, "Coils' share of the heat sources") == pytest.approx(100 * 15 / 18)
    assert "no coil power" in figure.limits


def test_two_plants_have_two_balances() -> None:
    parts: dict[str, Any] = {
        **{f"h{n}": ("heat_source", {"output_kw": n}) for n in (1, 2)},
        **{f"r{n}": ("radiator", {"output_w": 500}) for n in (1, 2)},
    }
    rings = way(*(f"h{n}.flow r{n}.flow:return h{n}.return" for n in (1, 2)))
    drawing = made(parts, rings, design={"flow_temperature_c": 75, "return_temperature_c": 65})
    found = told("heat-balance", drawing)
    assert [(each.subject, number(each, "Heat sources together")) for each in found] == [
        (("h1",), 1),
        (("h2",), 2),
    ]


def test_behind_a_plate_the_same_heat_source_pays() -> None:
    drawing = made(
        {
            "hs": ("heat_source", {"output_kw": 10}),
            "hx": "heat_exchanger",
            "rad": ("radiator", {"output_w": 3000}),
        },
        way(
            "hs.flow hx.primary_in:primary_out hs.return",
            "hx.secondary_out rad.flow:return hx.secondary_in",
        ),
        design={"flow_temperature_c": 75, "return_temperature_c": 65},
    )
    assert number(one("heat-balance", drawing), "To spare, heating alone") == pytest.approx(7)

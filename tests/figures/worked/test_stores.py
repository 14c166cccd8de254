"""The figures of stores: heating up, mixed water, draw-off, standing loss, floor, secondary return."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.sizing.heating_up import heat_kwh
from tests.checks.supply.plumbing import FED, plumbed
from tests.figures.worked.asking import number, one, told, values

DESIGN = {"fill_temperature_c": 10, "flow_temperature_c": 75, "return_temperature_c": 60}
STORE = {"volume_l": 200, "coil_power_kw": 15, "diameter_mm": 550, "empty_weight_kg": 45}
COIL = "hs.flow us.coil_flow:coil_return hs.return"


def heated(source: Any = 18, *ways: str, design: dict[str, Any] | None = None, **store: Any) -> Drawing:
    """A mains-fed store with a coil that one heat source heats."""
    return plumbed(
        FED,
        COIL,
        *ways,
        design=DESIGN if design is None else design,
        us=("unvented_store", {**STORE, **store}),
        hs=("heat_source", {} if source is None else {"output_kw": source}),
    )


@pytest.mark.parametrize(
    ("source_kw", "coil_kw", "power_kw", "limit"),
    [(18, 15, 15, "the coil"), (12, 15, 12, "the heat source"), (15, 15, 15, "heat source and coil alike")],
)
def test_two_limits_apply(source_kw: float, coil_kw: float, power_kw: float, limit: str) -> None:
    figure = one("store-heat-up", heated(source_kw, coil_power_kw=coil_kw))
    assert number(figure, "Power that heats it") == power_kw
    assert values(figure)["Limited by"] == limit
    minutes = 60 * heat_kwh(200, 10, 60) / power_kw
    assert number(figure, "From cold") == pytest.approx(minutes)
    assert number(figure, "After 70 % drawn") == pytest.approx(0.7 * minutes)
    assert figure.subject == ("us",)


def test_what_is_missing_to_heat_up_is_named_at_once() -> None:
    drawing = plumbed(FED, COIL, us="unvented_store")
    figure = one("store-heat-up", drawing)
    assert set(figure.missing) == {
        "us.volume_l",
        "us.coil_power_kw",
        "hs.output_kw",
        "design.fill_temperature_c",
    }


def test_a_usual_thermostat_says_what_it_moves() -> None:
    (moves,) = one("store-heat-up", heated()).moves
    assert moves.field == "us.thermostat_c" and moves.share == pytest.approx(0.1, abs=0.002)
    assert one("store-heat-up", heated(thermostat_c=60)).moves == ()


def test_two_heat_sources_through_a_plate_count_together() -> None:
    ring = "hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return"
    second = ("h2.flow t1.branch", "t2.branch h2.return")
    coil = "hx.secondary_in us.coil_flow:coil_return hx.secondary_out"
    parts: dict[str, Any] = {each: ("heat_source", {"output_kw": 6}) for each in ("hs", "h2")}
    drawing = plumbed(FED, ring, *second, coil, design=DESIGN, us=("unvented_store", STORE), **parts)
    figure = one("store-heat-up", drawing)
    assert number(figure, "Power that heats it") == 12


def test_a_store_heated_directly_has_no_coil_to_limit_it() -> None:
    ring = "us.secondary_return hs.return:flow t9.branch"
    drawing = plumbed(
        FED,
        "us.hot t9.a:b basin.hot",
        ring,
        design=DESIGN,
        us=("unvented_store", STORE),
        hs=("heat_source", {"output_kw": 22}),
    )
    figure = one("store-heat-up", drawing)
    assert number(figure, "Power that heats it") == 22
    assert "coil's power" not in figure.limits


def test_a_vented_store_tells_the_least_time() -> None:
    drawing = plumbed(
        "fc.feed vs.cold",
        "vs.hot bath.hot",
        "hs.flow vs.coil_flow:coil_return hs.return",
        design=DESIGN,
        vs=("vented_store", {"volume_l": 140}),
        hs=("heat_source", {"output_kw": 16}),
    )
    figure = one("store-heat-up", drawing)
    assert "From cold, at the least" in values(figure)
    assert "takes longer still" in figure.limits


def test_an_immersion_heater_alone() -> None:
    drawing = plumbed(FED, design=DESIGN, us=("unvented_store", {**STORE, "immersion_kw": 3}))
    results = values(one("store-heat-up", drawing))
    assert list(results) == ["Heat from cold", "From cold by the immersion heater alone"]
    assert told("store-heat-up", plumbed(FED, us="unvented_store")) == ()


@pytest.mark.parametrize(
    ("design", "store", "refused"),
    [
        ({**DESIGN, "flow_temperature_c": 55}, {}, True),
        ({**DESIGN, "flow_temperature_c": 55}, {"immersion_kw": 3}, False),
        ({**DESIGN, "fill_temperature_c": 60}, {}, True),
    ],
)
def test_what_never_gets_the_store_hot(design: dict[str, Any], store: dict[str, Any], refused: bool) -> None:
    figure = one("store-heat-up", heated(design=design, **store))
    assert bool(figure.refused) is refused
    assert figure.missing == ()
    assert "Power that heats it" not in values(figure)


def test_no_power_heats_nothing() -> None:
    assert one("store-heat-up", heated(0)).refused == "The power that heats it is 0."


@pytest.mark.parametrize(("thermostat_c", "grows"), [(60, False), (59, True), (65, False)])
def test_mixed_water_and_legionella(thermostat_c: float, grows: bool) -> None:
    figure = one("mixed-water", heated(thermostat_c=thermostat_c))
    litres = 200 * (thermostat_c - 10) / 30
    assert number(figure, "Mixed water at 40 °C") == pytest.approx(litres)
    assert number(figure, "Baths") == pytest.approx(litres / 100)
    assert ("may grow" in str(values(figure)["Legionella"])) is grows


@pytest.mark.parametrize("store", [{"thermostat_c": 39}])
@pytest.mark.parametrize("name", ["mixed-water", "draw-off"])
def test_a_store_too_cool_to_mix(name: str, store: dict[str, Any]) -> None:
    figure = one(name, heated(18, "us.hot basin.hot", **store))
    assert "no mix" in figure.refused and not figure.lacks_numbers


def test_draw_off_at_each_outlet() -> None:
    figure = one("draw-off", heated(18, "us.hot t8.a:b bath.hot", "t8.branch basin.hot"))
    litres = 200 * 50 / 30
    assert number(figure, "At outlet bath, 24 l/min") == pytest.approx(litres / 24)
    assert number(figure, "At outlet basin, 6 l/min") == pytest.approx(litres / 6)
    assert number(figure, "Sustained without end at 40 °C") == pytest.approx(15 / 60 / heat_kwh(1, 10, 40))


def test_draw_off_leaves_out_what_it_does_not_know() -> None:
    parts: dict[str, Any] = {"o1": "outlet"}
    both = plumbed(
        FED,
        "us.hot t8.a:b bath.hot",
        "t8.branch o1.hot",
        design=DESIGN,
        us=("unvented_store", STORE),
        **parts,
    )
    figure = one("draw-off", both)
    assert "o1.fitting" in figure.limits and "At outlet bath, 24 l/min" in values(figure)
    alone = plumbed(FED, "us.hot o1.hot", design=DESIGN, us=("unvented_store", STORE), **parts)
    assert one("draw-off", alone).missing == ("o1.fitting",)
    assert told("draw-off", heated()) == ()


def test_floor() -> None:
    figure = one("floor", heated(18, design={**DESIGN, "floor_capacity_kn_m2": 20}))
    assert number(figure, "Filled weight") == 247
    load = 247 * 9.80665 / 1000 / 0.237583
    assert number(figure, "Load on the footprint") == pytest.approx(load, rel=1e-4)
    assert number(figure, "Share of what the floor is stated to carry") == pytest.approx(5 * load, rel=1e-4)
    assert "competent person" in figure.limits
    assert [moves.field for moves in figure.moves] == ["us.coil_content_l"]


def test_floor_without_a_diameter_tells_the_weight() -> None:
    figure = one("floor", heated(18, diameter_mm=None))
    assert set(values(figure)) == {"Filled weight", "Load"}
    assert "us.diameter_mm" in figure.limits
    assert one("floor", heated(18, empty_weight_kg=None)).missing == ("us.empty_weight_kg",)
    assert told("floor", plumbed("fc.feed vs.cold", "vs.hot bath.hot")) == ()


def test_standing_loss() -> None:
    figure = one("standing-loss", heated(18, volume_l=210))
    assert number(figure, "With 50 mm of factory insulation") == pytest.approx(1.59, abs=0.005)
    assert one("standing-loss", heated(18, volume_l=None)).missing == ("us.volume_l",)


SECONDARY = "us.hot t8.a:b p1.in:out us.secondary_return"


def secondary(**data: Any) -> Drawing:
    """A store with a secondary return of three pipes, and an outlet on it."""
    pipe = {"size_mm": 22, "length_m": 5, "insulated": True, **data}
    named = {"p6": {**pipe, "size_mm": 15}, "p7": pipe, "p8": pipe, "p5": pipe, "p9": pipe}
    return plumbed(
        FED,
        SECONDARY,
        "t8.branch basin.hot",
        design=DESIGN,
        us=("unvented_store", STORE),
        pipe_data={id: {**pipe, **named.get(id, {})} for id in (f"p{n}" for n in range(1, 12))},
    )


def test_secondary_return_water_length_and_loss() -> None:
    figure = one("secondary-return", secondary())
    assert number(figure, "Pipe that is kept hot") == 15
    assert number(figure, "Water in it") > 0
    assert "Loss as drawn" in values(figure)
    bare = one("secondary-return", secondary(insulated=False))
    assert number(bare, "Loss as drawn") > 3 * number(figure, "Loss as drawn")
    assert number(bare, "Loss if all of it were insulated") == pytest.approx(number(figure, "Loss as drawn"))


def test_secondary_return_of_unknown_insulation_is_told_both_ways() -> None:
    figure = one("secondary-return", secondary(insulated=None))
    wrapped, bare = (one("secondary-return", secondary(insulated=each)) for each in (True, False))
    names = ("Loss, if what is not known is insulated", "Loss, if what is not known is bare")
    assert [number(figure, name) for name in names] == [
        number(each, "Loss as drawn") for each in (wrapped, bare)
    ]
    assert ".insulated" in figure.limits


def test_secondary_return_names_what_is_missing() -> None:
    figure = one("secondary-return", secondary(length_m=None))
    assert len(figure.missing) == 3 and all(each.endswith(".length_m") for each in figure.missing)
    assert told("secondary-return", heated(18, "us.hot basin.hot")) == ()

"""The figures of the supply: the main, what is heated as it is drawn, and waiting for hot water."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.sizing.demand import design_flow_l_s
from circuitcheck.sizing.heating_up import heat_kwh
from tests.checks.supply.plumbing import FED, plumbed
from tests.figures.worked.asking import number, one, told, values

DESIGN = {"fill_temperature_c": 10}
MAIN: tuple[str, dict[str, Any]] = (
    "cold_main",
    {"running_pressure_bar": 2, "flow_lpm": 30, "height_m": 0},
)
HOUSE = ("us.hot t8.a:b bath.hot", "t8.branch t9.a:b basin.hot", "t9.branch sink.hot")


def house(main: Any = MAIN, **parts: Any) -> Drawing:
    """A mains-fed store that feeds a bath, a basin and a sink, each at a height."""
    outlets: dict[str, Any] = {
        fitting: ("outlet", {"fitting": fitting, "height_m": height})
        for fitting, height in (("bath", 3), ("basin", 4), ("sink", 1))
    }
    return plumbed(FED, *HOUSE, design=DESIGN, cm=main, **{**outlets, **parts})


def test_what_the_main_must_give() -> None:
    figure = one("mains-demand", house())
    assert number(figure, "Loading units") == 7
    needed = 60 * design_flow_l_s(7, 4)
    assert number(figure, "Flow to design for") == pytest.approx(needed)
    assert number(figure, "To spare") == pytest.approx(30 - max(20, needed))
    assert number(figure, "Left at outlet basin, the highest") == pytest.approx(2 - 0.0981 * 4)
    assert number(figure, "Least for a mains-fed store") == 1.5


def test_a_main_that_says_nothing_still_tells_the_demand() -> None:
    figure = one("mains-demand", house(("cold_main", {"height_m": 0})))
    assert "Flow to design for" in values(figure) and "To spare" not in values(figure)
    assert "cm.flow_lpm" in figure.limits and "cm.running_pressure_bar" in figure.limits


def test_an_outlet_of_unknown_fitting_makes_it_the_least() -> None:
    figure = one("mains-demand", house(sink=("outlet", {"height_m": 1})))
    assert number(figure, "Loading units, at the least") == 5
    assert "sink.fitting" in figure.limits


def test_a_main_that_feeds_a_cistern_only_is_asked_nothing() -> None:
    assert told("mains-demand", plumbed("cm.outlet fc.supply", "fc.feed bath.cold")) == ()


def combined(**data: Any) -> Drawing:
    """A combination heat source that feeds a shower and a basin."""
    return plumbed(
        "cm.outlet ch.cold:hot t8.a:b shower.hot",
        "t8.branch basin.hot",
        design=DESIGN,
        ch=("combination_heat_source", {"output_kw": 24, **data}),
    )


def test_hot_water_heated_as_it_is_drawn() -> None:
    figure = one("instant-hot-water", combined(hot_flow_lpm=10))
    assert number(figure, "Its output heats to 40 °C") == pytest.approx(24 / 60 / heat_kwh(1, 10, 40))
    assert number(figure, "Hot flow stated") == 10
    assert number(figure, "Its outlets ask for, mixed to 40 °C") == pytest.approx(60 * design_flow_l_s(3, 2))
    assert one("instant-hot-water", combined(output_kw=None)).missing == ("ch.output_kw",)
    assert told("instant-hot-water", house()) == ()


def leg(size_mm: float = 15, length_m: float | None = 12, **parts: Any) -> Drawing:
    """One pipe from a store to a basin."""
    data: dict[str, Any] = {"size_mm": size_mm, "length_m": length_m}
    return plumbed("us.hot basin.hot", pipe_data={"p1": data}, **parts)


@pytest.mark.parametrize(("size_mm", "litres"), [(15, 1.743), (22, 3.846)])
def test_wait_for_hot(size_mm: float, litres: float) -> None:
    figure = one("wait-for-hot", leg(size_mm))
    assert number(figure, "Water in it") == pytest.approx(litres, rel=1e-3)
    assert number(figure, "Wait") == pytest.approx(litres / 0.1, rel=1e-3)
    limits = [value for name, value in values(figure).items() if name.startswith("Limit")]
    assert limits == [30, 60] and "disagree" in figure.source


def test_wait_names_what_is_missing() -> None:
    figure = one("wait-for-hot", leg(15, None, basin="outlet"))
    assert set(figure.missing) == {"p1.length_m", "basin.fitting"}


def test_a_weak_combination_heat_source_is_waited_for_longer() -> None:
    pipe = {"size_mm": 15, "length_m": 10}

    def wait(**data: Any) -> float:
        drawing = plumbed("ch.hot bath.hot", pipe_data={"p1": pipe}, ch=("combination_heat_source", data))
        return number(one("wait-for-hot", drawing), "Wait")

    assert wait(hot_flow_lpm=12) == pytest.approx(2 * wait())
    assert wait(hot_flow_lpm=40) == wait()
    dry = plumbed(
        "ch.hot bath.hot", pipe_data={"p1": pipe}, ch=("combination_heat_source", {"hot_flow_lpm": 0})
    )
    assert one("wait-for-hot", dry).refused


def test_a_secondary_return_shortens_the_wait() -> None:
    pipes = {f"p{n}": {"size_mm": 15, "length_m": 10} for n in range(1, 5)}
    ring = "us.hot t8.a:b p1.in:out us.secondary_return"
    drawing = plumbed(ring, "t8.branch basin.hot", pipe_data=pipes)
    assert number(one("wait-for-hot", drawing), "Pipe that goes cold") == 10
    without = plumbed("us.hot t8.a:b k1.connection", "t8.branch basin.hot", pipe_data=pipes)
    assert number(one("wait-for-hot", without), "Pipe that goes cold") == 20


def test_the_way_through_the_least_water() -> None:
    """Two ways lead to the basin, 22 mm or the longer way in 15 mm: the one that holds less counts."""
    data = {
        "p1": {"size_mm": 15, "length_m": 0},
        "p2": {"size_mm": 22, "length_m": 6},
        "p3": {"size_mm": 15, "length_m": 1},
        "p4": {"size_mm": 15, "length_m": 5},
        "p5": {"size_mm": 15, "length_m": 5},
    }
    drawing = plumbed("us.hot t1.a:b t2.a:b basin.hot", "t1.branch v1.a:b t2.branch", pipe_data=data)
    assert number(one("wait-for-hot", drawing), "Pipe that goes cold") == 11


def test_a_cold_outlet_waits_for_nothing() -> None:
    assert told("wait-for-hot", plumbed("cm.outlet wc.cold")) == ()

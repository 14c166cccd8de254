"""The figures of open-vented circuits: the vent's size and height, and what the cistern takes up."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from tests.checks.asking import way
from tests.figures.worked.asking import number, one, told, values
from tests.made import made

CISTERN: dict[str, Any] = {"serves": "heating", "water_level_m": 5.5, "height_m": 5.4, "content_l": 40}
VENT: dict[str, Any] = {"over": "fc", "height_above_water_mm": 450}


def vented(
    ring: str = "hs.flow t1.a:b t2.a:b pu.in:out rad.flow:return hs.return",
    *,
    vent: dict[str, Any] = VENT,
    cistern: dict[str, Any] = CISTERN,
    source: dict[str, Any] | None = None,
    design: dict[str, Any] | None = None,
    size_mm: float | None = 22,
) -> Drawing:
    """A heat source, a vent from `t1`, a feed to `t2`, a pump and a radiator."""
    parts: dict[str, Any] = {
        "hs": ("heat_source", {"height_m": 1, **(source or {})}),
        "t1": "tee",
        "t2": "tee",
        "pu": ("pump", {"shut_off_head_m": 4}),
        "rad": "radiator",
        "ov": ("open_vent", vent),
        "fc": ("feed_cistern", cistern),
    }
    lines = f"{way(ring)}\nv1: t1.branch - ov.connection\n{way('fc.feed t2.branch')}"
    return made(parts, lines, design=design, pipe_data={"v1": {"size_mm": size_mm}})


def test_size_and_height() -> None:
    figure = one("open-vent", vented())
    assert number(figure, "Narrowest bore of its pipe") == pytest.approx(20.2)
    assert number(figure, "Smallest bore allowed") == 19
    assert number(figure, "It ends above the water") == 0.45
    assert number(figure, "Least height, fully pumped") == 0.45
    assert number(figure, "Least height, turning by gravity") == pytest.approx(0.04 * 4.5 + 0.15)
    assert number(figure, "Pump head that pushes on it") == 0


def test_a_pump_between_feed_and_vent_pushes() -> None:
    ring = "hs.flow rad.flow:return t2.a:b pu.in:out t1.a:b hs.return"
    figure = one("open-vent", vented(ring))
    assert number(figure, "Pump head that pushes on it") == 4
    assert number(figure, "Height to spare above that") == pytest.approx(0.45 - 4)


def test_height_from_the_two_heights() -> None:
    figure = one("open-vent", vented(vent={"over": "fc", "height_m": 6}))
    assert number(figure, "It ends above the water") == pytest.approx(0.5)
    without = one("open-vent", vented(vent={"over": "fc"}))
    assert "It ends above the water" not in values(without)
    assert "ov.height_above_water_mm" in without.limits


def test_what_is_not_known_of_a_vent_is_named() -> None:
    figure = one("open-vent", vented(size_mm=None, cistern={"serves": "heating"}, vent={"over": "fc"}))
    assert {"v1.size_mm", "fc.water_level_m"} <= {
        word.strip("., ") for word in figure.limits.split("Not known:")[1].split(",")
    }


def test_a_store_has_a_vent_of_its_own() -> None:
    drawing = made(
        {
            "vs": ("vented_store", {"height_m": 3.1, "volume_l": 140}),
            "ov": ("open_vent", {"over": "fc", "height_above_water_mm": 500}),
            "fc": ("feed_cistern", {"serves": "hot_water", "water_level_m": 5.7}),
            "t1": "tee",
            "o1": "outlet",
        },
        way("fc.feed vs.cold", "vs.hot t1.a:b o1.hot", "t1.branch ov.connection"),
    )
    figure = one("open-vent", drawing)
    assert number(figure, "Least height") == pytest.approx(0.04 * 2.6 + 0.15)
    assert "Pump head that pushes on it" not in values(figure)
    assert told("cistern-content", drawing) == ()


def test_sealed_heating_has_neither() -> None:
    parts: dict[str, Any] = {"hs": "heat_source", "rad": "radiator"}
    drawing = made(parts, way("hs.flow rad.flow:return hs.return"))
    assert told("open-vent", drawing) == told("cistern-content", drawing) == ()


def test_what_the_cistern_takes_up() -> None:
    design = {"system_content_l": 150, "fill_temperature_c": 10, "flow_temperature_c": 80}
    figure = one("cistern-content", vented(design=design))
    assert number(figure, "Room for 4 %") == pytest.approx(6)
    assert number(figure, "Room for 5 %, by other sources") == pytest.approx(7.5)
    assert number(figure, "By the densities of water") == pytest.approx(150 * 0.0287, rel=0.01)
    assert number(figure, "Content stated") == 40
    hotter = one("cistern-content", vented(design=design, source={"maximum_flow_temperature_c": 90}))
    assert number(hotter, "By the densities of water") == pytest.approx(150 * 0.0356, rel=0.01)


def test_glycol_swells_otherwise_than_the_densities_of_water_tell() -> None:
    design = {
        "system_content_l": 150,
        "fill_temperature_c": 10,
        "flow_temperature_c": 80,
        "glycol_percent": 30,
    }
    assert "By the densities of water" not in values(one("cistern-content", vented(design=design)))


def test_a_cistern_of_unknown_water_is_refused() -> None:
    figure = one("cistern-content", vented())
    assert "rad.water_content_l" in figure.missing
    nothing = one("cistern-content", vented(design={"system_content_l": 100}, cistern={"serves": "heating"}))
    assert "By the densities of water" not in values(nothing) and "Content stated" not in values(nothing)

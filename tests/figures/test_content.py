"""The water in each body of a drawing, and in a region of its circuit."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.plant import Plant
from tests.made import Part, made

METRES_22 = 0.320474  # litres in a metre of 22 mm copper: a bore of 20.2 mm
RING = """
p1: hs.flow - zv.in
p2: zv.out - us.coil_flow
p3: us.coil_return - rad.flow
p4: rad.return - hs.return
p5: us.hot - ou.hot
"""


def house(design: Mapping[str, Any] | None = None, **pipe_data: Mapping[str, Any]) -> Drawing:
    usual: dict[str, Mapping[str, Any]] = {
        id: {"size_mm": 22, "length_m": 10} for id in ("p1", "p2", "p3", "p4", "p5")
    }
    parts: dict[str, Part] = {
        "hs": ("heat_source", {"water_content_l": 3}),
        "zv": "zone_valve",
        "us": ("unvented_store", {"volume_l": 200, "coil_content_l": 6}),
        "rad": ("radiator", {"water_content_l": 8}),
        "ou": "outlet",
    }
    return made(parts, RING, design=design, pipe_data={**usual, **pipe_data})


def heating(plant: Plant) -> int:
    return plant.bodies.of(plant.circuit.node("hs", "flow"))


def test_heating_water_is_pipes_and_parts_and_the_coil_but_not_the_store() -> None:
    plant = Plant(house())
    content = plant.contents.of(heating(plant))
    assert content.litres == pytest.approx(40 * METRES_22 + 3 + 6 + 8, rel=1e-4)
    assert content.known and not content.given
    assert {share.id for share in content.parts} == {"p1", "p2", "p3", "p4", "hs", "us", "rad"}


def test_drinking_water_is_the_store_and_its_pipe() -> None:
    plant = Plant(house({"system_content_l": 77}))
    body = plant.bodies.of(plant.circuit.node("us", "hot"))
    assert plant.contents.of(body).litres == pytest.approx(200 + 10 * METRES_22, rel=1e-4)


def test_what_the_design_states_wins_for_heating_water() -> None:
    plant = Plant(house({"system_content_l": 77}, p1={}))
    assert plant.contents.of(heating(plant)).litres == 77
    assert plant.contents.of(heating(plant)).known


@pytest.mark.parametrize(
    ("data", "missing"),
    [
        ({}, ("p1.size_mm", "p1.length_m")),
        ({"size_mm": 22}, ("p1.length_m",)),
        ({"size_mm": 18, "length_m": 1}, ("p1.bore_mm",)),
        ({"size_mm": 22, "length_m": 1, "material": "plastic"}, ("p1.bore_mm",)),
        ({"material": "plastic", "length_m": 1}, ("p1.bore_mm",)),
        ({"size_mm": 22, "length_m": 1, "material": None}, ("p1.material",)),
    ],
)
def test_each_unknown_is_named(data: Mapping[str, Any], missing: tuple[str, ...]) -> None:
    plant = Plant(house(p1=data))
    assert plant.contents.of(heating(plant)).missing == missing


def test_a_stated_bore_wins() -> None:
    plant = Plant(house(p1={"size_mm": 22, "bore_mm": 100, "length_m": 1}))
    assert plant.contents.pipe_litres("p1")[0] == pytest.approx(7.854, rel=1e-4)


def region(plant: Plant) -> frozenset[int]:
    """What stays joined to the heat source with the zone valve and the radiator shut."""
    return frozenset({plant.circuit.water(plant.circuit.node("hs", "flow"))})


def test_a_region_holds_its_pipes_its_parts_and_the_emitters_that_hang_on_it() -> None:
    plant = Plant(house())
    content = plant.contents.in_waters(region(plant))
    assert content.litres == pytest.approx(20 * METRES_22 + 3 + 8, rel=1e-4)
    assert content.most_litres == content.litres


def test_a_region_of_a_stated_content_is_what_is_left_of_it() -> None:
    plant = Plant(house({"system_content_l": 77}, p1={}))
    content = plant.contents.in_waters(region(plant))
    assert content.known
    assert content.litres == pytest.approx(77 - 20 * METRES_22 - 6, rel=1e-4)


def test_what_is_not_known_elsewhere_leaves_bounds() -> None:
    plant = Plant(house({"system_content_l": 77}, p2={"size_mm": 22}))
    content = plant.contents.in_waters(region(plant))
    assert content.missing == ("p2.length_m",)
    assert content.litres == pytest.approx(20 * METRES_22 + 3 + 8, rel=1e-4)
    assert content.most_litres == pytest.approx(77 - 10 * METRES_22 - 6, rel=1e-4)


def test_all_waters_together_are_the_stated_content() -> None:
    plant = Plant(house({"system_content_l": 77}))
    ends = [("hs", "flow"), ("us", "coil_flow"), ("us", "coil_return")]
    waters = frozenset(plant.circuit.water(plant.circuit.node(*end)) for end in ends)
    assert plant.contents.in_waters(waters).given


def test_only_what_was_asked_for_is_taken_by_default() -> None:
    plant = Plant(house())
    plant.contents.of(heating(plant))
    assert "p1.material = copper" in plant.taken
    assert "p5.material = copper" not in plant.taken

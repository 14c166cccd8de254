"""What heated water asks of its vessels, where little of it is drawn yet."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.figures.expansion import Expansion, exactly
from circuitcheck.figures.plant import Plant
from tests.made import made


@pytest.mark.parametrize(
    ("design", "metres"), [({}, 0), ({"static_height_m": 3}, 3), ({"static_height_m": None}, 0)]
)
@pytest.mark.parametrize("built_in", [[], ["vessel"]])
def test_a_part_with_a_height_and_no_pipe(
    built_in: list[str], design: Mapping[str, Any], metres: float
) -> None:
    plant = Plant(made({"hs": ("heat_source", {"height_m": 1, "built_in": built_in})}, "", design=design))
    (heated,) = plant.bodies.heated
    assert Expansion(plant, heated).static_m("hs") == exactly(metres)

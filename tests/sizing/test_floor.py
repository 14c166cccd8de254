"""The load of a filled store."""

from __future__ import annotations

from math import pi

import pytest

from circuitcheck.sizing.floor import filled_weight_kg, load_kn_m2, round_footprint_m2


def test_a_store_of_known_size() -> None:
    assert filled_weight_kg(45, 210) == 255
    assert round_footprint_m2(1000) == pytest.approx(pi / 4)
    assert load_kn_m2(1000, 2) == pytest.approx(4.903325)

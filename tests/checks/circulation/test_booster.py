"""A pump that only pushes drinking water on has no ring by design, and is no fault."""

from __future__ import annotations

from circuitcheck.analysis import analyse
from tests.made import made

NAME = "pump-against-shut-valves"


def test_a_booster_in_the_cold_main_is_none() -> None:
    drawing = made(
        {"main": "cold_main", "pu": "pump", "out": "outlet"}, "main.outlet - pu.in\npu.out - out.cold"
    )
    analysis = analyse(drawing)
    assert NAME not in {finding.check for finding in analysis.findings}
    assert NAME in analysis.not_applicable


def test_a_heating_pump_without_a_ring_still_is_one() -> None:
    drawing = made(
        {"hs": "heat_source", "pu": "pump", "cap": "cap"}, "hs.flow - pu.in\npu.out - cap.connection"
    )
    assert NAME in {finding.check for finding in analyse(drawing).findings}

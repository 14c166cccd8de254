"""What stays joined to a heat source when valves are shut."""

from __future__ import annotations

import pytest

from circuitcheck.circuit import regions
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.regions import largest_regions
from circuitcheck.parts.kind import Role
from tests.checks.asking import way
from tests.made import made

VESSELS = dict.fromkeys(("e1", "e2", "e3"), "expansion_vessel")
ONE_BESIDE_TWO = Circuit(
    made(
        {"hs": "heat_source", "t1": "tee", "iv": "isolating_valve", "tv": "three_port_valve", **VESSELS},
        way("hs.flow t1.a", "t1.b e1.connection", "t1.branch iv.a:b tv.ab", "tv.a e2.connection", "tv.b e3.connection"),
    )
)  # fmt: skip
"""A vessel by the heat source; behind a hand valve a three-port valve with a vessel on each leg."""


def found(circuit: Circuit) -> set[tuple[str, ...]]:
    (heat,) = circuit.devices(Role.HEATS)
    marks = [circuit.water(place.node) for place in circuit.devices(Role.HOLDS_EXPANSION)]
    return {region.shut for region in largest_regions(circuit, circuit.water(heat.other), marks)}


def test_both_legs_are_lost_only_by_the_valve_before_them() -> None:
    assert found(ONE_BESIDE_TWO) == {("tv:a",), ("tv:b",), ("iv",)}


def test_beyond_the_bound_there_is_no_answer(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(regions, "REGION_BOUND", 3)
    with pytest.raises(TooLargeError):
        found(ONE_BESIDE_TWO)
    monkeypatch.setattr(regions, "REGION_BOUND", 4)
    assert len(found(ONE_BESIDE_TWO)) == 3

"""Houses side by side on one sheet: each is asked about itself, not about all the others."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.checks import store_water
from circuitcheck.checks.case import Case
from circuitcheck.circuit.coil_heat import NOTHING, CoilHeat
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.circuit.waterways import Waterways
from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.kind import Role
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.benchmarks.laid_out import houses

HOUSE = 48
DRAWINGS = [houses(3 * HOUSE), *map(read, sorted(data_path("samples").glob("*.wetcircuit")))]


def test_twice_as_many_take_twice_as_many_walks(monkeypatch: pytest.MonkeyPatch) -> None:
    walks = Counter[str]()

    def counted(owner: Any, name: str) -> None:
        walk: Callable[..., Any] = getattr(owner, name)

        def walked(*args: Any, **more: Any) -> Any:
            walks[name] += 1
            return walk(*args, **more)

        monkeypatch.setattr(owner, name, walked)

    for owner, name in ((Waterways, "walk"), (Supplies, "_through_stores"), (store_water, "walk")):
        counted(owner, name)
    few, many = houses(5 * HOUSE), houses(10 * HOUSE)
    analyse(few)
    before = walks.copy()
    walks.clear()
    analyse(many)
    assert before["walk"] > 50
    assert all(walks[name] <= 2 * before[name] for name in before), (before, walks)


@pytest.mark.parametrize("drawing", DRAWINGS, ids=lambda drawing: drawing.title)
def test_a_thermostat_that_was_not_tried_stops_nothing(drawing: Drawing) -> None:
    case = Case(drawing)
    heat = CoilHeat(case.circuit, case.bodies)
    for role in (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN):
        for place in case.circuit.devices(role):
            ways = [each for each in heat._ways_in(place.part) if heat._reaches(*each, NOTHING)]
            every = tuple(
                control
                for control in heat._thermostats
                if any(not heat._reaches(*each, frozenset(control.acts_on)) for each in ways)
            )
            assert heat.thermostats_of(place.part) == every


def test_each_is_judged_as_it_is_alone() -> None:
    alone, all_ = analyse(houses(HOUSE)), analyse(houses(4 * HOUSE))
    # Each house has the same labels as the next.
    assert {finding.check for finding in all_.findings} - {"label-twice"} == {
        finding.check for finding in alone.findings
    }
    assert set(all_.judged) == set(alone.judged)

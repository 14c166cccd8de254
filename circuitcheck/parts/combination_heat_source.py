"""Combination heat source: heats the heating water, and mains water on its way to the outlets."""

from __future__ import annotations

from circuitcheck.parts.heating_body import (
    HEAT_SOURCE_FIELDS,
    heat_source_devices,
    heat_source_passages,
    relief_may_stay_free,
)
from circuitcheck.parts.kind import Data, Group, Kind, Passage, Port, number


def _passages(data: Data) -> tuple[Passage, ...]:
    return (*heat_source_passages(data), Passage("cold", "hot"))


KIND = Kind(
    name="combination_heat_source",
    title="Combination heat source",
    group=Group.HEAT,
    size=(6, 6),
    ports=(
        Port("flow", (3, -2), (1, 0)),
        Port("return", (3, 2), (1, 0)),
        Port("cold", (-2, 3), (0, 1)),
        Port("hot", (2, 3), (0, 1)),
        Port("relief", (-3, 2), (-1, 0)),
    ),
    own_fields=(*HEAT_SOURCE_FIELDS, number("hot_flow_lpm", "Hot water flow", "l/min", least=0)),
    passages=_passages,
    devices=heat_source_devices,
    rests_on=("built_in",),
    may_stay_free=relief_may_stay_free,
    outlets=frozenset({"relief"}),
    figure=("output_kw",),
    summary="A heat source that also heats mains water as it is drawn.",
)

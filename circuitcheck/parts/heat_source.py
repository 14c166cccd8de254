"""Heat source: gives heat to the water it is fed, from its return to its flow."""

from __future__ import annotations

from circuitcheck.parts.heating_body import (
    HEAT_SOURCE_FIELDS,
    heat_source_devices,
    heat_source_passages,
    relief_may_stay_free,
)
from circuitcheck.parts.kind import Group, Kind, Port

KIND = Kind(
    name="heat_source",
    title="Heat source",
    group=Group.HEAT,
    size=(6, 6),
    ports=(
        Port("flow", (3, -2), (1, 0)),
        Port("return", (3, 2), (1, 0)),
        Port("relief", (-3, 2), (-1, 0)),
    ),
    own_fields=HEAT_SOURCE_FIELDS,
    passages=heat_source_passages,
    devices=heat_source_devices,
    rests_on=("built_in",),
    may_stay_free=relief_may_stay_free,
    outlets=frozenset({"relief"}),
    figure=("output_kw",),
    summary="Heats the water that the pump sends through it.",
)

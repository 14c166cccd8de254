"""Vented store: holds hot water fed from a cistern and open to air."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Data,
    Device,
    Group,
    Kind,
    Passage,
    Port,
    Role,
    devices,
    number,
    passages,
    switch,
)

COIL = frozenset({"coil_flow", "coil_return"})


def _may_stay_free(data: Data, joined: frozenset[str]) -> frozenset[str]:
    return frozenset() if COIL & joined else COIL


KIND = Kind(
    name="vented_store",
    title="Vented store",
    group=Group.HEAT,
    size=(6, 10),
    ports=(
        Port("coil_flow", (-3, 1), (-1, 0)),
        Port("coil_return", (-3, 4), (-1, 0)),
        Port("cold", (0, 5), (0, 1)),
        Port("hot", (0, -5), (0, -1)),
    ),
    own_fields=(
        number("volume_l", "Volume", "l", above=0),
        number("thermostat_c", "Thermostat", "°C", default=60, least=0, most=300),
        number("immersion_kw", "Immersion heater", "kW", least=0),
        switch("immersion_cut_out", "Immersion cut-out", default=None),
        number("coil_maximum_pressure_bar", "Coil's highest pressure", "bar", above=0),
        number("coil_content_l", "Coil content", "l", default=2, least=0),
    ),
    passages=passages(Passage("coil_flow", "coil_return", gives_heat=True), Passage("cold", "hot")),
    devices=devices(
        Device(Role.STORES_OPEN, "cold", "hot"), Device(Role.HEATED_BY_COIL, "coil_flow", "coil_return")
    ),
    may_stay_free=_may_stay_free,
    figure=("volume_l", "thermostat_c"),
    summary="A store fed from a cistern, whose hot side ends open over it.",
)

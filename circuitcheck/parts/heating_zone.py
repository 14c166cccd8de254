"""Heating zone: a group of emitters drawn as one."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Data,
    Device,
    Group,
    Kind,
    Passage,
    Port,
    Role,
    Way,
    devices,
    is_on,
    number,
    switch,
)


def _passages(data: Data) -> tuple[Passage, ...]:
    # A way round for water unless every head in it is thermostatic; each emitter can still be
    # shut by hand, so it is never a way for pressure that nothing can shut.
    way = Way.THERMOSTAT if is_on(data, "all_thermostatic", True) else Way.OPEN
    return (Passage("flow", "return", way=way, pressure=Way.HAND, gives_heat=True),)


KIND = Kind(
    name="heating_zone",
    title="Heating zone",
    group=Group.EMITTERS,
    size=(6, 4),
    ports=(Port("flow", (-3, -1), (-1, 0)), Port("return", (-3, 1), (-1, 0))),
    own_fields=(
        number("output_kw", "Output", "kW", least=0),
        number("water_content_l", "Water content", "l", least=0),
        switch("all_thermostatic", "All thermostatic", default=True),
        number("resistance_kpa", "Resistance", "kPa", least=0),
        number("maximum_flow_temperature_c", "Highest flow temperature", "°C", least=0, most=300),
    ),
    passages=_passages,
    devices=devices(Device(Role.EMITS, "flow", "return")),
    rests_on=("all_thermostatic",),
    figure=("output_kw",),
    summary="All the radiators or floor loops of one zone, drawn as one.",
)

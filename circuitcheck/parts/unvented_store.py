"""Unvented store: holds hot water at mains pressure."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    MOTOR_VALVE,
    Data,
    Device,
    Group,
    Kind,
    Passage,
    Port,
    Role,
    Way,
    any_of,
    chosen,
    number,
    reference,
    switch,
)

COIL = frozenset({"coil_flow", "coil_return"})
INSIDE = "~inside"


def _passages(data: Data) -> tuple[Passage, ...]:
    """A check valve that is built in stands on the cold inlet: what is behind it reaches the other ports."""
    coil = Passage("coil_flow", "coil_return", gives_heat=True)
    check = "check_valve" in chosen(data, "built_in")
    water = INSIDE if check else "cold"
    others = tuple(Passage(water, port) for port in ("hot", "relief", "secondary_return"))
    return (coil, Passage("cold", INSIDE, way=Way.ONE_WAY), *others) if check else (coil, *others)


def _devices(data: Data) -> tuple[Device, ...]:
    found = [
        Device(Role.STORES_AT_MAINS_PRESSURE, "cold", "hot"),
        Device(Role.HEATED_BY_COIL, "coil_flow", "coil_return"),
    ]
    built_in = chosen(data, "built_in")
    if {"temperature_relief", "expansion_relief"} & set(built_in):
        found.append(Device(Role.RELIEVES_STORE, "relief", "relief_outlet", built_in=True))
    if "temperature_relief" in built_in:
        found.append(Device(Role.RELIEVES_BY_TEMPERATURE, "relief", "relief_outlet", built_in=True))
    if "expansion_relief" in built_in:
        found.append(Device(Role.RELIEVES_BY_PRESSURE, "relief", "relief_outlet", built_in=True))
    return tuple(found)


def _may_stay_free(data: Data, joined: frozenset[str]) -> frozenset[str]:
    ports = {"secondary_return"}
    if not COIL & joined:
        ports |= COIL
    built_in = set(chosen(data, "built_in"))
    if "temperature_relief" in built_in:
        ports.add("relief")
    if not built_in & {"temperature_relief", "expansion_relief"}:
        ports.add("relief_outlet")
    return frozenset(ports)


KIND = Kind(
    name="unvented_store",
    title="Unvented store",
    group=Group.HEAT,
    size=(6, 10),
    ports=(
        Port("coil_flow", (-3, 1), (-1, 0)),
        Port("coil_return", (-3, 4), (-1, 0)),
        Port("cold", (0, 5), (0, 1)),
        Port("hot", (0, -5), (0, -1)),
        Port("relief", (3, -3), (1, 0)),
        Port("secondary_return", (3, 0), (1, 0)),
        Port("relief_outlet", (3, 3), (1, 0)),
    ),
    own_fields=(
        number("volume_l", "Volume", "l", above=0),
        number("coil_power_kw", "Coil power", "kW", least=0),
        number("maximum_pressure_bar", "Highest pressure", "bar", above=0),
        switch("internal_expansion", "Internal expansion", default=False),
        number("thermostat_c", "Thermostat", "°C", default=60, least=0, most=300),
        reference(
            "energy_cut_out",
            "Energy cut-out shuts",
            to=MOTOR_VALVE,
            help="The motorised valve that the store's energy cut-out shuts.",
        ),
        number("immersion_kw", "Immersion heater", "kW", least=0),
        switch("immersion_cut_out", "Immersion cut-out", default=None),
        number("coil_maximum_pressure_bar", "Coil's highest pressure", "bar", above=0),
        number("diameter_mm", "Diameter", "mm", above=0),
        number("empty_weight_kg", "Empty weight", "kg", least=0),
        number("coil_content_l", "Coil content", "l", default=2, least=0),
        number(
            "outlet_size_mm",
            "Built-in relief outlet",
            "mm",
            default=15,
            above=0,
            help="The bore of the joined outlet of the relief valves inside.",
        ),
        any_of("built_in", "Built in", ("temperature_relief", "expansion_relief", "check_valve")),
    ),
    passages=_passages,
    devices=_devices,
    rests_on=("built_in",),
    may_stay_free=_may_stay_free,
    outlets=frozenset({"relief_outlet"}),
    figure=("volume_l", "thermostat_c"),
    summary="A store fed by the main, with no cistern and no vent: its safety is in its valves.",
)

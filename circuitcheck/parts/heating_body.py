"""What every heat source shares: its fields, its ways through and what is built in."""

from __future__ import annotations

from circuitcheck.parts.kind import (
    Data,
    Device,
    Field,
    Passage,
    Role,
    Way,
    any_of,
    choice,
    chosen,
    number,
    switch,
)

BUILT_IN = (
    "pump",
    "vessel",
    "safety_valve",
    "bypass",
    "gauge",
    "filling_link",
    "air_vent",
    "check_valve",
)
INSIDE = "~inside"


def heat_source_passages(data: Data) -> tuple[Passage, ...]:
    """Return to flow; a built-in check valve stands on the return, a built-in bypass behind it."""
    built_in = chosen(data, "built_in")
    check, bypass = "check_valve" in built_in, "bypass" in built_in
    if not check and not bypass:
        return (Passage("return", "flow", driven=True),)
    ways = [
        Passage("return", INSIDE, way=Way.ONE_WAY if check else Way.OPEN),
        Passage(INSIDE, "flow", driven=True),
    ]
    if bypass:
        ways.append(Passage("flow", INSIDE, way=Way.SPRING))
    return tuple(ways)


def heat_source_devices(data: Data) -> tuple[Device, ...]:
    """The heat itself and what is built in; devices on the water stand at the flow."""
    built_in = chosen(data, "built_in")
    start = INSIDE if "check_valve" in built_in or "bypass" in built_in else "return"
    found = [Device(Role.HEATS, start, "flow")]
    if "pump" in built_in:
        found.append(Device(Role.PUMPS, start, "flow", built_in=True))
    if "vessel" in built_in:
        found.append(Device(Role.HOLDS_EXPANSION, "flow", built_in=True))
    if "safety_valve" in built_in:
        found.append(Device(Role.RELIEVES_HEATING, "flow", "relief", built_in=True))
    if "gauge" in built_in:
        found.append(Device(Role.SHOWS_PRESSURE, "flow", built_in=True))
    if "filling_link" in built_in:
        found.append(Device(Role.FILLS, "flow", built_in=True))
    if "air_vent" in built_in:
        found.append(Device(Role.LETS_AIR_OUT, "flow", built_in=True))
    if "bypass" in built_in:
        found.append(Device(Role.BYPASSES, "flow", INSIDE, built_in=True))
    return tuple(found)


def relief_may_stay_free(data: Data, joined: frozenset[str]) -> frozenset[str]:
    """Without a built-in safety valve the relief port is none; with one, its outlet must lead away."""
    return frozenset() if "safety_valve" in chosen(data, "built_in") else frozenset({"relief"})


HEAT_SOURCE_FIELDS: tuple[Field, ...] = (
    number("output_kw", "Output", "kW", least=0),
    number("water_content_l", "Water content", "l", least=0),
    number("minimum_flow_lpm", "Least flow", "l/min", least=0),
    number("minimum_content_l", "Least circulating content", "l", least=0),
    number("pump_overrun_min", "Pump run-on", "min", default=5, least=0),
    number("maximum_pressure_bar", "Highest pressure", "bar", default=3, above=0),
    number("maximum_flow_temperature_c", "Highest flow temperature", "°C", least=0, most=300),
    choice(
        "heat",
        "Heat",
        ("switched", "uncontrolled"),
        default="switched",
        help="Uncontrolled: it goes on heating when called off, as a solid-fuel fire does.",
    ),
    choice("high_limit", "High limit", ("hand_reset", "self_reset"), default=None),
    any_of("built_in", "Built in", BUILT_IN),
    number("built_in_vessel_l", "Built-in vessel", "l", above=0),
    number("built_in_vessel_precharge_bar", "Built-in vessel's precharge", "bar", least=0),
    number("built_in_safety_valve_bar", "Built-in safety valve set at", "bar", above=0),
    number(
        "outlet_size_mm",
        "Built-in safety valve's outlet",
        "mm",
        default=15,
        above=0,
        help="The bore of the outlet of the safety valve inside.",
    ),
    switch("combined_feed_and_vent", "Combined feed and vent allowed", default=False),
    number(
        "shut_off_head_m",
        "Built-in pump's shut-off head",
        "m",
        least=0,
        help="The head of the pump inside against shut valves.",
    ),
    number(
        "maximum_flow_lpm",
        "Built-in pump's most flow",
        "l/min",
        least=0,
        help="What the pump inside moves against no resistance at all.",
    ),
)

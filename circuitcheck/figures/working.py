"""What several worked figures take up: a body's content and what it rests on, and its temperatures."""

from __future__ import annotations

from collections.abc import Callable
from math import inf

from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.content import HOLDS_WATER, SYSTEM_CONTENT
from circuitcheck.figures.expansion import Bounds, Expansion, exactly, safety_valve_field
from circuitcheck.figures.figure import Figure, Moves
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.glycol import REFUSAL
from circuitcheck.sizing.tube import content_l_m
from circuitcheck.sizing.water import LEAST_C, MOST_C
from circuitcheck.told import a_word, worded

WANTING = a_word("numbers are missing")
PLASTIC_BORE_SHARE = 0.8
"""The bore of plastic heating tube as a share of its outside diameter (from memory: 11.7 of 15 mm, 17.7 of
22 mm, 22.5 of 28 mm): only for saying how much a default matters."""


def take_content(gathering: Gathering, body: int) -> float | None:
    """The content of a body as an input of another figure; None where it is not known in full."""
    content = gathering.plant.contents.of(body)
    if not content.known:
        gathering.lacks(*content.missing)
        return None
    origin = f"given {SYSTEM_CONTENT}" if content.given else "figure water-content"
    gathering.add("V", a_word("Water content"), content.litres, "l", origin)
    return content.litres


def content_moves(plant: Plant, body: int) -> tuple[Moves, ...]:
    """What a body's content owes to defaults, as shares of it."""
    content = plant.contents.of(body)
    if content.given or content.litres <= 0:
        return ()
    litres = {share.id: share.litres for share in content.parts}
    found = [*_part_moves(plant, litres, content.litres), *_pipe_moves(plant, litres, content.litres)]
    return tuple(each for each in found if each.share)


def _part_moves(plant: Plant, litres: dict[str, float], total: float) -> list[Moves]:
    found = []
    for role, field in HOLDS_WATER:
        for place in plant.circuit.devices(role):
            if place.part in litres and field not in plant.drawing.components[place.part].data:
                found.append(
                    Moves(
                        f"{place.part}.{field}", a_word("half as much again"), litres[place.part] / 2 / total
                    )
                )
    return found


def _pipe_moves(plant: Plant, litres: dict[str, float], total: float) -> list[Moves]:
    found = []
    for id, pipe in plant.drawing.pipes.items():
        if id not in litres or {"material", "bore_mm"} & pipe.data.keys():
            continue
        size, length = plant.pipe_value(id, "size_mm"), plant.length_m(id)
        if size is None or length is None:
            continue
        plastic = content_l_m(PLASTIC_BORE_SHARE * size) * length.value
        found.append(
            Moves(f"{id}.material", a_word("plastic instead of copper"), (plastic - litres[id]) / total)
        )
    return found


HOTTER_BY_K = 5.0


def hotter_moves(gathering: Gathering, store: str, share_at: Callable[[float], float]) -> tuple[Moves, ...]:
    """What a store's figure owes to the usual setting of its thermostat: `share_at` tells by how much of
    itself it moves at another temperature."""
    field = f"{store}.thermostat_c"
    if not gathering.is_default(field):
        return ()
    share = share_at(float(gathering.plant.value(store, "thermostat_c")) + HOTTER_BY_K)
    return (Moves(field, f"+{HOTTER_BY_K:g} °C", share),) if share else ()


def take_temperatures(gathering: Gathering, expansion: Expansion) -> tuple[float | None, float | None]:
    """The fill and the highest temperature; None for each that is not known.

    The highest is the design's flow, or the limit of a heat source on this water where that is higher.
    """
    plant = gathering.plant
    cold = gathering.design("fill_temperature_c", "t1", a_word("Fill temperature"))
    if not expansion.hottest_c.known:
        gathering.lacks(*expansion.hottest_c.missing)
        return cold, None
    hottest = expansion.hottest_c.high
    gathering.add("t2", a_word("Highest temperature"), hottest, "°C", _hottest_origin(plant, hottest))
    return cold, hottest


def _hottest_origin(plant: Plant, hottest: float) -> str:
    if plant.design("flow_temperature_c") == hottest:
        return "given design.flow_temperature_c"
    field = "maximum_flow_temperature_c"
    for place in plant.circuit.devices(Role.HEATS):
        if plant.value(place.part, field) == hottest:
            return f"given {place.part}.{field}"
    return "given"


def setting_origin(plant: Plant, valve: Placed) -> str:
    """Where a safety valve's setting, which is known, comes from: one built in that states none is set at
    what its heat source is made for."""
    data, field = plant.drawing.components[valve.part].data, safety_valve_field(valve)
    if valve.device.built_in and data.get(field.rpartition(".")[2]) is None:
        field = f"{valve.part}.maximum_pressure_bar"
    return f"{'given' if field.rpartition('.')[2] in data else a_word('usual value')} {field}"


def static_above(expansion: Expansion, part: str) -> Bounds:
    """How far the top of the water stands above a part on it, in metres."""
    plant = expansion.plant
    stated = plant.design("static_height_m")
    if stated is not None and not expansion.vessels:
        return exactly(float(stated))
    if stated is None and part not in plant.circuit.parts_in(expansion.reach):
        return Bounds(0.0, inf, ("design.static_height_m",))  # no pipe joins it to anything
    return expansion.static_m(part)


def why_not_reckoned(expansion: Expansion) -> str:
    """Why the swell of this water is not reckoned here whatever is told; else empty."""
    if expansion.glycol:
        return REFUSAL
    if expansion.beyond_tables:
        return worded(
            "the temperatures are outside the {least_c:g} to {most_c:g} °C for which the formulas hold",
            least_c=LEAST_C,
            most_c=MOST_C,
        )
    return ""


def refusal(
    name: str,
    title: str,
    subject: tuple[str, ...],
    gathering: Gathering,
    *,
    formula: str,
    source: str,
    limits: str,
    why: str = "",
) -> Figure:
    """A figure that cannot be worked: for `why`, else for want of what the gathering misses."""
    return Figure(
        name,
        title,
        subject,
        (),
        formula,
        gathering.inputs,
        source,
        limits,
        refused=why or WANTING,
        missing=() if why else gathering.missing,
    )

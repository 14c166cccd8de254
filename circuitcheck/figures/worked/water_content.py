"""Water content.

How much water each body of heating water holds, part by part. The vessel, the inhibitor, the filling
and the heat source's least content all begin with it. What is not known is named, never guessed.
"""

from __future__ import annotations

from circuitcheck.figures.content import HOLDS_WATER, SYSTEM_CONTENT, Content, Share, pipe_bore_mm
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heated_water import HeatedWater, heating_bodies
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import WANTING, content_moves
from circuitcheck.told import a_word, worded

NAME, TITLE = "water-content", "Water content"
FORMULA = "V = Σ Vpart + Σ π/4 × d² × L"
SOURCE = (
    "Geometry; bores by BS EN 1057 (copper, R250) and BS EN 10255 (steel, medium) where the drawing states "
    "none. That valves, pumps, tees, plate exchangers, vessels and cisterns are left out: common practice, "
    "no source."
)
LIMITS = "Pipes full of water; standard tube of the tabled sizes, else with its bore stated."


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each body of heating water."""
    return tuple(_one(plant, water) for water in heating_bodies(plant))


def _one(plant: Plant, water: HeatedWater) -> Figure:
    gathering = Gathering(plant)
    content = plant.contents.of(water.body)
    summed = sum(share.litres for share in content.parts)
    for share in content.parts:
        _add(gathering, share)
    results: tuple[Result, ...]
    if content.given:
        gathering.add(
            "V",
            a_word("System content as the design states it"),
            content.litres,
            "l",
            f"given {SYSTEM_CONTENT}",
        )
        results = (Result(a_word("Water content, as stated"), content.litres, "l"),)
        if summed:
            results += (Result(a_word("Of that, known part by part"), summed, "l"),)
    else:
        results = _results(plant, content)
    return Figure(
        NAME,
        TITLE,
        water.parts,
        results,
        a_word("V = as the design states; it wins over the sum of the parts") if content.given else FORMULA,
        gathering.inputs,
        SOURCE,
        LIMITS,
        refused="" if content.known else WANTING,
        missing=tuple(content.missing),
        moves=content_moves(plant, water.body),
    )


def _results(plant: Plant, content: Content) -> tuple[Result, ...]:
    word = a_word("Water content") if content.known else a_word("What is known so far: at least")
    pipes = sum(share.litres for share in content.parts if share.id in plant.drawing.pipes)
    return (
        Result(word, content.litres, "l"),
        Result(a_word("Of that, in pipes"), pipes, "l"),
        Result(a_word("Of that, in parts"), content.litres - pipes, "l"),
    )


def _add(gathering: Gathering, share: Share) -> None:
    """One part's water with where it comes from."""
    plant, id = gathering.plant, share.id
    name = plant.drawing.name(id)
    if id not in plant.drawing.pipes:
        field = _field(plant, id)
        given = field in plant.drawing.components[id].data
        gathering.add(
            f"V {id}", name, share.litres, "l", f"{'given' if given else a_word('usual value')} {id}.{field}"
        )
        return
    bore, _ = pipe_bore_mm(plant, id)
    length = plant.length_m(id)
    size, material = plant.pipe_value(id, "size_mm"), plant.pipe_value(id, "material")
    long, wide = length.value if length else 0.0, bore or 0.0
    if size is not None:
        what = worded(
            "{pipe}: {length:.4g} m of {size:g} mm {material}, bore {bore:g} mm",
            pipe=name,
            length=long,
            size=size,
            material=a_word(str(material)),
            bore=wide,
        )
    else:
        what = worded(
            "{pipe}: {length:.4g} m of {material}, bore {bore:g} mm",
            pipe=name,
            length=long,
            material=a_word(str(material)),
            bore=wide,
        )
    gathering.add(f"V {id}", what, share.litres, "l", _pipe_origin(plant, id))


def _pipe_origin(plant: Plant, id: str) -> str:
    length, data = plant.length_m(id), plant.drawing.pipes[id].data
    origins = [f"{length.how if length else 'given'} {id}.length_m"]
    if data.get("bore_mm") is not None:
        return f"{origins[0]}; given {id}.bore_mm"
    material = plant.pipe_value(id, "material")
    origins.append(a_word("table EN 10255") if material == "steel" else a_word("table EN 1057"))
    if "material" not in data:
        origins.append(f"usual value {id}.material")
    return "; ".join(origins)


def _field(plant: Plant, part: str) -> str:
    own = {field.name for field in plant.drawing.components[part].kind.own_fields}
    places = ((role, field) for role, field in HOLDS_WATER if field in own)
    return next(
        field for role, field in places if any(place.part == part for place in plant.circuit.devices(role))
    )

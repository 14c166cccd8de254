"""What is said of a drawing at work: its situations, how each thing stands, what is missing."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from circuitcheck.circuit.joining import Circuit
from circuitcheck.editor.translating import shown_told, tr, tr_n
from circuitcheck.figures.plant import Plant
from circuitcheck.operating.positions import Positions, turnables, vessels
from circuitcheck.operating.standing import Standing
from circuitcheck.parts.kind import Role, Way
from circuitcheck.told import upper


@dataclass(frozen=True, slots=True)
class Row:
    """One thing that can be turned: its part, the passage (empty: the part itself is pressed), what it is
    called, and how it stands."""

    part: str
    label: str
    name: str
    state: str
    is_set: bool
    """Whether it is shut, runs, heats, or has no gas: what the symbol shows."""


def situation_name(name: str) -> str:
    """A situation's name as a heading."""
    known = {
        "heating only": tr("Heating only"),
        "hot water only": tr("Hot water only"),
        "both": tr("Heating and hot water"),
        "pump run-on": tr("Pump run-on"),
        "at rest": tr("At rest"),
        "power off": tr("Power off"),
        "as drawn": tr("As drawn"),
    }
    begun, colon, _ = name.partition(": ")
    rest = tr(name).partition(": ")[2] if colon else ""
    return f"{known.get(begun, begun)}{colon}{rest}"


def rows(plant: Plant, positions: Positions) -> tuple[Row, ...]:
    """Everything that can be turned: what drives first, then valves by motor, by hand, and vessels."""
    circuit = plant.circuit
    found = [*_drives(circuit, positions)]
    ways = turnables(circuit)
    for by_motor in (True, False):
        for each in ways:
            if (each.way is Way.MOTOR) is not by_motor:
                continue
            name = shown_told(upper(circuit.drawing.name(each.part)))
            if each.leg:
                name = tr("{valve} to {leg}", valve=name, leg=each.leg)
            elif _drives_water(circuit, each.part) or _gives_heat(circuit, each.part):
                name = tr("{part}: its valves", part=name)
            shut = each.label in positions.shut
            found.append(Row(each.part, each.label, name, tr("shut") if shut else tr("open"), shut))
    for part in vessels(plant):
        flooded = part in positions.flooded
        state = tr("no gas") if flooded else tr("with gas")
        found.append(Row(part, "", shown_told(upper(circuit.drawing.name(part))), state, flooded))
    return tuple(found)


def _drives(circuit: Circuit, positions: Positions) -> Iterator[Row]:
    for place in circuit.devices(Role.HEATS):
        heats = place.part in positions.firing
        state = tr("heats") if heats else tr("off")
        yield Row(place.part, "", shown_told(upper(circuit.drawing.name(place.part))), state, heats)
    for place in circuit.devices(Role.PUMPS):
        runs = place.part in positions.running
        name = shown_told(upper(circuit.drawing.name(place.part)))
        if place.device.built_in:
            name = tr("{part}: its pump", part=name)
        yield Row(place.part, f"pump {place.part}", name, tr("runs") if runs else tr("stands"), runs)


def _drives_water(circuit: Circuit, part: str) -> bool:
    return any(device.role is Role.PUMPS for device in circuit.plans[part].devices)


def _gives_heat(circuit: Circuit, part: str) -> bool:
    return any(passage.gives_heat for passage in circuit.plans[part].passages)


def stands(circuit: Circuit, positions: Positions) -> str:
    """How a situation leaves the motor valves and drives, in a line."""
    drawing = circuit.drawing
    said = []
    motors = {each.label for each in turnables(circuit) if each.way is Way.MOTOR}
    shut = [_passage(circuit, label) for label in sorted(positions.shut & motors)]
    if shut:
        said.append(tr("{valves} shut", valves=", ".join(shut)))
    elif motors:
        said.append(tr("all motor valves open"))
    running = [
        tr("the pump of {part}", part=drawing.name(place.part))
        if place.device.built_in
        else shown_told(drawing.name(place.part))
        for place in circuit.devices(Role.PUMPS)
        if place.part in positions.running
    ]
    said += [tr("{pump} runs", pump=each) for each in running] or [tr("no pump runs")]
    said.append(tr("heat on") if positions.firing else tr("heat off"))
    return ", ".join(said)


def _passage(circuit: Circuit, label: str) -> str:
    part, _, leg = label.partition(":")
    name = shown_told(circuit.drawing.name(part))
    return tr("{valve} to {leg}", valve=name, leg=leg) if leg else name


def cut_off_words(standing: Standing) -> str:
    """What the valves cut off, in a sentence; empty where nothing is."""
    said = []
    names = {
        "expansion vessel": tr("its expansion vessel"),
        "safety valve": tr("its safety valve"),
        "open vent": tr("its open vent"),
        "cold feed": tr("its cold feed"),
        "relief valve": tr("its relief valve"),
    }
    lacking: dict[str, list[str]] = {}
    for each in standing.cut_off:
        lacking.setdefault(each.part, []).append(names.get(each.lacks, each.lacks))
    for part, devices in lacking.items():
        said.append(
            tr(
                "{part} is cut off from {devices}.",
                part=shown_told(standing.drawing.name(part)),
                devices=tr(" and ").join(dict.fromkeys(devices)),
            )
        )
    return " ".join(said)


def missing_words(standing: Standing) -> str:
    """How many numbers the flows lack; empty for none."""
    count = len(standing.missing)
    if not count:
        return ""
    return tr_n(
        "{count} number is missing to work out the flows.",
        "{count} numbers are missing to work out the flows.",
        count,
    )

"""What of a part is shown on the sheet: its symbol's states, its label's lines, its open ports. No Qt."""

from __future__ import annotations

from typing import Any

from circuitcheck.drawing.value import Component, Control, Drawing, Joint, Pipe, on_one_line
from circuitcheck.parts.kind import FieldType, Role
from circuitcheck.told import a_word, spoken, strung, upper, worded

NAMELESS = frozenset({"tee", "cap"})
"""Kinds so small and so many that only a label of their own is shown."""

PLACES = {
    "outside_low_level": a_word("low level"),
    "gully_below_grating": a_word("gully, below the grating"),
    "roof_or_high_level": a_word("roof or high level"),
    "soil_stack": a_word("soil stack"),
}
LEAST_HEIGHT_INSIDE = 8
"""From so many squares high a symbol carries its label inside."""

Placed = Component | Control


def states(thing: Placed) -> frozenset[str]:
    """The states of its symbol that its own data sets."""
    if isinstance(thing, Control):
        return frozenset()
    found = {
        name
        for name in ("secured", "left_connected")
        if any(field.name == name for field in thing.kind.own_fields) and thing.value(name)
    }
    return frozenset(found)


def label_lines(thing: Placed, decimal: str = ".") -> tuple[str, ...]:
    """The name, then the one figure that matters where it is known; none for a tee without a label."""
    if not thing.label and thing.kind.name in NAMELESS:
        return ()
    name = one_line(thing.label) or thing.kind.title
    figure = set_at(thing, decimal) if isinstance(thing, Control) else figure_of(thing, decimal)
    return (name, figure) if figure else (name,)


def figure_of(part: Component, decimal: str = ".") -> str:
    """What stands under a part's name: `18 kW`, `7 bar · 90 °C`, `hot water`; empty where unknown."""
    if part.kind.name == "filling_link":
        return a_word("left connected") if part.value("left_connected") else a_word("taken off")
    shown: list[str] = []
    for name in part.kind.figure:
        field = part.kind.field(name)
        value = part.value(name)
        if value is None or value == "unknown":
            continue
        if field.type is FieldType.NUMBER:
            shown.append(_with_unit(number(value, decimal), field.unit))
        else:
            shown.append(PLACES.get(value, words(value)))
    return strung(shown, " · ")


def _with_unit(value: str, unit: str) -> str:
    return worded("{value} {unit}", value=value, unit=a_word(unit)) if unit else value


def set_at(control: Control, decimal: str = ".") -> str:
    """What a thermostat is set at; empty where unknown."""
    return "" if control.set_c is None else f"{number(control.set_c, decimal)} °C"


def number(value: float, decimal: str = ".") -> str:
    """A number as short as it can be, with the decimal sign of the place."""
    return f"{value:.6g}".replace(".", decimal)


def words(value: Any) -> str:
    """A chosen value of the file in words."""
    return spoken(one_line(str(value)))


def one_line(text: str) -> str:
    """A text of the file on one line, with its control characters shown as codes and not obeyed."""
    return "".join(letter if letter.isprintable() else f"[{ord(letter):02X}]" for letter in on_one_line(text))


def carries_label_inside(part: Placed) -> bool:
    """Whether the symbol is so large, and stands so, that its label is inside."""
    turn = part.turn if isinstance(part, Component) else 0
    return part.kind.size[1] >= LEAST_HEIGHT_INSIDE and turn in (0, 180)


def bore(pipe: Pipe) -> str:
    """The size that stands beside a pipe's letter; empty where it is not known."""
    size = pipe.data.get("size_mm")
    return "" if size is None else number(size)


def open_ports(drawing: Drawing, part: Component) -> tuple[str, ...]:
    """The ports that need a pipe and have none."""
    joined = joined_ports(drawing, part)
    spare = part.kind.may_stay_free(part.data, joined)
    return tuple(p.name for p in part.kind.ports if p.name not in joined and p.name not in spare)


def joined_ports(drawing: Drawing, part: Component) -> frozenset[str]:
    """The ports that have a pipe."""
    on_pipes = drawing.joined
    return frozenset(port.name for port in part.kind.ports if Joint(part.id, port.name) in on_pipes)


def _only_hot_water_is_fed(drawing: Drawing) -> bool:
    """Whether there are cisterns, and each serves the hot water: a vent over one is the store's."""
    cisterns = [
        part
        for part in drawing.components.values()
        if any(device.role is Role.FEEDS for device in part.kind.devices(part.data))
    ]
    return bool(cisterns) and all(part.value("serves") == "hot_water" for part in cisterns)


def subtitle(drawing: Drawing) -> str:
    """What plant it is, read off what its parts do: `Sealed heating, mains-fed store`."""
    roles = {device.role for part in drawing.components.values() for device in part.kind.devices(part.data)}
    if Role.HEATS not in roles:
        return ""
    parts_said: list[str] = []
    if Role.VENTS in roles and not (Role.HOLDS_EXPANSION in roles and _only_hot_water_is_fed(drawing)):
        parts_said.append(a_word("open-vented heating"))
    elif Role.HOLDS_EXPANSION in roles:
        parts_said.append(a_word("sealed heating"))
    else:
        parts_said.append(a_word("heating"))
    if Role.STORES_AT_MAINS_PRESSURE in roles:
        parts_said.append(a_word("mains-fed store"))
    if Role.STORES_OPEN in roles:
        parts_said.append(a_word("store fed from a cistern"))
    return upper(strung(parts_said))

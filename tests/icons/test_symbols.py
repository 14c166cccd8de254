"""The symbols' drawings: what they may hold, and that their strokes reach every port."""

from __future__ import annotations

import math
import re
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

import pytest

ICONS = Path(__file__).parents[2] / "icons"
SVG = "{http://www.w3.org/2000/svg}"
SQUARE = 16.0
SHELF = 28.0

Point = tuple[float, float]
Polyline = list[Point]

TWO_WAY = {"in": (-1, 0), "out": (1, 0)}
EITHER_WAY = {"a": (-1, 0), "b": (1, 0)}
RELIEF = {"inlet": (0, 1), "outlet": (1, 0)}
HEATED = {"flow": (3, -2), "return": (3, 2), "relief": (-3, 2)}
STORE = {"coil_flow": (-3, 1), "coil_return": (-3, 4), "cold": (0, 5), "hot": (0, -5)}
SEPARATOR = {"source_flow": (-1, -2), "source_return": (-1, 2)}
SEPARATOR |= {"load_flow": (1, -2), "load_return": (1, 2)}
EXCHANGER = {"primary_in": (-2, -1), "primary_out": (-2, 1)}
EXCHANGER |= {"secondary_in": (2, -1), "secondary_out": (2, 1)}

# Ports in squares from the symbol's centre, x to the right, y down.
PORTS: dict[str, dict[str, tuple[int, int]]] = {
    "heat_source": HEATED,
    "combination_heat_source": {**HEATED, "cold": (-2, 3), "hot": (2, 3)},
    "pump": TWO_WAY,
    "zone_valve": TWO_WAY,
    "three_port_valve": {"ab": (-1, 0), "a": (1, 0), "b": (0, 1)},
    "bypass_valve": TWO_WAY,
    "isolating_valve": EITHER_WAY,
    "balancing_valve": EITHER_WAY,
    "check_valve": TWO_WAY,
    "pressure_reducing_valve": TWO_WAY,
    "strainer": TWO_WAY,
    "dirt_separator": EITHER_WAY,
    "expansion_vessel": {"connection": (0, -2)},
    "safety_valve": RELIEF,
    "pressure_gauge": {"connection": (0, 1)},
    "air_vent": {"connection": (0, 1)},
    "drain": {"connection": (0, -1)},
    "filling_link": {"supply": (-2, 0), "system": (2, 0)},
    "tee": {"a": (0, 0), "b": (0, 0), "branch": (0, 0)},
    "cap": {"connection": (0, 0)},
    "radiator": {"flow": (-2, 2), "return": (2, 2)},
    "heating_zone": {"flow": (-3, -1), "return": (-3, 1)},
    "separator": SEPARATOR,
    "heat_exchanger": EXCHANGER,
    "unvented_store": {**STORE, "relief": (3, -3), "secondary_return": (3, 0)} | {"relief_outlet": (3, 3)},
    "vented_store": STORE,
    "temperature_relief_valve": RELIEF,
    "expansion_relief_valve": RELIEF,
    "inlet_group": {"in": (-3, 0), "out": (3, 0), "balanced_cold": (-1, -1), "relief": (1, 1)},
    "tundish": {"inlet": (0, -1), "outlet": (0, 1)},
    "discharge_end": {"inlet": (0, -1)},
    "cold_main": {"outlet": (1, 0)},
    "outlet": {"hot": (-1, 1), "cold": (1, 1)},
    "blending_valve": {"hot": (-1, 0), "cold": (0, 1), "mixed": (1, 0)},
    "feed_cistern": {"supply": (-3, -1), "feed": (2, 2), "vent_over": (1, -2), "warning": (3, -1)},
    "open_vent": {"connection": (0, 2)},
    "room_thermostat": {},
    "store_thermostat": {},
    "programmer": {},
}
# The vent ends in the open air over the water: no part of the cistern touches it.
IN_THE_AIR = {("feed_cistern", "vent_over")}

# Footprints in squares, width by height, where they are not 2 by 2.
SIZES = {
    (6, 6): {"heat_source", "combination_heat_source"},
    (6, 10): {"unvented_store", "vented_store"},
    (6, 4): {"heating_zone", "feed_cistern"},
    (6, 2): {"inlet_group"},
    (5, 4): {"radiator"},
    (4, 4): {"heat_exchanger"},
    (4, 2): {"filling_link"},
    (3, 4): {"expansion_vessel"},
    (2, 6): {"separator"},
    (2, 4): {"open_vent"},
    (2, 3): {"dirt_separator"},
    (1, 1): {"cap", "tee"},
}
FOOTPRINT = {kind: size for size, kinds in SIZES.items() for kind in kinds}
STATES: dict[str, set[str]] = {
    "heat_source": {"heat_off"},
    "combination_heat_source": {"heat_off"},
    "pump": {"running"},
    "zone_valve": {"shut"},
    "balancing_valve": {"shut"},
    "isolating_valve": {"shut", "secured"},
    "three_port_valve": {"shut_a", "shut_b"},
    "filling_link": {"left_connected"},
}
INK, BODY = "#1D2126", "#FFFFFF"
# Besides ink and body: second ink, paper, flow, return, the middle of a coil, cold water,
# and the tints of cold water, flame and shade.
COLOURS = {INK, BODY, "#54595F", "#FCFBF7", "#C23B0A", "#1D5FC4", "#8A4A5E", "#0A6E6E"}
COLOURS |= {"#DDE8E4", "#F6DDD3", "#DDD8CC"}
PRESENTATION = {"fill", "stroke", "stroke-width", "stroke-dasharray"}
PRESENTATION |= {"stroke-linejoin", "stroke-linecap", "stroke-miterlimit"}
SHAPES = {
    "path": {"d"},
    "circle": {"cx", "cy", "r"},
    "rect": {"x", "y", "width", "height", "rx"},
}
STATE_WORDS = {"data-when", "data-unless"}
LETTER = {"x", "y", "text-anchor", "font-family", "font-size", "font-weight"}
ALLOWED = {
    "svg": {"viewBox", "width", "height"},
    "title": set(),
    "desc": set(),
    "g": PRESENTATION | STATE_WORDS | {"data-upright"},
    "text": PRESENTATION | STATE_WORDS | LETTER,
    **{tag: own | PRESENTATION | STATE_WORDS for tag, own in SHAPES.items()},
}
ARGUMENTS = {"M": 2, "L": 2, "H": 1, "V": 1, "C": 6, "Q": 4, "A": 7, "Z": 0}
NUMBER = r"-?\d+(?:\.\d+)?"


def read(kind: str) -> ET.Element:
    """The root of a kind's drawing."""
    return ET.parse(ICONS / f"{kind}.svg").getroot()


def name(element: ET.Element) -> str:
    """The element's tag without its name space."""
    return element.tag.removeprefix(SVG)


def numbers(text: str) -> list[float]:
    """Every number of an attribute."""
    return [float(found) for found in re.findall(NUMBER, text)]


def view_box(root: ET.Element) -> list[float]:
    """Left, top, width and height in px."""
    return numbers(root.attrib["viewBox"])


def shown(
    element: ET.Element, states: frozenset[str], above: dict[str, str] | None = None
) -> Iterator[tuple[ET.Element, dict[str, str]]]:
    """Shapes and letters drawn in these states, each with what it inherits."""
    when, unless = element.get("data-when"), element.get("data-unless")
    if (when and when not in states) or (unless and unless in states):
        return
    style = {**(above or {}), **{k: v for k, v in element.attrib.items() if k in PRESENTATION}}
    if name(element) in SHAPES or name(element) == "text":
        yield element, style
    for child in element:
        yield from shown(child, states, style)


def steps(d: str) -> Iterator[tuple[str, list[float]]]:
    """The commands of a path, one for each set of arguments."""
    for letter, rest in re.findall(r"([A-Za-z])([^A-Za-z]*)", d):
        values, size = numbers(rest), ARGUMENTS[letter]
        if size == 0:
            yield letter, []
        for start in range(0, len(values), size or 1):
            yield letter, values[start : start + size]


def bezier(points: list[Point]) -> Polyline:
    """A quadratic or cubic curve as eight chords, its first point left out."""
    found = []
    for step in range(1, 9):
        t, level = step / 8, points
        while len(level) > 1:
            level = [(a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t) for a, b in pairwise(level)]
        found.append(level[0])
    return found


def arc(start: Point, values: list[float]) -> Polyline:
    """An unturned arc of an ellipse as chords, by the centre form of SVG 1.1, F.6.5."""
    rx, ry, turn, large, sweep, x, y = values
    assert turn == 0, "arcs are drawn unturned"
    ax, ay, bx, by = start[0] / rx, start[1] / ry, x / rx, y / ry
    half = math.hypot(bx - ax, by - ay) / 2
    reach = math.sqrt(max(1 - half * half, 0)) * (1 if large != sweep else -1)
    cx = (ax + bx) / 2 - reach * (by - ay) / (2 * half)
    cy = (ay + by) / 2 + reach * (bx - ax) / (2 * half)
    first, last = math.atan2(ay - cy, ax - cx), math.atan2(by - cy, bx - cx)
    span = (last - first) % math.tau if sweep else -((first - last) % math.tau)
    angles = [first + span * step / 24 for step in range(1, 25)]
    return [((cx + math.cos(t)) * rx, (cy + math.sin(t)) * ry) for t in angles]


def path_lines(d: str) -> list[Polyline]:
    """A path as polylines, one for each move."""
    lines: list[Polyline] = []
    for letter, v in steps(d):
        if letter == "M":
            lines.append([(v[0], v[1])])
            continue
        line = lines[-1]
        x, y = line[-1]
        if letter == "Z":
            line.append(line[0])
        elif letter == "A":
            line.extend(arc((x, y), v))
        elif letter in "CQ":
            line.extend(bezier([(x, y), *zip(v[::2], v[1::2], strict=True)]))
        else:
            line.append({"L": (v[0], v[-1]), "H": (v[0], y), "V": (x, v[0])}[letter])
    return lines


def outline(shape: ET.Element) -> list[Polyline]:
    """A shape's edge as polylines in px; a rectangle's corners taken as square."""
    if name(shape) == "path":
        return path_lines(shape.attrib["d"])
    if name(shape) == "circle":
        x, y, r = (float(shape.attrib[key]) for key in ("cx", "cy", "r"))
        turns = [math.tau * step / 48 for step in range(49)]
        return [[(x + r * math.cos(t), y + r * math.sin(t)) for t in turns]]
    left, top, wide, high = (float(shape.attrib[key]) for key in ("x", "y", "width", "height"))
    right, low = left + wide, top + high
    return [[(left, top), (right, top), (right, low), (left, low), (left, top)]]


def distance(point: Point, line: Polyline) -> float:
    """Least distance in px from a point to a polyline."""
    least = min(math.dist(point, corner) for corner in line)
    for a, b in pairwise(line):
        length = math.dist(a, b)
        if length == 0:
            continue
        along = ((point[0] - a[0]) * (b[0] - a[0]) + (point[1] - a[1]) * (b[1] - a[1])) / length
        if 0 <= along <= length:
            foot = (a[0] + (b[0] - a[0]) * along / length, a[1] + (b[1] - a[1]) * along / length)
            least = min(least, math.dist(point, foot))
    return least


def reaches(kind: str, point: Point, states: frozenset[str]) -> bool:
    """Whether a stroke, or a filled disc around it, lies at the point."""
    for shape, style in shown(read(kind), states):
        if name(shape) == "text":
            continue
        near = min(distance(point, line) for line in outline(shape))
        if style.get("stroke", "none") != "none" and near <= 1.5:
            return True
        if name(shape) == "circle" and style.get("fill") == INK:
            centre = (float(shape.attrib["cx"]), float(shape.attrib["cy"]))
            if math.dist(point, centre) <= float(shape.attrib["r"]):
                return True
    return False


def situations(kind: str) -> list[frozenset[str]]:
    """No state, each state alone, and the shelf's form."""
    words = [*sorted(STATES.get(kind, set())), "small"]
    return [frozenset(), *(frozenset({word}) for word in words)]


def test_there_is_one_drawing_for_each_kind() -> None:
    assert {path.stem for path in ICONS.glob("*.svg")} == set(PORTS)
    assert all(path.suffix == ".svg" for path in ICONS.iterdir())


@pytest.mark.parametrize("kind", PORTS)
def test_only_the_allowed_elements_attributes_and_colours(kind: str) -> None:
    for element in read(kind).iter():
        assert element.tag.startswith(SVG)
        assert name(element) in ALLOWED
        assert set(element.attrib) <= ALLOWED[name(element)], name(element)
        for key in {"fill", "stroke"} & set(element.attrib):
            assert element.attrib[key] in COLOURS | {"none"}


@pytest.mark.parametrize("kind", PORTS)
def test_paths_hold_whole_absolute_commands(kind: str) -> None:
    for shape in read(kind).iter(f"{SVG}path"):
        d = shape.attrib["d"]
        assert re.fullmatch(rf"(?:[MLHVCQAZ]|{NUMBER}|[ ,])+", d), d
        assert d.startswith("M")
        for letter, rest in re.findall(r"([A-Z])([^A-Z]*)", d):
            size, count = ARGUMENTS[letter], len(numbers(rest))
            assert count == 0 if size == 0 else count > 0 and count % size == 0, d


@pytest.mark.parametrize("kind", PORTS)
def test_title_and_description_say_what_it_is(kind: str) -> None:
    root = read(kind)
    title, desc = root.findtext(f"{SVG}title", ""), root.findtext(f"{SVG}desc", "")
    assert re.fullmatch(r"[A-Z][a-z -]+", title)
    assert desc.endswith(".") and desc.count(".") == 1
    assert re.search(r"after (ISO 14617-\d+|BS 1553-1)|common practice", desc)


@pytest.mark.parametrize("kind", PORTS)
def test_view_box_is_the_footprint_and_its_margin(kind: str) -> None:
    root = read(kind)
    left, top, width, height = view_box(root)
    across, down = FOOTPRINT.get(kind, (2, 2))
    assert (left, top) == (-width / 2, -height / 2)
    assert width >= across * SQUARE + 32 and height >= down * SQUARE + 32
    assert (float(root.attrib["width"]), float(root.attrib["height"])) == (width, height)


@pytest.mark.parametrize("kind", PORTS)
def test_nothing_is_clipped_in_any_state(kind: str) -> None:
    left, top, width, height = view_box(read(kind))
    for states in situations(kind):
        for shape, style in shown(read(kind), states):
            if name(shape) == "text":
                continue
            reach = float(style["stroke-width"]) / 2 if style["stroke"] != "none" else 0
            for x, y in (point for line in outline(shape) for point in line):
                assert left <= x - reach and x + reach <= left + width, (states, x, y)
                assert top <= y - reach and y + reach <= top + height, (states, x, y)


@pytest.mark.parametrize("kind", PORTS)
def test_states_are_those_of_the_kind(kind: str) -> None:
    words = {
        element.attrib[key] for element in read(kind).iter() for key in STATE_WORDS & set(element.attrib)
    }
    assert words == STATES.get(kind, set()) | {"small"}


@pytest.mark.parametrize("kind", PORTS)
def test_each_state_changes_the_drawing(kind: str) -> None:
    seen = [
        tuple((name(shape), *shape.attrib.items(), *style.items()) for shape, style in parts)
        for parts in (list(shown(read(kind), states)) for states in situations(kind))
    ]
    assert len(set(seen)) == len(seen)
    assert all(seen)


@pytest.mark.parametrize(("kind", "port"), [(k, port) for k in PORTS for port in PORTS[k]])
def test_strokes_reach_the_port_in_every_state(kind: str, port: str) -> None:
    x, y = PORTS[kind][port]
    point = (x * SQUARE, y * SQUARE)
    for states in situations(kind):
        if "small" not in states:
            assert reaches(kind, point, states) != ((kind, port) in IN_THE_AIR), states


@pytest.mark.parametrize("kind", PORTS)
def test_strokes_are_of_the_sheet_and_of_the_shelf(kind: str) -> None:
    scale = SHELF / max(view_box(read(kind))[2:])
    for states in situations(kind):
        strokes = [s for shape, s in shown(read(kind), states) if s["stroke"] != "none"]
        widths = {float(style["stroke-width"]) for style in strokes}
        if "small" in states:
            assert all(0.9 <= width * scale <= 2.0 for width in widths)
            assert any(abs(width * scale - 1.6) <= 0.1 for width in widths)
        else:
            assert widths <= {1.25, 1.5, 1.75, 2.0, 2.5, 4.5}


@pytest.mark.parametrize("kind", PORTS)
def test_shelf_form_is_large_enough_to_tell(kind: str) -> None:
    root = read(kind)
    scale = SHELF / max(view_box(root)[2:])
    shapes = [shape for shape, _ in shown(root, frozenset({"small"}))]
    points = [point for shape in shapes for line in outline(shape) for point in line]
    across = max(x for x, _ in points) - min(x for x, _ in points)
    down = max(y for _, y in points) - min(y for _, y in points)
    assert 20 <= max(across, down) * scale <= SHELF


@pytest.mark.parametrize("kind", PORTS)
def test_letters_stand_in_a_group_that_keeps_them_upright(kind: str) -> None:
    root = read(kind)
    kept = [group for group in root.iter(f"{SVG}g") if "data-upright" in group.attrib]
    letters = list(root.iter(f"{SVG}text"))
    assert [text for group in kept for text in group] == letters
    for group, text in zip(kept, letters, strict=True):
        x, y = numbers(group.attrib["data-upright"])
        assert float(text.attrib["x"]) == x and 3 <= float(text.attrib["y"]) - y <= 4.5
        assert (text.get("font-size"), text.get("font-weight")) == ("11", "bold")
        assert text.text in {"M", "T"}


@pytest.mark.parametrize("states", [frozenset(), frozenset({"small"})], ids=["sheet", "shelf"])
def test_no_two_kinds_are_drawn_alike(states: frozenset[str]) -> None:
    drawn = {
        tuple((name(shape), *shape.attrib.items()) for shape, _ in shown(read(kind), states))
        for kind in PORTS
    }
    assert len(drawn) == len(PORTS)

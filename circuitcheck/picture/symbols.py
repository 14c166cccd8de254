"""Symbols: the marks of a kind of part, read from its file in icons/ by state, turn and mirror."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from functools import cache
from xml.etree import ElementTree

from circuitcheck.geometry import turned
from circuitcheck.picture import paths
from circuitcheck.picture.marks import Fill, Mark, Path, Stroke, TextMark, extent, moved_path, turned_path
from circuitcheck.shipped import data_path

ROLES: Mapping[str, str] = {
    "#1D2126": "ink",
    "#54595F": "ink_2",
    "#FFFFFF": "body",
    "#FCFBF7": "paper",
    "#C23B0A": "flow",
    "#1D5FC4": "return_",
    "#0A6E6E": "cold",
    "#DDE8E4": "water_tint",
    "#F6DDD3": "flame_tint",
    "#DDD8CC": "gas_tint",
    "#8A4A5E": "coil_middle",
}
"""The colours a symbol may hold, and the role each stands for."""

NO_STATES: frozenset[str] = frozenset()
_STYLE = (
    "fill",
    "stroke",
    "stroke-width",
    "stroke-dasharray",
    "stroke-linecap",
    "stroke-linejoin",
    "font-size",
    "font-weight",
    "text-anchor",
)
_WEIGHTS = {"normal": 400, "bold": 700}
_SPACE = "{http://www.w3.org/2000/svg}"
Style = dict[str, str]


@cache
def symbol(
    kind: str, states: frozenset[str] = NO_STATES, turn: int = 0, mirrored: bool = False
) -> tuple[Mark, ...]:
    """The marks of a kind about its centre 0,0, in px.

    `states` are those of the file's `data-when` and `data-unless` (shut, running, small, ...); one
    the kind does not know changes nothing. Raises FileNotFoundError where there is no such symbol,
    ValueError where the file holds what a symbol may not.
    """
    return tuple(_marks(_root(kind), states, {}, _Place(turn, mirrored)))


@cache
def symbol_extent(
    kind: str, states: frozenset[str] = NO_STATES, turn: int = 0, mirrored: bool = False
) -> tuple[float, float, float, float]:
    """The box round a symbol as drawn, about its centre: left, top, right, bottom in px."""
    return extent(symbol(kind, states, turn, mirrored))


@cache
def states_of(kind: str) -> frozenset[str]:
    """The states that change a kind's symbol."""
    found = (element.get(word) for element in _root(kind).iter() for word in ("data-when", "data-unless"))
    return frozenset(state for state in found if state)


@cache
def view_box(kind: str) -> tuple[float, float, float, float]:
    """The symbol's left, top, width and height in px, all of its states included."""
    left, top, width, height = (float(value) for value in _root(kind).attrib["viewBox"].split())
    return left, top, width, height


@cache
def _root(kind: str) -> ElementTree.Element:
    return ElementTree.parse(data_path("icons") / f"{kind}.svg").getroot()


class _Place:
    """Where a point of the file comes to lie: turned and mirrored, and what must stay upright."""

    def __init__(self, turn: int, mirrored: bool, shift: tuple[float, float] | None = None) -> None:
        self.turn = turn
        self.mirrored = mirrored
        self.shift = shift

    def path(self, path: Path) -> Path:
        """A path of the file where it lies."""
        if self.shift is not None:
            return moved_path(path, *self.shift)
        return turned_path(path, self.turn, self.mirrored)

    def point(self, x: float, y: float) -> tuple[float, float]:
        """A point of the file where it lies."""
        if self.shift is not None:
            return x + self.shift[0], y + self.shift[1]
        return turned((x, y), self.turn, self.mirrored)

    def upright(self, x: float, y: float) -> _Place:
        """The place of what hangs at a point and is itself not turned."""
        at = turned((x, y), self.turn, self.mirrored)
        return _Place(self.turn, self.mirrored, (at.x - x, at.y - y))


def _marks(
    element: ElementTree.Element, states: frozenset[str], above: Style, place: _Place
) -> Iterator[Mark]:
    """The marks of an element and all in it that these states show."""
    when, unless = element.get("data-when"), element.get("data-unless")
    if (when and when not in states) or (unless and unless in states):
        return
    if "transform" in element.attrib:
        raise ValueError("a symbol may not hold a transform")
    style = {**above, **{key: element.attrib[key] for key in _STYLE if key in element.attrib}}
    if anchor := element.get("data-upright"):
        x, y = (float(value) for value in anchor.replace(",", " ").split())
        place = place.upright(x, y)
    tag = element.tag.removeprefix(_SPACE)
    if tag == "text":
        yield _text(element, style, place)
    elif tag in _OUTLINES:
        yield from _shape(place.path(_OUTLINES[tag](element)), style)
    elif tag not in ("svg", "g", "title", "desc"):
        raise ValueError(f"a symbol may not hold <{tag}>")
    for child in element:
        yield from _marks(child, states, style, place)


def _shape(path: Path, style: Style) -> Iterator[Mark]:
    fill, stroke = style.get("fill", "#1D2126"), style.get("stroke", "none")
    if fill != "none":
        yield Fill(path, _role(fill))
    if stroke == "none":
        return
    dash = style.get("stroke-dasharray", "none")
    yield Stroke(
        path,
        _role(stroke),
        float(style.get("stroke-width", "1")),
        () if dash == "none" else tuple(float(v) for v in dash.replace(",", " ").split()),
        "round" if style.get("stroke-linecap") == "round" else "flat",
        "round" if style.get("stroke-linejoin") == "round" else "mitre",
    )


def _text(element: ElementTree.Element, style: Style, place: _Place) -> TextMark:
    x, y = place.point(float(element.attrib["x"]), float(element.attrib["y"]))
    weight = style.get("font-weight", "normal")
    return TextMark(
        element.text or "",
        x,
        y,
        _role(style.get("fill", "#1D2126")),
        float(style.get("font-size", "11")),
        _WEIGHTS[weight] if weight in _WEIGHTS else int(weight),
        style.get("text-anchor", "start"),
    )


def _role(colour: str) -> str:
    try:
        return ROLES[colour.upper()]
    except KeyError:
        raise ValueError(f"a symbol may not hold the colour {colour}") from None


def _numbers(element: ElementTree.Element, *names: str) -> tuple[float, ...]:
    return tuple(float(element.get(name, "0")) for name in names)


def _points(element: ElementTree.Element) -> list[tuple[float, float]]:
    values = [float(value) for value in element.attrib["points"].replace(",", " ").split()]
    return list(zip(values[::2], values[1::2], strict=True))


def _line(element: ElementTree.Element) -> Path:
    x1, y1, x2, y2 = _numbers(element, "x1", "y1", "x2", "y2")
    return paths.polyline([(x1, y1), (x2, y2)])


_OUTLINES: Mapping[str, Callable[[ElementTree.Element], Path]] = {
    "path": lambda e: paths.parse(e.attrib["d"]),
    "line": _line,
    "circle": lambda e: paths.circle(*_numbers(e, "cx", "cy", "r")),
    "ellipse": lambda e: paths.ellipse(*_numbers(e, "cx", "cy", "rx", "ry")),
    "rect": lambda e: paths.rectangle(*_numbers(e, "x", "y", "width", "height", "rx")),
    "polyline": lambda e: paths.polyline(_points(e)),
    "polygon": lambda e: paths.polygon(_points(e)),
}

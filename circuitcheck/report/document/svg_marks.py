"""Marks as SVG: paths and texts, in colours of their own or by class for a page's style sheet."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from html import escape

from circuitcheck.picture.labels import Rect
from circuitcheck.picture.marks import Fill, Hatch, Mark, Path, Stroke, TextMark
from circuitcheck.report.plain import plain
from circuitcheck.sheet.pictures import Picture

Colour = Callable[[str, str], str]
"""Gives an attribute for a role and a property: `stroke` or `fill`."""

_ANCHORS = {"start": "start", "middle": "middle", "end": "end"}


def by_hex(hex_of: Callable[[str], str]) -> Colour:
    """Colours as they are."""
    return lambda role, what: f'{what}="{hex_of(role)}"'


def by_class(role: str, what: str) -> str:
    """Colours by class: `f-flow` fills, `s-flow` draws lines."""
    return f'class="{what[0]}-{role.rstrip("_").replace("_", "-")}"'


def svg_text(text: str) -> str:
    """A text of a file, harmless inside SVG and HTML."""
    return escape(plain(text), quote=True)


def marks(found: Iterable[Mark], colour: Colour) -> Iterator[str]:
    """Each mark as an element."""
    for number, mark in enumerate(found):
        if isinstance(mark, TextMark):
            yield from _text(mark, colour)
        elif isinstance(mark, Fill):
            opacity = "" if mark.opacity >= 1 else f' opacity="{mark.opacity:g}"'
            yield f'<path d="{path_data(mark.path)}" {colour(mark.role, "fill")}{opacity}/>'
        elif isinstance(mark, Hatch):
            yield from _hatch(mark, colour, number)
        else:
            yield _stroke(mark, colour)


def view_box(box: Rect) -> str:
    """A box as an attribute's value."""
    left, top, right, low = box
    return f"{left:.1f} {top:.1f} {right - left:.1f} {low - top:.1f}"


def figure(picture: Picture, colour: Colour, attributes: str = "") -> Iterator[str]:
    """A picture as an element of its own, named for who cannot see it, and cut at its box."""
    yield (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="{view_box(picture.box)}" role="img" '
        f'aria-label="{svg_text(picture.words)}"{attributes}>'
    )
    yield from marks(picture.marks, colour)
    yield "</svg>"


def path_data(path: Path) -> str:
    """A path's data, to a hundredth of a px."""
    return "".join(letter + " ".join(_short(value) for value in values) for letter, values in path)


def _short(value: float) -> str:
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def _stroke(mark: Stroke, colour: Colour) -> str:
    said = [
        f'd="{path_data(mark.path)}"',
        'fill="none"',
        colour(mark.role, "stroke"),
        f'stroke-width="{mark.width:g}"',
    ]
    if mark.dash:
        said.append(f'stroke-dasharray="{" ".join(f"{each:g}" for each in mark.dash)}"')
    if mark.cap == "round":
        said.append('stroke-linecap="round"')
    said.append('stroke-linejoin="round"' if mark.join == "round" else 'stroke-miterlimit="4"')
    if mark.opacity < 1:
        said.append(f'opacity="{mark.opacity:g}"')
    return f"<path {' '.join(said)}/>"


def _text(mark: TextMark, colour: Colour) -> Iterator[str]:
    if mark.halo:
        yield _halo(mark, colour)
    anchor = "" if mark.anchor == "start" else f' text-anchor="{_ANCHORS[mark.anchor]}"'
    yield (
        f'<text x="{_short(mark.x)}" y="{_short(mark.y)}" font-size="{mark.size:g}" font-weight="{mark.weight}"'
        f"{anchor} {colour(mark.role, 'fill')}>{svg_text(mark.text)}</text>"
    )


def _halo(mark: TextMark, colour: Colour) -> str:
    left, top, right, low = halo_box(mark)
    return (
        f'<rect x="{_short(left)}" y="{_short(top)}" width="{_short(right - left)}" '
        f'height="{_short(low - top)}" rx="4" {colour("paper", "fill")}/>'
    )


def halo_box(mark: TextMark) -> Rect:
    """The paper kept clear behind a text, as the sheet has it."""
    from circuitcheck.picture.lettering import width

    wide = width(mark.text, mark.size, mark.weight)
    left = mark.x - {"start": 0.0, "middle": wide / 2, "end": wide}[mark.anchor]
    top = mark.y - 0.75 * mark.size
    return left - mark.halo, top - mark.halo / 2, left + wide + mark.halo, top + mark.size + mark.halo / 2


def _hatch(mark: Hatch, colour: Colour, number: int) -> Iterator[str]:
    name = f"hatch{number}"
    yield (
        f'<defs><pattern id="{name}" width="{mark.pitch:g}" height="{mark.pitch:g}" patternUnits="userSpaceOnUse" '
        f'patternTransform="rotate(45)"><path d="M0 0V{mark.pitch:g}" {colour(mark.role, "stroke")} '
        f'stroke-width="{mark.width:g}"/></pattern></defs>'
        f'<path d="{path_data(mark.path)}" fill="url(#{name})" opacity="{mark.opacity:g}"/>'
    )

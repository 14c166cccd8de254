"""Paths: reading the path data of a symbol, and the outlines of circles and rectangles."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from math import acos, ceil, cos, hypot, pi, sin, sqrt, tan, tau

from circuitcheck.picture.marks import Path, Step

KAPPA = 0.5522847498
"""How far the control points of a quarter circle of radius 1 lie from its ends."""

_ARGUMENTS = {"M": 2, "L": 2, "H": 1, "V": 1, "C": 6, "Q": 4, "A": 7, "Z": 0}
_TOKEN = re.compile(r"[A-Za-z]|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?")


def parse(data: str) -> Path:
    """A path from its data, absolute commands only, as moves, lines and cubic curves.

    Raises ValueError for a relative or unknown command, or numbers that do not fill a command.
    """
    steps: list[Step] = []
    x = y = start_x = start_y = 0.0
    for letter, v in _commands(data):
        if letter == "M":
            steps.append(("M", (v[0], v[1])))
            start_x, start_y = v[0], v[1]
        elif letter in "LHV":
            to = {"L": (v[0], v[-1]), "H": (v[0], y), "V": (x, v[0])}[letter]
            steps.append(("L", to))
        elif letter == "C":
            steps.append(("C", tuple(v)))
        elif letter == "Q":
            steps.append(("C", _raised((x, y), v)))
        elif letter == "A":
            steps.extend(("C", curve) for curve in _arc((x, y), v))
        else:
            steps.append(("Z", ()))
        x, y = steps[-1][1][-2:] if letter != "Z" else (start_x, start_y)
    return tuple(steps)


def _commands(data: str) -> Iterator[tuple[str, list[float]]]:
    """Each command with one set of numbers; a repeated move is a line, as SVG has it."""
    tokens = _TOKEN.findall(data)
    index = 0
    while index < len(tokens):
        letter = tokens[index]
        index += 1
        if letter not in _ARGUMENTS:
            raise ValueError(f"a path may not hold {letter!r}")
        size = _ARGUMENTS[letter]
        if size == 0:
            yield letter, []
            continue
        first = True
        while first or (index < len(tokens) and not tokens[index].isalpha()):
            values = [float(token) for token in tokens[index : index + size] if not token.isalpha()]
            if len(values) != size:
                raise ValueError(f"{letter} takes {size} numbers")
            yield ("L" if letter == "M" and not first else letter), values
            index += size
            first = False


def _raised(start: tuple[float, float], v: Sequence[float]) -> tuple[float, ...]:
    """A quadratic curve as a cubic one."""
    (x, y), (qx, qy, tx, ty) = start, v
    return (
        x + 2 / 3 * (qx - x),
        y + 2 / 3 * (qy - y),
        tx + 2 / 3 * (qx - tx),
        ty + 2 / 3 * (qy - ty),
        tx,
        ty,
    )


def _arc(start: tuple[float, float], v: Sequence[float]) -> list[tuple[float, ...]]:
    """An elliptical arc as cubic curves; the centre form of SVG 1.1, appendix F.6.5."""
    rx, ry, tilt, large, sweep, tx, ty = v
    if rx == 0 or ry == 0 or (tx, ty) == start:
        return [(*start, tx, ty, tx, ty)]
    phi = tilt * pi / 180
    c, s = cos(phi), sin(phi)
    hx, hy = (start[0] - tx) / 2, (start[1] - ty) / 2
    px, py = c * hx + s * hy, -s * hx + c * hy
    grow = sqrt(max(1.0, (px / rx) ** 2 + (py / ry) ** 2))
    rx, ry = abs(rx) * grow, abs(ry) * grow
    spare = max(0.0, (rx * ry) ** 2 / ((rx * py) ** 2 + (ry * px) ** 2) - 1)
    root = sqrt(spare) * (-1 if bool(large) == bool(sweep) else 1)
    ox, oy = root * rx * py / ry, -root * ry * px / rx
    cx, cy = c * ox - s * oy + (start[0] + tx) / 2, s * ox + c * oy + (start[1] + ty) / 2
    first = _angle((px - ox) / rx, (py - oy) / ry)
    span = (_angle((-px - ox) / rx, (-py - oy) / ry) - first) % tau
    if not sweep:
        span -= tau
    parts = max(1, ceil(abs(span) / (pi / 2) - 1e-9))
    step = span / parts
    reach = 4 / 3 * tan(step / 4)
    curves = []
    for index in range(parts):
        a, b = first + index * step, first + (index + 1) * step
        local = (
            (cos(a) - reach * sin(a), sin(a) + reach * cos(a)),
            (cos(b) + reach * sin(b), sin(b) - reach * cos(b)),
            (cos(b), sin(b)),
        )
        curve: list[float] = []
        for ux, uy in local:
            curve += [cx + c * rx * ux - s * ry * uy, cy + s * rx * ux + c * ry * uy]
        curves.append(tuple(curve))
    return curves


def _angle(x: float, y: float) -> float:
    """The angle of a direction, 0 to a whole turn."""
    angle = acos(max(-1.0, min(1.0, x / hypot(x, y))))
    return angle if y >= 0 else tau - angle


def ellipse(cx: float, cy: float, rx: float, ry: float) -> Path:
    """A whole ellipse."""
    kx, ky = rx * KAPPA, ry * KAPPA
    return (
        ("M", (cx + rx, cy)),
        ("C", (cx + rx, cy + ky, cx + kx, cy + ry, cx, cy + ry)),
        ("C", (cx - kx, cy + ry, cx - rx, cy + ky, cx - rx, cy)),
        ("C", (cx - rx, cy - ky, cx - kx, cy - ry, cx, cy - ry)),
        ("C", (cx + kx, cy - ry, cx + rx, cy - ky, cx + rx, cy)),
        ("Z", ()),
    )


def circle(cx: float, cy: float, r: float) -> Path:
    """A whole circle."""
    return ellipse(cx, cy, r, r)


def rectangle(x: float, y: float, width: float, height: float, radius: float = 0.0) -> Path:
    """A rectangle from its top left corner, its corners rounded by `radius` px."""
    r = min(radius, width / 2, height / 2)
    if r <= 0:
        return polygon([(x, y), (x + width, y), (x + width, y + height), (x, y + height)])
    k = r * (1 - KAPPA)
    right, low = x + width, y + height
    return (
        ("M", (x + r, y)),
        ("L", (right - r, y)),
        ("C", (right - k, y, right, y + k, right, y + r)),
        ("L", (right, low - r)),
        ("C", (right, low - k, right - k, low, right - r, low)),
        ("L", (x + r, low)),
        ("C", (x + k, low, x, low - k, x, low - r)),
        ("L", (x, y + r)),
        ("C", (x, y + k, x + k, y, x + r, y)),
        ("Z", ()),
    )


def polygon(points: Sequence[tuple[float, float]]) -> Path:
    """A closed outline through the points."""
    return (*polyline(points), ("Z", ()))


def polyline(points: Sequence[tuple[float, float]]) -> Path:
    """Straight lines through the points."""
    return tuple(("L" if index else "M", (x, y)) for index, (x, y) in enumerate(points))

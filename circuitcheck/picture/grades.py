"""The marks of grades, of joints that come and go, and pills: each told by its outline, not its colour."""

from __future__ import annotations

from math import cos, pi, sin

from circuitcheck.finding import Grade
from circuitcheck.picture import paths
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import Fill, Mark, Path, Stroke, TextMark

RADIUS = 9.0
RING = 2.0
"""How wide the ring of paper round a mark is, in px."""
PILL_HIGH = 18.0
DIAMOND = 6.0

ROLES = {
    Grade.DANGER: "danger",
    Grade.FAULT: "fault",
    Grade.ADVICE: "advice",
    Grade.UNANSWERED: "unanswered",
}
"""The colour role of each grade."""


def outline(grade: Grade, x: float, y: float, radius: float = RADIUS) -> Path:
    """A grade's silhouette: octagon, diamond, disc, or square."""
    if grade is Grade.DANGER:
        turns = [pi / 8 + index * pi / 4 for index in range(8)]
        reach = radius / cos(pi / 8)
        return paths.polygon([(x + reach * cos(t), y + reach * sin(t)) for t in turns])
    if grade is Grade.FAULT:
        return diamond(x, y, radius * 1.2)
    if grade is Grade.ADVICE:
        return paths.circle(x, y, radius)
    side = radius * 1.8
    return paths.rectangle(x - side / 2, y - side / 2, side, side, 2.5)


def diamond(x: float, y: float, reach: float) -> Path:
    """A square on its corner."""
    return paths.polygon([(x, y - reach), (x + reach, y), (x, y + reach), (x - reach, y)])


def grade_mark(grade: Grade, x: float, y: float) -> tuple[Mark, ...]:
    """A grade's mark about its middle: its silhouette in a ring of paper, and its glyph."""
    ring = Fill(outline(grade, x, y, RADIUS + RING), "paper")
    shape = outline(grade, x, y)
    if grade is Grade.DANGER:
        return (ring, Fill(shape, "danger"), *_exclamation(x, y, "danger_text"))
    if grade is Grade.FAULT:
        glyph = Stroke(_cross(x, y, 3), "fault_text", 1.75, cap="round")
        return (ring, Fill(shape, "fault"), Stroke(shape, "fault_text", 1.25), glyph)
    if grade is Grade.ADVICE:
        return (ring, Fill(shape, "advice"), *_letter_i(x, y, "advice_text"))
    question = TextMark("?", x, y + 4.2, "unanswered", 12, 700)
    return (ring, Fill(shape, "body"), Stroke(shape, "unanswered", 1.5, (3, 2)), question)


def joint_sign(x: float, y: float, *, comes: bool) -> tuple[Mark, ...]:
    """A plus disc where a joint comes, a minus disc where one goes."""
    role = "cure" if comes else "ink_2"
    bar: Path = (("M", (x - 3.5, y)), ("L", (x + 3.5, y)))
    if comes:
        bar = (*bar, ("M", (x, y - 3.5)), ("L", (x, y + 3.5)))
    on_it = "cure_text" if comes else "paper"
    return (
        Fill(paths.circle(x, y, 8.5), "paper"),
        Fill(paths.circle(x, y, 7), role),
        Stroke(bar, on_it, 1.75, cap="round"),
    )


def pill_size(text: str) -> tuple[float, float]:
    """How wide and high a pill with this text is, in px."""
    return width(text, 12, 600) + 16, PILL_HIGH


def pill(text: str, x: float, y: float, role: str, text_role: str) -> tuple[Mark, ...]:
    """A word in a filled pill about its middle."""
    wide, high = pill_size(text)
    shape = paths.rectangle(x - wide / 2, y - high / 2, wide, high, high / 2)
    return (Fill(shape, role), TextMark(text, x, y + 4, text_role, 12, 600))


def open_port_mark(x: float, y: float, faces: tuple[int, int] | None) -> tuple[Mark, ...]:
    """An open port: the diamond of a fault on it, and a dotted stub of one square that calls for a pipe."""
    shape = diamond(x, y, DIAMOND)
    marks: list[Mark] = []
    if faces is not None:
        stub: Path = (("M", (x, y)), ("L", (x + faces[0] * 20, y + faces[1] * 20)))
        marks.append(Stroke(stub, "ink", 2, (0.01, 3.99), "round"))
    return (*marks, Fill(shape, "fault"), Stroke(shape, "fault_text", 1.25))


def port_ring(x: float, y: float) -> tuple[Mark, ...]:
    """A port where a pipe may begin: a ring of 4 px."""
    ring = paths.circle(x, y, 4)
    return (Fill(ring, "paper"), Stroke(ring, "select", 1.5))


def _exclamation(x: float, y: float, role: str) -> tuple[Mark, ...]:
    stem: Path = (("M", (x, y - 5)), ("L", (x, y + 0.75)))
    return Stroke(stem, role, 2.25, cap="round"), Fill(paths.circle(x, y + 4.5, 1.4), role)


def _letter_i(x: float, y: float, role: str) -> tuple[Mark, ...]:
    stem: Path = (("M", (x, y - 0.75)), ("L", (x, y + 4.5)))
    return Fill(paths.circle(x, y - 4.5, 1.4), role), Stroke(stem, role, 2.25, cap="round")


def _cross(x: float, y: float, reach: float) -> Path:
    return (
        ("M", (x - reach, y - reach)),
        ("L", (x + reach, y + reach)),
        ("M", (x + reach, y - reach)),
        ("L", (x - reach, y + reach)),
    )

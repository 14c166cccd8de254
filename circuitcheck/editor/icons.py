"""Icons painted from the picture's marks: a kind's symbol, a grade's mark, the arrows of undo and redo."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPixmap

from circuitcheck.editor.screens import densest
from circuitcheck.editor.sheet.painting import Palette, Prepared, Tone
from circuitcheck.editor.theme import Theme
from circuitcheck.finding import Grade
from circuitcheck.picture import paths
from circuitcheck.picture.grades import RADIUS, RING, grade_mark
from circuitcheck.picture.marks import Fill, Mark, Stroke
from circuitcheck.picture.symbols import symbol, view_box

SMALL = frozenset({"small"})
SHELF_PX = 28
GRADE_PX = 22
WITNESS_PX = 22
ARROW_PX = 22

Box = tuple[float, float, float, float]


def icon(
    marks: Sequence[Mark],
    box: Box,
    px: int,
    theme: Theme,
    tone: Tone = Tone.PLAIN,
    *,
    keeps_colour: bool = False,
) -> QIcon:
    """Marks as an icon of so many px, sharp on every screen there is; disabled, it is quiet or keeps its colour."""
    made = QIcon()
    off = tone if keeps_colour else Tone.QUIET
    for painted, modes in (
        (tone, (QIcon.Mode.Normal, QIcon.Mode.Selected)),
        (off, (QIcon.Mode.Disabled,)),
    ):
        ready = Prepared(marks, Palette(theme, painted))
        for ratio in range(1, densest() + 1):
            pixmap = _pixmap(ready, box, px * ratio)
            pixmap.setDevicePixelRatio(ratio)
            for mode in modes:
                # Without one of its own a selected symbol is washed over by the style.
                made.addPixmap(pixmap, mode)
    return made


def _pixmap(marks: Prepared, box: Box, side: int) -> QPixmap:
    """The marks' box on a clear square of so many device pixels, its proportions kept."""
    made = QPixmap(side, side)
    made.fill(QColor(Qt.GlobalColor.transparent))
    left, top, width, height = box
    scale = min(side / width, side / height)
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(side / 2, side / 2)
    painter.scale(scale, scale)
    painter.translate(-left - width / 2, -top - height / 2)
    marks.paint(painter)
    painter.end()
    return made


def kind_icon(kind: str, theme: Theme) -> QIcon:
    """The shelf form of a kind's symbol."""
    return icon(symbol(kind, SMALL), view_box(kind), SHELF_PX, theme)


def witness_icon(kind: str, theme: Theme) -> QIcon:
    """The shelf form of a valve that is shut for a proof."""
    marks = symbol(kind, frozenset({"shut", "small"}))
    return icon(marks, view_box(kind), WITNESS_PX, theme, Tone.WITNESS)


def grade_icon(grade: Grade | None, theme: Theme) -> QIcon:
    """A grade's mark; None: nothing found, a rounded square with a tick."""
    marks = _tick() if grade is None else grade_mark(grade, 0, 0)
    # The ring of paper parts a mark from pipes; in a list there are none.
    without_ring = [mark for mark in marks if getattr(mark, "role", "") != "paper"]
    reach = RADIUS + RING
    return icon(without_ring, (-reach, -reach, 2 * reach, 2 * reach), GRADE_PX, theme, keeps_colour=True)


def arrow_icon(theme: Theme, *, back: bool) -> QIcon:
    """The arrow of undo (back) or redo."""
    turn = 1.0 if back else -1.0
    head = paths.polyline([(turn * -2.5, -9), (turn * -7.5, -4), (turn * -2.5, 1)])
    tail = (
        ("M", (turn * -7.5, -4.0)),
        ("L", (turn * 2.5, -4.0)),
        ("C", (turn * 5.8, -4.0, turn * 7.5, -1.5, turn * 7.5, 1.2)),
        ("C", (turn * 7.5, 4.0, turn * 5.8, 6.5, turn * 2.5, 6.5)),
        ("L", (turn * -4.0, 6.5)),
    )
    strokes = [Stroke(path, "ink", 1.8, cap="round") for path in (head, tail)]
    return icon(strokes, (-11, -11, 22, 22), ARROW_PX, theme)


def find_icon(theme: Theme) -> QIcon:
    """A magnifying glass."""
    glass = (paths.circle(-1.5, -1.5, 5.5), paths.polyline([(2.6, 2.6), (7.5, 7.5)]))
    strokes = [Stroke(path, "ink_2", 1.6, cap="round") for path in glass]
    return icon(strokes, (-11, -11, 22, 22), ARROW_PX, theme)


def _tick() -> tuple[Mark, ...]:
    box = paths.rectangle(-RADIUS, -RADIUS, 2 * RADIUS, 2 * RADIUS, 4)
    tick = paths.polyline([(-4.5, 0.2), (-1.3, 3.4), (4.6, -3.4)])
    return Fill(box, "cure"), Stroke(tick, "cure_text", 2, cap="round")

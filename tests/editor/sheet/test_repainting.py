"""What is painted anew at a step of a drag, piece by piece, leaves the view as if all of it were painted anew."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.theme import Theme, dark, high_contrast_light, light
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

from .conftest import Hand

ROUNDING = 1
"""A level of a colour, of 255, by which Qt rounds a tint otherwise where it paints other pieces of it."""
STEPS = [*((step, step % 3) for step in range(1, 13)), (-2, 5), (0, 0)]


@pytest.fixture(scope="module")
def hall() -> Drawing:
    return read(data_path("samples") / "village-hall.wetcircuit")


@pytest.mark.parametrize("zoom", [0.75, 1.0, 1.5])
@pytest.mark.parametrize("theme", [light(), dark(), high_contrast_light()], ids=lambda theme: theme.name)
@pytest.mark.parametrize("kind", ["pump", "tee"])
def test_a_step_of_a_drag_leaves_nothing_behind(
    hand: Hand, hall: Drawing, kind: str, theme: Theme, zoom: float
) -> None:
    view, held = hand.view, next(part for part in hall.components.values() if part.kind.name == kind)
    assert held.at is not None
    view.set_theme(theme)
    hand.show(hall)
    view.zoom_to(zoom)
    view.centerOn(QPointF(held.at.x * 16, held.at.y * 16))
    QApplication.processEvents()
    hand.press(*held.at)
    seen = set()
    for x, y in STEPS:
        hand.move(held.at.x + x, held.at.y + y)
        QApplication.processEvents()
        left = shown(hand)
        view.viewport().repaint()
        assert furthest_apart(left, shown(hand)) <= ROUNDING
        seen.add(left)
    assert len(seen) > len(STEPS) / 2
    hand.release(*held.at)


def shown(hand: Hand) -> bytes:
    """What the window shows, as it was painted: nothing is painted for this."""
    window = hand.view.window()
    image = window.screen().grabWindow(window.winId()).toImage()
    return bytes(image.convertToFormat(QImage.Format.Format_RGB32).constBits())


def furthest_apart(one: bytes, other: bytes) -> int:
    """How far apart the colours are where they differ most."""
    assert one and len(one) == len(other)
    return 0 if one == other else max(abs(a - b) for a, b in zip(one, other, strict=True))

"""A selection of very many things looks as one of few does, near; and from afar each of them is seen."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint, QPointF, QRect, Qt
from PySide6.QtGui import QImage, QRegion
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet import SheetView, overlay
from circuitcheck.editor.sheet.many_selected import MANY, ManySelected
from circuitcheck.editor.theme import dark
from circuitcheck.picture.marks import SQUARE_PX
from tests.benchmarks.laid_out import houses
from tests.editor.sheet.conftest import Hand
from tests.editor.sheet.test_overview import look_from, opened, other_pixels, picture


@pytest.fixture(scope="module")
def plant() -> Drawing:
    """Four houses: so few that they are laid out at once."""
    return houses(192)


@pytest.fixture
def view(qtbot: QtBot, plant: Drawing) -> Iterator[SheetView]:
    made = opened(qtbot, plant, 1.0)
    yield made
    made.stop()


def selected(view: SheetView, count: int, monkeypatch: pytest.MonkeyPatch) -> QImage:
    """What is seen with all selected, where more than `count` are many."""
    monkeypatch.setattr(overlay, "MANY", count)
    view.select(())
    view.select_all()
    return picture(view)


@pytest.mark.parametrize("zoom", [1.0, 0.5, 2.0])
@pytest.mark.parametrize("in_dark", [False, True])
def test_near_it_looks_as_a_selection_of_few(
    zoom: float, in_dark: bool, view: SheetView, monkeypatch: pytest.MonkeyPatch
) -> None:
    if in_dark:
        view.set_theme(dark())
    look_from(view, zoom)
    none = picture(view)
    few = selected(view, 10**6, monkeypatch)
    many = selected(view, 0, monkeypatch)
    assert few != none
    assert other_pixels(few, many) == []


@pytest.mark.parametrize("zoom", [0.0625, 0.1875, 0.3125])
def test_from_afar_each_is_seen(zoom: float, view: SheetView, monkeypatch: pytest.MonkeyPatch) -> None:
    look_from(view, zoom)
    none = picture(view)
    all_of_them = selected(view, 0, monkeypatch)
    layout = view._content.layout
    for id in [*layout.boxes, *layout.lines]:
        box = view.viewportTransform().mapRect(view._content.box(id)).toAlignedRect().adjusted(-2, -2, 2, 2)
        seen = box & view.viewport().rect()
        assert seen.isEmpty() or none.copy(seen) != all_of_them.copy(seen), id
    view.select(())
    assert other_pixels(picture(view), none) == []


@pytest.mark.parametrize("zoom", [0.1875, 1.0])
def test_a_piece_of_the_view_is_painted_as_the_whole(
    zoom: float, view: SheetView, monkeypatch: pytest.MonkeyPatch
) -> None:
    look_from(view, zoom)
    whole = selected(view, 0, monkeypatch)
    piece = QRect(150, 120, 333, 217)
    painted = QImage(whole.size(), QImage.Format.Format_RGB32)
    painted.fill(0)
    view.viewport().render(painted, QPoint(), QRegion(piece))
    # What is rendered apart lies at the painter's corner.
    assert other_pixels(painted.copy(QRect(QPoint(), piece.size())), whole.copy(piece)) == []


@pytest.mark.parametrize("zoom", [0.1875, 1.0])
def test_it_follows_what_moves(
    zoom: float, view: SheetView, plant: Drawing, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    look_from(view, zoom)
    selected(view, 0, monkeypatch)
    moved = move(plant, [next(iter(plant.components))], 3, 2)
    view.set_drawing(moved)
    shown = picture(view)
    fresh = opened(qtbot, moved, zoom)
    fresh.zoom_to(zoom)
    fresh.horizontalScrollBar().setValue(view.horizontalScrollBar().value())
    fresh.verticalScrollBar().setValue(view.verticalScrollBar().value())
    assert other_pixels(selected(fresh, 0, monkeypatch), shown) == []
    fresh.stop()


def test_to_hover_over_one_of_many_makes_nothing_of_them_anew(
    view: SheetView, monkeypatch: pytest.MonkeyPatch
) -> None:
    selected(view, 0, monkeypatch)
    anew: list[frozenset[str]] = []
    monkeypatch.setattr(ManySelected, "show", lambda many, ids: anew.append(ids))
    overlay_ = view._stage.overlay
    overlay_.show_hover(next(iter(view._content.layout.boxes)))
    overlay_.show_focus(next(iter(view._content.layout.boxes)))
    assert anew == []
    overlay_.refresh()
    assert anew == [view.selected_ids()]


@pytest.mark.parametrize("zoom", [0.1875, 1.0])
def test_on_the_move_its_frames_go_ahead_of_it(zoom: float, view: SheetView, plant: Drawing) -> None:
    hand = Hand(view)
    look_from(view, zoom)
    view.select_all()
    assert len(view.selected_ids()) > MANY
    standing = picture(view)
    id, start = in_the_middle(view, plant)
    hand.press(start.x(), start.y())
    hand.move(start.x() + 3, start.y())
    hand.move(start.x() + 20, start.y() + 10)
    ahead = picture(view)
    # The drawing stands still, and the frames do not.
    assert view._content.drawing is plant and hand.steps == []
    assert other_pixels(standing, ahead)
    hand.release(start.x() + 20, start.y() + 10)
    assert len(hand.steps) == 1
    at, was = hand.drawing.components[id].at, plant.components[id].at
    assert at is not None and was is not None and (at.x - was.x, at.y - was.y) == (20, 10)
    landed = picture(view)
    view._stage.overlay.refresh()
    assert other_pixels(landed, picture(view)) == []
    assert view._stage.overlay._many._off == QPointF()


def test_left_on_the_move_all_is_as_it_was(view: SheetView, plant: Drawing) -> None:
    hand = Hand(view)
    view.select_all()
    standing = picture(view)
    _, start = in_the_middle(view, plant)
    hand.press(start.x(), start.y())
    hand.move(start.x() + 9, start.y() + 4)
    assert other_pixels(standing, picture(view))
    hand.key(Qt.Key.Key_Escape)
    assert hand.steps == [] and view._stage.drawing is plant
    view._stage.overlay.show_hover(None)
    assert other_pixels(standing, picture(view)) == []


def in_the_middle(view: SheetView, drawing: Drawing) -> tuple[str, QPointF]:
    """The part nearest to the middle of the view, and its own middle in squares."""
    middle = view._scroller.seen().center()

    def off(id: str) -> float:
        return (view._content.box(id).center() - middle).manhattanLength()

    id = min(drawing.components, key=off)
    return id, view._content.box(id).center() / SQUARE_PX

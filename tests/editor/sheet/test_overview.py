"""The sheet from far off: an edit reads and paints no more than what changed, and leaves what a fresh sheet shows."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import NDArray
from PySide6.QtCore import QPoint, QRect, QRectF
from PySide6.QtGui import QImage, QRegion
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.sheet.far_batches import FarPart, FarPipe
from circuitcheck.editor.sheet.far_grid import CELL_PX, REACH_PX, FarGrid
from circuitcheck.editor.theme import dark, light
from circuitcheck.picture.labels import Rect
from tests.benchmarks.laid_out import houses

PARTS = 192
ZOOMS = (0.0625, 0.1875, 0.3125)


@pytest.fixture(scope="module")
def plant() -> Drawing:
    """Four houses: so few that they are laid out at once."""
    return houses(PARTS)


@pytest.fixture
def far(qtbot: QtBot, plant: Drawing) -> Iterator[SheetView]:
    view = opened(qtbot, plant, 0.1875)
    yield view
    view.stop()


def opened(qtbot: QtBot, drawing: Drawing, zoom: float) -> SheetView:
    view = SheetView()
    qtbot.addWidget(view)
    view.resize(900, 600)
    view.show()
    view.set_drawing(drawing)
    look_from(view, zoom)
    return view


def look_from(view: SheetView, zoom: float) -> None:
    view.zoom_to(zoom)
    view._content.lens.settled = True
    view.centerOn(view._content.bounds().center())


def picture(view: SheetView) -> QImage:
    return view.viewport().grab().toImage()


def other_pixels(one: QImage, other: QImage) -> list[tuple[int, int]]:
    """Where two pictures differ, as x and y."""
    ys, xs = np.nonzero(_numbers(one) != _numbers(other))
    return [(int(x), int(y)) for x, y in zip(xs, ys, strict=True)]


def _numbers(image: QImage) -> NDArray[np.uint32]:
    plain = image.convertToFormat(QImage.Format.Format_RGB32)
    return np.frombuffer(plain.constBits(), np.uint32).reshape(plain.height(), plain.width()).copy()


def a_part(drawing: Drawing, kind: str) -> str:
    return next(id for id, part in drawing.components.items() if part.kind.name == kind)


def moved(drawing: Drawing) -> Drawing:
    return move(drawing, [a_part(drawing, "unvented_store")], 1, -1)


def moved_far(drawing: Drawing) -> Drawing:
    return move(drawing, [a_part(drawing, "pump")], 90, 30)


def taken_out(drawing: Drawing) -> Drawing:
    return remove(drawing, [a_part(drawing, "pump")])


def carrying_something_else(drawing: Drawing) -> Drawing:
    """Without the part that tells what its pipes carry: they change their colour and lie where they lay."""
    return remove(drawing, [a_part(drawing, "cold_main")])


EDITS = (moved, moved_far, taken_out, carrying_something_else)
Edit = Callable[[Drawing], Drawing]


@pytest.mark.parametrize("edit", EDITS)
@pytest.mark.parametrize("zoom", ZOOMS)
def test_after_an_edit_from_afar_it_looks_as_if_opened_anew(
    qtbot: QtBot, far: SheetView, edit: Edit, zoom: float
) -> None:
    look_from(far, zoom)
    before = picture(far)
    exposed = QRegion()

    def expose(boxes: list[QRectF]) -> None:
        nonlocal exposed
        for box in boxes:
            exposed += far.viewportTransform().mapRect(box).toAlignedRect()

    far.scene().changed.connect(expose)
    drawing = edit(far._stage.drawing)
    far.set_drawing(drawing)
    qtbot.wait(20)
    # Whatever changes later, at the end of the view too, is not asked about.
    far.scene().changed.disconnect(expose)
    after = picture(far)
    changed = other_pixels(before, after)
    assert changed
    # What looks otherwise has been told to be painted anew.
    assert all(exposed.contains(QRect(x, y, 1, 1)) for x, y in changed)
    far._content.refresh_all()
    assert not other_pixels(after, picture(far))


@pytest.mark.parametrize("edit", EDITS)
def test_what_was_edited_near_by_is_seen_from_afar(qtbot: QtBot, far: SheetView, edit: Edit) -> None:
    before = picture(far)
    place = far._scroller.seen().center()
    far.zoom_to(1.0)
    far.set_drawing(edit(far._stage.drawing))
    look_from(far, 0.1875)
    far.centerOn(place)
    after = picture(far)
    assert other_pixels(before, after)
    far._content.refresh_all()
    assert not other_pixels(after, picture(far))


def test_an_edit_from_afar_reads_only_what_changed(far: SheetView, monkeypatch: pytest.MonkeyPatch) -> None:
    part_moved = a_part(far._stage.drawing, "unvented_store")
    read: list[str] = []
    content, overview = far._content, far._content._overview

    def part(id: str) -> FarPart:
        read.append(id)
        return content.far_part(id)

    def pipe(id: str) -> FarPipe:
        read.append(id)
        return content.far_pipe(id)

    monkeypatch.setattr(overview._symbols, "_read", part)
    monkeypatch.setattr(overview._lines, "_read", pipe)
    far._content.refresh_all()
    picture(far)
    assert part_moved in read
    read.clear()
    far.set_drawing(moved(far._stage.drawing))
    picture(far)
    assert part_moved in read and len(read) < 20
    read.clear()
    picture(far)
    assert not read


@pytest.mark.parametrize("zoom", ZOOMS)
def test_other_colours_are_seen_from_afar_without_looking_where_things_lie(
    far: SheetView, zoom: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    look_from(far, zoom)
    before = picture(far)
    parts = frozenset(list(far._stage.drawing.components)[:30])
    monkeypatch.setattr(far._content._overview, "_read_all", lambda: pytest.fail("All boxes were read anew."))
    far._content.focus(parts, {}, {}, ())
    quiet = picture(far)
    assert other_pixels(before, quiet)
    far.set_theme(dark())
    dark_and_quiet = picture(far)
    assert other_pixels(quiet, dark_and_quiet)
    monkeypatch.undo()
    far._content.refresh_all()
    assert not other_pixels(dark_and_quiet, picture(far))
    far._content.focus(None, {}, {}, ())
    far.set_theme(light())
    assert not other_pixels(before, picture(far))


def test_a_preview_from_afar_stands_out_and_goes_again(far: SheetView) -> None:
    before = picture(far)
    drawing = far._stage.drawing
    part = a_part(drawing, "pump")
    far._stage.preview(move(drawing, [part], 3, 0), (part,))
    assert other_pixels(before, picture(far))
    far._stage.end_preview()
    assert not other_pixels(before, picture(far))


@pytest.mark.parametrize("zoom", ZOOMS)
def test_a_piece_looks_as_it_does_in_the_whole(far: SheetView, zoom: float) -> None:
    look_from(far, zoom)
    whole = picture(far)
    for piece in (QRect(300, 200, 64, 48), QRect(451, 333, 7, 120), QRect(0, 0, 450, 300)):
        assert far.viewport().grab(piece).toImage() == whole.copy(piece)


def test_zoomed_to_and_fro_and_scrolled_it_looks_as_if_opened_anew(far: SheetView) -> None:
    """Where symbols are painted is kept for one zoom, and for one pixmap: until the zoom is settled, another's."""
    seen = []
    for zoom, settled, aside in ((0.25, False, 0), (0.25, True, 0), (0.25, True, 37), (0.1875, True, 37)):
        look_from(far, zoom)
        far._content.lens.settled = settled
        far._scroller.by(QPoint(aside, -aside))
        seen.append(picture(far))
        far._content._overview.renew_all()
        assert not other_pixels(seen[-1], picture(far))
    assert all(other_pixels(one, other) for one, other in pairwise(seen))


class TestGrid:
    def made(self, boxes: dict[str, Rect]) -> tuple[FarGrid[str, str], list[str]]:
        """A grid of letters whose batches are words, and the letters that were read."""
        asked: list[str] = []

        def read(id: str) -> str:
            asked.append(id)
            return id

        grid: FarGrid[str, str] = FarGrid(read, "".join)
        for id, box in boxes.items():
            grid.put(id, box)
        return grid, asked

    def test_a_thing_is_read_once_and_again_where_it_changed(self) -> None:
        aside = 3 * CELL_PX
        grid, asked = self.made({"b": (0, 0, 9, 9), "a": (20, 0, 30, 10), "c": (aside, 0, aside + 9, 9)})
        all_of_it = [(-aside, -aside, 2 * aside, 2 * aside)]
        assert grid.within(all_of_it) == grid.within(all_of_it) == ["ab", "c"]
        assert sorted(asked) == ["a", "b", "c"]
        asked.clear()
        assert grid.put("a", (aside, 20, aside + 5, 30)) == [
            (aside - REACH_PX, 20 - REACH_PX, aside + 5 + REACH_PX, 30 + REACH_PX),
            (20 - REACH_PX, -REACH_PX, 30 + REACH_PX, 10 + REACH_PX),
        ]
        assert grid.within(all_of_it) == ["b", "ac"]
        assert asked == ["a"]
        assert len(grid.put("b", None)) == 1
        assert grid.put("b", None) == []
        assert grid.within(all_of_it) == ["ac"]

    @given(
        st.dictionaries(
            st.text("abcdef", min_size=1, max_size=2),
            st.tuples(*[st.floats(-3 * CELL_PX, 3 * CELL_PX, width=32)] * 2),
            max_size=12,
        ),
        st.tuples(*[st.floats(-3 * CELL_PX, 3 * CELL_PX, width=32)] * 2),
    )
    def test_filled_at_once_it_is_as_put_one_by_one(
        self, places: dict[str, tuple[float, float]], at: tuple[float, float]
    ) -> None:
        boxes: dict[str, Rect] = {id: (x, y, x + 40, y + 9) for id, (x, y) in places.items()}
        one_by_one, _ = self.made(boxes)
        at_once, asked = self.made({"a": (0, 0, 5, 5), "z": (-9e3, 0, 9e3, 5)})
        at_once.fill(boxes)
        everywhere: list[Rect] = [(-1e6, -1e6, 1e6, 1e6)]
        seen: list[Rect] = [(at[0], at[1], at[0] + CELL_PX, at[1] + CELL_PX)]
        for box in (seen, everywhere):
            assert at_once.within(box) == one_by_one.within(box)
        assert sorted(asked) == sorted(boxes)
        assert at_once.put("a", (1, 1, 2, 2))[1:] == one_by_one.put("a", (1, 1, 2, 2))[1:]
        assert at_once.within(everywhere) == one_by_one.within(everywhere)

    def test_what_looks_otherwise_is_read_again_where_it_lay(self) -> None:
        grid, asked = self.made({"b": (0, 0, 9, 9), "a": (20, 0, 30, 10)})
        grid.within([(0, 0, 5, 5)])
        asked.clear()
        grid.renew()
        assert asked == [] and grid.within([(0, 0, 5, 5)]) == ["ab"]
        assert sorted(asked) == ["a", "b"]

    def test_a_long_thing_is_found_at_both_its_ends(self) -> None:
        long = 5 * CELL_PX
        grid, _ = self.made({"p": (0, 0, long, 4), "q": (0, 0, 8, 8)})
        assert grid.within([(-1, -1, 1, 1)]) == ["q", "p"]
        assert grid.within([(long - 1, 0, long, 4)]) == ["p"]
        assert grid.within([(long - 1, 100, long, 104)]) == []


def test_what_only_looks_otherwise_is_painted_anew(far: SheetView) -> None:
    look_from(far, 0.3125)
    before = picture(far)
    drawing = far._stage.drawing
    far._content.show_running(frozenset(list(drawing.pipes)[:40]), {})
    pale = picture(far)
    assert other_pixels(before, pale)
    far._content.show_running(
        frozenset(list(drawing.pipes)[:40]), {a_part(drawing, "zone_valve"): frozenset({"shut"})}
    )
    assert other_pixels(pale, picture(far))
    far._content.show_running(frozenset(), {})
    assert not other_pixels(before, picture(far))

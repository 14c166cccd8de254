"""What the pipes of a large drawing carry is read beside the window, and comes to be as if it had been read at once."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from threading import Event

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet import SheetView, serving
from circuitcheck.editor.sheet.services import service_names
from circuitcheck.sheet import layout as layout_module
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.editor.sheet.test_overview import other_pixels, picture

HOUSE = read(data_path("samples") / "terrace-as-proposed.wetcircuit")


def without_its_store(drawing: Drawing) -> Drawing:
    return remove(drawing, ["store"])


@pytest.fixture
def gate(monkeypatch: pytest.MonkeyPatch) -> Iterator[Event]:
    """Held shut, nothing is read; every drawing counts as large."""
    opened = Event()

    def held(drawing: Drawing) -> Mapping[str, str]:
        assert opened.wait(20)
        return service_names(drawing)

    monkeypatch.setattr(serving, "service_names", held)
    monkeypatch.setattr(layout_module, "MANY_SERVED", 0)
    yield opened
    opened.set()


def opened(qtbot: QtBot, drawing: Drawing) -> SheetView:
    view = SheetView()
    qtbot.addWidget(view)
    view.resize(900, 700)
    view.show()
    view.set_drawing(drawing)
    view.fit()
    return view


@pytest.fixture
def view(qtbot: QtBot, gate: Event) -> Iterator[SheetView]:
    made = opened(qtbot, HOUSE)
    yield made
    gate.set()
    made.stop()


def served(view: SheetView, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not view._serving.is_busy)


def test_it_comes_to_be_as_if_read_at_once(view: SheetView, gate: Event, qtbot: QtBot) -> None:
    layout = view._content.layout
    assert not layout.waits_for_services and layout.service == service_names(HOUSE)
    other = without_its_store(HOUSE)
    assert service_names(other) != {id: layout.service[id] for id in other.pipes}
    view.set_drawing(other)
    assert layout.waits_for_services and view._serving.is_busy
    assert layout.service == service_names(HOUSE)
    gate.set()
    served(view, qtbot)
    assert not layout.waits_for_services
    assert layout.service == service_names(other)

    at_once = opened(qtbot, other)
    for one in (view, at_once):
        one.fit()
        one._content.lens.settled = True
    fresh = at_once._content.layout
    assert (layout.service, layout.subtitle) == (fresh.service, fresh.subtitle)
    assert (layout.gaps, layout.labelling.captions) == (fresh.gaps, fresh.labelling.captions)
    assert layout.lines == fresh.lines
    assert other_pixels(picture(view), picture(at_once)) == []
    at_once.stop()


def test_what_joins_nothing_anew_is_not_waited_for(view: SheetView) -> None:
    view.set_drawing(move(HOUSE, [next(iter(HOUSE.components))], 1, 0))
    assert not view._serving.is_busy


def test_an_answer_that_comes_too_late_is_asked_for_again(view: SheetView, gate: Event, qtbot: QtBot) -> None:
    view.set_drawing(without_its_store(HOUSE))
    first = next(iter(HOUSE.pipes))
    last = remove(without_its_store(HOUSE), [first])
    view._stage.preview(last)
    gate.set()
    qtbot.waitUntil(lambda: not view._serving.is_busy)
    assert view._content.layout.service == service_names(HOUSE)
    view._stage.end_preview()
    served(view, qtbot)
    assert view._content.layout.service == service_names(without_its_store(HOUSE))


def test_back_where_it_was_nothing_is_waited_for(view: SheetView, gate: Event, qtbot: QtBot) -> None:
    view.set_drawing(without_its_store(HOUSE))
    view.set_drawing(HOUSE)
    assert not view._content.layout.waits_for_services
    gate.set()
    served(view, qtbot)
    assert view._content.layout.service == service_names(HOUSE)


def test_a_reading_that_fails_fails_in_the_window(
    view: SheetView, gate: Event, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    class BrokenError(Exception):
        pass

    def breaks(drawing: Drawing) -> Mapping[str, str]:
        raise BrokenError

    monkeypatch.setattr(view._serving._out, "_work_out", breaks)
    with qtbot.captureExceptions() as caught:
        monkeypatch.setattr(serving, "service_names", breaks)
        view.set_drawing(without_its_store(HOUSE))
        served(view, qtbot)
        QApplication.processEvents()
    assert [kind for kind, _, _ in caught] == [BrokenError]


def test_closing_does_not_wait_for_it_longer_than_it_asks(view: SheetView, gate: Event) -> None:
    view.set_drawing(without_its_store(HOUSE))
    gate.set()
    view.stop()
    assert not view._serving.is_busy

"""Flows on the sheet: figures clear of symbols and labels, pale pipes, shut valves, in every sample."""

from __future__ import annotations

from itertools import combinations, pairwise

import pytest
from PySide6.QtGui import QColor
from pytestqt.qtbot import QtBot

from circuitcheck.editor import theme as themes
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.sheet.painting import Palette, Tone
from circuitcheck.editor.theme import Theme
from circuitcheck.picture.labels import Rect, overlap
from circuitcheck.picture.marks import Stroke, TextMark, extent
from circuitcheck.report.flows import By, flows
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

SAMPLES = sorted(path.stem for path in data_path("samples").glob("*.wetcircuit"))
ALL = [themes.light(), themes.dark(), themes.high_contrast_light(), themes.high_contrast_dark()]


@pytest.fixture
def view(qtbot: QtBot) -> SheetView:
    made = SheetView()
    qtbot.addWidget(made)
    return made


def boxes(view: SheetView) -> dict[str, Rect]:
    """The boxes of the figures and words that stand on the sheet, by text and place."""
    marks = view.flows._item._shown
    found = {}
    for box, text in pairwise(marks):
        if isinstance(box, Stroke) and isinstance(text, TextMark):
            found[f"{text.text} at {text.x:.0f},{text.y:.0f}"] = extent([box])
    return found


@pytest.mark.parametrize("name", SAMPLES)
def test_every_figure_is_clear_of_symbols_labels_letters_and_one_another(view: SheetView, name: str) -> None:
    drawing = read(data_path("samples") / f"{name}.wetcircuit")
    view.set_drawing(drawing)
    layout = view._content.layout
    told = flows(drawing)
    for situation in told.situations[:3]:
        for by in (By.FLOW, By.VELOCITY, By.LOSS):
            view.set_flows(situation, by)
            assert bool(view.flows.figures) != all(pipe.is_still for pipe in situation.pipes.values())
            figures = {said: box for said, box in boxes(view).items() if "shut" not in said}
            assert len(figures) == len(view.flows.figures)
            for said, box in figures.items():
                met = {owner for owner in layout.obstacles.met(box) if not owner.startswith("pipe ")}
                assert not met, (situation.name, said)
            for one, other in combinations(boxes(view).values(), 2):
                assert overlap(one, other) == 0


@pytest.mark.parametrize("name", ["cottage", "terrace-as-found", "guest-house", "village-hall"])
def test_most_flows_find_room(view: SheetView, name: str) -> None:
    drawing = read(data_path("samples") / f"{name}.wetcircuit")
    view.set_drawing(drawing)
    view.set_flows(flows(drawing).situations[0], By.FLOW)
    assert view.flows.left_out <= len(view.flows.figures) / 2


def test_pipes_without_flow_are_pale_and_valves_told_shut(view: SheetView) -> None:
    drawing = read(data_path("samples") / "terrace-as-proposed.wetcircuit")
    view.set_drawing(drawing)
    told = flows(drawing).named("heating only")
    assert told is not None
    view.set_flows(told, By.FLOW)
    tones = {id: item.view.palette.tone for id, item in view._content.pipes.items()}
    for id, pipe in told.pipes.items():
        assert (tones[id] is Tone.STILL) == pipe.is_still
    assert all(tones[id] is Tone.PLAIN for id in tones.keys() - told.pipes.keys())
    (valve,) = told.shut
    assert "shut" in view._content.parts[valve].view.look.states
    assert [said for said in boxes(view) if said.startswith("shut")]
    view.set_flows(None, By.FLOW)
    assert {item.view.palette.tone for item in view._content.pipes.values()} == {Tone.PLAIN}
    assert "shut" not in view._content.parts[valve].view.look.states
    assert boxes(view) == {} and view.flows.figures == {}


def test_arrows_alone_write_nothing(view: SheetView) -> None:
    drawing = read(data_path("samples") / "cottage.wetcircuit")
    view.set_drawing(drawing)
    view.set_flows(flows(drawing).situations[0], By.NOTHING)
    assert view.flows.figures == {} and view.flows._item._shown


def test_a_preview_keeps_arrows_and_lets_figures_wait(view: SheetView) -> None:
    drawing = read(data_path("samples") / "cottage.wetcircuit")
    view.set_drawing(drawing)
    view.set_flows(flows(drawing).situations[0], By.FLOW)
    written = dict(view.flows.figures)
    view._stage.preview(drawing)
    view._stage.refresh_flows(passing=True)
    assert view.flows.figures == {} and view.flows._item._shown
    view._stage.end_preview()
    view._stage.refresh_flows()
    assert view.flows.figures == written


@pytest.mark.parametrize("theme", ALL, ids=lambda theme: theme.name)
def test_a_pale_line_can_still_be_seen(theme: Theme) -> None:
    least = 7.0 if theme.high_contrast else 3.0
    pale = Palette(theme, Tone.STILL)
    for role in ("flow", "return_", "cold", "vent", "hot", "discharge", "ink"):
        assert contrast(pale.colour(role), theme["paper"]) >= least, role
    assert pale.colour("paper") == theme["paper"]


def contrast(one: QColor, two: QColor) -> float:
    """From 1 to 21, WCAG 2.2, definition of the term."""
    low, high = sorted(0.05 + luminance(each) for each in (one, two))
    return high / low


def luminance(colour: QColor) -> float:
    parts = [
        value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4
        for value in (colour.redF(), colour.greenF(), colour.blueF())
    ]
    return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]

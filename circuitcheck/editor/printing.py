"""A picture on a printer: the same marks as on the sheet, in the colours of print, as large as the page allows."""

from __future__ import annotations

from types import MappingProxyType

from PySide6.QtCore import QMarginsF, QRectF
from PySide6.QtGui import QColor, QPageLayout, QPainter
from PySide6.QtPrintSupport import QPrinter

from circuitcheck.editor.sheet.painting import Palette, paint
from circuitcheck.editor.theme import Theme
from circuitcheck.picture.colours import ROLES, printed
from circuitcheck.sheet.pictures import Picture

MARGIN_MM = 10.0
LARGEST = 1.2
"""Points to a px at most: a small drawing is not blown up to fill the page."""


def print_picture(picture: Picture, printer: QPrinter) -> bool:
    """Paint it on one page, which is turned to where it is larger. False where the printer takes none."""
    wide, high = picture.size
    lies = QPageLayout.Orientation.Landscape if wide > high else QPageLayout.Orientation.Portrait
    printer.setPageOrientation(lies)
    printer.setPageMargins(QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM), QPageLayout.Unit.Millimeter)
    painter = QPainter()
    if not painter.begin(printer):
        return False
    try:
        page = QRectF(printer.pageLayout().paintRectPixels(printer.resolution()))
        scale = min(page.width() / wide, page.height() / high, LARGEST * printer.resolution() / 72)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate((page.width() - wide * scale) / 2, 0)
        painter.scale(scale, scale)
        painter.translate(-picture.box[0], -picture.box[1])
        painter.setClipRect(QRectF(picture.box[0], picture.box[1], wide, high))
        paint(painter, picture.marks, Palette(_print_theme()))
    finally:
        painter.end()
    return True


def _print_theme() -> Theme:
    colours = {role: QColor(printed(role)) for role in ROLES}
    return Theme("print", is_dark=False, high_contrast=False, colours=MappingProxyType(colours))

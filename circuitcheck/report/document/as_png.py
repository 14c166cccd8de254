"""The drawing as one PNG: the page of the PDF turned into pixels, so that line work and letters are the same."""

from __future__ import annotations

import io

from circuitcheck.report.document.as_svg import sheet_picture
from circuitcheck.report.document.content import Content

SCALE = 2.0
"""Pixels to a px of the sheet."""
MOST_PIXELS = 40_000_000
"""More than so many would not open everywhere: a large drawing gets fewer pixels to a px."""


def as_png(content: Content) -> bytes:
    """The file."""
    import pypdfium2
    from reportlab.pdfgen.canvas import Canvas

    from circuitcheck.report.document.pdf_marks import paint, register_fonts

    register_fonts()
    picture = sheet_picture(content)
    wide, high = picture.size
    page = io.BytesIO()
    canvas = Canvas(page, pagesize=(wide, high), invariant=1)
    paint(canvas, picture, 0, 0, 1.0)
    canvas.showPage()
    canvas.save()
    scale = min(SCALE, (MOST_PIXELS / (wide * high)) ** 0.5)
    document = pypdfium2.PdfDocument(page.getvalue())
    try:
        bitmap = document[0].render(scale=scale)
        out = io.BytesIO()
        bitmap.to_pil().save(out, format="PNG")
        return out.getvalue()
    finally:
        document.close()

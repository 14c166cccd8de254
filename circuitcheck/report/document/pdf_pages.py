"""The pages of a PDF, each held back until all are laid out: then how many there are, and on which what stands."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from reportlab.pdfgen.canvas import Canvas

from circuitcheck.report.document.pdf_marks import colour, font_name

Foot = Callable[["Pages", int, int], None]
"""Paints the foot of a page: the canvas, the page's number, how many there are."""

SIZE = 9.0


class Pages(Canvas):
    """A canvas that finishes its pages together at the end, so that one layout suffices.

    What is noted while a page is laid out (a place that a bookmark leads to, a line of the contents) is
    written when all numbers are known.
    """

    def __init__(self, *arguments: Any, **named: Any) -> None:
        super().__init__(*arguments, **named)
        self.foot: Foot | None = None
        self._held: list[dict[str, Any]] = []
        self._places: dict[int, list[tuple[str, str, int, float]]] = {}
        self._contents: dict[int, list[tuple[str, float, float, float]]] = {}
        self._page_of: dict[str, int] = {}
        self._annotationCount: int

    @property
    def page_wide(self) -> float:
        """How wide the page is, in points."""
        wide: float = self.__dict__["_pagesize"][0]
        return wide

    @property
    def laying(self) -> int:
        """The number of the page that is laid out now."""
        return len(self._held) + 1

    def note_place(self, key: str, title: str, level: int) -> None:
        """A bookmark leads here."""
        _, y = self.absolutePosition(0, 18)
        self._places.setdefault(self.laying, []).append((key, title, level, y))
        self._page_of.setdefault(key, self.laying)

    def note_contents(self, key: str, wide: float, low: float) -> None:
        """Here, so wide, stands a line of the contents that wants a place's page."""
        left, y = self.absolutePosition(0, low)
        self._contents.setdefault(self.laying, []).append((key, left, left + wide, y))

    def showPage(self) -> None:
        """Hold the page back."""
        # The state of the canvas is in its attributes; what is noted is for all pages together.
        self._held.append(dict(self.__dict__))
        # The library's own recipe for such a canvas; its types do not tell of it.
        self._startPage()  # type: ignore[attr-defined]

    def save(self) -> None:
        """Finish every page and write the file."""
        held, places, contents, page_of = self._held, self._places, self._contents, self._page_of
        foot = self.foot
        links = self._annotationCount
        for number, state in enumerate(held, start=1):
            self.__dict__.update(state)
            # Links are numbered through the whole file, those of pages laid out later too.
            self._annotationCount = links
            for key, title, level, y in places.get(number, ()):
                self.bookmarkHorizontalAbsolute(key, y)
                self.addOutlineEntry(title, key, level, closed=level == 0)
            for key, left, right, y in contents.get(number, ()):
                self.setFillColor(colour("ink"))
                self.setFont(font_name(400), SIZE)
                self.drawRightString(right, y, str(page_of.get(key, "")))
                self.linkRect("", key, (left, y - 3, right, y + SIZE), relative=0, thickness=0)
            if foot is not None:
                foot(self, number, len(held))
            links = self._annotationCount
            super().showPage()
        super().save()

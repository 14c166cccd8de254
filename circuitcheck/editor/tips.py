"""A text as a tooltip: Qt would take it for markup where it looks like it."""

from __future__ import annotations

from html import escape

from circuitcheck.editor.shortening import in_short
from circuitcheck.editor.translating import shown_told


def tip_text(text: str) -> str:
    """A text as a tooltip that shows it as it is, or how it begins where it is very long."""
    return f"<qt>{escape(in_short(shown_told(text)))}</qt>" if text else ""

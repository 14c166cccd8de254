"""What the binding holds of the items of layouts: Qt deletes them unseen, so it must hold none (`editor/nesting.py`)."""

from __future__ import annotations

import shiboken6
from PySide6.QtWidgets import QSpacerItem, QWidgetItem


def held_items() -> list[QWidgetItem | QSpacerItem]:
    """The objects that the binding made of items of layouts, which Python did not make itself."""
    return [
        each
        for each in shiboken6.getAllValidWrappers()
        if isinstance(each, QWidgetItem | QSpacerItem) and not shiboken6.createdByPython(each)
    ]

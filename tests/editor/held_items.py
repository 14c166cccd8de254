"""What the binding holds of the items of layouts: Qt deletes them unseen, so it must hold none (`editor/nesting.py`)."""

from __future__ import annotations

from collections.abc import Iterable

import shiboken6
from PySide6.QtWidgets import QSpacerItem, QWidgetItem


def held_items(wrappers: Iterable[object] | None = None) -> list[QWidgetItem | QSpacerItem]:
    """The objects that the binding made of items of layouts, which Python did not make itself, among these or all
    there are."""
    return [
        each
        for each in (shiboken6.getAllValidWrappers() if wrappers is None else wrappers)
        if isinstance(each, (QWidgetItem, QSpacerItem)) and not shiboken6.createdByPython(each)
    ]

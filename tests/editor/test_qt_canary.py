"""A canary for one fault of the Qt binding that kills the program after a few thousand calls."""

import sys

from PySide6.QtWidgets import QGraphicsRectItem, QWidget

CALLS = 1_000
# What else may happen in the meantime: caches, the interpreter's own counting.
TOLERATED = 50


def test_void_calls_keep_their_references_to_none(qapp: object) -> None:
    """From Python 3.12 on None is immortal and the count stands still; before, a loss ends in an abort."""
    item = QGraphicsRectItem(0, 0, 1, 1)
    widget = QWidget()
    before = sys.getrefcount(None)
    for step in range(CALLS // 2):
        item.setPos(step, step)
        widget.setEnabled(bool(step % 2))
    assert sys.getrefcount(None) > before - TOLERATED

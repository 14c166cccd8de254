"""The sheet: the paper on which a circuit is drawn, one file a gesture."""

from circuitcheck.editor.sheet.view import SheetView

__all__ = ["SheetView"]

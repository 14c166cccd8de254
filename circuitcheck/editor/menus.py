"""The menus of the bar, each in its place from the first moment; what belongs to it fills it later."""

from __future__ import annotations

from PySide6.QtWidgets import QMenuBar

from circuitcheck.editor.translating import tr


class Menus:
    """Makes them, empty."""

    def __init__(self, bar: QMenuBar) -> None:
        self.file = bar.addMenu(tr("&File"))
        self.edit = bar.addMenu(tr("&Edit"))
        self.view = bar.addMenu(tr("&View"))
        self.arrange = bar.addMenu(tr("&Arrange"))
        self.windows = bar.addMenu(tr("&Window"))
        self.review = bar.addMenu(tr("&Review"))
        self.learn = bar.addMenu(tr("&Learn"))
        self.help = bar.addMenu(tr("&Help"))

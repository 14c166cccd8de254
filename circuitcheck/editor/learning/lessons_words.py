"""The sentences of a lesson: what it is about, what is wrong in the drawing, what comes of it, the remedy."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QVBoxLayout, QWidget

from circuitcheck.checks.catalogue import checks
from circuitcheck.editor import plain
from circuitcheck.editor.translating import tr
from circuitcheck.lessons.lesson import Lesson

MOST_PX = 720
"""Longer lines are hard to read."""


class LessonWords(QScrollArea):
    """Shows the text of a check, and the sentences particular to its drawing once these are worked out."""

    def __init__(self) -> None:
        super().__init__()
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(tr("The lesson’s sentences"))
        self._inside = QWidget()
        self._inside.setObjectName("panel")
        self._inside.setMaximumWidth(MOST_PX)
        self._column = QVBoxLayout(self._inside)
        self._column.setContentsMargins(16, 12, 16, 8)
        self._column.setSpacing(4)
        self.setWidget(self._inside)

    @property
    def text(self) -> str:
        """All that is shown."""
        labels = self._inside.findChildren(QLabel)
        return "\n".join(each.text() for each in labels)

    def show_check(self, check: str, *, here: str = "") -> None:
        """Show a check's own text; `here`: what it says of the drawing beside it."""
        self._clear()
        text = checks()[check].lesson
        self._add(text.title, "name")
        if here:
            self._section(tr("In this drawing"), here)
        self._section(tr("What it is"), text.flags)
        self._texts(check)

    def show_lesson(self, lesson: Lesson) -> None:
        """Show a check's text with the sentences of its drawing."""
        self._clear()
        self._add(lesson.text.title, "name")
        self._section(tr("In this drawing"), lesson.finding.message)
        self._section(tr("How such a slip happens"), lesson.happens)
        if lesson.scene.says:
            self._section(tr("What comes of it here"), " ".join(tr(each.told) for each in lesson.scene.says))
        self._section(tr("The remedy here"), lesson.remedy.says.told)
        self._section(tr("What it is"), lesson.text.flags)
        self._texts(lesson.check)

    def _texts(self, check: str) -> None:
        text = checks()[check].lesson
        self._section(tr("Why it matters"), text.why)
        self._section(tr("What puts it right"), text.remedy)
        self._section(tr("Source"), text.source, role="second")
        self._column.addStretch(1)
        self.verticalScrollBar().setValue(0)

    def _section(self, heading: str, text: str, *, role: str = "body") -> None:
        self._column.addSpacing(6)
        self._add(heading, "strong")
        self._add(text, role)

    def _add(self, text: str, role: str) -> None:
        self._column.addWidget(plain.label(text, role, wrap=True, selectable=role in ("body", "second")))

    def _clear(self) -> None:
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.setParent(None)
                widget.deleteLater()

"""The sentences of a lesson: what it is about, what is wrong in the drawing, what comes of it, the remedy."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QVBoxLayout, QWidget

from circuitcheck.checks.catalogue import checks
from circuitcheck.editor import plain
from circuitcheck.editor.nesting import emptied
from circuitcheck.editor.translating import shown_told, tr

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
        self._comes: QLabel | None = None
        self._remedy: QLabel | None = None

    @property
    def text(self) -> str:
        """All that is shown."""
        labels = self._inside.findChildren(QLabel)
        return "\n".join(each.text() for each in labels)

    def show_check(self, check: str) -> None:
        """Show a check's own text."""
        self._clear()
        text = checks()[check].lesson
        self._add(text.title, "name")
        self._section(tr("What it is"), text.flags)
        self._texts(check)

    def show_begun(self, check: str, here: str, slips: str) -> None:
        """Show a check's text with what it says of the drawing and how such a slip happens; what comes of it
        and the remedy stand where they will once they are known, so that nothing moves under a reader's eyes."""
        self._clear()
        text = checks()[check].lesson
        self._add(text.title, "name")
        self._section(tr("In this drawing"), here)
        self._section(tr("How such a slip happens"), slips)
        self._comes = self._section(tr("What comes of it here"), tr("Being worked out …"))
        self._remedy = self._section(tr("The remedy here"), tr("Being worked out …"))
        self._section(tr("What it is"), text.flags)
        self._texts(check)

    def show_remedy(self, remedy: str) -> None:
        """The remedy is known."""
        if self._remedy is not None:
            self._remedy.setText(shown_told(remedy))

    def show_consequence(self, says: Sequence[str]) -> None:
        """What comes of it is known."""
        if self._comes is not None:
            none = tr("No flow, pressure or temperature shows this one. Why it matters stands below.")
            self._comes.setText(" ".join(map(shown_told, says)) or none)

    def _texts(self, check: str) -> None:
        text = checks()[check].lesson
        self._section(tr("Why it matters"), text.why)
        self._section(tr("What puts it right"), text.remedy)
        self._section(tr("Source"), text.source, role="second")
        self._column.addStretch(1)
        self.verticalScrollBar().setValue(0)

    def _section(self, heading: str, text: str, *, role: str = "body") -> QLabel:
        self._column.addSpacing(6)
        self._add(heading, "strong")
        return self._add(text, role)

    def _add(self, text: str, role: str) -> QLabel:
        label = plain.label(text, role, wrap=True, selectable=role in ("body", "second"))
        self._column.addWidget(label)
        return label

    def _clear(self) -> None:
        self._comes = self._remedy = None
        for widget in emptied(self._column):
            widget.setParent(None)
            widget.deleteLater()

"""The verdict below the findings: what found nothing, what was not judged, what does not apply, what was taken."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QToolButton, QVBoxLayout, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.icons import GRADE_PX, grade_icon
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.report import finding_text as says

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis


class Fold(QWidget):
    """A heading that opens a list of lines."""

    resized = Signal()

    def __init__(self, heading: str, lines: tuple[str, ...], *, is_open: bool) -> None:
        super().__init__()
        self._button = QToolButton()
        self._button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
        self._button.setText(plain.action_text(heading))
        self._button.setCheckable(True)
        self._button.setChecked(is_open)
        self._button.setMinimumHeight(30)
        self._body = QWidget()
        column = QVBoxLayout(self._body)
        column.setContentsMargins(24, 0, 0, 4)
        column.setSpacing(3)
        for line in lines:
            column.addWidget(plain.label(line, "second", wrap=True))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addWidget(self._button, 0, Qt.AlignmentFlag.AlignLeft)
        outer.addWidget(self._body)
        # Shown before it stands in anything it would be a window of its own, and take the focus.
        self._toggle(is_open)
        self._button.toggled.connect(self._toggle)

    def _toggle(self, is_open: bool) -> None:
        self._button.setArrowType(Qt.ArrowType.DownArrow if is_open else Qt.ArrowType.RightArrow)
        self._body.setVisible(is_open)
        self.resized.emit()


class Verdict(QWidget):
    """Made anew for each analysis; `resized` when one of its lists is opened or shut."""

    resized = Signal()

    def __init__(self, analysis: Analysis, theme: Theme, *, is_open: frozenset[str] = frozenset()) -> None:
        super().__init__()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(16, 8, 16, 16)
        self._column.setSpacing(4)
        self.folds: dict[str, Fold] = {}
        self._sentence(analysis, theme)
        if analysis.drawing.is_empty:
            return
        sound = not analysis.findings and bool(analysis.judged)
        unjudged = (*says.not_judged(analysis), *says.beyond())
        self._fold(tr("Not judged"), unjudged, sound or tr("Not judged") in is_open)
        self._fold(tr("Usual values taken"), says.taken(analysis), tr("Usual values taken") in is_open)
        self._fold(tr("Does not apply"), says.not_applicable(analysis), tr("Does not apply") in is_open)

    @property
    def open_folds(self) -> frozenset[str]:
        """The lists that are open, to be open in the next verdict too."""
        return frozenset(name for name, fold in self.folds.items() if fold._button.isChecked())

    def _sentence(self, analysis: Analysis, theme: Theme) -> None:
        first, second = says.verdict(analysis)
        box = QFrame()
        sound = bool(first) and bool(analysis.judged)
        if sound and not analysis.findings:
            box.setObjectName("sound")
        line = QHBoxLayout(box)
        line.setContentsMargins(10 if box.objectName() else 0, 8, 8, 8)
        line.setSpacing(10)
        if sound:
            mark = plain.label()
            mark.setPixmap(grade_icon(None, theme).pixmap(QSize(GRADE_PX, GRADE_PX)))
            line.addWidget(mark, 0, Qt.AlignmentFlag.AlignTop)
        words = QVBoxLayout()
        words.setSpacing(1)
        if first:
            words.addWidget(plain.label(first, "body" if analysis.findings else "strong", wrap=True))
        if second:
            words.addWidget(plain.label(second, "second", wrap=True))
        nest(line, words, 1)
        self._column.addWidget(box)

    def _fold(self, heading: str, lines: tuple[str, ...], is_open: bool) -> None:
        if not lines:
            return
        fold = Fold(f"{heading} ({len(lines)})", lines, is_open=is_open)
        fold.resized.connect(self.resized)
        self.folds[heading] = fold
        self._column.addWidget(fold)

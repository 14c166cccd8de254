"""The details panel: the data of what is selected, each field with its unit, limits and usual value."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCheckBox, QFrame, QLabel, QScrollArea, QSizePolicy, QVBoxLayout, QWidget

from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.panels.field_editors import ChecksEditor, ChoiceEditor, NoteEditor, editor_for
from circuitcheck.editor.panels.number_field import NumberField
from circuitcheck.editor.panels.subjects import TITLE, Row, heading, put, remark, rows
from circuitcheck.editor.side_by_side import in_line
from circuitcheck.editor.translating import of_error, tr

INSET_PX = 16
FIELD_PX = 148
ROW_GAP_PX = 10


class _Line:
    """One row of the panel: its label, its editor, and the sentence for a refusal."""

    def __init__(self, row: Row) -> None:
        self.field = row.field
        self.editor = editor_for(row.field)
        self.label = plain.label(row.field.label, wrap=True)
        self.label.setBuddy(self.editor)
        plain.set_tip(self.label, row.field.help)
        self.fault = plain.label("", "fault", wrap=True)
        self.fault.setAccessibleName(tr("{label}: why it was refused", label=tr(row.field.label)))
        self.fault.hide()

    @property
    def is_wide(self) -> bool:
        """Whether the editor needs the panel's whole width."""
        return isinstance(self.editor, ChecksEditor | NoteEditor) or self.field is TITLE

    def say(self, sentence: str) -> None:
        """Show why a value was refused; empty hides it."""
        self.fault.setText(sentence)
        self.fault.setVisible(bool(sentence))


class DetailsPanel(QScrollArea):
    """Signals `edited` with a step's name and the drawing after it; `heading_changed` with what is shown."""

    edited = Signal(object, object)
    heading_changed = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(tr("Details"))
        self._drawing = Drawing()
        self._ids: tuple[str, ...] = ()
        self._lines: dict[str, _Line] = {}
        self._shape: object = None
        self._remark: QLabel | None = None
        self.show_selection(self._drawing, ())

    def show_selection(self, drawing: Drawing, ids: tuple[str, ...]) -> None:
        """Show what is selected in a drawing; nothing selected shows the drawing's own data."""
        self._drawing = drawing
        self._ids = tuple(id for id in ids if _is_in(drawing, id))
        found = rows(drawing, self._ids)
        shape = (self._ids, tuple(row.field for row in found))
        if shape != self._shape:
            self._take_old_body()
            if self._shape is not None:
                # What was being typed was an edit, and what is selected is shown as it is after that.
                return
            self._shape = shape
            self._build(found)
        for row in found:
            self._lines[row.key].editor.show_row(row)
        self._order_stops()
        if self._remark is not None:
            text = remark(drawing, self._ids, found)
            self._remark.setText(text)
            self._remark.setVisible(bool(text))
        self.heading_changed.emit(heading(drawing, self._ids))

    def focus_field(self, name: str) -> None:
        """Put the caret into a field of what is shown; nothing where it has no such field."""
        if line := self._lines.get(name):
            line.editor.setFocus(Qt.FocusReason.ShortcutFocusReason)
            self.ensureWidgetVisible(line.editor)

    def _order_stops(self) -> None:
        """Tab goes down the panel, also through the boxes that an editor made only when it knew its choices."""
        stops: list[QWidget] = []
        for line in self._lines.values():
            stops += line.editor.findChildren(QCheckBox) or [line.editor]
        for first, second in pairwise(stops):
            QWidget.setTabOrder(first, second)

    def _build(self, found: tuple[Row, ...]) -> None:
        body = QWidget()
        column = QVBoxLayout(body)
        column.setContentsMargins(INSET_PX, 0, INSET_PX, INSET_PX)
        column.setSpacing(ROW_GAP_PX)
        self._remark = plain.label("", "second", wrap=True)
        column.addWidget(self._remark)
        self._lines = {}
        for row in found:
            self._add(column, row)
        column.addStretch(1)
        self.setWidget(body)
        self.verticalScrollBar().setValue(0)

    def _take_old_body(self) -> None:
        """Typing ends with it: that may edit, and so come here again and show what is selected anew."""
        self._shape = None
        old = self.takeWidget()
        if old is not None:
            # With its editors, of which one may still be committing.
            old.deleteLater()

    def _add(self, column: QVBoxLayout, row: Row) -> None:
        line = _Line(row)
        self._lines[row.key] = line
        if line.is_wide:
            column.addWidget(line.label)
            column.addWidget(line.editor)
        else:
            if isinstance(line.editor, ChoiceEditor):
                # What is chosen is read in full; below its label if need be.
                line.editor.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
                line.editor.setMinimumWidth(FIELD_PX)
            else:
                line.editor.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
                line.editor.setFixedWidth(FIELD_PX)
            column.addWidget(in_line(line.label, line.editor, middle=True))
        column.addWidget(line.fault)
        line.editor.committed.connect(self._committer(row.key))
        if isinstance(line.editor, NumberField):
            line.editor.refused.connect(self._refuser(line))

    def _refuser(self, line: _Line) -> Callable[[str], None]:
        return lambda sentence: self._refuse(line, sentence)

    def _refuse(self, line: _Line, sentence: str) -> None:
        """Say why, where it is seen: also below the lower edge."""
        line.say(sentence)
        body = self.widget()
        if body is not None and (layout := body.layout()) is not None:
            layout.activate()
            body.adjustSize()
        self.ensureWidgetVisible(line.fault, 0, INSET_PX)

    def _committer(self, key: str) -> Callable[[object], None]:
        ids = self._ids

        def commit(value: object) -> None:
            self._commit(ids, key, value)

        return commit

    def _commit(self, ids: tuple[str, ...], key: str, value: Any) -> None:
        line = self._lines.get(key) if ids == self._ids else None
        try:
            step, after = put(self._drawing, ids, key, value)
        except EditError as error:
            if line is not None:
                self._refuse(line, f"{tr(of_error(error))} {line.editor.kept()}".rstrip())
                self._refresh(key)
            return
        except KeyError:
            # What was selected is gone by now, and with it what was typed for it.
            return
        if line is not None:
            line.say("")
        if after is not self._drawing:
            self.edited.emit(step, after)
        else:
            self._refresh(key)

    def _refresh(self, key: str) -> None:
        for row in rows(self._drawing, self._ids):
            if row.key == key and key in self._lines:
                self._lines[key].editor.show_row(row)

    def field(self, name: str) -> QWidget:
        """The editor of a field of what is shown. Raises KeyError."""
        return self._lines[name].editor

    def refusal(self, name: str) -> str:
        """The sentence that stands beside a field; empty where there is none."""
        line = self._lines[name]
        return line.fault.text() if not line.fault.isHidden() else ""


def _is_in(drawing: Drawing, id: str) -> bool:
    return id in drawing.components or id in drawing.pipes or id in drawing.controls

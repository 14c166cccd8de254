"""A field for a number: any decimal sign, its unit inside, its default as a placeholder."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QAction, QContextMenuEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QLineEdit, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.panels.numbers import NotANumberError, typed
from circuitcheck.editor.panels.subjects import Held, Left
from circuitcheck.editor.translating import decimal_sign, of_error, tr
from circuitcheck.parts.kind import Field
from circuitcheck.report.wording import shown, value_words

INSET_PX = 9


class NumberField(QLineEdit):
    """Shows a number, or says that it is not known or that the usual one is taken.

    `committed` carries a number, None (not known yet) or `Left.OUT`; `refused` a sentence for what
    was typed and is no number. Empty means: the usual value where there is one, else not known.
    """

    committed = Signal(object)
    refused = Signal(str)

    def __init__(self, field: Field, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._field = field
        self._held = Held(Left.OUT)
        self._unit = plain.label(tr(field.unit), "second")
        self._unit.setParent(self)
        self._unit.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self._unit.setVisible(bool(field.unit))
        self.setTextMargins(0, 0, self._unit.sizeHint().width() + 2 if field.unit else 0, 0)
        self.editingFinished.connect(self._commit)

    def show_held(self, held: Held) -> None:
        """Show what the drawing holds."""
        self._held = held
        self.setPlaceholderText(self._placeholder())
        self.setText(self._text())
        self.setModified(False)

    def _text(self) -> str:
        value = self._held.value
        if self._held.differs or value is Left.OUT or value is None:
            return ""
        return shown(value, decimal_sign())

    def _placeholder(self) -> str:
        if self._held.differs:
            return tr("several")
        if self._held.value is Left.OUT and self._field.has_default:
            return tr("{value} (usual)", value=shown(self._default(), decimal_sign()))
        return tr("not known")

    def _default(self) -> float:
        return float(str(self._field.default))

    def _commit(self) -> None:
        if not self.isModified() or self.text().strip() == self._text():
            self.setText(self._text())
            self.setModified(False)
            return
        text = self.text()
        # What is shown is what the drawing holds, also while a refusal is read.
        self.show_held(self._held)
        if not text.strip():
            self.committed.emit(Left.OUT)
            return
        try:
            number = typed(text)
        except NotANumberError as error:
            self.refused.emit(f"{tr(of_error(error))} {self.kept()}")
            return
        self.committed.emit(number)

    def kept(self) -> str:
        """What the drawing goes on holding, as a sentence for after a refusal."""
        value: Any = self._held.value
        if self._held.differs:
            return tr("Nothing was changed.")
        if value is Left.OUT and self._field.has_default:
            return tr(
                "It stays at the usual {value}.",
                value=value_words(self._field, self._default(), decimal_sign()),
            )
        if value is Left.OUT or value is None:
            return tr("It stays not known.")
        return tr("It stays at {value}.", value=value_words(self._field, value, decimal_sign()))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape puts back what the drawing holds."""
        if event.key() == Qt.Key.Key_Escape and self.isModified():
            self.show_held(self._held)
            event.accept()
            return
        super().keyPressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """The usual menu, and the two ways to state no number."""
        menu = self.createStandardContextMenu()
        menu.setParent(self, menu.windowFlags())
        menu.addSeparator()
        for action in self.extra_actions():
            action.setParent(menu)
            menu.addAction(action)
        menu.exec(event.globalPos())
        menu.deleteLater()

    def extra_actions(self) -> list[QAction]:
        """`Not known`, and `Usual: 3 bar` where there is a default."""
        actions = [self._action(tr("Not known"), None)]
        if self._field.has_default:
            usual = value_words(self._field, self._default(), decimal_sign())
            actions.append(self._action(tr("Usual: {usual}", usual=usual), Left.OUT))
        return actions

    def _action(self, text: str, value: object) -> QAction:
        action = QAction(plain.action_text(text), self)
        action.triggered.connect(lambda: self.committed.emit(value))
        return action

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the unit at the right edge."""
        super().resizeEvent(event)
        size = self._unit.sizeHint()
        top = (self.height() - size.height()) // 2
        self._unit.setGeometry(self.width() - size.width() - INSET_PX, top, size.width(), size.height())

"""The dialog of a failure: in plain words what happened and what is kept, and the report with nothing hidden."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtGui import QFont, QFontDatabase, QGuiApplication
from PySide6.QtWidgets import (
    QDialog,
    QFileDialog,
    QHBoxLayout,
    QPlainTextEdit,
    QPushButton,
    QStyle,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.editor import plain
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.translating import of_error, tr, tr_n
from circuitcheck.storage.saver import SaveError, save_bytes

ENDING = ".txt"
ICON_PX = 40


class FailureDialog(QDialog):
    """Shows the report whole, to be copied or saved as it stands; it may be shortened first. Nothing is sent."""

    def __init__(self, parent: QWidget | None, heading: str, words: str, report: str, close: str) -> None:
        super().__init__(parent)
        self.setWindowTitle("circuitcheck")
        self.setMinimumWidth(600)
        self.heading, self.words = heading, words
        self.text = _text_box(report)
        self._said = plain.label("", "second", wrap=True)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 20, 20, 16)
        column.setSpacing(12)
        nest(column, self._head())
        column.addWidget(
            plain.label(
                tr(
                    "The program sends nothing to anybody. If you want to help to mend it, hand on this report "
                    "yourself. It holds just what stands here, and not the drawing. Names of your files or parts can "
                    "be in it: take out what is nobody’s business."
                ),
                "second",
                wrap=True,
            )
        )
        column.addWidget(self.text, 1)
        column.addWidget(self._said)
        nest(column, self._buttons(close))
        # Whoever was typing when it came up must not close it unread.
        self.text.setFocus()

    def _head(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(16)
        icon = plain.label()
        sign = QStyle.StandardPixmap.SP_MessageBoxWarning
        icon.setPixmap(self.style().standardIcon(sign).pixmap(ICON_PX, ICON_PX))
        told = QVBoxLayout()
        told.setSpacing(6)
        told.addWidget(plain.label(self.heading, "name", wrap=True))
        told.addWidget(plain.label(self.words, wrap=True, selectable=True))
        row.addWidget(icon, 0)
        nest(row, told, 1)
        return row

    def _buttons(self, close: str) -> QHBoxLayout:
        self.copy_button = QPushButton(tr("&Copy the report"))
        self.save_button = QPushButton(tr("&Save the report…"))
        self.close_button = QPushButton(close)
        self.copy_button.clicked.connect(self._copy)
        self.save_button.clicked.connect(self._save)
        self.close_button.clicked.connect(self.accept)
        self.close_button.setDefault(True)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.copy_button)
        row.addWidget(self.save_button)
        row.addStretch(1)
        row.addWidget(self.close_button)
        return row

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self.text.toPlainText())
        self._said.setText(tr("The report is on the clipboard. Paste it before you close the program."))

    def _save(self) -> None:
        name, _ = QFileDialog.getSaveFileName(
            self,
            tr("Save the report"),
            str(Path.home() / f"circuitcheck-report{ENDING}"),
            tr("Text (*{ending})", ending=ENDING),
        )
        if not name:
            return
        path = Path(name) if Path(name).suffix else Path(f"{name}{ENDING}")
        try:
            save_bytes(path, self.text.toPlainText().encode("utf-8", "replace"))
        except SaveError as error:
            self._said.setText(tr(of_error(error)))
        else:
            self._said.setText(tr("The report is saved as {name}.", name=path.name))


def failed_dialog(parent: QWidget | None, report: str, kept: int) -> FailureDialog:
    """The dialog of a program that has to close, with so many unsaved drawings kept."""
    words = tr("Nothing was unsaved, so nothing is lost.")
    if kept:
        words = tr_n(
            "The drawing that was not saved is kept. It is offered to you when the program starts again.",
            "The {count} drawings that were not saved are kept. They are offered to you when the program starts again.",
            kept,
        )
    return FailureDialog(
        parent,
        tr("Something went wrong, and the program has to close."),
        words,
        report,
        tr("Close the &program"),
    )


def noted_dialog(parent: QWidget | None, report: str, *, is_anything: bool) -> FailureDialog:
    """The dialog from the menu: what the log holds, while the program works."""
    words = tr("Below is the end of what it has noted on this machine.")
    if not is_anything:
        words = tr("Nothing has gone wrong that the program knows of.")
    return FailureDialog(
        parent, tr("What the program has noted of its own failures"), words, report, tr("C&lose")
    )


def _text_box(text: str) -> QPlainTextEdit:
    box = plain.box(text)
    box.setAccessibleName(tr("The report"))
    fixed = QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont)
    box.setFont(scaled(fixed, 0.93) if fixed.family() else QFont())
    box.setMinimumHeight(200)
    return box

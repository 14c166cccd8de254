"""The page of progress: what was met, found, missed and accused wrongly, by check; kept here, exported by hand."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QHeaderView,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.editor import plain
from circuitcheck.editor.learning.practice_words import reason_words
from circuitcheck.editor.learning.rows import Rows
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.translating import of_error, tr, tr_n
from circuitcheck.lessons.progress import Log, as_csv, as_json, tallies
from circuitcheck.storage.saver import save_bytes

AskPath = Callable[[QWidget, str, str], str]


class ProgressPage(QWidget):
    """Signals `left` when it is to be left."""

    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._log = Log()
        self.ask_path: AskPath = _ask_path
        self.said = plain.label("", wrap=True)
        self.kept = plain.label("", "second", wrap=True, selectable=True)
        self.fault = plain.label("", "fault", wrap=True)
        self.fault.hide()
        self.table = Rows(tr("Progress by check"))
        self.table.setHeaderHidden(False)
        self.table.setHeaderLabels([tr("Fault"), tr("Met"), tr("Found"), tr("Near"), tr("False")])
        self.table.header().setStretchLastSection(False)
        self.table.header().setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        for column in range(1, 5):
            self.table.header().setSectionResizeMode(column, QHeaderView.ResizeMode.ResizeToContents)
        for column, hint in enumerate(
            (
                tr("What was put in, the least surely known first"),
                tr("How often it was put in"),
                tr("Right part and right reason"),
                tr("Right part, another reason"),
                tr("Said where it was not so"),
            )
        ):
            plain.set_column_tip(self.table.headerItem(), column, hint)
        self.back = QPushButton(tr("&Back"))
        self.csv = QPushButton(tr("Export as &CSV…"))
        self.json = QPushButton(tr("Export as &JSON…"))
        column_layout = QVBoxLayout(self)
        column_layout.setContentsMargins(16, 12, 16, 16)
        column_layout.setSpacing(6)
        column_layout.addWidget(plain.label(tr("Progress"), "name"))
        for widget in (self.said, self.table, self.kept, self.fault):
            column_layout.addWidget(widget, 1 if widget is self.table else 0)
        end = QHBoxLayout()
        for button in (self.back, self.csv, self.json):
            end.addWidget(button)
        nest(column_layout, end)
        self.back.clicked.connect(self.left)
        self.csv.clicked.connect(lambda: self.export("csv"))
        self.json.clicked.connect(lambda: self.export("json"))

    def show_log(self, log: Log, path: Path, trouble: str = "") -> None:
        """Show what was practised, what was least surely found first; `trouble`: why it is not kept."""
        self._log = log
        count = len(log.exercises)
        self.said.setText(tr_n("{count} exercise answered.", "{count} exercises answered.", count))
        self.kept.setText(tr("Kept on this machine only, in {path}.", path=str(path)))
        self.say(trouble)
        self.table.clear()
        for check, tally in sorted(tallies(log).items(), key=lambda each: (each[1].share, each[0])):
            numbers = (tally.seen, tally.found, tally.wrong_reason, tally.false)
            item = self.table.add(reason_words(check))
            plain.set_column_tip(item, 0, reason_words(check))
            for column, number in enumerate(numbers, 1):
                item.setText(column, str(number))
                item.setTextAlignment(column, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.table.measure()
        for button in (self.csv, self.json):
            button.setEnabled(bool(count))

    def say(self, sentence: str) -> None:
        """Say what went wrong; empty: nothing."""
        self.fault.setText(sentence)
        self.fault.setVisible(bool(sentence))

    def export(self, ending: str) -> None:
        """Ask where, and put all that was practised there."""
        chosen = self.ask_path(self, tr("Export the progress"), ending)
        if not chosen:
            return
        path = Path(chosen)
        target = path if path.suffix else path.with_suffix(f".{ending}")
        data = as_csv(self._log).encode("utf-8-sig") if ending == "csv" else as_json(self._log)
        try:
            save_bytes(target, data)
        except OSError as error:
            self.say(tr("{name} was not written: {reason}", name=target.name, reason=tr(of_error(error))))
            return
        self.say("")


def _ask_path(parent: QWidget, title: str, ending: str) -> str:
    chosen, _ = QFileDialog.getSaveFileName(parent, title, f"practice.{ending}", f"*.{ending}")
    return chosen

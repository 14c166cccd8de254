"""The dialog of Hand over: which kind of file, and for a PDF on which paper."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtWidgets import QComboBox, QDialog, QDialogButtonBox, QFormLayout, QVBoxLayout, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.language import NAMES, SPOKEN, shown_code
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.panels.edged import ArrowedComboBox
from circuitcheck.editor.translating import later, tr
from circuitcheck.tongues import SOURCE

ENDINGS = {
    "pdf": later("PDF document"),
    "html": later("HTML page"),
    "svg": later("SVG drawing"),
    "png": later("PNG picture"),
    "csv": later("Table"),
}
KINDS = (
    ("pdf", later("PDF, the whole document to print and file")),
    ("html", later("HTML, the whole document as one page for a browser or a phone")),
    ("svg", later("SVG, the drawing as line work")),
    ("png", later("PNG, the drawing as a picture")),
    ("csv", later("CSV, findings and parts list for a spreadsheet")),
)
PAPERS = (("a4", "A4"), ("a3", "A3"))
LIES = (
    ("", later("Text upright, the drawing as it is larger")),
    ("portrait", later("All pages upright")),
    ("landscape", later("All pages lying")),
)
CARE = later(
    "Unanswered, not judged and what does not apply are told in it. A drawing without findings is not a certificate."
)


@dataclass(frozen=True, slots=True)
class Wanted:
    """What was chosen: the kind of file by its ending, the paper, how pages lie (empty: as it suits), and the code of
    the language that it is told in."""

    form: str
    paper: str = "a4"
    orientation: str = ""
    language: str = SOURCE


class HandOverDialog(QDialog):
    """Holds what is chosen; saving comes after it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Hand over"))
        self.kind, self.paper, self.lies = _choice(KINDS), _choice(PAPERS), _choice(LIES)
        # A language is called by its own name.
        self.language = ArrowedComboBox()
        for language in SPOKEN:
            self.language.addItem(NAMES[language], language.value)
        self.language.setCurrentIndex(self.language.findData(shown_code()))
        self.kind.setAccessibleName(tr("Kind of file"))
        self.language.setAccessibleName(tr("Language of the document"))
        self.paper.setAccessibleName(tr("Paper"))
        self.lies.setAccessibleName(tr("Pages"))
        form = QFormLayout()
        form.addRow(tr("&Kind of file"), self.kind)
        form.addRow(tr("L&anguage"), self.language)
        form.addRow(tr("&Paper"), self.paper)
        form.addRow(tr("Pa&ges"), self.lies)
        button = QDialogButtonBox.StandardButton
        buttons = QDialogButtonBox(button.Save | button.Cancel)
        buttons.button(button.Save).setText(tr("&Save…"))
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        self.kind.currentIndexChanged.connect(self._kind_chosen)
        lines = QVBoxLayout(self)
        lines.setContentsMargins(16, 16, 16, 16)
        lines.setSpacing(12)
        nest(lines, form)
        lines.addWidget(plain.label(tr(CARE), "second", wrap=True))
        lines.addWidget(buttons)

    @property
    def wanted(self) -> Wanted:
        """What stands in it."""
        return Wanted(
            str(self.kind.currentData()),
            str(self.paper.currentData()),
            str(self.lies.currentData()),
            str(self.language.currentData()),
        )

    def _kind_chosen(self) -> None:
        """Only a PDF has pages; a table is read by other programs, and is English always."""
        for each in (self.paper, self.lies):
            each.setEnabled(self.kind.currentData() == "pdf")
        self.language.setEnabled(self.kind.currentData() != "csv")


def _choice(entries: tuple[tuple[str, str], ...]) -> QComboBox:
    made = ArrowedComboBox()
    for data, text in entries:
        made.addItem(tr(text), data)
    return made

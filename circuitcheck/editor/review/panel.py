"""The review panel: a name, and pages for notes, accepted findings, the comparison and the record."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QTabWidget, QVBoxLayout, QWidget

from circuitcheck.editor.nesting import nest
from circuitcheck.editor.review.accepting import AcceptedPage
from circuitcheck.editor.review.compare_page import ComparePage
from circuitcheck.editor.review.notes_page import NotesPage
from circuitcheck.editor.review.record_page import RecordPage
from circuitcheck.editor.translating import tr


class ReviewPanel(QWidget):
    """Holds the pages; what they ask for is carried out by `reviewing`."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.author = QLineEdit()
        self.author.setPlaceholderText(tr("Your name, for what you say and sign"))
        self.author.setAccessibleName(tr("Your name"))
        self.notes, self.accepted = NotesPage(), AcceptedPage()
        self.comparison, self.record = ComparePage(), RecordPage()
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.setAccessibleName(tr("Review"))
        pages: tuple[tuple[QWidget, str], ...] = (
            (self.notes, tr("&Notes")),
            (self.accepted, tr("&Accepted")),
            (self.comparison, tr("&Compare")),
            (self.record, tr("&Record")),
        )
        for page, title in pages:
            self.tabs.addTab(page, title)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 8, 0, 0)
        column.setSpacing(8)
        line = QVBoxLayout()
        line.setContentsMargins(16, 0, 16, 0)
        line.addWidget(self.author)
        nest(column, line)
        column.addWidget(self.tabs, 1)
        self.setMinimumWidth(320)

    def show_page(self, page: QWidget) -> None:
        """Bring a page to the front."""
        self.tabs.setCurrentWidget(page)

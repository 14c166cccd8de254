"""The window of lessons: a few sentences, the drawing at work with its fault, what comes of it, the remedy tried."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QSettings, Qt, Signal
from PySide6.QtGui import QCloseEvent, QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QSplitter, QStackedWidget, QVBoxLayout, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.learning.lessons_list import LessonsList
from circuitcheck.editor.learning.lessons_words import LessonWords
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.operating.live_view import LiveView
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.finding import Finding
from circuitcheck.lessons.catalogue import faults
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.lesson import Lesson, NoLessonError, Remedy, lesson, subjects
from circuitcheck.operating.positions import Positions

FIRST_WIDE, FIRST_HIGH, LIST_PX, WORDS_PX = 1400, 880, 300, 360
READ = "lessons/read"
FIRST = "vessel-can-be-cut-off"
"""Its danger is seen at once: where one begins who has read none."""


@dataclass(frozen=True, eq=False, slots=True)
class _Asked:
    """One wish for a lesson: one is told from another by identity."""

    check: str


class LessonsWindow(QWidget):
    """Shows one lesson after another; which were read is kept in the settings.

    `open` shows the lesson of a check, `show_what_happens`, `try_remedy` and `back_to_fault` are its
    buttons. Call `close_down` at the end.
    """

    _begun = Signal(object, object, object)
    _remedied = Signal(object, object)

    def __init__(self, settings: QSettings, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(tr("Lessons – circuitcheck"))
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._settings = settings
        self.check = ""
        self.lesson: Lesson | None = None
        self._put: tuple[Planted, Finding] | None = None
        self._remedy: Remedy | None = None
        self._known: dict[str, Lesson] = {}
        self.list, self.words = LessonsList(), LessonWords()
        self.live = LiveView(compact=True)
        self.live.sheet.fits_title = True
        self._is_to_run = False
        self.stands = plain.label("", "strong", wrap=True)
        self.busy = plain.label("", "second", wrap=True)
        self.happens = QPushButton(tr("&Show what happens"))
        self.remedy = QPushButton(tr("&Try the remedy"))
        self.fault = QPushButton(tr("&Back to the fault"))
        self.previous, self.next = QPushButton(tr("&Previous")), QPushButton(tr("&Next"))
        self._asked: _Asked | None = None
        self._making = WorkingOut(self._make, "lesson", 0, self)
        self._lay_out()
        self._connect()
        self.set_theme(theme)
        self.list.show_read(self.read)
        self._offer()

    def _lay_out(self) -> None:
        plain.set_tip(
            self.happens, tr("Set the situation and the valves in which it is seen, and let time run")
        )
        plain.set_tip(self.remedy, tr("The same with the fault put right"))
        plain.set_tip(self.fault, tr("The drawing with the fault again, as the lesson began"))
        plain.set_tip(self.previous, tr("The lesson before (Alt+Left)"))
        plain.set_tip(self.next, tr("The lesson after (Alt+Right)"))
        side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 12)
        column.setSpacing(8)
        column.addWidget(self.words, 1)
        buttons = QVBoxLayout()
        buttons.setContentsMargins(16, 0, 16, 0)
        buttons.setSpacing(6)
        buttons.addWidget(self.busy)
        for button in (self.happens, self.remedy, self.fault):
            button.setMinimumHeight(34)
            buttons.addWidget(button)
        ends = QHBoxLayout()
        for button in (self.previous, self.next):
            button.setMinimumHeight(34)
            ends.addWidget(button)
        nest(buttons, ends)
        nest(column, buttons)
        self.stands.setContentsMargins(16, 10, 16, 6)
        self._picture = QWidget()
        picture_column = QVBoxLayout(self._picture)
        picture_column.setContentsMargins(0, 0, 0, 0)
        picture_column.setSpacing(0)
        picture_column.addWidget(self.stands)
        self._middle, self._blank = QStackedWidget(), QWidget()
        self._middle.addWidget(self._blank)
        self._middle.addWidget(self.live)
        picture_column.addWidget(self._middle, 1)
        thirds = QSplitter(Qt.Orientation.Horizontal)
        thirds.setChildrenCollapsible(False)
        thirds.setHandleWidth(1)
        for widget in (self.list, side, self._picture):
            thirds.addWidget(widget)
        thirds.setStretchFactor(2, 1)
        thirds.setSizes([LIST_PX, WORDS_PX, FIRST_WIDE - LIST_PX - WORDS_PX])
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(thirds)
        self.resize(FIRST_WIDE, FIRST_HIGH)

    def _connect(self) -> None:
        self._making.found.connect(self._found)
        self._begun.connect(self._found_fault)
        self._remedied.connect(self._found_remedy)
        self.list.chosen.connect(self.open)
        if self.live.timed is not None:
            self.live.timed.changed.connect(self._course_known)
        self.happens.clicked.connect(self.show_what_happens)
        self.remedy.clicked.connect(self.try_remedy)
        self.fault.clicked.connect(self.back_to_fault)
        self.previous.clicked.connect(lambda: self._step(-1))
        self.next.clicked.connect(lambda: self._step(1))
        for keys, step in (("Alt+Left", -1), ("Alt+Right", 1)):
            QShortcut(QKeySequence(keys), self, lambda step=step: self._step(step))
        QShortcut(QKeySequence(QKeySequence.StandardKey.Find), self, self._search)

    # What others may ask.

    @property
    def is_busy(self) -> bool:
        """Whether a lesson is still being made."""
        return self._making.is_busy

    @property
    def read(self) -> frozenset[str]:
        """The checks whose lesson was read."""
        found = self._settings.value(READ, "")
        return frozenset(found.split()) if isinstance(found, str) else frozenset()

    def open(self, check: str) -> None:
        """Show the lesson of a check; of one without a drawing its text."""
        if check == self.check:
            return
        self.check, self.lesson, self._put, self._remedy = check, None, None, None
        self.list.choose(check)
        if check in faults():
            self.words.show_check(check)
            self.stands.setText("")
            self.busy.setText(tr("Its drawing is being made …"))
            self._asked = _Asked(check)
            self._making.ask(self._asked)
        else:
            self._asked = None
            self._making.forget()
            self.words.show_check(check)
            self._has_read(check)
        self._middle.setCurrentWidget(self._blank)
        self.busy.setVisible(check in faults())
        self._picture.setVisible(check in faults())
        self._offer()

    def show_what_happens(self) -> None:
        """Let everything stand so that the consequence is seen, and let time run."""
        if self.lesson is not None:
            self._show_fault(self.lesson.planted, self.lesson.finding, self.lesson.scene.positions)
            self._run()

    def try_remedy(self) -> None:
        """The same with the remedied drawing; as its controls leave it where no more is known yet."""
        if self._remedy is not None:
            positions = None if self.lesson is None else self.lesson.scene.remedied
            self.live.show_drawing(self._remedy.drawing, positions=positions)
            self._look(None)
            self.stands.setText(tr("Remedied: {what}", what=self._remedy.says.told))
            self._run()

    def back_to_fault(self) -> None:
        """The drawing with the fault as the lesson began."""
        if self._put is not None:
            self._show_fault(*self._put)

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self.live.set_theme(theme)
        self.list.set_theme(theme)

    def close_down(self) -> None:
        """Stop; the threads have ended when this returns."""
        self._asked = None
        self._making.close()
        self.live.close_down()

    # What comes of it.

    def _make(self, asked: _Asked) -> Lesson | None:
        """In the other thread: the lesson; None where no drawing takes its fault, or it is not wanted."""
        if asked.check not in self._known:
            try:
                self._known[asked.check] = lesson(
                    asked.check,
                    lambda: self._asked is asked,
                    lambda put, finding: self._begun.emit(asked, put, finding),
                    lambda remedy: self._remedied.emit(asked, remedy),
                )
            except NoLessonError:
                return None
        return self._known[asked.check]

    def _found_fault(self, asked: _Asked, put: Planted, finding: Finding) -> None:
        """The drawing is there before the remedy and what comes of it."""
        if asked is self._asked and self.lesson is None:
            self._put = (put, finding)
            self.words.show_begun(asked.check, finding.message, faults()[asked.check].happens)
            self._show_fault(put, finding)
            self.busy.setText(tr("What comes of it is being worked out …"))
            self._offer()

    def _found_remedy(self, asked: _Asked, remedy: Remedy) -> None:
        """The remedy can be tried before it is known what it is good for."""
        if asked is self._asked and self.lesson is None:
            self._remedy = remedy
            self.words.show_remedy(remedy.says.told)
            self._offer()

    def _found(self, asked: _Asked, made: Lesson | None) -> None:
        if made is None:
            self.stands.setText(tr("Its drawing could not be made; this is its text."))
        else:
            if self._put is None:  # made before
                self._found_fault(asked, made.planted, made.finding)
            self.lesson, self._remedy = made, made.remedy
            self.words.show_remedy(made.remedy.says.told)
            self.words.show_consequence([each.told for each in made.scene.says])
        self.busy.hide()
        self._has_read(asked.check)
        self._offer()

    def _show_fault(self, put: Planted, finding: Finding, positions: Positions | None = None) -> None:
        self._is_to_run = False
        self.live.show_drawing(put.drawing, positions=positions)
        parts = put.drawing.components
        self._look(next((part for part in finding.components if part in parts), None))
        self.stands.setText(tr("With the fault: {what}", what=put.says.told))

    def _look(self, part: str | None) -> None:
        self._middle.setCurrentWidget(self.live)
        self.live.sheet.choose(part)
        self.live.sheet.fit()

    def _run(self) -> None:
        """Time runs as soon as it is known what then happens; what was known before is of another standing."""
        self._is_to_run = True
        if self.live.player is not None:
            self.live.player.show_none(tr("What happens is being worked out …"), asks=False)

    def _course_known(self) -> None:
        timed = self.live.timed
        if self._is_to_run and timed is not None and not timed.track.is_empty:
            self._is_to_run = False
            timed.player.play.setChecked(True)

    def _offer(self) -> None:
        made = self.lesson
        known = (made is not None and bool(made.scene.says), self._remedy is not None, self._put is not None)
        for button, is_known in zip((self.happens, self.remedy, self.fault), known, strict=True):
            button.setVisible(self.check == "" or self.check in faults())
            button.setEnabled(is_known)
        self.previous.setEnabled(bool(self.list.beside(self.check, -1)))
        self.next.setEnabled(bool(self.list.beside(self.check, 1)))

    def _step(self, step: int) -> None:
        check = self.list.beside(self.check, step)
        if check:
            self.open(check)

    def _search(self) -> None:
        self.list.search.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.list.search.selectAll()

    def _has_read(self, check: str) -> None:
        self._settings.setValue(READ, " ".join(sorted({*self.read, check})))
        self.list.show_read(self.read)

    def showEvent(self, event: QShowEvent) -> None:
        """When nothing was asked for, the first lesson, or the next that was not read; the whole drawing in view."""
        super().showEvent(event)
        if not self.check:
            left = [check for check in subjects(live=True) if check not in self.read]
            self.open(left[0] if self.read and left else FIRST)
        self.live.sheet.fit()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Time does not run where nobody looks."""
        if self.live.player is not None:
            self.live.player.pause()
        super().closeEvent(event)

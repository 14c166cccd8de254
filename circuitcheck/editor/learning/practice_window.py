"""The window of practice: a sound drawing with faults in it, to be found, named and explained."""

from __future__ import annotations

import random
from collections.abc import Callable
from datetime import date
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QCloseEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QSplitter, QStackedWidget, QWidget

from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.editor.learning.practice_answer import AnswerPage
from circuitcheck.editor.learning.practice_marks import FALSE, MARKED, OUTCOMES, Ringed
from circuitcheck.editor.learning.practice_progress import ProgressPage
from circuitcheck.editor.learning.practice_result import ResultPage
from circuitcheck.editor.learning.practice_setup import MOST_SEED, SetupPage, Wanted
from circuitcheck.editor.learning.practice_sheet import PracticeSheet
from circuitcheck.editor.learning.practice_words import SIDE_PX, outcome_words
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import of_error, tr
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.lessons.catalogue import faults
from circuitcheck.lessons.generator import Exercise, NoExerciseError, exercise
from circuitcheck.lessons.progress import Log, ProgressError, read, suggested, with_exercise, write
from circuitcheck.lessons.scoring import WHOLE, Mark, Outcome, Score, Told, score

FIRST_WIDE, FIRST_HIGH = 1320, 840


class PracticeWindow(QWidget):
    """Makes exercises beside the window, takes the answers, and keeps the progress in one file.

    `begin` makes an exercise at once, `mark` and `show_answer` are what the pages do. Call `close_down`
    at the end.
    """

    def __init__(
        self,
        file: Path,
        theme: Theme,
        parent: QWidget | None = None,
        *,
        today: Callable[[], date] = date.today,
        surprise: Callable[[], int] = lambda: random.randint(0, MOST_SEED),
    ) -> None:
        """`file` is where the progress is kept."""
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(tr("Practice – circuitcheck"))
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._file, self._today, self._surprise = file, today, surprise
        self._wanted: Wanted | None = None
        self.exercise: Exercise | None = None
        self.result: Score | None = None
        self.marks: tuple[Mark, ...] = ()
        self._trouble = ""
        self.log = self._read()
        self.sheet = PracticeSheet()
        self.setup, self.answer = SetupPage(), AnswerPage()
        self.results, self.progress = ResultPage(), ProgressPage()
        self.pages = QStackedWidget()
        for page in self._every_page():
            self.pages.addWidget(page)
        self._making = WorkingOut(_made, "practice", 0, self)
        self._lay_out()
        self._connect()
        self.set_theme(theme)
        self._show_sound(None)
        self.setup.begin.setFocus(Qt.FocusReason.OtherFocusReason)

    def _lay_out(self) -> None:
        # With large letters the buttons ask for more.
        wide = max(SIDE_PX, *(page.minimumSizeHint().width() for page in self._every_page()))
        self.pages.setMinimumWidth(wide)
        halves = QSplitter(Qt.Orientation.Horizontal)
        halves.setChildrenCollapsible(False)
        halves.setHandleWidth(1)
        halves.addWidget(self.sheet)
        halves.addWidget(self.pages)
        halves.setStretchFactor(0, 1)
        halves.setSizes([FIRST_WIDE - wide, wide])
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(halves)
        self.resize(FIRST_WIDE, FIRST_HIGH)

    def _every_page(self) -> tuple[QWidget, ...]:
        return self.setup, self.answer, self.results, self.progress

    def _connect(self) -> None:
        self._making.found.connect(self._found)
        self.setup.begun.connect(self.begin)
        self.setup.arrangement_chosen.connect(self._show_sound)
        self.setup.suggestion_wanted.connect(self.suggest)
        self.setup.progress_wanted.connect(self.show_progress)
        self.sheet.chosen.connect(self._chosen)
        self.sheet.meant.connect(self._meant)
        self.answer.marked.connect(self.mark)
        self.answer.taken_back.connect(self.take_back)
        self.answer.mark_chosen.connect(self.sheet.choose)
        self.answer.shown.connect(self.show_answer)
        self.answer.left.connect(self.show_setup)
        self.results.told_chosen.connect(self._show_told)
        self.results.false_chosen.connect(self._show_false)
        self.results.another.connect(self.another)
        self.results.again.connect(self.again)
        self.results.left.connect(self.show_setup)
        self.progress.left.connect(self.show_setup)

    # What others may ask.

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self.sheet.set_theme(theme)
        self.results.set_theme(theme)

    @property
    def is_busy(self) -> bool:
        """Whether an exercise is being made."""
        return self._making.is_busy

    def begin(self, wanted: Wanted) -> None:
        """Make an exercise beside the window; without a seed it is a surprise."""
        seed = self._surprise() if wanted.seed is None else wanted.seed
        self._wanted = wanted
        self.setup.say("")
        self.setup.show_busy(True)
        for button in (self.results.another_button, self.results.again_button):
            button.setEnabled(False)
        self._making.ask(Wanted(wanted.kinds, wanted.count, wanted.arrangement, seed))

    def mark(self, mark: Mark) -> None:
        """Say that something is wrong."""
        if mark not in self.marks:
            self.marks = (*self.marks, mark)
            self._show_marks()
        # Whoever pressed a key is shown where the keys go now.
        self.sheet.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def take_back(self, mark: Mark) -> None:
        """Say it no more."""
        self.marks = tuple(each for each in self.marks if each != mark)
        self._show_marks()

    def show_answer(self) -> None:
        """Score what was marked, explain it on the drawing, and keep it."""
        made = self.exercise
        if made is None or self.result is not None:
            return
        self.result = score(made, self.marks)
        self.log = with_exercise(self.log, made, self.result, self._today().isoformat())
        self.results.say_not_kept(self._keep())
        self.sheet.choose("")
        self.sheet.show_open()
        self.results.show_score(made.drawing, self.result)
        self._go(self.results)
        self.results.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def another(self) -> None:
        """The next exercise of the same kinds, as a surprise."""
        if self._wanted is not None:
            self.setup.seed.clear()
            self.begin(Wanted(self._wanted.kinds, self._wanted.count, self._wanted.arrangement, None))

    def again(self) -> None:
        """The same exercise once more."""
        if self.exercise is not None:
            self._open(self.exercise)

    def show_setup(self) -> None:
        """Choose an exercise."""
        self._show_sound(self.setup.wanted.arrangement)
        self._go(self.setup)
        self.setup.begin.setFocus(Qt.FocusReason.OtherFocusReason)

    def suggest(self) -> None:
        """Choose the kinds that are least surely known."""
        self.setup.choose(suggested(self.log, faults()))

    def show_progress(self) -> None:
        """Show what was practised."""
        self.progress.show_log(self.log, self._file, self._trouble)
        self._go(self.progress)
        self.progress.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def close_down(self) -> None:
        """Stop; the thread has ended when this returns."""
        self._making.close()

    # Exercises.

    def _show_sound(self, arrangement: str | None) -> None:
        """Before an exercise: the sound drawing of an arrangement, of the first where any will do."""
        known = arrangements()
        self.exercise = None
        self.sheet.set_drawing(known[arrangement or next(iter(known))].drawing)

    def _found(self, asked: Wanted, made: Exercise | None) -> None:
        self.setup.show_busy(False)
        for button in (self.results.another_button, self.results.again_button):
            button.setEnabled(True)
        if made is None:
            self.setup.say(
                tr(
                    "No drawing takes {count} faults of these kinds. Choose more kinds, or fewer faults.",
                    count=asked.count,
                )
            )
            self.show_setup()
            return
        self._open(made)

    def _open(self, made: Exercise) -> None:
        self.exercise, self.result, self.marks = made, None, ()
        self.sheet.set_drawing(made.drawing)
        self.answer.begin(made.drawing, len(made.planted), made.seed)
        self._go(self.answer)
        # Whoever pressed a key is shown where the keys go now.
        self.sheet.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _go(self, page: QWidget) -> None:
        self.pages.setCurrentWidget(page)

    # Answering.

    @property
    def _is_answering(self) -> bool:
        return self.exercise is not None and self.result is None and self.pages.currentWidget() is self.answer

    def _chosen(self, id: str) -> None:
        if self._is_answering:
            self.answer.show_place(id or None)

    def _meant(self, id: str) -> None:
        if self._is_answering:
            self.answer.show_place(id, looks=True)

    def _show_marks(self) -> None:
        self.answer.show_marks(self.marks)
        places: dict[str, list[str]] = {}
        for number, mark in enumerate(self.marks, 1):
            places.setdefault(mark.place, []).append(str(number))
        self.sheet.ring(
            Ringed(place, ", ".join(numbers), MARKED) for place, numbers in places.items() if place != WHOLE
        )

    # The answer.

    def _show_told(self, told: Told) -> None:
        self._ring_result()
        self.sheet.show_finding(told.findings[0] if told.findings else None)

    def _show_false(self, mark: Mark) -> None:
        self._ring_result()
        self.sheet.show_finding(None)
        if mark.place != WHOLE:
            self.sheet.bring(mark.place)

    def _ring_result(self) -> None:
        if self.result is None or self.exercise is None:
            return
        drawing = self.exercise.drawing
        known = {*drawing.components, *drawing.pipes, *drawing.controls}
        ringed: dict[str, Ringed] = {}
        said: dict[str, list[Outcome]] = {}
        for mark in self.result.false:
            ringed[mark.place] = Ringed(mark.place, tr("sound"), FALSE)
        for told in self.result.told:
            places = (*(mark.place for mark in told.marks), *told.planted.parts, *told.planted.pipes)
            place = next((each for each in places if each in known), None)
            if place is not None:
                said.setdefault(place, []).append(told.outcome)
        for place, outcomes in said.items():
            # Of several faults at one place the words of all stand there, and the worst tells the ring.
            words = ", ".join(outcome_words(each) for each in dict.fromkeys(outcomes))
            ringed[place] = Ringed(place, words, OUTCOMES[max(outcomes, key=list(Outcome).index)])
        self.sheet.ring(each for id, each in ringed.items() if id != WHOLE)

    # What is kept.

    def _read(self) -> Log:
        try:
            return read(self._file)
        except (ProgressError, OSError) as error:
            # What cannot be read is never written over.
            self._trouble = tr("Progress is not kept: {reason}", reason=tr(of_error(error)))
            return Log()

    def _keep(self) -> str:
        if self._trouble:
            return self._trouble
        try:
            self._file.parent.mkdir(parents=True, exist_ok=True)
            write(self.log, self._file)
        except OSError as error:
            return tr("Progress is not kept: {reason}", reason=tr(of_error(error)))
        return ""

    def showEvent(self, event: QShowEvent) -> None:
        """The whole drawing is in view when the window comes up."""
        super().showEvent(event)
        self.sheet.fit()

    def closeEvent(self, event: QCloseEvent) -> None:
        """An exercise that is being made is no longer wanted."""
        self._making.forget()
        self.setup.show_busy(False)
        super().closeEvent(event)


def _made(wanted: Wanted) -> Exercise | None:
    """In the other thread: the exercise; None where no drawing takes it."""
    try:
        return exercise(wanted.seed or 0, wanted.kinds, wanted.count, wanted.arrangement)
    except NoExerciseError:
        return None

"""A drawing to be operated: situations, valves to turn, flow that moves, and what it comes to in time."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from PySide6.QtCore import QLocale, QSize, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.operating.bar import OperatingBar, Shown
from circuitcheck.editor.operating.in_time import InTime
from circuitcheck.editor.operating.player import Player
from circuitcheck.editor.operating.sheet import OperatedSheet
from circuitcheck.editor.operating.side import OperatingSide
from circuitcheck.editor.operating.words import Row, cut_off_words, missing_words, stands
from circuitcheck.editor.operating.worker import Answer, Question, Worker
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.operating.positions import Positions, named, pressed, shut_by_hand, turned
from circuitcheck.operating.readings import stopped
from circuitcheck.operating.standing import Operated, Standing
from circuitcheck.report.flows import pipe_words

CHART_PX, COMPACT_CHART_PX = 198, 140


class LiveView(QWidget):
    """Shows any drawing at work; the drawing itself is never changed.

    `show_drawing` puts it up, `choose` takes a situation, `press` turns a part and `turn` one passage,
    `stand` sets everything at once. Signals `positions_changed` with the `Positions` as soon as anything
    was turned, `standing_changed` with the `Standing` once that is solved (beside the window), `left` when
    it is to be left, `fill_in_wanted` with the fields that are missing. `compact`: without the lists at the
    side, for a small picture; `closable`: with a cross to leave by. Call `close_down` at the end.
    """

    positions_changed = Signal(object)
    standing_changed = Signal(object)
    left = Signal()
    fill_in_wanted = Signal(object)

    def __init__(
        self,
        parent: QWidget | None = None,
        *,
        compact: bool = False,
        closable: bool = False,
        chart: bool = True,
    ) -> None:
        super().__init__(parent)
        self._theme = light()
        self._drawing = Drawing()
        self._operated: Operated | None = None
        self._offered: tuple[Positions, ...] = ()
        self._positions: Positions | None = None
        self._standing: Standing | None = None
        self._work = WorkingOut(Worker(), "operating", 0, self)
        self._work.found.connect(self._found)
        self._timed = InTime(self) if chart else None
        self.bar = OperatingBar(compact=compact, closable=closable)
        self.side = OperatingSide()
        self.sheet = OperatedSheet()
        self.sheet.set_turns(self._turns)
        self.sheet.fits_title = not compact
        self._middle = QVBoxLayout()
        self._middle.setContentsMargins(0, 0, 0, 0)
        self._middle.setSpacing(0)
        self._middle.addWidget(self.bar)
        self._middle.addWidget(self.sheet, 1)
        if self._timed is not None:
            rule = QFrame()
            rule.setObjectName("rule")
            rule.setFixedHeight(1)
            self._middle.addWidget(rule)
            self._timed.player.chart.setFixedHeight(COMPACT_CHART_PX if compact else CHART_PX)
            self._middle.addWidget(self._timed.player)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(0)
        line.addWidget(self.side)
        nest(line, self._middle, 1)
        self.side.setVisible(not compact)
        # No focus proxy: Tab would come by it to the sheet, past what stands before the sheet.
        self._connect()

    def _connect(self) -> None:
        self.side.situation_wanted.connect(self.choose)
        self.side.turn_wanted.connect(self._turn_row)
        self.side.own_wanted.connect(self._own)
        self.bar.situation_wanted.connect(self.choose)
        self.bar.shown_changed.connect(self._show_standing)
        self.bar.moving_changed.connect(self.sheet.set_moving)
        self.bar.fill_in_wanted.connect(self._want_fill_in)
        self.bar.left.connect(self.left)
        self.sheet.pressed.connect(self.press)
        self.sheet.chosen.connect(self._say)
        self.sheet.left.connect(self.left)
        self.sheet.laid_out.connect(self._show_standing)
        if self._timed is not None:
            self._timed.changed.connect(self._show_standing)
            self._timed.moved.connect(self._show_time)
            self._timed.fill_in_wanted.connect(self.fill_in_wanted)

    # What others may ask.

    def show_drawing(
        self,
        drawing: Drawing,
        *,
        situation: str | None = None,
        shut: Iterable[str] = (),
        positions: Positions | None = None,
    ) -> None:
        """Show a drawing in a situation (None: the first there is) with these passages shut, named as a
        witness names them (`iv1`, `tv1:a`). Shut without a situation: as a proof has it, these and no
        others. `positions`: everything as told."""
        self._drawing = drawing
        self._operated, self._positions, self._standing = None, None, None
        self.sheet.set_drawing(drawing)
        self.sheet.show_standing(None, self.bar.chosen_shown.by)
        self.bar.say("")
        if self._timed is not None:
            self._timed.forget()
        self._work.ask(Question(drawing, positions, situation or "", tuple(shut)))

    def follow(self, drawing: Drawing) -> None:
        """Show a drawing that is an edit of the one shown, with everything as it stands."""
        self.show_drawing(drawing, positions=self._positions)

    @property
    def drawing(self) -> Drawing:
        """What is shown."""
        return self._drawing

    @property
    def positions(self) -> Positions | None:
        """How everything stands; None until the situations are known."""
        return self._positions

    @property
    def standing(self) -> Standing | None:
        """What flows and what is cut off; None until it is solved."""
        return self._standing

    @property
    def situations(self) -> tuple[Positions, ...]:
        """The situations that can be chosen."""
        return self._offered

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._work.is_busy or (self._timed is not None and self._timed.is_busy)

    def choose(self, situation: str) -> None:
        """Take a situation by its name."""
        found = named(self._offered, situation)
        if found is not None:
            flooded = self._positions.flooded if self._positions is not None else frozenset()
            self.stand(found if not flooded else found.by_hand(flooded=flooded))

    def press(self, part: str) -> None:
        """Turn what a part has to turn; nothing for a part that has nothing."""
        if self._operated is not None and self._positions is not None:
            found = pressed(self._operated.plant, self._positions, part)
            if found is not None:
                self.stand(found)

    def turn(self, label: str) -> None:
        """Shut a passage that is open, or open one that is shut."""
        if self._operated is not None and self._positions is not None:
            self.stand(turned(self._operated.plant, self._positions, label))

    def shut(self, labels: Iterable[str]) -> None:
        """Shut these passages as well."""
        if self._operated is not None and self._positions is not None:
            self.stand(shut_by_hand(self._operated.plant.circuit, self._positions, labels))

    def stand(self, positions: Positions) -> None:
        """Let everything stand so."""
        if positions == self._positions:
            return
        self._positions = positions
        self._show_positions()
        if self._timed is not None:
            self._timed.expect()
        self._work.ask(Question(self._drawing, positions))
        self.positions_changed.emit(positions)

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self._theme = theme
        self.sheet.set_theme(theme)
        self.side.set_theme(theme)
        if self._timed is not None:
            self._timed.player.set_theme(theme)
        self._show_standing()

    def close_down(self) -> None:
        """Stop; the threads have ended when this returns."""
        self.sheet.set_moving(False)
        self.sheet.stop()
        if self._timed is not None:
            self._timed.close()
        self._work.close()

    def sizeHint(self) -> QSize:
        """Room for a small drawing."""
        return QSize(720, 520)

    # What comes of it.

    def _turns(self, part: str) -> bool:
        if self._operated is None or self._positions is None:
            return False
        return pressed(self._operated.plant, self._positions, part) is not None

    def _own(self) -> None:
        """One's own begins with everything as it stands."""
        if self._positions is not None:
            self.stand(self._positions.by_hand())

    def _turn_row(self, row: Row) -> None:
        if self._positions is None:
            return
        if row.label.startswith("pump "):
            self.stand(self._positions.by_hand(running=self._positions.running ^ {row.part}))
        elif row.label:
            self.turn(row.label)
        else:
            self.press(row.part)

    def _found(self, asked: Question, answer: Answer | None) -> None:
        if answer is None:
            self.bar.say(tr("The flows failed inside the program; none is shown."))
            return
        self._operated, self._offered = answer.operated, answer.situations
        is_first = self._positions is None
        self._standing = answer.standing
        if self._timed is not None:
            self._timed.stand(answer.standing)
        self._positions = answer.standing.positions
        self._show_positions()
        self._show_standing()
        if is_first:
            self.positions_changed.emit(self._positions)
        self.standing_changed.emit(self._standing)

    def _show_positions(self) -> None:
        if self._operated is None or self._positions is None:
            return
        self.side.show_positions(self._operated.plant, self._offered, self._positions)
        self.bar.show_positions(self._offered, self._positions)

    def _show_standing(self) -> None:
        shown, timed, standing = self.bar.chosen_shown, self._timed, self._standing
        if timed is not None and standing is not None and timed.has_stopped:
            standing = stopped(standing)
        texts: Mapping[str, str] | None = None
        if shown in (Shown.PRESSURE, Shown.TEMPERATURE):
            texts = {} if timed is None or self._operated is None else timed.texts(shown)
        self.sheet.show_standing(standing, shown.by, texts, self._words())
        self._say()

    def _show_time(self) -> None:
        """Time has moved: only what is read of it changes, where nothing of it stands by the pipes."""
        if self.bar.chosen_shown in (Shown.PRESSURE, Shown.TEMPERATURE):
            self._show_standing()
        else:
            self.sheet.show_words(self._words())

    def _words(self) -> dict[str, str]:
        """What stands at parts: what gauges read, how warm stores are, a vessel without its gas."""
        found = {} if self._timed is None else self._timed.words()
        if self._positions is not None:
            found |= {part: tr("no gas") for part in sorted(self._positions.flooded)}
        return found

    @property
    def player(self) -> Player | None:
        """Computed time; None where no chart was asked for."""
        return None if self._timed is None else self._timed.player

    @property
    def timed(self) -> InTime | None:
        """What the chart shows and what is read of it."""
        return self._timed

    def _say(self, *_: object) -> None:
        """One line: what is cut off or missing or failed, else the pipe that is chosen, else how it stands."""
        standing = self._standing
        if standing is None or self._operated is None:
            return
        id = self.sheet.chosen_id
        decimal = QLocale().decimalPoint()
        if id is not None and id in standing.drawing.pipes:
            self.bar.say(tr(pipe_words(standing.drawing, id, standing.flows, decimal)))
            return
        sentences = [cut_off_words(standing), tr(standing.flows.fault), missing_words(standing)]
        said = " ".join(each for each in sentences if each)
        if not said:
            said = tr("{how}.", how=stands(self._operated.plant.circuit, standing.positions))
            said = said[:1].upper() + said[1:]
        self.bar.say(said, asks=bool(standing.missing))

    def _want_fill_in(self) -> None:
        self.fill_in_wanted.emit(() if self._standing is None else self._standing.missing)

"""Time in a drawing at work: its courses worked out beside the window, and what is read at the time at hand."""

from __future__ import annotations

from time import perf_counter
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, QObject, Signal

from circuitcheck.editor.operating.bar import Shown
from circuitcheck.editor.operating.chart import Level, said_value
from circuitcheck.editor.operating.player import Player
from circuitcheck.editor.operating.worker import CourseAnswer, CourseQuestion, CourseWorker
from circuitcheck.editor.translating import shown_told, tr, tr_n
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.operating.readings import Readings, runs_on
from circuitcheck.operating.standing import Standing
from circuitcheck.operating.track import Track
from circuitcheck.parts.kind import Role
from circuitcheck.report.wording import missing_words

if TYPE_CHECKING:
    from circuitcheck.operating.running import Model

READ_EVERY_S = 0.4
"""How often what stands on the sheet follows while time runs."""
MOST_NAMED = 3
LONGEST_S = 12 * 3600.0


class InTime(QObject):
    """Joins a player to the courses. Signals `changed` when another course stands or its pumps stop, `moved`
    when only time has, `fill_in_wanted` with the fields without which there is no course."""

    changed = Signal()
    moved = Signal()
    fill_in_wanted = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.player = Player()
        self._standing: Standing | None = None
        self._readings: Readings | None = None
        self._model: Model | None = None
        self._track = Track()
        self._told = 0.0
        self._had_stopped = False
        self._worker = CourseWorker()
        self._work = WorkingOut(self._worker, "course", 0, self)
        self._work.found.connect(self._found)
        self.player.moved.connect(self._moved)
        self.player.reset_wanted.connect(self._begin_anew)
        self.player.more_wanted.connect(self._go_on)
        self.player.fill_in_wanted.connect(self._fill_in)

    # What others may ask.

    @property
    def track(self) -> Track:
        """All that is known in time."""
        return self._track

    @property
    def model(self) -> Model | None:
        """What runs in time; None until it is known."""
        return self._model

    @property
    def is_busy(self) -> bool:
        """Whether a course is still to come."""
        return self._work.is_busy

    def forget(self) -> None:
        """Another drawing comes: begin at its beginning."""
        self._worker.wanted = None
        self._work.forget()
        # A model of the drawing before knows nothing of this one's pipes.
        self._standing, self._readings, self._model, self._track = None, None, None, Track()
        self.player.begin()

    def expect(self) -> None:
        """Everything is about to stand otherwise: what is being worked out is no longer wanted."""
        self._worker.wanted = None

    def stand(self, standing: Standing) -> None:
        """Everything stands so from the time at hand on."""
        at = self.player.at_s
        state = self._track.state_at(at) if at > 0 else None
        self._standing, self._readings = standing, None
        if state is None:
            self._track = Track()
        self._ask(CourseQuestion(standing, state))

    def _ask(self, question: CourseQuestion) -> None:
        self._worker.wanted = question
        self._work.ask(question)

    def close(self) -> None:
        """Stop; the thread has ended when this returns."""
        self._worker.wanted = None
        self.player.pause()
        self._work.close()

    @property
    def has_stopped(self) -> bool:
        """Whether the pumps of a run-on have stopped by the time at hand."""
        if self._standing is None or not runs_on(self._standing):
            return False
        row = self._track.row_at(self.player.at_s)
        return row is not None and not row.is_driven

    def texts(self, shown: Shown) -> dict[str, str]:
        """What stands by each pipe: its temperature, or its pressure."""
        state, model = self._track.state_at(self.player.at_s), self._model
        if state is None or model is None:
            return {}
        decimal = QLocale().decimalPoint()
        if shown is Shown.TEMPERATURE:
            known = model.celsius(state)
            pipes = model.plant.drawing.pipes
            return {id: said_value(c, "°C", decimal) for id, c in known.items() if id in pipes}
        readings = self._read()
        if readings is None:
            return {}
        found = readings.by_pipe(model.bar(state))
        return {id: said_value(bar, "bar", decimal) for id, bar in found.items()}

    def words(self) -> dict[str, str]:
        """What stands at parts: what each gauge reads, how warm each store is."""
        state, model, readings = self._track.state_at(self.player.at_s), self._model, self._read()
        row = self._track.row_at(self.player.at_s)
        if state is None or model is None or readings is None or row is None:
            return {}
        decimal = QLocale().decimalPoint()
        found = {
            part: said_value(bar, "bar", decimal) for part, bar in readings.gauges(model.bar(state)).items()
        }
        for store, celsius in zip(self._track.stores, row.store_c, strict=False):
            found[store] = said_value(celsius, "°C", decimal)
        for valve in row.lifted:
            found[valve] = tr("lifts")
        for source in row.tripped:
            found[source] = tr("cut out")
        return found

    def _read(self) -> Readings | None:
        if self._readings is None and self._standing is not None and self._model is not None:
            standing = self._standing
            self._readings = Readings(self._model.plant, standing)
        return self._readings

    # What comes of it.

    def _found(self, asked: CourseQuestion, answer: CourseAnswer | None) -> None:
        if answer is None:
            self.player.show_none(tr("The course failed inside the program; none is shown."), asks=False)
            return
        self._model, self._readings = answer.model, None
        if answer.course is None:
            self._track = Track()
            self._refuse(answer.model, asked.standing)
        else:
            self._track = (
                self._track.add(answer.course) if asked.state is not None else Track((answer.course,))
            )
            self._show()
        self.changed.emit()

    def _refuse(self, model: Model, standing: Standing) -> None:
        drawing = model.plant.drawing
        missing = self._missing(model, standing)
        if model.refused:
            said = tr("Nothing can be worked out in time: {why}.", why=model.refused)
        elif not missing:
            said = tr("Nothing can be worked out in time, since it is not known what flows.")
        else:
            names = [missing_words(drawing, name) for name in missing]
            more = len(names) - MOST_NAMED
            said = tr_n(
                "The chart needs one more number: {names}.",
                "The chart needs {count} more numbers: {names}.",
                len(names),
                names="; ".join(names[:MOST_NAMED]) + ("; …" if more > 0 else ""),
            )
        self.player.show_none(said, asks=bool(missing) and not model.refused)

    @staticmethod
    def _missing(model: Model, standing: Standing) -> tuple[str, ...]:
        """The fields that a course needs and that are not filled in."""
        return tuple(dict.fromkeys((*model.missing, *(() if standing.is_known else standing.missing))))

    def _show(self) -> None:
        model = self._model
        if model is None:
            return
        drawing = model.plant.drawing
        names = [shown_told(drawing.name(each.id)) for each in model.heat.sources]
        stores = [shown_told(drawing.name(each.id)) for each in model.heat.coils]
        self.player.show_track(self._track, self._levels(model), names, stores, limits(model))
        if self._standing is not None and self._standing.cut_off:
            self.player.choose_source(self._standing.cut_off[0].part)

    def _levels(self, model: Model) -> list[Level]:
        """The safety valve's setting and the vessel's charge, to hold the pressure against."""
        decimal = QLocale().decimalPoint()
        found = []
        opens = [each for each in model.held.reliefs if not each.is_plugged]
        plugged = [each for each in model.held.reliefs if each.is_plugged]
        for each in (opens or plugged)[:1]:
            bar = f"{each.set_bar:g} bar".replace(".", decimal)
            name = tr("safety valve {bar}", bar=bar)
            if each.is_plugged:
                name = tr("plugged safety valve {bar}", bar=bar)
            found.append(Level(name, each.set_bar, "danger", (5, 3)))
        heating = [each for each in model.held.cushions if not each.is_open]
        for vessel in heating[:1]:
            bar = f"{vessel.charge_bar:g} bar".replace(".", decimal)
            found.append(Level(tr("vessel’s charge {bar}", bar=bar), vessel.charge_bar, "advice", (2, 3)))
        return found

    def _moved(self, seconds: float) -> None:
        now = perf_counter()
        has_stopped = self.has_stopped
        if has_stopped != self._had_stopped:
            self._told, self._had_stopped = now, has_stopped
            self.changed.emit()
        elif now - self._told >= READ_EVERY_S or not self.player.is_playing:
            self._told = now
            self.moved.emit()

    def _begin_anew(self) -> None:
        self._track = Track()
        if self._standing is not None:
            self._ask(CourseQuestion(self._standing))
        self.changed.emit()

    def _go_on(self) -> None:
        if self._standing is None or self._track.is_empty or self._track.ends_s >= LONGEST_S:
            return
        self._ask(CourseQuestion(self._standing, self._track.state_at(self._track.ends_s), goes_on=True))

    def _fill_in(self) -> None:
        model, standing = self._model, self._standing
        missing = () if model is None or standing is None else self._missing(model, standing)
        self.fill_in_wanted.emit(missing)


def limits(model: Model) -> str:
    """What the model leaves out and takes for granted, in a few sentences."""
    said = [
        tr(
            "Each pipe and each part holds water of one temperature, which the solved flow carries on; pipes and "
            "stores lose no heat, and nothing circulates by warmth alone. Rooms stay as warm as they are set."
        ),
        tr(
            "A heat source burns at its output until its flow is near the design’s, and heats by way of its own "
            "metal (0.5 kJ/K for each kW, 40 K above the water); its overheat cut-out, where one is stated, trips "
            "at 95 °C (common practice, no source). Controls do not turn anything by themselves; a pump’s run-on ends."
        ),
        tr(
            "Vessels: Boyle’s law, the gas staying as cool as it was; the tube’s growth by warmth counts only where "
            "nothing else gives way. A safety valve holds its set pressure once it lifts: it needs up to a tenth "
            "more for its full lift, and reseats up to a fifth lower (EN ISO 4126-1, from memory). Pressures are "
            "the vessel’s, and at gauges and pipes also by height and pump."
        ),
    ]
    if model.cells.spread:
        litres = model.cells.spread.replace(".", QLocale().decimalPoint())
        said.append(
            tr(
                "The design states {litres} l more water than the parts and pipes drawn hold: it stands with the "
                "emitters.",
                litres=litres,
            )
        )
    plant = model.plant
    if any(
        plant.bodies.of(each.node) in plant.bodies.with_heat_source
        for each in plant.circuit.devices(Role.BLENDS)
    ):
        said.append(
            tr(
                "A blending valve on heating water lets its hot water through as it comes: what it mixes in is not "
                "worked out, and beyond it the water is cooler than shown."
            )
        )
    return " ".join(said)

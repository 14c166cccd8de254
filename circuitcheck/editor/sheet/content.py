"""What lies on the sheet: the items of a drawing by id, made anew only where the drawing changed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from contextlib import nullcontext

from PySide6.QtCore import QRectF
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene

from circuitcheck.drawing.value import Component, Control, Drawing
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.editor.sheet.overview import FAR_SCALE, OverviewItem
from circuitcheck.editor.sheet.painting import Palette, Tone
from circuitcheck.editor.sheet.part_item import Lens, PartItem, PartView, rect_of
from circuitcheck.editor.sheet.pipe_item import PipeItem, PipeView
from circuitcheck.editor.sheet.pixmaps import Look, Pixmaps
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import WINDOW, tr
from circuitcheck.garbage import building_to_stay
from circuitcheck.geometry import Point
from circuitcheck.picture.grades import open_port_mark
from circuitcheck.picture.labels import Rect
from circuitcheck.picture.marks import SQUARE_PX, Mark, moved
from circuitcheck.picture.title_block import size as title_size
from circuitcheck.picture.title_block import title_block
from circuitcheck.sheet import depiction
from circuitcheck.sheet.labelling import Labelling
from circuitcheck.sheet.layout import Layout, Services, symbol_box

TITLE_CLEAR_PX = 40.0
MANY = 500
"""So many parts more than before take a while to build."""
NO_STATES: frozenset[str] = frozenset()


class Content:
    """The scene and its items. It owns them by id; an item owns nothing and outlives no drawing."""

    def __init__(self, services: Services, theme: Theme) -> None:
        self.scene = QGraphicsScene()
        self.scene.setItemIndexMethod(QGraphicsScene.ItemIndexMethod.BspTreeIndex)
        self.far_scene = QGraphicsScene()
        self.layout = Layout(services, Labelling(WINDOW.decimal, WINDOW))
        self.lens = Lens(Pixmaps())
        self.is_far = False
        self.marks_open = True
        """Whether an open port or a pipe's free end has its mark; in practice it would give the fault away."""
        self.parts: dict[str, PartItem] = {}
        self.pipes: dict[str, PipeItem] = {}
        self._theme = theme
        self._palettes: dict[tuple[Tone, str], Palette] = {}
        self._in_focus: frozenset[str] | None = None
        self._shut: Mapping[str, frozenset[str]] = {}
        self._chosen: frozenset[str] = frozenset()
        self._still: frozenset[str] = frozenset()
        self._commanded: Mapping[str, frozenset[str]] = {}
        self._title = MarksItem((), self._palette(Tone.PLAIN), z=-5)
        self.scene.addItem(self._title)
        self._overview = OverviewItem(self.lens)
        self.far_scene.addItem(self._overview)

    @property
    def drawing(self) -> Drawing:
        """What is shown."""
        return self.layout.drawing

    @property
    def theme(self) -> Theme:
        """The colours it is shown in."""
        return self._theme

    @property
    def palette(self) -> Palette:
        """The theme's colours as they are."""
        return self._palette(Tone.PLAIN)

    def tone_palette(self, tone: Tone) -> Palette:
        """The theme's colours in one tone."""
        return self._palette(tone)

    def show(self, drawing: Drawing, *, passing: bool = False) -> None:
        """Show a drawing; `passing`: while a gesture lasts, labels and title block wait for its end."""
        many = len(drawing.components) - len(self.drawing.components) > MANY
        with building_to_stay() if many else nullcontext():
            self._show(drawing, passing=passing)

    def _show(self, drawing: Drawing, *, passing: bool) -> None:
        changes = self.layout.update(drawing, passing=passing)
        for id in changes.gone:
            self._drop(self.parts.pop(id, None))
            self._drop(self.pipes.pop(id, None))
        self._refresh(changes.parts, changes.pipes)
        if not passing:
            self._place_title()
        if self.is_far and (changes.parts or changes.pipes or changes.gone):
            self._overview.show_items(self.parts.values(), self.pipes.values())

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self._theme = theme
        self._palettes.clear()
        self.lens.pixmaps.clear()
        self.refresh_all()

    def focus(
        self,
        ids: frozenset[str] | None,
        shut: Mapping[str, frozenset[str]],
        around: Mapping[str, float],
        boxes: Iterable[Rect],
    ) -> None:
        """Let only these ids keep their colour (None: all), and show these parts as valves shut.

        Labels keep so many px more clear around some parts, and out of these boxes.
        """
        self._in_focus, self._shut = ids, shut
        self.layout.keep_clear(around, boxes)
        self.refresh_all()

    def show_running(self, still: frozenset[str], shut: Mapping[str, frozenset[str]]) -> None:
        """Let these pipes and tees turn pale, and show these valves as commanded shut."""
        parts, pipes = self.layout.things, self.drawing.pipes
        changed = self._still ^ still
        moved_valves = {id for id in {*self._commanded, *shut} if self._commanded.get(id) != shut.get(id)}
        self._still, self._commanded = still, dict(shut)
        self._refresh(frozenset((changed | moved_valves) & parts.keys()), frozenset(changed & pipes.keys()))

    def is_quiet(self, id: str) -> bool:
        """Whether a thing is out of focus."""
        return self._in_focus is not None and id not in self._in_focus

    def choose(self, ids: frozenset[str]) -> None:
        """Show these as about to be placed, from when they are next shown."""
        changed = self._chosen ^ ids
        self._chosen = ids
        self._refresh(changed & self.parts.keys(), changed & self.pipes.keys())

    def refresh_all(self) -> None:
        """Make the view of every part and pipe anew."""
        self._refresh(frozenset(self.layout.things), frozenset(self.drawing.pipes))
        self._place_title()
        if self.is_far:
            self._overview.show_items(self.parts.values(), self.pipes.values())

    def seen_from(self, zoom: float) -> QGraphicsScene:
        """The scene to look at from this near: the items, or from far off the overview of them."""
        was_far, self.is_far = self.is_far, zoom < FAR_SCALE
        if self.is_far and not was_far:
            self._overview.show_items(self.parts.values(), self.pipes.values())
        return self.far_scene if self.is_far else self.scene

    def bounds(self) -> QRectF:
        """The box round all that is drawn, the title block included; null on an empty sheet."""
        box = self.layout.bounds()
        if box is None:
            return QRectF()
        return rect_of(box).united(self._title.mapRectToScene(self._title.boundingRect()))

    def box(self, id: str) -> QRectF:
        """The box of a part's symbol or a pipe's line, in px; null where it is not placed."""
        box = self.layout.box(id)
        return QRectF() if box is None else rect_of(box)

    def symbol_reach(self, part: Component) -> QRectF:
        """The box of the symbol of a part that is perhaps not shown yet, its ports included."""
        box = symbol_box(part)
        return (
            QRectF() if box is None else rect_of(box).adjusted(-SQUARE_PX, -SQUARE_PX, SQUARE_PX, SQUARE_PX)
        )

    def near(self, box: QRectF) -> tuple[list[PartItem], list[PipeItem]]:
        """The parts and pipes whose items may lie in a box, topmost first."""
        found: list[QGraphicsItem] = self.scene.items(box)
        parts = [item for item in found if isinstance(item, PartItem)]
        return parts, [item for item in found if isinstance(item, PipeItem)]

    def close(self) -> None:
        """Let go of every item, for the end of the window."""
        self.parts.clear()
        self.pipes.clear()
        self.scene.clear()
        self.far_scene.clear()

    def _drop(self, item: PartItem | PipeItem | None) -> None:
        if item is not None:
            self.scene.removeItem(item)

    def _refresh(self, parts: frozenset[str], pipes: frozenset[str]) -> None:
        known = self.layout.things
        for id in parts:
            view = self._part_view(known[id])
            if view is None:
                self._drop(self.parts.pop(id, None))
            elif id in self.parts:
                self.parts[id].show_view(view)
            else:
                self.parts[id] = PartItem(id, view, self.lens)
                self.scene.addItem(self.parts[id])
        for id in pipes:
            pipe_view = self._pipe_view(id)
            if pipe_view is None:
                self._drop(self.pipes.pop(id, None))
            elif id in self.pipes:
                self.pipes[id].show_view(pipe_view)
            else:
                self.pipes[id] = PipeItem(id, pipe_view)
                self.scene.addItem(self.pipes[id])

    def _part_view(self, thing: Component | Control) -> PartView | None:
        if thing.at is None:
            return None
        tone = self._tone(thing.id)
        palette = self._palette(tone, self.layout.dot_role(thing) if thing.kind.name == "tee" else "ink")
        shown = depiction.states(thing) | self._shut.get(thing.id, NO_STATES)
        shown |= self._commanded.get(thing.id, NO_STATES)
        turn, mirrored = (thing.turn, thing.mirrored) if isinstance(thing, Component) else (0, False)
        return PartView(
            (thing.at.x * SQUARE_PX, thing.at.y * SQUARE_PX),
            Look(thing.kind.name, shown, turn, mirrored, palette.key),
            palette,
            self.layout.boxes[thing.id],
            self._open_ports(thing),
            self.layout.labels.get(thing.id),
            self._palette(Tone.QUIET if tone is Tone.QUIET else Tone.PLAIN),
        )

    def _open_ports(self, thing: Component | Control) -> tuple[Mark, ...]:
        """The marks of ports that need a pipe, from the part's middle."""
        if thing.at is None or not self.marks_open:
            return ()
        found = self.layout.open_ports.get(thing.id, ())
        marks = [mark for at, faces in found for mark in open_port_mark(*at, faces)]
        return moved(marks, -thing.at.x * SQUARE_PX, -thing.at.y * SQUARE_PX)

    def _pipe_view(self, id: str) -> PipeView | None:
        line = self.layout.lines.get(id)
        if not line:
            return None
        free = [self.marks_open and isinstance(end, Point) for end in self.drawing.pipes[id].ends]
        return PipeView(
            line,
            self.layout.service.get(id, "unknown"),
            self._palette(self._tone(id)),
            self.layout.hops.get(id, ()),
            self.layout.gaps.get(id),
            self.layout.caption(id),
            (free[0], free[1]),
        )

    def _tone(self, id: str) -> Tone:
        if id in self._chosen:
            return Tone.CHOSEN
        if id in self._shut:
            return Tone.WITNESS
        if self.is_quiet(id):
            return Tone.QUIET
        return Tone.STILL if id in self._still else Tone.PLAIN

    def _palette(self, tone: Tone, ink: str = "ink") -> Palette:
        if (tone, ink) not in self._palettes:
            self._palettes[(tone, ink)] = Palette(self._theme, tone, ink)
        return self._palettes[(tone, ink)]

    def _place_title(self) -> None:
        """Put title block and key below what stands over their place, at the drawing's left edge."""
        box = self.layout.bounds()
        if box is None:
            self._title.show_marks((), self.palette)
            return
        title = depiction.one_line(self.drawing.title) or tr("Drawing without a name")
        left = (box[0] // SQUARE_PX) * SQUARE_PX
        wide, _ = title_size(title, WINDOW)
        low = self.layout.lowest(left - SQUARE_PX, left + wide + 2 * SQUARE_PX)
        top = (max(low, box[1]) + TITLE_CLEAR_PX) // SQUARE_PX * SQUARE_PX
        marks = title_block(title, self.layout.tell(depiction.subtitle(self.drawing)), WINDOW)
        self._title.show_marks(moved(marks, left, top), self.palette)

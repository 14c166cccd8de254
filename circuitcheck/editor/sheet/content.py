"""What lies on the sheet: all that is shown of a drawing by id, made anew only where the drawing changed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence, Set
from contextlib import nullcontext
from typing import TypeVar

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGraphicsScene

from circuitcheck.drawing.value import Component, Control, Drawing
from circuitcheck.editor.sheet.far_batches import FarPart, FarPipe
from circuitcheck.editor.sheet.layer import Layer, WhenAsked, expose
from circuitcheck.editor.sheet.marks_item import MarksItem
from circuitcheck.editor.sheet.overview import FAR_SCALE, OverviewItem
from circuitcheck.editor.sheet.painting import Palette, Tone
from circuitcheck.editor.sheet.pixmaps import Look, Pixmaps
from circuitcheck.editor.sheet.shown_part import Lens, PartView, ShownPart, edges_of, paint_parts, rect_of
from circuitcheck.editor.sheet.shown_pipe import REACH_PX, PipeView, ShownPipe
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import WINDOW, tr
from circuitcheck.garbage import building_to_stay
from circuitcheck.geometry import Point
from circuitcheck.picture.grades import open_port_mark
from circuitcheck.picture.labels import Rect, grown
from circuitcheck.picture.marks import SQUARE_PX, Mark, moved
from circuitcheck.picture.pipes import Place
from circuitcheck.picture.title_block import size as title_size
from circuitcheck.picture.title_block import title_block
from circuitcheck.sheet import depiction
from circuitcheck.sheet.labelling import Labelling
from circuitcheck.sheet.layout import Layout, Services, symbol_box

TITLE_CLEAR_PX = 40.0
PIPES_Z, PARTS_Z = 0.0, 10.0
MANY = 500
"""So many parts more than before take a while to build; of so many that changed none is shown by itself."""
NO_STATES: frozenset[str] = frozenset()
NOT_LOOKED: tuple[Sequence[QRectF], Set[str]] = ((), frozenset())
"""The parts that lie in no boxes at all."""

Shown = TypeVar("Shown", ShownPart, ShownPipe)


class Content:
    """The scene and what is shown in it, by id: made when it comes into view, and owning nothing."""

    def __init__(self, services: Services, theme: Theme, *, serves_later: bool = False) -> None:
        """`serves_later`: somebody reads the services of a large drawing beside the window, and has `take_services`
        called."""
        self.scene = QGraphicsScene()
        # A handful of items, most of them as large as the sheet: an index would have nothing to tell apart.
        self.scene.setItemIndexMethod(QGraphicsScene.ItemIndexMethod.NoIndex)
        self.far_scene = QGraphicsScene()
        for scene in (self.scene, self.far_scene):
            # Until a view says what it scrolls over: not over all that a layer could paint on.
            scene.setSceneRect(QRectF(-1, -1, 2, 2))
        self._services = services
        self._serves_later = serves_later
        self.layout = self.new_layout()
        self.lens = Lens(Pixmaps())
        self.is_far = False
        self.marks_open = True
        """Whether an open port or a pipe's free end has its mark; in practice it would give the fault away."""
        self.parts = WhenAsked(lambda: self.layout.boxes, self._shown_part)
        self.pipes = WhenAsked(lambda: self.layout.lines, self._shown_pipe)
        self._theme = theme
        self._palettes: dict[tuple[Tone, str], Palette] = {}
        self._in_focus: frozenset[str] | None = None
        self._shut: Mapping[str, frozenset[str]] = {}
        self._chosen: frozenset[str] = frozenset()
        self._still: frozenset[str] = frozenset()
        self._commanded: Mapping[str, frozenset[str]] = {}
        self._title = MarksItem((), self._palette(Tone.PLAIN), z=-5)
        self.scene.addItem(self._title)
        self._parts_there = NOT_LOOKED
        self._layers = (Layer(self._paint_pipes, PIPES_Z), Layer(self._paint_parts, PARTS_Z))
        for layer in self._layers:
            self.scene.addItem(layer)
        self._overview = OverviewItem(self.lens, self)
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

    def show(self, drawing: Drawing, *, passing: bool = False, hurried: bool = False) -> None:
        """Show a drawing; `passing`: while a gesture lasts, labels and title block wait for its end.
        `hurried`: the next one may come at once; see `Layout.update`."""
        many = len(drawing.components) - len(self.drawing.components) > MANY
        with building_to_stay() if many else nullcontext():
            self._show(drawing, passing=passing, hurried=hurried)

    def _show(self, drawing: Drawing, *, passing: bool, hurried: bool) -> None:
        changes = self.layout.update(drawing, passing=passing, hurried=hurried)
        self._refresh(changes.parts | changes.gone, changes.pipes | changes.gone)
        if not passing:
            self._place_title()

    def new_layout(self) -> Layout:
        """A layout of nothing, as this sheet lays things out."""
        labelling = Labelling(WINDOW.decimal, WINDOW)
        return Layout(self._services, labelling, asks_elsewhere=self._serves_later)

    def take(self, layout: Layout) -> None:
        """Show a drawing that was laid out elsewhere, by a layout of `new_layout`."""
        self.layout = layout
        self.refresh_all()

    def take_services(self, services: Mapping[str, str]) -> None:
        """Show what the pipes carry, where the layout waited for that."""
        changes = self.layout.take_services(services)
        self._refresh(changes.parts, changes.pipes)
        self._place_title()

    def start_anew(self) -> None:
        """Show nothing: what was shown is no more, and what comes instead is not there yet."""
        self.take(self.new_layout())

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self._theme = theme
        self._palettes.clear()
        self.lens.pixmaps.clear()
        self._recolour()

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
        self._recolour()

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
        self._forget_all()
        self._place_title()

    def seen_from(self, zoom: float) -> QGraphicsScene:
        """The scene to look at from this near: the items, or from far off the overview of them."""
        self.is_far = zoom < FAR_SCALE
        if self.is_far:
            self._overview.follow()
        return self.far_scene if self.is_far else self.scene

    def bounds(self) -> QRectF:
        """The box round all that is drawn, the title block included; null on an empty sheet."""
        box = self.layout.bounds()
        if box is None:
            return QRectF()
        return rect_of(box).united(self._title.box)

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

    def near(self, box: QRectF) -> tuple[list[ShownPart], list[ShownPipe]]:
        """The parts and pipes that may lie in a box, topmost first."""
        parts, pipes = self.layout.within((edges_of(box),))
        return _meeting(self.parts, parts, (box,))[::-1], _meeting(self.pipes, pipes, (box,))[::-1]

    def close(self) -> None:
        """Let go of all that is shown, for the end of the window."""
        self.parts.forget()
        self.pipes.forget()
        self.scene.clear()
        self.far_scene.clear()

    def _paint_pipes(self, painter: QPainter, exposed: Sequence[QRectF]) -> None:
        """The first of the two layers that each frame paints: it looks for what lies there for both."""
        parts, pipes = self.within(exposed)
        self._parts_there = (exposed, parts)
        for pipe in _meeting(self.pipes, pipes, exposed):
            pipe.paint(painter)

    def _paint_parts(self, painter: QPainter, exposed: Sequence[QRectF]) -> None:
        looked_in, parts = self._parts_there
        self._parts_there = NOT_LOOKED
        if looked_in != exposed:
            parts, _ = self.within(exposed)
        paint_parts(painter, _meeting(self.parts, parts, exposed), self.lens)

    def within(self, exposed: Iterable[QRectF]) -> tuple[set[str], set[str]]:
        """The parts and the pipes of which anything may be painted in these boxes."""
        return self.layout.within([grown(edges_of(box), REACH_PX) for box in exposed])

    def _refresh(self, parts: frozenset[str], pipes: frozenset[str]) -> None:
        """Show these anew, where they are others than they were."""
        if len(parts) + len(pipes) > MANY:
            self._forget_all()
            return
        self._overview.note(parts | pipes)
        if self.is_far:
            self._overview.follow()
        boxes: list[QRectF] = []
        for id in parts:
            boxes += _otherwise(self.parts.made(id), self.parts.renew(id))
        for id in pipes:
            boxes += _otherwise(self.pipes.made(id), self.pipes.renew(id))
        expose(self.scene, boxes)

    def _forget_all(self) -> None:
        self._forget_shown()
        self._overview.renew_all()

    def _recolour(self) -> None:
        """Show everything anew, where symbols and lines lie as they did."""
        self._forget_shown()
        self._overview.recolour()
        self._place_title()

    def _forget_shown(self) -> None:
        self.parts.forget()
        self.pipes.forget()
        for layer in self._layers:
            layer.update()

    def _shown_part(self, id: str) -> ShownPart:
        return ShownPart(id, self._part_view(self.layout.things[id]))

    def _shown_pipe(self, id: str) -> ShownPipe:
        return ShownPipe(id, self._pipe_view(id))

    def far_boxes(self) -> tuple[Mapping[str, Rect], Mapping[str, Rect]]:
        """The boxes of all symbols and of the lines of all pipes, in px, by id."""
        return self.layout.boxes, self.layout.line_boxes

    def far_part(self, id: str) -> FarPart:
        """What is seen of a part from far off."""
        thing = self.layout.things[id]
        return FarPart(id, _middle(thing), self._part_palette(thing), self.layout.boxes[id])

    def far_pipe(self, id: str) -> FarPipe:
        """What is seen of a pipe from far off."""
        service = self.layout.service.get(id, "unknown")
        return FarPipe(self.layout.lines[id], service, self._palette(self._tone(id)))

    def look(self, id: str) -> Look:
        """What a part's symbol looks like."""
        thing = self.layout.things[id]
        return self._look(thing, self._part_palette(thing))

    def _part_view(self, thing: Component | Control) -> PartView:
        palette = self._part_palette(thing)
        quiet = self._tone(thing.id) is Tone.QUIET
        return PartView(
            _middle(thing),
            self._look(thing, palette),
            palette,
            self.layout.boxes[thing.id],
            self._open_ports(thing),
            self.layout.labels.get(thing.id),
            self._palette(Tone.QUIET if quiet else Tone.PLAIN),
        )

    def _part_palette(self, thing: Component | Control) -> Palette:
        ink = self.layout.dot_role(thing) if thing.kind.name == "tee" else "ink"
        return self._palette(self._tone(thing.id), ink)

    def _look(self, thing: Component | Control, palette: Palette) -> Look:
        shown = depiction.states(thing) | self._shut.get(thing.id, NO_STATES)
        shown |= self._commanded.get(thing.id, NO_STATES)
        turn, mirrored = (thing.turn, thing.mirrored) if isinstance(thing, Component) else (0, False)
        return Look(thing.kind.name, shown, turn, mirrored, palette.key)

    def _open_ports(self, thing: Component | Control) -> tuple[Mark, ...]:
        """The marks of ports that need a pipe."""
        if not self.marks_open:
            return ()
        found = self.layout.open_ports.get(thing.id, ())
        return tuple(mark for at, faces in found for mark in open_port_mark(*at, faces))

    def _pipe_view(self, id: str) -> PipeView:
        free = [self.marks_open and isinstance(end, Point) for end in self.drawing.pipes[id].ends]
        return PipeView(
            self.layout.lines[id],
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
        marks = title_block(title, self.layout.tell(self.layout.subtitle), WINDOW)
        self._title.show_marks(moved(marks, left, top), self.palette)


def _middle(thing: Component | Control) -> Place:
    """Where a thing that is placed stands, in px of the sheet."""
    assert thing.at is not None
    return thing.at.x * SQUARE_PX, thing.at.y * SQUARE_PX


def _meeting(known: Mapping[str, Shown], ids: Iterable[str], boxes: Sequence[QRectF]) -> list[Shown]:
    """Those of these ids that paint anything in these boxes, those on top last: in the order of their ids, so
    that it is the same whatever happened before."""
    shown = [known[id] for id in sorted(ids)]
    return [each for each in shown if _meet(each.boxes, boxes)]


def _meet(some: Sequence[QRectF], others: Sequence[QRectF]) -> bool:
    """Whether any of the ones meets any of the others."""
    # Plain loops: each step of a drag asks for hundreds of pairs.
    for one in some:
        for other in others:
            if one.intersects(other):
                return True
    return False


def _otherwise(old: ShownPart | ShownPipe | None, new: ShownPart | ShownPipe | None) -> list[QRectF]:
    """The boxes to paint anew of what is shown otherwise now. What was never made was never in view."""
    if old is not None and new is not None and old.view == new.view:
        return []
    return [box for shown in (old, new) if shown is not None for box in shown.boxes]

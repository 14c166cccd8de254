"""The flows of one situation as marks: arrows along the pipes, a figure beside them, valves told shut. No Qt."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from circuitcheck.picture import flow
from circuitcheck.picture.labels import Rect, grown
from circuitcheck.picture.marks import Mark
from circuitcheck.picture.pipes import Place
from circuitcheck.picture.taken import Taken
from circuitcheck.report.flows import By, Caption, PipeFlow, SituationFlows, captions
from circuitcheck.sheet.concern import LEG_STATES
from circuitcheck.sheet.layout import Layout
from circuitcheck.told import a_word, worded


@dataclass(frozen=True, slots=True)
class FlowPicture:
    """The marks, what is written beside which pipe, and how many figures found no place clear of others."""

    marks: tuple[Mark, ...]
    figures: Mapping[str, str]
    left_out: int = 0
    taken: tuple[Rect, ...] = ()
    """The boxes that figures, words and what was to be avoided stand in."""


class Places:
    """Where figures stood last on a layout: while time runs what they say changes, and they stay where they are as
    long as they are as wide, of the same pipes, and nothing else has come there."""

    def __init__(self) -> None:
        self._layout: Layout | None = None
        self._stood: dict[tuple[Rect, tuple[str, ...]], tuple[str, Rect]] = {}
        self._stand: dict[tuple[Rect, tuple[str, ...]], tuple[str, Rect]] = {}

    def begin(self, layout: Layout) -> None:
        """A picture is begun."""
        self._stood = self._stand if layout is self._layout else {}
        self._layout, self._stand = layout, {}

    def placed(
        self, layout: Layout, text: str, lines: Sequence[tuple[str, Sequence[Place]]], taken: Taken
    ) -> tuple[str, flow.Figure] | None:
        """The pipe that a figure stands by, and the figure; None where it finds no place."""
        asked = flow.word_box(text, 0, 0), tuple(id for id, _ in lines)
        known = self._stood.get(asked)
        if known is not None and not taken.is_met(grown(known[1], 2)):
            self._stand[asked] = known
            return known[0], flow.Figure(text, known[1])
        found = flow.placed(text, lines, layout.obstacles, taken)
        if found is not None:
            self._stand[asked] = found[0], found[1].box
        return found


class Flowing:
    """Makes the marks of flows on one layout. `is_quiet`: what is out of focus, and so is not read. `places`
    remembers where figures stand from one picture to the next."""

    def __init__(self, layout: Layout, is_quiet: Callable[[str], bool], places: Places | None = None) -> None:
        self._layout = layout
        self._is_quiet = is_quiet
        self._places = Places() if places is None else places

    def picture(
        self,
        situation: SituationFlows,
        by: By,
        *,
        avoid: Iterable[Rect] = (),
        figures: bool = True,
        tints: bool = True,
        arrows: bool = True,
        texts: Mapping[str, str] | None = None,
    ) -> FlowPicture:
        """All marks of a situation. `avoid`: boxes to keep clear of; without `figures`, arrows alone, and
        without `arrows` none. `texts`, by pipe, are written in place of what `by` says."""
        layout = self._layout
        lines = layout.lines
        pipes = {id: pipe for id, pipe in situation.pipes.items() if id in lines}
        taken, boxed = Taken(avoid), list[flow.Figure]()
        written: dict[str, str] = {}
        left_out = 0
        if figures:
            # What is out of focus keeps its arrows, but is not read.
            read = {id: each for id, each in pipes.items() if not self._is_quiet(id)}
            boxed = self._shut_words(situation.shut, taken)
            asked = captions(layout.drawing, read, by, layout.service, layout.labelling.decimal, texts)
            told = [Caption(layout.tell(each.text), each.pipes) for each in asked]
            for text, at in self._place(told, taken):
                if at is None:
                    left_out += 1
                    continue
                written[at[0]] = text
                boxed.append(at[1])
        marks: list[Mark] = []
        for id, pipe in pipes.items():
            if not pipe.is_still:
                marks += self._moving(id, pipe, taken, tints=tints, arrows=arrows)
        for figure in boxed:
            marks += flow.boxed(figure)
        return FlowPicture(tuple(marks), written, left_out, tuple(taken))

    def _moving(self, id: str, pipe: PipeFlow, taken: Taken, *, tints: bool, arrows: bool) -> list[Mark]:
        """The wash and the arrowheads of a pipe in which water moves."""
        layout = self._layout
        line, hops = layout.lines[id], layout.hops.get(id, ())
        service = layout.service.get(id, "unknown")
        quiet = self._is_quiet(id)
        wash = [flow.wash(line, service, hops)] if tints and not quiet else []
        if not arrows:
            return list[Mark](wash)
        heads = flow.arrows(
            line,
            service,
            forward=pipe.flow_lpm > 0,
            gap=layout.gaps.get(id),
            hops=hops,
            taken=taken,
            role="quiet" if quiet else "",
        )
        return [*wash, *heads]

    def _place(
        self, captions: Iterable[Caption], taken: Taken
    ) -> Iterable[tuple[str, tuple[str, flow.Figure] | None]]:
        """The boxed figures, those with the least choice first; their boxes are taken then."""
        layout = self._layout
        asked = [
            (
                caption.text,
                sorted(((id, layout.lines[id]) for id in caption.pipes), key=lambda e: -_length(e[1])),
            )
            for caption in captions
        ]
        asked.sort(key=lambda each: sum(_length(line) for _, line in each[1]))
        self._places.begin(layout)
        for text, lines in asked:
            at = self._places.placed(layout, text, lines, taken)
            if at is not None:
                taken.append(at[1].box)
            yield text, at

    def _shut_words(self, shut: Iterable[str], taken: Taken) -> list[flow.Figure]:
        """The word at each valve that is commanded shut: never told by its fill alone."""
        found = []
        for label in sorted(shut):
            part, _, leg = label.partition(":")
            box = self._layout.boxes.get(part)
            if box is None or self._is_quiet(part):
                continue
            text = self._layout.tell(worded("{leg} shut", leg=leg) if leg else a_word("shut"))
            figure = flow.Figure(text, self._beside(part, box, text, taken))
            taken.append(figure.box)
            found.append(figure)
        return found

    def _beside(self, part: str, box: Rect, text: str, taken: Taken) -> Rect:
        """Below, above, to the right or the left of a valve, or beyond its label: where it covers least."""
        left, top, right, low = box
        x, y = (left + right) / 2, (top + low) / 2
        half, high = flow.word_box(text, 0, 0)[2], flow.BOX_HIGH / 2
        places = [(x, low + 4 + high), (x, top - 4 - high), (right + 4 + half, y), (left - 4 - half, y)]
        label = self._layout.labels.get(part)
        if label is not None:
            a, b, c, d = label.box
            places += [((a + c) / 2, d + 2 + high), ((a + c) / 2, b - 2 - high)]
        places += [(right + 2 + half, low + high), (left - 2 - half, low + high)]
        tried = [flow.word_box(text, *place) for place in places]
        return min(tried, key=lambda each: self._covered(each, taken))

    def _covered(self, box: Rect, taken: Taken) -> float:
        return self._layout.obstacles.overlap(box) + taken.overlap(box)


def _length(line: tuple[tuple[float, float], ...]) -> float:
    return sum(abs(b[0] - a[0]) + abs(b[1] - a[1]) for a, b in pairwise(line))


def shut_states(labels: Iterable[str]) -> dict[str, frozenset[str]]:
    """For each valve commanded shut the states in which its symbol shows it so."""
    found: dict[str, frozenset[str]] = {}
    for label in labels:
        part, _, leg = label.partition(":")
        found[part] = found.get(part, frozenset()) | {LEG_STATES.get(leg, "shut")}
    return found

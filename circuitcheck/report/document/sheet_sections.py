"""The commissioning sheet as blocks: tables with boxes to fill in, and a picture of each situation."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.report.document.blocks import (
    LINE,
    Blank,
    Block,
    Bullets,
    Cell,
    Heading,
    Section,
    Shown,
    Style,
    Table,
    Text,
    Together,
)
from circuitcheck.report.document.content import Commissioning, Running, Stage
from circuitcheck.told import a_word, worded

DEFERS = a_word(
    "Made from the drawing. Local codes, licensed practice and the makers’ instructions come first; a step that they "
    "add is added, and one that they forbid is left out. Numbers are what to expect of the plant as drawn: a reading "
    "that differs has found a fault of the plant or of the drawing."
)
SITUATIONS = a_word("Situations")
NO_VALVE = a_word("no motor valve")
BEFORE_SITUATIONS = 2
"""So many stages come first: the plant is filled before it is run."""


def commissioning_section(found: Commissioning) -> Section:
    """The whole sheet."""
    title = a_word("Commissioning sheet")
    if not found.stages:
        text = Text(a_word("Nothing is drawn, so there is nothing to commission."))
        return Section("commissioning", title, (text,))
    blocks: list[Block] = [Text(DEFERS, Style.SECOND)]
    if found.lacking:
        blocks.append(Heading(a_word("Not known from the drawing: settle these first")))
        blocks.append(Bullets(found.lacking))
    sources = _Sources()
    for stage in found.stages[:BEFORE_SITUATIONS]:
        blocks += _stage(stage, sources)
    blocks += _situations(found.situations)
    for stage in found.stages[BEFORE_SITUATIONS:]:
        blocks += _stage(stage, sources)
    blocks.append(Together((Heading(a_word("Signed"), listed=True), _signatures())))
    blocks.append(Text(sources.told(), Style.SECOND))
    return Section("commissioning", title, tuple(blocks), on_new_page=True)


class _Sources:
    """The sources of steps, numbered in the order in which they are first met."""

    def __init__(self) -> None:
        self._numbers: dict[str, int] = {}

    def number(self, source: str) -> str:
        return f"[{self._numbers.setdefault(source.rstrip('.'), len(self._numbers) + 1)}]"

    def told(self) -> str:
        """All of them in one paragraph."""
        said = "; ".join(f"[{number}]\u00a0{source}" for source, number in self._numbers.items())
        return worded("Sources: {sources}.", sources=said)


def _stage(stage: Stage, sources: _Sources) -> Iterator[Block]:
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (
            f"{step.what}\u00a0{sources.number(step.source)}",
            step.expect,
            Blank(a_word(step.unit)) if step.unit else "",
            Blank(),
        )
        for step in stage.steps
    )
    head = (a_word("Do"), a_word("Expect"), a_word("Found"), a_word("Done"))
    table = Table(head, rows, (2.6, 2.2, 1.1, 0.6))
    yield Heading(stage.title, listed=True)
    yield Text(stage.lead, Style.SECOND)
    yield table


def _situations(situations: tuple[Running, ...]) -> Iterator[Block]:
    heading = Heading(SITUATIONS, listed=True)
    if not situations:
        yield heading
        yield Text(
            a_word(
                "None can be told: no heat source drives heating water in this drawing, or its ways are too many."
            )
        )
        return
    lead = Text(
        a_word(
            "Bring each about by its controls, wait until it is steady, and feel or measure the pipes. "
            "Thermostatic heads stand open. Flows are in litres a minute."
        ),
        Style.SECOND,
    )
    for number, each in enumerate(situations):
        yield Together((heading, lead, *_situation(each)) if number == 0 else _situation(each))


def _situation(each: Running) -> tuple[Block, ...]:
    flow = a_word("Flow, l/min")
    rows: list[tuple[Cell, ...]] = [
        (a_word("Open"), ", ".join(each.open) or NO_VALVE, Blank()),
        (a_word("Shut"), ", ".join(each.shut) or NO_VALVE, Blank()),
        (a_word("Runs"), ", ".join(each.runs) or a_word("nothing"), Blank()),
        (a_word("Gets warm"), each.warm, Blank()),
    ]
    if each.cold:
        rows.append((a_word("Stays as it was"), each.cold, Blank()))
    told = "; ".join(f"{name} {lpm}" for name, lpm in each.flows) or each.fault
    if told:
        rows.append((flow, told, Blank(a_word("l/min"))))
    rows.append((a_word("Gauge"), each.gauge, Blank(a_word("bar"))))
    table = Table(("", a_word("Expect"), a_word("Found")), tuple(rows), (0.9, 4, 1.1), bold=frozenset({0}))
    shown = () if each.picture is None else (Shown(each.picture, most_px=720.0),)
    return (Heading(each.name), table, *shown)


def _signatures() -> Table:
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (who, LINE, LINE, LINE, LINE)
        for who in (a_word("Installed by"), a_word("Commissioned by"), a_word("Checked by"), a_word("User"))
    )
    head = ("", a_word("Name"), a_word("Registration"), a_word("Date"), a_word("Signature"))
    return Table(head, rows, (1.1, 1.6, 1.3, 1, 1.6), bold=frozenset({0}))

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

DEFERS = (
    "Made from the drawing. Local codes, licensed practice and the makers’ instructions come first; a step that they "
    "add is added, and one that they forbid is left out. Numbers are what to expect of the plant as drawn: a reading "
    "that differs has found a fault of the plant or of the drawing."
)
SITUATIONS = "Situations"
BEFORE_SITUATIONS = 2
"""So many stages come first: the plant is filled before it is run."""


def commissioning_section(found: Commissioning) -> Section:
    """The whole sheet."""
    if not found.stages:
        text = Text("Nothing is drawn, so there is nothing to commission.")
        return Section("commissioning", "Commissioning sheet", (text,))
    blocks: list[Block] = [Text(DEFERS, Style.SECOND)]
    if found.lacking:
        blocks.append(Heading("Not known from the drawing: settle these first"))
        blocks.append(Bullets(found.lacking))
    sources = _Sources()
    for stage in found.stages[:BEFORE_SITUATIONS]:
        blocks += _stage(stage, sources)
    blocks += _situations(found.situations)
    for stage in found.stages[BEFORE_SITUATIONS:]:
        blocks += _stage(stage, sources)
    blocks.append(Together((Heading("Signed", listed=True), _signatures())))
    blocks.append(Text("Sources: " + sources.told(), Style.SECOND))
    return Section("commissioning", "Commissioning sheet", tuple(blocks), on_new_page=True)


class _Sources:
    """The sources of steps, numbered in the order in which they are first met."""

    def __init__(self) -> None:
        self._numbers: dict[str, int] = {}

    def number(self, source: str) -> str:
        return f"[{self._numbers.setdefault(source.rstrip('.'), len(self._numbers) + 1)}]"

    def told(self) -> str:
        return "; ".join(f"[{number}] {source}" for source, number in self._numbers.items()) + "."


def _stage(stage: Stage, sources: _Sources) -> Iterator[Block]:
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (
            f"{step.what} {sources.number(step.source)}",
            step.expect,
            Blank(step.unit) if step.unit else "",
            Blank(),
        )
        for step in stage.steps
    )
    table = Table(("Do", "Expect", "Found", "Done"), rows, (2.6, 2.2, 1.1, 0.5))
    yield Heading(stage.title, listed=True)
    yield Text(stage.lead, Style.SECOND)
    yield table


def _situations(situations: tuple[Running, ...]) -> Iterator[Block]:
    heading = Heading(SITUATIONS, listed=True)
    if not situations:
        yield heading
        yield Text(
            "None can be told: no heat source drives heating water in this drawing, or its ways are too many."
        )
        return
    lead = Text(
        "Bring each about by its controls, wait until it is steady, and feel or measure the pipes. "
        "Thermostatic heads stand open. Flows are in litres a minute.",
        Style.SECOND,
    )
    for number, each in enumerate(situations):
        yield Together((heading, lead, *_situation(each)) if number == 0 else _situation(each))


def _situation(each: Running) -> tuple[Block, ...]:
    rows: list[tuple[Cell, ...]] = [
        ("Open", ", ".join(each.open) or "no motor valve", Blank()),
        ("Shut", ", ".join(each.shut) or "no motor valve", Blank()),
        ("Runs", ", ".join(each.runs) or "nothing", Blank()),
        ("Gets warm", each.warm, Blank()),
    ]
    if each.cold:
        rows.append(("Stays as it was", each.cold, Blank()))
    if each.flows:
        rows.append(("Flow, l/min", ", ".join(f"{name} {flow}" for name, flow in each.flows), Blank("l/min")))
    elif each.fault:
        rows.append(("Flow, l/min", each.fault, Blank("l/min")))
    rows.append(("Gauge", each.gauge, Blank("bar")))
    table = Table(("", "Expect", "Found"), tuple(rows), (0.9, 4, 1.1), bold=frozenset({0}))
    shown = () if each.picture is None else (Shown(each.picture, most_px=560.0),)
    return (Heading(each.name), table, *shown)


def _signatures() -> Table:
    rows: tuple[tuple[Cell, ...], ...] = tuple(
        (who, LINE, LINE, LINE, LINE) for who in ("Installed by", "Commissioned by", "Checked by", "User")
    )
    head = ("", "Name", "Registration", "Date", "Signature")
    return Table(head, rows, (1.1, 1.6, 1.3, 1, 1.6), bold=frozenset({0}))

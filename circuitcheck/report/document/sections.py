"""A document's content as sections of blocks, in the order in which it is read."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

from circuitcheck.report.document.blocks import (
    LINE,
    Block,
    Bullets,
    Cell,
    Contents,
    Counts,
    GradedHeading,
    Heading,
    Labelled,
    Section,
    Shown,
    Style,
    Table,
    Text,
    Together,
)
from circuitcheck.report.document.content import Content, Found, Judgement, Worked
from circuitcheck.report.document.sheet_sections import commissioning_section

PAIRS = (1.0, 2.6)


def sections(content: Content) -> tuple[Section, ...]:
    """Every section; what a drawing does not have is said in its place, and not left out."""
    return (
        _summary(content),
        _drawing(content),
        _findings(content),
        _judged(content.judgement),
        _acceptances(content),
        commissioning_section(content.commissioning),
        _parts(content),
        _figures(content),
        _notes(content),
        _review(content),
    )


def _summary(content: Content) -> Section:
    judgement = content.judgement
    not_told = (
        [
            f"{len(judgement.not_judged)} checks could not judge: see “What was judged”.",
        ]
        if judgement.not_judged
        else []
    )
    if judgement.crashed:
        not_told.append(f"{judgement.crashed} checks failed inside the program: treat them as not judged.")
    unanswered = sum(each.grade == "unanswered" for each in content.findings)
    if unanswered:
        not_told.append(f"{unanswered} findings are unanswered, since numbers are missing.")
    blocks: list[Block] = [Text(content.plant, Style.LEAD)] if content.plant else []
    facts = (
        ("Drawing", content.file),
        ("This document made on", content.made_on),
        ("Made with", content.program),
        ("Rule book", content.rule_book),
        ("Review", content.review.state),
    )
    blocks += [
        Counts(judgement.counts),
        Text(judgement.verdict, Style.STRONG),
        *(Text(each) for each in not_told),
        pairs(facts),
        Contents(),
        Heading("Care"),
        Bullets(content.cautions),
        Heading("Design"),
        _two_by_two(content.design),
    ]
    return Section("summary", content.title, tuple(blocks))


def _drawing(content: Content) -> Section:
    blocks: list[Block] = []
    if content.drawing is None:
        blocks.append(Text("Nothing of this drawing is placed on a sheet."))
    else:
        blocks.append(Shown(content.drawing, whole_page=True))
    if content.not_placed:
        blocks.append(Labelled("Not placed on the sheet, but judged", ", ".join(content.not_placed)))
    return Section("drawing", "Drawing", tuple(blocks), on_new_page=True)


def _findings(content: Content) -> Section:
    if not content.findings:
        blocks: tuple[Block, ...] = (Text(content.judgement.verdict),)
    else:
        blocks = tuple(
            block
            for number, found in enumerate(content.findings, start=1)
            for block in _finding(found, number)
        )
    return Section("findings", "Findings", blocks, on_new_page=True)


def _finding(found: Found, number: int) -> Iterator[Block]:
    head: list[Block] = [
        GradedHeading(found.grade, found.grade_words, found.title, number),
        Text(found.message),
    ]
    if found.accepted:
        head.append(Labelled("Accepted", found.accepted))
    if found.picture is not None:
        head.append(Shown(found.picture))
    yield Together(tuple(head))
    yield Labelled("Where", ", ".join(found.where))
    if found.shut:
        yield Labelled("Proved by shutting", f"{'; '.join(found.shut)}. {found.alone}".rstrip())
    if found.missing:
        yield Labelled("Missing", "; ".join(found.missing))
    for label, text in (("Why it matters", found.why), ("What puts it right", found.remedy)):
        if text:
            yield Labelled(label, text)
    if found.cures:
        yield Labelled("Tried in this drawing, and it removes the finding", " ".join(found.cures))
    if found.source:
        yield Text(f"Source: {found.source}", Style.SECOND)


def _judged(judgement: Judgement) -> Section:
    blocks: list[Block] = [Text(judgement.verdict)]
    if judgement.not_judged:
        blocks += [
            Heading("Not judged"),
            Text("These checks apply or may apply, and could not answer. Nothing is known of them."),
            table(("Check", "Why it did not judge"), judgement.not_judged, (1, 1.2)),
        ]
    else:
        blocks.append(Text("Every check that applies has judged."))
    blocks.append(Heading("No drawing can show this, and nothing here judges it"))
    blocks.append(Bullets(judgement.beyond))
    if judgement.taken:
        blocks.append(Heading("Usual values that verdicts rest on, since the drawing does not give them"))
        blocks.append(Bullets(judgement.taken))
    if judgement.silent:
        blocks.append(Heading("Looked for and not found"))
        blocks.append(Text("; ".join(judgement.silent) + ".", Style.SECOND))
    if judgement.not_applicable:
        blocks.append(Heading("Does not apply to this drawing"))
        blocks.append(Text("; ".join(judgement.not_applicable) + ".", Style.SECOND))
    return Section("judged", "What was judged, and what was not", tuple(blocks))


def _acceptances(content: Content) -> Section:
    if not content.acceptances:
        return Section(
            "acceptances", "Acceptances", (Text("Nobody has accepted a finding of this drawing."),)
        )
    rows = tuple(
        (
            each.what,
            each.where,
            each.reason or "none given",
            _who(each.author, each.date),
            each.until or "no end",
            each.state,
        )
        for each in content.acceptances
    )
    head = ("Finding", "On", "Reason", "By", "Until", "State today")
    return Section("acceptances", "Acceptances", (table(head, rows, (1.6, 1.3, 1.8, 1.1, 0.9, 1.1)),))


def _who(name: str, date: str) -> str:
    return ", ".join(each for each in (name or "no name", date) if each)


def _parts(content: Content) -> Section:
    if not content.parts:
        return Section("parts", "Parts list", (Text("Nothing is drawn."),))
    blocks: list[Block] = []
    for title, members in groupby(content.parts, key=lambda row: row.section):
        rows = list(members)
        is_pipe = any(row.length_m is not None for row in rows)
        blocks.append(Heading(title))
        if is_pipe:
            found = tuple(
                (
                    row.item,
                    row.size,
                    "" if row.length_m is None else f"{row.length_m:.2f}",
                    "" if row.bends is None else str(row.bends),
                    _details(row.details, row.lacking, row.short_of),
                )
                for row in rows
            )
            head = ("Material", "Size", "Metres", "Bends", "Details")
            blocks.append(table(head, found, (1.2, 1, 0.7, 0.6, 2.6), numeric=(2, 3)))
        else:
            found_parts = tuple(
                (
                    "" if row.count is None else str(row.count),
                    row.item,
                    row.size,
                    _details(row.details, row.lacking, row.short_of),
                )
                for row in rows
            )
            blocks.append(
                table(("Count", "Part", "Size", "Details"), found_parts, (0.5, 1.6, 1, 2.9), numeric=(0,))
            )
    blocks += [Text(note, Style.SECOND) for note in content.parts_notes]
    return Section("parts", "Parts list", tuple(blocks), on_new_page=True)


def _details(details: str, lacking: str, short_of: str) -> str:
    said = [details, f"not known: {lacking}" if lacking else "", short_of]
    return "; ".join(each for each in said if each)


def _figures(content: Content) -> Section:
    if not content.figures:
        return Section("figures", "Figures", (Text("No figure applies to this drawing."),))
    blocks: list[Block] = [
        Text("Each with its formula, what went into it and from where, and its source.", Style.SECOND)
    ]
    for figure in content.figures:
        blocks += _figure(figure)
    return Section("figures", "Figures with their working", tuple(blocks), on_new_page=True)


def _figure(figure: Worked) -> Iterator[Block]:
    title = f"{figure.title}: {figure.about}" if figure.about else figure.title
    start: list[Block] = [Heading(title, listed=True)]
    if figure.refused:
        start.append(Labelled("Not worked", figure.refused))
        if figure.missing:
            start.append(Labelled("Missing", "; ".join(figure.missing)))
    yield from start
    results = tuple((name, f"{value} {unit}".rstrip()) for name, value, unit in figure.results)
    if results:
        yield table((), results, (2.4, 1), numeric=(1,), bold=(1,))
    if figure.formula:
        yield Labelled("Formula", "\n".join(figure.formula))
    if figure.inputs:
        rows = tuple(
            (symbol, f"{value} {unit}".rstrip(), name, origin)
            for symbol, value, unit, name, origin in figure.inputs
        )
        yield table(("Symbol", "Value", "What it is", "From"), rows, (0.9, 0.9, 1.7, 2), numeric=(1,))
    for each in figure.rests_on:
        yield Labelled("Rests on", each)
    if figure.source:
        yield Text(f"Source: {figure.source}", Style.SECOND)
    if figure.limits:
        yield Text(f"Holds: {figure.limits}", Style.SECOND)


def _notes(content: Content) -> Section:
    if not content.notes:
        return Section("notes", "Notes", (Text("No note is pinned to this drawing."),))
    blocks: list[Block] = []
    for note in content.notes:
        blocks.append(Heading(f"{note.where}: {note.state}"))
        blocks += [Labelled(f"{who}, {when}", text) for who, when, text in note.says]
    return Section("notes", "Notes", tuple(blocks))


def _review(content: Content) -> Section:
    review = content.review
    blocks: list[Block] = [Text(review.state, Style.STRONG)]
    if review.rows:
        blocks.append(pairs(review.rows))
    if review.changes:
        blocks += [Heading("What broke it"), Bullets(review.changes)]
    blocks += [Text(each, Style.SECOND) for each in review.bounds]
    if review.holds is None:
        rows = (("Reviewed by", LINE), ("On", LINE), ("Decision", LINE))
        blocks.append(
            Together(
                (Text("To be filled in by hand where no record is kept in the file:"), Table((), rows, PAIRS))
            )
        )
    return Section("review", "Review record", tuple(blocks))


def pairs(rows: Iterable[tuple[str, str]]) -> Table:
    """Names and what they are, side by side."""
    return Table((), tuple(rows), PAIRS, bold=frozenset({0}))


def _two_by_two(rows: tuple[tuple[str, str], ...]) -> Table:
    """Pairs in two columns, to be read down the first and then down the second."""
    half = (len(rows) + 1) // 2
    second = (*rows[half:], *([("", "")] * (2 * half - len(rows))))
    wide = tuple((*left, *right) for left, right in zip(rows[:half], second, strict=True))
    return Table((), wide, (1, 1.3, 1, 1.3), bold=frozenset({0, 2}))


def table(
    head: tuple[str, ...],
    rows: Iterable[tuple[Cell, ...]],
    shares: tuple[float, ...],
    numeric: Iterable[int] = (),
    bold: Iterable[int] = (),
) -> Table:
    """A table."""
    return Table(head, tuple(rows), shares, frozenset(numeric), frozenset(bold))

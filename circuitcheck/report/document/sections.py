"""A document's content as sections of blocks, in the order in which it is read."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import groupby

from circuitcheck.finding import Grade
from circuitcheck.report.document.blocks import (
    LINE,
    Block,
    Bullets,
    Cell,
    Columns,
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
from circuitcheck.report.document.telling import retold
from circuitcheck.told import a_word, strung, told_number, worded, worded_n

PAIRS = (1.0, 2.6)


def sections(content: Content) -> tuple[Section, ...]:
    """Every section; what a drawing does not have is said in its place, and not left out."""
    return retold(_sections(content), content.tongue)


def _sections(content: Content) -> tuple[Section, ...]:
    return (
        _summary(content),
        _drawing(content),
        _findings(content),
        _acceptances(content),
        _judged(content.judgement),
        commissioning_section(content.commissioning),
        _parts(content),
        _figures(content),
        _notes(content),
        _review(content),
    )


def _summary(content: Content) -> Section:
    judgement = content.judgement
    blocks: list[Block] = [Text(content.plant, Style.LEAD)] if content.plant else []
    facts = (
        (a_word("Drawing"), content.file),
        (a_word("This document made on"), content.made_on),
        (a_word("Made with"), content.program),
        (a_word("Rule book"), content.rule_book),
        (a_word("Review"), content.review.state),
    )
    blocks += [
        counts_of(judgement.counts),
        Text(judgement.verdict, Style.STRONG),
        *(Text(each) for each in _not_told(content)),
        pairs(facts),
        Contents(),
        Heading(a_word("Care")),
        Bullets(content.cautions),
        Heading(a_word("Design")),
        _two_by_two(content.design),
    ]
    return Section("summary", content.title, tuple(blocks))


def _not_told(content: Content) -> Iterator[str]:
    """What the verdict leaves open, a sentence each."""
    judgement = content.judgement
    if judgement.not_judged:
        yield worded_n(
            "1 check could not judge: see “What was judged”.",
            "{count} checks could not judge: see “What was judged”.",
            len(judgement.not_judged),
        )
    if judgement.crashed:
        yield worded_n(
            "1 check failed inside the program: treat it as not judged.",
            "{count} checks failed inside the program: treat them as not judged.",
            judgement.crashed,
        )
    unanswered = sum(each.grade == "unanswered" for each in content.findings)
    if unanswered:
        yield worded_n(
            "1 finding is unanswered, since numbers are missing.",
            "{count} findings are unanswered, since numbers are missing.",
            unanswered,
        )


def _drawing(content: Content) -> Section:
    blocks: list[Block] = []
    if content.drawing is None:
        blocks.append(Text(a_word("Nothing of this drawing is placed on a sheet.")))
    else:
        blocks.append(Shown(content.drawing, whole_page=True))
    if content.not_placed:
        blocks.append(Labelled(a_word("Not placed on the sheet, but judged"), ", ".join(content.not_placed)))
    return Section("drawing", a_word("Drawing"), tuple(blocks), on_new_page=True)


def _findings(content: Content) -> Section:
    if not content.findings:
        blocks: tuple[Block, ...] = (Text(content.judgement.verdict),)
    else:
        blocks = tuple(
            block
            for number, found in enumerate(content.findings, start=1)
            for block in _finding(found, number)
        )
    return Section("findings", a_word("Findings"), blocks, on_new_page=True)


def _finding(found: Found, number: int) -> Iterator[Block]:
    head: list[Block] = [
        GradedHeading(found.grade, found.grade_words, found.title, number),
        Text(found.message),
    ]
    if found.accepted:
        head.append(Labelled(a_word("Accepted"), found.accepted))
    if found.picture is not None:
        head.append(Shown(found.picture))
    yield Together(tuple(head))
    yield Labelled(a_word("Where"), ", ".join(found.where))
    if found.shut:
        yield Labelled(a_word("Proved by shutting"), f"{'; '.join(found.shut)}. {found.alone}".rstrip())
    if found.missing:
        yield Labelled(a_word("Missing"), "; ".join(found.missing))
    said: list[Block] = [
        Labelled(label, text)
        for label, text in (
            (a_word("Why it matters"), found.why),
            (a_word("What puts it right"), found.remedy),
            (a_word("Tried in this drawing, and it removes the finding"), " ".join(found.cures)),
        )
        if text
    ]
    if found.source:
        said.append(Text(worded("Source: {source}", source=found.source), Style.SECOND))
    yield from said[:-2]
    if said:
        # A source alone at the head of a page would be nobody's.
        yield Together(tuple(said[-2:]))


def _judged(judgement: Judgement) -> Section:
    blocks: list[Block] = [Text(judgement.verdict)]
    if judgement.not_judged:
        blocks += [
            Heading(a_word("Not judged")),
            Text(a_word("These checks apply or may apply, and could not answer. Nothing is known of them.")),
            table((a_word("Check"), a_word("Why it did not judge")), judgement.not_judged, (1, 1.2)),
        ]
    else:
        blocks.append(Text(a_word("Every check that applies has judged.")))
    blocks.append(Heading(a_word("No drawing can show this, and nothing here judges it")))
    blocks.append(Bullets(judgement.beyond))
    if judgement.taken:
        blocks.append(
            Heading(a_word("Usual values that verdicts rest on, since the drawing does not give them"))
        )
        blocks.append(Bullets(judgement.taken))
    if judgement.silent:
        blocks.append(Heading(a_word("Looked for and not found")))
        blocks.append(Columns(judgement.silent))
    if judgement.not_applicable:
        blocks.append(Heading(a_word("Does not apply to this drawing")))
        blocks.append(Columns(judgement.not_applicable))
    return Section("judged", a_word("What was judged, and what was not"), tuple(blocks))


def _acceptances(content: Content) -> Section:
    title = a_word("Acceptances")
    if not content.acceptances:
        return Section(
            "acceptances", title, (Text(a_word("Nobody has accepted a finding of this drawing.")),)
        )
    rows = tuple(
        (
            each.what,
            each.where,
            each.reason or a_word("none given"),
            _who(each.author, each.date),
            each.until or a_word("no end"),
            each.state,
        )
        for each in content.acceptances
    )
    head = (
        a_word("Finding"),
        a_word("On"),
        a_word("Reason"),
        a_word("By"),
        a_word("Until"),
        a_word("State today"),
    )
    return Section("acceptances", title, (table(head, rows, (1.6, 1.3, 1.8, 1.1, 0.9, 1.1)),))


def _who(name: str, date: str) -> str:
    return strung(each for each in (name or a_word("no name"), date) if each)


def _parts(content: Content) -> Section:
    title = a_word("Parts list")
    if not content.parts:
        return Section("parts", title, (Text(a_word("Nothing is drawn.")),))
    blocks: list[Block] = []
    for group, members in groupby(content.parts, key=lambda row: row.section):
        rows = list(members)
        is_pipe = any(row.length_m is not None for row in rows)
        blocks.append(Heading(group))
        if is_pipe:
            found = tuple(
                (
                    row.item,
                    row.size,
                    "" if row.length_m is None else told_number(f"{row.length_m:.2f}"),
                    "" if row.bends is None else str(row.bends),
                    _details(row.details, row.lacking, row.short_of),
                )
                for row in rows
            )
            head = (a_word("Material"), a_word("Size"), a_word("Metres"), a_word("Bends"), a_word("Details"))
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
                table(
                    (a_word("Count"), a_word("Part"), a_word("Size"), a_word("Details")),
                    found_parts,
                    (0.5, 1.6, 1, 2.9),
                    numeric=(0,),
                )
            )
    blocks += [Text(note, Style.SECOND) for note in content.parts_notes]
    return Section("parts", title, tuple(blocks), on_new_page=True)


def _details(details: str, lacking: str, short_of: str) -> str:
    said = [details, worded("not known: {lacking}", lacking=lacking) if lacking else "", short_of]
    return strung((each for each in said if each), "; ")


def _figures(content: Content) -> Section:
    if not content.figures:
        return Section("figures", a_word("Figures"), (Text(a_word("No figure applies to this drawing.")),))
    blocks: list[Block] = [
        Text(a_word("Each with its formula, what went into it and from where, and its source."), Style.SECOND)
    ]
    for figure in content.figures:
        blocks += _figure(figure)
    return Section("figures", a_word("Figures with their working"), tuple(blocks), on_new_page=True)


def _figure(figure: Worked) -> Iterator[Block]:
    title = f"{figure.title}: {figure.about}" if figure.about else figure.title
    start: list[Block] = [Heading(title, listed=True)]
    if figure.refused:
        start.append(Labelled(a_word("Not worked"), figure.refused))
        if figure.missing:
            start.append(Labelled(a_word("Missing"), "; ".join(figure.missing)))
    yield from start
    results = tuple((name, f"{value} {unit}".rstrip()) for name, value, unit in figure.results)
    if results:
        yield table((), results, (2.4, 1), numeric=(1,), bold=(1,))
    if figure.formula:
        yield Labelled(a_word("Formula"), figure.formula)
    if figure.inputs:
        rows = tuple(
            (symbol, f"{value} {unit}".rstrip(), name, origin)
            for symbol, value, unit, name, origin in figure.inputs
        )
        head = (a_word("Symbol"), a_word("Value"), a_word("What it is"), a_word("From"))
        yield table(head, rows, (0.8, 0.8, 1.9, 2), numeric=(1,))
    for each in figure.rests_on:
        yield Labelled(a_word("Rests on"), each)
    if figure.source:
        yield Text(worded("Source: {source}", source=figure.source), Style.SECOND)
    if figure.limits:
        yield Text(worded("Holds: {limits}", limits=figure.limits), Style.SECOND)


def _notes(content: Content) -> Section:
    if not content.notes:
        return Section("notes", a_word("Notes"), (Text(a_word("No note is pinned to this drawing.")),))
    blocks: list[Block] = []
    for note in content.notes:
        blocks.append(Heading(f"{note.where}: {note.state}"))
        blocks += [Labelled(f"{who}, {when}", text) for who, when, text in note.says]
    return Section("notes", a_word("Notes"), tuple(blocks))


def _review(content: Content) -> Section:
    review = content.review
    blocks: list[Block] = [Text(review.state, Style.STRONG)]
    if review.rows:
        blocks.append(pairs(review.rows))
    if review.changes:
        blocks += [Heading(a_word("What broke it")), Bullets(review.changes)]
    blocks += [Text(each, Style.SECOND) for each in review.bounds]
    if review.holds is None:
        rows = tuple(
            (each, LINE) for each in (a_word("Reviewed by"), a_word("Reviewed on"), a_word("Decision"))
        )
        asked = Text(a_word("To be filled in by hand where no record is kept in the file:"))
        blocks.append(Together((asked, Table((), rows, PAIRS))))
    return Section("review", a_word("Review record"), tuple(blocks))


def counts_of(counts: Iterable[tuple[Grade, int]]) -> Counts:
    """The counts with each grade as a word."""
    return Counts(tuple((grade, count, a_word(grade.value)) for grade, count in counts))


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

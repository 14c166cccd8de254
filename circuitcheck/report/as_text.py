"""The answers as text for a person, in colour only on a terminal."""

from __future__ import annotations

import textwrap
from collections.abc import Callable, Iterable, Iterator

from circuitcheck.finding import Grade
from circuitcheck.report.checked import MOST_LINES, Checked, Told
from circuitcheck.report.plain import plain
from circuitcheck.review.acceptances import Standing

MARKS = {Grade.DANGER: "!", Grade.FAULT: "x", Grade.ADVICE: "i", Grade.UNANSWERED: "?"}
_COLOURS = {Grade.DANGER: "31;1", Grade.FAULT: "33;1", Grade.ADVICE: "34", Grade.UNANSWERED: "36"}
WIDTH = 96

Parts = Callable[[], Iterator[str]]
"""The parts of all files, told anew as often as they are asked for."""


def as_text(files: Iterable[Checked], *, colour: bool = False) -> str:
    """What was found in each file, and what was judged, not judged and taken for granted."""
    return "".join(whole(lambda: (one(each, colour=colour) for each in files)))


def one(checked: Checked, *, colour: bool = False) -> str:
    """The part of one file."""
    return "".join(f"{line.rstrip()}\n" for line in (*_file(checked, colour), ""))


def whole(parts: Parts) -> Iterator[str]:
    """The parts in their order, and what no check covers."""
    yield from parts()
    yield "No check covers workmanship, fuel supply and flues, wiring, or the building's structure.\n"
    yield "A drawing without findings is not a certificate; local codes and makers' instructions come first.\n"


def _file(each: Checked, colour: bool) -> Iterator[str]:
    title = f"  {plain(each.title)}" if each.title else ""
    yield f"{plain(each.file)}{title}"
    if each.error:
        yield "  This file could not be judged:"
        for error in each.error:
            yield from _wrapped(error, "    ")
        return
    for told in each.told:
        yield from _finding(told, colour)
    if not each.told:
        yield f"  Nothing found by {len(each.judged)} checks."
    yield f"  {len(each.judged)} checks judged, {len(each.not_applicable)} do not apply."
    for name in each.not_judged:
        yield from _wrapped(f"Not judged: {name} ({each.why_not_judged[name]}).", "  ", hang="    ")
    if each.rule_book:
        yield f"  Rule book: {each.rule_book}."
    if each.taken:
        yield from _wrapped(f"Taken as usual, since not given: {'; '.join(each.taken)}.", "  ")
    yield from _idle_acceptances(each)
    yield from _records(each)


def _idle_acceptances(each: Checked) -> Iterator[str]:
    """Acceptances that accept nothing here: the others stand with their findings."""
    for one in each.acceptances:
        accepted = one.acceptance
        if one.standing is Standing.NO_FINDING:
            text = f"Accepted, but not found any more: {accepted.check} on {', '.join(accepted.on)}."
        elif one.standing is Standing.RUN_OUT:
            text = f"Acceptance run out on {accepted.until}: {accepted.check} on {', '.join(accepted.on)}."
        else:
            continue
        yield from _wrapped(text, "  ", hang="    ")


def _records(each: Checked) -> Iterator[str]:
    if not each.records:
        return
    from circuitcheck.review.words import held_lines, record_title

    for held in each.records:
        yield from _wrapped(f"Review record by {record_title(held)}.", "  ", hang="    ")
        for line in held_lines(held, MOST_LINES):
            yield from _wrapped(line, "    ", hang="      ")


def _finding(told: Told, colour: bool) -> Iterator[str]:
    finding = told.finding
    word = f"{MARKS[finding.grade]} {finding.grade.value}"
    if finding.would_be is not None:
        word += f", would be {finding.would_be.value}"
    if told.accepted:
        word += ", accepted"
    shown = f"\x1b[{_COLOURS[finding.grade]}m{word}\x1b[0m" if colour else word
    yield f"  {shown}: {finding.check}"
    yield from _wrapped(finding.message, "      ")
    if told.acceptance is not None:
        accepted = told.acceptance
        until = f" until {accepted.until}" if accepted.until else ""
        by = f" by {accepted.author}" if accepted.author else ""
        yield from _wrapped(f"Accepted{by}{until}: {accepted.reason}", "      ", hang="        ")
    for cure in told.cures or ():
        yield from _wrapped(f"Cure: {cure}", "      ", hang="        ")


def _wrapped(text: str, indent: str, hang: str = "") -> list[str]:
    return textwrap.wrap(plain(text), WIDTH, initial_indent=indent, subsequent_indent=hang or indent)

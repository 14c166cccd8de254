"""The list of all documents of a folder: every drawing's verdict, what was found how often, what is not known."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field

from circuitcheck.finding import Grade
from circuitcheck.report.document.blocks import (
    Block,
    Bullets,
    Cell,
    Contents,
    Counts,
    Heading,
    Link,
    Section,
    Style,
    Table,
    Text,
)
from circuitcheck.report.document.sections import pairs

GRADES = tuple(grade.value for grade in Grade)


@dataclass(frozen=True, slots=True)
class Entry:
    """What became of one drawing, in plain values. `faults`: why there is no document of it.

    `grades`: findings of each grade; `checks`: the same for each check's title; `not_judged`: a check's title
    and why; `accepted`: how many findings somebody accepted; `seal`: the document's digest.
    """

    faults: tuple[str, ...] = ()
    title: str = ""
    verdict: str = ""
    review: str = ""
    grades: Mapping[str, int] = field(default_factory=dict)
    checks: Mapping[str, Mapping[str, int]] = field(default_factory=dict)
    accepted: int = 0
    not_judged: Mapping[str, str] = field(default_factory=dict)
    crashed: int = 0
    rule_book: str = ""
    is_written: bool = False
    seal: str = ""


@dataclass(frozen=True, slots=True)
class Listed:
    """One line of the list: the drawing's file as the call names it, where its document lies, seen from the list."""

    file: str
    document: str
    entry: Entry


@dataclass(frozen=True, slots=True)
class Front:
    """What a list says of itself; a painter's `Head`."""

    title: str
    file: str
    made_on: str
    program: str


class Index:
    """Counts documents up as they are listed, and tells them all on one page."""

    def __init__(self, listed: Iterable[Listed]) -> None:
        self._rows: list[tuple[Cell, ...]] = []
        self._unmade: list[tuple[str, str]] = []
        self._grades: Counter[str] = Counter()
        self._checks: dict[str, Counter[str]] = {}
        self._not_judged: Counter[str] = Counter()
        self._books: Counter[str] = Counter()
        self._made = self._silent = self._accepted = self._crashed = 0
        for each in listed:
            self._count(each)

    def _count(self, listed: Listed) -> None:
        entry = listed.entry
        if not entry.is_written:
            self._unmade.append((listed.file, " ".join(entry.faults)))
            self._rows.append((listed.file, "", "No document: see above.", *[""] * (len(GRADES) + 1), ""))
            return
        self._made += 1
        self._silent += not any(entry.grades.values())
        self._accepted += entry.accepted
        self._crashed += entry.crashed
        self._grades.update(entry.grades)
        self._books[entry.rule_book] += 1
        self._not_judged.update(entry.not_judged.keys())
        for title, counts in entry.checks.items():
            found = self._checks.setdefault(title, Counter())
            found.update(counts)
            found["drawings"] += 1
        self._rows.append(
            (
                Link(listed.file, listed.document),
                entry.title,
                entry.verdict,
                *(_shown(entry.grades.get(grade, 0)) for grade in GRADES),
                _shown(len(entry.not_judged) + entry.crashed),
                entry.review,
            )
        )

    def sections(self, front: Front) -> tuple[Section, ...]:
        """The page."""
        parts = [self._summary(front)]
        if self._unmade:
            rows = tuple(self._unmade)
            parts.append(Section("unmade", "Without a document", (Table(("File", "Why"), rows, (1.0, 1.6)),)))
        parts += [self._by_check(), self._unjudged(), self._drawings()]
        return tuple(parts)

    def _summary(self, front: Front) -> Section:
        blocks: list[Block] = [
            Counts(tuple((Grade(grade), self._grades[grade]) for grade in GRADES)),
            Text(self.verdict, Style.STRONG),
            pairs(
                (("Made on", front.made_on), ("Made with", front.program), ("Rule books", self._books_told()))
            ),
            Contents(),
            Heading("Care"),
            Bullets(tuple(self._cautions())),
        ]
        return Section("summary", front.title, tuple(blocks))

    @property
    def verdict(self) -> str:
        """How many of what, in one paragraph."""
        said = [
            f"{_many(len(self._rows), 'drawing')}, {_many(self._made, 'document')}.",
            f"{_many(self._silent, 'drawing')} without a finding.",
        ]
        if self._unmade:
            said.append(f"{_many(len(self._unmade), 'file')} of which no document could be made.")
        if self._accepted:
            said.append(f"{_many(self._accepted, 'finding')} accepted by somebody.")
        if self._crashed:
            said.append(
                f"{_many(self._crashed, 'check')} failed inside the program: treat them as not judged."
            )
        return " ".join(said)

    def _cautions(self) -> Iterator[str]:
        yield "This list tells of the documents; each document tells what it could not judge, and why."
        yield "A drawing without findings is not a certificate. Local codes and makers’ instructions come first."

    def _books_told(self) -> str:
        return "; ".join(f"{name} ({_many(count, 'drawing')})" for name, count in sorted(self._books.items()))

    def _by_check(self) -> Section:
        if not self._checks:
            return Section("checks", "Findings by check", (Text("Nothing was found."),))
        order = sorted(
            self._checks, key=lambda title: (*(-self._checks[title][each] for each in GRADES), title)
        )
        rows = tuple(
            (title, *(_shown(self._checks[title][column]) for column in ("drawings", *GRADES)))
            for title in order
        )
        head = ("Check", "Drawings", *(grade.capitalize() for grade in GRADES))
        table = Table(head, rows, (4.0, 1.0, 1.0, 1.0, 1.0, 1.2), frozenset(range(1, 6)))
        return Section("checks", "Findings by check", (table,))

    def _unjudged(self) -> Section:
        if not self._not_judged:
            return Section("unjudged", "Not judged", (Text("Every check that applies could judge."),))
        order = sorted(self._not_judged.items(), key=lambda each: (-each[1], each[0]))
        rows = tuple((title, str(count)) for title, count in order)
        return Section(
            "unjudged", "Not judged", (Table(("Check", "Drawings"), rows, (4.0, 1.0), frozenset({1})),)
        )

    def _drawings(self) -> Section:
        head = (
            "Drawing",
            "Title",
            "Verdict",
            *(grade.capitalize() for grade in GRADES),
            "Not judged",
            "Review",
        )
        shares = (3.0, 2.6, 2.8, 0.85, 0.7, 0.85, 1.5, 0.85, 1.2)
        table = Table(head, tuple(self._rows), shares, frozenset(range(3, 8)))
        return Section("drawings", "Drawings", (table,), on_new_page=True)


def _shown(count: int) -> str:
    return f"{count:,}" if count else ""


def _many(count: int, thing: str) -> str:
    return f"{count:,} {thing}{'' if count == 1 else 's'}"

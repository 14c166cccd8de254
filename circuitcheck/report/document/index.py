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
    Heading,
    Link,
    Section,
    Style,
    Table,
    Text,
)
from circuitcheck.report.document.sections import counts_of, pairs
from circuitcheck.report.document.telling import retold
from circuitcheck.told import ENGLISH, Tongue, a_word, strung, upper, worded, worded_n

GRADES = tuple(grade.value for grade in Grade)
_GRADE_HEADS = tuple(upper(a_word(grade)) for grade in GRADES)


@dataclass(frozen=True, slots=True)
class Entry:
    """What became of one drawing, in plain values. `faults`: why there is no document of it; `why`: the same in
    the language of the documents, in which all other texts are.

    `grades`: findings of each grade; `checks`: the same for each check's title; `not_judged`: a check's title
    and why; `accepted`: how many findings somebody accepted; `seal`: the document's digest.
    """

    faults: tuple[str, ...] = ()
    why: str = ""
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
    day: str = ""
    tongue: Tongue = ENGLISH


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
            self._unmade.append((listed.file, entry.why))
            self._rows.append(
                (listed.file, "", a_word("No document: see above."), *[""] * (len(GRADES) + 1), "")
            )
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
        return retold(self._sections(front), front.tongue)

    def _sections(self, front: Front) -> tuple[Section, ...]:
        parts = [self._summary(front)]
        if self._unmade:
            rows = tuple(self._unmade)
            table = Table((a_word("File"), a_word("Why")), rows, (1.0, 1.6))
            parts.append(Section("unmade", a_word("Without a document"), (table,)))
        parts += [self._by_check(), self._unjudged(), self._drawings()]
        return tuple(parts)

    def _summary(self, front: Front) -> Section:
        blocks: list[Block] = [
            counts_of((Grade(grade), self._grades[grade]) for grade in GRADES),
            Text(self.verdict, Style.STRONG),
            pairs(
                (
                    (a_word("Made on"), front.made_on),
                    (a_word("Made with"), front.program),
                    (a_word("Rule books"), self._books_told()),
                )
            ),
            Contents(),
            Heading(a_word("Care")),
            Bullets(tuple(self._cautions())),
        ]
        return Section("summary", front.title, tuple(blocks))

    @property
    def verdict(self) -> str:
        """How many of what, in one paragraph."""
        said = [
            worded(
                "{drawings}, {documents}.",
                drawings=_drawings_counted(len(self._rows)),
                documents=worded_n("1 document", "{count:,} documents", self._made),
            ),
            worded_n("1 drawing without a finding.", "{count:,} drawings without a finding.", self._silent),
        ]
        if self._unmade:
            said.append(
                worded_n(
                    "1 file of which no document could be made.",
                    "{count:,} files of which no document could be made.",
                    len(self._unmade),
                )
            )
        if self._accepted:
            said.append(
                worded_n(
                    "1 finding accepted by somebody.",
                    "{count:,} findings accepted by somebody.",
                    self._accepted,
                )
            )
        if self._crashed:
            said.append(
                worded_n(
                    "1 check failed inside the program: treat it as not judged.",
                    "{count:,} checks failed inside the program: treat them as not judged.",
                    self._crashed,
                )
            )
        return strung(said, " ")

    def _cautions(self) -> Iterator[str]:
        yield a_word(
            "This list tells of the documents; each document tells what it could not judge, and why."
        )
        yield a_word(
            "A drawing without findings is not a certificate. Local codes and makers’ instructions come first."
        )

    def _books_told(self) -> str:
        return strung(
            (
                worded("{rule_book} ({drawings})", rule_book=name, drawings=_drawings_counted(count))
                for name, count in sorted(self._books.items())
            ),
            "; ",
        )

    def _by_check(self) -> Section:
        title = a_word("Findings by check")
        if not self._checks:
            return Section("checks", title, (Text(a_word("Nothing was found.")),))
        order = sorted(
            self._checks, key=lambda check: (*(-self._checks[check][each] for each in GRADES), check)
        )
        rows = tuple(
            (check, *(_shown(self._checks[check][column]) for column in ("drawings", *GRADES)))
            for check in order
        )
        head = (a_word("Check"), a_word("Drawings"), *_GRADE_HEADS)
        table = Table(head, rows, (4.0, 1.0, 1.0, 1.0, 1.0, 1.2), frozenset(range(1, 6)))
        return Section("checks", title, (table,))

    def _unjudged(self) -> Section:
        title = a_word("Not judged")
        if not self._not_judged:
            return Section("unjudged", title, (Text(a_word("Every check that applies could judge.")),))
        order = sorted(self._not_judged.items(), key=lambda each: (-each[1], each[0]))
        rows = tuple((check, str(count)) for check, count in order)
        table = Table((a_word("Check"), a_word("Drawings")), rows, (4.0, 1.0), frozenset({1}))
        return Section("unjudged", title, (table,))

    def _drawings(self) -> Section:
        head = (
            a_word("Drawing"),
            a_word("Title"),
            a_word("Verdict"),
            *_GRADE_HEADS,
            a_word("Not judged"),
            a_word("Review"),
        )
        shares = (2.9, 2.5, 2.5, 0.9, 0.9, 1.2, 1.2, 1.1, 1.2)
        table = Table(head, tuple(self._rows), shares, frozenset(range(3, 8)))
        return Section("drawings", a_word("Drawings"), (table,), on_new_page=True)


def _shown(count: int) -> str:
    return worded("{count:,}", count=count) if count else ""


def _drawings_counted(count: int) -> str:
    return worded_n("1 drawing", "{count:,} drawings", count)

"""What a check is: a lesson in its docstring, and a function that judges a case."""

from __future__ import annotations

import inspect
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Says
from circuitcheck.told import a_word

SECTIONS = ("Flags", "Why", "Remedy", "Source")


@dataclass(frozen=True, slots=True)
class Lesson:
    """A check's text: the same in the editor, the report and on the command line."""

    name: str
    title: str
    flags: str
    why: str
    remedy: str
    source: str


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a check found, and for how many things it found nothing wrong.

    Neither findings nor anything sound: the check does not apply to the drawing.
    """

    findings: tuple[Finding, ...] = ()
    sound: int = 0


Judge = Callable[[Case], Verdict]


@dataclass(frozen=True, slots=True)
class Proposal:
    """A way to put a finding right: what it does, in one sentence, and the drawing after that edit.

    It only proposes: `circuitcheck.cures` keeps it if a fresh analysis finds it sound.
    """

    says: Says
    drawing: Drawing


Propose = Callable[[Case, Finding], Iterator[Proposal]]


def proposes_nothing(case: Case, finding: Finding) -> Iterator[Proposal]:
    """For a check that knows no cure."""
    return iter(())


@dataclass(frozen=True, slots=True)
class Check:
    """One check by its name, the folder of its topic, its lesson, its judgement and its cures."""

    name: str
    topic: str
    lesson: Lesson
    judge: Judge
    propose: Propose = proposes_nothing


def lesson_of(name: str, docstring: str) -> Lesson:
    """The lesson in a check's docstring: a title line, then the sections, each once.

    Raises ValueError for one that is missing or empty.
    """
    text = inspect.cleandoc(docstring)
    title, _, rest = text.partition("\n")
    pieces = re.split(r"^(Flags|Why|Remedy|Source):", rest, flags=re.MULTILINE)
    found = dict(zip(pieces[1::2], pieces[2::2], strict=True))
    texts = {section: " ".join(found.get(section, "").split()) for section in SECTIONS}
    empty = [section for section in SECTIONS if not texts[section]]
    if empty or pieces[0].strip():
        raise ValueError(f"{name}: the docstring lacks {', '.join(empty) or 'order'}")
    return Lesson(name, a_word(title.rstrip(".")), *(a_word(texts[section]) for section in SECTIONS))

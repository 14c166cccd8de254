"""What is said of findings: each finding's title, proof and remedy, and what was not judged. No Qt."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.checks.catalogue import NOT_JUDGED_BY_THIS_PROGRAM, checks
from circuitcheck.checks.check import Lesson
from circuitcheck.checks.wording import listed, part_of, valve
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import FAILED, Finding
from circuitcheck.parts.kind import FieldType, Way
from circuitcheck.report.wording import fields_of, lower, missing_words, spoken, upper, value_words
from circuitcheck.told import a_word, strung, told_number, worded, worded_n, worded_of

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis

NOT_A_CERTIFICATE = a_word("A drawing is not a certificate.")
NOTHING_DRAWN = a_word("Nothing drawn, nothing judged")
_HOW = {
    Way.HAND: a_word("by hand"),
    Way.MOTOR: a_word("no call"),
    Way.THERMOSTAT: a_word("room warm"),
    Way.ONE_WAY: a_word("against its arrow"),
    Way.REDUCING: a_word("against its arrow"),
    Way.SPRING: a_word("spring shut"),
}


def lesson(finding: Finding) -> Lesson | None:
    """The lesson of the finding's check; None for the one that says that the analysis itself failed."""
    check = checks().get(finding.check)
    return check.lesson if check else None


def title(finding: Finding) -> str:
    """What a finding is called in the list."""
    if finding.check == FAILED:
        return a_word("The checks failed")
    known = lesson(finding)
    return a_word(known.title) if known else upper(finding.check.replace("-", " "))


def message(drawing: Drawing, finding: Finding) -> str:
    """The finding's sentence, with what is missing named in words."""
    values = finding.says.values
    if finding.missing and "missing" in values:
        names = listed(lower(missing_words(drawing, each)) for each in finding.missing)
        return worded_of(finding.says.template, {**values, "missing": names})
    return finding.message


def grade_words(finding: Finding) -> str:
    """The grade as a word; an unanswered finding also says what it would be."""
    if finding.would_be is not None:
        return worded(
            "{grade}, would be {worse}",
            grade=a_word(finding.grade.value),
            worse=a_word(finding.would_be.value),
        )
    return a_word(finding.grade.value)


@dataclass(frozen=True, slots=True)
class Shut:
    """One valve of a witness: the part's id, its name, and how it comes to be shut."""

    id: str
    name: str
    how: str


def witness(drawing: Drawing, finding: Finding) -> tuple[Shut, ...]:
    """The valves whose shutting proves the finding."""
    if finding.witness is None:
        return ()
    return tuple(
        Shut(part_of(drawing, entry), upper(valve(drawing, entry)), how_shut(drawing, entry))
        for entry in finding.witness.shut
    )


def how_shut(drawing: Drawing, entry: str) -> str:
    """How a valve of a witness comes to be shut: by hand, for want of a call, by a thermostatic head."""
    part = drawing.components[part_of(drawing, entry)]
    ways = {way for each in part.kind.passages(part.data) for way in (each.way, each.pressure_way)}
    said = [words for way, words in _HOW.items() if way in ways]
    if any(passage.secured for passage in part.kind.passages(part.data)):
        said.append(a_word("secured"))
    return strung(dict.fromkeys(said)) if said else a_word("shut")


def alone(drawing: Drawing, finding: Finding) -> str:
    """Which single valves prove it by themselves, as a sentence; empty where there is no witness."""
    if finding.witness is None or not finding.witness.shut:
        return ""
    names = [upper(valve(drawing, entry)) for entry in finding.witness.alone]
    shut = finding.witness.shut
    if not names:
        alone_no = a_word("No one valve does it alone.")
        together = {2: a_word("Both together do."), 3: a_word("All three together do.")}.get(
            len(shut), worded("All {count} together do.", count=len(shut))
        )
        return strung((alone_no, together), " ")
    others = [name for name, entry in zip(names, finding.witness.alone, strict=True) if entry not in shut]
    if others:
        if len(others) == 1:
            return worded("{valve} does it alone too.", valve=others[0])
        return worded("{valves} each do it alone too.", valves=listed(others))
    return a_word("It does it alone.") if len(names) == 1 else a_word("Each does it alone.")


def verdict(analysis: Analysis) -> tuple[str, str]:
    """The sentence below or instead of the findings, and a second one that keeps it in its bounds."""
    if analysis.drawing.is_empty:
        return a_word(NOTHING_DRAWN), ""
    judged = len(analysis.judged)
    if not judged:
        return a_word("No check judged anything"), a_word("There is not enough in this drawing to judge.")
    if not analysis.findings:
        return worded_n("Nothing found by 1 check", "Nothing found by {count} checks", judged), a_word(
            NOT_A_CERTIFICATE
        )
    speaking = {finding.check for finding in analysis.findings}
    silent = [name for name in analysis.judged if name not in speaking]
    if not silent:
        return "", a_word(NOT_A_CERTIFICATE)
    return worded_n("1 check found nothing", "{count} checks found nothing", len(silent)), a_word(
        NOT_A_CERTIFICATE
    )


def not_judged(analysis: Analysis) -> tuple[str, ...]:
    """The checks that could not judge, each with why."""
    return tuple(worded("{check}: {why}", check=check, why=why) for check, why in why_not_judged(analysis))


def why_not_judged(analysis: Analysis) -> tuple[tuple[str, str], ...]:
    """The same, a check's title and why it could not."""
    return tuple((check_title(name), _why_not(analysis, name)) for name in analysis.not_judged)


def not_applicable(analysis: Analysis) -> tuple[str, ...]:
    """The checks that have nothing to judge in this drawing."""
    return tuple(check_title(name) for name in analysis.not_applicable)


def beyond() -> tuple[str, ...]:
    """What no drawing of a circuit can show."""
    return tuple(upper(a_word(each)) for each in NOT_JUDGED_BY_THIS_PROGRAM)


def taken(analysis: Analysis) -> tuple[str, ...]:
    """The usual values that verdicts rest on, in words: `Safety valve: set pressure 3 bar`."""
    return tuple(_taken_words(analysis.drawing, each) for each in analysis.taken)


def check_title(name: str) -> str:
    """What a check is called."""
    check = checks().get(name)
    return a_word(check.lesson.title) if check else name


def _why_not(analysis: Analysis, name: str) -> str:
    missing = dict.fromkeys(
        each for finding in analysis.findings if finding.check == name for each in finding.missing
    )
    names = listed(lower(missing_words(analysis.drawing, each)) for each in missing)
    if names:
        return worded("missing: {names}", names=names)
    return a_word(analysis.why_not_judged.get(name, "not enough is known"))


def _taken_words(drawing: Drawing, entry: str) -> str:
    name, _, shown = entry.partition(" = ")
    id, _, field_name = name.rpartition(".")
    try:
        field = next(each for each in fields_of(drawing, id) if each.name == field_name)
    except (KeyError, StopIteration):
        return entry
    words: str
    if field.type is FieldType.NUMBER:
        words = told_number(shown)
        if field.unit:
            words = worded("{value} {unit}", value=words, unit=a_word(field.unit))
    elif field.default is not None:
        words = value_words(field, field.default)
    else:
        words = spoken(shown)
    return worded("{field} {value}", field=missing_words(drawing, name), value=words)

"""Asks one check about one case, and makes sure that silence is never taken for approval.

A check that crashes becomes a visible finding. Where the drawing says of a switch that decides how
water can go that it is not known, the check is asked for every value it could have: an answer that
is the same for all stands, and any other is unanswered and names the switch.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING, Any

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Check, Verdict
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.plan import every_value
from circuitcheck.drawing.cells import CrowdedError
from circuitcheck.drawing.changing import copied
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.rules.book import NoRuleError
from circuitcheck.told import a_word, worded

if TYPE_CHECKING:
    from circuitcheck.drawing.routing import Routes

VARIANT_BOUND = 256
KEPT_PARTS = 40_000
"""So many parts are kept in cases of one drawing, each with one value of its unknown switches."""
MOST_NAMED = 6


@dataclass(frozen=True, slots=True)
class Answer:
    """A check's findings, whether it judged, does not apply, or could not judge, and why it could not."""

    findings: tuple[Finding, ...]
    status: str
    crashed: bool = False
    why: str = ""


def answer(check: Check, case: Case) -> Answer:
    """What the check says of the case. Never raises."""
    try:
        verdict = _over_unknowns(check, case)
    except NoRuleError as error:
        return Answer((), "not judged", why=str(error))
    except TooLargeError:
        return _not_tried(
            check, "{title}? The ways are too many to prove.", a_word("the ways are too many to prove")
        )
    except CrowdedError:
        return _not_tried(
            check,
            "{title}? So many parts or pipes lie in one place on the sheet that it cannot be told; lay them out.",
            a_word("too much lies in one place on the sheet"),
        )
    except Exception as error:
        return Answer(
            (_crash(check.name, error),),
            "not judged",
            crashed=True,
            why=a_word("it failed inside the program"),
        )
    if not verdict.findings and not verdict.sound:
        return Answer((), "not applicable")
    decided = verdict.sound or any(each.grade is not Grade.UNANSWERED for each in verdict.findings)
    if decided:
        return Answer(verdict.findings, "judged")
    return Answer(verdict.findings, "not judged", why=_why(verdict))


def _why(verdict: Verdict) -> str:
    """Why nothing could be judged: the numbers that lack."""
    lists = [finding.missing for finding in verdict.findings if finding.missing]
    # One finding names no field twice; of a whole plant it names tens of thousands.
    missing = lists[0] if len(lists) == 1 else tuple(dict.fromkeys(itertools.chain.from_iterable(lists)))
    if not missing:
        return a_word("the ways are too many to prove")
    shown = ", ".join(missing[:MOST_NAMED])
    rest = len(missing) - MOST_NAMED
    if rest > 0:
        return worded("not known: {shown} and {rest} more", shown=shown, rest=rest)
    return worded("not known: {shown}", shown=shown)


def _not_tried(check: Check, template: str, why: str) -> Answer:
    """Nothing is known, because to find it out would take too long."""
    says = Says(template, {"title": a_word(check.lesson.title)})
    return Answer(
        (Finding(check.name, Grade.UNANSWERED, says, would_be=Grade.DANGER),), "not judged", why=why
    )


def _crash(name: str, error: Exception) -> Finding:
    return Finding(
        name,
        Grade.UNANSWERED,
        Says(
            "This check failed inside the program and has judged nothing: {error}.",
            {"error": f"{type(error).__name__}: {error}"},
        ),
        would_be=Grade.DANGER,
    )


def _over_unknowns(check: Check, case: Case) -> Verdict:
    unknown = case.kept("unknown ways", lambda: unknown_ways(case.drawing, case.told_parts))
    if not unknown:
        return check.judge(case)
    usual = check.judge(case)
    variants = case.kept("each unknown way", lambda: _variant_cases(case, unknown))
    if variants is None:
        # Too many to try them all: nothing is sure, so nothing is approved.
        if not usual.findings and not usual.sound:
            return usual
        return Verdict((_unanswered(check, (), tuple(unknown), Grade.DANGER),))
    verdicts = [(values, check.judge(variant)) for values, variant in variants]
    return _merged(check, verdicts, tuple(unknown))


def unknown_ways(drawing: Drawing, told: Iterable[str] | None = None) -> dict[str, tuple[Any, ...]]:
    """The fields set to null that decide how water can go, as `id.field`, with their values; `told` are
    the parts with any data, where that is known."""
    found: dict[str, tuple[Any, ...]] = {}
    for id in drawing.components if told is None else told:
        part = drawing.components[id]
        for name in part.kind.rests_on:
            if name in part.data and part.data[name] is None:
                found[f"{part.id}.{name}"] = every_value(part.kind, name)
    return found


Values = tuple[Any, ...]


class _Variant(Case):
    """A case with an unknown switch set. It lies on the sheet as the drawing does, so that its pipes are
    not routed anew."""

    def __init__(self, drawing: Drawing, of: Case) -> None:
        super().__init__(drawing)
        self._of = of

    @cached_property
    def lines(self) -> Routes:
        """The lines of the drawing it is a variant of."""
        return self._of.lines


def _variant_cases(case: Case, unknown: dict[str, tuple[Any, ...]]) -> Iterable[tuple[Values, Case]] | None:
    """A case for every value of all unknown switches; None where they are too many. Each is made once for
    all checks, unless all of them together would fill the memory: then anew for each check."""
    variants = list(itertools.islice(_variants(case.drawing, unknown), VARIANT_BOUND + 1))
    if len(variants) > VARIANT_BOUND:
        return None
    if len(variants) * len(case.drawing.components) > KEPT_PARTS:
        return _Each(variants, case)
    return tuple((values, _Variant(variant, case)) for values, variant in variants)


@dataclass(frozen=True)
class _Each:
    """The cases of these variants, made as they are asked for."""

    variants: list[tuple[Values, Drawing]]
    case: Case

    def __iter__(self) -> Iterator[tuple[Values, Case]]:
        return ((values, _Variant(variant, self.case)) for values, variant in self.variants)


def _variants(drawing: Drawing, unknown: dict[str, tuple[Any, ...]]) -> Iterator[tuple[Values, Drawing]]:
    for values in itertools.product(*unknown.values()):
        components = copied(drawing.components)
        for name, value in zip(unknown, values, strict=True):
            part, _, field = name.rpartition(".")
            old = components[part]
            components[part] = replace(old, data={**old.data, field: value})
        yield values, replace(drawing, components=components)


Subject = tuple[str, ...]


def _subject(finding: Finding) -> Subject:
    """The thing judged: two findings about one thing are told apart by neither sentence nor witness."""
    return (finding.components or finding.pipes)[:1]


def _merged(check: Check, verdicts: list[tuple[Values, Verdict]], unknown: tuple[str, ...]) -> Verdict:
    told = [(values, _by_subject(verdict)) for values, verdict in verdicts]
    subjects = dict.fromkeys(subject for _, found in told for subject in found)
    findings: list[Finding] = []
    for subject in subjects:
        grades = {tuple(each.grade for each in found.get(subject, ())) for _, found in told}
        if len(grades) == 1:
            findings += _surest([found[subject] for _, found in told], unknown)
            continue
        worst = min(
            (each.would_be or each.grade for _, found in told for each in found.get(subject, ())),
            key=lambda grade: grade.rank,
        )
        findings.append(_unanswered(check, subject, _deciding(subject, told, unknown), worst))
    return Verdict(tuple(findings), min(verdict.sound for _, verdict in verdicts))


def _surest(answers: list[list[Finding]], unknown: tuple[str, ...]) -> list[Finding]:
    """The answer whose witness takes least for granted: one without a part that is not known, and
    of those the one that has most to shut."""
    unsure = {name.rpartition(".")[0] for name in unknown}

    def sureness(findings: list[Finding]) -> tuple[bool, int]:
        witnesses = [finding.witness for finding in findings if finding.witness]
        named = {entry.partition(":")[0] for each in witnesses for entry in (*each.shut, *each.alone)}
        return not named & unsure, sum(len(each.shut) for each in witnesses)

    best = answers[0]
    for each in answers[1:]:
        if sureness(each) > sureness(best):
            best = each
    return best


def _by_subject(verdict: Verdict) -> dict[Subject, list[Finding]]:
    found: dict[Subject, list[Finding]] = {}
    for finding in verdict.findings:
        found.setdefault(_subject(finding), []).append(finding)
    return found


def _deciding(
    subject: Subject,
    told: list[tuple[Values, dict[Subject, list[Finding]]]],
    unknown: tuple[str, ...],
) -> tuple[str, ...]:
    """Those of the unknown fields that change the answer while the others stay as they are."""
    grades = {
        tuple(map(_key, values)): tuple(each.grade for each in found.get(subject, ()))
        for values, found in told
    }
    found = set()
    for one, two in itertools.combinations(grades, 2):
        differing = [place for place in range(len(unknown)) if one[place] != two[place]]
        if len(differing) == 1 and grades[one] != grades[two]:
            found.add(unknown[differing[0]])
    return tuple(name for name in unknown if name in found)


def _key(value: Any) -> Any:
    hashable: object = tuple(value) if isinstance(value, list) else value
    return hashable


def _unanswered(check: Check, subject: Subject, missing: tuple[str, ...], would_be: Grade) -> Finding:
    return Finding(
        check.name,
        Grade.UNANSWERED,
        Says(
            "{title}? It rests on what is not known: {missing}.",
            {
                "title": a_word(check.lesson.title),
                "missing": ", ".join(missing),
            },
        ),
        components=subject,
        missing=missing,
        would_be=would_be,
    )

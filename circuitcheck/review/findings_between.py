"""Which findings came and which went from one drawing to another.

A finding is the same in both where the same check says it of the same thing (the first part or pipe it
names, matched as the comparison matches them); of several such, in the order of their grades. One that is
the same but weighs otherwise has changed its grade.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

from circuitcheck.finding import Finding
from circuitcheck.review.comparing import Comparison
from circuitcheck.review.matching import Matches

Key = tuple[str, str]


@dataclass(frozen=True, slots=True)
class FindingsBetween:
    """`went` are findings of the old drawing, `came` of the new, `regraded` and `stayed` pairs of both."""

    went: tuple[Finding, ...]
    came: tuple[Finding, ...]
    regraded: tuple[tuple[Finding, Finding], ...]
    stayed: tuple[tuple[Finding, Finding], ...]


def findings_between(found: Comparison, old: Iterable[Finding], new: Iterable[Finding]) -> FindingsBetween:
    """What came and went, each in the order in which its drawing's findings are listed."""
    waiting: dict[Key, list[Finding]] = defaultdict(list)
    for finding in sorted(new, key=lambda each: each.order):
        waiting[_key(finding, {})].append(finding)
    went, pairs = [], []
    for finding in sorted(old, key=lambda each: each.order):
        others = waiting.get(_key(finding, found.same))
        if others:
            pairs.append((finding, others.pop(0)))
        else:
            went.append(finding)
    came = sorted((each for others in waiting.values() for each in others), key=lambda each: each.order)
    regraded = tuple(pair for pair in pairs if _weight(pair[0]) != _weight(pair[1]))
    stayed = tuple(pair for pair in pairs if _weight(pair[0]) == _weight(pair[1]))
    return FindingsBetween(tuple(went), tuple(came), regraded, stayed)


def _key(finding: Finding, same: Matches) -> Key:
    first = (*finding.components, *finding.pipes)[:1]
    return finding.check, same.get(first[0], first[0]) if first else ""


def _weight(finding: Finding) -> tuple[str, str]:
    return finding.grade, finding.would_be or ""

"""What the grades mean, and how many findings there are of each. No Qt."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from circuitcheck.finding import Grade
from circuitcheck.told import a_word

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis

GRADE_MEANS = {
    Grade.DANGER: a_word("can hurt someone, or breaks a legal safety provision"),
    Grade.FAULT: a_word("will not work, or will do damage"),
    Grade.ADVICE: a_word("good practice"),
    Grade.UNANSWERED: a_word("a number is missing"),
}


def counts(analysis: Analysis) -> dict[Grade, int]:
    """How many findings there are of each grade."""
    found = Counter(finding.grade for finding in analysis.findings)
    return {grade: found[grade] for grade in Grade}

"""What a check says of a question that goes beyond the stated search bound."""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.finding import Finding, Grade, Says, Witness


def too_large(case: Case, check: str, part: str, would_be: Grade) -> Finding:
    """Unanswered: the valve positions around that part are too many to prove; never silence."""
    return Finding(
        check,
        Grade.UNANSWERED,
        Says("The valve positions around {thing} are too many to prove.", {"thing": case.drawing.name(part)}),
        components=(part,),
        witness=Witness(),
        would_be=would_be,
    )

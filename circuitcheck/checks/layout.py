"""What the checks of the layout share: the index of what lies where, made once for a case."""

from __future__ import annotations

from typing import cast

from circuitcheck.checks.case import Case
from circuitcheck.drawing.lying import Lying


def lying(case: Case) -> Lying:
    """Where the parts and pipes of the case lie.

    Kept in the case under the name a cached property would have: whoever judges one drawing after
    another puts the earlier index there, carried on by `Lying.after`.
    """
    known = case.__dict__.get("lying")
    if known is None:
        known = case.__dict__["lying"] = Lying(case.lines, case.circuit.loose_pipes)
    return cast(Lying, known)

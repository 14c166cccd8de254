"""What the checks of the drawing itself share: what lies where, and who bears which label, made once for a case."""

from __future__ import annotations

from typing import cast

from circuitcheck.checks.case import Case
from circuitcheck.drawing.labelled import Labelled
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


def labelled(case: Case) -> Labelled:
    """Which parts of the case bear which label; kept and carried on as `lying` is."""
    known = case.__dict__.get("labelled")
    if known is None:
        known = case.__dict__["labelled"] = Labelled(case.drawing.components.values())
    return cast(Labelled, known)

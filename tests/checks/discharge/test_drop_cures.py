"""The straight drop that a pipe has room for is offered; one that it has no room for is not."""

from __future__ import annotations

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import found, only
from tests.checks.discharge.test_no_drop_below_tundish import NAME, below

ROOM = {
    "exactly enough": below(straight_drop_m=0.1, length_m=0.5, rise_m=-0.3),
    "told from its end": below(turned=True, straight_drop_m=0.1, length_m=2, rise_m=0.5),
}
NO_ROOM = {
    "falls a step less": below(straight_drop_m=0.1, length_m=2, rise_m=-0.299),
    "rises": below(straight_drop_m=0.1, length_m=2, rise_m=0.5),
    "too short": below(straight_drop_m=0.1, length_m=0.2, rise_m=-0.5),
    "fall not known": below(straight_drop_m=0.1, length_m=2),
    "length not known": below(straight_drop_m=0.1, rise_m=-1),
}


@pytest.mark.parametrize("drawing", ROOM.values(), ids=ROOM)
def test_offered(drawing: Drawing) -> None:
    (proposal,) = checks()[NAME].propose(Case(drawing), only(NAME, drawing))
    assert "runs straight down for 300 mm below tundish tu" in str(proposal.says)
    assert not found(NAME, proposal.drawing)


@pytest.mark.parametrize("drawing", NO_ROOM.values(), ids=NO_ROOM)
def test_not_offered(drawing: Drawing) -> None:
    assert not list(checks()[NAME].propose(Case(drawing), only(NAME, drawing)))

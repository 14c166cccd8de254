"""One label on several parts or controls."""

from __future__ import annotations

from dataclasses import replace

import pytest

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import asked, found, only
from tests.made import made

NAME = "label-twice"


def labelled(*labels: str, controls: tuple[str, ...] = ()) -> Drawing:
    """Tees t1, t2, ... and controls c1, c2, ... with these labels."""
    drawing = made(
        {f"t{number}": "tee" for number in range(1, len(labels) + 1)},
        "",
        controls={f"c{number}": ("programmer", ()) for number in range(1, len(controls) + 1)},
    )
    parts = dict(zip(drawing.components, labels, strict=True))
    clocks = dict(zip(drawing.controls, controls, strict=True))
    return replace(
        drawing,
        components={id: replace(part, label=parts[id]) for id, part in drawing.components.items()},
        controls={id: replace(control, label=clocks[id]) for id, control in drawing.controls.items()},
    )


@pytest.mark.parametrize(
    "drawing",
    [labelled("Flow", "Return"), labelled("Pump 1", "Pump 2"), labelled("Clock", controls=("Clock 2",))],
)
def test_each_its_own(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(
    "drawing", [Drawing(), labelled("", ""), labelled(" ", " "), labelled(controls=("", ""))]
)
def test_no_label_is_not_judged(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


TWICE = [
    (labelled("Pump", "Pump"), ("t1", "t2")),
    (labelled("Pump", "Valve", "Pump", "Pump"), ("t1", "t3", "t4")),
    (labelled("Zone  valve", " zone valve "), ("t1", "t2")),
    (labelled("Clock", controls=("Clock",)), ("t1", "c1")),
    (labelled(controls=("Clock", "Clock")), ("c1", "c2")),
]


@pytest.mark.parametrize(("drawing", "ids"), TWICE)
def test_twice(drawing: Drawing, ids: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("advice", ids)
    assert all(id in finding.message for id in ids)


@pytest.mark.parametrize(("drawing", "ids"), TWICE)
def test_they_are_proposed_to_be_numbered(drawing: Drawing, ids: tuple[str, ...]) -> None:
    (proposal,) = checks()[NAME].propose(Case(drawing), only(NAME, drawing))
    assert found(NAME, proposal.drawing) == ()


def test_a_number_that_is_taken_is_passed_over() -> None:
    drawing = labelled("Pump", "Pump 1", "Pump")
    (proposal,) = checks()[NAME].propose(Case(drawing), only(NAME, drawing))
    labels = [part.label for part in proposal.drawing.components.values()]
    assert labels == ["Pump 2", "Pump 1", "Pump 3"]


def test_each_label_by_itself() -> None:
    drawing = labelled("A", "B", "A", "B")
    assert [finding.components for finding in found(NAME, drawing)] == [("t1", "t3"), ("t2", "t4")]

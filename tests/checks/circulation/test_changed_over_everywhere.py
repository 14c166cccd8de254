"""Two pipes of any part changed over, in every arrangement and every sample without such a finding: some check
says so, and of the slips that are made on site the one that must."""

from __future__ import annotations

from functools import cache

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.drawing.edits import relabel
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.finding import Finding
from circuitcheck.rechecking import Rechecker
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.checks.circulation.brute_connections import all_pairs
from tests.drawing.changing_over import changed_over
from tests.lessons.sampling import each_fifth

CHANGED, BACKWARDS = "connections-changed-over", "fitted-backwards"
SAMPLES = (
    "cottage",
    "flat-over-workshop",
    "guest-house",
    "terrace-as-found",
    "terrace-as-proposed",
    "village-hall",
)
NAMES = (*arrangements(), *(f"sample {name}" for name in SAMPLES))

MUST = {
    ("unvented_store", "cold", "hot"): {CHANGED},
    ("unvented_store", "cold", "secondary_return"): {CHANGED},
    ("unvented_store", "hot", "secondary_return"): {CHANGED},
    ("unvented_store", "coil_flow", "coil_return"): {CHANGED},
    ("unvented_store", "cold", "relief"): {"relief-misplaced"},
    ("unvented_store", "hot", "relief"): {"relief-misplaced"},
    ("vented_store", "cold", "hot"): {CHANGED},
    ("vented_store", "coil_flow", "coil_return"): {CHANGED},
    ("combination_heat_source", "cold", "hot"): {CHANGED},
    ("combination_heat_source", "flow", "return"): {CHANGED},
    ("heat_source", "flow", "return"): {CHANGED, BACKWARDS},
    ("separator", "source_flow", "source_return"): {CHANGED},
    ("separator", "source_flow", "load_return"): {CHANGED},
    ("separator", "source_return", "load_flow"): {CHANGED},
    ("separator", "load_flow", "load_return"): {BACKWARDS},
    ("blending_valve", "hot", "cold"): {CHANGED},
    ("blending_valve", "cold", "mixed"): {CHANGED},
    ("pump", "in", "out"): {BACKWARDS},
    ("check_valve", "in", "out"): {BACKWARDS},
    ("bypass_valve", "in", "out"): {BACKWARDS},
}  # fmt: skip
"""Where both have a pipe, one of these speaks."""

ALIKE = {
    ("radiator", "flow", "return"): "it heats by either end",
    ("heating_zone", "flow", "return"): "it heats by either end",
    ("separator", "source_flow", "load_flow"): "both are above, in one vessel",
    ("separator", "source_return", "load_return"): "both are below, in one vessel",
    ("three_port_valve", "a", "b"): "which leg is whose is a matter of its wiring",
    ("zone_valve", "in", "out"): "water goes through it either way",
    ("dirt_separator", "a", "b"): "water goes through it either way",
    ("isolating_valve", "a", "b"): "water goes through it either way",
    ("balancing_valve", "a", "b"): "water goes through it either way",
    ("strainer", "in", "out"): "water goes through it either way, and it is drawn without an arrow",
    ("tee", "a", "b"): "all ends of a tee are alike",
    ("tee", "a", "branch"): "all ends of a tee are alike",
    ("tee", "b", "branch"): "all ends of a tee are alike",
}
"""Of these nothing need be said, and why."""


@cache
def drawn(name: str) -> Drawing:
    sample = name.removeprefix("sample ")
    return (
        arrangements()[name].drawing
        if sample == name
        else read(data_path("samples") / f"{sample}.wetcircuit")
    )


def new_in(drawing: Drawing, before: set[tuple[str, tuple[str, ...]]]) -> list[Finding]:
    """What is said anew; lines that cross are of the sheet and not of the circuit."""
    findings = analyse(drawing).findings
    return [
        each
        for each in findings
        if (each.check, each.components) not in before and each.check != "unclear-crossing"
    ]


@pytest.mark.slow
@pytest.mark.parametrize("name", each_fifth(NAMES))
def test_some_check_says_so(name: str) -> None:
    drawing = drawn(name)
    findings = analyse(drawing).findings
    assert CHANGED not in {each.check for each in findings}
    before = {(each.check, each.components) for each in findings}
    tried = 0
    for part, one, other in all_pairs(drawing):
        pair = (drawing.components[part].kind.name, one, other)
        if pair in ALIKE:
            continue
        tried += 1
        said = new_in(changed_over(drawing, part, one, other), before)
        checks = {each.check for each in said}
        both = {Joint(part, one), Joint(part, other)} <= drawing.joined.keys()
        if pair[0] == "outlet" and not checks:
            # A tap with nothing but cold, on whichever connection: nothing is hot there.
            assert not both and Joint(part, "hot") not in drawing.joined
            continue
        assert checks, (pair, part)
        if both and pair in MUST and not (pair[2] == "relief" and "open-end" in checks):
            assert checks & MUST[pair], (pair, part, checks)
        assert len([each for each in said if each.check == CHANGED]) <= 1
        # Where a relief valve is found misplaced, or a connection open, that is enough said.
        if CHANGED in checks:
            assert not checks & {BACKWARDS, "relief-misplaced", "open-end"}
    assert tried


@pytest.mark.slow
@pytest.mark.parametrize("name", each_fifth(NAMES))
def test_of_what_is_alike_it_says_nothing(name: str) -> None:
    drawing = drawn(name)
    for part, one, other in all_pairs(drawing):
        kind = drawing.components[part].kind.name
        if (kind, one, other) in ALIKE and kind not in ("tee", "isolating_valve"):
            assert CHANGED not in {
                each.check for each in analyse(changed_over(drawing, part, one, other)).findings
            }


@pytest.mark.slow
@pytest.mark.parametrize("name", each_fifth(NAMES))
def test_judged_again_after_the_edit_it_says_the_same(name: str) -> None:
    drawing, again = drawn(name), Rechecker()
    for part, one, other in all_pairs(drawing):
        if (drawing.components[part].kind.name, one, other) not in MUST:
            continue
        wrong = changed_over(drawing, part, one, other)
        for step in (drawing, wrong, relabel(wrong, part, "Another name"), wrong):
            told, fresh = again.analyse(step).findings, analyse(step).findings
            assert [each.message for each in told] == [each.message for each in fresh]
            assert told == fresh

"""Two drawings of one circuit are judged alike, by every check, sound or broken."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.checks import same_circuit
from tests.checks.same_circuit import NEW, OLD, TWIN, Change, broken, doubled
from tests.checks.whole_houses import HOUSES, house

ABOUT_THE_SHEET = {"near-miss", "unclear-crossing", "overlapping-parts", "label-twice"}
# Where heights disagree, which pipe closes the disagreement is not promised.
NOT_TOLD_ALIKE = ABOUT_THE_SHEET | {"heights-disagree"}
# What is judged there is a stretch or a piece of the circuit, told by whichever of it comes first.
OF_A_PIECE = {"drain-absent", "unreached-part", "zone-without-control", "air-vent-absent"}
# Unanswered, one finding for a whole water, told by its first pump.
OF_A_WATER = {"emitter-starved", "heat-strays", "pipe-too-fast"}

DRAWINGS = {path.stem: read(path) for path in sorted(data_path("samples").glob("*.wetcircuit"))}
DRAWINGS |= {name: house(name) for name in HOUSES}
CHANGES: dict[str, Change] = {
    change.__name__: change
    for change in (
        same_circuit.renamed,
        same_circuit.shuffled,
        same_circuit.piped_in_the_other_order,
        same_circuit.symmetric_parts_turned,
        same_circuit.mirrored,
        same_circuit.capped_tees_cut_in,
    )
}
Told = tuple[object, ...]


def as_before(id: str) -> str:
    """The id that a part or pipe had before the change."""
    id = re.sub(f"^(?:{NEW})+(.*?)x*(?:_pipe)+$", r"\1", id)
    return id.removeprefix(OLD).removeprefix(TWIN)


def in_short(finding: Finding) -> Told:
    """What must not depend on how the circuit is drawn."""
    subject = as_before(finding.components[0]) if finding.components else ""
    if finding.check in OF_A_PIECE or (finding.check in OF_A_WATER and finding.missing):
        subject = ""
    witness = finding.witness
    return (
        finding.check,
        finding.grade,
        subject,
        None if witness is None else len(witness.shut),
        None if witness is None else tuple(sorted(as_before(id.partition(":")[0]) for id in witness.alone)),
        finding.would_be,
        tuple(sorted({as_before(id) + "." + field for id, _, field in map(_parts, finding.missing)})),
    )


def _parts(missing: str) -> tuple[str, str, str]:
    return missing.partition(".")


def told(drawing: Drawing, skip: set[str]) -> tuple[Counter[Told], set[str]]:
    """All findings in short, and the checks that judged."""
    analysis = analyse(drawing)
    assert not analysis.crashed
    findings = [in_short(each) for each in analysis.findings if each.check not in skip]
    return Counter(findings), set(analysis.judged) - skip


def plain(drawing: Drawing) -> Drawing:
    """Without what a change of the sheet would spoil: corners, and labels that are not there."""
    pipes = {id: replace(pipe, via=None) for id, pipe in drawing.pipes.items()}
    return same_circuit.with_ids(replace(drawing, pipes=pipes), lambda id: id)


@pytest.mark.parametrize("name", DRAWINGS)
def test_the_same_circuit_is_judged_alike(name: str) -> None:
    drawing, rng = plain(DRAWINGS[name]), Random(name)
    other = drawing
    for change in CHANGES.values():
        other = change(other, rng)
    assert told(other, NOT_TOLD_ALIKE) == told(drawing, NOT_TOLD_ALIKE)


@pytest.mark.parametrize("name", DRAWINGS)
def test_valves_that_serve_one_thing_change_nothing(name: str) -> None:
    drawing = plain(DRAWINGS[name])
    # Between two valves there is a new stretch, and it has no drain.
    skip = NOT_TOLD_ALIKE | {"drain-absent"}
    assert told(same_circuit.valves_at_taps(drawing, Random(name)), skip) == told(drawing, skip)


@pytest.mark.parametrize("name", DRAWINGS)
def test_two_of_everything_is_judged_twice(name: str) -> None:
    # A content told for the whole drawing is not that of each of two circuits.
    drawing = plain(DRAWINGS[name])
    drawing = replace(drawing, design={**drawing.design, "system_content_l": None})
    once, judged = told(drawing, NOT_TOLD_ALIKE)
    assert told(doubled(drawing), NOT_TOLD_ALIKE) == (once + once, judged)


@settings(max_examples=25)
@given(st.sampled_from(sorted(DRAWINGS)), st.randoms(use_true_random=False), st.sampled_from(sorted(CHANGES)))
def test_a_broken_circuit_is_judged_alike(name: str, rng: Random, change: str) -> None:
    drawing = DRAWINGS[name]
    for _ in range(rng.randint(1, 3)):
        drawing = broken(drawing, rng)
    drawing = plain(drawing)
    assert told(CHANGES[change](drawing, rng), NOT_TOLD_ALIKE) == told(drawing, NOT_TOLD_ALIKE)


@settings(max_examples=5)
@given(st.sampled_from(sorted(DRAWINGS)), st.randoms(use_true_random=False))
def test_two_broken_circuits_are_judged_as_one(name: str, rng: Random) -> None:
    drawing = plain(broken(broken(DRAWINGS[name], rng), rng))
    drawing = replace(drawing, design={**drawing.design, "system_content_l": None})
    once, judged = told(drawing, NOT_TOLD_ALIKE)
    assert told(doubled(drawing), NOT_TOLD_ALIKE) == (once + once, judged)


def _without_a_number(drawing: Drawing) -> list[Drawing]:
    found = []
    for id, part in drawing.components.items():
        told_of = {
            field.name: None
            for field in part.kind.fields
            if field.name in part.data and field.name != "built_in"
        }
        parts = {**drawing.components, id: replace(part, data={**part.data, **told_of})}
        found.append(replace(drawing, components=parts))
    return found


@pytest.mark.parametrize("name", ["open_vented", "built_in", "separator", "two_sources"])
def test_sentences_begin_large_and_go_on_small(name: str) -> None:
    # The ids of these houses, which are their labels, are small.
    for drawing in _without_a_number(house(name)):
        for finding in analyse(drawing).findings:
            message = finding.message
            assert message[:1].isupper() and message[-1:] in ".)?", message
            assert not re.match("(Whether|Is|Can) [A-Z]", message), message

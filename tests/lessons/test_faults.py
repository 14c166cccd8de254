"""Every kind of fault: where it is put in, that is found, as danger or fault, and nothing else is said."""

from __future__ import annotations

import random
from itertools import islice

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.lessons.catalogue import faults, planted
from circuitcheck.lessons.fault import exactly
from circuitcheck.lessons.site import Site
from circuitcheck.storage.reading import parse
from circuitcheck.storage.writing import dump
from tests.lessons.sampling import each_fifth

PLACES = 4
"""How many places of each kind are tried in each arrangement."""


@pytest.mark.slow
@pytest.mark.parametrize("check", each_fifth(faults()))
def test_what_is_put_in_is_what_is_found(check: str) -> None:
    sound = tried = 0
    declared: set[str] = set()
    brought: set[str] = set()
    for name, arrangement in arrangements().items():
        site = Site(arrangement.drawing, random.Random(f"{check} {name}"))
        for each in islice(planted(check, site), PLACES):
            assert each.drawing is not arrangement.drawing and each.check == check
            declared |= each.brings
            tried += 1
            findings = analyse(each.drawing).findings
            if exactly([each], findings):
                sound += 1
                brought |= {finding.check for finding in findings} - {check}
    assert sound, "no arrangement takes this fault"
    # A place that does not do costs an analysis each time an exercise is made.
    assert sound >= tried / 12
    # Nothing is excused that this fault does not in truth bring.
    assert brought == declared


@pytest.mark.parametrize("check", each_fifth(faults()))
def test_it_is_told_in_a_sentence_that_can_be_believed(check: str) -> None:
    fault = faults()[check]
    assert fault.happens.endswith(".") and fault.topic
    for name, arrangement in arrangements().items():
        site = Site(arrangement.drawing, random.Random(f"{check} {name}"))
        for each in islice(planted(check, site), 1):
            assert str(each.says).endswith(".") and each.parts + each.pipes
            known = {*each.drawing.components, *each.drawing.pipes, *each.drawing.controls}
            assert {*each.parts, *each.pipes} <= known


@pytest.mark.parametrize("check", each_fifth(faults()))
def test_a_drawing_with_it_can_be_saved_and_read(check: str) -> None:
    for name, arrangement in arrangements().items():
        site = Site(arrangement.drawing, random.Random(f"{check} {name}"))
        for each in islice(planted(check, site), PLACES):
            again = parse(dump(each.drawing), name)
            assert again.components == each.drawing.components and again.pipes == each.drawing.pipes

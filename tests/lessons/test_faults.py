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

PLACES = 3
"""How many places of each kind are tried in each arrangement."""


@pytest.mark.parametrize("check", faults())
def test_what_is_put_in_is_what_is_found(check: str) -> None:
    sound = 0
    for name, arrangement in arrangements().items():
        site = Site(arrangement.drawing, random.Random(f"{check} {name}"))
        for each in islice(planted(check, site), PLACES):
            findings = analyse(each.drawing).findings
            told = [f"{finding.grade} {finding.check}: {finding.message}" for finding in findings]
            assert each.drawing is not arrangement.drawing and each.check == check
            sound += exactly([each], findings)
            if not exactly([each], findings):
                print(name, "|", each.says, "|", told)
    assert sound, "no arrangement takes this fault"


@pytest.mark.parametrize("check", faults())
def test_it_is_told_in_a_sentence_that_can_be_believed(check: str) -> None:
    fault = faults()[check]
    assert fault.happens.endswith(".") and fault.topic
    for name, arrangement in arrangements().items():
        site = Site(arrangement.drawing, random.Random(f"{check} {name}"))
        for each in islice(planted(check, site), 1):
            assert str(each.says).endswith(".") and each.parts + each.pipes
            known = {*each.drawing.components, *each.drawing.pipes, *each.drawing.controls}
            assert {*each.parts, *each.pipes} <= known

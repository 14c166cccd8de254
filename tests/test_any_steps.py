"""Thousands of random steps: no exception but a step's own refusal, nothing lost on the way back and forth, and
every verdict that of a file freshly opened."""

from __future__ import annotations

from random import Random

import pytest
from hypothesis import settings

from circuitcheck.analysis import Analysis, analyse
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.history import History
from circuitcheck.rechecking import Rechecker
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import parse, read
from circuitcheck.storage.writing import dump
from tests.random_steps import RandomHand

THOROUGH = settings.get_current_profile_name() == "thorough"
STEPS = 60
JUDGED_EVERY = 16
BY_LINES = {"near-miss", "unclear-crossing"}
"""What they find lies in the lines of pipes that the program routes. Those keep their shape through steps as far
as they can, and may be routed otherwise where the drawing is opened anew."""
STARTS = [Drawing(), *(read(path) for path in sorted(data_path("samples").glob("*.wetcircuit")))]


def told(analysis: Analysis) -> tuple[object, ...]:
    """All that an analysis says, in the words of the ids alone."""
    findings = sorted(
        (each.check, each.grade.value, each.components, each.message)
        for each in analysis.findings
        if each.check not in BY_LINES
    )
    apart = [sorted(set(names) - BY_LINES) for names in (analysis.judged, analysis.not_applicable)]
    return findings, *apart, analysis.crashed, analysis.rule_book


def walk(seed: int, steps: int = STEPS) -> RandomHand:
    """Make random steps, undo and redo among them; hold what must hold on the way and at the end."""
    chance = Random(seed)
    start = STARTS[seed % len(STARTS)]
    hand, history, checker = RandomHand(chance), History(start), Rechecker()
    for count in range(steps):
        roll = chance.random()
        if roll < 0.08:
            history.undo()
        elif roll < 0.12:
            history.redo()
        else:
            after = hand.step(history.drawing)
            if after is not history.drawing:
                history.do("a step", after)
        if count % JUDGED_EVERY == 0 or count == steps - 1:
            drawing = history.drawing
            again = parse(dump(drawing), "again")
            assert dump(again) == dump(drawing)
            judged = checker.analyse(drawing)
            assert judged.crashed == ()
            assert told(judged) == told(analyse(again))
    while history.redo() is not None:
        pass
    end = dump(history.drawing)
    while history.undo() is not None:
        pass
    assert dump(history.drawing) == dump(start)
    while history.redo() is not None:
        pass
    assert dump(history.drawing) == end
    return hand


@pytest.mark.parametrize("seed", range(500 if THOROUGH else 6))
def test_random_steps(seed: int) -> None:
    walk(seed)


def test_every_edit_is_made_and_refusals_are_met() -> None:
    made: set[str] = set()
    refused: set[str] = set()
    for seed in range(1000, 1006):
        hand = RandomHand(Random(seed))
        drawing = STARTS[seed % len(STARTS)]
        for _ in range(70):
            drawing = hand.step(drawing)
        made |= set(hand.made)
        refused |= set(hand.refused)
    # Which are made is a matter of chance; nearly all are.
    assert len({name for name, _ in RandomHand(Random()).edits} - made) <= 3
    assert len(refused) > 12

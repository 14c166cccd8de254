"""Exercises: proved by a fresh analysis, made the same everywhere, of all kinds and on all arrangements."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
from collections import Counter

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.finding import Grade
from circuitcheck.lessons.catalogue import faults
from circuitcheck.lessons.fault import exactly, places
from circuitcheck.lessons.generator import MOST_FAULTS, Exercise, NoExerciseError, exercise
from circuitcheck.storage.reading import parse
from circuitcheck.storage.writing import dump
from tests.lessons.sampling import each_fifth

SEEDS, MANY = 40, 2000
"""So many are tried every time, and so many of an evening."""
HEAVY = (Grade.DANGER, Grade.FAULT)


def holds(made: Exercise, count: int) -> None:
    """The faults put in are found for what they are by a fresh analysis, and nothing else is."""
    analysis = analyse(made.drawing)
    assert analysis.findings == made.findings and not analysis.crashed
    assert len({each.check for each in made.planted}) == len(made.planted) == count
    assert exactly(made.planted, made.findings)
    by_check = {each.check: each for each in made.planted}
    brought = {check for each in made.planted for check in each.brings}
    for finding in analysis.findings:
        assert finding.check in by_check or finding.check in brought, finding
        if finding.check in by_check:
            own = by_check[finding.check]
            assert {*own.parts, *own.pipes} & {*places(finding)}, (own.says, finding)
    for check in by_check:
        assert any(each.check == check and each.grade in HEAVY for each in analysis.findings)
    known = {*made.drawing.components, *made.drawing.pipes, *made.drawing.controls}
    assert all({*each.parts} & known or {*each.pipes} & known for each in made.planted)


@pytest.mark.slow
@pytest.mark.parametrize("part", range(5))
def test_every_exercise_has_just_the_faults_put_in(part: int) -> None:
    for seed in range(part, SEEDS, 5):
        count = 1 + seed // 5 % MOST_FAULTS
        holds(exercise(seed, count=count), count)


@pytest.mark.evening
@pytest.mark.parametrize("part", range(10))
def test_thousands_of_exercises_have_just_the_faults_put_in(part: int) -> None:
    for seed in range(SEEDS + part, MANY, 10):
        count = 1 + seed // 10 % MOST_FAULTS
        holds(exercise(seed, count=count), count)


@pytest.mark.evening
def test_every_kind_and_every_arrangement_has_its_share() -> None:
    made = [exercise(seed) for seed in range(3 * len(faults()))]
    met = Counter(each.planted[0].check for each in made)
    # Drawn evenly, a kind is left out of so many about once in twenty; more often would be a rarity.
    assert len(met) >= 0.85 * len(faults()), set(faults()) - set(met)
    assert max(met.values()) <= 12
    assert set(Counter(each.arrangement for each in made)) == set(arrangements())


@pytest.mark.slow
@pytest.mark.parametrize("kind", each_fifth(faults()))
def test_every_kind_can_be_asked_for(kind: str) -> None:
    made = exercise(7, kinds={kind})
    assert [each.check for each in made.planted] == [kind]
    holds(made, 1)


@pytest.mark.parametrize("name", arrangements())
def test_every_arrangement_can_be_asked_for(name: str) -> None:
    made = exercise(11, arrangement=name, count=2)
    assert made.arrangement == name
    holds(made, 2)


def test_a_drawing_with_faults_can_be_saved_and_read() -> None:
    made = exercise(3, count=3)
    again = parse(dump(made.drawing), "exercise")
    assert analyse(again).findings == made.findings


def test_the_same_seed_makes_the_same_exercise_in_every_process() -> None:
    ask = (
        "import hashlib\n"
        "from circuitcheck.lessons.generator import exercise\n"
        "from circuitcheck.storage.writing import dump\n"
        "for seed in (1, 2, 3):\n"
        "    made = exercise(seed, count=2)\n"
        "    said = [(e.check, str(e.says), e.parts, e.pipes) for e in made.planted]\n"
        "    print(hashlib.sha256(dump(made.drawing) + repr(said).encode()).hexdigest())\n"
    )
    here = []
    for seed in (1, 2, 3):
        made = exercise(seed, count=2)
        said = [(each.check, str(each.says), each.parts, each.pipes) for each in made.planted]
        here.append(hashlib.sha256(dump(made.drawing) + repr(said).encode()).hexdigest())
    for hash_seed in ("0", "4711"):
        environment = {**os.environ, "PYTHONHASHSEED": hash_seed}
        run = [sys.executable, "-c", ask]
        answer = subprocess.run(run, capture_output=True, text=True, check=True, env=environment)
        assert answer.stdout.split() == here


def test_other_seeds_make_other_exercises() -> None:
    made = {dump(exercise(seed, arrangement="no-store").drawing) for seed in range(8)}
    assert len(made) > 6


def test_what_cannot_be_made_is_refused() -> None:
    with pytest.raises(NoExerciseError):
        exercise(1, kinds={"tundish-absent"}, arrangement="no-store")
    with pytest.raises(NoExerciseError):
        exercise(1, kinds={"gauge-absent", "vessel-absent"}, count=3)
    with pytest.raises(ValueError, match="between 1 and 5"):
        exercise(1, count=6)
    with pytest.raises(KeyError):
        exercise(1, kinds={"no-such-check"})
    with pytest.raises(KeyError):
        exercise(1, arrangement="no-such-arrangement")

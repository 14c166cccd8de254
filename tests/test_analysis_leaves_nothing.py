"""What was worked out of a drawing is gone when it is judged: nothing is left for Python to find and clear."""

from __future__ import annotations

import gc
from collections.abc import Callable

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.value import Drawing
from circuitcheck.rechecking import Rechecker
from circuitcheck.report.flows import flows
from circuitcheck.report.sizes import sized
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.benchmarks.synthetic import plant

SAMPLES = [read(path) for path in sorted(data_path("samples").glob("*.wetcircuit"))]


def garbage_after_judging(drawing: Drawing) -> int:
    analyse(drawing)
    gc.collect()
    gc.disable()
    try:
        analyse(drawing)
        gc.disable()
        return gc.collect()
    finally:
        gc.enable()


@pytest.mark.parametrize("work", [analyse, flows, lambda drawing: sized("a", drawing)])
@pytest.mark.parametrize("drawing", SAMPLES, ids=lambda drawing: drawing.title)
def test_nothing_is_left_of_a_sample(drawing: Drawing, work: Callable[[Drawing], object]) -> None:
    work(drawing)
    gc.collect()
    gc.disable()
    try:
        work(drawing)
        assert gc.collect() < 60
    finally:
        gc.enable()


@pytest.mark.parametrize("size", [60, 500])
def test_garbage_does_not_grow_with_the_plant(size: int) -> None:
    assert garbage_after_judging(plant(size)) < 500


def test_judged_anew_after_the_circuit_changed_again_and_again() -> None:
    checker = Rechecker()
    for drawing in (*SAMPLES[:3], SAMPLES[0], remove(SAMPLES[0], [next(iter(SAMPLES[0].pipes))]), SAMPLES[0]):
        assert checker.analyse(drawing) == analyse(drawing)
